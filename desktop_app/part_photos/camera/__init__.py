"""Where the camera stood: markers found, the camera fitted, points brought onto a plane."""

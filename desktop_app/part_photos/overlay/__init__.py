"""Old and new in one picture: aligned, and outlined where they differ."""

"""The bench card: a printed page whose markers give a photo its scale and its camera."""

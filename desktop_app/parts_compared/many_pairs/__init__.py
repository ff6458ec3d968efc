"""Many pairs judged at once, in columns."""

"""Part photos: taken in and kept as they came, shown small, and shown old beside new."""

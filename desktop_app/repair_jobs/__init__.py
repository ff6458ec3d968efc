"""Repair jobs: a vehicle, its visits, and each concern from the first words to the hand-over."""

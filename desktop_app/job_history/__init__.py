"""What was done to one job: who, when, before and after; and the sealed copy of it."""

"""Symptom search: the words people use for faults, and the past jobs that were about the same."""

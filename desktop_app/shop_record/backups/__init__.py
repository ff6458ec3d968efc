"""Backups: made, found, kept in generations, brought back."""

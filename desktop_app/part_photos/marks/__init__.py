"""Marks on a photo: lengths, circles, angles in millimetres, each with its uncertainty."""

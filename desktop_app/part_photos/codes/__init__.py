"""Barcodes in a photo: read beside the window, and what each of them may be."""

"""The check of a shop: what is damaged or was changed past the history, and what is mended."""

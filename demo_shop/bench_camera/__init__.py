"""A camera over a workbench: photos of parts whose true sizes are known, drawn by code."""

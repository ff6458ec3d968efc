"""The signs of the two sides of a pair, which read in black and white."""

from __future__ import annotations

SIDE_SIGNS = {"removed": "◆", "replacement": "●"}

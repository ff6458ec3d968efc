"""What a shop's record is called in its folder: known without loading what opens it."""

from __future__ import annotations

FILE_NAME = "shop.sqlite"

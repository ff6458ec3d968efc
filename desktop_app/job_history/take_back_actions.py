"""Undo from here: one deed of a job's history is taken back, by a deed of its own."""

from __future__ import annotations

from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord


def undo_from_here(record: ShopRecord, seq: int) -> Done:
    """Take back what one entry did; refused where somebody has changed it since."""
    return record.take_back(seq)

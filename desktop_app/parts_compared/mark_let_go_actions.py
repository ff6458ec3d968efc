"""A mark on a photo that is no reading of a pair any more."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared import stored_photo_readings as look
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord


def let_mark_go(record: ShopRecord, pair_id: int, mark_id: int) -> Done:
    """Take out what was read of a pair from a mark; the mark stays, and its other readings do."""

    def work(deed: Deed) -> None:
        for one in look.readings_from_mark(deed.connection, mark_id):
            there = look.reading_of_mark(deed, mark_id, pair_id, one.dimension, one.side)
            if there is not None:
                look.remove_reading(deed, there[1])

    return record.do(tr("Take a photo's reading out"), work)

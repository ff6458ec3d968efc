"""The word index made again beside the window, whenever it is missing or too far behind."""

from __future__ import annotations

from collections.abc import Generator

from desktop_app.language import tr
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.symptom_search.stored_ask_index import index_of

WORDS = tr("Reading the old jobs for the search")


def index_is_behind(record: ShopRecord) -> bool:
    """Tell whether the index should be made; the search answers from the newest jobs meanwhile.

    Opening a large index takes a moment: ask it beside the window.
    """
    with record.reading() as connection:
        return index_of(record).is_behind(connection)


def renew_index(record: ShopRecord) -> Generator[Step, None, bool]:
    """Make the index where that is due, in steps; stopped half-way it leaves nothing behind.

    Returns whether it was due.
    """
    due = index_is_behind(record)
    if due:
        yield from index_of(record).renew(record)
    return due

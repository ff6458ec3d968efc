"""The shop that a command speaks of, and the symptoms' names in it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from desktop_app.commands.outcome import Asked
from desktop_app.commands.shop_place import chosen_place, open_place

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord


@contextmanager
def shop_of(asked: Asked) -> Iterator[ShopRecord]:
    """Open the shop that a command speaks of, and close it afterwards."""
    record = open_place(chosen_place(asked.shop))
    try:
        yield record
    finally:
        record.close()


def symptom_names() -> dict[str, str]:
    """Return the plain name of each symptom group by its id, in the language spoken."""
    from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

    return {group.id: group.shown for group in shop_vocabulary().groups}

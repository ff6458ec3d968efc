"""An anchor: where the history stood, in words for paper and files that leave the shop.

Nobody can change the history up to an anchor that somebody else keeps without its hash telling.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.language import tr

if TYPE_CHECKING:
    from sqlalchemy import Connection

LETTERS = 16  # of the hash: 64 bits, too many to find another history that begins so


def anchor_words(number: int, chained: str) -> str:
    """Return number and hash of an entry as they are printed: "history 4211, 1f2e3d4c5b6a7988"."""
    begins = chained[:LETTERS] or tr("empty")
    return tr("history {number}, {begins}", number=number, begins=begins)


def anchor_now(connection: Connection) -> str:
    """Return the anchor of the last entry."""
    from desktop_app.shop_record.past.history import last_entry

    return anchor_words(*last_entry(connection))

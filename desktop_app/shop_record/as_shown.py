"""Changes that a deed makes only where what a page showed still stands there."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, TypeVar

from sqlalchemy import select

from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile, in_words

T = TypeVar("T")


def check_as_shown(
    deed: Deed,
    kept: type[Kept],
    shown: Shown[T] | None,
    now: T,
    mine: T,
    words: Callable[[T], str] = in_words,
) -> None:
    """Raise WrittenMeanwhile where `now` stands, not what was shown, and not what is to be written.

    `shown` is None where no page was looked at (an import, a command).
    """
    if shown is not None and now not in (shown.value, mine):
        raise WrittenMeanwhile(deed.words, words(now), frozenset({kept.__tablename__}))


def change_as_shown(
    deed: Deed,
    kept: type[Kept],
    row: int,
    shown: Shown[Any] | None,
    words: Callable[[Any], str] = in_words,
    /,
    **values: Any,
) -> None:
    """Change columns of a row; raises WrittenMeanwhile where they hold something else than shown.

    `shown` holds the one column's value, or a tuple of those of several.
    """
    columns = [getattr(kept, name) for name in values]
    found = deed.connection.execute(select(*columns).where(kept.id == row)).first()
    if found is not None:  # a row that is gone is told by the change itself
        now, mine = tuple(found), tuple(values.values())
        if len(columns) == 1:
            check_as_shown(deed, kept, shown, now[0], mine[0], words)
        else:
            check_as_shown(deed, kept, shown, now, mine, words)
    deed.change(kept, row, **values)

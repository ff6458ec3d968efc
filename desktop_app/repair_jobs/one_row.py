"""One row that answers one question: added with the first answer, changed, taken out again."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from desktop_app.shop_record.deed import Deed
    from desktop_app.shop_record.tables import Kept


def keep_answer(
    deed: Deed,
    kept: type[Kept],
    row: int | None,
    about: Mapping[str, Any],
    answer: Mapping[str, Any] | None,
) -> None:
    """Keep an answer in its row, the one with the columns `about`; with None nobody has answered.

    `row` is the id of that row where there is one.
    """
    if answer is None:
        if row is not None:
            deed.remove(kept, row)
    elif row is None:
        deed.add(kept, **about, **answer)
    else:
        deed.change(kept, row, **answer)

"""How tables were left: order of columns, which are hidden, what sorts and what leaves rows out."""

from __future__ import annotations

import json
from typing import NamedTuple

from desktop_app.shop_window.window_memory import window_memory


class Left(NamedTuple):
    """One table as it was left; columns are named by their headers, `by` is "" where unsorted.

    `only` are the words that its rows had to have; "" where all were shown.
    """

    order: tuple[str, ...] = ()
    hidden: frozenset[str] = frozenset()
    by: str = ""
    falling: bool = False
    only: str = ""


def keep_left(table: str, left: Left | None) -> None:
    """Remember how a table was left; None forgets it."""
    memory, key = window_memory(), f"tables/{table}"
    if left is None:
        memory.remove(key)
    else:
        said = left._replace(hidden=sorted(left.hidden))._asdict()  # type: ignore[arg-type]
        memory.setValue(key, json.dumps(said))
    memory.sync()


def read_left(table: str) -> Left | None:
    """Return how a table was left; None where that is not known, or can't be read."""
    try:
        said = json.loads(str(window_memory().value(f"tables/{table}", "")))
        order, hidden = map(str, said["order"]), frozenset(map(str, said["hidden"]))
        by, falling, only = str(said["by"]), said["falling"] is True, str(said.get("only", ""))
        return Left(tuple(order), hidden, by, falling, only)
    except (ValueError, KeyError, TypeError):
        return None

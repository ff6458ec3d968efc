"""Which rows somebody said are two vehicles, though they share a plate."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Answered
from desktop_app.shop_record.deed import Deed

TWO_VEHICLES = "two vehicles on one plate"  # what was answered; the question names both rows


def say_apart(deed: Deed, one: int, other: int) -> None:
    """Keep that two rows are two vehicles, as an answer to the question whether they are one."""
    deed.add(Answered, about=TWO_VEHICLES, question=f"{one} {other}")


def vehicles_apart(connection: Connection) -> frozenset[tuple[int, int]]:
    """Return the pairs of vehicle ids that somebody said are two vehicles."""
    rows = connection.execute(select(Answered.question).where(Answered.about == TWO_VEHICLES))
    pairs = (question.split(" ") for question in rows.scalars())
    return frozenset(
        (int(pair[0]), int(pair[1]))
        for pair in pairs
        if len(pair) == 2 and all(one.isascii() and one.isdigit() for one in pair)
    )

"""An anchor that somebody kept, held against the history as it is now."""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.shop_record.checks.problem import Problem
from desktop_app.shop_record.tables import HistoryEntry


def anchor_problem(connection: Connection, number: int, begins: str) -> Iterator[Problem]:
    """Tell where the entry of a printed number is gone, or has another hash than was printed.

    `begins` are the first letters of its hash. The chain up to the entry must hold as well; that
    is what the check of the history says.
    """
    wanted = select(HistoryEntry.hash, HistoryEntry.words, HistoryEntry.at)
    found = connection.execute(wanted.where(HistoryEntry.seq == number)).first()
    if found is not None and str(found.hash).startswith(begins):
        return
    what = (
        tr(
            "it has no entry {number} any more, which was printed as {begins}",
            number=number,
            begins=begins,
        )
        if found is None
        else tr(
            "entry {number} (“{words}”, {at}) was printed as {begins}, but its hash begins "
            "with {hash}: it was written anew since",
            number=number,
            words=found.words,
            at=found.at,
            begins=begins,
            hash=str(found.hash)[: len(begins)],
        )
    )
    yield Problem(
        tr("the history"),
        tr("It does not match what was printed: {what}.", what=what),
        True,
        tr("Bring back a backup from before, into a new folder, and compare the two."),
    )

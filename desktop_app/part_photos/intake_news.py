"""What is said after photos were dropped: which were refused and why, which were there already."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MOST_NAMED = 4


def intake_news(
    taken: int,
    refused: Sequence[ShopTrouble],
    doubles: Sequence[str],
    put: Sequence[str] = (),
) -> str | None:
    """Return one paragraph about a drop, or None when everything was simply taken in.

    `taken` is how many were added; `doubles` are the names of those that the job had already,
    `put` of those that it had for another part and that stand for this one from now on.
    """
    if not refused and not doubles and not put:
        return None
    parts = [_added(taken)] if taken or not put else []
    if put:
        here = (
            tr("This job had it already; now it stands for this part too:")
            if len(put) == 1
            else tr("This job had them already; now they stand for this part too:")
        )
        parts.append(_listed(here, list(put), ", ") + ".")
    if refused:
        parts.append(_listed(tr("Not taken:"), [trouble.sentence() for trouble in refused], " "))
    if doubles:
        once = tr("It is on this job already:") if len(doubles) == 1 else tr("On this job already:")
        parts.append(_listed(once, list(doubles), ", ") + ".")
    return " ".join(parts)


def _added(taken: int) -> str:
    if taken == 0:
        return tr("No photo was added.")
    return (
        tr("One photo was added.")
        if taken == 1
        else tr("{photos} photos were added.", photos=taken)
    )


def _listed(first: str, sentences: list[str], between: str) -> str:
    more = len(sentences) - MOST_NAMED
    tail = between + tr("and {more} more", more=more) if more > 0 else ""
    return f"{first} " + between.join(sentences[:MOST_NAMED]) + tail

"""Parts that went on although something speaks against them, or too little was measured."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from desktop_app.language import tr
from desktop_app.repair_jobs.hand_over import OpenAnswer

PART = "part in doubt"  # what a way is about that leads to the verdict on a pair


class PartInDoubt(NamedTuple):
    """A pair by its id and its part's name, what was decided of it, and whether that is against it.

    Where it is not, nothing speaks against the new part but too little was measured.
    """

    pair: int
    name: str
    verdict: str
    against: bool

    @property
    def said(self) -> str:
        """The part and what was decided of it."""
        return f"{self.name}: {self.verdict}"


def doubt_words(parts: Sequence[PartInDoubt]) -> str:
    """Say which parts went on in doubt; "" where none did."""
    if not parts:
        return ""
    listed = "; ".join(one.said for one in parts)
    return tr("⚠ It went on, or is to go on: {listed}.", listed=listed)


def ways_to_parts(parts: Sequence[PartInDoubt]) -> tuple[OpenAnswer, ...]:
    """Return the ways to the verdicts."""
    return tuple(OpenAnswer(PART, one.said, one.name, one.pair) for one in parts)


def parts_question(parts: Sequence[PartInDoubt]) -> str:
    """Return what is asked before a car leaves with a part that is spoken against; else ""."""
    against = "; ".join(one.said for one in parts if one.against)
    if not against:
        return ""
    return tr(
        "Something speaks against a part that goes with the car: {against}. Hand the car over "
        "all the same? The sheet will say so.",
        against=against,
    )

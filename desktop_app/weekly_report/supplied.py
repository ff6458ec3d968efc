"""What came from a supplier in a year, what comparing it showed, and what became of claims."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from desktop_app.returns_watched.owed import Owed

WayRound = Literal["", "turned", "mirrored"]


@dataclass(frozen=True, slots=True)
class PartSupplied:
    """A replacement of the year; `verdict` is empty where it was not compared.

    `fitted` is False for one that did not go into the car. `way_round` is "turned" where an angle
    of it is another than the old part's, "mirrored" where it looks like that one's mirror image.
    """

    job: str
    supplier: str
    fitted: bool
    verdict: str = ""
    way_round: WayRound = ""


@dataclass(frozen=True, slots=True)
class Supplied:
    """The replacements of the year's jobs, and the claims that were made in it as they stood."""

    parts: tuple[PartSupplied, ...] = ()
    claims: tuple[Owed, ...] = ()

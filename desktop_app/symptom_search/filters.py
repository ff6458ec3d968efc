"""Filters: which past jobs are asked about at all, by vehicle, system and day."""

from __future__ import annotations

from datetime import date
from typing import NamedTuple

from desktop_app.symptom_search.word_forms import plain_words

_CLASS_WORDS = 4  # more of them describe one car, and no class


class Filters(NamedTuple):
    """What a job must be to be found and counted; what is empty keeps nothing out.

    All words of `vehicle` stand in the vehicle's description ("diesel estate"); `system` is a
    system's id; the vehicle came from `since` to `until`, both days included.
    """

    vehicle: str = ""
    system: str = ""
    since: date | None = None
    until: date | None = None

    @property
    def vehicle_words(self) -> tuple[str, ...]:
        """The words that must stand in the vehicle's description, folded, each once."""
        return tuple(dict.fromkeys(plain_words(self.vehicle).split()))

    def __bool__(self) -> bool:
        """True where it keeps anything out."""
        return bool(self.vehicle_words or self.system or self.since or self.until)


ALL_JOBS = Filters()


def vehicle_class(description: str) -> str:
    """Return what kind of vehicle a description tells of: its words without any figures.

    "1.8-litre compact hatchback, 1990s" is a "compact hatchback"; empty where nothing is left.
    """
    first = description.partition(",")[0]
    words = [w for w in plain_words(first).split() if w.isalpha() and w not in ("litre", "liter")]
    return " ".join(words) if 0 < len(words) <= _CLASS_WORDS else ""

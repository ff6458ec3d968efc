"""What was told of a return that the shop never saw, to stand beside the earlier job."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.told_return import ToldReturn, heard_words
from desktop_app.returns_watched.waiting import seen_in_words

_HEARD = {HeardBy.TOLD: "told", HeardBy.PAPER: "seen on another shop's bill"}


@dataclass(frozen=True, slots=True)
class ToldNow:
    """What was told, and when the car was here the last time since; None where it was not."""

    told: ToldReturn
    unit: DistanceUnit
    seen_on: date | None = None

    @property
    def number(self) -> str:
        """What stands in the place of a job's number."""
        return heard_words(self.told)

    def lines(self) -> tuple[tuple[str, str], ...]:
        """Return name and words, by the names that `JobThen` has for them."""
        return (
            ("In the shop", f"not here: the car was {seen_in_words(self.told.on, self.seen_on)}"),
            ("Concern", "\n".join(self._said())),
        )

    def _said(self) -> list[str]:
        said = []
        for one in self.told.answers:
            by = f" to {one.by}" if one.by and one.source is HeardBy.TOLD else ""
            words = f": “{one.words}”" if one.words else ""
            far = "" if one.odometer_told is None else f" at {one.odometer_told:,} {self.unit}"
            said.append(f"{_HEARD[one.source]}{by} on {day_in_words(one.on)}{far}{words}")
        return [
            ended(f"The same trouble, {said[0]}"),
            *(ended(f"Again, {one}") for one in said[1:]),
        ]


def ended(words: str) -> str:
    """Return a sentence with one full stop, wherever the customer's own words put theirs."""
    return words if words.endswith((".”", "!”", "?”")) else f"{words}."

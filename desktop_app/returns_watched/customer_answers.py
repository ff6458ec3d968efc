"""What a customer said when asked how the car does."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop_app.repair_jobs.distance import DistanceUnit


class Answer(StrEnum):
    """The five things that may come of asking."""

    FINE = "fine"
    SAME_TROUBLE = "same trouble"
    OTHER_TROUBLE = "other trouble"
    NOT_REACHED = "not reached"
    CAR_IS_GONE = "car is gone"

    @property
    def speaks_of_the_car(self) -> bool:
        """True where somebody told how the car does; then it was known well or ill that day."""
        return self in (Answer.FINE, Answer.SAME_TROUBLE, Answer.OTHER_TROUBLE)


@dataclass(frozen=True, slots=True)
class CustomerSaid:
    """One asking; the odometer as told, in the vehicle's own unit."""

    id: int
    job_id: int
    on: date
    answer: Answer
    odometer_told: int | None = None
    words: str = ""
    by: str = ""


def odometer_question(told: int | None, had_here: int | None, unit: DistanceUnit) -> str | None:
    """Ask about a told odometer that is lower than the car had here; None where nothing is odd.

    It stays as told: an odometer may have been replaced, or the number was misheard.
    """
    if told is None or had_here is None or told >= had_here:
        return None
    return f"Lower than when the car was here ({had_here:,} {unit}). Was it heard right?"

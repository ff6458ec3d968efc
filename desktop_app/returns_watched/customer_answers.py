"""What a customer said when asked how the car does."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.returns_watched.judgement import Judgement


class Answer(StrEnum):
    """The five things that may come of asking."""

    FINE = marked("fine")
    SAME_TROUBLE = marked("same trouble")
    OTHER_TROUBLE = marked("other trouble")
    NOT_REACHED = marked("not reached")
    CAR_IS_GONE = marked("car is gone")

    @property
    def speaks_of_the_car(self) -> bool:
        """True where somebody told how the car does; then it was known well or ill that day."""
        return self in (Answer.FINE, Answer.SAME_TROUBLE, Answer.OTHER_TROUBLE)


class HeardBy(StrEnum):
    """How the shop came to know of the same trouble without seeing the car."""

    TOLD = "told"
    PAPER = "paper"  # another shop's bill was seen


def heard_words(source: HeardBy, on: date) -> str:
    """Return what stands in the place of a later job's number: "told 2026-11-03"."""
    day = on.isoformat()
    told = source is HeardBy.TOLD
    return tr("told {day}", day=day) if told else tr("on paper {day}", day=day)


@dataclass(frozen=True, slots=True)
class CustomerSaid:
    """One asking; the odometer as told, in the vehicle's own unit.

    A person may have judged what was told, as a return that this shop never saw; `judged_at` is an
    ISO moment. `dangerous` is None where nobody said.
    """

    id: int
    job_id: int
    on: date
    answer: Answer
    odometer_told: int | None = None
    words: str = ""
    by: str = ""
    source: HeardBy = HeardBy.TOLD
    judgement: Judgement | None = None
    judged_by: str = ""
    judged_at: str | None = None
    why: str = ""
    cause_class: str | None = None
    dangerous: bool | None = None


def gone_since(answers: Sequence[CustomerSaid], seen_on: date | None) -> date | None:
    """Return the day on which a customer said that the car is gone; None where it is in sight.

    It is in sight again where the car came afterwards (`seen_on` is its last visit), or where the
    customer spoke of it as his own later. `answers` stand in their order.
    """
    gone = None
    for said in answers:
        if said.answer is Answer.CAR_IS_GONE:
            gone = said.on if gone is None else gone
        elif said.answer.speaks_of_the_car:
            gone = None
    return gone if gone is None or seen_on is None or seen_on <= gone else None


def odometer_question(told: int | None, had_here: int | None, unit: DistanceUnit) -> str | None:
    """Ask about a told odometer that is lower than the car had here; None where nothing is odd.

    It stays as told: an odometer may have been replaced, or the number was misheard.
    """
    if told is None or had_here is None or told >= had_here:
        return None
    return tr(
        "Lower than when the car was here ({had_here:,} {unit}). Was it heard right?",
        had_here=had_here,
        unit=unit,
    )

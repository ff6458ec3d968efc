"""What was told of a return that the shop never saw, to stand beside the earlier job."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.customer_answers import HeardBy, heard_words
from desktop_app.returns_watched.told_return import ToldReturn
from desktop_app.returns_watched.waiting import seen_in_words

_HEARD = {HeardBy.TOLD: tr("told"), HeardBy.PAPER: tr("seen on another shop's bill")}


@dataclass(frozen=True, slots=True)
class ToldNow:
    """What was told, and when the car was here the last time since; None where it was not."""

    told: ToldReturn
    unit: DistanceUnit
    seen_on: date | None = None

    @property
    def number(self) -> str:
        """What stands in the place of a job's number."""
        return heard_words(self.told.source, self.told.on)

    def lines(self) -> tuple[tuple[str, str], ...]:
        """Return name and words, by the names that `JobThen` has for them."""
        return (
            (
                tr("In the shop"),
                tr("not here: the car was {seen}", seen=seen_in_words(self.told.on, self.seen_on)),
            ),
            (tr("Concern"), "\n".join(self._said())),
        )

    def _said(self) -> list[str]:
        said = []
        for one in self.told.answers:
            by = tr(" to {who}", who=one.by) if one.by and one.source is HeardBy.TOLD else ""
            words = f": “{one.words}”" if one.words else ""
            far = (
                ""
                if one.odometer_told is None
                else tr(" at {odometer:,} {unit}", odometer=one.odometer_told, unit=self.unit)
            )
            said.append(
                tr(
                    "{heard}{by} on {day}{odometer}{words}",
                    heard=_HEARD[one.source],
                    by=by,
                    day=day_in_words(one.on),
                    odometer=far,
                    words=words,
                )
            )
        return [
            ended(tr("The same trouble, {how_told}", how_told=said[0])),
            *(ended(tr("Again, {how_told}", how_told=one)) for one in said[1:]),
        ]


def ended(words: str) -> str:
    """Return a sentence with one full stop, wherever the customer's own words put theirs."""
    return words if words.endswith((".”", "!”", "?”")) else f"{words}."

"""Everything that is said about one return while it is judged."""

from __future__ import annotations

from dataclasses import dataclass, field

from desktop_app.language import tr
from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.judged_before import JudgedOnce, told
from desktop_app.returns_watched.judgement import Judgement, counts_against
from desktop_app.returns_watched.return_cost import CostWritten
from desktop_app.returns_watched.returns_list import ReturnKey


@dataclass(frozen=True, slots=True)
class Judging:
    """One return as it is judged; `decisions` are all that were made, oldest first.

    `first_by` did the earlier repair, `first_view` is that person's own view; `second_look` says
    who confirmed the judgement. `hours_unpaid` are the later job's hours that nobody pays.
    `cost_elsewhere` names the earlier jobs to which costs of the same visit are written already.
    `hour_cost_cents` is what an hour cost the shop when it was judged; None where nobody has.
    Of a return that was only told, `later_id` is the customer's answer in which it was told first.
    `dangerous` is None where nobody said whether somebody could have been hurt.
    """

    earlier_id: int
    later_id: int
    earlier: str
    later: str
    first_by: str = ""
    hours_unpaid: float | None = None
    judgement: Judgement | None = None
    judged_by: str = ""
    judged_at: str | None = None
    also: tuple[Judgement, ...] = ()
    why: str = ""
    evidence: str = ""
    first_view: str = ""
    second_look: str = ""
    cause_class: str | None = None
    helping: tuple[str, ...] = ()
    cost: CostWritten = field(default_factory=CostWritten)
    change: ChangePromised = field(default_factory=ChangePromised)
    decisions: tuple[JudgedOnce, ...] = ()
    same_vehicle: bool = True
    cost_elsewhere: tuple[str, ...] = ()
    hour_cost_cents: int | None = None
    heard_by: HeardBy | None = None
    dangerous: bool | None = None

    @property
    def is_told(self) -> bool:
        """True where the shop never saw the return."""
        return self.heard_by is not None

    @property
    def key(self) -> ReturnKey:
        """The key of its row in the list of returns."""
        one, other = self.earlier_id, self.later_id
        return (one, 0, other) if self.is_told else (one, other, 0)

    def kinds(self) -> tuple[Judgement, ...]:
        """Return every kind of comeback that it is; a line may be the same symptom and part."""
        main = () if self.judgement is None or not self.judgement.is_comeback else (self.judgement,)
        return (*main, *(one for one in self.also if main and one not in main))

    def hour_cost(self, now: int) -> int:
        """Return what an hour of its work is reckoned at, given what one costs now; in cents."""
        return now if self.hour_cost_cents is None else self.hour_cost_cents

    def own_job_question(self) -> str | None:
        """Return the question to ask where the first repairer judged alone; None otherwise."""
        if self.judgement is None or not self.first_by or self.judged_by != self.first_by:
            return None
        if self.second_look:
            return None
        return tr(
            "{first_by} did the repair on {earlier} and judged this return. Should "
            "someone else look at it too?",
            first_by=self.first_by,
            earlier=self.earlier,
        )

    def apart_question(self, cost: str = "") -> str | None:
        """Return the question to ask before the two are called two vehicles; None without need.

        `cost` says what was written about the cost, in words.
        """
        if self.judgement is None and not self.cost.is_written:
            return None
        judged = (
            ""
            if self.judgement is None
            else tr("It is judged “{judgement}”. ", judgement=tr(self.judgement.value))
        )
        cost = f"{cost.strip()} " if self.cost.is_written else ""
        return tr(
            "{judged}{cost}As two vehicles it leaves the list, the rates and the "
            "costs; what is written stays kept. Are {earlier} and {later} two vehicles?",
            judged=judged,
            cost=cost,
            earlier=self.earlier,
            later=self.later,
        )

    def decided(self, *, in_window: bool) -> str:
        """Say what was decided, by whom and when, all of it, and whether it counts."""
        said = told(self.decisions)
        if not self.same_vehicle:
            return tr(
                "{said} These are two vehicles: it is no return, and nothing counts.", said=said
            ).strip()
        if self.judgement is None:
            if not said:
                return tr("Nobody has judged it yet. What is it?")
            return tr("{said} It waits for a judgement again. What is it?", said=said)
        confirmed = (
            tr(" Second look: {by_and_on}.", by_and_on=self.second_look) if self.second_look else ""
        )
        return f"{said}{confirmed} {self._counts(in_window)}"

    def _counts(self, in_window: bool) -> str:
        if self.judgement is None or not self.judgement.is_comeback:
            return tr("It is not counted as a comeback.")
        if not counts_against(self.judgement, self.cause_class):
            return tr("It stays written down and is not counted: its cause is not ours.")
        if not in_window:
            return tr("It is not counted: it lies beyond the window.")
        return tr("It counts as a comeback.")

"""Everything that is said about one return while it is judged."""

from __future__ import annotations

from dataclasses import dataclass, field

from desktop_app.returns_watched.change_promised import ChangePromised
from desktop_app.returns_watched.judged_before import JudgedOnce, told
from desktop_app.returns_watched.judgement import Judgement, counts_against
from desktop_app.returns_watched.return_cost import CostWritten


@dataclass(frozen=True, slots=True)
class Judging:
    """One return as it is judged; `decisions` are all that were made, oldest first.

    `first_by` did the earlier repair, `first_view` is that person's own view; `second_look` says
    who confirmed the judgement. `hours_unpaid` are the later job's hours that nobody pays.
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

    def kinds(self) -> tuple[Judgement, ...]:
        """Return every kind of comeback that it is; a line may be the same symptom and part."""
        main = () if self.judgement is None or not self.judgement.is_comeback else (self.judgement,)
        return (*main, *(one for one in self.also if main and one not in main))

    def own_job_question(self) -> str | None:
        """Return the question to ask where the first repairer judged alone; None otherwise."""
        if self.judgement is None or not self.first_by or self.judged_by != self.first_by:
            return None
        if self.second_look:
            return None
        return (
            f"{self.first_by} did the repair on {self.earlier} and judged this return. "
            "Should someone else look at it too?"
        )

    def decided(self, *, in_window: bool) -> str:
        """Say what was decided, by whom and when, all of it, and whether it counts."""
        said = told(self.decisions)
        if self.judgement is None:
            if not said:
                return "Nobody has judged it yet. What is it?"
            return f"{said} It waits for a judgement again. What is it?"
        confirmed = f" Second look: {self.second_look}." if self.second_look else ""
        return f"{said}{confirmed} {self._counts(in_window)}"

    def _counts(self, in_window: bool) -> str:
        if self.judgement is None or not self.judgement.is_comeback:
            return "It is not counted as a comeback."
        if not counts_against(self.judgement, self.cause_class):
            return "It stays written down and is not counted: its cause is not ours."
        if not in_window:
            return "It is not counted: it lies beyond the window."
        return "It counts as a comeback."

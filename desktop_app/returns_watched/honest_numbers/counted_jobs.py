"""What became of each job that counts: settled, open, waiting for a judgement, lost sight of."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Days = NDArray[np.int64]
    Marks = NDArray[np.bool_]

NEVER = -1
NO_LAST_DAY = 1_000_000  # of a window that is not known to have ended
Kinds = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class CountedJobs:
    """Jobs handed over with a cause and a correction, as columns of one length (n,).

    `days_gone` are the days from the hand-over to the day that is looked from, `window_days` those
    after which the job's window counts as over (NO_LAST_DAY where only miles can end it, and nobody
    read them). `back_after` are the days to the first comeback inside the window, `waits_after`
    those to the first visit inside it that nobody has judged, or to the day on which its customer
    told of the same trouble, `aside_after` those to the first return that is not ours by its cause,
    and `unsure_after` those to the first of which a person said that nobody can tell; NEVER where
    there is none. `lost_after` are the days until the car was last in sight,
    for a sale ended the window or it is gone (NEVER where it is in sight until the window's end).
    `came_later` marks those that came with a reason after their window. `part_kinds` and `systems`
    say what kind of work it was, `groups` the names under which it counts.
    """

    days_gone: Days
    window_days: Days
    back_after: Days
    waits_after: Days
    part_kinds: tuple[Kinds, ...]
    systems: tuple[str, ...]
    groups: tuple[Kinds, ...]
    lost_after: Days
    aside_after: Days
    unsure_after: Days
    came_later: Marks

    @property
    def came_back(self) -> Marks:
        """Those of which a person said that they came back."""
        marks: Marks = self.back_after != NEVER
        return marks

    @property
    def waiting(self) -> Marks:
        """Those with a visit that nobody has judged, and no comeback: neither good nor bad yet."""
        marks: Marks = (self.waits_after != NEVER) & ~self.came_back
        return marks

    @property
    def not_ours(self) -> Marks:
        """Those that came back for a reason that is not ours: in no rate, above or below the line.

        A comeback of our making, or a visit that waits, goes before it.
        """
        marks: Marks = (self.aside_after != NEVER) & ~self.came_back & ~self.waiting
        return marks

    @property
    def cannot_tell(self) -> Marks:
        """Those whose visit a person judged, and nobody can tell: neither return nor success."""
        unsure: Marks = self.unsure_after != NEVER
        marks: Marks = unsure & ~self.came_back & ~self.waiting & ~self.not_ours
        return marks

    @property
    def lost_sight(self) -> Marks:
        """Those that went out of sight inside their window, nothing else known: not quiet."""
        known = self.came_back | self.waiting | self.not_ours | self.cannot_tell
        marks: Marks = (self.lost_after != NEVER) & ~known
        return marks

    @property
    def _left_out(self) -> Marks:
        return self.waiting | self.not_ours | self.cannot_tell | self.lost_sight

    @property
    def settled(self) -> Marks:
        """Those whose window is over in sight of the shop, and whose visits are judged.

        On its last day a window is still open. A job that came back early enters when its days
        have passed too: sooner, quick returns would be counted before their quiet neighbours.
        """
        return (self.days_gone > self.window_days) & ~self._left_out

    @property
    def still_open(self) -> Marks:
        """Those whose window is not over, whether they came back or not."""
        return ~self.settled & ~self._left_out

    def watched(self) -> tuple[Days, Marks]:
        """Return how many days each was watched, and whether it came back then, for a curve.

        Nobody knows what a visit means that waits for a judgement: the job was well until then. So
        it was until the car went out of sight, or came back for a reason that is not ours or that
        nobody can tell.
        """
        import numpy as np

        until = np.minimum(self.days_gone, self.window_days)
        until = np.where(self.waiting, np.minimum(until, self.waits_after), until)
        until = np.where(self.lost_sight, np.minimum(until, self.lost_after), until)
        until = np.where(self.not_ours, np.minimum(until, self.aside_after), until)
        until = np.where(self.cannot_tell, np.minimum(until, self.unsure_after), until)
        back = self.came_back & (self.back_after <= until)
        return np.where(back, self.back_after, until), back

"""Comeback rates of groups of jobs, each with its doubt and with what its work lets expect."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Literal, cast

from desktop_app.figures_shown import figure
from desktop_app.language import marked, tr
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.elsewhere import NOWHERE, Elsewhere, elsewhere
from desktop_app.returns_watched.honest_numbers.expected import (
    SeenAgainstExpected,
    seen_against_expected,
)
from desktop_app.returns_watched.honest_numbers.funnel import chance_of_so_many, luck_gives
from desktop_app.returns_watched.honest_numbers.many_compared import ALARM, adjusted
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.shrunken import (
    Shrunken,
    shrunken,
    spread_of_groups,
)

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

By = Literal["technician", "supplier", "part-kind", "part-origin", "system", "symptom", "verdict"]
_IN_CONTRACT = (
    marked("not said"),
    marked("too few jobs to tell"),
    marked("no window is over yet"),
    marked("too few others did the same kind of work"),
    marked("no job counted"),
)
NOT_SAID, TOO_FEW, NOT_OVER, NOTHING_ALIKE, NONE_COUNTED = map(tr, _IN_CONTRACT)
# Commands hand these on as they are written here, in whatever language they are shown.
_AS_WRITTEN = {tr(words): words for words in _IN_CONTRACT}
MORE, FEWER = tr("more than luck explains"), tr("fewer than luck explains")
MAY_BE_LUCK = tr("unusual, yet may be luck")
WITHIN = tr("within what luck gives")
# Below so many settled jobs nothing is ranked; common practice, no source.
FEW_JOBS = 20
# From low to high end; common practice, no source.
WIDEST_INTERVAL = 0.20


@dataclass(frozen=True, slots=True)
class GroupRate:
    """One group: `comebacks` are those of its `settled` jobs, and `rate` their share.

    Its jobs are settled, open, waiting, out of sight (`lost_sight`), came back for a reason that is
    not ours (`not_ours`) or that nobody can tell (`cannot_tell`), each of them one of these.

    `low` to `high` is the rate's Wilson interval of 95 %. `expected` is what the settled jobs
    would have had if their work came back as often as such work does outside the group. `luck` are
    the fewest and most comebacks that luck alone makes of that, 19 times of 20, and `chance` how
    often it makes so many or so few. `alike` are the settled jobs whose own kind of work enough
    others did; for `by_system` more jobs the other work of their system weighs too, and for the
    rest all other work. Where half of the jobs have hardly any others of their kind or system, or
    fewer than FEW_JOBS jobs are outside the group, nothing is expected. Figures are None where
    nothing is settled; `expected`, `against`, `luck`, `chance` and `drawn_in` also where too few
    others do such work. `stands_out` allows for the number of groups that are compared.
    """

    name: str
    jobs: int
    settled: int
    still_open: int
    waiting: int
    lost_sight: int
    not_ours: int
    cannot_tell: int
    comebacks: int
    expected: float | None = None
    low: float | None = None
    high: float | None = None
    against: SeenAgainstExpected | None = None
    luck: tuple[int, int] | None = None
    chance: float | None = None
    alike: int = 0
    by_system: int = 0
    drawn_in: Shrunken | None = None
    stands_out: bool = False

    @property
    def rate(self) -> float | None:
        """The share of the settled jobs that came back."""
        return self.comebacks / self.settled if self.settled else None

    @property
    def note(self) -> str | None:
        """That the jobs are too few: fewer than FEW_JOBS, or an interval over WIDEST_INTERVAL."""
        return None if can_be_told(self.settled, self.low, self.high) else TOO_FEW

    @property
    def luck_told(self) -> tuple[int, int] | None:
        """What luck gives, where that may be said: not of too few jobs, unless they stand out."""
        return self.luck if self.note is None or self.stands_out else None

    @property
    def beyond_luck(self) -> bool:
        """True where the comebacks lie outside what luck gives, looked at alone."""
        return self.luck is not None and not self.luck[0] <= self.comebacks <= self.luck[1]

    @property
    def reading(self) -> str:
        """How the figures are to be read, in words; a few jobs can stand out and have no rate."""
        if not self.settled:
            return NOT_OVER if self.jobs else NONE_COUNTED
        if self.stands_out and self.expected is not None:
            return MORE if self.comebacks > self.expected else FEWER
        if self.note is not None:
            return TOO_FEW
        if self.luck is None:
            return NOTHING_ALIKE
        return MAY_BE_LUCK if self.beyond_luck else WITHIN

    @property
    def read_as(self) -> str:
        """The reading, with all that is known of the rate where it is too few to be told."""
        if self.note is None or self.low is None or self.high is None:
            return self.reading
        return f"{self.reading}: {anything_from(self.low, self.high)}"

    @property
    def held_against(self) -> str:
        """Of how many settled jobs which work of others said what to expect; "" where none did."""
        if self.luck is None:
            return ""
        rest = self.settled - self.alike - self.by_system
        parts = {
            tr("the same work"): self.alike,
            tr("the same work and its system"): self.by_system,
            tr("the same work, its system and all work"): rest,
        }
        return "; ".join(f"{figure(many, ',')} × {words}" for words, many in parts.items() if many)

    @property
    def _notes(self) -> str | None:
        """Why there is no rate, or nothing expected."""
        if not self.settled:
            return _AS_WRITTEN[self.reading]
        notes = (self.note, None if self.luck is not None else NOTHING_ALIKE)
        return "; ".join(_AS_WRITTEN[note] for note in notes if note) or None

    def as_json(self) -> dict[str, object]:
        """Return the fields of the command contract."""
        return {
            "name": _AS_WRITTEN.get(self.name, self.name),
            "jobs": self.jobs,
            "settled": self.settled,
            "open": self.still_open,
            "waiting": self.waiting,
            "lost_sight": self.lost_sight,
            "not_ours": self.not_ours,
            "cannot_tell": self.cannot_tell,
            "comebacks": self.comebacks,
            "rate": self.rate,
            "low": self.low,
            "high": self.high,
            "expected": self.expected,
            "observed_over_expected": None if self.against is None else self.against.ratio,
            "note": self._notes,
        }


def anything_from(low: float, high: float) -> str:
    """Return an interval that is too wide for a rate, in words that nobody takes for one."""
    return tr("anything from {low:.0%} to {high:.0%}", low=low, high=high)


def can_be_told(settled: int, low: float | None, high: float | None) -> bool:
    """Tell whether a rate may be said: of enough settled jobs, and known closely enough."""
    if low is None or high is None or settled < FEW_JOBS:
        return False
    return high - low <= WIDEST_INTERVAL


def group_rates(jobs: CountedJobs, by: By) -> tuple[GroupRate, ...]:
    """Return the rates of the groups that the jobs name, the highest low end first.

    Groups too few to tell come last, by name: they have no rank, unless they stand out. The mix
    of work is part kinds and system together; what the groups are made by is left out of it,
    because a kind of part compared with itself always has what is expected.
    """
    import numpy as np

    settled = jobs.settled
    places: dict[str, int] = {}
    of, into = _in_groups(jobs, places)

    def summed(values: NDArray[np.generic]) -> list[float]:
        return cast(list[float], np.bincount(into, values[of], len(places)).tolist())

    columns = (
        *(settled | True, settled, jobs.still_open, jobs.waiting, jobs.lost_sight, jobs.not_ours),
        *(jobs.cannot_tell, settled & jobs.came_back),
    )
    counts = [[int(count) for count in summed(column)] for column in columns]
    some = settled[of]
    others = elsewhere(
        *(of[some], into[some], len(places)),
        (_kinds_of_work(jobs, by), _systems(jobs, by)),
        jobs.came_back,
        FEW_JOBS,
    )
    rows = zip(places, *counts, strict=True)
    found = [_group_rate(GroupRate(*one), others, place) for place, one in enumerate(rows)]
    return tuple(sorted(_compared(found), key=_place))


def _systems(jobs: CountedJobs, by: By) -> NDArray[np.int64]:
    """Return the number of each job's system (n,), NOWHERE where it is not said.

    Where the groups are made by system or kind of part, no wider kind of work but all is left to
    hold them against.
    """
    import numpy as np

    if by in ("system", "part-kind"):
        return np.full(len(jobs.systems), NOWHERE, dtype=np.int64)
    places = {name: place for place, name in enumerate(dict.fromkeys(jobs.systems))}
    places[""] = NOWHERE
    return np.fromiter(map(places.__getitem__, jobs.systems), np.int64, len(jobs.systems))


def _kinds_of_work(jobs: CountedJobs, by: By) -> NDArray[np.int64]:
    """Return a number for each job's kind of work (n,): those alike have the same.

    NOWHERE where nothing is said of it: jobs without a part and a system are not alike.
    """
    import numpy as np

    said: Sequence[object] = tuple(zip(jobs.part_kinds, jobs.systems, strict=True))
    if by in ("system", "part-kind"):
        said = jobs.part_kinds if by == "system" else jobs.systems
    places: dict[object, int] = {kind: place for place, kind in enumerate(dict.fromkeys(said))}
    places |= dict.fromkeys(((), "", ((), "")), NOWHERE)
    return np.fromiter(map(places.__getitem__, said), np.int64, len(said))


def _in_groups(
    jobs: CountedJobs, places: dict[str, int]
) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Return every job with each of its groups, as places (m,), (m,); `places` is filled.

    Many jobs have the same names together, so that these are taken apart once.
    """
    import numpy as np

    together = dict.fromkeys(jobs.groups)
    alike = {names: place for place, names in enumerate(together)}
    which = np.fromiter(map(alike.__getitem__, jobs.groups), np.int64, len(jobs.groups))
    jobs_found = [np.empty(0, dtype=np.int64)]
    groups_found = [np.empty(0, dtype=np.int64)]
    most = max(map(len, together), default=0)
    for turn in range(most):
        group = [
            places.setdefault(names[turn], len(places)) if turn < len(names) else -1
            for names in together
        ]
        into = np.array(group, dtype=np.int64)[which]
        some = np.flatnonzero(into >= 0)
        jobs_found.append(some)
        groups_found.append(into[some])
    return np.concatenate(jobs_found), np.concatenate(groups_found)


def _group_rate(group: GroupRate, others: Elsewhere, place: int) -> GroupRate:
    """Return the group with its bounds, and with what others let expect where enough are alike."""
    from dataclasses import replace

    settled, back = group.settled, group.comebacks
    if not settled:
        return group
    low, high = wilson(back, settled)
    bounded = replace(group, low=low, high=high)
    if others.others[place] < FEW_JOBS or 2 * others.near[place] <= settled:
        return bounded
    expected = float(others.expected[place])
    rate, worth = float(others.mean[place]) / settled, float(others.worth[place])
    return replace(
        bounded,
        expected=expected,
        against=seen_against_expected(back, expected),
        luck=luck_gives(settled, rate, worth=worth),
        chance=chance_of_so_many(back, settled, rate, worth),
        alike=int(others.alike[place]),
        by_system=int(others.by_system[place]),
    )


def _compared(groups: list[GroupRate]) -> list[GroupRate]:
    """Draw small groups in, and mark those that stand out though there are several."""
    from dataclasses import replace

    spread = spread_of_groups([one.comebacks for one in groups], [one.settled for one in groups])
    tested = [one for one in groups if one.chance is not None]
    levels = adjusted([one.chance or 0.0 for one in tested])
    out = {one.name for one, level in zip(tested, levels, strict=True) if level <= ALARM}
    return [
        replace(
            one,
            drawn_in=shrunken(one.comebacks, one.settled, spread)
            if spread and one.settled
            else None,
            stands_out=one.beyond_luck and one.name in out,
        )
        for one in groups
    ]


def compared_at_once(groups: Sequence[GroupRate]) -> int:
    """Return how many of the groups have something that they are compared with."""
    return sum(group.luck is not None for group in groups)


def _place(group: GroupRate) -> tuple[int, float, str]:
    few = group.note is not None
    rank = 0 if group.stands_out else 2 if few else 1
    name = _AS_WRITTEN.get(group.name, group.name)
    return rank, 0.0 if few or group.low is None else -group.low, name.casefold()

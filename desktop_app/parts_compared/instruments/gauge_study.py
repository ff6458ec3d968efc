"""A gauge study: how well one instrument in the shop's hands repeats itself, by ANOVA."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import PRIOR_DOF
from desktop_app.parts_compared.scatter_test import f_beyond
from desktop_app.parts_compared.uncertainty import mean_and_spread

METHOD = tr("gauge R&R by analysis of variance, people crossed with parts")
#: The interaction is pooled with the scatter of the repeats above this p
#: (AIAG, Measurement Systems Analysis, 4th ed. 2010, Ch. III; from memory).
POOL_ABOVE = 0.25
#: Groups of parts told apart for each PV / GRR, a rounded square root of 2 (same source).
GROUPS = 1.41
#: A study replaces the usual figure once it knows the spread at least as well as that does.
ENOUGH_DOF = int(PRIOR_DOF)


@dataclass(frozen=True, slots=True)
class GaugeReading:
    """One reading: whose, of which part, the how manieth of it, and the value."""

    person: str
    part: int
    trial: int
    value: float


@dataclass(frozen=True, slots=True)
class Squares:
    """A sum of squares with its degrees of freedom."""

    total: float
    dof: int

    @property
    def mean(self) -> float:
        """The mean square; nothing where there is no degree of freedom."""
        return self.total / self.dof if self.dof else 0.0


@dataclass(frozen=True, slots=True)
class Anova:
    """The sums of squares of a complete study, and the test of the interaction.

    `f` and `p` are None where one person or one part leaves no interaction to test.
    """

    parts: Squares
    people: Squares
    interaction: Squares
    repeats: Squares
    total: Squares
    f: float | None
    p: float | None

    @property
    def pooled(self) -> bool:
        """Whether the interaction counts as scatter of the repeats."""
        return self.p is not None and self.p > POOL_ABOVE


@dataclass(frozen=True, slots=True)
class GaugeRR:
    """Standard deviations of a complete study, in the unit of its readings.

    `between_people` (AV) holds the interaction where that was not pooled. It is None for one
    person; `parts` (PV) and `total` (TV) are None for one part. `nought` names what came out
    below nought and was set to nought.
    """

    anova: Anova
    repeatability: float
    repeatability_dof: int
    between_people: float | None
    interaction: float | None
    rr: float
    parts: float | None
    total: float | None
    nought: tuple[str, ...]

    def share(self, spread: float) -> float | None:
        """Return a spread as % of study variation; None where the parts say none."""
        return 100 * spread / self.total if self.total else None

    @property
    def groups(self) -> float | None:
        """How many groups of parts can be told apart (ndc), to be rounded down; None: no telling.

        None as well where nothing scattered at all.
        """
        return GROUPS * self.parts / self.rr if self.parts is not None and self.rr > 0 else None


@dataclass(frozen=True, slots=True)
class StudyResult:
    """What the readings so far say; `full` only where each person read each part as often.

    `repeatability` is None as long as nothing was read twice. It and `dof` are those of `full`
    where there is one, else of the `repeats` (readings beyond the first of a part by a person).
    """

    repeatability: float | None
    dof: int
    repeats: int
    full: GaugeRR | None

    @property
    def enough(self) -> bool:
        """Whether the repeatability may replace the usual figure."""
        return self.repeats >= ENOUGH_DOF


Cells = dict[tuple[str, int], list[float]]


def cells_of(readings: Iterable[GaugeReading]) -> Cells:
    """Group the values by person and part."""
    cells: Cells = {}
    for one in sorted(readings, key=lambda r: (r.person, r.part, r.trial)):
        cells.setdefault((one.person, one.part), []).append(one.value)
    return cells


def study(readings: Sequence[GaugeReading]) -> StudyResult:
    """Work out a gauge study from the readings there are, complete or not.

    Repeats alone are pooled over persons and parts (JCGM 100:2008, 4.2.4, note).
    """
    cells = cells_of(readings)
    repeats = _repeats(cells)
    if not repeats.dof:
        return StudyResult(None, 0, 0, None)
    full = gauge_rr(readings)
    if full is not None:
        return StudyResult(full.repeatability, full.repeatability_dof, repeats.dof, full)
    return StudyResult(math.sqrt(repeats.mean), repeats.dof, repeats.dof, None)


def gauge_rr(readings: Sequence[GaugeReading]) -> GaugeRR | None:
    """Return the gauge R&R of a complete study; None where it is not complete or not repeated.

    Variance components by expected mean squares of the crossed random model (AIAG, Measurement
    Systems Analysis, 4th ed. 2010, Ch. III; the general method in Montgomery, Design and Analysis
    of Experiments; both from memory).
    """
    cells = cells_of(readings)
    people, parts = _names(cells)
    times = {len(values) for values in cells.values()}
    if len(cells) != len(people) * len(parts) or len(times) != 1 or times == {1}:
        return None
    trials = times.pop()
    table = _anova(cells, people, parts, trials)
    error, dof = table.repeats, table.repeats.dof
    against = table.interaction if table.p is not None else error
    if table.pooled:
        dof += table.interaction.dof
        error = against = Squares(table.repeats.total + table.interaction.total, dof)
    found = {
        "interaction": (table.interaction.mean - error.mean) / trials if against != error else 0.0,
        "people": (table.people.mean - against.mean) / (len(parts) * trials),
        "parts": (table.parts.mean - against.mean) / (len(people) * trials),
    }
    there = {"interaction": against != error, "people": len(people) > 1, "parts": len(parts) > 1}
    nought = tuple(name for name, value in found.items() if there[name] and value < 0)
    kept = {name: max(0.0, value) if there[name] else 0.0 for name, value in found.items()}
    between = kept["people"] + kept["interaction"]
    rr = error.mean + between
    return GaugeRR(
        table,
        math.sqrt(error.mean),
        dof,
        math.sqrt(between) if there["people"] else None,
        math.sqrt(kept["interaction"]) if there["interaction"] else None,
        math.sqrt(rr),
        math.sqrt(kept["parts"]) if there["parts"] else None,
        math.sqrt(rr + kept["parts"]) if there["parts"] else None,
        nought,
    )


def _names(cells: Cells) -> tuple[tuple[str, ...], tuple[int, ...]]:
    people = tuple(dict.fromkeys(person for person, _ in cells))
    return people, tuple(dict.fromkeys(part for _, part in cells))


def _repeats(cells: Cells) -> Squares:
    """Return the scatter of the repeats about the mean of their cell."""
    squares = [mean_and_spread(values)[1] ** 2 * (len(values) - 1) for values in cells.values()]
    return Squares(math.fsum(squares), sum(len(values) - 1 for values in cells.values()))


def _anova(cells: Cells, people: tuple[str, ...], parts: tuple[int, ...], trials: int) -> Anova:
    """Split the sum of squares of a complete study."""
    mean = {cell: mean_and_spread(values)[0] for cell, values in cells.items()}
    whole = mean_and_spread(list(mean.values()))[0]
    of_person = {a: mean_and_spread([mean[a, b] for b in parts])[0] for a in people}
    of_part = {b: mean_and_spread([mean[a, b] for a in people])[0] for b in parts}
    k, n = len(people), len(parts)
    both = (mean[a, b] - of_person[a] - of_part[b] + whole for a in people for b in parts)
    noise = _noise(cells)
    by_part = Squares(k * trials * _squared(m - whole for m in of_part.values()), n - 1)
    by_person = Squares(n * trials * _squared(m - whole for m in of_person.values()), k - 1)
    crossed = trials * _squared(both)
    interaction = Squares(crossed if crossed > noise else 0.0, (k - 1) * (n - 1))
    repeats = _repeats(cells)
    total = Squares(
        _squared(value - whole for values in cells.values() for value in values),
        k * n * trials - 1,
    )
    f, p = _interaction_test(interaction, repeats)
    return Anova(by_part, by_person, interaction, repeats, total, f, p)


def _noise(cells: Cells) -> float:
    """Return the sum of squares that rounding in the sums alone may leave."""
    values = [value for listed in cells.values() for value in listed]
    largest = max(abs(value) for value in values)
    return float(len(values) * (1e-9 * largest) ** 2)


def _interaction_test(interaction: Squares, repeats: Squares) -> tuple[float | None, float | None]:
    """Return F of the interaction and the probability of a larger one by chance."""
    if not interaction.dof:
        return None, None
    if repeats.total <= 0:
        # Repeats without any scatter: every interaction is more than chance, and none is none.
        return (math.inf, 0.0) if interaction.total > 0 else (0.0, 1.0)
    f = interaction.mean / repeats.mean
    return f, f_beyond(f, interaction.dof, repeats.dof)


def _squared(deviations: Iterable[float]) -> float:
    return math.fsum(one * one for one in deviations)

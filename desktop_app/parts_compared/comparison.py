"""What comes out of comparing a pair: values for the window, and one JSON document."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, TypeAlias

from desktop_app.parts_compared.part_kinds.part_kind import Role, Span
from desktop_app.parts_compared.shown_sum import Figure, ShownSum, shown_sum
from desktop_app.parts_compared.uncertainty import COVERAGE

DimensionVerdict: TypeAlias = Literal[
    "same",
    "restored",
    "differs",
    "not restored",
    "worse than the old one",
    "more than wear explains",
    "within limits",
    "outside limits",
    "count off",
    "turned",
    "too close to tell",
    "not measured",
    "explained",
]
PairVerdict: TypeAlias = Literal["fits", "stop and look", "not enough measured"]

SETTLED_FOR: frozenset[str] = frozenset({"same", "restored", "within limits", "explained"})
UNSETTLED: frozenset[str] = frozenset({"too close to tell", "not measured"})


@dataclass(frozen=True, slots=True)
class SideValue:
    """One side of a dimension; the expanded uncertainty is None for a word."""

    value: float | str
    expanded_uncertainty: float | None
    readings: int
    instrument: str

    @property
    def figure(self) -> Figure | None:
        """The value as a number with its doubt; None for a word."""
        if isinstance(self.value, str):
            return None
        return Figure(self.value, self.expanded_uncertainty or 0.0)

    def as_json(self) -> dict[str, Any]:
        """Return the JSON object of one side."""
        return {
            "value": self.value,
            "expanded_uncertainty": self.expanded_uncertainty,
            "coverage": COVERAGE,
            "readings": self.readings,
        }


@dataclass(frozen=True, slots=True)
class DimensionComparison:
    """One dimension judged: both sides, their difference, the verdict and its sentence.

    `finer` names the instrument that could settle what more readings can't; `settling` is what the
    sentence says of that, or of more readings.
    """

    name: str
    label: str
    role: Role
    unit: str
    essential: bool
    removed: SideValue | None
    replacement: SideValue | None
    difference: float | None
    difference_expanded_uncertainty: float | None
    allowed: Span | None
    probability_within: float | None
    verdict: DimensionVerdict
    readings_needed: int | None
    sentence: str
    finer: str | None = None
    settling: str = ""

    @property
    def as_left(self) -> str:
        """The sentence without what would settle it: once the car has left nothing more is read."""
        return self.sentence.replace(f" {self.settling}", "", 1) if self.settling else self.sentence

    @property
    def settled_for(self) -> bool:
        """Whether this dimension speaks for the replacement."""
        return self.verdict in SETTLED_FOR

    @property
    def settled_against(self) -> bool:
        """Whether this dimension speaks against the replacement."""
        return self.verdict not in SETTLED_FOR | UNSETTLED

    @property
    def between(self) -> Figure | None:
        """Replacement minus removed as a number with its doubt."""
        if self.difference is None:
            return None
        return Figure(self.difference, self.difference_expanded_uncertainty or 0.0)

    @property
    def shown(self) -> ShownSum:
        """How its three figures are shown, so that they agree with each other."""
        old, new = (side.figure if side else None for side in (self.removed, self.replacement))
        return shown_sum(old, new, self.between)

    def as_json(self) -> dict[str, Any]:
        """Return the JSON object of one dimension, in full precision."""
        return {
            "name": self.name,
            "role": self.role,
            "unit": self.unit,
            "removed": self.removed.as_json() if self.removed else None,
            "replacement": self.replacement.as_json() if self.replacement else None,
            "difference": self.difference,
            "difference_expanded_uncertainty": self.difference_expanded_uncertainty,
            "allowed": list(self.allowed) if self.allowed else None,
            "probability_within": self.probability_within,
            "verdict": self.verdict,
            "readings_needed": self.readings_needed,
        }


@dataclass(frozen=True, slots=True)
class PairComparison:
    """A removed part against its replacement.

    `next_steps` says what to measure next; `questions` asks about readings that look mistyped.
    """

    kind: str
    verdict: PairVerdict
    dimensions: tuple[DimensionComparison, ...]
    reasons: tuple[str, ...]
    next_steps: tuple[str, ...] = ()
    questions: tuple[str, ...] = ()

    def dimension(self, name: str) -> DimensionComparison | None:
        """Return the dimension of that name, or None."""
        return next((one for one in self.dimensions if one.name == name), None)

    def as_json(self) -> dict[str, Any]:
        """Return the whole comparison as one JSON document."""
        return {
            "kind": self.kind,
            "verdict": self.verdict,
            "dimensions": [one.as_json() for one in self.dimensions],
            "reasons": list(self.reasons),
        }

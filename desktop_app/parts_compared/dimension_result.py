"""The result of one dimension before anything was decided about it."""

from __future__ import annotations

from desktop_app.parts_compared.comparison import (
    DimensionComparison,
    DimensionVerdict,
    SideValue,
)
from desktop_app.parts_compared.dimension_sentence import missing_sentence
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.uncertainty import Estimate


def bare_result(
    dimension: Dimension,
    old: SideValue | None,
    new: SideValue | None,
    verdict: DimensionVerdict,
    sentence: str,
    between: Estimate | None = None,
) -> DimensionComparison:
    """Return a result that nothing was decided about; `between` is the difference, if known."""
    return DimensionComparison(
        name=dimension.name,
        label=dimension.label,
        role=dimension.role,
        unit=dimension.unit,
        essential=dimension.essential,
        removed=old,
        replacement=new,
        difference=between.value if between else None,
        difference_expanded_uncertainty=between.expanded() if between else None,
        allowed=dimension.allowed,
        probability_within=None,
        verdict=verdict,
        readings_needed=None,
        sentence=sentence,
    )


def missing(
    dimension: Dimension, old: SideValue | None, new: SideValue | None
) -> DimensionComparison:
    """Return "not measured" with what there is of it."""
    said = missing_sentence(dimension, old is not None, new is not None)
    return bare_result(dimension, old, new, "not measured", said)

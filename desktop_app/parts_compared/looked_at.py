"""The verdict on what is counted or put in a word: equal or not, no uncertainty in between."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import (
    DimensionComparison,
    DimensionVerdict,
    SideValue,
)
from desktop_app.parts_compared.dimension_result import bare_result, missing
from desktop_app.parts_compared.dimension_sentence import (
    count_sentence,
    label_of,
    word_sentence,
)
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import SIDES, Reading, Side


def judge_count(dimension: Dimension, readings: Sequence[Reading]) -> DimensionComparison:
    """Judge a count; counts of one part that disagree settle nothing."""
    old, new = (_seen(dimension, readings, side) for side in SIDES)
    if old is None or new is None:
        return missing(dimension, old, new)
    before, after = float(old.value), float(new.value)
    if _disagree(readings):
        said = tr(
            "{label}: two counts of one part disagree. Count again.",
            label=label_of(dimension),
        )
        unsure = bare_result(dimension, old, new, "too close to tell", said)
        return replace(unsure, difference=after - before, readings_needed=1)
    verdict: DimensionVerdict = "same" if before == after else "count off"
    said = count_sentence(dimension, before, after)
    return replace(
        bare_result(dimension, old, new, verdict, said),
        difference=after - before,
        difference_expanded_uncertainty=0.0,
        probability_within=float(before == after),
    )


def judge_word(dimension: Dimension, readings: Sequence[Reading]) -> DimensionComparison:
    """Judge something put in a word; different words for one part settle nothing."""
    old, new = (_seen(dimension, readings, side) for side in SIDES)
    if old is None or new is None:
        return missing(dimension, old, new)
    if _disagree(readings):
        said = tr(
            "{label}: two different words for one part. Look again.",
            label=label_of(dimension),
        )
        unsure = bare_result(dimension, old, new, "too close to tell", said)
        return replace(unsure, readings_needed=1)
    alike = same_word(str(old.value), str(new.value))
    before, after = (dimension.word_said(str(one.value)) for one in (old, new))
    said = word_sentence(dimension, before, after, alike)
    result = bare_result(dimension, old, new, "same" if alike else "differs", said)
    return replace(result, probability_within=float(alike))


def same_word(one: str, other: str) -> bool:
    """Whether two words say the same; case, spaces and the multiplication sign don't matter."""
    return plain_word(one) == plain_word(other)


def _seen(dimension: Dimension, readings: Sequence[Reading], side: Side) -> SideValue | None:
    mine = [one for one in readings if one.side == side]
    values = sorted((value for one in mine for value in one.values), key=str)
    if not values:
        return None
    exact = 0.0 if dimension.role == "count" else None
    tools = sorted({one.instrument or dimension.instrument for one in mine})
    value = values[0] if dimension.role == "word" else float(values[0])
    return SideValue(value, exact, len(values), tools[0])


def _disagree(readings: Sequence[Reading]) -> bool:
    """Whether the readings of one and the same side differ among themselves."""
    found: dict[Side, set[float | str]] = {"removed": set(), "replacement": set()}
    for one in readings:
        found[one.side].update(
            plain_word(value) if isinstance(value, str) else float(value) for value in one.values
        )
    return any(len(values) > 1 for values in found.values())


def plain_word(word: str) -> str:
    """Return a word without what makes no difference: case, spaces, the kind of times sign."""
    return "".join(word.casefold().replace("×", "x").split())

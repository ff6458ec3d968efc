"""The plain sentence that says what one dimension of a pair came to."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.parts_compared.comparison import DimensionVerdict
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, Span
from desktop_app.parts_compared.shown_value import amount, doubt, number, span_text


@dataclass(frozen=True, slots=True)
class Judged:
    """A difference (or, for limits, a value) with what was decided about it.

    `entered` is the largest size that went in, where that is how the value was read; `finer`
    names the instrument that could settle what more readings can't.
    """

    dimension: Dimension
    value: float
    expanded: float
    allowed: Span
    verdict: DimensionVerdict
    readings_needed: int | None = None
    same_instrument: bool = True
    entered: float | None = None
    finer: str | None = None


def judged_sentence(judged: Judged) -> str:
    """Return the sentence for a measured dimension."""
    if judged.verdict == "too close to tell":
        return _too_close(judged)
    if judged.dimension.role == "limit":
        return _limit(judged)
    if judged.dimension.role == "orientation":
        return _orientation(judged)
    if judged.dimension.role == "restored":
        return _restored(judged)
    return _same(judged)


def count_sentence(dimension: Dimension, removed: float, replacement: float) -> str:
    """Return the sentence for a count."""
    if removed == replacement:
        return f"{label_of(dimension)}: {number(removed)} on both."
    return (
        f"{label_of(dimension)}: {number(removed)} on the old part, "
        f"{number(replacement)} on the new one."
    )


def word_sentence(dimension: Dimension, removed: str, replacement: str, alike: bool) -> str:
    """Return the sentence for something looked at and put in a word."""
    if alike:
        return f"{label_of(dimension)}: {removed} on both."
    return f"{label_of(dimension)}: {removed} on the old part, {replacement} on the new one."


def missing_sentence(dimension: Dimension, has_removed: bool, has_replacement: bool) -> str:
    """Return the sentence for a dimension that lacks a side."""
    where = {
        (False, False): "on either part",
        (True, False): "on the replacement",
        (False, True): "on the removed part",
    }[has_removed, has_replacement]
    return f"{label_of(dimension)}: not measured {where}."


def no_limit_sentence(dimension: Dimension, value: float, expanded: float) -> str:
    """Return the sentence for a value that has nothing to be held against."""
    return (
        f"{label_of(dimension)}: the new one reads {amount(value, dimension.unit, expanded)}"
        f"{doubt(expanded)}. No maker's limit is entered, so it is kept and not judged."
    )


def unknown_instrument_sentence(dimension: Dimension, instrument: str) -> str:
    """Return the sentence for a reading whose instrument nothing is known of."""
    return (
        f"{label_of(dimension)}: nothing is known of '{instrument}' in this unit, "
        "so its readings can't be judged. Enter its resolution and permitted error."
    )


def _same(judged: Judged) -> str:
    unit = judged.dimension.unit
    limit = amount(max(abs(one or 0.0) for one in judged.allowed), unit)
    if judged.verdict == "same":
        if abs(judged.value) <= judged.expanded:
            return f"{label_of(judged.dimension)}: no difference found{doubt(judged.expanded)}."
        return f"{label_of(judged.dimension)}: {_moved(judged)}; {limit} is allowed."
    return f"{label_of(judged.dimension)}: {_moved(judged)}; no more than {limit} is allowed."


def _restored(judged: Judged) -> str:
    unit = judged.dimension.unit
    low, high = sorted(abs(one or 0.0) for one in judged.allowed)
    start = f"{label_of(judged.dimension)}: {_moved(judged)}"
    if judged.verdict == "restored":
        return f"{start}. That is what wear took from the old one."
    if judged.verdict == "worse than the old one":
        return f"{start}. That is the way wear goes: the new one is worse than the old one."
    if judged.verdict == "more than wear explains":
        return f"{start}, and wear explains at most {amount(high, unit)}. Is it the right part?"
    return f"{start}; a fresh part should bring back at least {amount(low, unit)}."


def _limit(judged: Judged) -> str:
    unit = judged.dimension.unit
    where = "inside" if judged.verdict == "within limits" else "outside"
    return (
        f"{label_of(judged.dimension)}: {_read(judged)}, "
        f"{where} the limits ({span_text(*judged.allowed, unit)})."
    )


def _orientation(judged: Judged) -> str:
    limit = amount(judged.allowed[1] or 0.0, "deg")
    if judged.verdict == "same":
        return f"{label_of(judged.dimension)}: same way round{doubt(judged.expanded)}."
    return f"{label_of(judged.dimension)}: {_moved(judged)}; {limit} is allowed."


def _too_close(judged: Judged) -> str:
    unit = judged.dimension.unit
    if shows_no_wear(judged.dimension, judged.value, judged.expanded):
        return (
            f"{label_of(judged.dimension)}: no difference found{doubt(judged.expanded)}, so "
            "nothing shows that wear was made good here. Was the old one worn there at all?"
        )
    if judged.dimension.role == "limit":
        found = _read(judged)
        beside = f"the limits ({span_text(*judged.allowed, unit)})"
    else:
        found = _moved(judged)
        beside = f"what is allowed ({span_text(*_ascending(judged), unit)})"
    start = f"{label_of(judged.dimension)}: {found}, too close to {beside} to tell."
    if judged.readings_needed is not None:
        more = judged.readings_needed
        noun = "reading" if more == 1 else "readings"
        where = "" if judged.dimension.role == "limit" else " on each side"
        return f"{start} About {more} more {noun}{where} would probably settle it."
    if not judged.same_instrument:
        return f"{start} Measure both parts with one instrument: what it gets wrong then cancels."
    if judged.finer is not None:
        return f"{start} More readings won't settle it; the {judged.finer} could."
    return f"{start} More readings won't settle it; a finer instrument may."


def _read(judged: Judged) -> str:
    unit = judged.dimension.unit
    value = f"{amount(judged.value, unit, judged.expanded)}{doubt(judged.expanded)}"
    if judged.entered is None:
        return f"the new one reads {value}"
    return f"{amount(judged.entered, unit)} still enters the new one, so it measures {value}"


def _ascending(judged: Judged) -> Span:
    if judged.dimension.role == "restored" and judged.dimension.direction == "smaller":
        low, high = judged.allowed
        return (-high if high else 0.0, -low if low is not None else None)
    if judged.dimension.role in ("same", "orientation"):
        return (None, judged.allowed[1])
    return judged.allowed


def _moved(judged: Judged) -> str:
    value, expanded = judged.value, judged.expanded
    if value == 0 and expanded <= 0:
        return "no difference found"
    size = amount(abs(value), judged.dimension.unit, expanded)
    if float(number(abs(value), expanded)) == 0:
        return f"no difference found{doubt(expanded)}"
    if judged.dimension.role == "orientation":
        return f"the new one is turned by {size}{doubt(expanded)}"
    return f"the new one measures {size} {'more' if value > 0 else 'less'}{doubt(expanded)}"


def shows_no_wear(dimension: Dimension, difference: float, expanded: float) -> bool:
    """Whether old and new are alike where any restoration at all is asked for: nothing settles
    a difference of nought against a limit of nought."""
    if dimension.role != "restored" or dimension.allowed is None:
        return False
    return 0.0 in dimension.allowed and abs(difference) <= expanded


def label_of(dimension: Dimension) -> str:
    """Return the label with a capital first letter."""
    return dimension.label[:1].upper() + dimension.label[1:]

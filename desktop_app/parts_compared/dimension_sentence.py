"""The plain sentence that says what one dimension of a pair came to."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.figures_shown import with_point
from desktop_app.language import tr
from desktop_app.parts_compared.comparison import DimensionVerdict
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, Span
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.shown_sum import ShownSum
from desktop_app.parts_compared.shown_value import amount, doubt, number, span_text


@dataclass(frozen=True, slots=True)
class Judged:
    """A difference (or, for limits, a value) with what was decided about it.

    `shown` is how it stands beside the figures of both parts. `entered` is the largest size that
    went in, where that is how the value was read; `finer` names the instrument that could settle
    what more readings can't.
    """

    dimension: Dimension
    value: float
    expanded: float
    shown: ShownSum
    allowed: Span
    verdict: DimensionVerdict
    readings_needed: int | None = None
    same_instrument: bool = True
    entered: float | None = None
    finer: str | None = None
    mirrored: bool = False


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


def scatter_sentence(side: Side, unit: str, spread: float, tool: str, usual: float) -> str:
    """Return why a doubt is wider than one reading would leave it: its repeats scatter so much."""
    said = {
        "spread": amount(spread, unit, spread),
        "tool": tool_words(tool),
        "usual": amount(usual, unit, usual),
    }
    if side == "removed":
        return tr(
            "The readings of the removed part scatter by {spread}, more than usual ({tool}: "
            "{usual}): that makes the ± wider.",
            **said,
        )
    return tr(
        "The readings of the replacement scatter by {spread}, more than usual ({tool}: "
        "{usual}): that makes the ± wider.",
        **said,
    )


def count_sentence(dimension: Dimension, removed: float, replacement: float) -> str:
    """Return the sentence for a count."""
    if removed == replacement:
        return tr("{label}: {count} on both.", label=label_of(dimension), count=number(removed))
    return tr(
        "{label}: {old} on the old part, {new} on the new one.",
        label=label_of(dimension),
        old=number(removed),
        new=number(replacement),
    )


def word_sentence(dimension: Dimension, removed: str, replacement: str, alike: bool) -> str:
    """Return the sentence for something looked at and put in a word."""
    if alike:
        return tr("{label}: {word} on both.", label=label_of(dimension), word=removed)
    return tr(
        "{label}: {old} on the old part, {new} on the new one.",
        label=label_of(dimension),
        old=removed,
        new=replacement,
    )


def missing_sentence(dimension: Dimension, has_removed: bool, has_replacement: bool) -> str:
    """Return the sentence for a dimension that lacks a side."""
    label = label_of(dimension)
    if has_removed:
        return tr("{label}: not measured on the replacement.", label=label)
    if has_replacement:
        return tr("{label}: not measured on the removed part.", label=label)
    return tr("{label}: not measured on either part.", label=label)


def no_limit_sentence(
    dimension: Dimension, value: float, expanded: float, decimals: int | None
) -> str:
    """Return the sentence for a value that has nothing to be held against."""
    return tr(
        "{label}: the new one reads {amount}{doubt}. No maker's limit is entered, "
        "so it is kept and not judged.",
        label=label_of(dimension),
        amount=amount(value, dimension.unit, expanded, decimals),
        doubt=doubt(expanded),
    )


def unknown_instrument_sentence(dimension: Dimension, instrument: str) -> str:
    """Return the sentence for a reading whose instrument nothing is known of."""
    return tr(
        "{label}: nothing is known of '{instrument}' in this unit, so its readings "
        "can't be judged. Enter its resolution and permitted error.",
        label=label_of(dimension),
        instrument=tool_words(instrument),
    )


def _same(judged: Judged) -> str:
    unit = judged.dimension.unit
    limit = amount(max(abs(one or 0.0) for one in judged.allowed), unit)
    if judged.verdict == "same":
        if abs(judged.value) <= judged.expanded:
            return tr(
                "{label}: no difference found{doubt}.",
                label=label_of(judged.dimension),
                doubt=_off(judged),
            )
        return _allowed(judged, limit)
    return tr(
        "{label}: {moved}; no more than {limit} is allowed.",
        label=label_of(judged.dimension),
        moved=_moved(judged),
        limit=limit,
    )


def _restored(judged: Judged) -> str:
    unit = judged.dimension.unit
    low, high = sorted(abs(one or 0.0) for one in judged.allowed)
    found = f"{label_of(judged.dimension)}: {_moved(judged)}"
    if judged.verdict == "restored":
        return tr("{found}. Wear can explain that.", found=found)
    if judged.verdict == "worse than the old one":
        return tr(
            "{found}. That is the way wear goes: the new one is worse than the old one.",
            found=found,
        )
    if judged.verdict == "more than wear explains":
        return tr(
            "{found}, and wear explains at most {amount}. Is it the right part?",
            found=found,
            amount=amount(high, unit),
        )
    return tr(
        "{found}; a fresh part should bring back at least {amount}.",
        found=found,
        amount=amount(low, unit),
    )


def _limit(judged: Judged) -> str:
    unit = judged.dimension.unit
    label, read, limits = (
        label_of(judged.dimension),
        _read(judged),
        span_text(*judged.allowed, unit),
    )
    if judged.verdict == "within limits":
        return tr(
            "{label}: {read}, inside the limits ({limits}).", label=label, read=read, limits=limits
        )
    return tr(
        "{label}: {read}, outside the limits ({limits}).", label=label, read=read, limits=limits
    )


def _orientation(judged: Judged) -> str:
    limit = amount(judged.allowed[1] or 0.0, "deg")
    if judged.verdict == "same":
        return tr(
            "{label}: same way round{doubt}.",
            label=label_of(judged.dimension),
            doubt=_off(judged),
        )
    turned = _allowed(judged, limit)
    if judged.mirrored:
        turned += tr(" It looks like the mirror image of the old one.")
    return turned


def _allowed(judged: Judged, limit: str) -> str:
    return tr(
        "{label}: {moved}; {limit} is allowed.",
        label=label_of(judged.dimension),
        moved=_moved(judged),
        limit=limit,
    )


def _too_close(judged: Judged) -> str:
    unit = judged.dimension.unit
    if shows_no_wear(judged.dimension, judged.value, judged.expanded):
        return tr(
            "{label}: no difference found{doubt}, so nothing shows that wear was "
            "made good here. Was the old one worn there at all?",
            label=label_of(judged.dimension),
            doubt=_off(judged),
        )
    if judged.dimension.role == "limit":
        said = tr(
            "{label}: {found}, too close to the limits ({limits}) to tell.",
            label=label_of(judged.dimension),
            found=_read(judged),
            limits=span_text(*judged.allowed, unit),
        )
    else:
        said = tr(
            "{label}: {found}, too close to what is allowed ({allowed}) to tell.",
            label=label_of(judged.dimension),
            found=_moved(judged),
            allowed=span_text(*_ascending(judged), unit),
        )
    return f"{said} {settling_sentence(judged)}"


def settling_sentence(judged: Judged) -> str:
    """Return what would settle what is too close to tell."""
    more = judged.readings_needed
    if more is not None and judged.dimension.role == "limit":
        if more == 1:
            return tr("About 1 more reading would probably settle it.")
        return tr("About {more} more readings would probably settle it.", more=more)
    if more is not None:
        if more == 1:
            return tr("About 1 more reading on each side would probably settle it.")
        return tr("About {more} more readings on each side would probably settle it.", more=more)
    if not judged.same_instrument:
        return tr("Measure both parts with one instrument: what it gets wrong then cancels.")
    if judged.finer is not None:
        return tr(
            "More readings won't settle it; the {finer} could.", finer=tool_words(judged.finer)
        )
    return tr("More readings won't settle it; a finer instrument may.")


def _read(judged: Judged) -> str:
    unit = judged.dimension.unit
    expanded, decimals = judged.expanded, judged.shown.decimals
    value = f"{amount(judged.value, unit, expanded, decimals)}{doubt(expanded)}"
    if judged.entered is None:
        return tr("the new one reads {value}", value=value)
    return tr(
        "{amount} still enters the new one, so it measures {value}",
        amount=amount(judged.entered, unit),
        value=value,
    )


def _ascending(judged: Judged) -> Span:
    if judged.dimension.role == "restored" and judged.dimension.direction == "smaller":
        low, high = judged.allowed
        return (-high if high else 0.0, -low if low is not None else None)
    if judged.dimension.role in ("same", "orientation"):
        return (None, judged.allowed[1])
    return judged.allowed


def _moved(judged: Judged) -> str:
    value, expanded, shown = judged.value, judged.expanded, judged.shown
    if value == 0 and expanded <= 0:
        return tr("no difference found")
    if float(with_point(number(value, expanded))) == 0:
        return tr("no difference found{doubt}", doubt=_off(judged))
    off = doubt(expanded, "", shown.doubt_decimals)
    seen = value if shown.difference is None else shown.difference
    size = amount(abs(seen), judged.dimension.unit, expanded, shown.decimals)
    if judged.dimension.role == "orientation":
        return tr("the new one is turned by {size}{doubt}", size=size, doubt=off)
    if value > 0:
        return tr("the new one measures {size} more{doubt}", size=size, doubt=off)
    return tr("the new one measures {size} less{doubt}", size=size, doubt=off)


def _off(judged: Judged) -> str:
    """Return the doubt of a difference where no amount before it says its unit."""
    return doubt(judged.expanded, judged.dimension.unit, judged.shown.doubt_decimals)


def shows_no_wear(dimension: Dimension, difference: float, expanded: float) -> bool:
    """Whether old and new are alike where any restoration at all is asked for: nothing settles
    a difference of nought against a limit of nought."""
    if dimension.role != "restored" or dimension.allowed is None:
        return False
    return 0.0 in dimension.allowed and abs(difference) <= expanded


def label_of(dimension: Dimension) -> str:
    """Return the label with a capital first letter."""
    return dimension.label[:1].upper() + dimension.label[1:]

"""Figures as the cells of the sheet's table show them, each rounded to its uncertainty."""

from __future__ import annotations

from desktop_app.figures_shown import with_point
from desktop_app.language import tr
from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.shown_value import amount, number, span_text
from desktop_app.parts_compared.signs import DIMENSION_SIGNS

NOTHING = "–"
LONGEST_CELL = 60  # characters; the whole text stands in the job
LONGEST_TEXT = 6000  # characters of one text; what is longer is cut with a note


def clipped(text: str, most: int = LONGEST_CELL) -> str:
    """Return a text on one line with at most so many characters, with an ellipsis if cut."""
    line = " ".join(text.split())
    return line if len(line) <= most else line[: most - 1].rstrip() + "…"


def whole(text: str) -> str:
    """Return a text as it is printed: without blank ends, cut with a note where it has no end."""
    text = text.strip()
    if len(text) <= LONGEST_TEXT:
        return text
    return tr("{text}… (cut here; the whole text is in the job)", text=text[:LONGEST_TEXT].rstrip())


def unit_words(unit: str) -> str:
    """Return a unit as it is printed; nothing for counts and words."""
    return amount(0.0, unit).removeprefix("0").strip()


def label_cell(one: DimensionComparison) -> str:
    """Return the label with its unit."""
    unit = unit_words(one.unit)
    label = clipped(one.label[:1].upper() + one.label[1:])
    return f"{label} ({unit})" if unit else label


def side_cell(one: DimensionComparison, side: Side, dimension: Dimension | None = None) -> str:
    """Return one part's value with its expanded uncertainty; a word as the dimension says it."""
    seen = one.removed if side == "removed" else one.replacement
    if seen is None:
        return NOTHING
    if isinstance(seen.value, str):
        return clipped(dimension.word_said(seen.value) if dimension else seen.value)
    expanded = seen.expanded_uncertainty or 0.0
    return _with_doubt(_minus(number(seen.value, expanded, one.shown.decimals)), expanded)


def difference_cell(one: DimensionComparison) -> str:
    """Return replacement minus removed with its sign and its expanded uncertainty."""
    shown, expanded = one.shown, one.difference_expanded_uncertainty or 0.0
    if shown.difference is None:
        return NOTHING
    figure = number(shown.difference, expanded, shown.decimals)
    return _with_doubt(_signed(figure), expanded, shown.doubt_decimals)


def allowed_cell(one: DimensionComparison) -> str:
    """Return what the difference (for limits: the replacement's own value) may be."""
    if one.role in ("word", "count"):
        return tr("the same")
    if one.allowed is None:
        return tr("no limit entered") if one.role == "limit" else tr("anything")
    low, high = one.allowed
    if one.role == "limit" or low is None or high is None:
        return _minus(span_text(low, high, "n"))
    return _span(low, high)


def verdict_cell(one: DimensionComparison) -> str:
    """Return the verdict's sign and its words."""
    return f"{DIMENSION_SIGNS[one.verdict]} {tr(one.verdict)}"


def _span(low: float, high: float) -> str:
    if low == -high:
        return f"± {number(high)}"
    return tr("{low} to {high}", low=_signed(number(low)), high=_signed(number(high)))


def _with_doubt(shown: str, expanded: float, decimals: int | None = None) -> str:
    return f"{shown} ± {number(expanded, expanded, decimals)}" if expanded > 0 else shown


def _signed(text: str) -> str:
    if float(with_point(text)) == 0 or text.startswith("-"):
        return _minus(text)
    return f"+{text}"


def _minus(text: str) -> str:
    return text.replace("-", "−")

"""What a dimension asks of a new part, in the words and the unit of the shop."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_kinds.figure_words import (
    highest_figure,
    lowest_figure,
    two_figures,
)
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.shown_value import amount, number

ROLE_WORDS = {
    "same": tr("must be the same"),
    "restored": tr("worn away, comes back"),
    "count": tr("counted, must be equal"),
    "orientation": tr("must stand the same way round"),
    "word": tr("looked at, must be alike"),
    "limit": tr("held against the maker's limits"),
}


def allowed_words(dimension: Dimension, length_unit: str) -> str:
    """Return what is allowed, in words: "± 0.2 mm", "0.1 to 1.5 mm bigger", "as the old one"."""
    unit, factor = shop_unit(dimension.unit, length_unit)
    low, high = dimension.allowed or (None, None)
    if dimension.role in ("count", "word"):
        return tr("as on the old one")
    if dimension.role == "restored":
        small, large = sorted(abs(one or 0.0) * factor for one in (low, high))
        least, most = _short(small), amount(_round(large), unit)
        if dimension.direction == "bigger":
            return tr("{least} to {most} bigger", least=least, most=most)
        return tr("{least} to {most} smaller", least=least, most=most)
    if dimension.role in ("same", "orientation"):
        return f"± {amount(_round((high or 0.0) * factor), unit)}"
    if low is None and high is None:
        return tr("the maker's figure, entered at the pair")
    return f"{allowed_typed(dimension, length_unit)} {unit}"


def allowed_typed(dimension: Dimension, length_unit: str) -> str:
    """Return what is allowed as its field shows it, so that it means the same when read again."""
    _, factor = shop_unit(dimension.unit, length_unit)
    low, high = dimension.allowed or (None, None)
    if dimension.role in ("count", "word") or (low is None and high is None):
        return ""
    if dimension.role == "restored":
        small, large = sorted(abs(one or 0.0) * factor for one in (low, high))
        return two_figures(_short(small), _short(large))
    if dimension.role in ("same", "orientation"):
        return _short((high or 0.0) * factor)
    if low is None:
        return highest_figure(_short((high or 0.0) * factor))
    if high is None:
        return lowest_figure(_short(low * factor))
    return two_figures(_short(low * factor), _short(high * factor))


def _round(value: float) -> float:
    return float(f"{value:.4g}")


def _short(value: float) -> str:
    return number(_round(value))

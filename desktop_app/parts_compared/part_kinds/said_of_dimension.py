"""What a dimension asks of a new part, in the words and the unit of the shop."""

from __future__ import annotations

from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.shown_value import amount, number

ROLE_WORDS = {
    "same": "must be the same",
    "restored": "worn away, comes back",
    "count": "counted, must be equal",
    "orientation": "must stand the same way round",
    "word": "looked at, must be alike",
    "limit": "held against the maker's limits",
}


def allowed_words(dimension: Dimension, length_unit: str) -> str:
    """Return what is allowed, in words: "± 0.2 mm", "0.1 to 1.5 mm bigger", "as the old one"."""
    unit, factor = shop_unit(dimension.unit, length_unit)
    low, high = dimension.allowed or (None, None)
    if dimension.role in ("count", "word"):
        return "as on the old one"
    if dimension.role == "restored":
        small, large = sorted(abs(one or 0.0) * factor for one in (low, high))
        return f"{_short(small)} to {amount(_round(large), unit)} {dimension.direction}"
    if dimension.role in ("same", "orientation"):
        return f"± {amount(_round((high or 0.0) * factor), unit)}"
    if low is None and high is None:
        return "the maker's figure, entered at the pair"
    return f"{allowed_typed(dimension, length_unit)} {unit}"


def allowed_typed(dimension: Dimension, length_unit: str) -> str:
    """Return what is allowed as its field shows it, so that it means the same when read again."""
    _, factor = shop_unit(dimension.unit, length_unit)
    low, high = dimension.allowed or (None, None)
    if dimension.role in ("count", "word") or (low is None and high is None):
        return ""
    if dimension.role == "restored":
        small, large = sorted(abs(one or 0.0) * factor for one in (low, high))
        return f"{_short(small)} to {_short(large)}"
    if dimension.role in ("same", "orientation"):
        return _short((high or 0.0) * factor)
    if low is None:
        return f"at most {_short((high or 0.0) * factor)}"
    if high is None:
        return f"at least {_short(low * factor)}"
    return f"{_short(low * factor)} to {_short(high * factor)}"


def _round(value: float) -> float:
    return float(f"{value:.4g}")


def _short(value: float) -> str:
    return number(_round(value))

"""JSON and figures as they come out of the record, checked before anything rests on them."""

from __future__ import annotations

import json
import math
from typing import Any

MOST_PX = 1_000_000.0


def kept_json(text: object) -> Any:
    """Return what a kept text holds; raises ValueError where it holds no JSON."""
    if not isinstance(text, str):
        raise ValueError("no text")
    try:
        return json.loads(text)
    except RecursionError as error:
        raise ValueError("too deeply nested") from error


def kept_object(text: object) -> dict[str, Any]:
    """Return the object that a kept text holds; raises ValueError where it holds none."""
    found = kept_json(text)
    if not isinstance(found, dict):
        raise ValueError("no object")
    return found


def kept_list(facts: dict[str, Any], name: str) -> list[Any]:
    """Return a list of a kept object; raises ValueError where it is none."""
    found = facts.get(name)
    if not isinstance(found, list):
        raise ValueError(f"{name} is no list")
    return found


def kept_number(value: object, low: float, high: float) -> float:
    """Return a kept figure from low to high; raises ValueError for anything else."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        raise ValueError("no number")
    if not low <= value <= high:  # nan is neither
        raise ValueError(f"not from {low:g} to {high:g}")
    return float(value)


def kept_figure(value: object, low: float = 0.0, high: float = math.inf) -> float | None:
    """Return a kept figure or None where there is none; raises ValueError for anything else."""
    found = None if value is None else kept_number(value, low, high)
    if found is not None and not math.isfinite(found):
        raise ValueError("not finite")
    return found


def kept_pixels(found: object) -> tuple[tuple[float, float], ...]:
    """Return kept points in pixels; raises ValueError where they are no list of pairs."""
    if not isinstance(found, list):
        raise ValueError("no list of points")
    return tuple(kept_pixel(one) for one in found)


def kept_pixel(found: object) -> tuple[float, float]:
    """Return one kept point in pixels; raises ValueError where it is no pair of numbers."""
    if not isinstance(found, list) or len(found) != 2:
        raise ValueError("no pair")
    x, y = (kept_number(one, -MOST_PX, MOST_PX) for one in found)
    return x, y

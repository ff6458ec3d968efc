"""What is still to be done on a pair, and at which dimension."""

from __future__ import annotations

from desktop_app.parts_compared.comparison import PairComparison


def open_steps(judged: PairComparison) -> tuple[tuple[str, str], ...]:
    """Return (dimension, what to do next) for each essential dimension that is still open."""
    still_open = [
        one.name
        for one in judged.dimensions
        if one.essential and not one.settled_for and not one.settled_against
    ]
    return tuple(zip(still_open, judged.next_steps, strict=True))

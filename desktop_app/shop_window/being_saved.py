"""Which field is saving just now: what is told meanwhile is about what is typed there."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from desktop_app.shop_window.fields import TypedIn

# The fields that are saving, and what was typed into them; the innermost last.
_in_hand: list[tuple[TypedIn, str]] = []


def being_saved() -> tuple[TypedIn, str] | None:
    """Return the field that is saving just now, and what was typed into it; or None."""
    return _in_hand[-1] if _in_hand else None


@contextmanager
def saving(field: TypedIn, typed: str) -> Iterator[None]:
    """Say so while a field is saved."""
    _in_hand.append((field, typed))
    try:
        yield
    finally:
        _in_hand.pop()

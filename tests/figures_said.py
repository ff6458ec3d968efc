"""Figures written with one decimal sign for a while."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from desktop_app.figures_shown import DecimalSign, decimal_sign, speak_figures


@contextmanager
def figures_with(sign: DecimalSign) -> Iterator[None]:
    """Within it figures are written with this sign; afterwards as before."""
    before = decimal_sign()
    speak_figures(sign)
    try:
        yield
    finally:
        speak_figures(before)

"""A dimension's drawing says what its marks, lines and hatches are: of those that it has."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.parts_compared.screen.drawn_values import DrawnValues
from desktop_app.parts_compared.shown_sum import Figure

OLD, NEW = Figure(26.9, 0.02), Figure(27.7, 0.02)
EIGHT = Figure(8.0, 0.0)
DRAWN = DrawnValues("tip radius", "mm", "restored", OLD, NEW, 0.02, (27.0, 28.4))
MARKS, INTERVAL, THICK, HATCHED = "◆ is the", "its ±", "thick line", "Hatched"


@pytest.mark.parametrize(
    ("drawn", "said"),
    [
        (DRAWN, {INTERVAL, THICK, HATCHED}),
        (replace(DRAWN, band=None), {INTERVAL, THICK}),
        (replace(DRAWN, replacement=None, difference_doubt=None, band=None), {INTERVAL}),
        (replace(DRAWN, removed=None, difference_doubt=None), {INTERVAL, HATCHED}),
        (replace(DRAWN, role="orientation"), {HATCHED}),
        (
            replace(DRAWN, role="count", removed=Figure(8.0, 0.0), replacement=Figure(8.0, 0.0)),
            set(),
        ),
    ],
)
def test_the_legend_names_what_is_drawn(drawn: DrawnValues, said: set[str]) -> None:
    legend = drawn.legend()
    assert legend.startswith(MARKS)
    assert {one for one in (INTERVAL, THICK, HATCHED) if one in legend} == said

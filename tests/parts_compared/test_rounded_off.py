"""Whole millimetres off a tool that shows hundredths are asked about; nothing is decided by it."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from tests.parts_compared.invented_kinds import both, dimension, kind, read, worn

PART = kind(dimension(), worn())
ROUNDED = "Were they rounded?"


def asked(*readings: Any, tools: dict[str, Instrument] | None = None) -> list[str]:
    """Return what is asked about rounding."""
    questions = compare(PART, list(readings), instruments=tools or {}).questions
    return [one for one in questions if ROUNDED in one]


def test_both_parts_read_to_whole_millimetres_are_asked_about_once() -> None:
    [question] = asked(*both("width", 11.0, 11.0), *both("tip", 26.0, 27.0))
    assert question == (
        "Width and tip: every reading is a whole number of 1 mm, and the tool shows 0.01 mm. "
        "Were they rounded?"
    )


@pytest.mark.parametrize(
    ("old", "new"),
    [(11.0, 11.01), ([11.0, 11.02], 11.0), (10.5, 11.0), (11.4, 11.5)],
)
def test_one_reading_with_hundredths_tells_that_they_were_read(old: Any, new: Any) -> None:
    assert not asked(*both("width", old, new))


def test_one_reading_alone_may_be_whole_by_chance() -> None:
    assert not asked(read("removed", "width", 11.0))


def test_a_tool_that_shows_no_more_is_not_asked_about() -> None:
    rule = Instrument("rule", "mm", 0.5, 0.3)
    assert not asked(*both("width", 11.0, 12.0, "rule"), tools={"rule": rule})


def test_the_verdict_is_what_the_readings_give() -> None:
    whole = compare(PART, [*both("width", 11.0, 11.0), *both("tip", 26.0, 27.0)])
    nearly = compare(PART, [*both("width", 11.001, 11.001), *both("tip", 26.001, 27.001)])
    assert whole.verdict == nearly.verdict

"""What Old & New asks and says of a pair: in full, and no longer than it is meant."""

from __future__ import annotations

from typing import Any

from PySide6.QtWidgets import QLineEdit

from tests.screens.bench_desk import Bench, lay, named, press, retype, words_of


def measure(bench: Bench, qtbot: Any, name: str, text: str) -> QLineEdit:
    """Type readings into a field and press Enter."""
    return retype(bench, qtbot, name, text)


def test_which_kind_is_asked_only_until_one_is_pressed(bench: Bench, qtbot: Any) -> None:
    qtbot.keyClicks(named(bench, QLineEdit, "Part kind"), "rotor")
    press(bench, qtbot, "Lay old and new side by side")
    assert "Several kinds go by “rotor”" in words_of(bench)
    press(bench, qtbot, "distributor rotor")
    assert "Several kinds" not in words_of(bench)


def test_a_slip_among_several_readings_is_asked_about_by_that_reading(
    bench: Bench, qtbot: Any
) -> None:
    lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.1; 33.2; 331")
    question = "removed part: One reading is 331 mm, the others are 33.1 to 33.2 mm. Is it a slip?"
    assert question in words_of(bench)
    measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.1; 33.2; 33.1")
    assert "Is it a slip?" not in words_of(bench)


def test_the_verdict_in_a_line_is_said_in_full(bench: Bench, qtbot: Any) -> None:
    said: list[str] = []
    bench.section.said.connect(said.append)
    lay(bench, qtbot, "distributor rotor", "the one that was found in the box behind the bench")
    measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.66; 33.66; 33.67")
    measure(bench, qtbot, "tip radius from the shaft axis, replacement", "33.10; 33.11; 33.12")
    assert said[-1].endswith("That is the way wear goes: the new one is worse than the old one.")

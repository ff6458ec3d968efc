"""What is clicked next is numbered, and said in words."""

from __future__ import annotations

import pytest

from desktop_app.part_photos.drawing_words import next_common_step, next_step
from desktop_app.part_photos.mark_words import KNOWN_LENGTH, TOOLS, tool_of


def test_each_click_is_numbered() -> None:
    angle = tool_of("angle")
    assert next_step(angle, 0).startswith("Angle, 1 of 3: a point of one leg.")
    assert next_step(angle, 1) == "Angle, 2 of 3: the corner."
    assert next_step(angle, 2) == "Angle, 3 of 3: a point of the other leg."
    assert next_step(KNOWN_LENGTH, 1).startswith("Known length, 2 of 2: ")


def test_an_open_ended_mark_says_how_many_it_has_and_how_it_ends() -> None:
    circle = tool_of("circle")
    assert next_step(circle, 2) == "Circle, 3 of at least 3: a third point of the rim."
    assert next_step(circle, 4).startswith("Circle, 4 points: ")
    assert "Enter" in next_step(circle, 4)


def test_a_surface_says_what_it_is_for() -> None:
    assert "another colour than bare metal" in next_step(tool_of("surface"), 0)
    assert "counted by it" in next_step(tool_of("bare-metal"), 0)


@pytest.mark.parametrize("tool", TOOLS, ids=lambda tool: tool.type)
def test_the_first_click_tells_the_keys_and_the_others_do_not(tool: object) -> None:
    assert "Space places a point" in next_step(tool, 0)  # type: ignore[arg-type]
    assert "Space" not in next_step(tool, 1)  # type: ignore[arg-type]


def test_four_common_points_are_numbered_over_both_photos() -> None:
    steps = [next_common_step(*there) for there in ((0, 0), (1, 0), (2, 0), (2, 1))]
    assert [step.split(":")[0] for step in steps] == [
        f"Common points, {number} of 4" for number in (1, 2, 3, 4)
    ]
    assert "same photo" in steps[1]
    assert "other photo" in steps[2]
    assert next_common_step(0, 2) == steps[2]
    assert "either photo" in next_common_step(1, 1)
    assert next_common_step(2, 2) == ""

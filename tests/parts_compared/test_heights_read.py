"""Only what can stand upright on a card is offered as a height."""

from __future__ import annotations

from desktop_app.parts_compared.heights_read import may_be_height
from tests.screens.bench_desk import all_kinds


def offered(kind: str) -> list[str]:
    """The labels of a kind's dimensions that may be a height."""
    return [one.label for one in all_kinds()[kind].dimensions if may_be_height(one)]


def test_heights_thicknesses_widths_and_lengths_are_offered() -> None:
    assert offered("brake-pads") == [
        "lining thickness",
        "length of the backing plate",
        "height of the backing plate",
        "thickness of the backing plate",
        "width of the ear in the bracket",
    ]
    assert offered("battery") == ["length", "width", "height"]


def test_radii_angles_counts_gaps_and_play_are_not() -> None:
    rotor = offered("distributor-rotor")
    assert "tip height above the seat" in rotor
    for label in ("tip radius from the shaft axis", "bore diameter", "tip angle from the key"):
        assert label not in rotor
    assert offered("tie-rod-end") == ["length"]
    assert "gap to the wheel" not in offered("wheel-speed-sensor")


def test_what_bends_stands_at_no_height() -> None:
    assert offered("brake-hose") == []
    assert offered("serpentine-belt") == ["width"]
    assert "lead length" not in offered("oxygen-sensor")

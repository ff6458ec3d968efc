"""What the bench says while something is drawn: which click comes next, of how many."""

from __future__ import annotations

from desktop_app.part_photos.mark_words import COMMON_POINTS, MarkTool
from desktop_app.part_photos.marks.mark import MarkType

START = (
    "Choose a tool, then click on a photo; or click on a mark, or into a surface, to choose it. "
    "Esc gives up, Delete takes a chosen mark out."
)
BY_KEYS = "By keys: arrows move a cross, Space places a point."
PURPOSE: dict[MarkType, str] = {
    "surface": "It tells how much of what you draw round has another colour than bare metal.",
    "bare-metal": "Draw round a place of this photo that is bare: its surfaces are counted by it.",
}
_FIRST, _SECOND = COMMON_POINTS.clicks
# By how many of the two points lie in the photo that has more of them, and in the other one.
_COMMON = {
    (0, 0): f"{_FIRST}, in either photo",
    (1, 0): f"{_SECOND} from it, in the same photo",
    (1, 1): f"{_SECOND} from the first, in either photo",
    (2, 0): "the first point again, in the other photo",
    (2, 1): "the second point again, in the other photo",
}


def next_step(tool: MarkTool, placed: int) -> str:
    """Return what to click after so many points: "Angle, 2 of 3: the corner."."""
    wanted = len(tool.clicks)
    if placed >= wanted:
        return f"{tool.label}, {placed} points: {tool.more}."
    least = "at least " if tool.open_ended else ""
    step = f"{tool.label}, {placed + 1} of {least}{wanted}: {tool.clicks[placed]}."
    if placed:
        return step
    return " ".join(part for part in (step, PURPOSE.get(tool.type, ""), BY_KEYS) if part)


def next_common_step(one: int, other: int) -> str:
    """Return what to click after so many common points in each of two photos; "" after all."""
    step = _COMMON.get((max(one, other), min(one, other)))
    return f"{COMMON_POINTS.label}, {one + other + 1} of 4: {step}." if step else ""

"""What the bench says while something is drawn: which click comes next, of how many."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.part_photos.mark_words import COMMON_POINTS, MarkTool
from desktop_app.part_photos.marks.mark import MarkType

START = tr(
    "Choose a tool, then click on a photo; or click on a mark, or into a surface, to "
    "choose it. Esc gives up, Delete takes a chosen mark out."
)
BY_KEYS = tr("By keys: arrows move a cross, Space places a point.")
PURPOSE: dict[MarkType, str] = {
    "surface": tr("It tells how much of what you draw round has another colour than bare metal."),
    "bare-metal": tr(
        "Draw round a place of this photo that is bare: its surfaces are counted by it."
    ),
}
_FIRST, _SECOND = COMMON_POINTS.clicks
# By how many of the two points lie in the photo that has more of them, and in the other one.
_COMMON = {
    (0, 0): tr("{point}, in either photo", point=_FIRST),
    (1, 0): tr("{point} from it, in the same photo", point=_SECOND),
    (1, 1): tr("{point} from the first, in either photo", point=_SECOND),
    (2, 0): tr("the first point again, in the other photo"),
    (2, 1): tr("the second point again, in the other photo"),
}


def next_step(tool: MarkTool, placed: int) -> str:
    """Return what to click after so many points: "Angle, 2 of 3: the corner."."""
    wanted = len(tool.clicks)
    if placed >= wanted:
        return tr(
            "{label}, {placed} points: {more}.", label=tool.label, placed=placed, more=tool.more
        )
    said = {"label": tool.label, "number": placed + 1, "wanted": wanted}
    step = (
        tr("{label}, {number} of at least {wanted}: {click}.", **said, click=tool.clicks[placed])
        if tool.open_ended
        else tr("{label}, {number} of {wanted}: {click}.", **said, click=tool.clicks[placed])
    )
    if placed:
        return step
    return " ".join(part for part in (step, PURPOSE.get(tool.type, ""), BY_KEYS) if part)


def next_common_step(one: int, other: int) -> str:
    """Return what to click after so many common points in each of two photos; "" after all."""
    step = _COMMON.get((max(one, other), min(one, other)))
    if step is None:
        return ""
    number = one + other + 1
    return tr(
        "{label}, {number} of {wanted}: {click}.",
        label=COMMON_POINTS.label,
        number=number,
        wanted=4,
        click=step,
    )

"""How marks are said: the tools, a value with its doubt, what a mark still needs."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.figures_shown import figure, shown
from desktop_app.language import marked, tr
from desktop_app.part_photos.marks.mark import HIGHEST_MM, LENGTHS, Mark, MarkType, is_height
from desktop_app.part_photos.typed_length import MM_PER_INCH, no_length, typed_length

if TYPE_CHECKING:
    from desktop_app.part_photos.camera.plane_scale import PlaneScale

MOST_POINTS = 60
_ACCEPTED = tr(
    "Accepted: millimetres like 12.5 or 12,5, or inches like 0.5 in, from 0 to {highest_mm:g} mm.",
    highest_mm=HIGHEST_MM,
)


@dataclass(frozen=True, slots=True)
class MarkTool:
    """One kind of mark: what its button says, and what each click is for.

    With `open_ended` there may be more points than `clicks` names; `more` says so, Enter ends it.
    """

    type: MarkType
    label: str
    clicks: tuple[str, ...]
    open_ended: bool = False
    more: str = tr("more points of it, then Enter")

    def is_whole(self, points: int) -> bool:
        """Tell whether so many points make the mark, without a word from the user."""
        return not self.open_ended and points >= len(self.clicks)


_ROUND_IT = (tr("one corner"), tr("the next corner"), tr("a third corner"))
_CLOSES = tr("more corners, then Enter closes it")

TOOLS: tuple[MarkTool, ...] = (
    MarkTool("length", tr("Length"), (tr("one end"), tr("the other end"))),
    MarkTool(
        "point-to-line",
        tr("Point to line"),
        (tr("the point"), tr("a point of the line"), tr("another point of the line, far away")),
    ),
    MarkTool(
        "circle",
        tr("Circle"),
        (tr("a point of the rim"), tr("another point of the rim"), tr("a third point of the rim")),
        open_ended=True,
    ),
    MarkTool(
        "angle",
        tr("Angle"),
        (tr("a point of one leg"), tr("the corner"), tr("a point of the other leg")),
    ),
    MarkTool(
        "parallel-distance",
        tr("Parallel"),
        (
            tr("one line"),
            tr("the same line, far away"),
            tr("the other line"),
            tr("the other line, far away"),
        ),
    ),
    MarkTool(
        "round-bar",
        tr("Round bar"),
        (
            tr("one side of it"),
            tr("the same side, far away"),
            tr("the other side"),
            tr("the other side, far away"),
        ),
    ),
    MarkTool(
        "count",
        tr("Count"),
        (tr("click the gap before the first"), tr("then the gap after the last")),
    ),
    MarkTool("note", tr("Note"), (tr("what it points at"), tr("where the words stand"))),
    MarkTool("surface", tr("Surface"), _ROUND_IT, open_ended=True, more=_CLOSES),
    MarkTool("bare-metal", tr("Bare metal"), _ROUND_IT, open_ended=True, more=_CLOSES),
)


# No marks: two points that give a photo its scale, two that both photos of a pair show.
KNOWN_LENGTH = MarkTool("length", tr("Known length"), (tr("one end of it"), tr("its other end")))

COMMON_POINTS = MarkTool(
    "length",
    tr("Common points"),
    (tr("a point that both photos show"), tr("a second one, far away")),
)


def tool_of(kind: MarkType) -> MarkTool:
    """Return the tool that draws this type of mark."""
    return next(tool for tool in TOOLS if tool.type == kind)


def unit_of(kind: MarkType) -> str:
    """Return the unit of what this type of mark says: "mm", "deg", "%" or "" for none."""
    no_unit = {"count": "", "note": "", "bare-metal": ""}
    return {"angle": "deg", "surface": "%", **no_unit}.get(kind, "mm")


def value_words(
    value: float | None, unit: str | None, expanded_u: float | None, length_unit: str = "mm"
) -> str:
    """Return "4.81 ± 0.21 mm", in the shop's unit; two figures of doubt at most (JCGM 100 7.2.6).

    A mark without a value gives "".
    """
    if value is None:
        return ""
    if unit == "%":
        return _share_words(value, expanded_u or 0.0)
    sign = {"deg": "°", "": ""}.get(unit or "", f" {unit}")
    if unit == "mm" and length_unit == "inch":
        value, sign = value / MM_PER_INCH, " in"
        expanded_u = None if expanded_u is None else expanded_u / MM_PER_INCH
    if not expanded_u or not math.isfinite(expanded_u):
        return f"{figure(value, '.6g')}{sign}"
    places = max(0, 1 - math.floor(math.log10(expanded_u)))
    return f"{figure(value, f'.{places}f')} ± {figure(expanded_u, f'.{places}f')}{sign}"


def _share_words(value: float, expanded_u: float) -> str:
    """Return "12 ± 4 %": whole per cent, or tenths of a small doubt, which is rounded up."""
    places = 0 if expanded_u > 0.9 else 1
    doubt = max(1, math.ceil(round(expanded_u * 10**places, 1))) / 10**places
    return f"{figure(value, f'.{places}f')} ± {figure(doubt, f'.{places}f')} %"


def matters_unsaid(mark: Mark, scale: PlaneScale | None) -> bool:
    """Tell whether a size from a card rests on a height that nobody said."""
    on_card = scale is not None and scale.source == "card"
    return on_card and mark.type in LENGTHS and not mark.height_said


def height_words(mark: Mark, scale: PlaneScale | None) -> str:
    """Return, for beside a size, what comes of a height that nobody said; "" where nothing does."""
    return tr("height not said: holds only on the card") if matters_unsaid(mark, scale) else ""


# What a surface is held against where nobody drew bare metal. It is kept so in the method, by which
# it is known again, whatever language that was written in.
NEUTRAL = marked("neutral grey")


def method_words(method: str) -> str:
    """Return by what method a share was counted, as it is read after a colon."""
    return tr("How: {method}", method=method.replace(NEUTRAL, tr(NEUTRAL)))


def share_sentence(value: float | None, expanded_u: float | None, method: str = "") -> str:
    """Return what the share of a surface says, and no more than that; "" without a value."""
    if value is None:
        return ""
    share = value_words(value, "%", expanded_u)
    if NEUTRAL in method:
        return tr(
            "{share} of this surface has another colour than grey (no bare metal was drawn).",
            share=share,
        )
    return tr("{share} of this surface has another colour than bare metal.", share=share)


def largest_part(budget: Mapping[str, float]) -> str:
    """Return which part of a budget is the largest, and what makes it smaller.

    The parts are standard uncertainties, so their squares add up (JCGM 100 5.1.2).
    """
    whole = math.fsum(u * u for u in budget.values())
    if whole <= 0:
        return ""
    name = max(budget, key=lambda part: budget[part])
    share = round(100 * budget[name] ** 2 / whole)
    word, advice = _PARTS.get(name, (name, ""))
    source = f"{word}: {advice}" if advice else word
    if share > 85:
        return tr("Nearly all of the ± comes from {source}.", source=source)
    if share > 50:
        return tr("Most of the ± comes from {source}.", source=source)
    return tr("The largest part of the ± comes from {source}.", source=source)


_PARTS = {
    "pointing": (
        tr("the pointing"),
        tr("enlarge the photo and place the points anew, or go nearer"),
    ),
    "scale": (tr("the scale"), tr("show more of the card, or take the two points farther apart")),
    "height": (tr("the height"), tr("measure it with a calliper")),
    "flatness": (tr("how flat the card lies"), tr("glue the card to a board")),
    "lens": (tr("the lens"), tr("show the whole card, with the part in the middle of the photo")),
    "print": (tr("the print"), tr("measure the card's ruler with a calliper and enter it once")),
}


def height_mm(text: str, length_unit: str = "mm") -> float | None:
    """Return a typed height in mm, None where nothing is typed; "12.5", "12,5 mm", ".5 in".

    Raises ShopTrouble, which says what is accepted.
    """
    value = typed_length(text, length_unit, _ACCEPTED)
    if value is not None and not is_height(value):
        raise no_length(text, _ACCEPTED)
    return value


def shown_height(value: float | None, length_unit: str = "mm") -> str:
    """Return a kept height as its field shows it, "" for none."""
    if value is None:
        return ""
    length = value / MM_PER_INCH if length_unit == "inch" else value
    return shown(f"{length:.6f}".rstrip("0").rstrip("."))

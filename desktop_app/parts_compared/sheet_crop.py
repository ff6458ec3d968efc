"""Which piece of each photo a sheet prints: around its marks, old and new at one scale."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.figures_shown import figure

MARGIN = 0.6  # of the longer side of what the marks take, left free on each side of it
ASPECT = 1.7  # width by height of the place that a photo has on the sheet
LEAST_SHARE = 1 / 9  # of the photo's longer side: a piece without surroundings says little
LEAST_PX = 460  # that many fill the place at 150 dots an inch; fewer would be printed smaller
WHOLE = 0.85  # of both sides of a photo is as good as all of it

BARS = {"mm": (1, 2, 5, 10, 20, 50, 100, 200), "in": (0.05, 0.1, 0.2, 0.5, 1, 2, 5)}
MM = {"mm": 1.0, "in": 25.4}
LONGEST_BAR = 0.35  # of the picture's width

Box = tuple[int, int, int, int]  # left, top, right, bottom, in pixels
Span = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class MarksTake:
    """The box around a photo's marks in its pixels, and how many of them make a mm there.

    `size` is the photo's width and height; `px_per_mm` is None where nothing gives it millimetres.
    """

    size: tuple[int, int]
    box: Span
    px_per_mm: float | None


def crops(old: MarksTake | None, new: MarksTake | None) -> tuple[Box | None, Box | None]:
    """Return the pieces to print; None for a whole photo, or where there are no marks.

    Where both have millimetres the pieces are equally large on the parts, unless the marks of one
    would not fit into the other's photo.
    """
    alone = tuple(_wanted(one) if one is not None else None for one in (old, new))
    first, second = alone
    if old is not None and new is not None and first is not None and second is not None:
        same = _at_one_scale((old, first), (new, second))
        if same is not None:
            return _placed(old, same[0]), _placed(new, same[1])
    return (
        None if old is None or first is None else _unless_whole(old, first),
        None if new is None or second is None else _unless_whole(new, second),
    )


def bar(mm_wide: float, length_unit: str) -> tuple[float, str] | None:
    """Return a scale bar as a share of the picture's width, and its words; None where none fits."""
    unit = "in" if length_unit == "inch" else "mm"
    fitting = [one for one in BARS[unit] if one * MM[unit] <= LONGEST_BAR * mm_wide]
    if not fitting:
        return None
    return fitting[-1] * MM[unit] / mm_wide, f"{figure(fitting[-1], 'g')} {unit}"


def _wanted(one: MarksTake) -> tuple[float, float]:
    """Return the width and height that show the marks with room around them."""
    left, top, right, bottom = one.box
    free = 2 * MARGIN * max(right - left, bottom - top)
    width, height = right - left + free, bottom - top + free
    least = max(LEAST_PX, LEAST_SHARE * max(one.size))
    width = max(width, height * ASPECT, least)
    height = max(height, width / ASPECT)
    return min(width, one.size[0]), min(height, one.size[1])


def _at_one_scale(
    *sides: tuple[MarksTake, tuple[float, float]],
) -> tuple[tuple[float, float], ...] | None:
    """Return the sizes in pixels that are the same in mm, None where marks would be cut."""
    sizes = []
    for way in (0, 1):
        wanted, most, needed = [], [], []
        for one, size in sides:
            if one.px_per_mm is None:
                return None
            wanted.append(size[way] / one.px_per_mm)
            most.append(one.size[way] / one.px_per_mm)
            needed.append((one.box[way + 2] - one.box[way]) / one.px_per_mm)
        length = min(max(wanted), *most)
        if length < max(needed):
            return None
        sizes.append(length)
    return tuple(
        (sizes[0] * one.px_per_mm, sizes[1] * one.px_per_mm)
        for one, _ in sides
        if one.px_per_mm is not None
    )


def _unless_whole(one: MarksTake, size: tuple[float, float]) -> Box | None:
    nearly = all(part >= WHOLE * of for part, of in zip(size, one.size, strict=True))
    return None if nearly else _placed(one, size)


def _placed(one: MarksTake, size: tuple[float, float]) -> Box:
    """Return the piece of this size whose middle is the marks', moved into the photo."""
    starts, ends = [], []
    for way in (0, 1):
        length = min(max(1, round(size[way])), one.size[way])
        start = round((one.box[way] + one.box[way + 2] - length) / 2)
        start = min(max(start, 0), one.size[way] - length)
        starts.append(start)
        ends.append(start + length)
    return starts[0], starts[1], ends[0], ends[1]

"""The page of a bench card as it is printed: markers, field, ruler, words and pictures, in mm."""

from __future__ import annotations

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker
from desktop_app.part_photos.bench_card.card_layouts import (
    MARGIN_MM,
    MARKER_MM,
    PAGES_MM,
    PAPER_WORDS,
    bench_card,
    gaps,
)
from desktop_app.part_photos.bench_card.drawing import (
    Area,
    Line,
    Point,
    Shape,
    Words,
    block,
    moved,
)
from desktop_app.part_photos.bench_card.how_to import SIZE_MM, how_to
from desktop_app.part_photos.bench_card.marker_modules import black_blocks, marker_modules
from desktop_app.shop_record.trouble import ShopTrouble

_THIN = (
    0.2  # of the ruler's end lines: the middle of a line stays where it is, whatever ink spreads
)
_SAYS = (
    tr(
        "Print at 100 %, not fitted to the page. Lay it flat on a board. Lay the part in "
        "the tinted field. Hold the camera roughly above, all of it sharp."
    ),
    tr(
        "The ruler tells how true the print is: measure it once with a calliper, from the "
        "middle of one end line to the middle of the other, and enter that length."
    ),
)


def card_page(layout: CardLayout) -> tuple[Shape, ...]:
    """Return everything on the page of one of our own cards, in the order in which it is drawn.

    Raises ShopTrouble for a foreign card: where its words and ruler belong isn't known here.
    """
    if layout.paper not in PAGES_MM or layout != bench_card(layout.paper):
        raise ShopTrouble(
            tr("“{name}” is not a card of this program.", name=layout.name),
            do=tr("Print it from where it came from."),
        )
    assert layout.free_field_mm is not None
    low = max(marker.corners_mm[0][1] for marker in layout.markers)
    return (
        Area((block(*layout.free_field_mm),), "tint"),
        *(Area(_black(layout.dictionary, marker)) for marker in layout.markers),
        *_between_lowest(layout, low),
        *_ruler(layout, low + MARKER_MM + 3.3),
        *_foot(layout),
    )


def ruler_ends(layout: CardLayout) -> tuple[float, float]:
    """Return the x of the middles of the ruler's two end lines, in mm."""
    middle = PAGES_MM[layout.paper][0] / 2
    return (middle - layout.check_length_mm / 2, middle + layout.check_length_mm / 2)


def _black(dictionary: str, marker: CardMarker) -> tuple[Line, ...]:
    modules = marker_modules(dictionary, marker.id)
    start, across, _, down = marker.corners_mm

    def at(u: int, v: int) -> Point:
        a, b = u / len(modules), v / len(modules)
        return (
            start[0] + a * (across[0] - start[0]) + b * (down[0] - start[0]),
            start[1] + a * (across[1] - start[1]) + b * (down[1] - start[1]),
        )

    return tuple(
        (at(left, top), at(right, top), at(right, bottom), at(left, bottom))
        for left, top, right, bottom in black_blocks(modules)
    )


def _between_lowest(layout: CardLayout, low: float) -> list[Shape]:
    """Three pictures and the card's name in the gaps of the lowest row."""
    lefts = sorted(one.corners_mm[0][0] for one in layout.markers if one.corners_mm[0][1] == low)
    *pictured, named = gaps(lefts, clear=3.0)
    shapes: list[Shape] = []
    for number, (step, (left, right)) in enumerate(zip(how_to(), pictured, strict=True), 1):
        corner = ((left + right - SIZE_MM[0]) / 2, low + (MARKER_MM - SIZE_MM[1]) / 2)
        shapes += [moved(shape, corner) for shape in step.shapes]
        shapes.append(Words((corner[0], corner[1] + 2.4), str(number), 2.8, bold=True))
    wide, high = PAGES_MM[layout.paper]
    ids = sorted(layout.ids)
    lines = (
        tr("bench card"),
        PAPER_WORDS[layout.paper],
        f"{figure(wide, 'g')} × {figure(high, 'g')} mm",
    )
    shapes.append(Words((named[0], low + 3.0), "Benchwitness", 2.6, bold=True))
    for number, line in enumerate(
        (*lines, tr("markers {first} to {last}", first=ids[0], last=ids[-1])), 1
    ):
        shapes.append(Words((named[0], low + 3.0 + 3.0 * number), line, 2.2))
    return shapes


def _ruler(layout: CardLayout, top: float) -> list[Shape]:
    left, right = ruler_ends(layout)
    middle, half = top + 2.5, _THIN / 2
    # Filled, not stroked: many viewers move thin strokes to whole dots.
    lines = [block(x - half, top, x + half, top + 5) for x in (left, right)]
    lines.append(block(left, middle - half, right, middle + half))
    for mm in range(10, round(layout.check_length_mm), 10):
        below = middle + (2.0 if mm % 50 == 0 else 1.2)
        lines.append(block(left + mm - half, middle, left + mm + half, below))
    length = f"{figure(layout.check_length_mm, 'g')} mm"
    return [Area(tuple(lines)), Words((right + 2.0, middle + 0.9), length, 2.6, bold=True)]


def _foot(layout: CardLayout) -> list[Shape]:
    bottom = PAGES_MM[layout.paper][1] - MARGIN_MM
    return [
        Words((MARGIN_MM, bottom - 0.8 - 3.4 * (len(_SAYS) - 1 - n)), line, 2.25)
        for n, line in enumerate(_SAYS)
    ]

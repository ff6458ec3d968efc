"""The bench cards that the program prints: markers in a ring round a free field for the part."""

from __future__ import annotations

from functools import cache
from itertools import pairwise

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker, Corner
from desktop_app.shop_record.trouble import ShopTrouble

Rect = tuple[float, float, float, float]  # left, top, right, bottom in mm

DICTIONARY = "DICT_5X5_100"
MARKER_MM = 16.0  # seven modules: five of bits, and the black border on both sides
MARGIN_MM = 9.0  # to the page's edge; few printers leave more blank (common practice, no source)
CLEAR_MM = 5.0  # white between markers and field: more than two modules
FOOT_MM = 26.0  # below the lowest markers: ruler, words and margin
RULER_MM = 150.0
ACROSS, DOWN = 5, 7  # markers along each side, corners counted on both

# Width and height in mm. A4: ISO 216. Letter: ANSI/ASME Y14.1, 8.5 by 11 inches.
PAGES_MM = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
_PAPERS = {"a4": "A4", "letter": "Letter"}  # as they are kept: by its name a card is known again
PAPER_WORDS = {"a4": "A4", "letter": tr("Letter")}
# Each paper has ids of its own, so that a photo tells by itself which card lies in it.
_FIRST_IDS = {"a4": 0, "letter": 50}
# Where Letter is the usual paper (Unicode CLDR, supplemental measurementData; from memory).
_LETTER_PLACES = frozenset(
    {"BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"}
)


@cache
def bench_card(paper: str) -> CardLayout:
    """Return the card for "a4" or "letter" paper; a ShopTrouble for any other."""
    if paper not in PAGES_MM:
        raise ShopTrouble(
            tr("There is no bench card for “{paper}” paper.", paper=paper),
            do=tr("Accepted: a4, letter."),
        )
    wide, high = PAGES_MM[paper]
    right, bottom = wide - MARGIN_MM - MARKER_MM, high - FOOT_MM - MARKER_MM
    columns = _spread(MARGIN_MM, right, ACROSS)
    rows = _spread(MARGIN_MM, bottom, DOWN)
    # Clockwise from the page's top left.
    places = [(x, rows[0]) for x in columns[:-1]] + [(columns[-1], y) for y in rows[:-1]]
    places += [(x, rows[-1]) for x in columns[:0:-1]] + [(columns[0], y) for y in rows[:0:-1]]
    field_left = MARGIN_MM + MARKER_MM + CLEAR_MM
    return CardLayout(
        name=f"Benchwitness bench card, {_PAPERS[paper]}",
        dictionary=DICTIONARY,
        paper=paper,
        markers=tuple(
            CardMarker(number, _square(x, y))
            for number, (x, y) in enumerate(places, _FIRST_IDS[paper])
        ),
        check_length_mm=RULER_MM,
        free_field_mm=_rect(field_left, field_left, right - CLEAR_MM, bottom - CLEAR_MM),
    )


def card_words(layout: CardLayout) -> str:
    """Return how people read a card's name: one of our own in the language that is spoken."""
    if layout.paper not in PAGES_MM or layout.name != bench_card(layout.paper).name:
        return layout.name
    return tr("Benchwitness bench card, {paper}", paper=PAPER_WORDS[layout.paper])


def white_patches(layout: CardLayout, times: float = 1.0) -> tuple[Rect, ...]:
    """Return where a print is sure to be bare white paper, in mm; nothing for a foreign card.

    `layout` is the card as it was drawn; the print is `times` as large.

    These are the gaps of the upper row, 23 by 16 mm or more, and then those of both columns; a part
    may hide some of them. The gaps of the lowest row carry pictures and words.
    """
    if layout.paper not in PAGES_MM or layout != bench_card(layout.paper):
        return ()
    lefts = sorted({marker.corners_mm[0][0] for marker in layout.markers})
    tops = sorted({marker.corners_mm[0][1] for marker in layout.markers})
    columns, rows = gaps(lefts), gaps(tops)
    upper = [_rect(x0, tops[0], x1, tops[0] + MARKER_MM) for x0, x1 in columns]
    beside = [_rect(x, y0, x + MARKER_MM, y1) for y0, y1 in rows for x in (lefts[0], lefts[-1])]
    return tuple(_rect(*(times * one for one in patch)) for patch in (*upper, *beside))


def gaps(starts: list[float], clear: float = 2.5) -> list[tuple[float, float]]:
    """Return from where to where it is free between markers that start here, `clear` mm off."""
    return [(one + MARKER_MM + clear, following - clear) for one, following in pairwise(starts)]


def usual_paper(territory: str, house_paper: str = "") -> str:
    """Return "letter" where the house rules or the territory (ISO 3166-1) say so, else "a4"."""
    letter = house_paper == _PAPERS["letter"] or territory.upper() in _LETTER_PLACES
    return "letter" if letter else "a4"


def _spread(first: float, last: float, count: int) -> list[float]:
    return [round(first + (last - first) * n / (count - 1), 3) for n in range(count)]


def _square(x: float, y: float) -> tuple[Corner, Corner, Corner, Corner]:
    right, bottom = round(x + MARKER_MM, 3), round(y + MARKER_MM, 3)
    return ((x, y), (right, y), (right, bottom), (x, bottom))


def _rect(left: float, top: float, right: float, bottom: float) -> Rect:
    return (round(left, 3), round(top, 3), round(right, 3), round(bottom, 3))

"""A card's layout as JSON: written, and read back or refused with the field to mend."""

from __future__ import annotations

import json
from typing import Any, NoReturn

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout, CardMarker, Corner
from desktop_app.part_photos.bench_card.marker_modules import marker_count
from desktop_app.part_photos.json_document import json_document
from desktop_app.shop_record.trouble import ShopTrouble

MOST_LETTERS = 1_000_000
MOST_MARKERS = 1000
MOST_MM = 10_000.0
LEAST_MM2 = 1.0  # area of a marker


def card_json(layout: CardLayout) -> str:
    """Return the layout as JSON, one marker a line."""
    markers = ",\n  ".join(
        json.dumps({"id": marker.id, "corners_mm": marker.corners_mm}) for marker in layout.markers
    )
    facts = {"name": layout.name, "dictionary": layout.dictionary, "paper": layout.paper}
    sizes = {"check_length_mm": layout.check_length_mm, "free_field_mm": layout.free_field_mm}
    head, foot = json.dumps(facts, ensure_ascii=False)[1:-1], json.dumps(sizes)[1:-1]
    return f'{{{head},\n "markers": [\n  {markers}],\n {foot}}}\n'


def read_card(text: str, file: str) -> CardLayout:
    """Return the layout written in `text`; `file` is only named in messages.

    Any card may come: another dictionary, a single marker. Keys that aren't known are left alone.
    Raises ShopTrouble with the field and what is accepted there.
    """
    card = _Card(file, _document(text, file))
    dictionary = card.word("dictionary", tr("a predefined ArUco dictionary, such as DICT_5X5_100"))
    count = marker_count(dictionary)
    if count is None:
        card.refuse(
            "dictionary", tr("is no predefined ArUco dictionary"), tr("DICT_5X5_100, for example")
        )
    length = card.number("check_length_mm", card.facts.get("check_length_mm"))
    if length <= 0:
        card.refuse(
            "check_length_mm", tr("is not above 0"), tr("the ruler's length in mm, such as 150.0")
        )
    return CardLayout(
        name=card.word("name", tr("a name in one line")),
        dictionary=dictionary,
        paper=card.word("paper", tr("a4, letter, or another word")),
        markers=card.markers(count),
        check_length_mm=length,
        free_field_mm=card.free_field(),
    )


class _Card:
    """The facts of one file, each read or refused under its own name."""

    def __init__(self, file: str, facts: dict[str, Any]) -> None:
        self.file = file
        self.facts = facts

    def refuse(self, where: str, what: str, accepted: str) -> NoReturn:
        raise ShopTrouble(
            f"{self.file}: {where} {what}.", do=tr("Accepted: {accepted}.", accepted=accepted)
        )

    def word(self, name: str, accepted: str) -> str:
        value = self.facts.get(name)
        if not isinstance(value, str) or not value.strip():
            self.refuse(name, tr("is missing or no text"), accepted)
        if len(value) > 100 or not value.isprintable():
            self.refuse(
                name,
                tr("is too long or not in one line of text"),
                tr("{accepted}, 100 letters", accepted=accepted),
            )
        return value

    def number(self, where: str, value: object) -> float:
        # A whole number in JSON may have any number of digits: compare before it is made a float.
        if isinstance(value, bool) or not isinstance(value, int | float):
            self.refuse(where, tr("is missing or no number"), tr("a number of millimetres"))
        if value != value:  # JSON's NaN
            self.refuse(where, tr("is no number"), tr("a number of millimetres"))
        if not abs(value) <= MOST_MM:
            self.refuse(
                where, tr("is too large"), tr("millimetres, {most_mm:.0f} at most", most_mm=MOST_MM)
            )
        return float(value)

    def markers(self, count: int) -> tuple[CardMarker, ...]:
        found = self.facts.get("markers")
        if not isinstance(found, list) or not 1 <= len(found) <= MOST_MARKERS:
            self.refuse(
                "markers",
                tr("is no list of markers"),
                tr("1 to {most} of them", most=MOST_MARKERS),
            )
        markers = tuple(self._marker(f"markers[{n}]", one, count) for n, one in enumerate(found))
        seen: set[int] = set()
        for number, marker in enumerate(markers):
            if marker.id in seen:
                self.refuse(
                    f"markers[{number}].id",
                    tr("{id} is there twice", id=marker.id),
                    tr("each id once"),
                )
            seen.add(marker.id)
        return markers

    def free_field(self) -> tuple[float, float, float, float] | None:
        found = self.facts.get("free_field_mm")
        if found is None:
            return None
        if not isinstance(found, list) or len(found) != 4:
            self.refuse(
                "free_field_mm", tr("is not four numbers"), tr("[left, top, right, bottom] in mm")
            )
        left, top, right, bottom = (self.number("free_field_mm", value) for value in found)
        if left >= right or top >= bottom:
            self.refuse(
                "free_field_mm", tr("has no room in it"), tr("left below right, top below bottom")
            )
        return (left, top, right, bottom)

    def _marker(self, where: str, found: object, count: int) -> CardMarker:
        if not isinstance(found, dict):
            self.refuse(
                where,
                tr("is no marker"),
                '{"id": 0, "corners_mm": [' + tr("four corners") + "]}",
            )
        number = found.get("id")
        if isinstance(number, bool) or not isinstance(number, int) or not 0 <= number < count:
            self.refuse(
                f"{where}.id", tr("is not in the dictionary"), tr("0 to {count}", count=count - 1)
            )
        return CardMarker(number, self._corners(f"{where}.corners_mm", found.get("corners_mm")))

    def _corners(self, where: str, found: object) -> tuple[Corner, Corner, Corner, Corner]:
        pairs = found if isinstance(found, list) else []
        if len(pairs) != 4 or not all(isinstance(one, list) and len(one) == 2 for one in pairs):
            self.refuse(
                where, tr("is not four corners"), tr("[[x, y], [x, y], [x, y], [x, y]] in mm")
            )
        a, b, c, d = ((self.number(where, x), self.number(where, y)) for x, y in pairs)
        turns = [_turn(*three) for three in ((a, b, c), (b, c, d), (c, d, a), (d, a, b))]
        if min(turns) <= 0 or (turns[0] + turns[2]) / 2 < LEAST_MM2:
            self.refuse(
                where,
                tr("is no marker's outline"),
                tr(
                    "corners clockwise (x right, y down), convex, {least_mm2:g} mm² at least",
                    least_mm2=LEAST_MM2,
                ),
            )
        return (a, b, c, d)


def _turn(a: Corner, b: Corner, c: Corner) -> float:
    """Twice the area of a triangle in mm²; above 0 where it runs clockwise (y down)."""
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])


def _document(text: str, file: str) -> dict[str, Any]:
    accepted = tr("Accepted: a layout as the card command writes it.")
    return json_document(text, file, tr("a card's layout"), MOST_LETTERS, accepted)

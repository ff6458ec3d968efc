"""A file of marks: JSON that says what gives a photo its millimetres, and what to measure."""

from __future__ import annotations

import json
import math
from dataclasses import dataclass
from typing import Any, NoReturn, cast, get_args

from desktop_app.language import tr
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.json_document import json_document
from desktop_app.part_photos.kept_json import MOST_PX
from desktop_app.part_photos.marks.mark import (
    HIGHEST_MM,
    OUTLINES,
    Mark,
    MarkType,
    Pixel,
    is_height,
)
from desktop_app.part_photos.marks.mark_shape import POINTS
from desktop_app.shop_record.trouble import ShopTrouble

MOST_LETTERS = 5_000_000
MOST_MARKS = 10_000
MOST_POINTS = 200  # of one circle
SCALES = tr(
    "{card} or {two_points}",
    card='"scale": {"card": "CARD.json"}',
    two_points='{"points_px": [[x, y], [x, y]], "length_mm": 25.0}',
)
SCALE_WITHIN = (0.5, 2.0)  # beyond it, somebody wrote the ruler's length itself
_TOP, _CARD = ("scale", "marks", "snap"), ("card", "card_scale")
_TWO = ("points_px", "length_mm", "length_u_mm")
_MARK = ("name", "type", "points_px", "height_mm", "height_u_mm")


@dataclass(frozen=True, slots=True)
class CardAsked:
    """A card's layout file, as it is written there; its measured ruler over the nominal length.

    `card_scale` is None where the file doesn't say it: nobody measured the print.
    """

    file: str
    card_scale: float | None = None


@dataclass(frozen=True, slots=True)
class MarksAsked:
    """What a file of marks asks for."""

    scale: CardAsked | TwoPointScale
    marks: tuple[Mark, ...]
    snap: bool


def called(number: int, mark: Mark) -> str:
    """Return how a mark is spoken of: by its number from 1, and its name."""
    return (
        tr("mark {number} “{name}”", number=number + 1, name=mark.name)
        if mark.name
        else tr("mark {number}", number=number + 1)
    )


def read_marks(text: str, file: str) -> MarksAsked:
    """Return what `text` asks for; `file` is only named in messages.

    Raises ShopTrouble naming the file, the mark and its field, and what is accepted there.
    """
    marks = _Marks(file)
    facts = _document(text, file)
    marks.only("", facts, _TOP)
    found = facts.get("marks")
    if not isinstance(found, list):
        marks.refuse("marks", tr("is missing or no list"), '"marks": [{"type": "length", ...}]')
    if len(found) > MOST_MARKS:
        marks.refuse(
            "marks",
            tr("has {marks} marks", marks=len(found)),
            tr("{number} at most", number=MOST_MARKS),
        )
    snap = facts.get("snap", False)
    if not isinstance(snap, bool):
        marks.refuse("snap", tr("is neither true nor false"), tr("true or false"))
    return MarksAsked(
        scale=marks.scale(facts.get("scale")),
        marks=tuple(marks.mark(number, one) for number, one in enumerate(found)),
        snap=snap,
    )


class _Marks:
    """The facts of one file, each read or refused under its own name."""

    def __init__(self, file: str) -> None:
        self.file = file

    def refuse(self, where: str, what: str, accepted: str) -> NoReturn:
        raise ShopTrouble(
            f"{self.file}: {where} {what}.", do=tr("Accepted: {accepted}.", accepted=accepted)
        )

    def only(self, where: str, facts: dict[str, Any], accepted: tuple[str, ...]) -> None:
        for name in facts:
            if name not in accepted:
                shown = json.dumps(name, ensure_ascii=True)[:60]
                self.refuse(f"{where}{shown}", tr("is not known"), ", ".join(accepted))

    def scale(self, found: object) -> CardAsked | TwoPointScale:
        if not isinstance(found, dict) or ("card" in found) == ("points_px" in found):
            self.refuse("scale", tr("says neither a card nor two points, or both"), SCALES)
        if "card" in found:
            return self._card(found)
        self.only("scale: ", found, _TWO)
        points = self._points("scale: points_px", found["points_px"], 2, 2)
        length = self._number("scale: length_mm", found.get("length_mm"), tr("millimetres above 0"))
        within = self._number(
            "scale: length_u_mm", found.get("length_u_mm", 0.0), tr("millimetres")
        )
        try:
            return TwoPointScale((points[0], points[1]), length, within)
        except ShopTrouble as trouble:
            raise ShopTrouble(f"{self.file}: scale: {trouble.what}", do=trouble.do) from trouble

    def _card(self, found: dict[str, Any]) -> CardAsked:
        self.only("scale: ", found, _CARD)
        card = found["card"]
        if not isinstance(card, str) or not card.strip() or not card.isprintable():
            self.refuse("scale: card", tr("is no file's name"), tr("the path of a CARD.json"))
        said = found.get("card_scale")
        if said is None:
            return CardAsked(card)
        low, high = SCALE_WITHIN
        accepted = tr(
            "the ruler's measured length over its nominal one, {low:g} to {high:g}",
            low=low,
            high=high,
        )
        scale = self._number("scale: card_scale", said, accepted)
        if not low <= scale <= high:
            self.refuse("scale: card_scale", tr("is {value:g}", value=scale), accepted)
        return CardAsked(card, scale)

    def mark(self, number: int, found: object) -> Mark:
        where = tr("mark {number}", number=number + 1)
        if not isinstance(found, dict):
            self.refuse(
                where, tr("is no mark"), '{"type": "length", "points_px": [[x, y], [x, y]]}'
            )
        name = found.get("name", "")
        if not isinstance(name, str) or len(name) > 200 or not name.isprintable():
            self.refuse(
                f"{where}: name",
                tr("is no text in one line"),
                tr("200 letters at most"),
            )
        where += f" “{name}”: " if name else ": "
        self.only(where, found, _MARK)
        kinds = tuple(one for one in get_args(MarkType) if one not in OUTLINES)
        kind = found.get("type")
        if kind not in kinds:
            said = (
                tr("is missing")
                if kind is None
                else tr("{word} is not known", word=json.dumps(kind)[:40])
            )
            self.refuse(f"{where}type", said, ", ".join(kinds))
        least, most = (3, MOST_POINTS) if kind == "circle" else (POINTS.get(str(kind), 2),) * 2
        return Mark(
            type=cast("MarkType", kind),
            points_px=self._points(f"{where}points_px", found.get("points_px"), least, most),
            name=name,
            height_mm=self._height(f"{where}height_mm", found.get("height_mm", 0.0)),
            height_u_mm=self._height(f"{where}height_u_mm", found.get("height_u_mm", 0.0)),
            height_said="height_mm" in found,
        )

    def _height(self, where: str, found: object) -> float:
        accepted = tr("{low:g} to {high:g} mm", low=0, high=HIGHEST_MM)
        value = self._number(where, found, accepted)
        if not is_height(value):
            self.refuse(where, tr("is {value:g}", value=value), accepted)
        return value

    def _points(self, where: str, found: object, least: int, most: int) -> tuple[Pixel, ...]:
        many = (
            tr("{least} points", least=least)
            if least == most
            else tr("{least} to {most} points", least=least, most=most)
        )
        accepted = tr("{many} [[x, y], ...] in pixels", many=many)
        if not isinstance(found, list) or not least <= len(found) <= most:
            said = tr("is missing or no list of points")
            if isinstance(found, list):
                one = len(found) == 1
                said = tr("has 1 point") if one else tr("has {points} points", points=len(found))
            self.refuse(where, said, accepted)
        if not all(isinstance(one, list) and len(one) == 2 for one in found):
            self.refuse(where, tr("has a point that is no pair"), accepted)
        if any(_no_number(value) for point in found for value in point):
            self.refuse(where, tr("has a point with something else than numbers"), accepted)
        return tuple(
            (self._number(where, x, accepted), self._number(where, y, accepted)) for x, y in found
        )

    def _number(self, where: str, value: object, accepted: str) -> float:
        # A whole number in JSON may have any number of digits: compare before it is made a float.
        if not isinstance(value, int | float) or _no_number(value):
            self.refuse(where, tr("is missing or no number"), accepted)
        if not abs(value) <= MOST_PX or not math.isfinite(value):
            self.refuse(where, tr("is too large or no number"), accepted)
        return float(value)


def _no_number(value: object) -> bool:
    return isinstance(value, bool) or not isinstance(value, int | float)


def _document(text: str, file: str) -> dict[str, Any]:
    accepted = tr("Accepted: {accepted}.", accepted=f'{{{SCALES}, "marks": [...]}}')
    return json_document(text, file, tr("a file of marks"), MOST_LETTERS, accepted)

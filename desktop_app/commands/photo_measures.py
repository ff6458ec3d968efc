"""`measure`: marks on photos in millimetres, each with what is uncertain about it."""

from __future__ import annotations

import os
from pathlib import Path
from typing import TYPE_CHECKING, Any

from desktop_app.commands.counting import counting
from desktop_app.commands.named_file import PHOTO, read_named, read_named_text
from desktop_app.commands.outcome import Asked, Outcome, one_or_list
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.bench_card.card_layout import CardLayout
    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.marks.mark import Mark, Measured
    from desktop_app.part_photos.marks.marks_file import MarksAsked
    from desktop_app.part_photos.marks.measured_photo import MeasuredPhoto
    from desktop_app.part_photos.photo_pixels import PhotoPixels


MARKS = "Accepted: PHOTO MARKS.json, the photo first."
LAYOUT = "Accepted: a layout that the card command wrote, such as CARD.json."


def measure(asked: Asked) -> Outcome:
    """Measure in each photo what the file of marks behind it says."""
    paths = [Path(name) for name in asked.inputs]
    if not all(name.strip() for name in asked.inputs):
        raise ShopTrouble("A file's name is empty.", do=MARKS)
    if len(paths) % 2:
        raise ShopTrouble(
            f"{paths[-1]} has no partner: a photo and its file of marks belong together.",
            do="Accepted: PHOTO MARKS.json, once or more.",
        )
    found = [_photo(*pair) for pair in zip(paths[::2], paths[1::2], strict=True)]
    lines: list[str] = []
    for photo, one in zip(paths[::2], found, strict=True):
        lines.extend([f"{photo.name}:"] if len(found) > 1 else [])
        lines.extend(_lines(one))
    return Outcome(one_or_list([_json(one) for one in found]), tuple(lines))


def _photo(photo: Path, marks: Path) -> MeasuredPhoto:
    from desktop_app.part_photos.marks.marks_file import read_marks
    from desktop_app.part_photos.marks.measured_photo import measured_photo
    from desktop_app.part_photos.photo_cannot import PhotoCannot

    asked = read_marks(read_named_text(marks, MARKS), marks.name)
    layout = _card(asked, marks)
    pixels = _pixels(photo)
    try:
        with counting(photo.name) as done:
            return measured_photo(asked, pixels, layout, marks.name, done)
    except PhotoCannot as trouble:
        raise ShopTrouble(f"{photo.name}: {trouble.what}", trouble.kept, trouble.do) from trouble


def _card(asked: MarksAsked, marks: Path) -> CardLayout | None:
    """Read the card's layout, looked for beside the file of marks, then in this folder."""
    from desktop_app.part_photos.bench_card.card_file import read_card
    from desktop_app.part_photos.marks.marks_file import CardAsked

    if not isinstance(asked.scale, CardAsked):
        return None
    named = Path(asked.scale.file)
    places = [marks.parent / named, named]
    card = next((place for place in places if os.path.exists(place)), None)
    if card is None:
        raise ShopTrouble(
            f"{marks.name}: scale: card “{named}” is not there.",
            do="Accepted: a CARD.json beside this file or in the current folder.",
        )
    return read_card(read_named_text(card, LAYOUT), card.name)


def _pixels(photo: Path) -> PhotoPixels:
    from desktop_app.part_photos.intake import look_at
    from desktop_app.part_photos.photo_pixels import photo_pixels

    content = read_named(photo, PHOTO)
    return photo_pixels(content, look_at(photo.name, content).media_type)


def _json(found: MeasuredPhoto) -> dict[str, Any]:
    scale = found.scale
    return {
        "scale": {
            "source": scale.source,
            "tilt_deg": scale.tilt_deg,
            "distance_mm": scale.distance_mm,
        },
        "marks": [_mark(*pair) for pair in zip(found.marks, found.measured, strict=True)],
        "warnings": list(found.warnings),
    }


def _mark(mark: Mark, said: Measured) -> dict[str, Any]:
    whole = mark.type == "count" and said.value is not None
    return {
        "name": mark.name,
        "type": mark.type,
        "value": int(said.value or 0) if whole else said.value,
        "unit": said.unit,
        "expanded_uncertainty": said.expanded_uncertainty,
        "coverage": said.coverage,
        "budget": dict(said.budget),
        "snapped": list(mark.snapped or (False,) * len(mark.points_px)),
        "warnings": list(said.warnings),
    }


def _lines(found: MeasuredPhoto) -> list[str]:
    scale = found.scale
    lines = ["Scale from two points."]
    if scale.tilt_deg is not None and scale.distance_mm is not None:
        lines = [
            f"Scale from the card: tilt {scale.tilt_deg:.0f}°, {scale.distance_mm:.0f} mm away."
        ]
    for mark, said in zip(found.marks, found.measured, strict=True):
        lines.append(f"{mark.name or mark.type}: {_said(mark, said, scale)}")
    return [*lines, *(f"  {warning}" for warning in found.warnings)]


def _said(mark: Mark, said: Measured, scale: PlaneScale) -> str:
    """Return what a mark says, how high it lies and which of its points lie on an edge."""
    from desktop_app.part_photos.mark_words import height_words, value_words

    if mark.type == "note":
        x, y = mark.points_px[0]
        return f"a note on the point ({x:.0f}, {y:.0f})"
    words = value_words(said.value, said.unit, said.expanded_uncertainty) or "no value"
    return "; ".join(one for one in (words, height_words(mark, scale), _edges(mark)) if one)


def _edges(mark: Mark) -> str:
    """Return which points lie on an edge that was found; "" where none was looked for."""
    found = [number for number, yes in enumerate(mark.snapped, start=1) if yes]
    if not mark.snapped:
        return ""
    if len(found) == len(mark.snapped):
        return "all points on edges"
    if not found:
        return "no edge found: points as marked"
    points = "points" if len(found) > 1 else "point"
    return f"on an edge: {points} {', '.join(map(str, found))} of {len(mark.snapped)}"

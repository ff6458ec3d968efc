"""`measure`: marks on photos in millimetres, each with what is uncertain about it."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from desktop_app.commands.outcome import Asked, Outcome, one_or_list
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.bench_card.card_layout import CardLayout
    from desktop_app.part_photos.marks.mark import Mark, Measured
    from desktop_app.part_photos.marks.marks_file import MarksAsked
    from desktop_app.part_photos.marks.measured_photo import MeasuredPhoto
    from desktop_app.part_photos.photo_pixels import PhotoPixels


def measure(asked: Asked) -> Outcome:
    """Measure in each photo what the file of marks behind it says."""
    paths = [Path(name) for name in asked.inputs]
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

    asked = read_marks(_text(marks), marks.name)
    layout = _card(asked, marks)
    pixels = _pixels(photo)
    try:
        return measured_photo(asked, pixels, layout, marks.name)
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
    card = next((place for place in places if place.exists()), None)
    if card is None:
        raise ShopTrouble(
            f"{marks.name}: scale: card “{named}” is not there.",
            do="Accepted: a CARD.json beside this file or in the current folder.",
        )
    return read_card(_text(card), card.name)


def _pixels(photo: Path) -> PhotoPixels:
    from desktop_app.part_photos.actions import read_photo_file
    from desktop_app.part_photos.intake import look_at
    from desktop_app.part_photos.photo_pixels import photo_pixels

    content = read_photo_file(photo)
    return photo_pixels(content, look_at(photo.name, content).media_type)


def _text(path: Path) -> str:
    # A pipe or an endless device is refused here too.
    from desktop_app.part_photos.actions import read_photo_file

    try:
        return read_photo_file(path).decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ShopTrouble(f"{path.name} is not a UTF-8 text file.") from error


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
    from desktop_app.part_photos.mark_words import value_words

    scale = found.scale
    lines = ["Scale from two points."]
    if scale.tilt_deg is not None and scale.distance_mm is not None:
        lines = [
            f"Scale from the card: tilt {scale.tilt_deg:.0f}°, {scale.distance_mm:.0f} mm away."
        ]
    for mark, said in zip(found.marks, found.measured, strict=True):
        words = value_words(said.value, said.unit, said.expanded_uncertainty)
        if mark.type != "note":
            lines.append(f"{mark.name or mark.type}: {words or 'no value'}")
    return [*lines, *(f"  {warning}" for warning in found.warnings)]

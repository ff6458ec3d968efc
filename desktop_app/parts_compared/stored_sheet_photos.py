"""The photos of a pair as a sheet prints them: small copies, their marks, how they were scaled."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.part_photos.cut_out import cut_out
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_lines import mark_lines
from desktop_app.part_photos.mark_words import (
    matters_unsaid,
    method_words,
    share_sentence,
    value_words,
)
from desktop_app.part_photos.marks.mark import SIZED
from desktop_app.part_photos.photo_pixels import photo_pixels
from desktop_app.part_photos.stored_marks import KeptMark, KeptOverlay, marks_of_photos
from desktop_app.part_photos.stored_overlays import overlays_on_sheet
from desktop_app.part_photos.stored_reading import photos_by_id
from desktop_app.part_photos.stored_scales import card_of_scale, readable_scale
from desktop_app.part_photos.thumbnail import damaged, make_thumbnail
from desktop_app.part_photos.upright_picture import UNREADABLE
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.marks_take import marks_take
from desktop_app.parts_compared.pair_view import PhotoShown
from desktop_app.parts_compared.sheet_crop import Box, MarksTake, bar, crops
from desktop_app.parts_compared.sheet_facts import (
    BarPrinted,
    MarkPrinted,
    OverlayPrinted,
    PhotoPrinted,
    Spot,
    SurfacePrinted,
)
from desktop_app.parts_compared.sheet_overlay import Laid, Opened, overlay_picture
from desktop_app.parts_compared.sheet_values import clipped
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.bench_card.card_layout import CardLayout
    from desktop_app.part_photos.camera.plane_scale import PlaneScale

# Pixels of the longer side: at the widest a photo is printed (88 mm) that is 245 dots an inch.
PRINTED_PIXELS = 850
LONGEST_LABEL = 44  # characters beside a mark
# What a mark is called on the sheet where nobody named it; a plain length needs no word.
UNNAMED = {
    "bare-metal": tr("bare metal"),
    "circle": "⌀",
    "angle": tr("angle"),
    "count": tr("count"),
    "parallel-distance": tr("between two lines"),
    "point-to-line": tr("point to line"),
    "round-bar": tr("bar ⌀"),
}
UNREADABLE_OVERLAY = tr(
    "How the new photo lies on the old one is damaged in the record, and so not shown. "
    "Lay them on each other again."
)


@dataclass(frozen=True, slots=True)
class DrawnPhoto:
    """A kept photo with what was drawn on it; `scale` is None where it has no millimetres.

    `card` is that which gives the scale, as large as it was printed.
    """

    kept: KeptPhoto
    marks: tuple[KeptMark, ...]
    scale: PlaneScale | None
    card: CardLayout | None = None


@dataclass(frozen=True, slots=True)
class DrawnPhotos:
    """Photos by id, and what was laid over what, by (old photo, new photo), for the sheet only.

    Of an overlay that can't be read it holds why.
    """

    photos: Mapping[int, DrawnPhoto]
    overlays: Mapping[tuple[int, int], KeptOverlay | ShopDamaged]


def drawn_photos(connection: Connection, ids: Collection[int]) -> DrawnPhotos:
    """Return the photos with these ids and their marks; those that are gone are left out."""
    marks, photos = marks_of_photos(connection, ids), {}
    for photo, kept in photos_by_id(connection, ids).items():
        mine = tuple(one for one in marks if one.photo_id == photo)
        scale, _ = readable_scale(connection, photo)  # a damaged one gives no millimetres
        card = card_of_scale(connection, scale)
        if scale is not None and card is not None:
            card = card.printed(scale.card_scale)
        photos[photo] = DrawnPhoto(kept, mine, None if scale is None else scale.scale, card)
    return DrawnPhotos(photos, overlays_on_sheet(connection, photos))


def photos_printed(
    old: PhotoShown | None,
    new: PhotoShown | None,
    photos: DrawnPhotos,
    files: PhotoFiles,
    length_unit: str,
) -> tuple[PhotoPrinted | None, PhotoPrinted | None]:
    """Return both photos of a view as they are printed, without the camera's notes.

    Each is cut to what is around its marks, at one scale where both have one. Decoding takes its
    time.
    """
    drawn = [photos.photos.get(one.photo_id) if one is not None else None for one in (old, new)]
    takes = [_take(one) if one is not None else None for one in drawn]
    found: list[PhotoPrinted | None] = []
    for shown, photo, take, box in zip((old, new), drawn, takes, crops(*takes), strict=True):
        if shown is None or photo is None:
            found.append(None)
        else:
            found.append(_photo_printed(shown, photo, take, box, files, length_unit))
    return found[0], found[1]


def _photo_printed(
    shown: PhotoShown,
    photo: DrawnPhoto,
    take: MarksTake | None,
    box: Box | None,
    files: PhotoFiles,
    length_unit: str,
) -> PhotoPrinted:
    try:
        content = files.read(shown.sha256)
        if box is None:
            jpeg = make_thumbnail(content, photo.kept.media_type, PRINTED_PIXELS)
        else:
            jpeg = cut_out(content, photo.kept.media_type, box, PRINTED_PIXELS)
    except ShopTrouble as trouble:
        return PhotoPrinted(shown.sha256, shown.note, None, trouble.what)
    seen = box or (0, 0, photo.kept.width, photo.kept.height)
    per_mm = take.px_per_mm if take is not None else None
    mm_wide = (seen[2] - seen[0]) / per_mm if per_mm else None
    laid = bar(mm_wide, length_unit) if mm_wide else None
    sized = any(one.mark.type in SIZED for one in photo.marks)
    return PhotoPrinted(
        shown.sha256,
        shown.note,
        jpeg,
        marks=tuple(mark_printed(one, photo, length_unit, seen) for one in photo.marks),
        scaled_by=scaled_by(photo.scale, length_unit) if photo.scale and sized else "",
        surfaces=tuple(surface_printed(one) for one in photo.marks if one.unit == "%"),
        bar=None if laid is None else BarPrinted(*laid),
        mm_wide=mm_wide,
    )


def _take(photo: DrawnPhoto) -> MarksTake | None:
    size = (photo.kept.width, photo.kept.height)
    return marks_take(size, [one.mark for one in photo.marks], photo.scale)


def surface_printed(mark: KeptMark) -> SurfacePrinted:
    """Return a surface's share as a sentence, with its method and what to beware of."""
    how = method_words(mark.method) if mark.method else ""
    said = (share_sentence(mark.value, mark.expanded_u, mark.method or ""), how, *mark.warnings)
    return SurfacePrinted(
        clipped(mark.mark.name.strip(), LONGEST_LABEL), " ".join(part for part in said if part)
    )


def overlay_printed(
    old: PhotoShown,
    new: PhotoShown,
    photos: DrawnPhotos,
    files: PhotoFiles,
    length_unit: str = "mm",
) -> OverlayPrinted | None:
    """Return the new photo laid over the old one where the sheet shows that.

    Both are ones that could be printed. Takes a second or two.
    """
    kept = photos.overlays.get((old.photo_id, new.photo_id))
    if kept is None:
        return None
    if isinstance(kept, ShopDamaged):
        return OverlayPrinted(None, UNREADABLE_OVERLAY)
    laid = Laid(kept.transform, kept.height_mm, kept.clicks)
    try:
        before, after = (_opened(photos.photos[one.photo_id], files) for one in (old, new))
        return overlay_picture(laid, before, after, length_unit)
    except ShopTrouble as trouble:
        return OverlayPrinted(None, trouble.what)


def _opened(photo: DrawnPhoto, files: PhotoFiles) -> Opened:
    content = files.read(photo.kept.sha256)
    try:
        pixels = photo_pixels(content, photo.kept.media_type)
        return Opened(pixels, photo.scale, photo.card)
    except UNREADABLE as error:
        raise damaged() from error


def mark_printed(mark: KeptMark, photo: DrawnPhoto, length_unit: str, seen: Box) -> MarkPrinted:
    """Return a mark as it is printed: in shares of the piece `seen`, with its name and value."""
    left, top, right, bottom = seen
    width, height = right - left, bottom - top
    lines = mark_lines(mark.mark, photo.scale)

    def shares(points: Sequence[Spot]) -> tuple[Spot, ...]:
        # Pixel centres stand at whole numbers, half a pixel in.
        return tuple(((x + 0.5 - left) / width, (y + 0.5 - top) / height) for x, y in points)

    value = value_words(mark.value, mark.unit, mark.expanded_u, length_unit)
    words = clipped(mark.mark.name.strip() or UNNAMED.get(mark.mark.type, ""), LONGEST_LABEL)
    unsaid = bool(value) and matters_unsaid(mark.mark, photo.scale)
    return MarkPrinted(
        tuple(map(shares, lines.lines)),
        tuple((one, other) for one, other in map(shares, lines.sizes)),
        tuple((one, other) for one, other in map(shares, lines.arrows)),
        shares([lines.label_at])[0],
        " ".join(part for part in (words, value, tr("(height not said)") * unsaid) if part),
        unsaid,
    )


def scaled_by(scale: PlaneScale, length_unit: str) -> str:
    """Say what gives a photo its millimetres, how the camera stood, and what to beware of."""
    parts = [tr("bench card") if scale.source == "card" else tr("two points of a known length")]
    if scale.tilt_deg is not None:
        parts.append(tr("camera {tilt:.0f}° off straight down", tilt=scale.tilt_deg))
    if scale.distance_mm is not None:
        unit, factor = shop_unit("mm", length_unit)
        parts.append(
            tr("{distance:.3g} {unit} away", distance=scale.distance_mm * factor, unit=unit)
        )
    return ". ".join((", ".join(parts), *(one.rstrip(".") for one in scale.warnings)))

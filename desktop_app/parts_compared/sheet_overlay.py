"""The new part laid over the old one, as a sheet shows it: where both differ, or both in one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from io import BytesIO
from typing import TYPE_CHECKING, Any

from desktop_app.language import tr
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.overlay.same_laying import is_same_laying
from desktop_app.parts_compared.sheet_facts import OverlayPrinted

if TYPE_CHECKING:
    from desktop_app.part_photos.bench_card.card_layout import CardLayout
    from desktop_app.part_photos.camera.plane_scale import PlaneScale
    from desktop_app.part_photos.photo_pixels import PhotoPixels

LONGEST_PX = 520
MOST_NAMED = 3  # differences told in words
BLENDED = tr("Both photos lie over each other, half and half.")
NO_DIFFERENCE = tr("No difference that was compared is larger than its uncertainty.")
OUTLINES = tr("Framed is where the outlines differ by more than their uncertainty (95 %).")


@dataclass(frozen=True, slots=True)
class Laid:
    """How the new photo was laid on the old one: new pixels to old pixels, and how it was found.

    `height_mm` is None where nobody said one.
    """

    transform: tuple[tuple[float, ...], ...]
    height_mm: float | None = None
    clicks: Sequence[tuple[Pixel, Pixel]] = ()


@dataclass(frozen=True, slots=True, eq=False)
class Opened:
    """A decoded photo, what gives it its millimetres, and the layout of the card that does."""

    pixels: PhotoPixels
    scale: PlaneScale | None
    card: CardLayout | None = None


def overlay_picture(
    laid: Laid, old: Opened, new: Opened, length_unit: str = "mm"
) -> OverlayPrinted:
    """Return the picture of an alignment that was kept, and what it shows and leaves out.

    Outlines are looked for once more; where they aren't found as they were, both photos are shown
    in one, by the kept transform. Takes its time: call it beside the window.
    """
    import numpy as np

    from desktop_app.part_photos.overlay.align import align
    from desktop_app.part_photos.overlay.difference import differences
    from desktop_app.part_photos.overlay.not_compared import not_compared
    from desktop_app.part_photos.overlay.picture import blend, difference_picture

    kept = np.array(laid.transform, float)
    both = (old.pixels, new.pixels, old.scale, new.scale)
    found = align(*both, laid.height_mm, list(laid.clicks) or None, old.card, new.card)
    moved = found.transform
    size = (new.pixels.width, new.pixels.height)
    found_again = moved is not None and is_same_laying(laid.transform, moved.tolist(), size)
    if found.outlines is None or not found_again:
        picture = blend(old.pixels, new.pixels, kept, longest=LONGEST_PX)
        return OverlayPrinted(_jpeg(picture), BLENDED)
    all_of_them = differences(found)
    picture = difference_picture(
        old.pixels, found, all_of_them, longest=LONGEST_PX, length_unit=length_unit
    )
    said = [one.words(length_unit) for one in all_of_them[:MOST_NAMED]] or [NO_DIFFERENCE]
    left_out = [one.words(length_unit) for one in not_compared(found)]
    caution = [found.caution()] if found.caution() else []
    return OverlayPrinted(_jpeg(picture), " ".join((*caution, OUTLINES, *said, *left_out)))


def _jpeg(picture: Any) -> bytes:
    made = BytesIO()
    picture.convert("RGB").save(made, "JPEG", quality=85)
    return made.getvalue()

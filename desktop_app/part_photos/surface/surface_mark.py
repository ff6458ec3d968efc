"""A surface that was drawn on a photo: its share, with the white of the card it lies on."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import white_patches
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.marks.mark import Measured, Pixel
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.surface.card_white import card_white
from desktop_app.part_photos.surface.surface_share import surface_share

NO_WHITE = tr(
    "No white of the card is seen that can be relied upon: its bare paper is covered, "
    "out of the picture, or differs from place to place. Lay the part into the field, "
    "in even light."
)


def share_of_surface(
    pixels: PhotoPixels,
    region_px: tuple[Pixel, ...],
    bare_px: tuple[Pixel, ...] | None = None,
    scale: PlaneScale | None = None,
    card: CardLayout | None = None,
    card_scale: float = 1.0,
) -> Measured:
    """Return the share of a surface that has another colour than bare metal, in per cent.

    White is that of the card which gives the scale, where it shows some: `card` as it was drawn,
    which was printed `card_scale` times as large. `bare_px` surrounds bare metal, without it a
    neutral grey counts. What can't be counted has no value, and a warning says why. Takes up to a
    second for ten million pixels: call it beside the window.
    """
    white, unsure = None, tuple[str, ...]()
    patches = white_patches(card, card_scale) if card is not None else ()
    if scale is not None and scale.source == "card" and patches:
        white = card_white(pixels, scale, patches, region_px)
        unsure = () if white is not None else (NO_WHITE,)
    try:
        found = surface_share(pixels, region_px, white, bare_px)
    except PhotoCannot as trouble:
        return Measured(None, "%", None, warnings=(*unsure, trouble.sentence()))
    return Measured(
        100 * found.share,
        "%",
        100 * found.expanded_uncertainty,
        warnings=(*unsure, *found.warnings),
        method=found.method,
    )

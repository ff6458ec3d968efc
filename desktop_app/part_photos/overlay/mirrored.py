"""A mirrored photo is refused: told by its card's markers, else by what fits only turned over."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card
from desktop_app.part_photos.camera.markers_found import mirrored_markers
from desktop_app.part_photos.overlay.features import by_features
from desktop_app.part_photos.overlay.plain_way import fits_turned_over
from desktop_app.part_photos.photo_cannot import PhotoCannot

if TYPE_CHECKING:
    from desktop_app.part_photos.photo_pixels import PhotoPixels

LEAST_MARKERS = 3  # one or two may be chance
KEPT = tr("The photo stays as it is.")
AGAIN = tr("Take it again with the main camera, or switch mirroring off in the camera's settings.")


def refuse_mirrored_card(
    pixels: PhotoPixels, cards: Sequence[CardLayout | None], which: str
) -> None:
    """Raise PhotoCannot where the markers of a card are the wrong way round in this photo."""
    known = [*map(bench_card, PAGES_MM), *(card for card in cards if card is not None)]
    if mirrored_markers(pixels.rgb, {card.dictionary for card in known}) >= LEAST_MARKERS:
        raise PhotoCannot(
            tr(
                "The {which} photo is mirrored: its card's markers are the wrong way round.",
                which=which,
            ),
            KEPT,
            AGAIN,
        )


def refuse_turned_over(old: PhotoPixels, new: PhotoPixels) -> None:
    """Raise PhotoCannot where the new photo fits the old one only as its own mirror picture.

    For photos that don't fit as they are. Takes as long as looking whether they do.
    """
    from desktop_app.part_photos.photo_pixels import PhotoPixels as Pixels

    if fits_turned_over(old, new):
        raise PhotoCannot(
            tr(
                "One of the photos is mirrored, or the parts lie on different sides: the "
                "outlines fit only turned over."
            ),
            KEPT,
            tr("Lay both parts the same side up, and take both with the main camera."),
        )
    if by_features(old, Pixels(rgb=new.rgb[:, ::-1].copy())) is not None:
        raise PhotoCannot(
            tr("One of the photos is mirrored: what they show fits only turned over."), KEPT, AGAIN
        )

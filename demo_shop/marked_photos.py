"""Measures in the photos that show a part on the bench card, as a technician would."""

from __future__ import annotations

from demo_shop.darkroom import PhotoOrder
from demo_shop.storyteller import Storyteller
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.find_scale import card_scale
from desktop_app.part_photos.mark_actions import draw_mark, keep_scale
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.photo_pixels import photo_pixels
from desktop_app.part_photos.picture_kind import JPEG

# The name of each mark, and the two features that it runs between.
LENGTHS = {
    "distributor-rotor": (
        ("tip protrusion", "tip end", "tip root"),
        ("tip radius", "tip end", "shaft axis at tip height"),
    )
}
HEIGHT_KNOWN_TO = 0.5  # mm, up or down: read with a calliper from the card to the blade


def mark_on_card(
    teller: Storyteller, who: str, photo: int, order: PhotoOrder, content: bytes
) -> None:
    """Keep where the camera stood, and draw the marks of the part's kind."""
    scale = card_scale(photo_pixels(content, JPEG), [bench_card("a4")])
    teller.do(who, keep_scale, photo, scale)
    for mark in marks_on_card(order):
        teller.do(who, draw_mark, photo, mark, height_known=True)


def marks_on_card(order: PhotoOrder) -> list[Mark]:
    """Return what is measured in the photo of this order, its points where they truly are."""
    from demo_shop.bench_camera.card_photo import card_points

    points = card_points(order.kind, order.side, order.view, order.sizes, seed=order.seed)
    return [
        Mark(
            "length",
            (points[start].at_px, points[end].at_px),
            name=name,
            height_mm=round(points[start].height_mm, 1),
            height_u_mm=HEIGHT_KNOWN_TO,
        )
        for name, start, end in LENGTHS.get(order.kind, ())
    ]

"""Overlays in the record, damaged ones too: which row, and whether it can be read."""

from __future__ import annotations

from collections.abc import Collection

from sqlalchemy import Connection, select

from desktop_app.part_photos.stored import Overlay
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.shop_record.trouble import ShopDamaged


def overlay_row(connection: Connection, old_id: int, new_id: int) -> int | None:
    """Return the id of how the one photo lies on the other, damaged or not, or None."""
    asked = select(Overlay.id).where(Overlay.old_photo_id == old_id, Overlay.new_photo_id == new_id)
    return connection.execute(asked).scalar()


def readable_overlay(
    connection: Connection, old_id: int, new_id: int
) -> KeptOverlay | ShopDamaged | None:
    """Return how the one photo lies on the other, or why that can't be read, or None."""
    try:
        return overlay_of(connection, old_id, new_id)
    except ShopDamaged as trouble:
        return trouble


def overlays_on_sheet(
    connection: Connection, photo_ids: Collection[int]
) -> dict[tuple[int, int], KeptOverlay | ShopDamaged]:
    """Return what the sheet shows laid on each other of some photos, by (old photo, new photo)."""
    ids = list(photo_ids)
    asked = (
        select(Overlay.old_photo_id, Overlay.new_photo_id)
        .where(Overlay.old_photo_id.in_(ids), Overlay.new_photo_id.in_(ids), Overlay.on_sheet == 1)
        .order_by(Overlay.old_photo_id, Overlay.new_photo_id)
    )
    found = {}
    for old, new in connection.execute(asked).all():
        there = readable_overlay(connection, old, new)
        if there is not None:
            found[old, new] = there
    return found

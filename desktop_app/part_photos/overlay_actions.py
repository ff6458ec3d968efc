"""How two photos lie on each other: kept, shown on the sheet, given up."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.stored import Overlay
from desktop_app.part_photos.stored_overlays import overlay_row
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.overlay.alignment import Alignment

_MOST = 1e9  # what is read back; no matrix of two photos comes near it


def keep_overlay(
    record: ShopRecord,
    old_id: int,
    new_id: int,
    alignment: Alignment,
    height_mm: float | None = None,
    clicks: Sequence[tuple[Pixel, Pixel]] = (),
) -> Done:
    """Keep how the new part's photo lies on the old one's; refused where it doesn't.

    `height_mm` is how high its outline lies above the card; None where nobody said so, which is
    then kept with the rest of what is to be known about it.
    """
    if not alignment.aligned or alignment.transform is None:
        raise _cannot(alignment.why)
    transform = [[float(value) for value in line] for line in alignment.transform]
    if not all(abs(value) <= _MOST for line in transform for value in line):  # nan is not
        raise _cannot(tr("Nothing tells where the one lies on the other."))
    values = {
        "transform": json.dumps(transform),
        "method": alignment.method,
        "why": " ".join(part for part in (alignment.caution(), alignment.why) if part),
        "residual_px": alignment.residual_px,
        "residual_mm": alignment.residual_mm,
        "height_mm": height_mm or None,  # no part's upper edge lies on the card itself
        "clicks": json.dumps([[list(old), list(new)] for old, new in clicks]) if clicks else None,
    }

    def work(deed: Deed) -> None:
        there = overlay_row(deed.connection, old_id, new_id)
        if there is None:
            deed.add(Overlay, old_photo_id=old_id, new_photo_id=new_id, on_sheet=0, **values)
        else:
            deed.change(Overlay, there, **values)

    return record.do(tr("Lay one photo on the other"), work)


def show_on_sheet(record: ShopRecord, old_id: int, new_id: int, shown: bool) -> Done:
    """Let the comparison sheet show the two photos laid on each other, or not."""

    def work(deed: Deed) -> None:
        deed.change(Overlay, _there(deed, old_id, new_id), on_sheet=int(shown))

    return record.do(
        tr("Show the overlay on the sheet") if shown else tr("Overlay off the sheet"), work
    )


def forget_overlay(record: ShopRecord, old_id: int, new_id: int) -> Done:
    """Keep no longer how the photos lie on each other, damaged or not; the sheet shows it no more.

    The photos, their marks and scales stay.
    """

    def work(deed: Deed) -> None:
        deed.remove(Overlay, _there(deed, old_id, new_id))

    return record.do(tr("Take two photos apart"), work)


def _there(deed: Deed, old_id: int, new_id: int) -> int:
    there = overlay_row(deed.connection, old_id, new_id)
    if there is None:
        raise ShopTrouble(
            tr("These photos are not laid on each other."), kept=tr("Nothing was changed.")
        )
    return there


def _cannot(why: str) -> ShopTrouble:
    return ShopTrouble(
        tr("These two photos can't be laid on each other: {why}", why=why),
        kept=tr("Nothing was changed."),
        do=tr("Click two common points in both."),
    )

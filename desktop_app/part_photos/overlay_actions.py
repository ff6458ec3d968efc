"""How two photos lie on each other: kept, shown on the sheet, given up."""

from __future__ import annotations

import json
from collections.abc import Sequence
from typing import TYPE_CHECKING

from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.stored import Overlay
from desktop_app.part_photos.stored_marks import overlay_of
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.part_photos.overlay.alignment import Alignment


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
        raise ShopTrouble(
            f"These two photos can't be laid on each other: {alignment.why}",
            kept="Nothing was changed.",
            do="Click two common points in both.",
        )
    transform = [[float(value) for value in line] for line in alignment.transform]
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
        there = overlay_of(deed.connection, old_id, new_id)
        if there is None:
            deed.add(Overlay, old_photo_id=old_id, new_photo_id=new_id, on_sheet=0, **values)
        else:
            deed.change(Overlay, there.id, **values)

    return record.do("Lay one photo on the other", work)


def show_on_sheet(record: ShopRecord, old_id: int, new_id: int, shown: bool) -> Done:
    """Let the comparison sheet show the two photos laid on each other, or not."""

    def work(deed: Deed) -> None:
        there = overlay_of(deed.connection, old_id, new_id)
        if there is None:
            raise ShopTrouble("These photos are not laid on each other yet.")
        deed.change(Overlay, there.id, on_sheet=int(shown))

    return record.do("Show the overlay on the sheet" if shown else "Overlay off the sheet", work)

"""What is kept of an overlay when nobody said a height: none, and the caution with it."""

from __future__ import annotations

import numpy as np
import pytest

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay_actions import keep_overlay
from desktop_app.part_photos.stored_marks import overlay_of
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, picture


@pytest.mark.parametrize("height_mm", [None, 0.0])
def test_without_a_height_the_caution_is_kept_before_the_rest(
    record: ShopRecord, job_id: int, height_mm: float | None
) -> None:
    taken = [
        take_in(record, Arrival(f"{shade}.png", content=encoded(picture(shade=shade), "PNG")))
        for shade in (40, 90)
    ]
    first = add_photos(record, job_id, taken).made
    assert first is not None
    found = Alignment(True, "By outline.", "card and outline", np.eye(3), highest_mm=33.0)
    keep_overlay(record, first, first + 1, found, height_mm)
    with record.reading() as connection:
        kept = overlay_of(connection, first, first + 1)
    assert kept is not None
    assert kept.height_mm is None
    assert kept.why.startswith("How high the outline lies above the card is not known")
    assert kept.why.endswith("By outline.")

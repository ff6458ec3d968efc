"""What is kept of an overlay: its caution; nothing unreadable, and nothing once given up."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.overlay.alignment import Alignment
from desktop_app.part_photos.overlay.same_laying import is_same_laying
from desktop_app.part_photos.overlay_actions import forget_overlay, keep_overlay, show_on_sheet
from desktop_app.part_photos.stored import Overlay
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.part_photos.stored_overlays import overlays_on_sheet, readable_overlay
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from tests.part_photos.bench_pictures import encoded, picture

LAID = Alignment(True, "By clicks.", "clicks", np.eye(3))
SIZE = (4000, 3000)


@pytest.fixture
def photos(record: ShopRecord, job_id: int) -> tuple[int, int]:
    """An old and a new photo."""
    taken = [
        take_in(record, Arrival(f"{shade}.png", content=encoded(picture(shade=shade), "PNG")))
        for shade in (40, 90)
    ]
    first = add_photos(record, job_id, taken).made
    assert first is not None
    return first, first + 1


def kept(record: ShopRecord, photos: tuple[int, int]) -> KeptOverlay | ShopDamaged | None:
    """How the one lies on the other, as the record has it."""
    with record.reading() as connection:
        return readable_overlay(connection, *photos)


def damage(record: ShopRecord) -> None:
    """Let the record hold what nothing of ours has written."""
    record.do("x", lambda deed: deed.change(Overlay, 1, transform="[[NaN, 0, 0]]"))


@pytest.mark.parametrize("height_mm", [None, 0.0])
def test_without_a_height_the_caution_is_kept_before_the_rest(
    record: ShopRecord, photos: tuple[int, int], height_mm: float | None
) -> None:
    found = Alignment(True, "By outline.", "card and outline", np.eye(3), highest_mm=33.0)
    keep_overlay(record, *photos, found, height_mm)
    with record.reading() as connection:
        there = overlay_of(connection, *photos)
    assert there is not None
    assert there.height_mm is None
    assert there.why.startswith("How high the outline lies above the card is not known")
    assert there.why.endswith("By outline.")


@pytest.mark.parametrize("value", [np.nan, np.inf, 1e12])
def test_what_could_not_be_read_back_is_not_kept(
    record: ShopRecord, photos: tuple[int, int], value: float
) -> None:
    matrix = np.eye(3)
    matrix[0, 2] = value
    with pytest.raises(ShopTrouble, match="can't be laid on each other"):
        keep_overlay(record, *photos, replace(LAID, transform=matrix))
    assert kept(record, photos) is None


def test_a_damaged_overlay_can_be_laid_anew(record: ShopRecord, photos: tuple[int, int]) -> None:
    keep_overlay(record, *photos, LAID)
    show_on_sheet(record, *photos, True)
    damage(record)
    assert isinstance(kept(record, photos), ShopDamaged)
    with record.reading() as connection:
        assert isinstance(overlays_on_sheet(connection, photos)[photos], ShopDamaged)
    keep_overlay(record, *photos, LAID)
    there = kept(record, photos)
    assert isinstance(there, KeptOverlay)
    assert there.on_sheet


@pytest.mark.parametrize("broken", [False, True])
def test_an_overlay_is_given_up_damaged_or_not_and_undo_brings_it_back(
    record: ShopRecord, photos: tuple[int, int], broken: bool
) -> None:
    keep_overlay(record, *photos, LAID)
    show_on_sheet(record, *photos, True)
    if broken:
        damage(record)
        show_on_sheet(record, *photos, False)
        show_on_sheet(record, *photos, True)
    assert forget_overlay(record, *photos).words == "Take two photos apart"
    assert kept(record, photos) is None
    with record.reading() as connection:
        assert overlays_on_sheet(connection, photos) == {}
    with pytest.raises(ShopTrouble, match="not laid on each other"):
        forget_overlay(record, *photos)
    assert record.undo().words == "Take two photos apart"
    assert isinstance(kept(record, photos), ShopDamaged if broken else KeptOverlay)


@pytest.mark.parametrize(
    ("shift", "bent", "same"),
    [
        (0.0, 0.0, True),
        (2.9, 0.0, True),
        (3.1, 0.0, False),
        (np.nan, 0.0, False),
        (0.0, -1 / (SIZE[0] - 1), False),  # a corner comes to lie on the horizon
    ],
)
def test_two_layings_are_the_same_where_all_corners_come_to_the_same_place(
    shift: float, bent: float, same: bool
) -> None:
    other = ((1.0, 0.0, shift), (0.0, 1.0, 0.0), (bent, 0.0, 1.0))
    assert is_same_laying(np.eye(3).tolist(), other, SIZE) == same
    assert is_same_laying(other, np.eye(3).tolist(), SIZE) == same

"""Marks, scales and overlays that something else changed: named, and never shown as a number."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

import pytest

from desktop_app.part_photos.mark_actions import (
    draw_mark,
    forget_scale,
    keep_scale,
    keep_two_points,
    remove_mark,
    snap_mark,
)
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import PhotoScale
from desktop_app.part_photos.stored_marks import damaged_marks, mark_by_id, marks_of_photos
from desktop_app.part_photos.stored_scales import readable_scale, scale_of_photo
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_record.trouble import ShopDamaged
from tests.part_photos.marked_photos import scale_over_card
from tests.part_photos.test_mark_surfaces import photo  # noqa: F401 (a fixture)

TIP = Mark("length", ((10.0, 20.0), (40.0, 60.0)), "tip")
DEEP = "[" * 100_000
FIT = json.loads(scale_over_card().as_json())


MARK_DAMAGES: list[dict[str, Any]] = [
    {"points": "[[1]]"},
    {"points": DEEP},
    {"points": "[[NaN, 1], [2, 3]]"},
    {"points": '[["1", 2], [3, 4]]'},
    {"points": "[]"},
    {"points": '{"a": 1}'},
    {"snapped": "[true]"},
    {"snapped": '["no", 1]'},
    {"snapped": "7"},
    {"expanded_u": -1.0},
    {"value": float("inf")},
    {"value": -4.8},
    {"unit": "furlong"},
    {"budget": '{"pointing": -1}'},
    {"budget": '{"pointing": "NaN"}'},
    {"budget": '{"pointing": NaN}'},
    {"budget": "[1]"},
    {"budget": DEEP},
    {"settings": DEEP},
    {"settings": "[]"},
    {"settings": '{"clicks": [[1, 2]]}'},
    {"settings": '{"warnings": "none"}'},
    {"height_mm": -3.0},
    {"height_u_mm": float("inf")},
]
SCALE_DAMAGES: list[dict[str, Any]] = [
    {"fit": DEEP},
    {"fit": "{}"},
    {"fit": json.dumps({**FIT, "theta": FIT["theta"][:5]})},
    {"fit": json.dumps({**FIT, "theta": [float("nan")] * 11})},
    {"fit": json.dumps({**FIT, "covariance": [["a"] * 11] * 11})},
    {"fit": json.dumps({**FIT, "covariance": [[-1.0] * 11] * 11})},
    {"fit": json.dumps({**FIT, "print_u": -0.1})},
    {"fit": json.dumps({**FIT, "flat_u_mm": None})},
    {"fit": json.dumps({**FIT, "distance_mm": "near"})},
    {"fit": json.dumps({**FIT, "markers_seen": [0.5]})},
    {"fit": json.dumps({**FIT, "warnings": "none"})},
    {"fit": json.dumps({**FIT, "prints": "all"})},
    {"card_scale": 0.0},
    {"card_scale": 5.0},
    {"source": "points", "points": None},
]


@contextmanager
def scribbled(
    record: ShopRecord, kept: type[Kept], row: int, damage: dict[str, Any]
) -> Iterator[None]:
    """Let a row hold for a while what nothing of ours has written."""
    record.do("x", lambda deed: deed.change(kept, row, **damage))
    yield
    record.undo()


def test_a_damaged_mark_is_named_and_the_others_stay(record: ShopRecord, photo: int) -> None:  # noqa: F811
    keep_two_points(record, photo, ((0.0, 0.0), (100.0, 0.0)), 10.0)
    whole, broken = (draw_mark(record, photo, TIP).made for _ in range(2))
    assert broken is not None
    snap_mark(record, broken, Mark("length", TIP.points_px, snapped=(True, False)))
    for damage in MARK_DAMAGES:
        with scribbled(record, MarkRow, broken, damage), record.reading() as connection:
            assert [one.id for one in marks_of_photos(connection, [photo])] == [whole], damage
            (found,) = damaged_marks(connection, [photo])
            assert (found.id, found.words()) == (broken, f"mark {broken} “tip”")
            with pytest.raises(ShopDamaged, match=f"mark {broken} of photo {photo}"):
                mark_by_id(connection, broken)
    with record.reading() as connection:
        assert len(marks_of_photos(connection, [photo])) == 2


def test_a_damaged_mark_can_be_taken_out(record: ShopRecord, photo: int) -> None:  # noqa: F811
    broken = draw_mark(record, photo, TIP).made
    assert broken is not None
    record.do("x", lambda deed: deed.change(MarkRow, broken, points="[]"))
    remove_mark(record, broken)
    with record.reading() as connection:
        assert damaged_marks(connection, [photo]) == ()


def test_a_damaged_scale_is_named_and_gives_no_millimetres(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    row = keep_scale(record, photo, scale_over_card()).made
    assert row is not None
    for damage in SCALE_DAMAGES:
        with scribbled(record, PhotoScale, row, damage), record.reading() as connection:
            kept, trouble = readable_scale(connection, photo)
            assert (kept, type(trouble)) == (None, ShopDamaged), damage
            with pytest.raises(ShopDamaged, match=f"the scale of photo {photo}"):
                scale_of_photo(connection, photo)


def test_a_damaged_scale_can_be_taken_out_or_another_put_in_its_place(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    row = keep_scale(record, photo, scale_over_card()).made
    assert row is not None
    record.do("x", lambda deed: deed.change(PhotoScale, row, fit=DEEP))
    forget_scale(record, photo)
    record.undo()
    keep_scale(record, photo, scale_over_card())
    with record.reading() as connection:
        assert scale_of_photo(connection, photo) is not None


@pytest.mark.parametrize("length", [0.0, -10.0, float("inf")])
def test_two_points_of_a_length_that_cannot_be_are_damage(
    record: ShopRecord,
    photo: int,  # noqa: F811
    length: float,
) -> None:
    row = keep_two_points(record, photo, ((0.0, 0.0), (50.0, 0.0)), 10.0).made
    assert row is not None
    record.do("x", lambda deed: deed.change(PhotoScale, row, length_mm=length))
    with record.reading() as connection, pytest.raises(ShopDamaged):
        scale_of_photo(connection, photo)

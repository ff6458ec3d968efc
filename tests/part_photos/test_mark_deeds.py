"""Marks, scales and overlays as deeds: kept, worked out anew, undone, refused."""

from __future__ import annotations

from dataclasses import replace
from importlib import metadata

import numpy as np
import pytest
from sqlalchemy import select

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.mark_actions import (
    draw_mark,
    forget_scale,
    keep_count,
    keep_two_points,
    move_mark,
    remove_mark,
    rename_mark,
    set_height,
    snap_mark,
)
from desktop_app.part_photos.marks.mark import Mark, Measured
from desktop_app.part_photos.overlay.alignment import Alignment, cannot
from desktop_app.part_photos.overlay_actions import keep_overlay, show_on_sheet
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import PhotoScale
from desktop_app.part_photos.stored_marks import (
    KeptMark,
    mark_by_id,
    marks_of_photos,
    overlay_of,
    remove_drawn,
)
from desktop_app.part_photos.stored_reading import remove_photo
from desktop_app.part_photos.stored_scales import scale_of_photo, scale_row_of_photo
from desktop_app.parts_compared.stored import Pair, PhotoReading, Reading
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from tests.part_photos.bench_pictures import encoded, picture

BAR = Mark("length", ((10.0, 20.0), (40.0, 60.0)))  # 50 pixels long
UNSAID = replace(BAR, height_said=False)
SCALE = ((0.0, 0.0), (100.0, 0.0))


@pytest.fixture
def photos(record: ShopRecord, job_id: int) -> tuple[int, int]:
    """Two photos of the job."""
    taken = [
        take_in(record, Arrival(f"{shade}.png", content=encoded(picture(shade=shade), "PNG")))
        for shade in (40, 90)
    ]
    first = add_photos(record, job_id, taken).made
    assert first is not None
    return first, first + 1


def drawn(record: ShopRecord, photo_id: int, mark: Mark = BAR) -> int:
    """Draw a mark and return its id."""
    made = draw_mark(record, photo_id, mark).made
    assert made is not None
    return made


def kept(record: ShopRecord, mark_id: int) -> KeptMark:
    """Return a mark as it is kept."""
    with record.reading() as connection:
        return mark_by_id(connection, mark_id)


def test_a_mark_without_a_scale_has_no_value(record: ShopRecord, photos: tuple[int, int]) -> None:
    mark = kept(record, drawn(record, photos[0]))
    assert mark.mark == UNSAID
    assert (mark.value, mark.unit, mark.expanded_u, mark.height_known) == (None, None, None, False)


def test_the_height_of_a_note_makes_no_size_of_it(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    keep_two_points(record, photos[0], SCALE, 25.0)
    note = drawn(record, photos[0], Mark("note", ((5.0, 5.0), (9.0, 9.0))))
    followed: list[int] = []
    set_height(record, note, 3.0, 0.5, lambda _deed, mark_id: followed.append(mark_id))
    assert (kept(record, note).mark.height_mm, kept(record, note).value) == (3.0, None)
    assert followed == []


def test_a_photo_without_a_scale_has_none_to_take_out(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    forget_scale(record, photos[0])
    with record.reading() as connection:
        assert scale_row_of_photo(connection, photos[0]) is None


def test_a_scale_says_what_made_it_where_nothing_is_installed_too(
    record: ShopRecord, photos: tuple[int, int], monkeypatch: pytest.MonkeyPatch
) -> None:
    def missing(name: str) -> str:
        raise metadata.PackageNotFoundError(name)

    monkeypatch.setattr(metadata, "version", missing)
    keep_two_points(record, photos[0], SCALE, 25.0)
    with record.reading() as connection:
        assert connection.execute(select(PhotoScale.made_by)).scalar_one() == "benchwitness"


def test_a_scale_gives_all_marks_their_size_and_takes_it_again(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])
    heard: list[int] = []
    keep_two_points(record, photos[0], SCALE, 10.0, 0.1, lambda _deed, one: heard.append(one))
    mark = kept(record, mark_id)
    assert mark.value == pytest.approx(5.0)
    assert mark.unit == "mm"
    assert mark.expanded_u is not None
    assert mark.expanded_u > 0
    assert set(mark.budget) == {"pointing", "scale", "height", "flatness", "lens", "print"}
    assert heard == [mark_id]
    with record.reading() as connection:
        scale = scale_of_photo(connection, photos[0])
        assert scale is not None
        assert (scale.points, scale.length_mm) == (SCALE, 10.0)
        assert scale_of_photo(connection, photos[1]) is None
    keep_two_points(record, photos[0], SCALE, 20.0)
    assert kept(record, mark_id).value == pytest.approx(10.0)
    record.undo()
    assert kept(record, mark_id).value == pytest.approx(5.0)
    forget_scale(record, photos[0])
    assert kept(record, mark_id).value is None
    record.undo()
    record.undo()
    assert kept(record, mark_id).value is None


def test_a_moved_mark_says_its_new_size_and_its_readings_follow(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    keep_two_points(record, photos[0], SCALE, 10.0)
    mark_id = drawn(record, photos[0])
    said: list[float | None] = []

    def follow(deed: Deed, one: int) -> None:
        said.append(mark_by_id(deed.connection, one).value)

    move_mark(record, mark_id, [(10.0, 20.0), (70.0, 100.0)], follow)
    assert said == [pytest.approx(10.0)]
    record.undo()
    assert kept(record, mark_id).mark.points_px == BAR.points_px
    assert kept(record, mark_id).value == pytest.approx(5.0)


def test_snapping_keeps_the_click_and_a_hand_takes_the_point_off_its_edge(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])
    found = Mark("length", ((10.0, 20.0), (40.3, 60.4)), snapped=(False, True))
    snap_mark(record, mark_id, found)
    mark = kept(record, mark_id)
    assert (mark.mark.points_px, mark.mark.snapped) == (found.points_px, (False, True))
    assert mark.clicks == BAR.points_px
    move_mark(record, mark_id, [(11.0, 20.0), (40.3, 60.4)])
    assert kept(record, mark_id).mark.snapped == (False, True)
    move_mark(record, mark_id, [(11.0, 20.0), (40.4, 60.4)])
    mark = kept(record, mark_id)
    assert (any(mark.mark.snapped), mark.clicks) == (False, ())


def test_a_mark_is_named_set_high_counted_and_taken_out(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])
    rename_mark(record, mark_id, " tip ")
    set_height(record, mark_id, 12.0, 0.5)
    mark = kept(record, mark_id)
    assert (mark.mark.name, mark.mark.height_mm, mark.mark.height_u_mm) == ("tip", 12.0, 0.5)
    assert mark.height_known
    set_height(record, mark_id, None, None)
    assert not kept(record, mark_id).height_known
    with pytest.raises(ShopTrouble):
        set_height(record, mark_id, -1.0, None)
    ribs = drawn(record, photos[0], Mark("count", BAR.points_px))
    keep_count(record, ribs, Measured(12.0, "", 0.0))
    keep_two_points(record, photos[0], SCALE, 10.0)  # a count doesn't hang on the scale
    assert (kept(record, ribs).value, kept(record, ribs).unit) == (12.0, "")
    remove_mark(record, ribs)
    with pytest.raises(ShopTrouble, match="not on the photo"):
        kept(record, ribs)
    record.undo()
    assert kept(record, ribs).value == 12.0


def test_three_points_on_a_line_are_a_mark_but_no_circle(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    keep_two_points(record, photos[0], SCALE, 10.0)
    mark_id = drawn(record, photos[0], Mark("circle", ((0.0, 0.0), (10.0, 0.0), (20.0, 0.0))))
    assert kept(record, mark_id).value is None
    move_mark(record, mark_id, [(0.0, 0.0), (10.0, 10.0), (20.0, 0.0)])
    assert kept(record, mark_id).value == pytest.approx(2.0)


def test_a_mark_that_is_a_reading_stays_until_the_reading_is_out(
    record: ShopRecord, job_id: int, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])

    def read(deed: Deed) -> None:
        pair = deed.add(Pair, job_id=job_id, part_kind="distributor-rotor")
        reading = deed.add(
            Reading,
            pair_id=pair,
            side="removed",
            dimension="protrusion",
            instrument="photo",
            value=5.0,
            typed="5.0",
            taken_at="2026-11-16T08:00:00+00:00",
        )
        deed.add(PhotoReading, reading_id=reading, mark_id=mark_id, doubt="{}")

    record.do("Take a reading from the photo", read)
    with pytest.raises(ShopTrouble, match="is a reading of the pair"):
        remove_mark(record, mark_id)
    with pytest.raises(ShopTrouble):
        record.do("x", lambda deed: remove_drawn(deed, photos[0]))
    assert kept(record, mark_id).mark == UNSAID


def test_a_photo_goes_with_what_was_drawn_on_it_and_comes_back_with_it(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])
    keep_two_points(record, photos[0], SCALE, 10.0)
    keep_overlay(record, *photos, laid())

    def off(deed: Deed) -> None:
        remove_drawn(deed, photos[0])
        remove_photo(deed, photos[0])

    record.do("Take a photo off the job", off)
    with record.reading() as connection:
        assert marks_of_photos(connection, photos) == ()
        assert overlay_of(connection, *photos) is None
    record.undo()
    assert kept(record, mark_id).value == pytest.approx(5.0)
    with record.reading() as connection:
        assert overlay_of(connection, *photos) is not None


def laid(shift: float = 3.0) -> Alignment:
    """The new photo laid on the old one by a plain shift."""
    matrix = np.array([[1.0, 0.0, shift], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]])
    return Alignment(True, "By clicks.", "clicks", matrix, 0.2, None)


def test_an_overlay_is_data_and_kept_once(record: ShopRecord, photos: tuple[int, int]) -> None:
    clicks = [((1.0, 2.0), (3.0, 4.0)), ((50.0, 2.0), (52.0, 4.0))]
    keep_overlay(record, *photos, laid(), 2.5, clicks)
    show_on_sheet(record, *photos, True)
    keep_overlay(record, *photos, laid(4.0), 2.5, clicks)
    with record.reading() as connection:
        there = overlay_of(connection, *photos)
        assert overlay_of(connection, photos[1], photos[0]) is None
    assert there is not None
    assert there.transform == ((1.0, 0.0, 4.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))
    assert (there.height_mm, there.residual_px, there.on_sheet) == (2.5, 0.2, True)
    assert there.clicks == tuple(clicks)


def test_photos_that_do_not_lie_on_each_other_are_not_kept_so(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    with pytest.raises(ShopTrouble, match="two round parts"):
        keep_overlay(record, *photos, cannot("two round parts"))
    with pytest.raises(ShopTrouble, match="not laid on each other"):
        show_on_sheet(record, *photos, True)


def test_a_mark_that_something_else_wrote_is_told_as_damage(
    record: ShopRecord, photos: tuple[int, int]
) -> None:
    mark_id = drawn(record, photos[0])
    record.do("x", lambda deed: deed.change(MarkRow, mark_id, points="[[1]]"))
    with pytest.raises(ShopDamaged):
        kept(record, mark_id)
    # Another program's kinds are left alone.
    record.do("x", lambda deed: deed.change(MarkRow, mark_id, kind="another program's"))
    with record.reading() as connection:
        assert marks_of_photos(connection, photos) == ()

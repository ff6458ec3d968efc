"""Surfaces and bare metal as deeds: kept with their method, let go when what they rest on moves."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.bench_card.card_file import card_json
from desktop_app.part_photos.bench_card.card_layouts import bench_card, white_patches
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.card_actions import note_printed_card
from desktop_app.part_photos.mark_actions import (
    draw_mark,
    keep_scale,
    keep_shares,
    keep_two_points,
    move_mark,
    remove_mark,
    rename_mark,
)
from desktop_app.part_photos.marks.mark import Mark, Measured
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_marks import (
    KeptMark,
    bare_metal_of,
    marks_of_photos,
)
from desktop_app.part_photos.stored_scales import card_of_scale, scale_of_photo
from desktop_app.part_photos.surface.surface_mark import share_of_surface
from desktop_app.part_photos.surface.surface_share import NO_METAL
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, picture
from tests.part_photos.painted_metal import BARE, PAPER, PART, RUST, STEEL, camera_values, painted

AROUND = Mark("surface", ((10.0, 10.0), (60.0, 10.0), (60.0, 40.0)), "hub")
PLAIN = Mark("bare-metal", ((1.0, 1.0), (9.0, 1.0), (9.0, 9.0)))
SHARE = Measured(12.0, "%", 4.0, method="counted are dots.", warnings=("No white.",))
#: Straight above the card, four pixels a millimetre; the card's corner lies at pixel (0, 0).
ABOVE = CardScale(
    theta=np.array([np.log(1200.0), 0, 0, 0, 0, 0, 0, 0, 0, 0, 300.0]),
    covariance=np.zeros((11, 11)),
    print_u=0.0,
    tilt_deg=0.0,
    distance_mm=300.0,
    mm_per_px=0.25,
    middle_mm=(100.0, 100.0),
    card=bench_card("a4").name,
    markers_seen=(0, 1, 2, 3),
    residual_px=0.1,
    blur_px=0.8,
)


@pytest.fixture
def photo(record: ShopRecord, job_id: int) -> int:
    """A photo of the job."""
    taken = take_in(record, Arrival("cap.png", content=encoded(picture(), "PNG")))
    made = add_photos(record, job_id, [taken]).made
    assert made is not None
    return made


def there(record: ShopRecord, photo: int) -> list[KeptMark]:
    """The marks of the photo."""
    with record.reading() as connection:
        return list(marks_of_photos(connection, [photo]))


def counted(record: ShopRecord, photo: int) -> int:
    """Draw a surface, keep its share and return the mark."""
    made = draw_mark(record, photo, AROUND).made
    assert made is not None
    keep_shares(record, {made: SHARE})
    return made


def test_a_share_is_kept_with_its_method_and_what_to_beware_of(
    record: ShopRecord, photo: int
) -> None:
    mark_id = counted(record, photo)
    (kept,) = there(record, photo)
    assert (kept.value, kept.unit, kept.expanded_u) == (12.0, "%", 4.0)
    assert (kept.method, kept.warnings) == ("counted are dots.", ("No white.",))
    rename_mark(record, mark_id, "tip")
    keep_two_points(record, photo, ((0.0, 0.0), (50.0, 0.0)), 10.0)
    (kept,) = there(record, photo)
    assert (kept.value, kept.mark.name, kept.method) == (12.0, "tip", "counted are dots.")
    assert keep_shares(record, {mark_id: SHARE}).seq is None  # the same again is no deed


def test_a_moved_surface_says_nothing_until_it_is_counted_again(
    record: ShopRecord, photo: int
) -> None:
    mark_id = counted(record, photo)
    move_mark(record, mark_id, ((12.0, 10.0), *AROUND.points_px[1:]))
    (kept,) = there(record, photo)
    assert (kept.value, kept.unit, kept.method, kept.warnings) == (None, None, "", ())
    record.undo()
    assert there(record, photo)[0].value == 12.0


def test_a_photo_has_one_bare_metal_and_its_surfaces_rest_on_it(
    record: ShopRecord, photo: int
) -> None:
    mark_id = counted(record, photo)
    first = draw_mark(record, photo, PLAIN).made
    assert first is not None
    assert there(record, photo)[0].value is None
    keep_shares(record, {mark_id: SHARE})
    draw_mark(record, photo, replace(PLAIN, points_px=AROUND.points_px))
    with record.reading() as connection:
        bare = bare_metal_of(connection, photo)
    assert bare is not None
    assert (bare.id, bare.mark.points_px, bare.value) == (first, AROUND.points_px, None)
    surface, _bare = there(record, photo)
    assert surface.value is None
    record.undo()
    surface, bare = there(record, photo)
    assert (surface.value, bare.mark.points_px) == (12.0, PLAIN.points_px)
    move_mark(record, first, AROUND.points_px)
    assert there(record, photo)[0].value is None
    keep_shares(record, {mark_id: SHARE})
    remove_mark(record, first)
    (surface,) = there(record, photo)
    assert surface.value is None


def test_the_card_of_a_scale_is_as_it_was_printed_or_our_own(
    record: ShopRecord, photo: int
) -> None:
    def card() -> str | None:
        with record.reading() as connection:
            found = card_of_scale(connection, scale_of_photo(connection, photo))
        return None if found is None else card_json(found)

    assert card() is None
    keep_scale(record, photo, ABOVE)
    assert card() == card_json(bench_card("a4"))
    other = replace(bench_card("letter"), name="the old card")
    printed = note_printed_card(record, other).made
    assert printed is not None
    keep_scale(record, photo, replace(ABOVE, card="the old card"), printed)
    assert card() == card_json(other)
    record.do("x", lambda deed: deed.change(PrintedCard, printed, layout="{}"))
    assert card() is None  # and what asks for it goes on without
    keep_two_points(record, photo, ((0.0, 0.0), (50.0, 0.0)), 10.0)
    assert card() is None


def test_white_comes_from_the_card_in_the_photo() -> None:
    lamp = np.array([1.0, 0.8, 0.55])
    scene = np.full((500, 840, 3), PAPER)
    scene[140:420, 200:640] = STEEL
    scene[140:210, 200:640] = RUST
    scene += np.random.default_rng(3).normal(0, 0.01, scene.shape)
    pixels = PhotoPixels(camera_values(scene * lamp))
    outline = ((200.0, 140.0), (639.0, 140.0), (639.0, 419.0), (200.0, 419.0))
    said = share_of_surface(pixels, outline, None, ABOVE, bench_card("a4"))
    assert said.value is not None
    assert said.expanded_uncertainty is not None
    assert abs(said.value - 25.0) <= said.expanded_uncertainty
    assert (said.unit, said.warnings) == ("%", (NO_METAL,))
    assert "balanced to a white in the photo" in said.method
    dark = np.zeros_like(pixels.rgb)
    dark[140:420, 200:640] = pixels.rgb[140:420, 200:640]
    unsure = share_of_surface(PhotoPixels(dark), outline, None, ABOVE, bench_card("a4"))
    assert any("No white of the card" in one for one in unsure.warnings)
    bare = share_of_surface(pixels, outline)
    assert bare.value is not None
    assert bare.value > 90  # without a white the lamp's colour is the part's
    assert any("No white" in one for one in bare.warnings)


def test_white_is_looked_for_where_the_print_has_it() -> None:
    scene = np.zeros((1200, 900, 3))
    for left, top, right, bottom in white_patches(bench_card("a4"), 0.6):
        scene[int(4 * top) : int(4 * bottom) + 2, int(4 * left) : int(4 * right) + 2] = PAPER
    scene[400:600, 300:500] = STEEL
    pixels = PhotoPixels(camera_values(scene))
    outline = ((310.0, 410.0), (490.0, 410.0), (490.0, 590.0), (310.0, 590.0))
    for times, found in ((0.6, True), (1.0, False)):
        said = share_of_surface(pixels, outline, None, ABOVE, bench_card("a4"), times)
        assert (said.warnings == (NO_METAL,)) == found


def test_what_cannot_be_counted_says_why() -> None:
    pixels = painted(0.1, 1).pixels
    said = share_of_surface(pixels, PART[:2], BARE)
    assert (said.value, said.unit) == (None, "%")
    assert "has no outline" in said.warnings[0]

"""The bench camera's photos: repeatable, true to their sizes, and worn where wear belongs."""

from __future__ import annotations

import io
import itertools
from datetime import datetime

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image, ImageOps

from demo_shop.bench_camera.photographer import (
    HEIGHT,
    WIDTH,
    BenchPhoto,
    kinds,
    photograph,
    views,
)
from demo_shop.bench_camera.pinhole import look_at
from demo_shop.bench_camera.subject import Side

TAKEN = datetime(2026, 3, 2, 9, 30, 15)  # noqa: DTZ001 - a camera writes its own clock's time
SIDES: tuple[Side, Side] = ("removed", "replacement")


def shot(
    kind: str, side: Side, view: str, seed: int = 5, width: int = 480, **sizes: float
) -> BenchPhoto:
    """A small photo, to be quick."""
    named = {name.replace("_", "-"): value for name, value in sizes.items()}
    return photograph(kind, side, view, named, seed=seed, taken_at=TAKEN, width=width)


def upright(photo: BenchPhoto) -> NDArray[np.int16]:
    with Image.open(io.BytesIO(photo.jpeg)) as picture:
        return np.asarray(ImageOps.exif_transpose(picture).convert("RGB"), np.int16)


def apart(photo: BenchPhoto, a: str, b: str) -> float:
    points = photo.truth.points_mm
    return float(np.linalg.norm(np.subtract(points[a], points[b])))


def test_the_same_seed_gives_the_same_bytes_and_another_seed_another_photo() -> None:
    first = shot("relay", "removed", "pins")
    again = shot("relay", "removed", "pins")
    other = shot("relay", "removed", "pins", seed=6)
    assert first.jpeg == again.jpeg
    assert first.truth.points_px == again.truth.points_px
    assert first.jpeg != other.jpeg


@pytest.mark.parametrize("kind", kinds())
def test_every_kind_gives_a_sound_photo_of_each_side(kind: str) -> None:
    view = views(kind)[0]
    for side in SIDES:
        photo = shot(kind, side, view)
        with Image.open(io.BytesIO(photo.jpeg)) as picture:
            picture.load()
            assert picture.format == "JPEG"
            turned = photo.truth.orientation in (6, 8)
            assert picture.size == ((360, 480) if turned else (480, 360))
            exif = picture.getexif()
            assert exif[0x0112] == photo.truth.orientation
            assert exif.get_ifd(0x8769)[0x9003] == "2026:03:02 09:30:15"
        assert photo.truth.visible
        assert upright(photo).std() > 12, "a photo without contrast shows nothing"


def test_a_full_photo_has_a_phones_pixels_and_stays_small() -> None:
    photo = shot("distributor-cap", "removed", "inside", width=WIDTH)
    assert upright(photo).shape == (HEIGHT, WIDTH, 3)
    assert len(photo.jpeg) < 250_000


def test_a_small_photo_is_the_same_scene_to_scale() -> None:
    whole = shot("relay", "removed", "pins", width=800).truth
    small = shot("relay", "removed", "pins", width=400).truth
    for name, (x, y) in whole.points_px.items():
        # pixel centres are whole numbers: the picture's corner lies at -0.5
        assert small.points_px[name] == pytest.approx(((x + 0.5) / 2 - 0.5, (y + 0.5) / 2 - 0.5))


def test_at_least_ten_kinds_and_two_views_of_each() -> None:
    assert len(kinds()) >= 10
    assert all(len(views(kind)) >= 2 for kind in kinds())


def test_some_photos_are_stored_turned() -> None:
    tags = {shot("relay", "replacement", "side", seed=n).truth.orientation for n in range(8)}
    assert 1 in tags
    assert len(tags) > 1


@pytest.mark.parametrize(
    ("kind", "view", "size", "value", "a", "b"),
    [
        ("distributor-rotor", "top", "tip-protrusion", 3.7, "tip end", "tip root"),
        ("distributor-rotor", "side", "tip-radius", 27.2, "tip end", "shaft axis at tip height"),
        ("distributor-rotor", "underside", "bore", 12.4, "bore left", "bore right"),
        ("spark-plug", "electrodes", "gap", 1.3, "electrode end", "strap face"),
        ("brake-pads", "edge", "lining-thickness", 4.4, "lining face", "lining root"),
        ("brake-pads", "lining face", "plate-length", 98.0, "plate left", "plate right"),
        ("brake-disc", "edge", "thickness", 26.2, "edge upper", "edge lower"),
        ("oil-filter", "gasket face", "gasket-outer", 70.0, "gasket left", "gasket right"),
    ],
)
def test_a_size_asked_for_is_the_distance_between_its_points(
    kind: str, view: str, size: str, value: float, a: str, b: str
) -> None:
    photo = photograph(kind, "removed", view, {size: value}, seed=2, taken_at=TAKEN, width=320)
    assert photo.truth.sizes[size] == value
    assert apart(photo, a, b) == pytest.approx(value, abs=1e-9)


def test_opposite_terminals_lie_twice_the_terminal_radius_apart() -> None:
    photo = shot("distributor-cap", "removed", "inside", terminal_radius=28.4)
    assert apart(photo, "terminal 1", "terminal 3") == pytest.approx(56.8)


def test_the_truth_in_pixels_is_the_pinhole_projection_of_the_truth_in_millimetres() -> None:
    """Worked here by hand: similar triangles in the camera's own frame."""
    truth = shot("distributor-rotor", "replacement", "top", width=WIDTH).truth
    camera = truth.camera
    for name, place in truth.points_mm.items():
        seen = camera.turn @ (np.array(place) - camera.place)
        x = (WIDTH - 1) / 2 + camera.focal_px * seen[0] / seen[2]
        y = (HEIGHT - 1) / 2 + camera.focal_px * seen[1] / seen[2]
        assert truth.points_px[name] == pytest.approx((x, y))


def test_a_known_length_square_to_the_camera_has_its_known_length_in_pixels() -> None:
    camera = look_at(np.zeros(3), 300.0, 90.0, -90.0, 0.0, 1200.0, (1600, 1200))
    pixels = camera.project(np.array([[-5.0, 0, 0], [5.0, 0, 0], [0, 0, 100.0]]))
    assert pixels[1] - pixels[0] == pytest.approx([40.0, 0.0])  # 10 mm * 1200 px / 300 mm
    assert pixels[2] == pytest.approx([799.5, 599.5])
    nearer = camera.project(np.array([[-5.0, 0, 100.0], [5.0, 0, 100.0]]))
    assert np.ptp(nearer[:, 0]) == pytest.approx(60.0)  # a height of 100 mm: 200 mm away


def test_the_picture_agrees_with_its_truth_at_the_tip_of_the_blade() -> None:
    """Along the blade the brass ends where the truth says, within two pixels."""
    photo = shot("distributor-rotor", "replacement", "tip", seed=3, width=WIDTH)
    end = np.array(photo.truth.points_px["tip end"])
    along = end - np.array(photo.truth.points_px["tip root"])
    along /= np.linalg.norm(along)
    picture = upright(photo)
    steps = np.arange(-14, 15)
    places = np.rint(end + steps[:, None] * along).astype(int)
    colours = picture[places[:, 1], places[:, 0]].astype(float)
    jump = np.abs(np.diff(colours, axis=0)).sum(1)
    assert abs(float(steps[int(jump.argmax())]) + 0.5) <= 2.5


def test_a_worn_part_is_smaller_where_wear_takes_and_alike_where_it_fits() -> None:
    old = shot("distributor-rotor", "removed", "top").truth.sizes
    new = shot("distributor-rotor", "replacement", "top").truth.sizes
    assert old["tip-protrusion"] < new["tip-protrusion"]
    assert old["tip-radius"] < new["tip-radius"]
    assert old["bore"] == new["bore"]
    worn, fresh = (shot("brake-pads", side, "edge").truth.sizes for side in SIDES)
    assert worn["lining-thickness"] < fresh["lining-thickness"]
    assert worn["plate-thickness"] == fresh["plate-thickness"]
    wide, set_ = (shot("spark-plug", side, "electrodes").truth.sizes for side in SIDES)
    assert wide["gap"] > set_["gap"]


def test_grime_darkens_the_brass_of_a_rotor() -> None:
    """The same worn rotor clean and filthy: the blade's brightness falls at the tip."""
    bright = []
    for grime in (0.0, 1.0):
        photo = photograph(
            "distributor-rotor",
            "removed",
            "tip",
            {},
            seed=4,
            taken_at=TAKEN,
            grime=grime,
            width=640,
        )
        points = photo.truth.points_px
        x, y = (np.array(points["tip end"]) * 0.7 + np.array(points["tip root"]) * 0.3).round()
        spot = upright(photo)[int(y) - 10 : int(y) + 11, int(x) - 10 : int(x) + 11]
        bright.append(float(spot.mean()))
    assert bright[1] < bright[0] - 15


def test_words_after_the_name_of_a_view_do_not_matter() -> None:
    plain = shot("relay", "replacement", "side")
    assert plain.truth.view == "side"
    assert shot("relay", "replacement", "side with print").truth.points_mm.keys() == (
        plain.truth.points_mm.keys()
    )


def test_an_unknown_kind_or_view_is_refused_with_what_there_is() -> None:
    with pytest.raises(ValueError, match="distributor-rotor"):
        shot("gear lever", "removed", "top")
    with pytest.raises(ValueError, match="underside"):
        shot("distributor-rotor", "removed", "from far away")


def test_the_parts_of_a_pair_do_not_share_one_photo() -> None:
    pictures = [
        shot(kind, side, views(kind)[0]).jpeg
        for kind, side in itertools.product(("relay", "crank-cam-sensor"), SIDES)
    ]
    assert len(set(pictures)) == len(pictures)

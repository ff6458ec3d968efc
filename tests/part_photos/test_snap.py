"""Points move onto the clear edge near them, to a few hundredths of a pixel, and no other."""

from __future__ import annotations

import math

import numpy as np
import pytest

from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.marks.circle_fit import fit_circle
from desktop_app.part_photos.marks.edge_near import edge_near
from desktop_app.part_photos.marks.mark import Mark, MarkType
from desktop_app.part_photos.marks.snap import snapped
from desktop_app.part_photos.photo_pixels import PhotoPixels
from tests.part_photos.marked_photos import Floats, clicks, fine_grid, looked_at, photo_of

X, Y = fine_grid(61, 61)
FINE = 8


def edge_picture(
    middle: Floats, turn: float, blur: float, dark: float = 0.05, bright: float = 0.8
) -> PhotoPixels:
    """Dark on one side of a straight edge through `middle`, whose normal has the angle `turn`."""
    off = (X - middle[0]) * math.cos(turn) + (Y - middle[1]) * math.sin(turn)
    return photo_of(looked_at(off < 0, FINE, blur, dark, bright))


@pytest.mark.parametrize("blur", [0.0, 0.6, 1.0, 2.0])
def test_an_edge_is_found_without_bias(blur: float) -> None:
    draw = np.random.default_rng(1)
    errors = []
    for _ in range(12):
        middle, turn = 30 + draw.uniform(-0.5, 0.5, 2), draw.uniform(0, 6.28)
        askew, off = draw.uniform(-0.4, 0.4), draw.uniform(-2.5, 2.5)
        way = np.array([math.cos(turn + askew), math.sin(turn + askew)])
        picture = edge_picture(middle, turn, blur)
        found = edge_near(picture.rgb, middle - off * way, way, max(blur, 1.0))
        assert found is not None
        errors.append((found - off) * math.cos(askew))
    # 240 such edges gave a bias of 0.003 px at most, and 0.03 px of scatter.
    assert abs(np.mean(errors)) < 0.02
    assert np.max(np.abs(errors)) < 0.05


def test_in_the_photos_own_values_a_dark_part_would_come_out_too_small() -> None:
    picture = edge_picture(np.array([30.0, 30.0]), 0.0, 1.0, dark=0.02, bright=0.9)
    middle_value = np.interp(
        (picture.rgb[30, 10, 0] / 2 + picture.rgb[30, 50, 0] / 2),
        picture.rgb[30, :, 0],
        np.arange(61),
    )
    found = edge_near(picture.rgb, np.array([30.0, 30.0]), np.array([1.0, 0.0]))
    assert found == pytest.approx(0.0, abs=0.03)
    assert middle_value < 29.6


def rows(light: Floats) -> PhotoPixels:
    """The same light in every row."""
    return photo_of(np.repeat(light[None], 61, axis=0))


def step(places: list[float], blur: float = 1.0) -> Floats:
    """Light along x that turns from dark to bright to dark at these places."""
    inside = sum((X[0] > place).astype(int) for place in places) % 2 == 0
    return looked_at(np.repeat(inside[None], FINE, axis=0), FINE, blur)[0]


@pytest.mark.parametrize(
    ("light", "why"),
    [
        (step([34.0]), "nothing within reach"),
        (step([29.0, 33.0]), "a second edge beside it"),
        (step([30.0], blur=2.5), "a shadow"),
        (0.4 + 0.004 * (np.arange(61) > 30), "hardly any contrast"),
        (np.full(61, 0.4), "nothing at all"),
        (np.linspace(0.1, 0.8, 61), "a shade"),
    ],
)
def test_a_point_stays_where_no_edge_is_clear(light: Floats, why: str) -> None:
    mark = Mark("length", ((30.0, 30.0), (15.0, 30.0)))
    there = snapped(mark, rows(light))
    assert there.points_px == mark.points_px, why
    assert there.snapped == (False, False)


def test_a_point_at_the_pictures_border_stays() -> None:
    mark = Mark("length", ((2.0, 30.0), (59.0, 30.0)))
    assert snapped(mark, rows(step([2.0, 59.0]))).snapped == (False, False)


def test_figures_grow_with_the_blur_of_the_card() -> None:
    mark = Mark("length", ((34.5, 30.0), (10.0, 30.0)))
    soft = rows(step([30.0], blur=2.2))
    assert snapped(mark, soft, card_blur_px=1.0).snapped == (False, False)
    found = snapped(mark, soft, card_blur_px=2.0)
    assert found.snapped == (True, False)
    assert found.points_px[0] == pytest.approx((30.0, 30.0), abs=0.05)


WIDE_X, WIDE_Y = fine_grid(121, 121, 4)
SQUARE = (abs(WIDE_X - 60.25) < 30) & (abs(WIDE_Y - 59.75) < 25)  # 60 by 50 pixels
TURNED = np.radians(8.0)
ALONG = (WIDE_X - 60) * np.cos(TURNED) + (WIDE_Y - 60) * np.sin(TURNED)
ACROSS = (WIDE_Y - 60) * np.cos(TURNED) - (WIDE_X - 60) * np.sin(TURNED)
BAR = abs(ACROSS) < 15  # a strip 30 pixels wide, turned by 8 degrees
DISC = np.hypot(WIDE_X - 59.7, WIDE_Y - 60.4) < 33
SCALE = TwoPointScale(((0.0, 0.0), (100.0, 0.0)), 10.0)


def on_bar(along: float, across: float) -> tuple[float, float]:
    c, s = math.cos(TURNED), math.sin(TURNED)
    return 60 + along * c - across * s, 60 + along * s + across * c


@pytest.mark.parametrize("scale", [None, SCALE])
@pytest.mark.parametrize("kind", ["parallel-distance", "round-bar"])
def test_two_lines_move_across_themselves(kind: MarkType, scale: TwoPointScale | None) -> None:
    picture = photo_of(looked_at(BAR, 4, 0.8))
    places = [(-30, -15), (30, -15), (-28, 15), (31, 15)]
    off = [1.5, -1.2, 0.8, -2.0]
    mark = Mark(kind, tuple(on_bar(a, b + o) for (a, b), o in zip(places, off, strict=True)))
    there = snapped(mark, picture, scale)
    assert there.snapped == (True,) * 4
    for found, (a, b) in zip(there.points_px, places, strict=True):
        # Its own line is drawn a little askew; the point comes to the edge, not to one place of it.
        c, s = math.cos(TURNED), math.sin(TURNED)
        assert (found[1] - 60) * c - (found[0] - 60) * s == pytest.approx(b, abs=0.05)
        assert (found[0] - 60) * c + (found[1] - 60) * s == pytest.approx(a, abs=0.3)


def test_a_point_and_its_line_move_across_the_line() -> None:
    picture = photo_of(looked_at(SQUARE, 4, 0.8))
    mark = Mark("point-to-line", ((60.0, 36.0), (40.0, 83.0), (80.0, 86.0)))
    there = snapped(mark, picture, SCALE)
    assert there.snapped == (True, True, True)
    ys = [y for _, y in there.points_px]
    assert ys == pytest.approx([34.75, 84.75, 84.75], abs=0.05)


def test_a_rim_moves_towards_and_away_from_its_middle() -> None:
    picture = photo_of(looked_at(DISC, 4, 0.8))
    turns = np.linspace(0, 6, 8)
    reach = 33 + np.array([1.5, -1, 0.6, -1.5, 2, -0.3, 1, -2])
    points = np.column_stack([59.7 + reach * np.cos(turns), 60.4 + reach * np.sin(turns)])
    there = snapped(Mark("circle", clicks(points)), picture, SCALE)
    assert all(there.snapped)
    assert fit_circle(there.points_px).radius == pytest.approx(33, abs=0.03)


def test_a_corner_moves_to_where_its_legs_meet() -> None:
    picture = photo_of(looked_at(SQUARE, 4, 0.8))
    mark = Mark("angle", ((80.0, 35.5), (31.5, 35.8), (29.0, 70.0)))
    there = snapped(mark, picture)
    assert there.snapped == (True, True, True)
    assert there.points_px[1] == pytest.approx((30.25, 34.75), abs=0.05)
    assert there.points_px[0] == pytest.approx((80.0, 34.75), abs=0.05)


def test_a_corner_stays_where_only_one_leg_is_clear() -> None:
    picture = photo_of(looked_at(SQUARE, 4, 0.8))
    mark = Mark("angle", ((80.0, 35.5), (31.5, 35.8), (45.0, 70.0)))
    there = snapped(mark, picture)
    assert there.snapped == (True, False, False)
    assert there.points_px[1:] == mark.points_px[1:]


def test_a_corner_stays_where_its_legs_show_no_edge_near_it_or_hardly_turn() -> None:
    # The edge of the first leg ends before the corner: what is seen there is another one's.
    short = SQUARE & ~((WIDE_X < 55) & (WIDE_Y < 60))
    mark = Mark("angle", ((80.0, 35.5), (31.5, 35.8), (29.0, 80.0)))
    there = snapped(mark, photo_of(looked_at(short, 4, 0.8)))
    assert there.snapped == (True, False, True)
    # One straight edge is no corner, wherever it was clicked.
    mark = Mark("angle", ((80.0, 35.5), (60.0, 34.0), (40.0, 35.5)))
    there = snapped(mark, photo_of(looked_at(SQUARE, 4, 0.8)))
    assert there.snapped == (True, False, True)
    assert there.points_px[1] == mark.points_px[1]


@pytest.mark.parametrize(
    "mark",
    [
        Mark("circle", ((30.5, 35.0), (30.5, 60.0), (30.5, 80.0))),  # no circle yet
        Mark("length", ((30.5, 35.0), (90.5, 35.0), (60.0, 60.0))),  # one point too many
    ],
)
def test_points_that_make_no_shape_stay(mark: Mark) -> None:
    there = snapped(mark, photo_of(looked_at(SQUARE, 4, 0.8)))
    assert there.points_px == mark.points_px
    assert there.snapped == (False, False, False)


@pytest.mark.parametrize("kind", ["count", "note"])
def test_counts_and_notes_stay(kind: MarkType) -> None:
    mark = Mark(kind, ((30.0, 35.5), (90.0, 35.5)))
    assert snapped(mark, photo_of(looked_at(SQUARE, 4, 0.8))) == mark


def test_points_on_each_other_stay() -> None:
    mark = Mark("length", ((30.3, 60.0), (30.3, 60.0)))
    assert snapped(mark, photo_of(looked_at(SQUARE, 4, 0.8)), SCALE).snapped == (False, False)

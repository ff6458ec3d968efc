"""The share of a surface that differs from bare metal, on painted metal of known condition."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from skimage.color import rgb2lab

from desktop_app.part_photos.linear_light import to_linear
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.surface.block_doubt import block_doubt
from desktop_app.part_photos.surface.card_white import card_white
from desktop_app.part_photos.surface.cie_lab import lab
from desktop_app.part_photos.surface.surface_share import NO_METAL, surface_share
from tests.part_photos.painted_metal import (
    BARE,
    PART,
    RUST,
    SOOT,
    TINT,
    WHITE,
    camera_values,
    painted,
)

LAMP, SHADE = (1.1, 0.95, 0.65), (0.75, 0.95, 1.1)  # a warm bulb, an open door under a blue sky


@given(st.tuples(*[st.integers(0, 255)] * 3))
def test_colours_are_those_of_scikit_image(rgb: tuple[int, int, int]) -> None:
    # scikit-image, color.rgb2lab (D65, 2 degree observer), an implementation of its own.
    pixel = np.array([[rgb]], np.uint8)
    ours = lab(to_linear(pixel)[0], np.ones(3))
    assert ours == pytest.approx(rgb2lab(pixel)[0], abs=0.05)


def test_white_in_the_photo_becomes_white() -> None:
    white = np.array([0.7, 0.6, 0.4])
    assert lab(np.array([white], np.float32), white) == pytest.approx(
        np.array([[100, 0, 0]]), abs=1e-4
    )


@pytest.mark.parametrize(
    ("cover", "cast", "bare"),
    [(RUST, LAMP, BARE), (RUST, SHADE, None), (TINT, SHADE, BARE), (SOOT, LAMP, None)],
)
def test_the_share_is_found_within_its_uncertainty(
    cover: tuple[float, float, float],
    cast: tuple[float, float, float],
    bare: tuple[tuple[float, float], ...] | None,
) -> None:
    for seed, share in enumerate((0.05, 0.4)):
        photo = painted(share, seed, cover, cast)
        found = surface_share(photo.pixels, PART, WHITE, bare)
        # Blots have soft edges: up to an eighth of a share is lost or won there.
        assert abs(found.share - photo.share) <= found.expanded_uncertainty
        assert found.share == pytest.approx(photo.share, abs=0.055)
        assert found.expanded_uncertainty < 0.08
        assert found.warnings == ((NO_METAL,) if bare is None else ())


@pytest.mark.parametrize("cast", [LAMP, SHADE])
def test_bare_metal_is_bare_in_any_light(cast: tuple[float, float, float]) -> None:
    found = surface_share(painted(0, 3, cast=cast).pixels, PART, WHITE)
    assert found.share < 0.002


def test_old_and_new_are_compared_though_their_light_differs() -> None:
    old = painted(0.35, 5, cast=LAMP, exposure=0.8)
    new = painted(0.05, 6, cast=SHADE, exposure=1.0)
    olds, news = (surface_share(each.pixels, PART, WHITE, BARE) for each in (old, new))
    doubt = np.hypot(olds.expanded_uncertainty, news.expanded_uncertainty)
    assert abs((olds.share - news.share) - (old.share - new.share)) <= doubt


def test_without_a_white_the_colour_of_the_light_is_warned_of() -> None:
    found = surface_share(painted(0.1, 7, cast=LAMP).pixels, PART)
    assert found.share > 0.9  # every pixel looks yellow
    assert "colour cast" in found.warnings[0]
    assert "neutral grey" in found.method


def test_glare_and_deep_shadow_are_left_out_and_counted() -> None:
    photo = painted(0.3, 8)
    spoilt = photo.pixels.rgb.copy()
    spoilt[130:250, 40:260] = 255
    spoilt[130:250, 260:480] = 3
    found = surface_share(PhotoPixels(spoilt), PART, WHITE, BARE)
    assert found.left_out == pytest.approx(0.4, abs=0.01)
    assert any("40% of the surface is glare" in words for words in found.warnings)
    assert "40% of them are glare or deep shadow" in found.method


@pytest.mark.parametrize("seen_to", [420, 340, 312, 60])
@pytest.mark.parametrize("ending", [(6, 4, 2), (255, 255, 255)])
def test_what_cannot_be_seen_is_in_the_doubt(seen_to: int, ending: tuple[int, int, int]) -> None:
    # Half is rust, and some of that (at last all of it) lies in shadow or glare.
    rgb = np.full((600, 600, 3), 150, np.uint8)
    rgb[:, 300:] = (160, 90, 40)
    rgb[:, seen_to:] = ending
    found = surface_share(PhotoPixels(rgb), ((0, 0), (599, 0), (599, 599), (0, 599)))
    assert found.left_out == pytest.approx(1 - seen_to / 600, abs=0.01)
    assert abs(found.share - 0.5) <= found.expanded_uncertainty
    # The doubt reaches from none of the unseen to all of it, and not much further.
    low, high = (found.share + way * found.expanded_uncertainty for way in (-1, 1))
    at_least = max(0, seen_to - 300) / 600
    assert low <= at_least + 0.01
    assert high >= at_least + found.left_out - 0.01
    assert found.expanded_uncertainty < 0.6 * found.left_out + 0.2


def test_bare_metal_of_two_colours_is_warned_of() -> None:
    found = surface_share(painted(0.5, 9).pixels, PART, WHITE, PART)
    assert any("more than one colour" in words for words in found.warnings)


def test_no_sentence_judges() -> None:
    found = surface_share(painted(0.5, 9).pixels, PART, WHITE, PART)
    said = " ".join((found.method, *found.warnings)).lower()
    for verdict in ("worn", "bad", "good", "fail", "replace", "defect", "safe"):
        assert verdict not in said


@pytest.mark.parametrize(
    ("outlines", "said"),
    [
        ({"region_px": PART[:2]}, "The surface has no outline"),
        ({"region_px": ((40, 130), (50, 130), (50, 140))}, "The surface is too small"),
        ({"region_px": ((900, 900), (990, 900), (990, 990))}, "The surface is too small"),
        ({"white": ((1, 1), (3, 1), (3, 3))}, "The white is too small"),
        ({"bare": ()}, "The bare metal has no outline"),
    ],
)
def test_an_outline_that_holds_nothing_is_refused(
    outlines: dict[str, tuple[tuple[float, float], ...]], said: str
) -> None:
    asked = {"region_px": PART, "white": WHITE, "bare": BARE, **outlines}
    with pytest.raises(PhotoCannot, match=said):
        surface_share(painted(0.1, 1).pixels, **asked)


@pytest.mark.parametrize(
    ("where", "said"),
    [
        (np.s_[:110], "The white is overexposed"),
        (np.s_[120:435], "The surface is all glare"),
        (np.s_[435:], "The bare metal that was drawn is glare"),
    ],
)
def test_an_outline_that_is_burnt_out_is_refused(where: object, said: str) -> None:
    rgb = painted(0.1, 1).pixels.rgb.copy()
    rgb[where] = 255  # type: ignore[call-overload]
    with pytest.raises(PhotoCannot, match=said):
        surface_share(PhotoPixels(rgb), PART, WHITE, BARE)


@settings(max_examples=20)
@given(seed=st.integers(0, 2**32 - 1), share=st.floats(0.1, 0.9))
def test_the_doubt_of_independent_blocks_is_that_of_a_coin(seed: int, share: float) -> None:
    # Each block all or nothing, 100 of them: the binomial's sqrt(p (1 - p) / 99), p as it fell.
    rng = np.random.default_rng(seed)
    fell = rng.random((10, 10)) < share
    rows, columns = np.mgrid[:50, :50]
    at = np.stack([columns.ravel(), rows.ravel()], axis=1)
    doubt = block_doubt(at, fell[rows // 5, columns // 5].ravel())
    assert doubt == pytest.approx(np.sqrt(fell.mean() * (1 - fell.mean()) / 99))


def test_one_block_alone_says_nothing_of_the_spread() -> None:
    assert block_doubt(np.array([[7, 9]]), np.array([True])) == 0.5


class _Straight:
    """A camera straight above: ten pixels a millimetre."""

    def to_pixels(self, points_mm: np.ndarray, height_mm: float = 0.0) -> np.ndarray:
        assert height_mm == 0
        return points_mm * 10.0


def patches(count: int) -> list[tuple[float, float, float, float]]:
    """A row of bare paper, each patch 7 mm wide, 12 mm apart."""
    return [(12.0 * n + 1, 1.0, 12.0 * n + 8, 8.0) for n in range(count)]


def white_of(light: np.ndarray, count: int = 8) -> float | None:
    """The left end of the white that is found nearest to (880, 50), pixels."""
    noisy = light + np.random.default_rng(1).normal(0, 0.01, light.shape)
    photo = PhotoPixels(camera_values(noisy))
    found = card_white(photo, _Straight(), patches(count), [(880, 50)])  # type: ignore[arg-type]
    return None if found is None else found[0][0]


def paper() -> np.ndarray:
    return np.full((100, 900, 3), 0.7)


def test_the_nearest_white_that_is_plain_and_in_the_light_counts() -> None:
    light = paper()  # the eighth patch lies out of the picture beyond 900
    light[:, 720:] = 0.2  # in shadow
    light[:, 600:660] = 0.05  # the part hides most of this one
    assert white_of(light) == 490.0


@pytest.mark.parametrize("cover", [(0.55, 0.35, 0.2), (0.3, 0.35, 0.6), (0.2, 0.2, 0.2)])
def test_a_part_that_covers_the_paper_is_no_white(cover: tuple[float, float, float]) -> None:
    light = paper()
    light[:, 600:] = cover  # over the two nearest patches, plainly
    assert white_of(light) == 490.0


def test_where_too_few_patches_agree_there_is_no_white() -> None:
    light = paper()
    for place, colour in enumerate([(0.55, 0.35, 0.2), (0.3, 0.35, 0.6), (0.3, 0.6, 0.3)] * 2):
        light[:, 120 * place : 120 * place + 120] = colour
    assert white_of(light) is None
    assert white_of(paper(), 2) is None  # both may lie under the part
    photo, tiny = PhotoPixels(camera_values(paper())), [(n, 1.0, n + 0.2, 1.2) for n in range(1, 9)]
    assert card_white(photo, _Straight(), tiny, [(880, 50)]) is None  # type: ignore[arg-type]


def test_no_white_is_found_where_none_is_seen() -> None:
    black = PhotoPixels(np.zeros((100, 900, 3), np.uint8))
    assert card_white(black, _Straight(), patches(8), [(380, 50)]) is None  # type: ignore[arg-type]
    assert card_white(black, _Straight(), (), [(380, 50)]) is None  # type: ignore[arg-type]

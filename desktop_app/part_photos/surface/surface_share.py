"""The share of a surface whose colour differs from bare metal: corrosion, burn marks, varnish.

A number to compare old with new by, never a verdict.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.part_photos.mark_words import NEUTRAL
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.surface.block_doubt import block_doubt
from desktop_app.part_photos.surface.cie_lab import lab
from desktop_app.part_photos.surface.drawn_region import DrawnRegion, Outline, drawn_region

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]

# Common practice, no source: rust lies about 30 chroma units from bare steel, a heat tint 10 to 20.
CHROMA_APART = 10.0
LIGHTNESS_BELOW = 30.0
MOVED_BY = 0.25  # of both thresholds, up and down: how well anybody knows where bare metal ends
METAL_KNOWN_TO = 2.0  # units of a* and b*: how well white and bare metal are known
MUCH_LEFT_OUT = 0.30
UNEVEN = 5.0  # units of chroma: bare metal spread wider than this is no one colour
COVERAGE_FACTOR = 2.0  # for about 95 %: JCGM 100:2008, G.6.6


@dataclass(frozen=True, slots=True)
class SurfaceShare:
    """A share of area, 0 to 1, with its expanded uncertainty (about 95 %).

    `left_out` is the share of the outline that was glare or deep shadow; of that any part may
    differ, and the uncertainty says so. `method` says in one sentence what was counted; it goes on
    after "How:".
    """

    share: float
    expanded_uncertainty: float
    left_out: float
    method: str
    warnings: tuple[str, ...]


NO_METAL = tr(
    "No bare metal was drawn, so grey counts as bare: brass, copper, paint and plastic "
    "differ from that when they are new. Draw a bare place of this part."
)


@dataclass(frozen=True, slots=True)
class _Metal:
    """Bare metal's colour in L*, a*, b*."""

    lightness: float
    a: float
    b: float


def surface_share(
    pixels: PhotoPixels,
    region_px: Outline,
    white: Outline | None = None,
    bare: Outline | None = None,
) -> SurfaceShare:
    """Return what share of a drawn region differs in colour from bare metal.

    All outlines are (x, y) in upright pixels. `white` surrounds white paper in the same light;
    without it the photo's own white counts. `bare` surrounds bare metal; without it a neutral grey
    counts, as light as the neutral part of the region. A pixel differs where its chroma distance
    from bare metal in CIE a*, b* is above 10 units, or its lightness L* is more than 30 below.
    The uncertainty (JCGM 100:2008) is from moving both thresholds by a quarter and bare metal by 2
    units, each a rectangular distribution, and from the spread between blocks of the region. What
    is glare or deep shadow may differ in any part, from none to all (rectangular, 4.3.7): the
    middle of that is counted.
    Raises PhotoCannot where an outline is too small or shows nothing but glare and deep shadow.
    """
    region = drawn_region(pixels, region_px, tr("The surface"))
    light_of_white, warnings = _white(pixels, white)
    if region.left_out > 0.95:
        raise PhotoCannot(
            tr("The surface is all glare or deep shadow: it has no colour to count."),
            do=tr("Light it from the side, through a sheet of white paper, and take it again."),
        )
    seen = lab(region.light[region.tells], light_of_white)
    metal, of_metal = _metal(pixels, bare, light_of_white, seen)
    counted = _differs(seen, metal)
    u_of_seen = math.hypot(*_moved(seen, metal), block_doubt(region.at[region.tells], counted))
    unseen = region.left_out
    u = math.hypot((1 - unseen) * u_of_seen, unseen / 2 / math.sqrt(3))
    return SurfaceShare(
        share=(1 - unseen) * float(counted.mean()) + unseen / 2,
        expanded_uncertainty=COVERAGE_FACTOR * u,
        left_out=unseen,
        method=_method(region, bare is not None, white is not None),
        warnings=(*warnings, *of_metal, *_left_out(region)),
    )


def _white(pixels: PhotoPixels, white: Outline | None) -> tuple[Floats, tuple[str, ...]]:
    """Return the linear light of white, and what to say about it."""
    import numpy as np

    if white is None:
        return np.ones(3), (
            tr("No white was given: a colour cast of the light counts as colour of the part."),
        )
    paper = drawn_region(pixels, white, tr("The white"))
    if paper.left_out > 0.5:
        raise PhotoCannot(
            tr("The white is overexposed: what colour the light has can't be told from it."),
            do=tr("Take the photo a little darker, or draw another white."),
        )
    return np.median(paper.light[paper.tells], axis=0).astype(np.float64), ()


def _metal(
    pixels: PhotoPixels, bare: Outline | None, white: Floats, seen: Floats
) -> tuple[_Metal, tuple[str, ...]]:
    """Return the colour of bare metal, and what to say about it."""
    import numpy as np

    if bare is None:
        neutral = np.hypot(seen[:, 1], seen[:, 2]) <= CHROMA_APART
        lightness = float(np.percentile(seen[neutral, 0], 75)) if neutral.any() else 0.0
        return _Metal(lightness, 0.0, 0.0), (NO_METAL,)
    drawn = drawn_region(pixels, bare, tr("The bare metal"))
    if drawn.left_out > 0.5:
        raise PhotoCannot(
            tr("The bare metal that was drawn is glare or deep shadow."),
            do=tr("Draw another place."),
        )
    colours = lab(drawn.light[drawn.tells], white)
    lightness, a, b = np.median(colours, axis=0)
    spread = float(np.median(np.hypot(colours[:, 1] - a, colours[:, 2] - b)))
    uneven = (
        tr(
            "The bare metal that was drawn has more than one colour: draw a place that is all bare."
        ),
    )
    metal = _Metal(float(lightness), float(a), float(b))
    return metal, (uneven if spread > UNEVEN else ())


def _differs(
    seen: Floats, metal: _Metal, times: float = 1.0, a: float = 0.0, b: float = 0.0
) -> NDArray[np.bool_]:
    """Tell which colours differ, with both thresholds `times` as large and bare metal moved."""
    import numpy as np

    chroma = np.hypot(seen[:, 1] - metal.a - a, seen[:, 2] - metal.b - b)
    below = metal.lightness - seen[:, 0]
    return (chroma > CHROMA_APART * times) | (below > LIGHTNESS_BELOW * times)


def _moved(seen: Floats, metal: _Metal) -> tuple[float, float]:
    """Return what the thresholds and bare metal's colour add to the standard uncertainty."""

    def half_range(*shares: float) -> float:
        return (max(shares) - min(shares)) / 2

    thresholds = half_range(
        *(float(_differs(seen, metal, 1 + way * MOVED_BY).mean()) for way in (-1, 0, 1))
    )
    ways = ((0, 0), (1, 0), (-1, 0), (0, 1), (0, -1))
    colour = half_range(
        *(
            float(_differs(seen, metal, 1.0, METAL_KNOWN_TO * a, METAL_KNOWN_TO * b).mean())
            for a, b in ways
        )
    )
    return thresholds / math.sqrt(3), colour / math.sqrt(3)


def _method(region: DrawnRegion, by_bare: bool, by_white: bool) -> str:
    metal = tr("the bare metal drawn") if by_bare else NEUTRAL
    white = tr("a white in the photo") if by_white else tr("the photo's own white")
    return tr(
        "counted are pixels more than {chroma_apart:g} units of CIE a*, b* from "
        "{metal} or more than {lightness_below:g} units of L* darker, balanced to "
        "{white}; {tells:,} pixels. {left_out:.0%} of them are glare or deep shadow, "
        "of which anything from none to all may differ.",
        chroma_apart=CHROMA_APART,
        metal=metal,
        lightness_below=LIGHTNESS_BELOW,
        white=white,
        tells=len(region.tells),
        left_out=region.left_out,
    )


def _left_out(region: DrawnRegion) -> tuple[str, ...]:
    if region.left_out <= MUCH_LEFT_OUT:
        return ()
    return (
        tr(
            "{left_out:.0%} of the surface is glare or deep shadow, which says nothing of "
            "its colour: light it from the side, through a sheet of white paper.",
            left_out=region.left_out,
        ),
    )

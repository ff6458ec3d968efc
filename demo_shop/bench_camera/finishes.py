"""What surfaces are made of, and what has settled on or eaten into them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from demo_shop.bench_camera.grain import Grain, Pixels

Colour = tuple[float, float, float]
Cover = Callable[[Pixels, Pixels, Pixels, Grain], Pixels]


@dataclass(frozen=True, slots=True)
class Coat:
    """Something over the surface: `cover` says how much (0 to 1) at a point of the part."""

    colour: Colour
    cover: Cover
    gloss: float = 0.1
    rough: float = 0.5
    speckle: float = 0.15


@dataclass(frozen=True, slots=True)
class Finish:
    """A material: linear colour, gloss 0 (dull) to 1 (mirror), metal or not, unevenness."""

    colour: Colour
    gloss: float = 0.4
    metal: bool = False
    uneven: float = 0.06
    blotch_mm: float = 6.0
    rough: float = 0.05
    rough_mm: float = 3.0
    coats: tuple[Coat, ...] = ()

    def under(self, *coats: Coat) -> Finish:
        """The same material with more on it."""
        return replace(self, coats=self.coats + coats)


BRASS = Finish((0.74, 0.50, 0.19), gloss=0.8, metal=True, uneven=0.05, rough=0.04)
COPPER = Finish((0.68, 0.34, 0.20), gloss=0.7, metal=True)
STEEL = Finish((0.52, 0.53, 0.54), gloss=0.68, metal=True, uneven=0.06, rough=0.05)
PLATED = Finish((0.66, 0.66, 0.62), gloss=0.78, metal=True, uneven=0.05, rough=0.03)
CAST_IRON = Finish(
    (0.30, 0.30, 0.31), gloss=0.42, metal=True, uneven=0.12, rough=0.25, rough_mm=1.5
)
ALUMINIUM = Finish((0.62, 0.63, 0.65), gloss=0.55, metal=True, uneven=0.08, rough=0.12)
BLACK_PLASTIC = Finish((0.026, 0.026, 0.028), gloss=0.42, uneven=0.12, rough=0.06)
GREY_PLASTIC = Finish((0.16, 0.17, 0.18), gloss=0.35, uneven=0.06, rough=0.05)
BROWN_PLASTIC = Finish((0.115, 0.040, 0.020), gloss=0.45, uneven=0.08, rough=0.05)
RUBBER = Finish((0.036, 0.036, 0.038), gloss=0.26, uneven=0.15, rough=0.14, rough_mm=1.5)
PORCELAIN = Finish((0.80, 0.79, 0.76), gloss=0.75, uneven=0.015, rough=0.01)
CARBON = Finish((0.03, 0.03, 0.032), gloss=0.3, uneven=0.15, rough=0.15)
PAINTED = Finish((0.035, 0.07, 0.16), gloss=0.6, uneven=0.03, rough=0.03)
BLACK_PAINT = Finish((0.035, 0.036, 0.038), gloss=0.45, uneven=0.06, rough=0.08)
LINING = Finish(
    (0.105, 0.095, 0.085), gloss=0.1, uneven=0.30, blotch_mm=1.6, rough=0.4, rough_mm=1.2
)

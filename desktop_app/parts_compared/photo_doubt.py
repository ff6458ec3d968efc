"""What a mark on a photo leaves open, as the doubt of the reading that was taken from it."""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import astuple, dataclass, fields

#: What stays of a print error that two photos share: they stand at other distances, and
#: each was fitted for itself. Common practice, no source.
STAYS = 0.1


@dataclass(frozen=True, slots=True)
class PhotoDoubt:
    """Standard uncertainties of one reading from a mark, in the reading's unit.

    `pointing` is the mark's own: where its points were placed. `camera` is the photo's: the fit of
    the camera, its lens, and how flat the paper lay. `height` comes from the height that was
    entered for the feature, `printed` from the card's print. Readings with one `shared_key` were
    taken on the same printed card at the same height, so that an error of the print is in both;
    "" shares nothing.
    """

    pointing: float
    camera: float
    height: float
    printed: float
    shared_key: str = ""

    @property
    def lasting(self) -> tuple[float, float, float]:
        """What more marks on the same photo don't make smaller."""
        return self.camera, self.height, self.printed

    def times(self, factor: float) -> PhotoDoubt:
        """Return the doubt in another unit."""
        camera, height, printed = (factor * one for one in self.lasting)
        return PhotoDoubt(factor * self.pointing, camera, height, printed, self.shared_key)


def of_the_mean(doubts: Sequence[PhotoDoubt]) -> PhotoDoubt:
    """Return the doubt of one of several marks, so that that of their mean follows.

    Pointing is independent from mark to mark: the root of its mean square, to be divided by the
    root of their number. All else may be in every one of them: the largest counts, undivided.
    """
    pointing = math.sqrt(math.fsum(one.pointing**2 for one in doubts) / len(doubts))
    camera, height, printed = map(max, zip(*(one.lasting for one in doubts), strict=True))
    keys = {one.shared_key for one in doubts}
    return PhotoDoubt(pointing, camera, height, printed, keys.pop() if len(keys) == 1 else "")


def left_between(one: PhotoDoubt, other: PhotoDoubt) -> tuple[float, ...]:
    """Return the standard uncertainties that stay in a difference, pointing aside.

    Cameras are independent, and so are heights: a worn and a new part may differ within the range
    that was typed for both. The print of one card cancels as far as both have as much of it (fully
    correlated inputs, JCGM 100:2008, 5.2.2), except for STAYS of the larger.
    """
    a, b = one.printed, other.printed
    shared = one.shared_key == other.shared_key != ""
    printed = abs(a - b) + STAYS * max(a, b) if shared else math.hypot(a, b)
    return one.camera, other.camera, math.hypot(one.height, other.height), printed


def doubt_json(doubt: PhotoDoubt) -> str:
    """Return the doubt as it is kept."""
    return json.dumps(dict(zip(_NAMES, astuple(doubt), strict=True)))


def doubt_from_json(text: str) -> PhotoDoubt:
    """Return a kept doubt; raises ValueError where the text holds none."""
    try:
        kept = json.loads(text)
        parts = [float(kept[name]) for name in _NAMES[:-1]]
        shared = str(kept["shared_key"])
    except (KeyError, TypeError) as error:
        raise ValueError(f"no photo doubt: {text[:80]}") from error
    if not all(math.isfinite(part) and part >= 0 for part in parts):
        raise ValueError(f"no photo doubt: {text[:80]}")
    pointing, camera, height, printed = parts
    return PhotoDoubt(pointing, camera, height, printed, shared)


_NAMES = tuple(one.name for one in fields(PhotoDoubt))

"""The card's markers in a photo: found in a small copy, measured in the photo itself."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.part_photos.camera.marker_edges import MarkerEdges, marker_edges

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Floats = NDArray[np.float64]
    Picture = NDArray[np.uint8]

SMALL_PX, MIDDLE_PX, TINY_PX = 1400, 4200, 500  # the copy's long side
CLEAR_MODULE_PX = 5.0  # in the small copy: what is this large there wouldn't be missed
MOST_RMS_PX = 0.6
LEAST_GOOD = 0.5


@dataclass(frozen=True, slots=True, eq=False)
class FoundMarker:
    """One marker in the photo: its dictionary and id, its edges, and the px of one module."""

    dictionary: str
    id: int
    edges: MarkerEdges
    module_px: float

    @property
    def clear(self) -> bool:
        """Whether all four edges are seen and straight: nothing covers one."""
        fits = (self.edges.rms_px <= MOST_RMS_PX) & (self.edges.good >= LEAST_GOOD)
        return bool(fits.all())


@dataclass(frozen=True, slots=True, eq=False)
class FoundMarkers:
    """All markers of some dictionaries in a photo, and which (dictionary, id) are there twice."""

    markers: tuple[FoundMarker, ...]
    twice: frozenset[tuple[str, int]]


def find_markers(rgb: Picture, dictionaries: Iterable[str], at_most: int) -> FoundMarkers:
    """Find the markers of these dictionaries; a card carries `at_most` of them."""
    import cv2
    import numpy as np

    grey = np.asarray(cv2.cvtColor(rgb, cv2.COLOR_RGB2GRAY), np.uint8)
    found: list[FoundMarker] = []
    twice: set[tuple[str, int]] = set()
    for dictionary in sorted(set(dictionaries)):
        modules = _modules(dictionary)
        rough, doubled = _rough(grey, dictionary, modules, at_most)
        twice |= {(dictionary, one) for one in doubled}
        for number, corners in sorted(rough.items()):
            edges = marker_edges(rgb, corners, modules)
            found.append(FoundMarker(dictionary, number, edges, _side(corners) / modules))
    return FoundMarkers(tuple(found), frozenset(twice))


def mirrored_markers(rgb: Picture, dictionaries: Iterable[str]) -> int:
    """Return how many markers there would be if the photo were mirrored back."""
    import cv2
    import numpy as np

    grey, _ = _copy(np.asarray(cv2.cvtColor(rgb, cv2.COLOR_RGB2GRAY), np.uint8), SMALL_PX)
    turned = np.ascontiguousarray(grey[:, ::-1])
    return sum(len(_detected(turned, dictionary)) for dictionary in set(dictionaries))


def _rough(
    grey: Picture, dictionary: str, modules: int, at_most: int
) -> tuple[dict[int, Floats], set[int]]:
    """Corners by id, good to a few pixels: from the small copy, and a larger one where needed."""
    found: dict[int, Floats] = {}
    twice: set[int] = set()
    sizes = [SMALL_PX, MIDDLE_PX] if max(grey.shape) > SMALL_PX else [SMALL_PX]
    # What is badly blurred is found in a tiny copy only; it is found so that it can be told.
    for longest in (*sizes, TINY_PX):
        if longest == TINY_PX and found:
            break
        small, scale = _copy(grey, longest)
        for number, corners in _detected(small, dictionary):
            here = (corners + 0.5) * scale - 0.5
            if number not in found:
                found[number] = here
            elif abs(here - found[number]).max() > _side(here) / 2:
                twice.add(number)
        least = min((_side(one) for one in found.values()), default=0.0) / modules / scale.max()
        if len(found) >= at_most or least > CLEAR_MODULE_PX:
            break
    return {number: found[number] for number in found.keys() - twice}, twice


def _copy(grey: Picture, longest: int) -> tuple[Picture, Floats]:
    """A copy whose long side is `longest` at most, and its pixels' width and height in pixels."""
    import cv2
    import numpy as np

    scale = max(grey.shape) / longest
    if scale <= 1:
        return grey, np.ones(2)
    size = (max(1, round(grey.shape[1] / scale)), max(1, round(grey.shape[0] / scale)))
    small = cv2.resize(grey, size, interpolation=cv2.INTER_AREA)
    return np.asarray(small, np.uint8), np.array(grey.shape[::-1]) / size


def _detected(grey: Picture, dictionary: str) -> list[tuple[int, Floats]]:
    """Ids and corners (4, 2), clockwise from the marker's own top left."""
    import numpy as np
    from cv2 import aruco

    known = aruco.getPredefinedDictionary(getattr(aruco, dictionary))
    reading = aruco.DetectorParameters()
    # By trials: 8 looks along a module read blurred codes that OpenCV's usual 4 miss.
    reading.perspectiveRemovePixelPerCell = 8
    corners, ids, _ = aruco.ArucoDetector(known, reading).detectMarkers(grey)
    numbers = [] if ids is None else [int(one) for one in ids.ravel()]
    return [(number, np.array(one[0], float)) for number, one in zip(numbers, corners, strict=True)]


def _modules(dictionary: str) -> int:
    """Along a marker's side: its bits, and the black border on both sides."""
    from cv2 import aruco

    return int(aruco.getPredefinedDictionary(getattr(aruco, dictionary)).markerSize) + 2


def _side(corners: Floats) -> float:
    """The mean length of a marker's sides, px."""
    import numpy as np

    return float(np.linalg.norm(corners - np.roll(corners, -1, 0), axis=1).mean())

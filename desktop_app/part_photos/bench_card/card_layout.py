"""The bench card as data: which markers it carries, and where their corners are printed."""

from __future__ import annotations

from dataclasses import dataclass, replace

Corner = tuple[float, float]


@dataclass(frozen=True, slots=True)
class CardMarker:
    """One printed marker; its corners in mm, clockwise from its own top left."""

    id: int
    corners_mm: tuple[Corner, Corner, Corner, Corner]

    def printed(self, times: float) -> CardMarker:
        """Return the marker as a print `times` as large has it."""
        one, two, three, four = ((times * x, times * y) for x, y in self.corners_mm)
        return CardMarker(self.id, (one, two, three, four))


@dataclass(frozen=True, slots=True)
class CardLayout:
    """A printed card: mm from the page's top left corner, x to the right, y down.

    `dictionary` is the name of a predefined ArUco dictionary (OpenCV). `check_length_mm` is the
    nominal length of the printed ruler; a caliper reading of it, divided by the nominal length,
    is the card's scale. `free_field_mm` is (left, top, right, bottom) of the room for the part.
    """

    name: str
    dictionary: str
    paper: str
    markers: tuple[CardMarker, ...]
    check_length_mm: float
    free_field_mm: tuple[float, float, float, float] | None = None

    @property
    def ids(self) -> frozenset[int]:
        """The ids of its markers."""
        return frozenset(marker.id for marker in self.markers)

    def printed(self, times: float) -> CardLayout:
        """Return the card as a print `times` as large as drawn has it, all in mm of the print."""
        field = self.free_field_mm
        return replace(
            self,
            markers=tuple(marker.printed(times) for marker in self.markers),
            check_length_mm=self.check_length_mm * times,
            free_field_mm=field
            and (times * field[0], times * field[1], times * field[2], times * field[3]),
        )

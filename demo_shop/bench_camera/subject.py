"""A part before the camera: its pieces, its named feature points, and the views it is taken in."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from demo_shop.bench_camera.pieces import Piece, Pose
from demo_shop.bench_camera.pinhole import Floats

Side = Literal["removed", "replacement"]
Point = tuple[float, float, float]
GROUNDS_ALL = ("paper", "steel", "mat", "wood")


@dataclass(frozen=True, slots=True)
class View:
    """One way to photograph the part: how it lies, and where the camera stands (degrees)."""

    elevation: float
    azimuth: float = -90.0
    turn: Floats = field(default_factory=lambda: np.eye(3))
    fill: float = 0.68
    close_up: tuple[Point, float] | None = None  # a point of the part and the radius to show
    grounds: tuple[str, ...] = GROUNDS_ALL


@dataclass(frozen=True, slots=True)
class Subject:
    """Everything the camera needs of a part; lengths in mm in the part's own frame."""

    pieces: Sequence[Piece]
    features: Mapping[str, Point]
    views: Mapping[str, View]

    def standing(self, view: View, yaw: Floats) -> Pose:
        """The part lying on the bench (z = 0) with its middle over the origin."""
        turn = yaw @ view.turn
        rims = self.corners(Pose(turn, np.zeros(3)))
        low, high = rims.min(0), rims.max(0)
        return Pose(turn, np.array([-(low[0] + high[0]) / 2, -(low[1] + high[1]) / 2, -low[2]]))

    def corners(self, standing: Pose) -> Floats:
        """Points on the bench whose hull holds the whole part, shape (n, 3)."""
        return np.concatenate(
            [
                piece.pose.within(standing).out(p.rim())
                for piece in self.pieces
                for p in piece.patches
            ]
        )


@dataclass(frozen=True, slots=True)
class Order:
    """What is to be drawn: which side, how dirty (0 clean, 1 filthy), the sizes, the chance."""

    side: Side
    grime: float
    sizes: Mapping[str, float]
    rng: np.random.Generator
    drawn: dict[str, float] = field(default_factory=dict)  # the sizes the part came out with

    @property
    def worn(self) -> bool:
        """Whether this is the part that came off."""
        return self.side == "removed"

    def size(self, name: str, removed: float, replacement: float | None = None) -> float:
        """The size asked for, else the usual one (mm); what was drawn is kept."""
        usual = removed if self.worn or replacement is None else replacement
        self.drawn[name] = float(self.sizes.get(name, usual))
        return self.drawn[name]


Builder = Callable[[Order], Subject]

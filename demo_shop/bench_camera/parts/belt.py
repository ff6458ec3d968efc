"""A V-ribbed belt turned inside out; the removed one glazed, cracked, with a lost piece."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import RUBBER, Finish
from demo_shop.bench_camera.pieces import Piece, Pose, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_BACK = 2.1
_BEND = 13.0
_HALF_RUN = 59.0
_ALONG = np.array([[0, 0, 1], [1, 0, 0], [0, 1, 0.0]])  # outline across and up, drawn out along x
_ACROSS = np.array([[1, 0, 0], [0, 0, 1], [0, -1, 0.0]])  # turned about the belt's width


def build(order: Order) -> Subject:
    """A loop pressed flat: the upper run along x with its ribs up, its width along y."""
    ribs = max(3, round(order.size("ribs", 6)))
    pitch = order.size("rib-pitch", 3.56)
    depth = order.size("rib-depth", 1.7, 2.3)
    width = ribs * pitch
    rubber = _rubber(order)
    whole = _section(ribs, pitch, depth, None)
    pieces = [*_upper_run(order, ribs, pitch, depth, rubber), *_bends(whole, rubber)]
    lower = _run(whole, -_HALF_RUN, _HALF_RUN, rubber)
    pieces.append(lower.moved(0, width, -_BEND, turn_about("x", 180)))
    top = _BEND + _BACK + depth
    features: dict[str, Point] = {
        "near edge": (0.0, 0.0, _BEND + _BACK),
        "far edge": (0.0, width, _BEND + _BACK),
        "first rib": (30.0, pitch / 2, top),
        "last rib": (30.0, width - pitch / 2, top),
    }
    middle = (0.0, width / 2, _BEND + 4)
    grounds = ("paper", "steel", "wood")
    views = {
        "rib face": View(52, -78, fill=0.80, grounds=grounds),
        "cracks": View(48, -72, close_up=(middle, 21.0), fill=0.9, grounds=grounds),
        "edge": View(18, -84, fill=0.74, grounds=grounds),
    }
    return Subject(pieces, features, views)


def _upper_run(order: Order, ribs: int, pitch: float, depth: float, rubber: Finish) -> list[Piece]:
    """The run that is seen; a worn one has lost a piece of one rib."""
    whole = _section(ribs, pitch, depth, None)
    stops = [(-_HALF_RUN, _HALF_RUN, whole)]
    if order.worn and order.grime > 0:
        torn = _section(ribs, pitch, depth, int(order.rng.integers(1, ribs - 1)))
        start = float(order.rng.uniform(-20, 12))
        end = start + 9.0 + 8 * order.grime
        stops = [(-_HALF_RUN, start, whole), (start, end, torn), (end, _HALF_RUN, whole)]
    return [_run(section, a, b, rubber).moved(0, 0, _BEND) for a, b, section in stops]


def _bends(whole: list[tuple[float, float]], rubber: Finish) -> list[Piece]:
    rim = [(_BEND + z, y) for y, z in whole] + [(_BEND, whole[0][0])]
    return [
        Piece(turned(rim, rubber, arc).patches, rubber, Pose(_ACROSS, np.array([x, 0.0, 0.0])))
        for x, arc in ((_HALF_RUN, (-90.0, 90.0)), (-_HALF_RUN, (90.0, 270.0)))
    ]


def _section(ribs: int, pitch: float, depth: float, lost: int | None) -> list[tuple[float, float]]:
    """Cross-section over the width: flat back at 0, ribs up; one rib may be torn off."""
    points: list[tuple[float, float]] = []
    for i in range(ribs):
        y = i * pitch
        crest = _BACK + (0.25 if i == lost else depth)
        points += [
            (y + 0.10 * pitch, _BACK),
            (y + 0.34 * pitch, crest),
            (y + 0.66 * pitch, crest),
            (y + 0.90 * pitch, _BACK),
        ]
    return [(0, 0), (0, _BACK), *points, (ribs * pitch, _BACK), (ribs * pitch, 0)]


def _run(section: list[tuple[float, float]], a: float, b: float, rubber: Finish) -> Piece:
    straight = slab(section[::-1], a, b, rubber)
    return Piece(straight.patches, rubber, Pose(_ALONG, np.zeros(3)))


def _rubber(order: Order) -> Finish:
    if not order.worn or order.grime <= 0:
        return RUBBER
    dirt = order.grime
    places = sorted(order.rng.uniform(-57, 57, 11 + round(22 * dirt)).tolist())
    return RUBBER.under(
        wear.film_of((0.060, 0.056, 0.052), 0.7 * dirt, gloss=0.55),
        wear.spread(wear.DUST, 0.55 * dirt, 12, edge=1.6),
        wear.spread((0.10, 0.095, 0.085), 0.4 * dirt, 3.0, gloss=0.5),
        wear.cracks(places, 0, 0.24),
    )

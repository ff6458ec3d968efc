"""A crankshaft or camshaft sensor; the removed one oily, with metal fuzz on its tip."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC,
    BRASS,
    RUBBER,
    STEEL,
    Colour,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, around, bar, hose, profile, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A crankshaft sensor along z: tip below, flange at z = 0, socket above."""
    length = order.size("body-length", 29.0)
    radius = order.size("body-diameter", 17.9) / 2
    hole = order.size("hole-to-axis", 22.0)
    plastic, tip, rubber = _materials(order, length)
    eyelet = profile((3.4, 4.6, 4.6, 3.4), (-0.3, -0.3, 4.9, 4.9))
    pole = profile((0, 3.2, 3.2), (-length - 0.3, -length - 0.3, -length + 1))
    ring = np.array([around(radius - 0.2, 9 * i, -7.0) for i in range(40)])
    pieces = [
        _body(radius, length, plastic),
        turned(pole, tip),
        slab(_ear(hole), 0, 4.5, plastic, ((hole, 0.0, 3.4),)),
        turned(eyelet, BRASS).moved(hole),
        turned(profile((9, 8.5, 7, 0), (4.5, 14, 16, 16)), plastic),
        *[p.moved(-2, 0, 12, turn_about("y", -70)) for p in _shroud(plastic)],
        *hose(ring, 1.5, rubber, closed=True),
    ]
    features: dict[str, Point] = {
        "tip end": (0.0, 0.0, -length - 0.3),
        "flange face": (0.0, 11.0, 0.0),
        "tip edge": (0.0, radius - 1, -length),
        "bolt hole": (hole, 0.0, 4.9),
        "body left": (0.0, -radius, -length / 2),
        "body right": (0.0, radius, -length / 2),
    }
    lying = turn_about("y", 90) @ turn_about("z", 120)
    views = {
        "side": View(40, -90, lying, fill=0.64),
        "tip": View(34, 205, lying, close_up=((0.0, 0.0, -length + 4), 17.0)),
    }
    return Subject(pieces, features, views)


def _materials(order: Order, length: float) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return BLACK_PLASTIC, STEEL, RUBBER
    d = order.grime
    fuzz: Colour = (0.24, 0.24, 0.24)
    at_tip = wear.beyond(2, -length + 7, -7)
    plastic = BLACK_PLASTIC.under(
        wear.film_of((0.10, 0.07, 0.04), 0.35 * d, gloss=0.3),
        wear.spread(wear.OIL, 0.8 * d, 10, edge=1.4, gloss=0.7),
        wear.spread(fuzz, 1.2 * d, 2.2, at_tip, edge=0.8, gloss=0.5),
    )
    tip = STEEL.under(wear.spread((0.16, 0.16, 0.16), 1.2 * d, 1.6, gloss=0.5, rough=1.2))
    return plastic, tip, RUBBER.under(wear.film_of(wear.OIL, 0.6 * d, gloss=0.7))


def _body(radius: float, length: float, plastic: Finish) -> Piece:
    """Barrel with the groove for its sealing ring."""
    groove = radius - 1.2
    radii = (11, radius, radius, groove, groove, radius, radius, radius - 1, 3.2)
    heights = (0, -1, -4.8, -5.2, -8.8, -9.2, -length + 1, -length, -length)
    return turned(profile(radii, heights), plastic)


def _ear(hole: float) -> list[tuple[float, float]]:
    lug = [(hole + x, y) for x, y, _ in (around(6.5, a) for a in range(-80, 81, 16))]
    return [(0, -12), *lug, (0, 12), (-9, 9), (-12, 0), (-9, -9)]


def _shroud(plastic: Finish) -> list[Piece]:
    walls = [
        bar((-8, 8), (-6, -4.6), (0, 22), plastic),
        bar((-8, 8), (4.6, 6), (0, 22), plastic),
        bar((-8, -6.6), (-6, 6), (0, 22), plastic),
        bar((6.6, 8), (-6, 6), (0, 22), plastic),
        bar((-8, 8), (-6, 6), (0, 8), plastic),
        bar((-2.5, 2.5), (6, 7.8), (8, 20), plastic),
    ]
    return walls + [bar((x - 0.4, x + 0.4), (-1.2, 1.2), (8, 18), BRASS) for x in (-4.0, 0.0, 4.0)]

"""A crankshaft or camshaft sensor; the removed one oily, with metal fuzz on its tip."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC,
    BRASS,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, bar, circle, hose, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A crankshaft sensor along z: tip below, flange at z = 0, socket above."""
    length = order.size("body-length", 29.0)
    diameter = order.size("body-diameter", 17.9) / 2
    hole = order.size("hole-to-axis", 22.0)
    plastic, tip, ring = BLACK_PLASTIC, STEEL, RUBBER
    if order.worn and order.grime > 0:
        d = order.grime
        plastic = plastic.under(
            wear.film_of((0.10, 0.07, 0.04), 0.55 * d, gloss=0.3),
            wear.spread(wear.OIL, 0.8 * d, 10, edge=1.4, gloss=0.7),
            wear.spread(
                (0.24, 0.24, 0.24),
                1.2 * d,
                2.2,
                wear.beyond(2, -length + 7, -7),
                edge=0.8,
                gloss=0.5,
            ),
        )
        tip = STEEL.under(wear.spread((0.16, 0.16, 0.16), 1.2 * d, 1.6, gloss=0.5, rough=1.2))
        ring = RUBBER.under(wear.film_of(wear.OIL, 0.6 * d, gloss=0.7))
    lug = circle(6.5, 20, hole)
    plate = [
        (0, -12),
        (hole, -6.5),
        *[p for p in lug if p[0] > hole],
        (hole, 6.5),
        (0, 12),
        (-9, 9),
        (-12, 0),
        (-9, -9),
    ]
    cord = hose(
        np.column_stack([np.array(circle(diameter - 0.2, 40)), np.full(40, -7.0)]),
        1.5,
        ring,
        closed=True,
    )
    pieces = [
        turned(
            [
                (11, 0),
                (diameter, -1),
                (diameter, -4.8),
                (diameter - 1.2, -5.2),
                (diameter - 1.2, -8.8),
                (diameter, -9.2),
                (diameter, -length + 1),
                (diameter - 1, -length),
                (3.2, -length),
            ],
            plastic,
        ),
        turned([(0, -length - 0.3), (3.2, -length - 0.3), (3.2, -length + 1)], tip),
        slab(plate, 0, 4.5, plastic, ((hole, 0.0, 3.4),)),
        turned([(3.4, -0.3), (4.6, -0.3), (4.6, 4.9), (3.4, 4.9)], BRASS).moved(hole),
        turned([(9, 4.5), (8.5, 14), (7, 16), (0, 16)], plastic),
        *[p.moved(-2, 0, 12, turn_about("y", -70)) for p in _shroud(plastic)],
        *cord,
    ]
    features: dict[str, Point] = {
        "tip end": (0.0, 0.0, -length - 0.3),
        "flange face": (0.0, 11.0, 0.0),
        "tip edge": (0.0, diameter - 1, -length),
        "bolt hole": (hole, 0.0, 4.9),
        "body left": (0.0, -diameter, -length / 2),
        "body right": (0.0, diameter, -length / 2),
    }
    lying = turn_about("y", 90) @ turn_about("z", 120)
    return Subject(
        pieces,
        features,
        {
            "side": View(40, -90, lying, fill=0.64),
            "tip": View(34, 205, lying, close_up=((0.0, 0.0, -length + 4), 17.0)),
        },
    )


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

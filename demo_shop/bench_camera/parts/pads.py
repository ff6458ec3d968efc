"""Brake pads; the removed ones thin, scored, glazed and rusty."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import BLACK_PAINT, LINING, Finish
from demo_shop.bench_camera.pieces import Piece, ring_piece, slab
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """Two pads; the measured one has its plate's back at z = 0, the wheel's axis is z."""
    lining = order.size("lining-thickness", 2.6, 11.0)
    plate = order.size("plate-thickness", 5.5)
    length = order.size("plate-length", 104.0)
    spread = float(np.degrees(np.arcsin(length / 242.0)))  # its corners lie 121 mm out
    paint, friction = _pad_materials(order)
    pad = _pad(lining, plate, spread, paint, friction)
    flip = turn_about("z", 14) @ turn_about("x", 180)
    other = [p.moved(6, 258, plate + lining, flip) for p in pad]
    half = np.radians(spread - 4)
    face = plate + lining
    features: dict[str, Point] = {
        "lining face": (20.0, 86.0, face),
        "lining root": (20.0, 86.0, plate),
        "plate back": (20.0, 84.2, 0.0),
        "plate left": (-length / 2, float(121 * np.cos(np.radians(spread))), plate),
        "plate right": (length / 2, float(121 * np.cos(np.radians(spread))), plate),
        "lining left": (float(-104 * np.sin(half)), float(104 * np.cos(half)), face),
        "lining right": (float(104 * np.sin(half)), float(104 * np.cos(half)), face),
    }
    middle = ((0.0, 104.0, plate), 58.0)
    return Subject(
        [*pad, *other],
        features,
        {
            "lining face": View(52, -90, fill=0.72, grounds=("steel", "paper", "wood")),
            "backing plate": View(
                50, -90, turn_about("x", 180), fill=0.72, grounds=("steel", "paper", "wood")
            ),
            "edge": View(14, -90, close_up=middle, fill=0.74, grounds=("steel", "paper", "wood")),
        },
    )


def _pad(
    lining: float, plate: float, spread: float, paint: Finish, friction: Finish
) -> list[Piece]:
    back = slab(_segment(82, 126, spread, 5.0), 0, plate, paint)
    halves = [
        slab(ring_piece(86, 122, low, high), plate, plate + lining, friction)
        for low, high in ((90 - spread + 3.2, 89.1), (90.9, 90 + spread - 3.2))
    ]
    ears = [
        slab(ring_piece(98, 112, a, a + 4.6), 0.3, plate - 0.3, paint)
        for a in (90 - spread - 4.2, 90 + spread - 0.4)
    ]
    return [back, *halves, *ears]


def _segment(inner: float, outer: float, spread: float, cut: float) -> list[tuple[float, float]]:
    """A pad's plate: a piece of a ring with its outer corners cut."""
    points = ring_piece(inner, outer, 90 - spread, 90 + spread)
    a = np.radians(90 - spread)
    low = ((outer - cut) * float(np.cos(a)), (outer - cut) * float(np.sin(a)))
    return [low, *points[1:7], (-low[0], low[1]), *points[8:]]


def _pad_materials(order: Order) -> tuple[Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return BLACK_PAINT, LINING
    dirt = order.grime
    paint = BLACK_PAINT.under(
        wear.film_of(wear.DUST, 0.3 * dirt, gloss=0.1),
        wear.spread(wear.RUST, 0.85 * dirt, 10, edge=1.2),
        wear.spread(wear.DARK_RUST, 0.6 * dirt, 4),
    )
    friction = LINING.under(
        wear.film_of((0.075, 0.072, 0.07), 0.8 * dirt, gloss=0.5),
        wear.grooves(1.7, 0.65 * dirt, (0.19, 0.185, 0.18)),
        wear.spread((0.17, 0.15, 0.14), 0.45 * dirt, 16, edge=2.0, gloss=0.5),
        wear.cracks([-31.0, -9.0, 27.0], 0, 0.14),
    )
    return paint, friction

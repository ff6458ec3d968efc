"""A distributor rotor: hub, arm and brass blade; on the removed one the tip is burned back."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import BLACK_PLASTIC, BRASS, Finish
from demo_shop.bench_camera.pieces import Piece, bar, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Subject, View

_TOP = 27.0  # arm's upper face above the seat


def build(order: Order) -> Subject:
    """Rotor with its bore upright along z and the tip pointing along +x."""
    reach = order.size("tip-radius", 26.90, 27.45)
    stick_out = order.size("tip-protrusion", 4.1, 4.65)
    bore = order.size("bore", 12.70)
    width = order.size("tip-width", 8.0)
    body_end = reach - stick_out
    plastic, brass = _materials(order, reach)
    pieces = [
        _hub(bore / 2, plastic),
        slab(_arm(body_end, 7.5), _TOP - 6, _TOP, plastic),
        slab(_counterweight(), _TOP - 6, _TOP, plastic),
        turned([(10.6, _TOP), (10.2, _TOP + 1.6), (8.6, _TOP + 1.6), (8.4, _TOP)], plastic),
        slab(_blade(order, reach, width), _TOP - 1.2, _TOP + 2.0, brass),
        bar((-3.4, 9.0), (-3.2, 3.2), (_TOP + 2.0, _TOP + 2.7), brass, 1.5),
        bar((-8.5, 3.0), (-2.6, 2.6), (0, 0.6), brass, 1.2).moved(
            1.5, 0, _TOP + 2.7, turn_about("y", 17)
        ),
        turned([(0, 1.0), (1.3, 0.8), (2.0, 0)], brass).moved(12.5, 0, _TOP + 2.0),
    ]
    z = _TOP + 2.0
    features = {
        "tip end": (reach, 0.0, z),
        "tip root": (body_end, 0.0, z),
        "tip left": (reach - 0.4, width / 2, z),
        "tip right": (reach - 0.4, -width / 2, z),
        "bore centre": (0.0, 0.0, 0.0),
        "bore left": (0.0, bore / 2, 0.0),
        "bore right": (0.0, -bore / 2, 0.0),
        "shaft axis at tip height": (0.0, 0.0, z),
    }
    return Subject(pieces, features, _views(reach))


def _views(reach: float) -> dict[str, View]:
    return {
        "top": View(64, -78, fill=0.58, grounds=("paper", "steel", "wood")),
        "side": View(20, -90, fill=0.60, grounds=("paper", "steel", "wood")),
        "tip": View(
            38, -62, close_up=((reach - 5, 0.0, _TOP), 11.0), grounds=("paper", "steel", "wood")
        ),
        "underside": View(58, -90, turn_about("x", 180), fill=0.58, grounds=("paper", "steel")),
    }


def _hub(bore: float, plastic: Finish) -> Piece:
    return turned(
        [
            (bore, 24.0),
            (bore, 0.8),
            (bore + 0.8, 0),
            (10.2, 0),
            (10.8, 0.6),
            (11.3, 15),
            (13.8, 18.5),
            (13.8, _TOP - 0.8),
            (13.0, _TOP),
            (0, _TOP),
        ],
        plastic,
    )


def _arm(end: float, half: float) -> list[tuple[float, float]]:
    return [
        (0, -half - 4),
        (11, -half),
        (end - 1, -half),
        (end, -half + 1.2),
        (end, half - 1.2),
        (end - 1, half),
        (11, half),
        (0, half + 4),
    ]


def _counterweight() -> list[tuple[float, float]]:
    angles = np.radians(np.linspace(118, 242, 15))
    return [(0.0, -10.0), (0.0, 10.0)] + [
        (17.5 * float(np.cos(a)), 17.5 * float(np.sin(a))) for a in angles
    ]


def _blade(order: Order, reach: float, width: float) -> list[tuple[float, float]]:
    """Outline of the brass: its end is an arc about the shaft, eaten away on a burned one."""
    half = width / 2
    ys = np.linspace(-half, half, 25)
    ends = np.sqrt(reach**2 - ys**2)
    if order.worn:
        bites = np.abs(order.rng.normal(0, 0.14 * order.grime, len(ys)))
        bites += 0.9 * order.grime * (np.abs(ys) / half) ** 4  # corners go first
        bites[len(ys) // 2] = 0.0  # the longest point keeps the size that is asked for
        ends = ends - bites
    tip = [(float(x), float(y)) for x, y in zip(ends, ys, strict=True)]
    return [(-4.5, 3.4), (-4.5, -3.4), (8, -3.4), (13, -half), *tip, (13, half), (8, 3.4)]


def _materials(order: Order, reach: float) -> tuple[Finish, Finish]:
    dirt = order.grime
    if dirt <= 0:
        return BLACK_PLASTIC, BRASS
    tip = wear.near(reach, 0, _TOP + 1, 8.5)
    brass = BRASS.under(
        wear.film_of(wear.TARNISH, 0.75 * dirt),
        wear.spread(wear.TARNISH, 0.7 * dirt, 5),
        wear.spread(
            wear.GREEN_CRUST, 0.85 * dirt, 3.5, wear.near(reach - 9, 0, _TOP + 2, 7), edge=1.2
        ),
        wear.spread(wear.SOOT, 1.25 * dirt, 4, tip, edge=1.4),
        wear.spread(wear.WHITE_CRUST, 0.9 * dirt, 2.2, wear.near(reach, 0, _TOP + 1, 3.6)),
    )
    plastic = BLACK_PLASTIC.under(
        wear.film_of(wear.DUST, 0.26 * dirt, gloss=0.15),
        wear.spread(wear.DUST, 0.36 * dirt, 9, edge=1.8),
        wear.spread((0.12, 0.05, 0.02), 0.7 * dirt, 8, wear.near(reach - 8, 0, _TOP, 12), edge=1.5),
        wear.track(
            [
                (reach - 5, 5.5, _TOP),
                (14, 6.8, _TOP),
                (9, 11, _TOP),
                (2, 13.5, _TOP - 7),
                (0, 12, 14),
            ],
            0.45 * dirt,
            (0.28, 0.26, 0.22),
        ),
    )
    return plastic, brass

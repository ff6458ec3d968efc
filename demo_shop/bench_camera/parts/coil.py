"""An ignition coil on plug; the removed one tracked along its stem, its pins green."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC,
    BRASS,
    GREY_PLASTIC,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, bar, profile, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A coil on plug along z: head above, boot below; plug socket on +x, bolt ear on -x."""
    stem = order.size("stem-length", 112.0)
    ear = order.size("hole-centres", 28.0)
    pins = max(2, round(order.size("pins", 3)))
    case, rubber, metal = _coil_materials(order, stem)
    pieces = [*_head(ear, case, metal), *_socket(pins, case, metal), *_stem(stem, case, rubber)]
    features: dict[str, Point] = {
        "boot end": (10.4, 0.0, -stem),
        "stem root": (12.0, 0.0, 0.0),
        "bolt hole": (-ear, 0.0, 8.6),
        "head top": (0.0, 0.0, 25.2),
    }
    leaning = turn_about("y", 83)  # on its head and the end of its boot
    lying, facing = leaning @ turn_about("z", 205), leaning @ turn_about("z", 222)
    low, socket = (0.0, 0.0, -stem * 0.62), (16.0, 0.0, 6.0)
    grounds = ("paper", "steel", "wood")
    views = {
        "side": View(44, -90, lying, fill=0.76, grounds=grounds),
        "stem": View(34, -90, lying, close_up=(low, 40.0), grounds=grounds),
        "connector face": View(36, -60, facing, close_up=(socket, 24.0), grounds=grounds),
    }
    return Subject(pieces, features, views)


def _head(ear: float, case: Finish, metal: Finish) -> list[Piece]:
    lug = profile((-16, -ear, -ear - 6, -ear - 6, -ear, -16), (-9, -8, -4, 4, 8, 9))
    bush = profile((3.4, 5.0, 5.0, 3.4), (2, 1.6, 8.6, 8.6))
    return [
        bar((-18, 20), (-14, 14), (0, 22), case, 4),
        bar((-15, 17), (-11, 11), (22, 24), case, 3),
        *[bar((-14, 16), (y - 0.8, y + 0.8), (24, 25.2), case) for y in (-7.0, 0.0, 7.0)],
        slab(lug, 2, 8, case, ((-ear, 0.0, 3.4),)),
        turned(bush, metal).moved(-ear),
    ]


def _stem(stem: float, case: Finish, rubber: Finish) -> list[Piece]:
    """The stiff neck and the rubber boot with its rings."""
    neck = profile((0, 12, 11.6, 9.5, 9.2), (0, 0, -12, -14, -stem * 0.45))
    radii = (10.6, 10.6, 10.2, 9.7, 11.2, 11.2, 10.4, 7.4, 6.8, 0)
    shares = (-0.42, -0.47, -0.48, -0.8, -0.82)
    heights = [share * stem for share in shares]
    heights += [-stem + 2, -stem, -stem, -stem + 14, -stem + 14]
    rings = [
        turned(profile((9.6, 10.8, 10.8, 9.6), (z, z - 0.6, z - 1.8, z - 2.4)), rubber)
        for z in (-stem * 0.5 - 6 * i for i in range(4))
    ]
    return [turned(neck, case), turned(profile(radii, heights), rubber), *rings]


def _socket(pins: int, case: Finish, metal: Finish) -> list[Piece]:
    half = 4.0 + 2.2 * pins
    shell = [
        bar((20, 36), (-half, half), (3.5, 5.0), case),
        bar((20, 36), (-half, half), (16, 17.5), case),
        bar((20, 36), (-half, -half + 1.5), (3.5, 17.5), case),
        bar((20, 36), (half - 1.5, half), (3.5, 17.5), case),
        bar((24, 34), (-3, 3), (17.5, 19.5), case),
        bar((19.5, 23), (-half, half), (3.5, 17.5), case),
    ]
    spots = (np.arange(pins) - (pins - 1) / 2) * 4.2
    return shell + [bar((22, 32), (s - 0.4, s + 0.4), (9, 12), metal) for s in spots.tolist()]


def _coil_materials(order: Order, stem: float) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return BLACK_PLASTIC, GREY_PLASTIC, BRASS
    dirt = order.grime
    case = BLACK_PLASTIC.under(
        wear.film_of(wear.DUST, 0.10 * dirt, gloss=0.2),
        wear.spread(wear.OIL, 0.5 * dirt, 16, edge=1.2, gloss=0.6),
        wear.spread((0.16, 0.145, 0.12), 0.26 * dirt, 10, edge=2.0),
        wear.cracks([-6.0, 9.0], 0, 0.35, wear.beyond(2, 2, 2)),
    )
    low = -stem + 6
    spine = [
        (-9.2, 4.0, -stem * 0.5),
        (8.8, 5.5, -stem * 0.65),
        (9.6, 3.4, -stem * 0.8),
        (9.9, 5.0, low),
    ]
    rubber = GREY_PLASTIC.under(
        wear.film_of((0.10, 0.08, 0.055), 0.4 * dirt, gloss=0.2),
        wear.spread(wear.OIL, 0.6 * dirt, 14, edge=1.2, gloss=0.5),
        wear.track(spine, 0.7 * dirt),
        wear.track([(a, -b, c) for a, b, c in spine], 0.55 * dirt, (0.45, 0.43, 0.38)),
        wear.spread(wear.WHITE_CRUST, 0.8 * dirt, 4, wear.beyond(2, -stem + 16, -12)),
    )
    return case, rubber, STEEL.under(wear.spread(wear.GREEN_CRUST, 0.9 * dirt, 3))

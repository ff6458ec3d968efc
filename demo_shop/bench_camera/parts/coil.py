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
from demo_shop.bench_camera.pieces import Piece, bar, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A coil on plug along z: head above, boot below; plug socket on +x, bolt ear on -x."""
    stem = order.size("stem-length", 112.0)
    ear = order.size("hole-centres", 28.0)
    pins = max(2, round(order.size("pins", 3)))
    case, rubber, metal = _coil_materials(order, stem)
    head = [
        bar((-18, 20), (-14, 14), (0, 22), case, 4),
        bar((-15, 17), (-11, 11), (22, 24), case, 3),
        *[bar((-14, 16), (y - 0.8, y + 0.8), (24, 25.2), case) for y in (-7.0, 0.0, 7.0)],
        slab(
            [(-16, -9), (-ear, -8), (-ear - 6, -4), (-ear - 6, 4), (-ear, 8), (-16, 9)],
            2,
            8,
            case,
            ((-ear, 0.0, 3.4),),
        ),
        Piece(turned([(3.4, 2), (5.0, 1.6), (5.0, 8.6), (3.4, 8.6)], metal).patches, metal).moved(
            -ear
        ),
    ]
    socket = _socket(pins, case, metal)
    tube = [
        turned([(0, 0), (12, 0), (11.6, -12), (9.5, -14), (9.2, -stem * 0.45)], case),
        turned(
            [
                (10.6, -stem * 0.42),
                (10.6, -stem * 0.47),
                (10.2, -stem * 0.48),
                (9.7, -stem * 0.8),
                (11.2, -stem * 0.82),
                (11.2, -stem + 2),
                (10.4, -stem),
                (7.4, -stem),
                (6.8, -stem + 14),
                (0, -stem + 14),
            ],
            rubber,
        ),
        *[
            turned(
                [
                    (9.6, -stem * 0.5 - 6 * i),
                    (10.8, -stem * 0.5 - 6 * i - 0.6),
                    (10.8, -stem * 0.5 - 6 * i - 1.8),
                    (9.6, -stem * 0.5 - 6 * i - 2.4),
                ],
                rubber,
            )
            for i in range(4)
        ],
    ]
    features: dict[str, Point] = {
        "boot end": (10.4, 0.0, -stem),
        "stem root": (12.0, 0.0, 0.0),
        "bolt hole": (-ear, 0.0, 8.6),
        "head top": (0.0, 0.0, 25.2),
    }
    lying = turn_about("y", 83) @ turn_about("z", 205)
    grounds = ("paper", "steel", "wood")
    return Subject(
        [*head, *socket, *tube],
        features,
        {
            "side": View(44, -90, lying, fill=0.76, grounds=grounds),
            "stem": View(
                34, -90, lying, close_up=((0.0, 0.0, -stem * 0.62), 40.0), grounds=grounds
            ),
            "connector face": View(
                36,
                -60,
                turn_about("y", 83) @ turn_about("z", 222),
                close_up=((16.0, 0.0, 6.0), 24.0),
                grounds=grounds,
            ),
        },
    )


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
        wear.film_of(wear.DUST, 0.22 * dirt, gloss=0.2),
        wear.spread(wear.OIL, 0.5 * dirt, 16, edge=1.2, gloss=0.6),
        wear.spread((0.16, 0.145, 0.12), 0.36 * dirt, 10, edge=1.6),
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
        wear.film_of((0.10, 0.075, 0.05), 0.7 * dirt, gloss=0.15),
        wear.spread(wear.OIL, 0.6 * dirt, 14, edge=1.2, gloss=0.5),
        wear.track(spine, 0.7 * dirt),
        wear.track([(a, -b, c) for a, b, c in spine], 0.55 * dirt, (0.45, 0.43, 0.38)),
        wear.spread(wear.WHITE_CRUST, 0.8 * dirt, 4, wear.beyond(2, -stem + 16, -12)),
    )
    return case, rubber, STEEL.under(wear.spread(wear.GREEN_CRUST, 0.9 * dirt, 3))

"""A wax thermostat; the removed one scaled and stuck open."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    COPPER,
    RUBBER,
    STEEL,
)
from demo_shop.bench_camera.pieces import bar, hose, rod, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A wax thermostat lying with its spring side up and tilted; the removed one stuck open."""
    flange = order.size("flange-diameter", 54.0) / 2
    thick = order.size("flange-thickness", 1.6)
    lift = order.size("lift-cold", 4.5, 0.0)
    foot = order.size("bypass-foot", 9.0)
    metal, copper = STEEL, COPPER
    seal = RUBBER
    if order.worn and order.grime > 0:
        crud = (
            wear.film_of((0.20, 0.15, 0.10), 0.55 * order.grime, gloss=0.1),
            wear.spread((0.38, 0.30, 0.22), 0.75 * order.grime, 7, edge=1.0),
            wear.spread(wear.RUST, 0.65 * order.grime, 5),
        )
        metal, copper = metal.under(*crud), copper.under(*crud)
        seal = RUBBER.under(wear.spread((0.30, 0.26, 0.2), 0.5 * order.grime, 5))
    top = 30.0 + lift
    coil = np.linspace(0, 5 * 2 * np.pi, 110)
    spring = np.stack(
        [
            (15 - 2.5 * coil / coil[-1]) * np.cos(coil),
            (15 - 2.5 * coil / coil[-1]) * np.sin(coil),
            thick + 4.5 + lift + (21 - lift) * coil / coil[-1],
        ],
        1,
    )
    frame = [rod((s * 19, 0, thick), (s * 10, 0, 31), 1.6, metal) for s in (-1, 1)] + [
        bar((-11, 11), (-4, 4), (29.5, 31), metal)
    ]
    bridge = [rod((s * 17, 0, 0), (s * 5, 0, -14), 2.0, metal) for s in (-1, 1)]
    pieces = [
        turned([(17.5, 0), (flange - 2.4, 0)], metal),
        turned([(17.5, thick), (flange - 2.4, thick)], metal),
        turned(
            [
                (flange - 3.4, -1.6),
                (flange, -1.6),
                (flange, 0),
                (flange, thick),
                (flange, thick + 1.6),
                (flange - 3.4, thick + 1.6),
                (flange - 3.4, -1.6),
            ],
            seal,
        ),
        turned([(17.5, 0), (17.5, thick)], metal),
        turned(
            [
                (0, thick + lift),
                (16.6, thick + lift),
                (17.2, thick + 1.2 + lift),
                (16, thick + 3 + lift),
                (7.5, thick + 4.5 + lift),
            ],
            metal,
        ),
        turned(
            [
                (7.2, thick + 3 + lift),
                (7.2, top - 3),
                (6, top - 1),
                (4.5, top),
                (2.2, top),
                (2.2, top + foot),
                (7.5, top + foot),
                (7.5, top + foot + 1.2),
                (0, top + foot + 1.2),
            ],
            copper,
        ),
        turned([(0, -16), (5.2, -16), (4.4, -12), (0, -12)], metal),
        rod((0, 0, -14), (0, 0, thick + lift), 1.9, metal),
        *frame,
        *bridge,
        *hose(spring, 1.05, metal),
    ]
    features: dict[str, Point] = {
        "flange left": (0.0, -flange, thick),
        "flange right": (0.0, flange, thick),
        "foot end": (0.0, 0.0, top + foot + 1.2),
        "valve plate": (17.0, 0.0, thick + 1.2 + lift),
        "seat": (17.5, 0.0, thick),
    }
    return Subject(
        pieces,
        features,
        {
            "spring side": View(34, -70, turn_about("z", 70), fill=0.66),
            "flange face": View(50, -80, turn_about("x", 180), fill=0.62),
            "side": View(16, -90, turn_about("z", 55), fill=0.7),
        },
    )

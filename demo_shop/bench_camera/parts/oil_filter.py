"""A spin-on oil filter; the removed one oily, its gasket flat."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    PAINTED,
    PLATED,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import slab, turned
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A spin-on oil filter standing on its dome, thread and gasket up."""
    height = order.size("height", 86.0)
    outer = order.size("gasket-outer", 71.5) / 2
    inner = order.size("gasket-inner", 62.0) / 2
    bore = order.size("thread-diameter", 20.0) / 2
    can, plate, rubber = _filter_materials(order)
    proud = 0.7 if order.worn else 2.4
    r = outer + 2.6
    ring = [
        ((bore + 6.8) * float(np.cos(a)), (bore + 6.8) * float(np.sin(a)), 3.0)
        for a in np.arange(8) * np.pi / 4
    ]
    flutes = np.linspace(0, 2 * np.pi, 57)[:-1]
    grip = [
        ((r - 1.2 * (i % 4 < 2)) * float(np.cos(a)), (r - 1.2 * (i % 4 < 2)) * float(np.sin(a)))
        for i, a in enumerate(flutes)
    ]
    pieces = [
        turned([(0, 0), (r - 9, 0.6), (r - 4, 3), (r - 1, 8)], can),
        slab(grip, 8, 24, can),
        turned(
            [
                (r - 0.6, 24),
                (r, 26),
                (r, height - 4),
                (r + 0.9, height - 3),
                (r + 0.9, height - 1),
                (r, height),
                (outer + 0.6, height),
                (outer + 0.4, height - 2),
            ],
            can,
        ),
        turned(
            [
                (outer, height - 2),
                (outer, height + proud - 0.5),
                (outer - 0.6, height + proud),
                (inner + 0.6, height + proud),
                (inner, height + proud - 0.5),
                (inner, height - 2),
            ],
            rubber,
        ),
        turned([(inner, height - 2), (inner - 2, height - 3.4), (bore + 12, height - 3.4)], plate),
        turned([(bore + 12, height - 3.4), (bore + 2, height - 3.4)], plate, holes=tuple(ring)),
        turned([(bore + 2, height - 3.4), (bore + 1.4, height - 1.2), (bore, height - 1.2)], plate),
        turned(
            [
                (p, z)
                for i in range(9)
                for p, z in ((bore, height - 1.2 - 1.5 * i), (bore - 0.8, height - 1.95 - 1.5 * i))
            ],
            plate,
        ),
        turned([(0, height - 16), (r - 2, height - 16)], RUBBER),
    ]
    features: dict[str, Point] = {
        "gasket left": (-outer, 0.0, height + proud),
        "gasket right": (outer, 0.0, height + proud),
        "gasket inner left": (-inner, 0.0, height + proud),
        "gasket inner right": (inner, 0.0, height + proud),
        "thread left": (-bore, 0.0, height - 1.2),
        "thread right": (bore, 0.0, height - 1.2),
        "can foot": (0.0, -r, 26.0),
        "can rim": (0.0, -r - 0.9, height - 2),
    }
    return Subject(
        pieces,
        features,
        {
            "gasket face": View(58, -90, fill=0.70),
            "side": View(22, -90, fill=0.74),
        },
    )


def _filter_materials(order: Order) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return PAINTED, PLATED, RUBBER
    dirt = order.grime
    can = PAINTED.under(
        wear.film_of(wear.DUST, 0.4 * dirt, gloss=0.15),
        wear.spread((0.012, 0.009, 0.006), 0.7 * dirt, 22, edge=1.0, gloss=0.8, rough=0.05),
        wear.spread(wear.RUST, 0.35 * dirt, 6),
    )
    plate = STEEL.under(
        wear.film_of((0.03, 0.018, 0.008), 0.88 * dirt, gloss=0.85),
        wear.spread((0.010, 0.007, 0.004), 0.75 * dirt, 15, edge=1.6, gloss=0.9, rough=0.04),
    )
    flat = RUBBER.under(wear.film_of((0.006, 0.005, 0.004), 0.9 * dirt, gloss=0.85))
    return can, plate, flat

"""A wheel bearing hub with its studs; the removed one rusty."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    CAST_IRON,
    PLATED,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A bolt-on hub with its wheel flange up and its studs standing; the encoder side below."""
    flange = order.size("flange-diameter", 136.0) / 2
    spigot = order.size("spigot-diameter", 63.0) / 2
    holes = round(order.size("studs", 5))
    circle_r = order.size("bolt-circle", 108.0) / 2
    metal, studs, body = STEEL, PLATED, CAST_IRON
    if order.worn and order.grime > 0:
        rust = wear.rusted(order.grime)
        metal, studs, body = metal.under(*rust), STEEL.under(*rust), body.under(*rust)
    pieces = [
        turned(
            [
                (0, 44),
                (spigot - 9, 44),
                (spigot - 8, 60),
                (spigot - 2, 62),
                (spigot, 60),
                (spigot, 54),
            ],
            metal,
        ),
        turned(
            [
                (spigot, 54),
                (flange - 1, 54),
                (flange, 53),
                (flange, 45),
                (flange - 2, 43),
                (40, 40),
            ],
            metal,
        ),
        turned([(40, 40), (39, 30)], metal),
        turned([(46, 28), (46, 8), (40, 6), (40, 0), (30, 0)], body),
        turned([(39, 28), (46, 28)], body),
        turned([(30, 0), (30, -6), (25, -6), (0, -6)], Finish((0.05, 0.05, 0.055), gloss=0.4)),
        turned([(14, 44.1), (15.5, 44.1), (15.5, 47), (14, 47)], metal),
    ]
    plate = [
        (
            62 * float(np.cos(a)) if i % 2 else 47 * float(np.cos(a)),
            62 * float(np.sin(a)) if i % 2 else 47 * float(np.sin(a)),
        )
        for i, a in enumerate(np.linspace(0, 2 * np.pi, 9)[:-1])
    ]
    pieces.append(slab(plate, 12, 24, body))
    for i in range(holes):
        a = 2 * np.pi * i / holes + 0.35
        profile = [(6.0, 54), *thread(6.0, 1.5, 57, 82, 0.8), (4.6, 84), (0, 84)]
        pieces.append(
            turned(profile, studs).moved(circle_r * float(np.cos(a)), circle_r * float(np.sin(a)))
        )
    features: dict[str, Point] = {
        "encoder centre": (0.0, 0.0, -6.0),
        "flange left": (-flange, 0.0, 53.0),
        "flange right": (flange, 0.0, 53.0),
        "spigot left": (-spigot, 0.0, 60.0),
        "spigot right": (spigot, 0.0, 60.0),
    }
    for i in range(holes):
        a = 2 * np.pi * i / holes + 0.35
        features[f"stud {i + 1} end"] = (
            circle_r * float(np.cos(a)),
            circle_r * float(np.sin(a)),
            84.0,
        )
    return Subject(
        pieces,
        features,
        {
            "flange face": View(52, -90, fill=0.74),
            "side": View(18, -90, fill=0.72),
            "encoder face": View(50, -90, turn_about("x", 180), fill=0.72),
        },
    )

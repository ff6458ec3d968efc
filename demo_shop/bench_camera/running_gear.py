"""A wheel bearing hub and an outer tie-rod end."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    CAST_IRON, PLATED, RUBBER, STEEL, Coat, Finish,
)
from demo_shop.bench_camera.pieces import circle, hexagon, rod, slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def _rusted(order: Order) -> tuple[Coat, ...]:
    d = order.grime
    return (
        wear.film_of(wear.DARK_RUST, 0.7 * d, gloss=0.05),
        wear.spread(wear.RUST, 0.85 * d, 10, edge=1.4),
        wear.spread((0.02, 0.016, 0.012), 0.5 * d, 16, edge=1.5, gloss=0.5),
    )


def build_hub(order: Order) -> Subject:
    """A bolt-on hub with its wheel flange up and its studs standing; the encoder side below."""
    flange = order.size("flange-diameter", 136.0) / 2
    spigot = order.size("spigot-diameter", 63.0) / 2
    holes = round(order.size("studs", 5))
    circle_r = order.size("stud-circle-diameter", 108.0) / 2
    metal, studs, body = STEEL, PLATED, CAST_IRON
    if order.worn and order.grime > 0:
        rust = _rusted(order)
        metal, studs, body = metal.under(*rust), STEEL.under(*rust), body.under(*rust)
    pieces = [
        turned([(0, 44), (spigot - 9, 44), (spigot - 8, 60), (spigot - 2, 62), (spigot, 60), (spigot, 54)], metal),
        turned([(spigot, 54), (flange - 1, 54), (flange, 53), (flange, 45), (flange - 2, 43), (40, 40)], metal),
        turned([(40, 40), (39, 30)], metal),
        turned([(46, 28), (46, 8), (40, 6), (40, 0), (30, 0)], body),
        turned([(39, 28), (46, 28)], body),
        turned([(30, 0), (30, -6), (25, -6), (0, -6)], Finish((0.05, 0.05, 0.055), gloss=0.4)),
        turned([(14, 44.1), (15.5, 44.1), (15.5, 47), (14, 47)], metal),
    ]
    plate = [(62 * float(np.cos(a)) if i % 2 else 47 * float(np.cos(a)),
              62 * float(np.sin(a)) if i % 2 else 47 * float(np.sin(a)))
             for i, a in enumerate(np.linspace(0, 2 * np.pi, 9)[:-1])]
    pieces.append(slab(plate, 12, 24, body))
    for i in range(holes):
        a = 2 * np.pi * i / holes + 0.35
        profile = [(6.0, 54), *thread(6.0, 1.5, 57, 82, 0.8), (4.6, 84), (0, 84)]
        pieces.append(turned(profile, studs).moved(circle_r * float(np.cos(a)), circle_r * float(np.sin(a))))
    features: dict[str, Point] = {
        "flange left": (-flange, 0.0, 53.0), "flange right": (flange, 0.0, 53.0),
        "spigot left": (-spigot, 0.0, 60.0), "spigot right": (spigot, 0.0, 60.0),
    }
    for i in range(holes):
        a = 2 * np.pi * i / holes + 0.35
        features[f"stud {i + 1} end"] = (circle_r * float(np.cos(a)), circle_r * float(np.sin(a)), 84.0)
    return Subject(pieces, features, {
        "flange": View(52, -90, fill=0.74), "side": View(18, -90, fill=0.72),
        "encoder": View(50, -90, turn_about("x", 180), fill=0.72),
    })


def build_tie_rod_end(order: Order) -> Subject:
    """A tie-rod end: shank along -x, ball housing at the origin, tapered stud up along z."""
    shank = order.size("thread-diameter", 14.0) / 2
    length = order.size("shank-length", 92.0)
    stud = order.size("stud-large-diameter", 14.6) / 2
    metal, bright, boot = Finish((0.09, 0.09, 0.095), gloss=0.4, uneven=0.06, rough=0.1), PLATED, RUBBER
    lean = 0.0
    if order.worn and order.grime > 0:
        rust = _rusted(order)
        metal, bright = CAST_IRON.under(*rust), STEEL.under(*rust)
        places = order.rng.uniform(-20, 20, 9).tolist()
        boot = RUBBER.under(wear.film_of(wear.DUST, 0.6 * order.grime, gloss=0.1),
                            wear.spread(wear.OIL, 0.7 * order.grime, 8, edge=1.0, gloss=0.8),
                            wear.cracks(places, 0, 0.55))
        lean = 17.0
    post = [
        turned([(stud + 0.2, 10), (stud + 0.2, 17), (stud, 20), (stud - 1.4, 34)], bright),
        turned([(4.8, 34), *thread(5.6, 1.5, 35, 54, 0.8), (4.6, 55.5), (0, 55.5)], bright),
    ]
    rubber = turned([(15.5, 8.5), (17.2, 9.5), (17.0, 11.5), (14.0, 12.5), (15.2, 14.5), (13.0, 16.5),
                     (12.8, 18), (9.5, 20.5), (8.4, 22), (stud, 22)], boot)
    screw = turned([(shank, -26), (shank, -38), *[(r, z) for r, z in thread(shank, 1.5, -length, -38, 0.8)][::-1],
                    (shank - 1.6, -length - 1.5), (0, -length - 1.5)], bright)
    pieces = [
        turned([(0, -13), (9, -13), (14, -11), (17, -6), (17.4, 5), (16, 9), (0, 9)], metal),
        slab(circle(11, 30), -14.2, -12, metal),
        *[p.moved(turn=turn_about("x", lean)) for p in post], rubber.moved(turn=turn_about("x", lean / 2)),
        rod((-12, 0, -2), (-28, 0, -2), 10.5, metal, shank + 1.0),
        screw.moved(0, 0, -2, turn_about("y", 90)),
        slab(hexagon(shank * 2 + 8), -66, -56, bright).moved(0, 0, -2, turn_about("y", 90)),
    ]
    features: dict[str, Point] = {
        "shank end": (-length - 1.5, 0.0, -2.0), "housing far side": (17.4, 0.0, 5.0),
        "housing near side": (0.0, -17.4, 5.0), "boot foot": (0.0, -17.0, 10.0),
    }
    return Subject(pieces, features, {
        "side": View(28, -84, fill=0.72), "boot": View(34, -70, close_up=((0.0, 0.0, 14.0), 30.0)),
    })



"""An outer tie-rod end; the removed one rusty, its boot torn and its stud leaning."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    CAST_IRON,
    PLATED,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import circle, hexagon, rod, slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A tie-rod end: shank along -x, ball housing at the origin, tapered stud up along z."""
    shank = order.size("thread-diameter", 14.0) / 2
    length = order.size("shank-length", 92.0)
    stud = order.size("taper", 14.6) / 2
    metal, bright, boot = (
        Finish((0.09, 0.09, 0.095), gloss=0.4, uneven=0.06, rough=0.1),
        PLATED,
        RUBBER,
    )
    lean = 0.0
    if order.worn and order.grime > 0:
        rust = wear.rusted(order.grime)
        metal, bright = CAST_IRON.under(*rust), STEEL.under(*rust)
        places = order.rng.uniform(-20, 20, 9).tolist()
        boot = RUBBER.under(
            wear.film_of(wear.DUST, 0.6 * order.grime, gloss=0.1),
            wear.spread(wear.OIL, 0.7 * order.grime, 8, edge=1.0, gloss=0.8),
            wear.cracks(places, 0, 0.55),
        )
        lean = 17.0
    post = [
        turned([(stud + 0.2, 10), (stud + 0.2, 17), (stud, 20), (stud - 1.4, 34)], bright),
        turned([(4.8, 34), *thread(5.6, 1.5, 35, 54, 0.8), (4.6, 55.5), (0, 55.5)], bright),
    ]
    rubber = turned(
        [
            (15.5, 8.5),
            (17.2, 9.5),
            (17.0, 11.5),
            (14.0, 12.5),
            (15.2, 14.5),
            (13.0, 16.5),
            (12.8, 18),
            (9.5, 20.5),
            (8.4, 22),
            (stud, 22),
        ],
        boot,
    )
    screw = turned(
        [
            (shank, -26),
            (shank, -38),
            *[(r, z) for r, z in thread(shank, 1.5, -length, -38, 0.8)][::-1],
            (shank - 1.6, -length - 1.5),
            (0, -length - 1.5),
        ],
        bright,
    )
    pieces = [
        turned([(0, -13), (9, -13), (14, -11), (17, -6), (17.4, 5), (16, 9), (0, 9)], metal),
        slab(circle(11, 30), -14.2, -12, metal),
        *[p.moved(turn=turn_about("x", lean)) for p in post],
        rubber.moved(turn=turn_about("x", lean / 2)),
        rod((-12, 0, -2), (-28, 0, -2), 10.5, metal, shank + 1.0),
        screw.moved(0, 0, -2, turn_about("y", 90)),
        slab(hexagon(shank * 2 + 8), -66, -56, bright).moved(0, 0, -2, turn_about("y", 90)),
    ]
    features: dict[str, Point] = {
        "shank end": (-length - 1.5, 0.0, -2.0),
        "housing far side": (17.4, 0.0, 5.0),
        "housing near side": (0.0, -17.4, 5.0),
        "boot foot": (0.0, -17.0, 10.0),
    }
    return Subject(
        pieces,
        features,
        {
            "side": View(28, -84, fill=0.72),
            "thread and stud": View(34, -70, close_up=((0.0, 0.0, 14.0), 30.0)),
        },
    )

"""A wheel bearing hub with its studs; the removed one rusty."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    CAST_IRON,
    PLATED,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, around, profile, slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A bolt-on hub with its wheel flange up and its studs standing; the encoder side below."""
    flange = order.size("flange-diameter", 136.0) / 2
    spigot = order.size("spigot-diameter", 63.0) / 2
    count = round(order.size("studs", 5))
    ring = order.size("bolt-circle", 108.0) / 2
    metal, studs, body = STEEL, PLATED, CAST_IRON
    if order.worn and order.grime > 0:
        rust = wear.rusted(order.grime)
        metal, studs, body = metal.under(*rust), STEEL.under(*rust), body.under(*rust)
    ends = [around(ring, 360 * i / count + 20, 84.0) for i in range(count)]
    pieces = [*_flange(flange, spigot, metal), *_body(body)]
    pieces += [_stud(studs).moved(x, y) for x, y, _ in ends]
    features: dict[str, Point] = {
        "encoder centre": (0.0, 0.0, -6.0),
        "flange left": (-flange, 0.0, 53.0),
        "flange right": (flange, 0.0, 53.0),
        "spigot left": (-spigot, 0.0, 60.0),
        "spigot right": (spigot, 0.0, 60.0),
    }
    features |= {f"stud {i} end": end for i, end in enumerate(ends, 1)}
    views = {
        "flange face": View(52, -90, fill=0.74),
        "side": View(18, -90, fill=0.72),
        "encoder face": View(50, -90, turn_about("x", 180), fill=0.72),
    }
    return Subject(pieces, features, views)


def _flange(flange: float, spigot: float, metal: Finish) -> list[Piece]:
    pilot = profile(
        (0, spigot - 9, spigot - 8, spigot - 2, spigot, spigot), (44, 44, 60, 62, 60, 54)
    )
    radii = (spigot, flange - 1, flange, flange, flange - 2, 40, 39)
    plate = profile(radii, (54, 54, 53, 45, 43, 40, 30))
    nut = profile((14, 15.5, 15.5, 14), (44.1, 44.1, 47, 47))
    return [turned(pilot, metal), turned(plate, metal), turned(nut, metal)]


def _body(body: Finish) -> list[Piece]:
    barrel = profile((39, 46, 46, 40, 40, 30), (28, 28, 8, 6, 0, 0))
    plate = [around(62 if i % 2 else 47, 45 * i)[:2] for i in range(8)]
    encoder = profile((30, 30, 25, 0), (0, -6, -6, -6))
    return [
        turned(barrel, body),
        slab(plate, 12, 24, body),
        turned(encoder, Finish((0.05, 0.05, 0.055), gloss=0.4)),
    ]


def _stud(finish: Finish) -> Piece:
    ridges = thread(6.0, 1.5, 57, 82, 0.8)
    return turned([(6.0, 54.0), *ridges, (4.6, 84.0), (0.0, 84.0)], finish)

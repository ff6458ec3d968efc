"""An ignition lead with its boots; the removed one chafed and burned."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BRASS,
    RUBBER,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, hose, rod
from demo_shop.bench_camera.pinhole import Floats
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_JACKET = Finish((0.030, 0.034, 0.055), gloss=0.35, uneven=0.08, rough=0.05)


def build(order: Order) -> Subject:
    """A lead looped on the bench with a straight boot at one end and an elbow at the other."""
    outside = order.size("outside-diameter", 7.0)
    length = order.size("length", 520.0)
    boot = order.size("boot-depth", 24.0)
    r = outside / 2
    path = _loop(length - 2 * boot, r)
    jacket, rubber, metal = _lead_materials(order, path)
    pieces = hose(path, r, jacket)
    pieces += _straight_boot(path[0], path[0] - path[1], boot, r, rubber, metal)
    pieces += _elbow_boot(path[-1], path[-1] - path[-2], boot, r, rubber, metal)
    spot = path[len(path) // 2]
    plug_end = _point(path[0] + _along(path[0] - path[1]) * 16)
    cap_end = _point(path[-1] + _along(path[-1] - path[-2]) * 12)
    features: dict[str, Point] = {
        "plug boot mouth": _point(path[0] + _along(path[0] - path[1]) * (9 + boot)),
        "plug boot neck": _point(path[1] + np.array([0, 0, r + 1.0])),
        "lead middle": _point(spot + np.array([0, 0, r])),
    }
    grounds = ("paper", "steel", "wood")
    return Subject(
        pieces,
        features,
        {
            "whole lead": View(60, -90, fill=0.86, grounds=grounds),
            "plug end": View(42, -90, close_up=(plug_end, 22.0), grounds=grounds),
            "cap end": View(42, -90, close_up=(cap_end, 22.0), grounds=grounds),
            "jacket": View(46, -90, close_up=(_point(spot), 24.0), grounds=grounds),
        },
    )


def _point(place: Floats) -> Point:
    return float(place[0]), float(place[1]), float(place[2])


def _loop(length: float, r: float) -> Floats:
    """A loose loop of the wanted length whose ends cross."""
    a = np.linspace(np.radians(-248), np.radians(68), 64)
    shape = np.stack([1.35 * np.sin(a * 1.0) * (1 + 0.12 * np.cos(2 * a)), np.cos(a)], 1)
    long = float(np.sum(np.linalg.norm(np.diff(shape, axis=0), axis=1)))
    scale = length / long
    lift = np.exp(-(((np.arange(64) - 60) / 5.0) ** 2)) * 2.1 * r
    return np.column_stack([shape * scale, lift + 1.9 * r])


def _along(direction: Floats) -> Floats:
    flat = np.array([direction[0], direction[1], 0.0])
    return flat / float(np.linalg.norm(flat))


def _straight_boot(
    end: Floats, out: Floats, depth: float, r: float, rubber: Finish, metal: Finish
) -> list[Piece]:
    axis = _along(out)
    neck, mouth = end + axis * 9, end + axis * (9 + depth)
    rings = [
        rod(neck + axis * (2 + 4 * i), neck + axis * (3.6 + 4 * i), r + 3.4, rubber)
        for i in range(4)
    ]
    tube = [rod(end - axis * 2, neck, r + 1.0, rubber, r + 2.6), rod(neck, mouth, r + 2.6, rubber)]
    return [*tube, *rings, rod(mouth, mouth + axis * 0.2, r + 0.9, metal)]


def _elbow_boot(
    end: Floats, out: Floats, depth: float, r: float, rubber: Finish, metal: Finish
) -> list[Piece]:
    axis = _along(out)
    side = np.array([-axis[1], axis[0], 0.0])
    knee = end + axis * 14
    mouth = knee + side * depth
    bend = hose(np.stack([end, knee - axis * 3, knee + side * 3, mouth]), r + 1.8, rubber)[:-1]
    grip = rod(knee - axis * 2 + side * 1, knee + axis * 4.5 + side * 1, r + 3.0, rubber)
    skirt = rod(mouth - side * 6, mouth, r + 2.8, rubber, r + 3.6)
    return [*bend, grip, skirt, rod(mouth, mouth + side * 0.2, r + 1.2, metal)]


def _lead_materials(order: Order, path: Floats) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return _JACKET, RUBBER, BRASS
    dirt = order.grime
    x, y, z = _point(path[len(path) // 2])
    x2, y2, z2 = _point(path[len(path) // 4])
    jacket = _JACKET.under(
        wear.film_of(wear.DUST, 0.22 * dirt, gloss=0.2),
        wear.spread(wear.OIL, 0.5 * dirt, 18, edge=1.4, gloss=0.5),
        wear.spread((0.30, 0.27, 0.22), 1.3 * dirt, 5, wear.near(x, y, z + 2, 15), edge=1.2),
        wear.spread(wear.SOOT, 1.1 * dirt, 4, wear.near(x, y, z + 2, 8), edge=1.0),
        wear.spread((0.19, 0.10, 0.05), 1.2 * dirt, 5, wear.near(x2, y2, z2, 18), edge=1.2),
    )
    rubber = RUBBER.under(
        wear.film_of(wear.DUST, 0.2 * dirt, gloss=0.12),
        wear.spread((0.20, 0.19, 0.17), 0.5 * dirt, 7, edge=1.2),
        wear.cracks(order.rng.uniform(-120, 120, 26).tolist(), 0, 0.3),
    )
    return jacket, rubber, BRASS.under(wear.spread(wear.GREEN_CRUST, 1.0 * dirt, 4))

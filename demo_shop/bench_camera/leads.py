"""An ignition lead and a coil on plug; the removed ones chafed, burned and tracked."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import BLACK_PLASTIC, BRASS, GREY_PLASTIC, RUBBER, STEEL, Finish
from demo_shop.bench_camera.pieces import Piece, bar, hose, rod, slab, turned
from demo_shop.bench_camera.pinhole import Floats, turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_JACKET = Finish((0.030, 0.034, 0.055), gloss=0.35, uneven=0.08, rough=0.05)


def build_lead(order: Order) -> Subject:
    """A lead looped on the bench with a straight boot at one end and an elbow at the other."""
    outside = order.size("outside-diameter", 7.0)
    length = order.size("length", 520.0)
    boot = order.size("boot-depth", 24.0)
    r = outside / 2
    path, scale = _loop(length - 2 * boot, r)
    jacket, rubber, metal = _lead_materials(order, path)
    pieces = hose(path, r, jacket)
    pieces += _straight_boot(path[0], path[0] - path[1], boot, r, rubber, metal)
    pieces += _elbow_boot(path[-1], path[-1] - path[-2], boot, r, rubber, metal)
    spot = path[len(path) // 2]
    features: dict[str, Point] = {
        "lead at straight boot": _point(path[0]),
        "lead at elbow": _point(path[-1]),
        "lead middle": _point(spot + np.array([0, 0, r])),
        "loop left": (float(path[:, 0].min()), 0.0, r),
    }
    grounds = ("paper", "steel", "wood")
    return Subject(pieces, features, {
        "whole": View(60, -90, fill=0.86, grounds=grounds),
        "boots": View(40, -90, close_up=(_point(path[0] + np.array([0, -6.0, 6])), 30 * scale), grounds=grounds),
        "jacket": View(46, -90, close_up=(_point(spot), 24.0), grounds=grounds),
    })


def _point(place: Floats) -> Point:
    return float(place[0]), float(place[1]), float(place[2])


def _loop(length: float, r: float) -> tuple[Floats, float]:
    """A loose loop of the wanted length whose ends cross."""
    a = np.linspace(np.radians(-248), np.radians(68), 64)
    shape = np.stack([1.35 * np.sin(a * 1.0) * (1 + 0.12 * np.cos(2 * a)), np.cos(a)], 1)
    long = float(np.sum(np.linalg.norm(np.diff(shape, axis=0), axis=1)))
    scale = length / long
    lift = np.exp(-(((np.arange(64) - 60) / 5.0) ** 2)) * 2.1 * r
    return np.column_stack([shape * scale, lift + 1.9 * r]), scale / 80


def _along(direction: Floats) -> Floats:
    flat = np.array([direction[0], direction[1], 0.0])
    return flat / float(np.linalg.norm(flat))


def _straight_boot(
    end: Floats, out: Floats, depth: float, r: float, rubber: Finish, metal: Finish
) -> list[Piece]:
    axis = _along(out)
    neck, mouth = end + axis * 9, end + axis * (9 + depth)
    rings = [rod(neck + axis * (2 + 4 * i), neck + axis * (3.6 + 4 * i), r + 3.4, rubber) for i in range(4)]
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
        wear.film_of(wear.DUST, 0.5 * dirt, gloss=0.12),
        wear.spread(wear.OIL, 0.5 * dirt, 18, edge=1.4, gloss=0.5),
        wear.spread((0.30, 0.27, 0.22), 1.3 * dirt, 5, wear.near(x, y, z + 2, 15), edge=1.2),
        wear.spread(wear.SOOT, 1.1 * dirt, 4, wear.near(x, y, z + 2, 8), edge=1.0),
        wear.spread((0.19, 0.10, 0.05), 1.2 * dirt, 5, wear.near(x2, y2, z2, 18), edge=1.2),
    )
    rubber = RUBBER.under(
        wear.film_of(wear.DUST, 0.55 * dirt, gloss=0.08),
        wear.spread((0.20, 0.19, 0.17), 0.5 * dirt, 7, edge=1.2),
        wear.cracks(order.rng.uniform(-120, 120, 26).tolist(), 0, 0.3),
    )
    return jacket, rubber, BRASS.under(wear.spread(wear.GREEN_CRUST, 1.0 * dirt, 4))


def build_coil(order: Order) -> Subject:
    """A coil on plug along z: head above, boot below; plug socket on +x, bolt ear on -x."""
    stem = order.size("stem-length", 112.0)
    ear = order.size("mounting-hole-distance", 28.0)
    pins = max(2, round(order.size("connector-pins", 3)))
    case, rubber, metal = _coil_materials(order, stem)
    head = [
        bar((-18, 20), (-14, 14), (0, 22), case, 4),
        bar((-15, 17), (-11, 11), (22, 24), case, 3),
        *[bar((-14, 16), (y - 0.8, y + 0.8), (24, 25.2), case) for y in (-7.0, 0.0, 7.0)],
        slab([(-16, -9), (-ear, -8), (-ear - 6, -4), (-ear - 6, 4), (-ear, 8), (-16, 9)], 2, 8, case,
             ((-ear, 0.0, 3.4),)),
        Piece(turned([(3.4, 2), (5.0, 1.6), (5.0, 8.6), (3.4, 8.6)], metal).patches, metal).moved(-ear),
    ]
    socket = _socket(pins, case, metal)
    tube = [
        turned([(0, 0), (12, 0), (11.6, -12), (9.5, -14), (9.2, -stem * 0.45)], case),
        turned([(10.6, -stem * 0.42), (10.6, -stem * 0.47), (10.2, -stem * 0.48), (9.7, -stem * 0.8),
                (11.2, -stem * 0.82), (11.2, -stem + 2), (10.4, -stem), (7.4, -stem), (6.8, -stem + 14),
                (0, -stem + 14)], rubber),
        *[turned([(9.6, -stem * 0.5 - 6 * i), (10.8, -stem * 0.5 - 6 * i - 0.6),
                  (10.8, -stem * 0.5 - 6 * i - 1.8), (9.6, -stem * 0.5 - 6 * i - 2.4)], rubber)
          for i in range(4)],
    ]
    features: dict[str, Point] = {
        "boot end": (0.0, -10.4, -stem),
        "stem root": (0.0, -12.0, 0.0),
        "bolt hole": (-ear, 0.0, 8.6),
        "head top": (0.0, 0.0, 25.2),
    }
    lying = turn_about("y", 90) @ turn_about("z", 205)
    grounds = ("paper", "steel", "wood")
    return Subject([*head, *socket, *tube], features, {
        "side": View(44, -90, lying, fill=0.76, grounds=grounds),
        "stem": View(34, -90, lying, close_up=((0.0, 0.0, -stem * 0.62), 40.0), grounds=grounds),
        "connector": View(
            36, -60, turn_about("y", 90) @ turn_about("z", 222), close_up=((16.0, 0.0, 6.0), 24.0),
            grounds=grounds,
        ),
    })


def _socket(pins: int, case: Finish, metal: Finish) -> list[Piece]:
    half = 4.0 + 2.2 * pins
    shell = [
        bar((20, 36), (-half, half), (3.5, 5.0), case), bar((20, 36), (-half, half), (16, 17.5), case),
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
    spine = [(-9.2, 4.0, -stem * 0.5), (-8.8, 5.5, -stem * 0.65), (-9.6, 3.4, -stem * 0.8), (-9.9, 5.0, low)]
    rubber = GREY_PLASTIC.under(
        wear.film_of((0.10, 0.075, 0.05), 0.7 * dirt, gloss=0.15),
        wear.spread(wear.OIL, 0.6 * dirt, 14, edge=1.2, gloss=0.5),
        wear.track(spine, 0.7 * dirt),
        wear.track([(a, -b, c) for a, b, c in spine], 0.55 * dirt, (0.45, 0.43, 0.38)),
        wear.spread(wear.WHITE_CRUST, 0.8 * dirt, 4, wear.beyond(2, -stem + 16, -12)),
    )
    return case, rubber, STEEL.under(wear.spread(wear.GREEN_CRUST, 0.9 * dirt, 3))



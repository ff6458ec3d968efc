"""Brake pads and a vented brake disc; the removed ones thin, scored, glazed and rusty."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import BLACK_PAINT, CAST_IRON, LINING, STEEL, Finish
from demo_shop.bench_camera.pieces import Piece, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_IN_VENT = Finish((0.02, 0.018, 0.017), gloss=0.1)  # little light gets in


def build_pads(order: Order) -> Subject:
    """Two pads; the measured one lies face up with its plate's back at z = 0, disc centre at x = y = 0."""
    lining = order.size("lining-thickness", 2.6, 11.0)
    plate = order.size("backing-thickness", 5.5)
    length = order.size("pad-length", 104.0)
    spread = float(np.degrees(length / 2 / 104.0))
    paint, friction = _pad_materials(order)
    pad = _pad(lining, plate, spread, paint, friction)
    flip = turn_about("z", 14) @ turn_about("x", 180)
    other = [p.moved(6, 258, plate + lining, flip) for p in pad]
    half = np.radians(spread - 4)
    face = plate + lining
    features: dict[str, Point] = {
        "lining face": (20.0, 86.0, face),
        "lining root": (20.0, 86.0, plate),
        "plate back": (20.0, 84.2, 0.0),
        "lining left": (float(-104 * np.sin(half)), float(104 * np.cos(half)), face),
        "lining right": (float(104 * np.sin(half)), float(104 * np.cos(half)), face),
    }
    middle = ((0.0, 104.0, plate), 58.0)
    return Subject([*pad, *other], features, {
        "face": View(52, -90, fill=0.72, grounds=("steel", "paper", "wood")),
        "edge": View(14, -90, close_up=middle, fill=0.74, grounds=("steel", "paper", "wood")),
    })


def _pad(lining: float, plate: float, spread: float, paint: Finish, friction: Finish) -> list[Piece]:
    back = slab(_segment(82, 126, spread, 5.0), 0, plate, paint)
    halves = [
        slab(_between(86, 122, low, high), plate, plate + lining, friction)
        for low, high in ((90 - spread + 3.2, 89.1), (90.9, 90 + spread - 3.2))
    ]
    ears = [
        slab(_between(98, 112, a, a + 4.6), 0.3, plate - 0.3, paint)
        for a in (90 - spread - 4.2, 90 + spread - 0.4)
    ]
    return [back, *halves, *ears]


def _between(inner: float, outer: float, low: float, high: float) -> list[tuple[float, float]]:
    out = np.radians(np.linspace(low, high, 8))
    return [(outer * float(np.cos(a)), outer * float(np.sin(a))) for a in out] + [
        (inner * float(np.cos(a)), inner * float(np.sin(a))) for a in out[::-1]
    ]


def _segment(inner: float, outer: float, spread: float, cut: float) -> list[tuple[float, float]]:
    """A pad's plate: a piece of a ring with its outer corners cut."""
    points = _between(inner, outer, 90 - spread, 90 + spread)
    a = np.radians(90 - spread)
    low = ((outer - cut) * float(np.cos(a)), (outer - cut) * float(np.sin(a)))
    return [low, *points[1:7], (-low[0], low[1]), *points[8:]]


def _pad_materials(order: Order) -> tuple[Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return BLACK_PAINT, LINING
    dirt = order.grime
    paint = BLACK_PAINT.under(
        wear.film_of(wear.DUST, 0.3 * dirt, gloss=0.1),
        wear.spread(wear.RUST, 0.85 * dirt, 10, edge=1.2),
        wear.spread(wear.DARK_RUST, 0.6 * dirt, 4),
    )
    friction = LINING.under(
        wear.film_of((0.075, 0.072, 0.07), 0.8 * dirt, gloss=0.5),
        wear.grooves(1.7, 0.65 * dirt, (0.19, 0.185, 0.18)),
        wear.spread((0.17, 0.15, 0.14), 0.45 * dirt, 16, edge=2.0, gloss=0.5),
        wear.cracks([-31.0, -9.0, 27.0], 0, 0.14),
    )
    return paint, friction


def build_disc(order: Order) -> Subject:
    """Vented disc, hat up, friction face underneath at z = 0 and the outer one at the thickness."""
    thick = order.size("thickness", 25.1, 28.0)
    outer = order.size("outside-diameter", 280.0) / 2
    hat = order.size("hat-height", 46.0)
    bore = order.size("bore-diameter", 64.0) / 2
    count = round(order.size("bolt-holes", 5))
    face, lip, iron = _disc_materials(order, outer)
    gap = (thick / 2 - 3.6, thick / 2 + 3.6)
    circle_at = [2 * np.pi * i / count + 0.3 for i in range(count)]
    holes = tuple((54 * float(np.cos(a)), 54 * float(np.sin(a)), 6.6) for a in circle_at)
    pieces = [
        turned([(84, 0), (outer - 2.5, 0)], face),
        turned([(outer - 2.5, 0), (outer - 2.5, -0.8 if order.worn else 0), (outer, 0), (outer, gap[0])], lip),
        turned([(outer, gap[0]), (86, gap[0]), (86, gap[1]), (outer, gap[1])], _IN_VENT),
        turned([(outer, gap[1]), (outer, thick), (outer - 2.5, thick + (0.9 if order.worn else 0)),
                (outer - 2.5, thick)], lip),
        turned([(outer - 2.5, thick), (84, thick)], face),
        turned([(84, thick), (80, thick - 1.5), (77, thick + 2), (75, hat - 4), (72, hat)], iron),
        turned([(72, hat), (bore, hat)], iron, holes=holes),
        turned([(bore, hat), (bore, hat - 7), (70, hat - 7)], iron),
        turned([(79, thick - 2), (79, 0)], iron),
    ]
    for i in range(36):
        vane = _between(90, outer - 1.5, 0, 1.7)
        pieces.append(slab(vane, *gap, iron).moved(turn=turn_about("z", i * 10.0)))
    features: dict[str, Point] = {
        "edge upper": (0.0, -outer, thick),
        "edge lower": (0.0, -outer, 0.0),
        "edge left": (-outer, 0.0, thick),
        "edge right": (outer, 0.0, thick),
        "bore left": (-bore, 0.0, hat),
        "bore right": (bore, 0.0, hat),
    }
    return Subject(pieces, features, {
        "face": View(55, -90, fill=0.80, grounds=("steel", "mat", "wood")),
        "edge": View(
            13, -90, close_up=((0.0, -outer + 8, thick / 2), 62.0), grounds=("steel", "mat", "wood")
        ),
    })


def _disc_materials(order: Order, outer: float) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return STEEL.under(wear.grooves(0.5, 0.25, (0.42, 0.42, 0.43))), STEEL, CAST_IRON
    dirt = order.grime
    face = STEEL.under(
        wear.grooves(2.2, 0.75 * dirt, (0.23, 0.22, 0.215)),
        wear.spread(wear.HEAT_BLUE, 0.55 * dirt, 34, edge=2.0, gloss=0.6),
        wear.spread(wear.RUST, 0.35 * dirt, 14),
    )
    rusty = CAST_IRON.under(
        wear.film_of(wear.DARK_RUST, 0.95 * dirt, gloss=0.05),
        wear.spread(wear.RUST, 0.95 * dirt, 12, edge=1.5),
        wear.spread((0.27, 0.13, 0.055), 0.5 * dirt, 4),
    )
    return face, rusty, rusty

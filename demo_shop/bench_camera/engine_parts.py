"""An oil filter, a thermostat, a crankshaft sensor and a relay."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC, BRASS, COPPER, PAINTED, PLATED, RUBBER, STEEL, Finish,
)
from demo_shop.bench_camera.pieces import Piece, bar, circle, hose, rod, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build_filter(order: Order) -> Subject:
    """A spin-on oil filter standing on its dome, thread and gasket up."""
    height = order.size("can-height", 86.0)
    outer = order.size("gasket-outer-diameter", 71.5) / 2
    inner = order.size("gasket-inner-diameter", 62.0) / 2
    bore = order.size("thread-diameter", 20.0) / 2
    can, plate, rubber = _filter_materials(order)
    proud = 0.7 if order.worn else 2.4
    r = outer + 2.6
    ring = [
        ((bore + 6.8) * float(np.cos(a)), (bore + 6.8) * float(np.sin(a)), 3.0)
        for a in np.arange(8) * np.pi / 4
    ]
    flutes = np.linspace(0, 2 * np.pi, 57)[:-1]
    grip = [((r - 1.2 * (i % 4 < 2)) * float(np.cos(a)), (r - 1.2 * (i % 4 < 2)) * float(np.sin(a)))
            for i, a in enumerate(flutes)]
    pieces = [
        turned([(0, 0), (r - 9, 0.6), (r - 4, 3), (r - 1, 8)], can),
        slab(grip, 8, 24, can),
        turned([(r - 0.6, 24), (r, 26), (r, height - 4), (r + 0.9, height - 3), (r + 0.9, height - 1),
                (r, height), (outer + 0.6, height), (outer + 0.4, height - 2)], can),
        turned([(outer, height - 2), (outer, height + proud - 0.5), (outer - 0.6, height + proud),
                (inner + 0.6, height + proud), (inner, height + proud - 0.5), (inner, height - 2)], rubber),
        turned([(inner, height - 2), (inner - 2, height - 3.4), (bore + 12, height - 3.4)], plate),
        turned([(bore + 12, height - 3.4), (bore + 2, height - 3.4)], plate, holes=tuple(ring)),
        turned([(bore + 2, height - 3.4), (bore + 1.4, height - 1.2), (bore, height - 1.2)], plate),
        turned([(p, z) for i in range(9) for p, z in
                ((bore, height - 1.2 - 1.5 * i), (bore - 0.8, height - 1.95 - 1.5 * i))], plate),
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
    return Subject(pieces, features, {
        "thread face": View(58, -90, fill=0.70),
        "side": View(22, -90, fill=0.74),
    })


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


def build_thermostat(order: Order) -> Subject:
    """A wax thermostat lying with its spring side up and tilted; the removed one stuck open."""
    flange = order.size("flange-diameter", 54.0) / 2
    thick = order.size("flange-thickness", 1.6)
    lift = order.size("lift-cold", 4.5, 0.0)
    foot = order.size("bypass-foot-length", 9.0)
    metal, copper = STEEL, COPPER
    seal = RUBBER
    if order.worn and order.grime > 0:
        crud = (wear.film_of((0.20, 0.15, 0.10), 0.55 * order.grime, gloss=0.1),
                wear.spread((0.38, 0.30, 0.22), 0.75 * order.grime, 7, edge=1.0),
                wear.spread(wear.RUST, 0.65 * order.grime, 5))
        metal, copper = metal.under(*crud), copper.under(*crud)
        seal = RUBBER.under(wear.spread((0.30, 0.26, 0.2), 0.5 * order.grime, 5))
    top = 30.0 + lift
    coil = np.linspace(0, 5 * 2 * np.pi, 110)
    spring = np.stack([(15 - 2.5 * coil / coil[-1]) * np.cos(coil), (15 - 2.5 * coil / coil[-1]) * np.sin(coil),
                       thick + 4.5 + lift + (21 - lift) * coil / coil[-1]], 1)
    frame = [
        rod((s * 19, 0, thick), (s * 10, 0, 31), 1.6, metal) for s in (-1, 1)
    ] + [bar((-11, 11), (-4, 4), (29.5, 31), metal)]
    bridge = [rod((s * 17, 0, 0), (s * 5, 0, -14), 2.0, metal) for s in (-1, 1)]
    pieces = [
        turned([(17.5, 0), (flange - 2.4, 0)], metal), turned([(17.5, thick), (flange - 2.4, thick)], metal),
        turned([(flange - 3.4, -1.6), (flange, -1.6), (flange + 0.3, 0), (flange + 0.3, thick),
                (flange, thick + 1.6), (flange - 3.4, thick + 1.6), (flange - 3.4, -1.6)], seal),
        turned([(17.5, 0), (17.5, thick)], metal),
        turned([(0, thick + lift), (16.6, thick + lift), (17.2, thick + 1.2 + lift), (16, thick + 3 + lift),
                (7.5, thick + 4.5 + lift)], metal),
        turned([(7.2, thick + 3 + lift), (7.2, top - 3), (6, top - 1), (4.5, top), (2.2, top),
                (2.2, top + foot), (7.5, top + foot), (7.5, top + foot + 1.2), (0, top + foot + 1.2)], copper),
        turned([(0, -16), (5.2, -16), (4.4, -12), (0, -12)], metal),
        rod((0, 0, -14), (0, 0, thick + lift), 1.9, metal),
        *frame, *bridge, *hose(spring, 1.05, metal),
    ]
    features: dict[str, Point] = {
        "flange left": (0.0, -flange - 0.3, thick), "flange right": (0.0, flange + 0.3, thick),
        "foot end": (0.0, 0.0, top + foot + 1.2), "valve plate": (17.0, 0.0, thick + 1.2 + lift),
        "seat": (17.5, 0.0, thick),
    }
    return Subject(pieces, features, {
        "spring side": View(34, -70, turn_about("z", 70), fill=0.66),
        "side": View(16, -90, turn_about("z", 55), fill=0.7),
    })


def build_sensor(order: Order) -> Subject:
    """A crankshaft sensor along z: tip below, flange at z = 0, socket above."""
    length = order.size("body-length", 29.0)
    diameter = order.size("body-diameter", 17.9) / 2
    hole = order.size("flange-hole-distance", 22.0)
    plastic, tip, ring = BLACK_PLASTIC, STEEL, RUBBER
    if order.worn and order.grime > 0:
        d = order.grime
        plastic = plastic.under(
            wear.film_of((0.10, 0.07, 0.04), 0.55 * d, gloss=0.3),
            wear.spread(wear.OIL, 0.8 * d, 10, edge=1.4, gloss=0.7),
            wear.spread((0.24, 0.24, 0.24), 1.2 * d, 2.2, wear.beyond(2, -length + 7, -7), edge=0.8, gloss=0.5),
        )
        tip = STEEL.under(wear.spread((0.16, 0.16, 0.16), 1.2 * d, 1.6, gloss=0.5, rough=1.2))
        ring = RUBBER.under(wear.film_of(wear.OIL, 0.6 * d, gloss=0.7))
    lug = circle(6.5, 20, hole)
    plate = [(0, -12), (hole, -6.5), *[p for p in lug if p[0] > hole], (hole, 6.5), (0, 12), (-9, 9), (-12, 0), (-9, -9)]
    cord = hose(np.column_stack([np.array(circle(diameter - 0.2, 40)), np.full(40, -7.0)]), 1.5, ring, closed=True)
    pieces = [
        turned([(11, 0), (diameter, -1), (diameter, -4.8), (diameter - 1.2, -5.2), (diameter - 1.2, -8.8),
                (diameter, -9.2), (diameter, -length + 1), (diameter - 1, -length), (3.2, -length)], plastic),
        turned([(0, -length - 0.3), (3.2, -length - 0.3), (3.2, -length + 1)], tip),
        slab(plate, 0, 4.5, plastic, ((hole, 0.0, 3.4),)),
        turned([(3.4, -0.3), (4.6, -0.3), (4.6, 4.9), (3.4, 4.9)], BRASS).moved(hole),
        turned([(9, 4.5), (8.5, 14), (7, 16), (0, 16)], plastic),
        *[p.moved(-2, 0, 12, turn_about("y", -70)) for p in _shroud(plastic)],
        *cord,
    ]
    features: dict[str, Point] = {
        "tip end": (0.0, 0.0, -length - 0.3), "flange face": (0.0, -diameter, 0.0),
        "tip edge": (0.0, -diameter + 1, -length), "bolt hole": (hole, 0.0, 4.9),
        "body left": (0.0, -diameter, -length / 2), "body right": (0.0, diameter, -length / 2),
    }
    lying = turn_about("y", 90) @ turn_about("z", 120)
    return Subject(pieces, features, {
        "side": View(40, -90, lying, fill=0.64),
        "tip": View(34, 205, lying, close_up=((0.0, 0.0, -length + 4), 17.0)),
    })


def _shroud(plastic: Finish) -> list[Piece]:
    walls = [bar((-8, 8), (-6, -4.6), (0, 22), plastic), bar((-8, 8), (4.6, 6), (0, 22), plastic),
             bar((-8, -6.6), (-6, 6), (0, 22), plastic), bar((6.6, 8), (-6, 6), (0, 22), plastic),
             bar((-8, 8), (-6, 6), (0, 8), plastic), bar((-2.5, 2.5), (6, 7.8), (8, 20), plastic)]
    return walls + [bar((x - 0.4, x + 0.4), (-1.2, 1.2), (8, 18), BRASS) for x in (-4.0, 0.0, 4.0)]


def build_relay(order: Order) -> Subject:
    """A cube relay standing on its head, blades up."""
    width = order.size("body-width", 28.0)
    blade = order.size("blade-width", 6.3)
    case, pins = BLACK_PLASTIC, PLATED
    base = Finish((0.045, 0.045, 0.05), gloss=0.3)
    hot = PLATED
    if order.worn and order.grime > 0:
        d = order.grime
        case = case.under(wear.film_of(wear.DUST, 0.55 * d, gloss=0.1), wear.spread(wear.DUST, 0.4 * d, 9, edge=1.4))
        base = base.under(
            wear.film_of(wear.DUST, 0.4 * d, gloss=0.1),
            wear.spread((0.16, 0.085, 0.035), 1.4 * d, 5, wear.near(0, -8.4, 26, 10), edge=1.6),
        )
        pins = PLATED.under(wear.film_of((0.2, 0.18, 0.15), 0.5 * d), wear.spread(wear.GREEN_CRUST, 0.3 * d, 3))
        hot = COPPER.under(wear.film_of((0.06, 0.05, 0.07), 0.75 * d, gloss=0.4), wear.spread(wear.SOOT, 0.9 * d, 3.5))
    h = width / 2
    spots = [(0.0, -8.4, hot, 0), (0.0, 8.4, pins, 0), (-8.4, 0.0, pins, 90), (8.4, 0.0, pins, 90), (0.0, 0.0, pins, 0)]
    pieces = [
        bar((-h, h), (-h, h), (0, 24), case, 2.4), bar((-h + 1, h - 1), (-h + 1, h - 1), (24, 26), base, 2.0),
        bar((h, h + 2.5), (-6, 6), (3, 14), case, 0.5),
    ]
    for x, y, finish, degrees in spots:
        outline = [(-blade / 2, 0), (blade / 2, 0), (blade / 2, 10), (blade / 2 - 1.4, 11.5), (-blade / 2 + 1.4, 11.5), (-blade / 2, 10)]
        upright = slab(outline, -0.4, 0.4, finish).moved(turn=turn_about("x", 90))
        pieces.append(upright.moved(x, y, 26, turn_about("z", degrees)))
    features: dict[str, Point] = {
        "burned blade end": (0.0, -8.4, 37.5), "burned blade left": (-blade / 2, -8.4, 32.0),
        "burned blade right": (blade / 2, -8.4, 32.0), "body left": (-h, -h, 12.0), "body right": (h, -h, 12.0),
    }
    return Subject(pieces, features, {"pins": View(42, -68, fill=0.66), "side": View(20, -80, fill=0.68)})

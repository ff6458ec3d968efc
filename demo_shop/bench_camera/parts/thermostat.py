"""A wax thermostat; the removed one scaled and stuck open."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    COPPER,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, bar, hose, profile, rod, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """Thermostat with its flange at z = 0 and the spring side up; the removed one is stuck open."""
    flange = order.size("flange-diameter", 54.0) / 2
    thick = order.size("flange-thickness", 1.6)
    lift = order.size("lift-cold", 4.5, 0.0)
    foot = order.size("bypass-foot", 9.0)
    metal, copper, seal = _thermostat_materials(order)
    top = 30.0 + lift
    pieces = [
        *_flange(flange, thick, metal, seal),
        *_valve(thick + lift, metal),
        _capsule(thick + 3 + lift, top, foot, copper),
        *_frame(thick, metal),
        *_spring(thick + 4.5 + lift, 21 - lift, metal),
    ]
    features: dict[str, Point] = {
        "flange left": (0.0, -flange, thick),
        "flange right": (0.0, flange, thick),
        "foot end": (0.0, 0.0, top + foot + 1.2),
        "valve plate": (17.0, 0.0, thick + 1.2 + lift),
        "seat": (17.5, 0.0, thick),
    }
    views = {
        "spring side": View(34, -70, turn_about("z", 70), fill=0.66),
        "flange face": View(50, -80, turn_about("x", 180), fill=0.62),
        "side": View(16, -90, turn_about("z", 55), fill=0.7),
    }
    return Subject(pieces, features, views)


def _thermostat_materials(order: Order) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return STEEL, COPPER, RUBBER
    crud = (
        wear.film_of((0.20, 0.15, 0.10), 0.55 * order.grime, gloss=0.1),
        wear.spread((0.38, 0.30, 0.22), 0.75 * order.grime, 7, edge=1.0),
        wear.spread(wear.RUST, 0.65 * order.grime, 5),
    )
    seal = RUBBER.under(wear.spread((0.30, 0.26, 0.2), 0.5 * order.grime, 5))
    return STEEL.under(*crud), COPPER.under(*crud), seal


def _flange(radius: float, thick: float, metal: Finish, seal: Finish) -> list[Piece]:
    inner, low, high = radius - 3.4, -1.6, thick + 1.6
    lip = profile((inner, radius, radius, inner, inner), (low, low, high, high, low))
    plate = profile((radius - 2.4, 17.5, 17.5, radius - 2.4), (0, 0, thick, thick))
    return [turned(plate, metal), turned(lip, seal)]


def _valve(z: float, metal: Finish) -> list[Piece]:
    dish = profile((0, 16.6, 17.2, 16, 7.5), (z, z, z + 1.2, z + 3, z + 4.5))
    knob = profile((0, 5.2, 4.4, 0), (-16, -16, -12, -12))
    return [turned(dish, metal), turned(knob, metal), rod((0, 0, -14), (0, 0, z), 1.9, metal)]


def _capsule(low: float, top: float, foot: float, copper: Finish) -> Piece:
    """The wax capsule and, on its stem, the foot that closes the bypass."""
    end = top + foot
    radii = (7.2, 7.2, 6, 4.5, 2.2, 2.2, 7.5, 7.5, 0)
    heights = (low, top - 3, top - 1, top, top, end, end, end + 1.2, end + 1.2)
    return turned(profile(radii, heights), copper)


def _frame(thick: float, metal: Finish) -> list[Piece]:
    legs = [rod((s * 19, 0, thick), (s * 10, 0, 31), 1.6, metal) for s in (-1, 1)]
    bridge = [rod((s * 17, 0, 0), (s * 5, 0, -14), 2.0, metal) for s in (-1, 1)]
    return [*legs, *bridge, bar((-11, 11), (-4, 4), (29.5, 31), metal)]


def _spring(low: float, height: float, metal: Finish) -> list[Piece]:
    turn = np.linspace(0, 1, 110)
    angle, radius = 10 * np.pi * turn, 15 - 2.5 * turn
    path = [radius * np.cos(angle), radius * np.sin(angle), low + height * turn]
    return hose(np.stack(path, 1), 1.05, metal)

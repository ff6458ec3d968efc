"""A spin-on oil filter; the removed one oily, its gasket flat."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    PAINTED,
    PLATED,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, around, profile, slab, turned
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A spin-on oil filter standing on its dome, thread and gasket up."""
    height = order.size("height", 86.0)
    outer = order.size("gasket-outer", 71.5) / 2
    inner = order.size("gasket-inner", 62.0) / 2
    bore = order.size("thread-diameter", 20.0) / 2
    can, plate, rubber = _filter_materials(order)
    face = height + (0.7 if order.worn else 2.4)  # a used gasket is pressed flat
    pieces = [
        *_can(outer + 2.6, outer, height, can),
        _gasket(outer, inner, height - 2, face, rubber),
        *_base_plate(inner, bore, height - 3.4, plate),
        turned([(0, height - 16), (outer + 0.6, height - 16)], RUBBER),
    ]
    features: dict[str, Point] = {
        "gasket left": (-outer, 0.0, face),
        "gasket right": (outer, 0.0, face),
        "gasket inner left": (-inner, 0.0, face),
        "gasket inner right": (inner, 0.0, face),
        "thread left": (-bore, 0.0, height - 1.2),
        "thread right": (bore, 0.0, height - 1.2),
        "can foot": (0.0, -outer - 2.6, 26.0),
        "can rim": (0.0, -outer - 3.5, height - 2),
    }
    views = {"gasket face": View(58, -90, fill=0.70), "side": View(22, -90, fill=0.74)}
    return Subject(pieces, features, views)


def _can(r: float, lip: float, height: float, can: Finish) -> list[Piece]:
    """Dome, fluted grip and rolled rim."""
    grip = [around(r - 1.2 * (i % 4 < 2), 360 * i / 56)[:2] for i in range(56)]
    radii = (r - 0.6, r, r, r + 0.9, r + 0.9, r, lip + 0.6, lip + 0.4)
    heights = (24, 26, height - 4, height - 3, height - 1, height, height, height - 2)
    dome = profile((0, r - 9, r - 4, r - 1), (0, 0.6, 3, 8))
    return [turned(dome, can), slab(grip, 8, 24, can), turned(profile(radii, heights), can)]


def _gasket(outer: float, inner: float, seat: float, face: float, rubber: Finish) -> Piece:
    radii = (outer, outer, outer - 0.6, inner + 0.6, inner, inner)
    return turned(profile(radii, (seat, face - 0.5, face, face, face - 0.5, seat)), rubber)


def _base_plate(inner: float, bore: float, z: float, plate: Finish) -> list[Piece]:
    """Plate with its ring of oil holes and the threaded neck."""
    holes = tuple((*around(bore + 6.8, 45.0 * i)[:2], 3.0) for i in range(8))
    ridges = [(bore - 0.8 * (i % 2), z + 2.2 - 0.75 * i) for i in range(18)]
    return [
        turned(profile((inner, inner - 2, bore + 12), (z + 1.4, z, z)), plate),
        turned([(bore + 12, z), (bore + 2, z)], plate, holes=holes),
        turned(profile((bore + 2, bore + 1.4, bore), (z, z + 2.2, z + 2.2)), plate),
        turned(ridges, plate),
    ]


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

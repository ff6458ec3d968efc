"""A vented brake disc; the removed one thin, grooved, blued by heat and rusty."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import CAST_IRON, STEEL, Finish
from demo_shop.bench_camera.pieces import Hole, Piece, around, profile, ring_piece, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_IN_VENT = Finish((0.02, 0.018, 0.017), gloss=0.1)  # little light gets in
_HALF_VENT = 3.6


def build(order: Order) -> Subject:
    """Vented disc, hat up, friction face underneath at z = 0 and the outer one at the thickness."""
    thick = order.size("thickness", 25.1, 28.0)
    outer = order.size("outer-diameter", 280.0) / 2
    hat = order.size("hat-height", 46.0)
    bore = order.size("centre-bore", 64.0) / 2
    bolts = order.size("bolt-circle", 108.0) / 2
    count = round(order.size("bolt-holes", 5))
    face, lip, iron = _disc_materials(order, outer)
    holes = tuple((*around(bolts, 360 * i / count + 17)[:2], 6.6) for i in range(count))
    pieces = [
        *_friction_ring(outer, thick, face, lip, ridge=0.9 if order.worn else 0.0),
        *_vent(outer, thick, iron),
        *_hat(thick, hat, bore, iron, holes),
    ]
    features: dict[str, Point] = {
        "edge upper": (0.0, -outer, thick),
        "edge lower": (0.0, -outer, 0.0),
        "edge left": (-outer, 0.0, thick),
        "edge right": (outer, 0.0, thick),
        "bore left": (-bore, 0.0, hat),
        "bore right": (bore, 0.0, hat),
    }
    grounds = ("steel", "mat", "wood")
    rim = (0.0, -outer + 8, thick / 2)
    views = {
        "outer face": View(55, -90, fill=0.80, grounds=grounds),
        "edge": View(13, -90, close_up=(rim, 62.0), grounds=grounds),
    }
    return Subject(pieces, features, views)


def _friction_ring(
    outer: float, thick: float, face: Finish, lip: Finish, *, ridge: float
) -> list[Piece]:
    """Both faces, and the rust ridge that pads leave at the rim of an old disc."""
    swept = outer - 2.5
    low, high = thick / 2 - _HALF_VENT, thick / 2 + _HALF_VENT
    under = profile((swept, swept, outer, outer), (0, -ridge, 0, low))
    upper = profile((outer, outer, swept, swept), (high, thick, thick + ridge, thick))
    return [
        turned([(84, 0), (swept, 0)], face),
        turned([(swept, thick), (84, thick)], face),
        turned(under, lip),
        turned(upper, lip),
    ]


def _vent(outer: float, thick: float, iron: Finish) -> list[Piece]:
    low, high = thick / 2 - _HALF_VENT, thick / 2 + _HALF_VENT
    slot = turned(profile((outer, 86, 86, outer), (low, low, high, high)), _IN_VENT)
    vane = slab(ring_piece(90, outer - 1.5, 0, 1.7), low, high, iron)
    return [slot, *[vane.moved(turn=turn_about("z", i * 10.0)) for i in range(36)]]


def _hat(
    thick: float, hat: float, bore: float, iron: Finish, holes: tuple[Hole, ...]
) -> list[Piece]:
    wall = profile((84, 80, 77, 75, 72), (thick, thick - 1.5, thick + 2, hat - 4, hat))
    return [
        turned(wall, iron),
        turned([(72, hat), (bore, hat)], iron, holes=holes),
        turned(profile((bore, bore, 70), (hat, hat - 7, hat - 7)), iron),
        turned([(79, thick - 2), (79, 0)], iron),
    ]


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

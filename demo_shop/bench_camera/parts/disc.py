"""A vented brake disc; the removed one thin, grooved, blued by heat and rusty."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import CAST_IRON, STEEL, Finish
from demo_shop.bench_camera.pieces import ring_piece, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_IN_VENT = Finish((0.02, 0.018, 0.017), gloss=0.1)  # little light gets in


def build(order: Order) -> Subject:
    """Vented disc, hat up, friction face underneath at z = 0 and the outer one at the thickness."""
    thick = order.size("thickness", 25.1, 28.0)
    outer = order.size("outer-diameter", 280.0) / 2
    hat = order.size("hat-height", 46.0)
    bore = order.size("centre-bore", 64.0) / 2
    bolts = order.size("bolt-circle", 108.0) / 2
    count = round(order.size("bolt-holes", 5))
    face, lip, iron = _disc_materials(order, outer)
    gap = (thick / 2 - 3.6, thick / 2 + 3.6)
    circle_at = [2 * np.pi * i / count + 0.3 for i in range(count)]
    holes = tuple((bolts * float(np.cos(a)), bolts * float(np.sin(a)), 6.6) for a in circle_at)
    pieces = [
        turned([(84, 0), (outer - 2.5, 0)], face),
        turned(
            [
                (outer - 2.5, 0),
                (outer - 2.5, -0.8 if order.worn else 0),
                (outer, 0),
                (outer, gap[0]),
            ],
            lip,
        ),
        turned([(outer, gap[0]), (86, gap[0]), (86, gap[1]), (outer, gap[1])], _IN_VENT),
        turned(
            [
                (outer, gap[1]),
                (outer, thick),
                (outer - 2.5, thick + (0.9 if order.worn else 0)),
                (outer - 2.5, thick),
            ],
            lip,
        ),
        turned([(outer - 2.5, thick), (84, thick)], face),
        turned([(84, thick), (80, thick - 1.5), (77, thick + 2), (75, hat - 4), (72, hat)], iron),
        turned([(72, hat), (bore, hat)], iron, holes=holes),
        turned([(bore, hat), (bore, hat - 7), (70, hat - 7)], iron),
        turned([(79, thick - 2), (79, 0)], iron),
    ]
    for i in range(36):
        vane = ring_piece(90, outer - 1.5, 0, 1.7)
        pieces.append(slab(vane, *gap, iron).moved(turn=turn_about("z", i * 10.0)))
    features: dict[str, Point] = {
        "edge upper": (0.0, -outer, thick),
        "edge lower": (0.0, -outer, 0.0),
        "edge left": (-outer, 0.0, thick),
        "edge right": (outer, 0.0, thick),
        "bore left": (-bore, 0.0, hat),
        "bore right": (bore, 0.0, hat),
    }
    return Subject(
        pieces,
        features,
        {
            "outer face": View(55, -90, fill=0.80, grounds=("steel", "mat", "wood")),
            "edge": View(
                13,
                -90,
                close_up=((0.0, -outer + 8, thick / 2), 62.0),
                grounds=("steel", "mat", "wood"),
            ),
        },
    )


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

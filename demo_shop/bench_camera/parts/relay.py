"""A cube relay; the removed one with a burned blade."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC,
    COPPER,
    PLATED,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, bar, profile, slab
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A cube relay standing on its head, blades up."""
    half = order.size("body-width", 28.0) / 2
    blade = order.size("blade-width", 6.3)
    case, base, pins, hot = _materials(order)
    pieces = [
        bar((-half, half), (-half, half), (0, 24), case, 2.4),
        bar((-half + 1, half - 1), (-half + 1, half - 1), (24, 26), base, 2.0),
        bar((half, half + 2.5), (-6, 6), (3, 14), case, 0.5),
        _blade(blade, hot).moved(0, -8.4, 26),
        _blade(blade, pins).moved(0, 8.4, 26),
        _blade(blade, pins).moved(-8.4, 0, 26, turn_about("z", 90)),
        _blade(blade, pins).moved(8.4, 0, 26, turn_about("z", 90)),
        _blade(blade, pins).moved(0, 0, 26),
    ]
    features: dict[str, Point] = {
        "burned blade end": (0.0, -8.4, 37.5),
        "burned blade left": (-blade / 2, -8.4, 32.0),
        "burned blade right": (blade / 2, -8.4, 32.0),
        "body left": (-half, -half, 12.0),
        "body right": (half, -half, 12.0),
    }
    views = {"pins": View(42, -68, fill=0.66), "side": View(20, -80, fill=0.68)}
    return Subject(pieces, features, views)


def _blade(width: float, finish: Finish) -> Piece:
    half = width / 2
    across = (-half, half, half, half - 1.4, -half + 1.4, -half)
    outline = profile(across, (0, 0, 10, 11.5, 11.5, 10))
    return slab(outline, -0.4, 0.4, finish).moved(turn=turn_about("x", 90))


def _materials(order: Order) -> tuple[Finish, Finish, Finish, Finish]:
    """Case, base, sound blades, and the blade that ran hot."""
    base = Finish((0.045, 0.045, 0.05), gloss=0.3)
    if not order.worn or order.grime <= 0:
        return BLACK_PLASTIC, base, PLATED, PLATED
    d = order.grime
    case = BLACK_PLASTIC.under(
        wear.film_of(wear.DUST, 0.3 * d, gloss=0.1),
        wear.spread(wear.DUST, 0.4 * d, 9, edge=1.4),
    )
    scorched = wear.near(0, -8.4, 26, 10)
    base = base.under(
        wear.film_of(wear.DUST, 0.3 * d, gloss=0.1),
        wear.spread((0.16, 0.085, 0.035), 1.4 * d, 5, scorched, edge=1.6),
    )
    dull = wear.film_of((0.2, 0.18, 0.15), 0.5 * d)
    burned = COPPER.under(
        wear.film_of((0.06, 0.05, 0.07), 0.75 * d, gloss=0.4),
        wear.spread(wear.SOOT, 0.9 * d, 3.5),
    )
    return case, base, PLATED.under(dull, wear.spread(wear.GREEN_CRUST, 0.3 * d, 3)), burned

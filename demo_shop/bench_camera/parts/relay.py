"""A cube relay; the removed one with a burned blade."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    BLACK_PLASTIC,
    COPPER,
    PLATED,
    Finish,
)
from demo_shop.bench_camera.pieces import bar, slab
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View


def build(order: Order) -> Subject:
    """A cube relay standing on its head, blades up."""
    width = order.size("body-width", 28.0)
    blade = order.size("blade-width", 6.3)
    case, pins = BLACK_PLASTIC, PLATED
    base = Finish((0.045, 0.045, 0.05), gloss=0.3)
    hot = PLATED
    if order.worn and order.grime > 0:
        d = order.grime
        case = case.under(
            wear.film_of(wear.DUST, 0.55 * d, gloss=0.1),
            wear.spread(wear.DUST, 0.4 * d, 9, edge=1.4),
        )
        base = base.under(
            wear.film_of(wear.DUST, 0.4 * d, gloss=0.1),
            wear.spread((0.16, 0.085, 0.035), 1.4 * d, 5, wear.near(0, -8.4, 26, 10), edge=1.6),
        )
        pins = PLATED.under(
            wear.film_of((0.2, 0.18, 0.15), 0.5 * d), wear.spread(wear.GREEN_CRUST, 0.3 * d, 3)
        )
        hot = COPPER.under(
            wear.film_of((0.06, 0.05, 0.07), 0.75 * d, gloss=0.4),
            wear.spread(wear.SOOT, 0.9 * d, 3.5),
        )
    h = width / 2
    spots = [
        (0.0, -8.4, hot, 0),
        (0.0, 8.4, pins, 0),
        (-8.4, 0.0, pins, 90),
        (8.4, 0.0, pins, 90),
        (0.0, 0.0, pins, 0),
    ]
    pieces = [
        bar((-h, h), (-h, h), (0, 24), case, 2.4),
        bar((-h + 1, h - 1), (-h + 1, h - 1), (24, 26), base, 2.0),
        bar((h, h + 2.5), (-6, 6), (3, 14), case, 0.5),
    ]
    for x, y, finish, degrees in spots:
        outline = [
            (-blade / 2, 0),
            (blade / 2, 0),
            (blade / 2, 10),
            (blade / 2 - 1.4, 11.5),
            (-blade / 2 + 1.4, 11.5),
            (-blade / 2, 10),
        ]
        upright = slab(outline, -0.4, 0.4, finish).moved(turn=turn_about("x", 90))
        pieces.append(upright.moved(x, y, 26, turn_about("z", degrees)))
    features: dict[str, Point] = {
        "burned blade end": (0.0, -8.4, 37.5),
        "burned blade left": (-blade / 2, -8.4, 32.0),
        "burned blade right": (blade / 2, -8.4, 32.0),
        "body left": (-h, -h, 12.0),
        "body right": (h, -h, 12.0),
    }
    return Subject(
        pieces, features, {"pins": View(42, -68, fill=0.66), "side": View(20, -80, fill=0.68)}
    )

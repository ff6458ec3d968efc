"""An outer tie-rod end; the removed one rusty, its boot torn and its stud leaning."""

from __future__ import annotations

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import (
    CAST_IRON,
    PLATED,
    RUBBER,
    STEEL,
    Finish,
)
from demo_shop.bench_camera.pieces import Piece, circle, hexagon, profile, rod, slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_FORGED = Finish((0.09, 0.09, 0.095), gloss=0.4, uneven=0.06, rough=0.1)


def build(order: Order) -> Subject:
    """A tie-rod end: shank along -x, ball housing at the origin, tapered stud up along z."""
    shank = order.size("thread-diameter", 14.0) / 2
    length = order.size("shank-length", 92.0)
    stud = order.size("taper", 14.6) / 2
    metal, bright, boot = _materials(order)
    lean = 17.0 if order.worn else 0.0  # a slack ball lets its stud fall over
    housing = profile((0, 9, 14, 17, 17.4, 16, 0), (-13, -13, -11, -6, 5, 9, 9))
    pieces = [
        turned(housing, metal),
        slab(circle(11, 30), -14.2, -12, metal),
        *[p.moved(turn=turn_about("x", lean)) for p in _stud(stud, bright)],
        _boot(stud, boot).moved(turn=turn_about("x", lean / 2)),
        rod((-12, 0, -2), (-28, 0, -2), 10.5, metal, shank + 1.0),
        *[p.moved(0, 0, -2, turn_about("y", 90)) for p in _shank(shank, length, bright)],
    ]
    features: dict[str, Point] = {
        "shank end": (-length - 1.5, 0.0, -2.0),
        "housing far side": (17.4, 0.0, 5.0),
        "housing near side": (0.0, -17.4, 5.0),
        "boot foot": (0.0, -17.0, 10.0),
    }
    views = {
        "side": View(28, -84, fill=0.72),
        "thread and stud": View(34, -70, close_up=((0.0, 0.0, 14.0), 30.0)),
    }
    return Subject(pieces, features, views)


def _materials(order: Order) -> tuple[Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return _FORGED, PLATED, RUBBER
    rust = wear.rusted(order.grime)
    boot = RUBBER.under(
        wear.film_of(wear.DUST, 0.3 * order.grime, gloss=0.1),
        wear.spread(wear.OIL, 0.7 * order.grime, 8, edge=1.0, gloss=0.8),
        wear.cracks(order.rng.uniform(-20, 20, 9).tolist(), 0, 0.55),
    )
    return CAST_IRON.under(*rust), STEEL.under(*rust), boot


def _stud(radius: float, bright: Finish) -> list[Piece]:
    taper = profile((radius + 0.2, radius + 0.2, radius, radius - 1.4), (10, 17, 20, 34))
    screw = [(4.8, 34.0), *thread(5.6, 1.5, 35, 54, 0.8), (4.6, 55.5), (0.0, 55.5)]
    return [turned(taper, bright), turned(screw, bright)]


def _boot(stud: float, rubber: Finish) -> Piece:
    radii = (15.5, 17.2, 17.0, 14.0, 15.2, 13.0, 12.8, 9.5, 8.4, stud)
    heights = (8.5, 9.5, 11.5, 12.5, 14.5, 16.5, 18, 20.5, 22, 22)
    return turned(profile(radii, heights), rubber)


def _shank(radius: float, length: float, bright: Finish) -> list[Piece]:
    """Threaded shank with its lock nut, drawn down along -z."""
    ridges = thread(radius, 1.5, -length, -38, 0.8)[::-1]
    end = -length - 1.5
    screw = [(radius, -26.0), (radius, -38.0), *ridges, (radius - 1.6, end), (0.0, end)]
    return [turned(screw, bright), slab(hexagon(radius * 2 + 8), -66, -56, bright)]

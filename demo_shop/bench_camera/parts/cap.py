"""A distributor cap: bowl, terminals, button, towers; the removed one crusted and tracked."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import ALUMINIUM, BRASS, BROWN_PLASTIC, CARBON, Coat, Finish
from demo_shop.bench_camera.pieces import Piece, bar, slab, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Point, Subject, View

_FLOOR = -33.0
_CLOSE = (-29.0, -17.0)  # terminals, from the rim at z = 0


def build(order: Order) -> Subject:
    """Cap with its rim at z = 0 and the bowl opening upwards; terminal 1 is at +x turned by 45."""
    count = max(3, round(order.size("towers", 4)))
    inner = order.size("terminal-radius", 28.25)
    rim = order.size("rim-diameter", 65.0) / 2
    button = order.size("button-length", 7.2, 8.6)
    tower = order.size("tower-height", 20.0)
    angles = [45 + 360 * i / count for i in range(count)]
    posts = [_polar(inner, a, sum(_CLOSE) / 2) for a in angles]
    plastic = BROWN_PLASTIC.under(*_on_plastic(order, inner, angles))
    pieces = [_bowl(rim, plastic), *_ears(rim, plastic)]
    for number, a in enumerate(angles):
        pieces += _terminal(order, inner, rim, a, number, plastic)
        pieces.append(_tower(tower, plastic).moved(*_polar(22.0, a, 0)))
        pieces.append(_contact(order).moved(*_polar(22.0, a, 0)))
    pieces += [_tower(tower + 2, plastic), _contact(order)]
    carbon = CARBON.under(wear.film_of(wear.DUST, 0.5 * order.grime)) if order.worn else CARBON
    pieces.append(turned([(4.6, _FLOOR), (4.2, _FLOOR + 3), (0, _FLOOR + 3)], plastic))
    pieces.append(
        turned(
            [
                (2.6, _FLOOR),
                (2.6, _FLOOR + button - 0.8),
                (1.6, _FLOOR + button),
                (0, _FLOOR + button),
            ],
            carbon,
        )
    )
    features: dict[str, Point] = {
        "button end": (0.0, 0.0, _FLOOR + button),
        "rim left": (-rim, 0.0, 0.0),
        "rim right": (rim, 0.0, 0.0),
        "centre tower mouth": (0.0, 0.0, -38 - tower - 2),
    }
    for number, (post, a) in enumerate(zip(posts, angles, strict=True), 1):
        features[f"terminal {number}"] = post
        features[f"tower {number} mouth"] = _polar(22.0, a, -38 - tower)
    return Subject(pieces, features, _views())


def _views() -> dict[str, View]:
    return {
        "inside": View(66, -90, fill=0.62, grounds=("paper", "steel", "mat")),
        "side": View(16, -90, turn_about("x", 180), fill=0.6, grounds=("paper", "steel", "wood")),
        "terminals": View(
            50, -90, close_up=((0.0, 12.0, -18.0), 22.0), grounds=("paper", "steel", "mat")
        ),
        "outside": View(
            40, -90, turn_about("x", 180), fill=0.58, grounds=("paper", "steel", "wood")
        ),
    }


def _polar(radius: float, degrees: float, z: float) -> Point:
    a = np.radians(degrees)
    return float(radius * np.cos(a)), float(radius * np.sin(a)), z


def _bowl(rim: float, plastic: Finish) -> Piece:
    return turned(
        [
            (0, _FLOOR),
            (rim - 4.5, _FLOOR),
            (rim - 2.5, _FLOOR + 2),
            (rim - 1.2, -6),
            (rim - 1.0, 0),
            (rim + 1.0, 0),
            (rim + 1.4, -0.5),
            (rim + 4.0, -2),
            (rim + 4.0, -5.5),
            (rim + 1.4, -6.5),
            (rim, -28),
            (rim - 4, -36),
            (rim - 8, -38),
            (0, -38),
        ],
        plastic,
    )


def _ears(rim: float, plastic: Finish) -> list[Piece]:
    ears = [
        bar((s * (rim + 6) - 5, s * (rim + 6) + 5), (-6, 6), (-17, -3), plastic, 2.0)
        for s in (-1, 1)
    ]
    key = bar((-2.0, 2.0), (-rim - 1.5, -rim + 1.5), (-5, 2.2), plastic, 0.6)
    return [*ears, key]


def _tower(height: float, plastic: Finish) -> Piece:
    end = -38 - height
    return turned(
        [
            (11.0, -36),
            (9.6, -42),
            (9.0, end + 1),
            (8.2, end),
            (6.0, end),
            (5.4, end + 9),
            (0, end + 9),
        ],
        plastic,
    )


def _contact(order: Order) -> Piece:
    """The metal cup deep in a tower."""
    finish = BRASS
    if order.worn:
        finish = BRASS.under(wear.spread(wear.GREEN_CRUST, 0.9 * order.grime, 3))
    return turned([(3.4, -50), (3.2, -42), (0, -42)], finish)


def _terminal(
    order: Order, inner: float, rim: float, degrees: float, number: int, plastic: Finish
) -> list[Piece]:
    turn = turn_about("z", degrees)
    boss = bar((inner + 1.2, rim - 0.6), (-5.2, 5.2), (_FLOOR, -9), plastic, 1.6).moved(turn=turn)
    half = 3.2
    ys = np.linspace(-half, half, 15)
    face = np.sqrt(inner**2 - ys**2)
    if order.worn:
        eaten = np.abs(order.rng.normal(0, 0.16 * order.grime, len(ys)))
        eaten[len(ys) // 2] = 0
        face = face + eaten
    finish = ALUMINIUM
    if order.worn:
        x, y, z = _polar(inner, degrees, sum(_CLOSE) / 2)
        crust = 0.55 + 0.75 * ((number * 7) % 4) / 3
        at_face = wear.near(x, y, z, 6.5)
        finish = ALUMINIUM.under(
            wear.film_of((0.20, 0.19, 0.17), 0.8 * order.grime, gloss=0.15),
            wear.spread(wear.WHITE_CRUST, 1.1 * order.grime * crust, 3, at_face, edge=0.8),
            wear.spread(wear.GREEN_CRUST, 0.8 * order.grime * crust, 4),
            wear.spread(wear.SOOT, 1.0 * order.grime, 3, wear.near(x, y, z, 3.0), edge=0.9),
        )
    outline = [(float(f), float(y)) for f, y in zip(face, ys, strict=True)]
    outline += [(inner + 3.4, half), (inner + 3.4, -half)]
    metal = slab(outline, *_CLOSE, finish).moved(turn=turn)
    return [boss, metal]


def _on_plastic(order: Order, inner: float, angles: list[float]) -> list[Coat]:
    if not order.worn or order.grime <= 0:
        return []
    dirt = order.grime
    first, second = angles[1], angles[2]
    mid = (first + second) / 2
    lines = [
        wear.track(
            [
                _polar(inner + 1, first, _FLOOR),
                _polar(inner - 4, first + 16, _FLOOR),
                _polar(inner - 2, mid, _FLOOR),
                _polar(inner + 1, second, _FLOOR),
            ],
            0.75 * dirt,
        ),
        wear.track(
            [
                (0.0, 4.5, _FLOOR),
                _polar(12, first - 14, _FLOOR),
                _polar(20, first + 4, _FLOOR),
                _polar(inner + 1, first, _FLOOR),
            ],
            0.65 * dirt,
        ),
    ]
    settled = [
        wear.film_of(wear.DUST, 0.2 * dirt, gloss=0.2),
        wear.spread(wear.SOOT, 0.62 * dirt, 12, wear.near(0, 0, _FLOOR, 24), edge=2.2),
        wear.spread((0.26, 0.24, 0.20), 0.34 * dirt, 9, edge=1.6),
    ]
    return settled + lines

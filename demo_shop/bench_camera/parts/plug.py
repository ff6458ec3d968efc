"""A spark plug; the removed one with a wide gap, a rounded electrode and deposits."""

from __future__ import annotations

import numpy as np

from demo_shop.bench_camera import wear
from demo_shop.bench_camera.finishes import PLATED, PORCELAIN, STEEL, Finish
from demo_shop.bench_camera.pieces import Piece, bar, hexagon, profile, slab, thread, turned
from demo_shop.bench_camera.pinhole import turn_about
from demo_shop.bench_camera.subject import Order, Subject, View

_NOSE = 1.6  # insulator beyond the shell's end
_STRAP = 1.5
_END = 59.2  # terminal above the seat


def build(order: Order) -> Subject:
    """Plug along z with its seat at z = 0, firing end below, terminal above."""
    reach = order.size("reach", 19.0)
    radius = order.size("thread-diameter", 14.0) / 2
    flats = order.size("hex", 16.0)
    gap = order.size("gap", 1.45, 1.0)
    tip = -reach - _NOSE - order.size("centre-electrode", 1.05, 1.6)
    shell, porcelain, nose, points = _materials(order, reach, tip)
    cone = profile((3.4, 2.6, 2.2, 1.25), (-reach + 6, -reach, -reach - _NOSE, -reach - _NOSE))
    pieces = [
        _shell(radius, reach, shell),
        *_seat_and_hexagon(flats, shell),
        _insulator(porcelain),
        _terminal(shell if order.worn else PLATED),
        turned(cone, nose),
        _electrode(order, tip, -reach - _NOSE + 0.5, points),
        *_ground_strap(radius, reach, tip - gap, points),
    ]
    features = {
        "electrode end": (0.0, 0.0, tip),
        "strap face": (0.0, 0.0, tip - gap),
        "electrode left": (1.25, 0.0, tip + 0.3),
        "electrode root": (0.0, 0.0, -reach - _NOSE),
        "shell end": (radius - 0.8, 0.0, -reach),
        "seat": (radius, 0.0, 0.0),
        "terminal end": (0.0, 0.0, _END),
    }
    return Subject(pieces, features, _views(reach, tip))


def _views(reach: float, tip: float) -> dict[str, View]:
    lying = turn_about("y", 94)  # on its hexagon and its terminal
    light = ("paper", "steel")
    return {
        "side": View(38, -90, lying @ turn_about("z", -65), fill=0.74),
        "terminal end": View(36, -78, lying, close_up=((0.0, 0.0, 46.0), 15.0)),
        "tip": View(24, -80, lying, close_up=((0.0, 0.0, -reach - 1.5), 8.5), grounds=light),
        "electrodes": View(20, -90, lying, close_up=((0.0, 0.0, tip - 0.3), 4.6), grounds=light),
    }


def _seat_and_hexagon(flats: float, shell: Finish) -> list[Piece]:
    washer = profile((0, 10.2, 10.4, 10.2, 9.2, 9.2, flats / 2), (0.2, 0.2, 1.0, 1.9, 1.9, 4, 4))
    crimp = profile((flats / 2 - 0.3, flats / 2 - 0.8, 6.2, 5.4), (14.5, 16.2, 17.6, 17.8))
    return [turned(washer, shell), slab(hexagon(flats), 4.0, 14.5, shell), turned(crimp, shell)]


def _terminal(finish: Finish) -> Piece:
    radii = (2.6, 3.2, 3.2, 2.2, 2.2, 3.1, 3.1, 2.4, 0)
    heights = (48, 48.6, 53, 54, 55.4, 56.2, 58.4, _END, _END)
    return turned(profile(radii, heights), finish)


def _shell(radius: float, reach: float, finish: Finish) -> Piece:
    ridges = thread(radius, 1.25, -reach + 1.2, -1.6, 0.7)
    return turned(
        [
            (4.4, -reach + 5),
            (4.4, -reach + 0.2),
            (4.7, -reach),
            (radius - 1.1, -reach),
            (radius - 0.7, -reach + 1.2),
            *ridges,
            (radius - 0.5, 0.2),
        ],
        finish,
    )


def _insulator(finish: Finish) -> Piece:
    profile: list[tuple[float, float]] = [(5.4, 17.0), (5.3, 27.0)]
    for i in range(5):
        z = 27.5 + 3.2 * i
        profile += [(5.2, z), (4.7, z + 0.6), (4.7, z + 1.4), (5.2, z + 2.2)]
    return turned([*profile, (4.9, 45.5), (3.8, 48), (0, 48)], finish)


def _electrode(order: Order, tip: float, root: float, finish: Finish) -> Piece:
    if order.worn:
        profile = [
            (0.0, tip),
            (0.45, tip + 0.03),
            (0.85, tip + 0.17),
            (1.12, tip + 0.42),
            (1.2, tip + 0.75),
            (1.25, root),
        ]
    else:
        profile = [(0.0, tip), (1.18, tip), (1.25, tip + 0.07), (1.25, root)]
    return turned(profile, finish)


def _ground_strap(radius: float, reach: float, face: float, finish: Finish) -> list[Piece]:
    """Welded to the shell's rim on the -x side, bent over the centre electrode."""
    outside = -(radius - 1.3)
    low = face - _STRAP
    bend = 1.4
    angles = np.radians(np.linspace(180, 270, 7))
    outer = [
        (outside + bend + bend * float(np.cos(a)), low + bend + bend * float(np.sin(a)))
        for a in angles
    ]
    outline = [
        (outside, -reach + 0.3),
        *outer,
        (1.35, low),
        (1.5, low + 0.2),
        (1.5, face - 0.15),
        (1.35, face),
        (outside + _STRAP + 0.5, face),
        (outside + _STRAP, face + 0.5),
        (outside + _STRAP, -reach + 0.3),
    ]
    flat = slab(outline, -1.35, 1.35, finish)
    foot = bar((outside, outside + _STRAP), (-1.35, 1.35), (-reach - 0.3, -reach + 0.3), finish)
    return [flat.moved(turn=turn_about("x", 90)), foot]


def _materials(order: Order, reach: float, tip: float) -> tuple[Finish, Finish, Finish, Finish]:
    if not order.worn or order.grime <= 0:
        return PLATED, PORCELAIN, PORCELAIN, STEEL
    dirt = order.grime
    end = wear.beyond(2, -reach + 9, -12)
    shell = STEEL.under(
        wear.film_of((0.12, 0.10, 0.085), 0.62 * dirt, gloss=0.25),
        wear.spread(wear.RUST, 0.55 * dirt, 7),
        wear.spread(wear.DARK_RUST, 0.5 * dirt, 4, wear.beyond(2, -1, 3)),
        wear.spread(wear.SOOT, 1.05 * dirt, 6, end, edge=1.4),
    )
    porcelain = PORCELAIN.under(
        wear.film_of((0.42, 0.34, 0.22), 0.35 * dirt),
        wear.spread((0.16, 0.10, 0.055), 0.75 * dirt, 9, wear.beyond(2, 30, -12), edge=1.8),
        wear.track(
            [(-4.0, -3.6, 18), (-3.6, -3.8, 27), (-3.9, -3.2, 36), (-3.4, -3.2, 47)], 0.4 * dirt
        ),
    )
    nose = PORCELAIN.under(
        wear.film_of((0.30, 0.20, 0.11), 1.0 * dirt, gloss=0.1),
        wear.spread((0.55, 0.47, 0.36), 0.7 * dirt, 2),
        wear.spread(wear.SOOT, 0.8 * dirt, 2, wear.beyond(2, -reach - 0.9, 2)),
    )
    points = STEEL.under(
        wear.film_of((0.16, 0.13, 0.11), 0.85 * dirt, gloss=0.12),
        wear.spread((0.42, 0.36, 0.29), 0.75 * dirt, 1.6, wear.near(0, 0, tip, 3.5)),
        wear.spread(wear.SOOT, 0.6 * dirt, 2.5),
    )
    return shell, porcelain, nose, points

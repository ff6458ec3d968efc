"""Colour of every pixel: material and wear, the lamp and its shadow, the bench around the part."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from demo_shop.bench_camera.bench_top import ground_colour
from demo_shop.bench_camera.card_under import CardUnder
from demo_shop.bench_camera.exposure import Exposure
from demo_shop.bench_camera.finishes import Finish
from demo_shop.bench_camera.grain import Grain, Pixels
from demo_shop.bench_camera.light import Lamp, Shade, closeness, enlarge, room, round_edges, soften
from demo_shop.bench_camera.pieces import Piece, Pose

_COARSE = 4


@dataclass(frozen=True, slots=True)
class Scene:
    """All that decides how the picture looks."""

    seen: Exposure
    pieces: Sequence[Piece]
    standing: Pose
    ground: str
    lamp: Lamp
    shade: Shade
    grain: Grain
    card: CardUnder | None = None


def bench_points(seen: Exposure, step: int = 1) -> Pixels:
    """Where each line of sight meets the bench, shape (h, w, 2), in mm."""
    camera = seen.camera
    cx, cy = camera.centre_px
    start = (step - 1) / 2
    u = ((np.arange(0, camera.width, step) + start - cx) / camera.focal_px).astype(np.float32)
    v = ((np.arange(0, camera.height, step) + start - cy) / camera.focal_px).astype(np.float32)
    turn = camera.turn.astype(np.float32)
    lines = u[None, :, None] * turn[0] + v[:, None, None] * turn[1] + turn[2]
    down = np.minimum(lines[..., 2], -1e-3)
    reach = np.float32(-camera.place[2]) / down
    return np.asarray(camera.place[:2].astype(np.float32) + reach[..., None] * lines[..., :2])


def shade_scene(scene: Scene) -> Pixels:
    """Linear light (h, w, 3) of the whole picture."""
    seen = scene.seen
    height, width = seen.depth.shape
    ground = bench_points(seen)
    x, y = ground[..., 0], ground[..., 1]
    colour = ground_colour(scene.ground, x, y, scene.grain)
    mean = tuple(float(c) for c in colour[::16, ::16].mean((0, 1)))
    coarse = bench_points(seen, _COARSE)
    fading = enlarge(_fading(coarse), width, height)[..., None]
    even = np.array(mean, np.float32)
    colour = even + (colour - even) * fading
    if scene.card is not None:
        colour = scene.card.over(colour, ground)
    flat = np.concatenate([coarse.reshape(-1, 2), np.zeros((coarse[..., 0].size, 1))], 1)
    lit = scene.shade.lit(flat.astype(np.float32)).reshape(coarse.shape[:2])
    open_ = _openness(scene)
    lit_full = enlarge(soften(lit, 1), width, height)
    open_full = enlarge(open_, width, height)
    up = float(scene.lamp.direction[2])
    lamp = np.array(scene.lamp.colour, np.float32) * np.float32(scene.lamp.strength * up)
    glow = np.array([0.30, 0.315, 0.335], np.float32)
    light = colour * (lit_full[..., None] * lamp + open_full[..., None] ** 1.5 * glow)
    picture: Pixels = light.astype(np.float32)
    _shade_part(scene, picture, open_full, (mean[0], mean[1], mean[2]))
    return picture


def _fading(coarse: Pixels) -> Pixels:
    """How much of the bench's pattern is left: far away a pixel covers more than the pattern."""
    stride = np.linalg.norm(np.gradient(coarse, axis=0), axis=2)
    middle = float(np.median(stride))
    return np.asarray(1 / (1 + (stride / (2.2 * middle)) ** 3), np.float32)


def _openness(scene: Scene) -> Pixels:
    """How open each coarse pixel lies to the room."""
    seen = scene.seen
    depth = seen.depth[_COARSE // 2 :: _COARSE, _COARSE // 2 :: _COARSE]
    height = np.zeros(depth.shape, np.float32)
    part = np.isfinite(depth)
    place = seen.place[_COARSE // 2 :: _COARSE, _COARSE // 2 :: _COARSE][part]
    height[part] = (place @ scene.standing.turn.T + scene.standing.shift)[:, 2]
    return closeness(height, max(3, seen.camera.width // _COARSE // 22))


def _shade_part(
    scene: Scene, light: Pixels, open_full: Pixels, bench: tuple[float, float, float]
) -> None:
    seen = scene.seen
    left, top, right, bottom = seen.box
    if right <= left:
        return
    crop = (slice(top, bottom), slice(left, right))
    rounded_edges = round_edges(seen.normal[crop])
    pieces = seen.piece[crop]
    for number, piece in enumerate(scene.pieces):
        rows, columns = np.nonzero(pieces == number)
        if not len(rows):
            continue
        place = seen.place[crop][rows, columns]
        normal: Pixels = rounded_edges[rows, columns]
        openness = open_full[crop][rows, columns]
        light[rows + top, columns + left] = _lit_material(
            scene, piece.finish, place, normal, openness, bench
        )


def _lit_material(
    scene: Scene,
    finish: Finish,
    place: Pixels,
    normal: Pixels,
    openness: Pixels,
    bench: tuple[float, float, float],
) -> Pixels:
    albedo, gloss, metal, rough = _material(finish, place, scene.grain)
    turn = scene.standing.turn.astype(np.float32)
    lean = np.stack(scene.grain.slopes(place[:, 0], place[:, 1], place[:, 2], finish.rough_mm), 1)
    normal = _unit(normal + (lean @ turn.T) * rough[:, None])
    world = place @ turn.T + scene.standing.shift.astype(np.float32)
    sight = _unit(scene.seen.camera.place.astype(np.float32) - world)
    lamp = scene.lamp.direction.astype(np.float32)
    shadow = scene.shade.lit(world, normal)
    facing = np.clip(normal @ lamp, 0, 1) * shadow
    colour = np.array(scene.lamp.colour, np.float32) * np.float32(scene.lamp.strength)
    hemi = 0.5 + 0.5 * normal[:, 2]
    glow = np.array([0.30, 0.315, 0.335], np.float32)
    around = hemi[:, None] * glow + (1 - hemi)[:, None] * np.array(bench, np.float32) * 0.30
    diffuse = albedo * (facing[:, None] * colour + around * openness[:, None])
    across = np.clip(np.sum(normal * sight, 1), 0, 1)
    mirrored = 2 * np.sum(normal * sight, 1, keepdims=True) * normal - sight
    shine = room(mirrored, gloss, scene.lamp, bench) * (0.35 + 0.65 * shadow)[:, None]
    shine *= openness[:, None]
    fresnel = 0.035 + 0.75 * gloss * (1 - across) ** 5
    plain = diffuse + shine * (fresnel * (0.3 + gloss))[:, None]
    bright = albedo * shine * 1.55 + diffuse * 0.22
    return np.asarray(plain * (1 - metal)[:, None] + bright * metal[:, None], np.float32)


def _unit(vectors: NDArray[Any]) -> Pixels:
    length = np.linalg.norm(vectors, axis=1, keepdims=True) + np.float32(1e-6)
    return np.asarray(vectors / length, np.float32)


def _material(finish: Finish, place: Pixels, grain: Grain) -> tuple[Pixels, Pixels, Pixels, Pixels]:
    """Colour, gloss, how metallic, how rough, at each point, with all coats on."""
    x, y, z = place[:, 0], place[:, 1], place[:, 2]
    mottled = 1 + finish.uneven * grain.spots(x, y, z, finish.blotch_mm)
    albedo = np.array(finish.colour, np.float32) * np.clip(mottled, 0.2, 3)[:, None]
    gloss = np.full(len(x), finish.gloss, np.float32)
    metal = np.full(len(x), float(finish.metal), np.float32)
    rough = np.full(len(x), finish.rough, np.float32)
    for coat in finish.coats:
        share = coat.cover(x, y, z, grain).astype(np.float32)
        tint = 1 + coat.speckle * grain.slopes(x, y, z, 2.5)[0]
        colour = np.array(coat.colour, np.float32) * np.clip(tint, 0.3, 2)[:, None]
        albedo += (colour - albedo) * share[:, None]
        gloss += (np.float32(coat.gloss) - gloss) * share
        metal *= 1 - share
        rough += (np.float32(coat.rough) - rough) * share
    return albedo, gloss, metal, rough

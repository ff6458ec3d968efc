"""What each pixel sees: the nearest surface, where it was met, how it leans, what it is made of."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from demo_shop.bench_camera.patches import Patch
from demo_shop.bench_camera.pieces import Piece, Pose
from demo_shop.bench_camera.pinhole import Camera, Floats

Box = tuple[int, int, int, int]  # left, top, right, bottom; right and bottom not included


class Exposure:
    """Depth (mm along the axis), normal (on the bench), place (on the part), piece, per pixel."""

    def __init__(self, camera: Camera) -> None:
        shape = (camera.height, camera.width)
        self.camera = camera
        self.depth = np.full(shape, np.inf, np.float32)
        self.piece: NDArray[np.int16] = np.full(shape, -1, np.int16)
        self.normal = np.zeros((*shape, 3), np.float32)
        self.place = np.zeros((*shape, 3), np.float32)
        self.box: Box = (camera.width, camera.height, 0, 0)

    def take(self, pieces: Sequence[Piece], standing: Pose, *, depth_only: bool = False) -> None:
        """Let the part's pieces be seen; `standing` is how the part stands on the bench."""
        for number, piece in enumerate(pieces):
            pose = piece.pose.within(standing)
            for patch in piece.patches:
                self._see(patch, pose, standing, number, depth_only)

    def _see(self, patch: Patch, pose: Pose, standing: Pose, number: int, quick: bool) -> None:
        box = _box_of(self.camera, pose.out(patch.rim()))
        if box is None:
            return
        left, top, right, bottom = box
        cx, cy = self.camera.centre_px
        u = (np.arange(left, right) - cx)[None, :] / self.camera.focal_px
        v = (np.arange(top, bottom) - cy)[:, None] / self.camera.focal_px
        m = pose.turn.T @ self.camera.turn.T
        o = pose.turn.T @ (self.camera.place - pose.shift)
        dx, dy, dz = (m[i, 0] * u + m[i, 1] * v + m[i, 2] for i in range(3))
        t = patch.meet(o, dx, dy, dz)
        near = t < self.depth[top:bottom, left:right]
        if not near.any():
            return
        rows, columns = np.nonzero(near)
        found = t[rows, columns]
        rows_full, columns_full = rows + top, columns + left
        self.depth[rows_full, columns_full] = found
        if quick:
            return
        self._grow(box)
        line = np.stack([d[rows, columns] for d in (dx, dy, dz)], 1)
        local = o + found[:, None] * line
        normal = np.stack(patch.normal(local[:, 0], local[:, 1], local[:, 2]), 1)
        normal /= np.linalg.norm(normal, axis=1, keepdims=True) + 1e-12
        normal *= -np.sign(np.sum(normal * line, 1, keepdims=True))
        self.piece[rows_full, columns_full] = number
        self.normal[rows_full, columns_full] = normal @ pose.turn.T
        self.place[rows_full, columns_full] = (pose.out(local) - standing.shift) @ standing.turn

    def _grow(self, box: Box) -> None:
        self.box = (
            min(self.box[0], box[0]),
            min(self.box[1], box[1]),
            max(self.box[2], box[2]),
            max(self.box[3], box[3]),
        )


def _box_of(camera: Camera, rim: Floats) -> Box | None:
    """The pixels that may see the patch; none when it is behind the camera or out of the frame."""
    if camera.depth(rim).min() < 1:
        return None
    pixels = camera.project(rim)
    low, high = np.floor(pixels.min(0)).astype(int), np.ceil(pixels.max(0)).astype(int)
    left, top = max(int(low[0]) - 1, 0), max(int(low[1]) - 1, 0)
    right, bottom = min(int(high[0]) + 2, camera.width), min(int(high[1]) + 2, camera.height)
    return (left, top, right, bottom) if right > left and bottom > top else None

"""Photos of solids on a bench card, drawn by other code than the program's: OpenCV projects, Qt
fills the shapes in linear light, and what is true of each is kept."""

from __future__ import annotations

import io
from collections.abc import Sequence
from dataclasses import dataclass, field

import cv2
import numpy as np
from numpy.typing import NDArray
from PIL import Image
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPolygonF

from desktop_app.part_photos.bench_card.card_layout import CardLayout

Floats = NDArray[np.float64]
BLACK, WHITE, TINT, TABLE = 0.035, 0.72, 0.58, 0.16  # of the light that falls on it
FILM = 43.267  # mm, the diagonal that focal lengths "for 35 mm film" belong to


@dataclass(frozen=True)
class Solid:
    """A prism on the card: the outline of its top face (n, 2) in mm, its height, its greys."""

    outline: Floats
    height: float
    top: float = 0.3
    wall: float = 0.12


@dataclass(frozen=True)
class Taken:
    """How a photo is taken; drawn by chance within what phones and hands do."""

    width: int
    rotation: Floats
    place: Floats  # of the camera: mm on the card, z into the table
    focal: float
    focal_35_said: float
    centre: tuple[float, float]
    bend: tuple[float, float]
    arch: float
    print_scale: float
    blur: float
    noise: float
    quality: int

    @property
    def height(self) -> int:
        """Pixels down; phones make 4:3."""
        return self.width * 3 // 4

    def pixels(self, points: Floats) -> Floats:
        """Where points (n, 3) fall, z up from the card: pixels, centres at whole numbers."""
        flipped = np.asarray(points, float) * (1, 1, -1)
        turn = cv2.Rodrigues(self.rotation)[0]
        (x, y), focal = self.centre, self.focal
        matrix = np.array([[focal, 0, x], [0, focal, y], [0, 0, 1]])
        lens = np.array([*self.bend, 0.0, 0.0])
        seen, _ = cv2.projectPoints(flipped, turn, -turn @ self.place, matrix, lens)
        return np.asarray(seen.reshape(-1, 2), float)


def by_chance(seed: int, aim: tuple[float, float], width: int = 4032) -> Taken:
    """A phone held over the card: 250 to 450 mm away, tilted up to 30 degrees, turned at will."""
    rng = np.random.default_rng(seed)
    distance, tilt = rng.uniform(250, 450), np.radians(rng.uniform(0, 30))
    towards = rng.uniform(0, 2 * np.pi)
    away = np.array([np.sin(tilt) * np.cos(towards), np.sin(tilt) * np.sin(towards), -np.cos(tilt)])
    target = np.array([aim[0] + rng.uniform(-12, 12), aim[1] + rng.uniform(-12, 12), 0.0])
    axis = -away
    right = np.cross([0, 1, 0], axis)
    right /= np.linalg.norm(right)
    level = np.stack([right, np.cross(axis, right), axis])
    roll = rng.choice([0, np.pi / 2, np.pi]) + rng.normal(0, 0.15)
    spin = np.array([[np.cos(roll), -np.sin(roll), 0], [np.sin(roll), np.cos(roll), 0], [0, 0, 1]])
    focal_35 = rng.uniform(24, 28)
    diagonal = width * 1.25
    scale = width / 4032
    return Taken(
        width=width,
        rotation=cv2.Rodrigues(spin @ level)[0],
        place=target + distance * away,
        focal=focal_35 / FILM * diagonal * (1 + rng.normal(0, 0.02)),
        focal_35_said=focal_35,
        centre=tuple(np.array([width / 2, width * 0.375]) - 0.5 + rng.normal(0, 0.004 * width, 2)),
        bend=(rng.normal(0, 0.05), rng.normal(0, 0.05)),
        arch=rng.normal(0, 0.3),
        print_scale=rng.uniform(0.995, 1.005),
        blur=rng.uniform(0.6, 1.4) * max(scale, 0.5),
        noise=rng.uniform(0.002, 0.006),
        quality=int(rng.integers(85, 96)),
    )


@dataclass
class _Canvas:
    taken: Taken
    size: tuple[float, float]
    image: QImage = field(init=False)
    painter: QPainter = field(init=False)

    def __post_init__(self) -> None:
        self.image = QImage(self.taken.width, self.taken.height, QImage.Format.Format_RGBX64)
        self.painter = QPainter(self.image)
        self.painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.painter.setPen(Qt.PenStyle.NoPen)
        self.image.fill(QColor.fromRgbF(TABLE, TABLE, TABLE))

    def paper(self, corners: Floats, light: float) -> None:
        """Fill a shape printed on the card; the paper arches about its middle line."""
        fine = _finer(corners) * self.taken.print_scale
        across = (fine[:, 0] - self.size[0] / 2) / self.size[0]
        lift = self.taken.arch * (np.cos(np.pi * across) - 2 / np.pi)
        self._fill(np.column_stack([fine, lift]), light)

    def face(self, corners: Floats, light: float) -> None:
        """Fill a shape of a solid, (n, 3) mm."""
        self._fill(corners, light)

    def _fill(self, points: Floats, light: float) -> None:
        self.painter.setBrush(QColor.fromRgbF(light, light, light))
        # Qt counts from the corner of the first pixel.
        shape = QPolygonF([QPointF(x + 0.5, y + 0.5) for x, y in self.taken.pixels(points)])
        self.painter.drawPolygon(shape, Qt.FillRule.WindingFill)

    def light(self) -> NDArray[np.float32]:
        """What was painted, as linear light."""
        self.painter.end()
        rows = np.frombuffer(self.image.constBits(), np.uint16)
        shape = (self.taken.height, self.image.bytesPerLine() // 8, 4)
        return rows.reshape(shape)[:, : self.taken.width, 1].astype(np.float32) / 65535


def render(layout: CardLayout, solids: Sequence[Solid], taken: Taken, seed: int) -> bytes:
    """Return the JPEG of a card with solids on it, lower ones first, EXIF's focal length in it."""
    rng = np.random.default_rng(seed)
    wide, high = {"letter": (215.9, 279.4)}.get(layout.paper.lower(), (210.0, 297.0))
    canvas = _Canvas(taken, (wide, high))
    canvas.paper(np.array([(0, 0), (wide, 0), (wide, high), (0, high)], float), WHITE)
    if layout.free_field_mm is not None:
        left, top, right, bottom = layout.free_field_mm
        canvas.paper(np.array([(left, top), (right, top), (right, bottom), (left, bottom)]), TINT)
    words = cv2.aruco.getPredefinedDictionary(getattr(cv2.aruco, layout.dictionary))
    for marker in layout.markers:
        corners = np.array(marker.corners_mm)
        canvas.paper(corners, BLACK)
        count = words.markerSize + 2
        modules = cv2.aruco.generateImageMarker(words, marker.id, count) > 0
        right, down = (corners[1] - corners[0]) / count, (corners[3] - corners[0]) / count
        for row, column in np.argwhere(modules):
            at = corners[0] + column * right + row * down
            canvas.paper(np.array([at, at + right, at + right + down, at + down]), WHITE)
    for solid in solids:
        _draw(canvas, solid)
    light = canvas.light()
    rough = cv2.GaussianBlur(rng.normal(0, 1, light.shape).astype(np.float32), (0, 0), 1.8)
    light *= 1 + np.where(light < TINT * 0.95, 0.5, 0.06).astype(np.float32) * rough  # cast metal
    ys, xs = np.mgrid[-1 : 1 : taken.height * 1j, -1 : 1 : taken.width * 1j].astype(np.float32)
    light *= 1 - 0.12 * (xs**2 + ys**2) + 0.05 * xs  # darker corners, one side nearer the lamp
    light = cv2.GaussianBlur(light, (0, 0), taken.blur)
    light += rng.normal(0, 1, light.shape).astype(np.float32) * taken.noise * np.sqrt(light + 0.05)
    light = np.clip(light, 0, 1)
    # The curve of sRGB (IEC 61966-2-1).
    values = np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)
    grey = np.round(values * 255).astype(np.uint8)
    return _jpeg(grey, taken)


def _draw(canvas: _Canvas, solid: Solid) -> None:
    """The walls that face the camera, then the top; a wall reaches under the top's rim, so that
    no light of the paper shines through the seam of two half-covered pixels."""
    corners = solid.outline
    for step in reversed(range(8)):  # a soft shadow, the lamp at the upper left; its rim first
        fallen = corners + solid.height * (0.10 + 0.03 * step) * np.array([1.0, 0.7])
        canvas.face(np.column_stack([fallen, np.zeros(len(fallen))]), TINT * (0.49 + 0.07 * step))
    after = np.roll(corners, -1, axis=0)
    along = after - corners
    area = float((corners[:, 0] * after[:, 1] - after[:, 0] * corners[:, 1]).sum())
    outward = np.column_stack([along[:, 1], -along[:, 0]]) * np.sign(area)
    outward /= np.hypot(*outward.T)[:, None]
    facing = ((canvas.taken.place[:2] - corners) * outward).sum(1) > 0
    for one, other, out in zip(corners[facing], after[facing], outward[facing], strict=True):
        foot = [(*one, 0.0), (*other, 0.0)]
        under = [(*(other - 0.4 * out), solid.height), (*(one - 0.4 * out), solid.height)]
        canvas.face(np.array(foot + under), solid.wall)
    fine = _finer(corners)
    canvas.face(np.column_stack([fine, np.full(len(fine), solid.height)]), solid.top)


def _finer(corners: Floats, most: float = 4.0) -> Floats:
    """Cut the sides of an outline so that a lens can bend them."""
    pieces = []
    for one, other in zip(corners, np.roll(corners, -1, axis=0), strict=True):
        cuts = max(1, int(np.hypot(*(other - one)) / most))
        pieces.append(one + (other - one) * (np.arange(cuts) / cuts)[:, None])
    return np.concatenate(pieces)


def _jpeg(grey: NDArray[np.uint8], taken: Taken) -> bytes:
    picture = Image.fromarray(np.repeat(grey[..., None], 3, axis=2))
    exif = picture.getexif()
    exif.get_ifd(0x8769)[0xA405] = round(taken.focal_35_said)
    exif.get_ifd(0x8769)[0xA002], exif.get_ifd(0x8769)[0xA003] = picture.size
    file = io.BytesIO()
    picture.save(file, "JPEG", quality=taken.quality, exif=exif)
    return file.getvalue()


def disc(x: float, y: float, radius: float) -> Floats:
    """The outline of a round solid."""
    turns = np.linspace(0, 2 * np.pi, 360, endpoint=False)
    return np.column_stack([x + radius * np.cos(turns), y + radius * np.sin(turns)])

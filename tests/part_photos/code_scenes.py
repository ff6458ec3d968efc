"""Photos of labels that the tests take themselves: a code on a bench, askew, blurred, as a file."""

from __future__ import annotations

import cv2
import numpy as np
import zxingcpp
from PIL import Image
from zxingcpp import BarcodeFormat as Form

WIDTH, HEIGHT = 1600, 1200  # pixels of the photo
VIN = "1M8GDM9AXKP042788"  # a widely published example; its check digit is right


def bars(text: str, form: Form) -> Image.Image:
    """Draw a code as it is printed, with the quiet around it."""
    drawn = zxingcpp.write_barcode_to_image(zxingcpp.create_barcode(text, form), scale=8)
    return Image.fromarray(np.array(drawn))


def label(*codes: Image.Image) -> Image.Image:
    """Print codes beneath each other on a white label."""
    width = max(code.width for code in codes) + 80
    paper = Image.new("L", (width, sum(code.height + 40 for code in codes) + 40), 255)
    top = 40
    for code in codes:
        paper.paste(code, (40, top))
        top += code.height + 40
    return paper


def photo_of(
    printed: Image.Image,
    across: int = 900,
    turn: float = 0.0,
    tilt: float = 0.0,
    blur: float = 0.8,
    seed: int = 1,
) -> Image.Image:
    """Take a photo of a label: so many pixels wide, turned and tilted by degrees, with grain."""
    rng = np.random.default_rng(seed)
    width, height = printed.size
    corners = np.array([[0, 0], [width, 0], [width, height], [0, height]], np.float64)
    x, y = ((corners - [width / 2, height / 2]) * (across / width)).T
    away = 3 * across  # of the camera, in the same unit
    depth = away / (away + x * np.sin(np.deg2rad(tilt)))
    seen = np.stack([x * np.cos(np.deg2rad(tilt)) * depth, y * depth], axis=1)
    c, s = np.cos(np.deg2rad(turn)), np.sin(np.deg2rad(turn))
    seen = seen @ np.array([[c, s], [-s, c]]) + [WIDTH / 2, HEIGHT / 2]
    laid = cv2.getPerspectiveTransform(corners.astype(np.float32), seen.astype(np.float32))
    size = (WIDTH, HEIGHT)
    paper = cv2.warpPerspective(np.asarray(printed, np.float32), laid, size, flags=cv2.INTER_AREA)
    where = cv2.warpPerspective(np.ones((height, width), np.float32), laid, size)
    bench = cv2.resize(rng.uniform(40, 200, (20, 27)).astype(np.float32), size)
    light = bench * (1 - where) + (paper * 0.8 + 20) * where
    grainy = cv2.GaussianBlur(light, (0, 0), blur) + rng.normal(0, 4, (HEIGHT, WIDTH))
    return Image.fromarray(grainy.clip(0, 255).astype(np.uint8)).convert("RGB")

"""From light to a JPEG as a phone writes it: lens softness, noise, tone, date and orientation."""

from __future__ import annotations

import io
from datetime import datetime

import numpy as np
from PIL import Image, ImageFilter

from demo_shop.bench_camera.grain import Pixels

LARGEST_BYTES = 245_000
LARGEST_ON_CARD = 1_500_000  # edges are measured in it: less may be lost
_TURNS = {
    1: None,
    6: Image.Transpose.ROTATE_90,
    8: Image.Transpose.ROTATE_270,
    3: Image.Transpose.ROTATE_180,
}


def develop(light: Pixels, exposure: float, rng: np.random.Generator) -> Image.Image:
    """Linear light (h, w, 3) to an 8-bit picture."""
    height, width = light.shape[:2]
    y = np.linspace(-1, 1, height, dtype=np.float32)[:, None] * np.float32(0.6)
    x = np.linspace(-1, 1, width, dtype=np.float32)[None, :] * np.float32(0.8)
    falloff = 1 / (1 + np.float32(0.33) * (x * x + y * y)) ** 2
    value = light * (falloff * np.float32(exposure))[..., None]
    value = value * (1 + value * np.float32(0.28)) / (1 + value)  # bright spots roll off
    toned = np.sqrt(value)  # close to the usual 2.2, and quick
    noise = rng.standard_normal((height // 2, width // 2)).astype(np.float32)
    grainy = np.asarray(
        Image.fromarray(noise).resize((width, height), Image.Resampling.BICUBIC), np.float32
    )
    toned = toned * np.float32(255) + grainy[..., None] * (
        np.float32(2.6) - toned * np.float32(1.2)
    )
    picture = Image.fromarray(np.clip(toned, 0, 255).astype(np.uint8))
    return picture.filter(ImageFilter.GaussianBlur(0.75))


def blur_behind(picture: Image.Image, behind: Pixels) -> Image.Image:
    """Softens what lies far behind the part; `behind` is 0 in focus, 1 well out of it."""
    mask = Image.fromarray((np.clip(behind, 0, 1) * 255).astype(np.uint8))
    soft = picture.filter(ImageFilter.BoxBlur(4)).filter(ImageFilter.BoxBlur(4))
    return Image.composite(soft, picture, mask.resize(picture.size, Image.Resampling.BILINEAR))


def written(
    picture: Image.Image,
    taken_at: datetime,
    orientation: int,
    focal_35_mm: int | None = None,
    largest: int = LARGEST_BYTES,
) -> bytes:
    """JPEG bytes with the capture time and the orientation tag (1, 3, 6 or 8) in EXIF.

    Where it is said, the focal length for 35 mm film stands there too, with the picture's size as
    the camera made it; `largest` is in bytes.
    """
    turn = _TURNS[orientation]
    stored = picture if turn is None else picture.transpose(turn)
    exif = Image.Exif()
    exif[0x0112] = orientation
    exif[0x0132] = taken_at.strftime("%Y:%m:%d %H:%M:%S")
    exif.get_ifd(0x8769)[0x9003] = taken_at.strftime("%Y:%m:%d %H:%M:%S")
    exif.get_ifd(0x8769)[0x9004] = taken_at.strftime("%Y:%m:%d %H:%M:%S")
    if focal_35_mm is not None:
        exif.get_ifd(0x8769)[0xA405] = focal_35_mm
        exif.get_ifd(0x8769)[0xA002], exif.get_ifd(0x8769)[0xA003] = stored.size
    for quality in (88, 84, 80, 75, 68, 60):
        out = io.BytesIO()
        stored.save(out, "JPEG", quality=quality, subsampling="4:2:0", exif=exif)
        if out.tell() <= largest:
            break
    return out.getvalue()

"""Pictures that the tests make for themselves, and a job to put them on."""

from __future__ import annotations

from datetime import UTC, datetime
from io import BytesIO

import numpy as np
from PIL import Image

from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord

ENDINGS = {"JPEG": "image/jpeg", "PNG": "image/png", "WEBP": "image/webp", "HEIF": "image/heic"}


def picture(width: int = 64, height: int = 48, shade: int = 40) -> Image.Image:
    """A grey picture whose top left quarter is white."""
    grey = np.full((height, width, 3), shade, dtype=np.uint8)
    grey[: height // 2, : width // 2] = 250
    return Image.fromarray(grey)


def noisy(width: int, height: int, seed: int = 7) -> Image.Image:
    """A picture that does not compress to nothing: smooth shapes with grain over them."""
    rng = np.random.default_rng(seed)
    coarse = rng.integers(0, 256, (height // 32 + 1, width // 32 + 1, 3), dtype=np.uint8)
    smooth = Image.fromarray(coarse).resize((width, height), Image.Resampling.BICUBIC)
    grain = rng.integers(-12, 13, (height, width, 1), dtype=np.int16)
    return Image.fromarray((np.asarray(smooth) + grain).clip(0, 255).astype(np.uint8))


def exif(orientation: int = 1, moment: str | None = None, offset: str | None = None) -> Image.Exif:
    """The camera's notes: how it was held and when."""
    notes = Image.Exif()
    notes[0x0112] = orientation
    times = notes.get_ifd(0x8769)
    if moment is not None:
        times[0x9003] = moment
    if offset is not None:
        times[0x9011] = offset
    return notes


def lens_notes(orientation: int = 1, focal_35: float | None = None) -> Image.Exif:
    """The camera's notes with an invented camera, its focal length and a place of the earth."""
    notes = exif(orientation)
    notes[0x010F], notes[0x0110] = "Tin Lantern", "TL-3"
    if focal_35 is not None:
        notes.get_ifd(0x8769)[0xA405] = focal_35
    place = notes.get_ifd(0x8825)
    place[1], place[2] = "N", (12.0, 34.0, 56.0)
    place[18] = "WGS-84 TINLANTERN"  # GPSMapDatum: words that a search finds again
    return notes


def encoded(image: Image.Image, kind: str = "JPEG", notes: Image.Exif | None = None) -> bytes:
    """The bytes of a file of this kind; nothing is lost but by the kind itself."""
    if kind == "HEIF":
        import pillow_heif

        pillow_heif.register_heif_opener()
    file = BytesIO()
    # As bytes: the HEIC writer then turns the picture by its own boxes, as phones do.
    image.save(file, kind, exif=(notes if notes is not None else Image.Exif()).tobytes())
    return file.getvalue()


def monday() -> datetime:
    """A Monday morning, for a record's clock."""
    return datetime(2026, 11, 16, 8, tzinfo=UTC)


def job_with_no_photos(record: ShopRecord, plate: str = "TIN 01") -> int:
    """Take a car in and return the job's id."""
    said = WriteUp(concern="Misfires when it is wet", plate=plate, odometer=120_400)
    made = write_up(record, said).made
    assert made is not None
    return made

"""Shops to be backed up, and archives that nobody should believe, for the tests of backups."""

from __future__ import annotations

import io
import json
import struct
import warnings
import zipfile
import zlib
from collections.abc import Callable
from pathlib import Path
from typing import Any

from desktop_app.part_photos.stored import Photo
from desktop_app.repair_jobs.stored import Job, Person, Vehicle, Visit
from desktop_app.shop_record.backups.backup import make_backup
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import walked
from tests.conftest import NOON

through = walked  # how the tests say it
WINDOW: dict[str, Any] = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
Members = list[tuple[zipfile.ZipInfo, bytes]]


def with_photo(record: ShopRecord, content: bytes = b"a photo") -> str:
    """Write a job with a photo into a shop; returns the photo's SHA-256."""
    sha256 = record.photos.keep(content)
    with record.deed("Write up a car with its photo") as deed:
        car = deed.add(Vehicle, plate="TIN 01", description="van", odometer_unit="mi")
        visit = deed.add(Visit, vehicle_id=car, came_at="2026-11-16T08:00:00+00:00")
        job = deed.add(Job, number=f"J-{car}", visit_id=visit, concern="hums", **WINDOW)
        deed.add(
            Photo,
            job_id=job,
            sha256=sha256,
            name="old.jpg",
            media_type="image/jpeg",
            size_bytes=len(content),
            width=1,
            height=1,
        )
    return sha256


def named(record: ShopRecord, name: str) -> None:
    """One more deed: somebody works here."""
    record.do(f"Add {name}", lambda deed: deed.add(Person, name=name) and None)


def archive_of(record: ShopRecord, file: Path) -> Path:
    """Back a shop up into a file."""
    return through(make_backup(record.folder, file, NOON)).file


def written_anew(
    archive: Path, to: Path, change: Callable[[Members, dict[str, Any]], None]
) -> Path:
    """Write an archive again with its members or what its manifest says changed, sealed anew."""
    with zipfile.ZipFile(archive) as old:
        members = [(info, old.read(info)) for info in old.infolist()]
    said = json.loads(next(c for info, c in members if info.filename == "manifest.json"))
    change(members, said)
    with zipfile.ZipFile(to, "w") as new, warnings.catch_warnings():
        warnings.simplefilter("ignore")  # a name may stand in it twice, on purpose
        for info, content in members:
            content = json.dumps(said).encode() if info.filename == "manifest.json" else content
            new.writestr(info, content, compress_type=info.compress_type)
    return seal(to)


def seal(archive: Path) -> Path:
    """Put the seal onto a ZIP that has none, as somebody would who knows how it is made."""
    with zipfile.ZipFile(archive, "a") as zip_:
        zip_.comment = b"benchwitness 00000000"
    archive.write_bytes(sealed(archive.read_bytes()))
    return archive


def sealed(content: bytes) -> bytes:
    """Return an archive with the seal that its bytes ask for."""
    crc, at = 0, 0
    with zipfile.ZipFile(io.BytesIO(content)) as zip_:
        for info in sorted(zip_.infolist(), key=lambda one: one.header_offset):
            begins = info.header_offset + 30
            begins += sum(struct.unpack("<HH", content[begins - 4 : begins]))
            crc, at = zlib.crc32(content[at:begins], crc), begins + info.compress_size
    return content[:-8] + b"%08x" % zlib.crc32(content[at:-8], crc)


def all_files(folder: Path) -> dict[str, bytes]:
    """Everything that lies in a folder, by name."""
    found = (one for one in folder.rglob("*") if one.is_file())
    return {one.relative_to(folder).as_posix(): one.read_bytes() for one in found}

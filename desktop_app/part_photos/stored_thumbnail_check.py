"""The check of the thumbnails: small copies that are torn, and those of photos that are gone."""

from __future__ import annotations

import re
from collections.abc import Iterator, Set
from contextlib import suppress
from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.stored_thumbnails import is_torn, thumbnails_of
from desktop_app.shop_record.checks.problem import MEND, Problem
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

_NAMED = re.compile(r"([0-9a-f]{64})-([0-9]{1,5})\.jpg")


def thumbnail_problems(record: ShopRecord) -> Iterator[Problem]:
    """Tell of every thumbnail that can't be shown; nothing is lost, they are made of the photos."""
    for path in _torn(record):
        name = path.relative_to(record.folder).as_posix()
        yield Problem(tr("the thumbnails"), tr("{name} is damaged.", name=name), False, MEND)


def renew_thumbnails(record: ShopRecord, media_types: dict[str, str]) -> tuple[int, int]:
    """Make the torn thumbnails anew; throw those away whose photo no row names.

    `media_types` by SHA-256 of the photos. Returns how many were made and how many just went.
    """
    folder = thumbnails_of(record)
    torn, made, gone = set(_torn(record)), 0, 0
    for path in _of_no_photo(record, media_types.keys()) | torn:
        known = _NAMED.fullmatch(path.name)
        with suppress(OSError, ShopTrouble):  # a photo that is damaged is a problem of its own
            path.unlink()
            gone += 1
            if path in torn and known and known[1] in media_types:
                folder.jpeg(known[1], media_types[known[1]], int(known[2]))
                made += 1
    return made, gone - made


def _of_no_photo(record: ShopRecord, photos: Set[str]) -> set[Path]:
    return {path for path in _files(record) if path.name[:64] not in photos}


def _torn(record: ShopRecord) -> Iterator[Path]:
    for path in _files(record):
        with suppress(OSError):
            if is_torn(path.read_bytes()):
                yield path


def _files(record: ShopRecord) -> list[Path]:
    return sorted(thumbnails_of(record).folder.glob("??/*.jpg"))

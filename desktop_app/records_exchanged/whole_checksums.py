"""The checksums of an export read: which files it has, none of them outside of its folder."""

from __future__ import annotations

import re
from collections.abc import Iterable

from desktop_app.language import tr
from desktop_app.records_exchanged.export_names import (
    CHECKSUMS,
    HISTORY,
    IDS_GIVEN,
    JOBS,
    JOBS_LACK,
    LATER_TABLES,
    PART_KINDS,
    PHOTO_FILES,
    PHOTOS,
    READ_ME,
    table_file,
)
from desktop_app.shop_record.trouble import ShopTrouble

_LINE = re.compile(r"([0-9a-f]{64}) [ *]([^\0\r\n\\:]{1,500})")
_ON_TOP = (JOBS, PHOTO_FILES, HISTORY, IDS_GIVEN, READ_ME)
MOST_FILES = 5_000_000
NOTHING_DONE = tr("Nothing was brought back.")


def read_checksums(lines: Iterable[str], tables: Iterable[str]) -> dict[str, str]:
    """Return the SHA-256 of each file; `tables` are the files that the record's tables have.

    Raises ShopTrouble with the line that can't be, and where a file that belongs to an export, a
    table above all, is not named. An export of an older program lacks the tables that came later.
    """
    wanted = {*_ON_TOP, *tables}
    later = set(map(table_file, LATER_TABLES))
    listed: dict[str, str] = {}
    for number, line in enumerate(lines, 1):
        match = _LINE.fullmatch(line.rstrip("\n"))
        if match is None:
            raise refused(_line(number), tr("this is no checksum of a file"))
        sha256, name = match.groups()
        if name in listed:
            raise refused(_line(number), tr("{file} is named twice", file=name[:80]))
        if name not in wanted and not _is_photo_or_kind(name):
            raise refused(
                _line(number), tr("{file} is no file of an export that is known", file=name[:80])
            )
        if len(listed) >= MOST_FILES:
            raise refused(CHECKSUMS, tr("it names more than {most:,} files", most=MOST_FILES))
        listed[name] = sha256
    for name in sorted(wanted - later - listed.keys()):
        raise refused(CHECKSUMS, tr("{file} is missing in it", file=name))
    return listed


def refused(where: str, why: str) -> ShopTrouble:
    """Return the trouble of an export that can't be taken: the file, its row, the reason."""
    do = tr("Export the shop again, or bring in jobs.csv alone.")
    return ShopTrouble(f"{where}: {why}.", NOTHING_DONE, f"{do} {JOBS_LACK}")


def row_of(file: str, row: int, column: str = "") -> str:
    """Return in words where something stands in a table of the export."""
    where = tr("{file}, row {row}", file=file, row=row)
    return f"{where}, {column}" if column else where


def _line(number: int) -> str:
    return tr("{file}, line {number}", file=CHECKSUMS, number=number)


def _is_photo_or_kind(name: str) -> bool:
    folder, *inside = name.split("/")
    if any(part in ("", ".", "..") for part in inside):
        return False
    if folder == PHOTOS:
        return len(inside) == 2
    return folder == PART_KINDS and len(inside) == 1 and name.endswith(".toml")

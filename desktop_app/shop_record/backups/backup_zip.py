"""The ZIP around a backup (APPNOTE.TXT 4.3): where its members lie, and the seal on all the rest.

The seal is the archive's comment: `benchwitness ` and the CRC-32, in eight hex digits, of every
byte before them that is not a member's own.
"""

from __future__ import annotations

import struct
import zipfile
import zlib
from collections.abc import Iterable
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_manifest import (
    MANIFEST,
    MOST_MEMBERS,
    refused,
    refused_name,
)

NO_SEAL = b"benchwitness 00000000"
_DIGITS = 8
_BEGINS = NO_SEAL[:-_DIGITS]
_HEAD = struct.Struct("<4s22xHH")  # of a member: its signature, the lengths of name and extra field
_END = struct.Struct("<4s4H2LH")  # of the archive: its signature and, sixth, the contents' length
_LONGEST_LINE = 200  # bytes that the contents spend on a member, at most
_LINK, _KIND_OF_FILE = 0o120000, 0o170000
# What meets whoever reads a ZIP that somebody made to be misread.
WRONG_ZIP = (
    zipfile.BadZipFile,
    NotImplementedError,
    RuntimeError,
    ValueError,
    OverflowError,
    EOFError,
    struct.error,
)


def write_seal(file: BinaryIO) -> None:
    """Put the seal on an archive that was written with `NO_SEAL` as its comment."""
    with zipfile.ZipFile(file) as archive:
        seal, _ = _sealed(file, archive.infolist())
    file.seek(-_DIGITS, 2)
    file.write(seal)
    file.flush()


def read_contents(file: BinaryIO) -> tuple[dict[str, zipfile.ZipInfo], dict[str, int]]:
    """Return what an archive holds, and where the bytes of each member begin; both by name.

    Raises ShopTrouble where its seal is broken, or where it holds what no backup does.
    """
    size = file.seek(0, 2)
    file.seek(max(0, size - _END.size - len(NO_SEAL)))
    end = file.read()
    if not end.startswith(b"PK\x05\x06") or end[_END.size : -_DIGITS] != _BEGINS:
        raise refused(tr("its end is missing; it was cut short or is no backup of this program"))
    if _END.unpack(end[: _END.size])[5] > MOST_MEMBERS * _LONGEST_LINE:
        raise refused(tr("its contents are longer than those of any backup"))
    with zipfile.ZipFile(file) as archive:
        infos = archive.infolist()
    _check_names(infos)
    seal, begins = _sealed(file, infos)
    if seal != end[-_DIGITS:]:
        raise refused(tr("it was changed or damaged after it was written (its seal is broken)"))
    return {info.orig_filename: info for info in infos}, begins


def _sealed(file: BinaryIO, infos: Iterable[zipfile.ZipInfo]) -> tuple[bytes, dict[str, int]]:
    """Return the seal that an archive ought to have, and where the bytes of each member begin.

    Members lie one behind the other, with nothing between them and no byte in two of them.
    """
    crc, at, begins = 0, 0, dict[str, int]()
    for info in sorted(infos, key=lambda one: one.header_offset):
        if info.header_offset != at:
            raise refused(tr("its members do not lie one behind the other"))
        file.seek(at)
        head = file.read(_HEAD.size)
        signature, name, extra = _HEAD.unpack(head)
        if signature != b"PK\x03\x04":
            raise refused(tr("a member of it has no beginning"))
        crc = zlib.crc32(file.read(name + extra), zlib.crc32(head, crc))
        begins[info.orig_filename] = at + _HEAD.size + name + extra
        at = begins[info.orig_filename] + info.file_size
    file.seek(at)
    crc = zlib.crc32(file.read()[:-_DIGITS], crc)
    return b"%08x" % crc, begins


def _check_names(infos: Iterable[zipfile.ZipInfo]) -> None:
    names: set[str] = set()
    for info in infos:
        name = info.orig_filename
        if wrong := refused_name(name):
            raise refused(wrong)
        if name.lower() in names:
            raise refused(tr("it holds {name} twice", name=name))
        if info.external_attr >> 16 & _KIND_OF_FILE == _LINK:
            raise refused(tr("{name} is a link and no file", name=name))
        if info.flag_bits & 1:
            raise refused(tr("{name} is locked with a password", name=name))
        if info.compress_type != zipfile.ZIP_STORED or info.compress_size != info.file_size:
            raise refused(tr("{name} is packed, as no backup's member is", name=name))
        names.add(name.lower())
    if MANIFEST not in names:
        raise refused(tr("{manifest} is missing from it", manifest=MANIFEST))
    if len(names) > MOST_MEMBERS:
        raise refused(tr("it holds more than {most:,} files", most=MOST_MEMBERS))

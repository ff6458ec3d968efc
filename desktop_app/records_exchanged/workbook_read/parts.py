"""The parts of a workbook's package, unpacked a piece at a time and counted while that happens."""

from __future__ import annotations

import zipfile
import zlib
from collections.abc import Callable, Iterator
from typing import BinaryIO

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

MOST_PARTS = 1_000
MOST_UNPACKED = 4_000_000_000
MOST_IN_SMALL_PART = 64_000_000
# Sheets shrink to a tenth or less; a hundredth is seen where most cells are alike.
MOST_SWELLING = 200
_FREE = 32_000_000  # unpacked bytes that are given whatever they were packed in
_PIECE = 1 << 18

Progress = Callable[[float], None]


class WorkbookCannot(ShopTrouble):
    """The workbook is not read: why, and what to do instead."""


SAVE_AS_CSV = tr("Open it in a spreadsheet program and save the sheet as CSV.")


class Parts:
    """The named parts of a package. Raises WorkbookCannot for what is no package, or a trap."""

    def __init__(self, stream: BinaryIO) -> None:
        try:
            self._zip = zipfile.ZipFile(stream)
        except (zipfile.BadZipFile, zlib.error, ValueError, OSError, NotImplementedError) as error:
            raise WorkbookCannot(
                tr("The workbook is damaged or cut short."), do=SAVE_AS_CSV
            ) from error
        self._members = {info.filename.lstrip("/"): info for info in self._zip.infolist()}
        if len(self._zip.infolist()) > MOST_PARTS:
            raise WorkbookCannot(tr("The workbook has more than {most:,} parts.", most=MOST_PARTS))
        if any(info.flag_bits & 1 for info in self._members.values()):
            raise WorkbookCannot(tr("The workbook is locked by a password."), do=SAVE_AS_CSV)
        self._unpacked = 0

    def has(self, name: str) -> bool:
        """Whether the package has a part of this name."""
        return name in self._members

    def pieces(
        self, name: str, most: int = MOST_UNPACKED, progress: Progress | None = None
    ) -> Iterator[bytes]:
        """Give a part's bytes; nothing of it where the package has none of this name."""
        info = self._members.get(name)
        if info is None:
            return
        given = 0
        try:
            with self._zip.open(info) as part:
                while piece := part.read(_PIECE):
                    given += len(piece)
                    self._unpacked += len(piece)
                    if given > most or self._unpacked > MOST_UNPACKED:
                        raise WorkbookCannot(tr("The workbook unpacks to far more than is read."))
                    if given > _FREE and given > MOST_SWELLING * max(1, info.compress_size):
                        raise WorkbookCannot(
                            tr("The workbook swells more than any sheet does when it is unpacked.")
                        )
                    yield piece
                    if progress is not None:
                        progress(min(1.0, given / max(1, info.file_size)))
        except (zipfile.BadZipFile, zlib.error, EOFError, OSError, ValueError) as error:
            raise WorkbookCannot(
                tr("The workbook is damaged or cut short."), do=SAVE_AS_CSV
            ) from error
        except (NotImplementedError, RuntimeError) as error:
            raise WorkbookCannot(
                tr("The workbook is packed in an unusual way."), do=SAVE_AS_CSV
            ) from error

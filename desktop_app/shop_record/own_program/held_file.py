"""A file that somebody holds: the hold goes with whoever has it, however that one ends.

The system keeps the hold, by the open file: of a killed program nothing is left. Where a disk knows
no such holds everybody gets one, and nobody is said to have one.
"""

from __future__ import annotations

import sys
from contextlib import suppress
from pathlib import Path
from typing import BinaryIO

if sys.platform == "win32":
    import msvcrt

    _FAR = 1 << 30  # a byte that nobody reads or writes is held: a held one could not be read

    def _take(file: BinaryIO, *, only_look: bool = False) -> bool:
        at = file.tell()
        file.seek(_FAR)
        try:
            msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
        except OSError:
            return False
        finally:
            file.seek(at)
        return True

else:
    import fcntl

    def _take(file: BinaryIO, *, only_look: bool = False) -> bool:
        sort = fcntl.LOCK_SH if only_look else fcntl.LOCK_EX  # two who look see each other not
        try:
            fcntl.flock(file, sort | fcntl.LOCK_NB)
        except BlockingIOError:
            return False
        except OSError:  # this disk knows no holds
            return True
        return True


def hold(path: Path, content: bytes = b"") -> BinaryIO | None:
    """Hold a file, made where there is none; None where somebody else holds it.

    The hold ends when what is returned is closed. Raises OSError where it can't be written.
    """
    file = path.open("ab+")
    if not _take(file):
        file.close()
        return None
    if content:
        with suppress(OSError):  # a full disk: it is held, and says less
            file.truncate(0)
            file.write(content)
            file.flush()
    return file


def is_held(path: Path) -> bool:
    """Tell whether somebody alive holds a file; not so where it is gone or can't be opened."""
    try:
        with path.open("rb+") as file:
            return not _take(file, only_look=True)
    except OSError:
        return False

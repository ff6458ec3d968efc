"""The form in which an index lies in a file: a head, then its arrays one after another.

Everything is little-endian; each array begins at a multiple of 64 bytes. The head is the CRC-32
(zlib's, eight hexadecimal digits and a space) of all that follows, then JSON that says what was
indexed and how long each array is.
"""

from __future__ import annotations

import json
import zlib
from collections.abc import Iterator
from dataclasses import fields
from typing import TYPE_CHECKING, Any

from desktop_app.symptom_search.word_index.arrays import Arrays

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

VERSION = 5  # another one wherever what an entry holds is worked out in another way
HEAD = 4096  # bytes of the head, filled up with spaces
_CHECK = 9  # of them for the checksum
_STEP = 64
_PIECE = 1 << 22
_TYPES = {
    **dict.fromkeys(("ids", "came", "left", "settles", "seen", "vehicle", "having"), "<i4"),
    **dict.fromkeys(("fixed_job", "fixed_by"), "<i4"),
    **dict.fromkeys(("course", "letters", "impacts"), "|u1"),
    **dict.fromkeys(("letters_from", "jobs_from", "fix_keys"), "<i8"),
    "lengths": "<f8",
}


class NotAnIndex(ValueError):
    """The bytes are no index of this version, or are damaged."""


def pack(arrays: Arrays, facts: dict[str, Any]) -> Iterator[bytes]:
    """Yield the bytes of the file in pieces; `facts` say what was indexed."""
    sizes = {name: len(array) for name, array in arrays.named().items()}
    line = json.dumps({"version": VERSION, "facts": facts, "sizes": sizes}).encode("ascii")
    head = line.ljust(HEAD - _CHECK)
    checked = zlib.crc32(head)
    for name, array in arrays.named().items():
        for piece in _pieces(array, name):
            checked = zlib.crc32(piece, checked)
    yield f"{checked:08x} ".encode("ascii") + head
    for name, array in arrays.named().items():
        yield from _pieces(array, name)


def facts_of(head: bytes) -> dict[str, Any]:
    """Return what was indexed, from the beginning of a file; NotAnIndex where it isn't one."""
    return dict(_line(head)["facts"])


def unpack(file: NDArray[np.uint8]) -> Arrays:
    """Return the arrays of a file, without copying them; NotAnIndex where it is damaged."""
    import numpy as np

    line = _line(file[:HEAD].tobytes())
    if not is_whole(file):
        raise NotAnIndex("its content was changed")
    arrays, start = {}, HEAD
    for field in fields(Arrays):
        kind = np.dtype(_TYPES[field.name])
        size = line["sizes"][field.name] * kind.itemsize
        arrays[field.name] = np.frombuffer(file[start : start + size], kind)
        start += size + -size % _STEP
    return Arrays(**arrays)


def is_whole(file: NDArray[np.uint8]) -> bool:
    """Tell whether the bytes of a file, of whichever version, are as they were written."""
    checked = 0
    for start in range(_CHECK, len(file), _PIECE):
        checked = zlib.crc32(file[start : start + _PIECE].data, checked)
    return file[:_CHECK].tobytes() == f"{checked:08x} ".encode("ascii")


def _pieces(array: NDArray[Any], name: str) -> Iterator[bytes]:
    """Yield an array's bytes, filled up to a whole number of steps."""
    flat = array.astype(_TYPES[name], copy=False)
    at_a_time = _PIECE // flat.itemsize
    for start in range(0, len(flat), at_a_time):
        yield flat[start : start + at_a_time].tobytes()
    yield bytes(-flat.nbytes % _STEP)


def _line(head: bytes) -> dict[str, Any]:
    try:
        line = json.loads(head[_CHECK:HEAD].decode("ascii"))
        if len(head) < HEAD or line["version"] != VERSION:
            raise NotAnIndex("it is of another version")
        sizes = {field.name: int(line["sizes"][field.name]) for field in fields(Arrays)}
        return {**line, "sizes": sizes, "facts": dict(line["facts"])}
    except (ValueError, KeyError, TypeError) as error:
        raise NotAnIndex("its beginning can't be read") from error

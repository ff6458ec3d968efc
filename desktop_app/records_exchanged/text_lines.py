"""Lines of a text of any size, a batch at a time, and none of them without end."""

from __future__ import annotations

import io
from functools import partial
from itertools import islice
from typing import BinaryIO

from desktop_app.records_exchanged.letters_of import decoding

LONGEST_LINE = 1_000_000
# What a line begins with that was longer: NUL stands in no line that is a row, and none of these
# signs is taken for what parts the cells.
CUT = "\0cut"
_SHOWN = 200


class TextLines:
    """The lines of an open file with their ends as they stand there: LF, CR or both."""

    def __init__(self, stream: BinaryIO, encoding: str) -> None:
        # A file's own ends of lines, not those that str.splitlines knows beside them.
        codec, errors = decoding(encoding)
        self._text = io.TextIOWrapper(stream, encoding=codec, errors=errors, newline="")
        self._each = iter(partial(self._text.readline, LONGEST_LINE), "")

    def batch(self, most: int) -> list[str]:
        """Give the next lines, at most so many; an empty list at the end."""
        lines = list(islice(self._each, most))
        if lines and max(map(len, lines)) == LONGEST_LINE:
            return self._shortened(lines)
        return lines

    def close(self) -> None:
        """Close the file."""
        self._text.close()

    def _shortened(self, lines: list[str]) -> list[str]:
        """Put a mark in the place of each line that is too long, and pass over the rest of it."""
        kept: list[str] = []
        within = False
        for line in lines:
            ends = line[-1] in "\r\n"
            if not within:
                within = len(line) == LONGEST_LINE and not ends
                kept.append(CUT + line[:_SHOWN].replace('"', "") + "\n" if within else line)
            elif ends:
                within = False
        while within and (rest := next(self._each, "")):
            within = rest[-1] not in "\r\n"
        return kept

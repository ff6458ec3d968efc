"""TOML texts as they were read before: what comes with the program is read anew at no start.

They lie in one file of this computer's cache, each by the hash of its text, so a text that was
changed is read again. A file that is missing, torn or can't be written costs a fifth of a second.
"""

from __future__ import annotations

import json
from functools import cache
from hashlib import sha256
from pathlib import Path
from typing import Any

from desktop_app.shop_record.toml_text import toml_values

MOST_BYTES = 8_000_000  # a larger file was not written here


class TablesRead:
    """The texts that one program reads, each answered from the file where it stands there."""

    def __init__(self, file: Path) -> None:
        self._file = file
        self._before: dict[str, str] | None = None
        self._used: dict[str, str] = {}

    def values(self, text: str) -> dict[str, Any]:
        """Return the values of a TOML text, and raise as toml_values does."""
        name = sha256(text.encode("utf-8", "surrogatepass")).hexdigest()
        before = self._read_before()
        if name in before:
            values = _dict_of(before[name])
            if values is not None:
                self._used[name] = before[name]
                return values
        values = toml_values(text)
        try:
            self._used[name] = json.dumps(values)
        except TypeError:  # a date, which JSON doesn't have
            before.pop(name, None)
        return values

    def keep(self) -> None:
        """Write what was read since the start for the next one, unless all of it stands there."""
        if self._used.items() <= self._read_before().items():
            return
        beside = self._file.with_suffix(".part")
        try:
            self._file.parent.mkdir(parents=True, exist_ok=True)
            beside.write_text(json.dumps(self._used), "utf-8")
            beside.replace(self._file)
        except OSError:
            return
        self._before = dict(self._used)

    def _read_before(self) -> dict[str, str]:
        if self._before is None:
            self._before = {}
            try:
                if self._file.stat().st_size <= MOST_BYTES:
                    said = _dict_of(self._file.read_text("utf-8")) or {}
                    self._before = {name: one for name, one in said.items() if isinstance(one, str)}
            except (OSError, ValueError):
                pass
        return self._before


def _dict_of(text: str) -> dict[str, Any] | None:
    try:
        said = json.loads(text)
    except (ValueError, RecursionError):
        return None
    return said if isinstance(said, dict) else None


@cache
def tables_read() -> TablesRead:
    """Return the tables of this program, in the user's cache."""
    from platformdirs import user_cache_path

    return TablesRead(user_cache_path("benchwitness", appauthor=False) / "tables.json")

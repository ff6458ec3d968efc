"""The texts of the part kinds and part sets that come with the program, to be gathered as well.

They stand in TOML, which Qt's tool doesn't read: they are handed to it as a file of code.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping
from typing import Any

from tests.spoken import spoken_files

#: What the program says of a table in the language spoken: one text, or a list of texts.
_TEXTS = ("name", "label", "basis", "how", "wear", "means", "say", "system")
_TEXTS_OF_SETS = ("result", "say_room", "say_touch", "say_run_out", "honest", "place")
_LISTS = ("sides", "views", "cautions", "choices")
_TABLES = ("dimensions", "conditions", "wrongs", "refit", "proof", "parts", "given")
#: Names of tables that are ids, not texts.
_IDS = ("dimensions", "given")


def texts() -> tuple[str, ...]:
    """Return every text for people in the kinds and sets, each once."""
    found: dict[str, None] = {}
    for folder in ("part_kinds", "part_sets"):
        for file in sorted((spoken_files.ROOT / "resources" / folder).glob("*.toml")):
            table = tomllib.loads(file.read_text("utf-8"))
            found |= dict.fromkeys(_of_table(table, ""))
            if folder == "part_kinds":  # its id as words, where the shelf isn't at hand
                found[table["id"].replace("-", " ")] = None
    return tuple(found)


def _of_table(table: Mapping[str, Any], section: str) -> Iterator[str]:
    for key in (*_TEXTS, *_TEXTS_OF_SETS):
        if key in table and not (key == "name" and section in _IDS):
            yield table[key]
    if section == "conditions":
        yield table["term"]
    elif table.get("also"):
        yield "; ".join(table["also"])
    for key in _LISTS:
        yield from table.get(key, ())
    for key in _TABLES:
        for one in table.get(key, ()):
            yield from _of_table(one, key)

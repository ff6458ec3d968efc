"""One table of a part-kind file, read field by field with exact complaints."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping, Sequence
from typing import Any, TypeAlias, TypeVar

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
from desktop_app.shop_record.own_program.tables_read import tables_read

_LARGEST = 1e9  # of any unit; no part has more
_IDENTIFIER = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*\Z")
_Word = TypeVar("_Word", bound=str)
Say: TypeAlias = Callable[[str], str]


def as_written(text: str) -> str:
    """Return a text in the words of its file."""
    return text


def toml_table(text: str, file: str, say: Say = as_written) -> KindTable:
    """Return the whole text as a table; `file` is only named in messages. Raises KindTrouble.

    `say` gives the words for what is meant for people.
    """
    try:
        values = tables_read().values(text)
    except (ValueError, RecursionError) as error:
        line = re.search(r"at line (\d+)", str(error))
        raise KindTrouble(
            file,
            int(line[1]) if line else len(text.splitlines()),
            tr("this can't be read as TOML"),
            tr('Look for a missing quote, bracket or equals sign (a line reads: name = "value").'),
        ) from error
    return KindTable(file, text, values, say)


class KindTable:
    """A TOML table together with the place in the file that it came from."""

    def __init__(
        self,
        file: str,
        text: str,
        values: Mapping[str, Any],
        say: Say = as_written,
        section: str = "",
        index: int = 0,
    ) -> None:
        self.file = file
        self.text = text
        self.values = values
        self.say = say
        self.section = section
        self.index = index

    def trouble(self, key: str, wrong: str, do: str) -> KindTrouble:
        """Return the trouble with one key of this table, with its line."""
        where = f"{self.section} {self.index + 1}, " if self.section else ""
        return KindTrouble(self.file, self._line(key), f"{where}'{key}' {wrong}", do)

    def word(self, key: str, default: str | None = None) -> str:
        """Return a non-empty text; without a default it must be there."""
        value = self.values.get(key, default)
        if value is None:
            raise self.trouble(key, tr("is missing"), tr('Write {key} = "..." there.', key=key))
        if not isinstance(value, str) or (default is None and not value.strip()):
            raise self.trouble(
                key, tr("must be a text in quotes"), tr('Write {key} = "..." there.', key=key)
            )
        return value.strip()

    def said(self, key: str, default: str | None = None) -> str:
        """Return a text meant for people, in the language spoken."""
        return self.say(self.word(key, default))

    def identifier(self, key: str, such_as: str) -> str:
        """Return a text of small letters, digits and hyphens; the complaint shows one such."""
        name = self.word(key)
        if not _IDENTIFIER.match(name):
            do = tr("Use small letters, digits and hyphens, like {such_as}.", such_as=such_as)
            raise self.trouble(key, tr("is '{value}'", value=name), do)
        return name

    def choice(self, key: str, allowed: Sequence[_Word]) -> _Word:
        """Return one of the allowed words."""
        value = self.word(key)
        for one in allowed:
            if one == value:
                return one
        raise self.trouble(
            key,
            tr("is '{value}'", value=value),
            tr("Write one of: {allowed}.", allowed=", ".join(allowed)),
        )

    def words(self, key: str) -> tuple[str, ...]:
        """Return a list of texts, empty where the key is absent."""
        value = self.values.get(key, [])
        if not isinstance(value, list) or not all(isinstance(one, str) for one in value):
            raise self.trouble(
                key, tr("must be a list of texts"), tr('Write {key} = ["...", "..."].', key=key)
            )
        return tuple(value)

    def said_words(self, key: str) -> tuple[str, ...]:
        """Return a list of texts meant for people, in the language spoken."""
        return tuple(self.say(one) for one in self.words(key))

    def names(self, key: str) -> tuple[str, ...]:
        """Return other names of one thing; a language has as many of them as it needs."""
        written = "; ".join(self.words(key))
        said = self.say(written)
        return self.words(key) if said == written else tuple(said.split("; "))

    def flag(self, key: str) -> bool:
        """Return true or false; absent is false."""
        value = self.values.get(key, False)
        if not isinstance(value, bool):
            raise self.trouble(
                key, tr("must be true or false"), tr("Write {key} = true or false.", key=key)
            )
        return value

    def number(self, key: str) -> float | None:
        """Return a finite number, or None where the key is absent."""
        value = self.values.get(key)
        if value is None:
            return None
        if not _is_number(value):
            raise self.trouble(
                key, tr("must be a number"), tr("Write {key} = 0.20, for example.", key=key)
            )
        return float(value)

    def span(self, key: str) -> tuple[float, float] | None:
        """Return [low, high] with low at most high, or None where the key is absent."""
        value = self.values.get(key)
        if value is None:
            return None
        if (
            not isinstance(value, list)
            or len(value) != 2
            or not all(_is_number(one) for one in value)
            or value[0] > value[1]
        ):
            raise self.trouble(
                key,
                tr("must be two numbers, the smaller first"),
                tr("Write {key} = [0.10, 1.50], for example.", key=key),
            )
        return float(value[0]), float(value[1])

    def tables(self, key: str) -> tuple[KindTable, ...]:
        """Return the repeated tables [[key]]."""
        value = self.values.get(key, [])
        if not isinstance(value, list) or not all(isinstance(one, dict) for one in value):
            raise self.trouble(
                key, tr("must be tables"), tr("Begin each one with a line [[{key}]].", key=key)
            )
        return tuple(
            KindTable(self.file, self.text, one, self.say, key, index)
            for index, one in enumerate(value)
        )

    def _line(self, key: str) -> int | None:
        """Return the line of the key, else of the table's heading, else None."""
        heading, seen, start = f"[[{self.section}]]", -1, None
        for number, line in enumerate(self.text.splitlines(), start=1):
            bare = line.strip()
            if bare.startswith("["):
                seen += bare.startswith(heading) if self.section else 0
                start = number if self.section and seen == self.index else None
                if not self.section or seen > self.index:
                    return None
                continue
            inside = start is not None if self.section else True
            if inside and bare.partition("=")[0].strip().strip('"') == key:
                return number
        return start


def _is_number(value: object) -> bool:
    if not isinstance(value, int | float) or isinstance(value, bool):
        return False
    return abs(value) <= _LARGEST  # not so for a NaN

"""A trouble code by the structure of SAE J2012 / ISO 15031-6: area, who defined it, its bytes."""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from typing import Literal, NamedTuple, TypedDict

from desktop_app.language import marked, tr
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.own_program.tables_read import tables_read
from desktop_app.shop_record.trouble import ShopTrouble

Area = Literal["powertrain", "chassis", "body", "network"]
DefinedBy = Literal["standard", "maker", "reserved"]

_SYSTEM_LETTERS = "PCBU"
_AREAS: dict[str, Area] = {"P": "powertrain", "C": "chassis", "B": "body", "U": "network"}
_WHOLE = re.compile(r"[PCBU][0-3][0-9A-F]{3}")
# Within running text a letter O is read as a zero, as long as two true digits remain.
_WITHIN = re.compile(r"(?<![A-Z0-9])[PCBU][0-3O][0-9A-FO]{3}(?![A-Z0-9])")


class CodeTrouble(ShopTrouble):
    """The text is not a trouble code."""


class CodeJson(TypedDict):
    """A code as the `code` command prints it."""

    code: str
    area: Area
    defined_by: DefinedBy
    meaning: str | None


class TroubleCode(NamedTuple):
    """One code of five characters, P0300, with its meaning where our own list has one."""

    code: str
    meaning: str | None = None

    @property
    def area(self) -> Area:
        """The part of the vehicle that the first letter stands for."""
        return _AREAS[self.code[0]]

    @property
    def defined_by(self) -> DefinedBy:
        """Who gives the code its meaning, by the first digit (SAE J2012; from memory)."""
        first = self.code[1]
        if first == "0":
            return "standard"
        if self.code[0] == "P":
            if first == "3":
                return "maker" if self.code[2] < "4" else "standard"
            return "standard" if first == "2" else "maker"
        return "reserved" if first == "3" else "maker"

    @property
    def word(self) -> int:
        """The two bytes in which a vehicle sends the code, as one number."""
        letter = _SYSTEM_LETTERS.index(self.code[0])
        return letter << 14 | int(self.code[1]) << 12 | int(self.code[2:], 16)

    def as_json(self) -> CodeJson:
        """Return the fields of the command contract."""
        return {
            "code": self.code,
            "area": self.area,
            "defined_by": self.defined_by,
            "meaning": self.meaning,
        }


class CodeFamily(NamedTuple):
    """Codes that say one thing in general and for single cylinders or banks."""

    name: str
    codes: frozenset[str]


class CodeBook(NamedTuple):
    """The meanings and families of codes that the program knows."""

    meanings: dict[str, str]
    families: tuple[CodeFamily, ...]

    def family(self, code: str) -> str | None:
        """Return the name of the code's family, or None."""
        return next((f.name for f in self.families if code in f.codes), None)


def read_code(text: str, book: CodeBook | None = None) -> TroubleCode:
    """Read one code, capitals or not; a CodeTrouble says what a code looks like."""
    code = text.strip().upper()
    if not _WHOLE.fullmatch(code):
        raise CodeTrouble(
            tr("“{text}” is not a trouble code.", text=" ".join(text.split())[:40]),
            do=tr(
                "One is P, C, B or U, then 0 to 3, then three of 0 to 9 and A to F, such as P0300."
            ),
        )
    return TroubleCode(code, (book or code_book()).meanings.get(code))


def codes_in(text: str) -> tuple[str, ...]:
    """Return the codes found in running text, each once, in the order of their first mention."""
    found: dict[str, None] = {}
    for match in _WITHIN.finditer(text.upper()):
        written = match.group()
        if sum(c.isdigit() for c in written) >= 2:
            found[written.replace("O", "0")] = None
    return tuple(found)


# What a person types who read none, in the language spoken; English is understood in each.
_NONE = marked("none, no code, no codes, no fault codes, no trouble codes, nothing")


def says_none(text: str) -> bool:
    """Tell whether somebody says that no code was read: "none", "No codes."."""
    said = " ".join(text.casefold().strip(" .!").split())
    return said in {one.strip() for none in (_NONE, tr(_NONE)) for one in none.split(",")}


def code_meant(text: str) -> str:
    """Return the code that somebody means who left its letter out, "303" as P0303; "" for none.

    Most codes are of the engine; it is only named, and a person types it.
    """
    digits = text.strip()
    bare = digits.isascii() and digits.isdigit() and len(digits) in (3, 4)
    code = f"P{digits.zfill(4)}"
    return code if bare and _WHOLE.fullmatch(code) else ""


def code_of_word(word: int) -> str:
    """Return the code that a vehicle sends as these two bytes (0 to 65535); 0 is padding, P0000."""
    if not 0 <= word <= 0xFFFF:
        raise ValueError(f"two bytes hold 0 to 65535, not {word}")
    return f"{_SYSTEM_LETTERS[word >> 14]}{word >> 12 & 3}{word & 0xFFF:03X}"


@cache
def code_book() -> CodeBook:
    """Return the program's own code book, read once."""
    return read_code_book(resource_path("trouble_codes.toml"))


def read_code_book(path: Path) -> CodeBook:
    """Read meanings and families from a TOML file."""
    data = tables_read().values(path.read_text("utf-8"))
    families = tuple(
        CodeFamily(entry["name"], _span(entry["first"], entry["last"]) | set(entry.get("also", ())))
        for entry in data.get("families", ())
    )
    return CodeBook({code: str(says) for code, says in data["meanings"].items()}, families)


def _span(first: str, last: str) -> frozenset[str]:
    low, high = TroubleCode(first).word, TroubleCode(last).word
    return frozenset(code_of_word(word) for word in range(low, high + 1))

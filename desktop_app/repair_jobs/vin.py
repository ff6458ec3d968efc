"""A vehicle identification number: its shape, its check digit, and what it says."""

from __future__ import annotations

from typing import NamedTuple, TypedDict

from desktop_app.language import tr
from desktop_app.shop_record.databases.plain_text import plain_text
from desktop_app.shop_record.trouble import ShopTrouble

LENGTH = 17
LETTERS_NEVER_USED = "IOQ"

# 49 CFR 565.15(c), Table III (values) and Table IV (weights); the same in ISO 3779.
_VALUE = {
    **{digit: int(digit) for digit in "0123456789"},
    **dict(zip("ABCDEFGH", range(1, 9), strict=True)),
    **dict(zip("JKLMN", range(1, 6), strict=True)),
    "P": 7,
    "R": 9,
    **dict(zip("STUVWXYZ", range(2, 10), strict=True)),
}
_WEIGHT = (8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2)
# 49 CFR 565.15, Table VII: the year letters of one 30-year cycle; never I, O, Q, U, Z or 0.
_YEAR_CODES = "ABCDEFGHJKLMNPRSTVWXY123456789"
# First character to region as usual for ISO 3780; from memory, editions differ at H and 7.
_REGIONS = (
    ("ABCDEFGH", "Africa"),
    ("JKLMNPR", "Asia"),
    ("STUVWXYZ", "Europe"),
    ("12345", "North America"),
    ("67", "Oceania"),
    ("89", "South America"),
)
_AS_READ = str.maketrans("IOQ", "100")


class VinTrouble(ShopTrouble):
    """The text cannot be a VIN at all: wrong length, or a character that no VIN has."""


class VinJson(TypedDict):
    """A VIN as the `vin` command prints it."""

    vin: str
    check_digit_ok: bool
    expected_check_digit: str
    region: str
    model_years: list[int]
    notes: list[str]


class VinReading(NamedTuple):
    """What a well-formed VIN says; a failed check digit is a finding, not an error."""

    vin: str
    expected_check_digit: str
    region: str
    model_years: tuple[int, ...]
    notes: tuple[str, ...]

    @property
    def check_digit_ok(self) -> bool:
        """True where the ninth character is the one that the others ask for."""
        return self.vin[8] == self.expected_check_digit

    def as_json(self) -> VinJson:
        """Return the fields of the command contract."""
        return {
            "vin": self.vin,
            "check_digit_ok": self.check_digit_ok,
            "expected_check_digit": self.expected_check_digit,
            "region": self.region,
            "model_years": list(self.model_years),
            "notes": list(self.notes),
        }


def plain_vin(text: str) -> str:
    """Return the text in capitals, without white space and without what no text can hold."""
    return plain_text("".join(text.split())).upper()


def matching_vin(text: str) -> str:
    """Return the form in which VINs are compared: as `plain_vin`, with I, O, Q read as 1, 0, 0."""
    return plain_vin(text).translate(_AS_READ)


def is_well_formed(text: str) -> bool:
    """True where the text, read as `matching_vin` reads it, has 17 characters a VIN may have."""
    vin = matching_vin(text)
    return len(vin) == LENGTH and all(character in _VALUE for character in vin)


def expected_check_digit(vin: str) -> str:
    """Return the check digit (0 to 9 or X) for 17 allowed characters, by 49 CFR 565.15(c)."""
    total = sum(_VALUE[c] * w for c, w in zip(vin, _WEIGHT, strict=True))
    return "0123456789X"[total % 11]


def read_vin(text: str) -> VinReading:
    """Read a VIN strictly; a VinTrouble names a wrong length or a character no VIN has."""
    vin = plain_vin(text)
    if len(vin) != LENGTH:
        raise VinTrouble(
            tr("“{vin}” has 1 character.", vin=vin)
            if len(vin) == 1
            else tr("“{vin}” has {count} characters.", vin=_short(vin), count=len(vin)),
            do=tr("A VIN has 17: letters and digits."),
        )
    for place, character in enumerate(vin, 1):
        if character in LETTERS_NEVER_USED:
            raise VinTrouble(
                tr(
                    "“{vin}” has the letter {character} in place {place}.",
                    vin=vin,
                    character=character,
                    place=place,
                ),
                do=tr("A VIN never has I, O or Q; look again whether it is 1 or 0."),
            )
        if character not in _VALUE:
            raise VinTrouble(
                tr(
                    "“{vin}” has {character!r} in place {place}.",
                    vin=_short(vin),
                    character=character,
                    place=place,
                ),
                do=tr("A VIN has only the letters A to Z without I, O, Q, and the digits."),
            )
    return _reading(vin)


def vin_question(text: str) -> str | None:
    """Return what to ask about a VIN typed at the counter, or None where nothing is odd.

    Nothing is refused here: a VIN that no one can read fully is still worth keeping.
    """
    vin = matching_vin(text)
    if not vin:
        return None
    if not is_well_formed(vin):
        return tr(
            "A VIN has 17 letters and digits; this one has {count}. Is it complete?", count=len(vin)
        )
    expected = expected_check_digit(vin)
    if vin[8] != expected:
        return tr(
            "The ninth character is {ninth}; the others ask for {expected}. Read it "
            "again; on cars of many markets it is right all the same.",
            ninth=vin[8],
            expected=expected,
        )
    return None


def model_years(code: str) -> tuple[int, ...]:
    """Return both years (1980 to 2009, 2010 to 2039) of a tenth character; none for 0, U and Z."""
    place = _YEAR_CODES.find(code) if len(code) == 1 else -1
    return () if place < 0 else (1980 + place, 2010 + place)


def _reading(vin: str) -> VinReading:
    region = next((name for first, name in _REGIONS if vin[0] in first), "not assigned")
    years = model_years(vin[9])
    expected = expected_check_digit(vin)
    return VinReading(vin, expected, region, years, tuple(_notes(vin, expected, region, years)))


def _notes(vin: str, expected: str, region: str, years: tuple[int, ...]) -> list[str]:
    notes = []
    if vin[8] != expected:
        notes.append(
            tr(
                "The ninth character is {ninth}; the others ask for {expected}. One "
                "character may be misread, or the car is of a market that does not use the "
                "check digit.",
                ninth=vin[8],
                expected=expected,
            )
        )
    if not years:
        notes.append(tr("The tenth character, {tenth}, stands for no model year.", tenth=vin[9]))
    elif region == "North America":
        # 49 CFR 565.15(b): a letter in place 7 means the later cycle, for cars and light trucks.
        year = years[1] if vin[6].isalpha() else years[0]
        notes.append(
            tr("On a passenger car or a light truck, place 7 points to {year}.", year=year)
        )
    if vin[2] == "9":
        notes.append(tr("The third character, 9, means a maker of few vehicles a year."))
    notes.append(tr("The region is where the maker's code was given out; editions differ."))
    return notes


def _short(text: str) -> str:
    return text if len(text) <= 40 else text[:37] + "..."

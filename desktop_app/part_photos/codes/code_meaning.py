"""What the text of a barcode may be: a VIN, an article number, a part number, or nothing of use."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Literal

from desktop_app.part_photos.codes.article_number import as_printed, is_article_number
from desktop_app.part_photos.codes.seen_code import SeenCode
from desktop_app.repair_jobs.vin import LENGTH, LETTERS_NEVER_USED, expected_check_digit

What = Literal["VIN", "article number", "part number"]

_TRADE = ("EAN", "UPC", "ITF", "DataBar")
_VIN = re.compile(rf"[0-9A-Z]{{{LENGTH}}}")
_WORDS = re.compile(r"[0-9A-Z]+")
# GS1 General Specifications, 3: the article (01), a part's number at its maker (240), and at the
# customer (241), as they are printed in brackets.
_GS1 = re.compile(r"\((\d{2,4})\)([^(]*)")
# ISO/IEC 15434, format 06: fields named by the data identifiers of ANSI MH10.8.2, of which P and
# 1P are a part's number at the customer and at the supplier, I is a VIN (recalled).
_ISO_15434 = "[)>\x1e06\x1d"
_PART_FIELD = re.compile(r"1?P(.+)")
_PART = re.compile(r"[0-9A-Za-z][0-9A-Za-z ./_+#-]{2,38}[0-9A-Za-z]")


@dataclass(frozen=True, slots=True)
class CodeMeaning:
    """One thing that a code may say; `sure` is false for a VIN whose check digit is another."""

    what: What
    value: str
    sure: bool = True


def meanings_of(codes: Iterable[SeenCode]) -> tuple[CodeMeaning, ...]:
    """Return what the codes of a photo may be, each once."""
    return tuple(dict.fromkeys(one for code in codes for one in _meanings(code)))


def _meanings(code: SeenCode) -> list[CodeMeaning]:
    text = code.text.strip().strip("*")  # the stars of Code 39 frame it, and say nothing
    if code.print_form.startswith(_TRADE) and not text.startswith("("):
        return _article(text)
    if text.startswith(_ISO_15434):
        return _fields_of_15434(text)
    elements = _GS1.findall(text) if text.startswith("(") else []
    if elements:
        said = [_article(value) for name, value in elements if name == "01"]
        said += [_part(value) for name, value in elements if name in ("240", "241")]
        return [one for each in said for one in each]
    if code.print_form.startswith("Code 39") and len(text) == LENGTH + 1 and text[0] == "I":
        # A leading I on the label of a car: common practice, no source; no VIN has an I.
        return _vin(text[1:]) or _part(text)
    alone = _vin(text)
    if alone:
        return alone if alone[0].sure else alone + _part(text)
    return _vin_inside(text) or _part(text)


def _vin(text: str) -> list[CodeMeaning]:
    """Read a VIN; where its check digit is another it still may be one, of another market.

    ISO 3779: the last four are digits (recalled). Digits alone are a serial number more often.
    """
    if not _VIN.fullmatch(text) or set(text) & set(LETTERS_NEVER_USED):
        return []
    sure = expected_check_digit(text) == text[8]
    if text.isdigit() or not (sure or text[-4:].isdigit()):
        return []
    return [CodeMeaning("VIN", text, sure)]


def _vin_inside(text: str) -> list[CodeMeaning]:
    """Find a VIN between other fields; there its check digit has to be right."""
    words = _WORDS.findall(text)
    return [one for word in words if word != text for one in _vin(word) if one.sure]


def _article(text: str) -> list[CodeMeaning]:
    if not is_article_number(text):
        return []
    return [CodeMeaning("article number", as_printed(text))]


def _fields_of_15434(text: str) -> list[CodeMeaning]:
    said: list[CodeMeaning] = []
    for field in text.removeprefix(_ISO_15434).rstrip("\x1e\x04").split("\x1d"):
        named = _PART_FIELD.fullmatch(field)
        if field.startswith("I") and len(field) == LENGTH + 1:
            said += _vin(field[1:])
        elif named:
            said += _part(named.group(1))
    return said


def _part(text: str) -> list[CodeMeaning]:
    """Read a part number: 4 to 40 letters and digits on one line, with a digit among them."""
    if not _PART.fullmatch(text) or not any(letter.isdigit() for letter in text):
        return []
    return [CodeMeaning("part number", text)]

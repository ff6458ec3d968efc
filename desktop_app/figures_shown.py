"""How figures are written for people: with a decimal point, or with a decimal comma.

With a point, groups of three digits are set apart by a comma: 41,250.5. With a comma they are set
apart by a narrow space that does not break (SI Brochure, 9th edition, 5.4.4; ISO 80000-1), never by
a point or a comma, so that no number can be misread: 41 250,5.
What the record and files for machines hold, and what commands print, keeps the point.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from contextvars import ContextVar
from numbers import Number
from string import Formatter
from typing import Any, Literal

DecimalSign = Literal[".", ","]
#: Which sign is wanted, said from outside: "." or ",".
VARIABLE = "BENCHWITNESS_DECIMAL_SIGN"
#: What sets groups of digits apart where the decimal sign is a comma.
GROUP = "\u202f"

#: Whether texts and figures are given as they are kept.
in_kept_form: ContextVar[bool] = ContextVar("in_kept_form", default=False)
_BY_COMMA = str.maketrans({".": ",", ",": GROUP})
_BY_POINT = str.maketrans({",": ".", GROUP: None, "\u00a0": None})
_by_comma = False
_SPACES = f"{GROUP}\u00a0"
_GROUPED, _SPACED = (
    re.compile(rf"(?<![\d.,/])\d{{1,3}}(?:[{by}]\d{{3}})+(?![{by}]?\d|\s*/)")
    for by in (_SPACES, f"{_SPACES} ")
)


def speak_figures(decimal: DecimalSign = ".") -> None:
    """Write figures for people with this decimal sign from now on."""
    global _by_comma
    _by_comma = decimal == ","


def decimal_sign() -> DecimalSign:
    """Return the decimal sign of the figures shown now."""
    return "," if _by_comma and not in_kept_form.get() else "."


def figure(value: Any, spec: str = "") -> str:
    """Return format(value, spec) with the signs of this place; `value` is a number."""
    return shown(format(value, spec))


def shown(figures: str) -> str:
    """Return figures that are written with a point as they are shown; no words stand in them."""
    return figures.translate(_BY_COMMA) if _by_comma and not in_kept_form.get() else figures


def with_point(figures: str) -> str:
    """Return figures that are shown as they are written with a point, without groups."""
    if _by_comma and not in_kept_form.get():
        return figures.translate(_BY_POINT)
    return figures.replace(",", "")


def without_groups(typed: str, *, spaced: bool = True) -> str:
    """Return a typed text without the spaces between groups of three digits.

    `spaced` is whether plain spaces set groups apart too, and not one number from the next.
    """
    grouped = _SPACED if spaced else _GROUPED
    return grouped.sub(lambda found: re.sub(r"\s", "", found[0]), typed)


def filled(text: str, values: Mapping[str, Any]) -> str:
    """Return a text with the values where it names them, numbers with the signs of this place."""
    if _by_comma and not in_kept_form.get():
        return _FORM.vformat(text, (), values)
    return text.format(**values)


class _Form(Formatter):
    """Puts values into a text as str.format() does, and numbers with the signs of this place."""

    def format_field(self, value: Any, format_spec: str) -> str:
        said: str = super().format_field(value, format_spec)
        return shown(said) if isinstance(value, Number) else said


_FORM = _Form()

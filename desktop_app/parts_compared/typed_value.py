"""A value as a person types it, turned into the dimension's unit."""

from __future__ import annotations

import math
import re
from fractions import Fraction

from desktop_app.figures_shown import figure, without_groups
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import Span
from desktop_app.shop_record.trouble import ShopTrouble

#: How many of the dimension's unit one of the typed unit is. The inch is 25.4 mm exactly
#: (international yard and pound agreement, 1959).
_FACTORS: dict[str, dict[str, float]] = {
    "mm": {
        "mm": 1.0, "cm": 10.0, "m": 1000.0, "in": 25.4, "inch": 25.4, "inches": 25.4,
        '"': 25.4, "''": 25.4, "″": 25.4, "thou": 0.0254,
        "pulg": 25.4, "pulgada": 25.4, "pulgadas": 25.4,
    },
    "deg": {"deg": 1.0, "degree": 1.0, "degrees": 1.0, "°": 1.0, "grado": 1.0, "grados": 1.0},
    "ohm": {"ohm": 1.0, "ohms": 1.0, "ω": 1.0, "kohm": 1e3, "kω": 1e3, "k": 1e3},
    "kohm": {"kohm": 1.0, "kω": 1.0, "k": 1.0, "ohm": 1e-3, "ohms": 1e-3, "ω": 1e-3},
    "V": {"v": 1.0, "mv": 1e-3},
    "A": {"a": 1.0, "ma": 1e-3},
    "kPa": {"kpa": 1.0, "bar": 100.0, "psi": 6.894757},
    "C": {"c": 1.0, "°c": 1.0},
    "ml": {"ml": 1.0, "cc": 1.0},
}  # fmt: skip
_SIGNED = ("deg", "V", "A", "C")
_LARGEST = 1e6
_LONGEST = 40
#: How near to 25.4 times apart counts as a mixed-up unit (about 15 %).
_NEAR = 0.15
_NUMBER = re.compile(
    r"(?P<sign>[-+−]?)\s*(?:(?P<whole>\d+)[\s-]+)?(?P<top>\d+)\s*/\s*(?P<bottom>\d+)"
    r"|(?P<decimal>[-+−]?(?:\d+(?:[.,]\d*)?|[.,]\d+))"
)
_UNIT = re.compile(r"[^\d\s+\-−.,/][^\d\s+−.,]*\Z")


class ValueRefused(ShopTrouble):
    """A typed value that can't be understood, with what would be."""


def typed_value(text: str, unit: str, *, spaced: bool = True) -> float:
    """Return the value in `unit`: "12.7", "12,7", "1/2 in", "0.500 in", "0.30+0.15".

    `spaced` is whether a space may set thousands apart: "1 250.5".

    Raises ValueRefused, which says what is accepted.
    """
    bare = without_groups(text.strip(), spaced=spaced)
    ending = _UNIT.search(bare)
    typed = ending[0].casefold() if ending else unit.casefold()
    factors = _FACTORS.get(unit, {unit.casefold(): 1.0})
    if typed not in factors or len(bare) > _LONGEST:
        raise _refused(text, unit)
    body = bare[: ending.start()].strip() if ending else bare
    parts = re.split(r"(?<=[\d.,])\s*\+\s*", body)
    # Worked out as it is written, so that 3/8" is 9.525 mm and not a hair less.
    exact = sum(_number(part, text, unit) for part in parts) * Fraction(str(factors[typed]))
    return accepted_value(_as_float(exact), unit, text)


def accepted_value(value: float, unit: str, text: str = "") -> float:
    """Return the value if a part can have it; else raise ValueRefused."""
    shown = text or figure(value, "g")
    if not math.isfinite(value) or abs(value) > _LARGEST:
        raise _refused(shown, unit)
    if value < 0 and unit not in _SIGNED:
        raise ValueRefused(
            tr("'{shown}' is below zero.", shown=shown),
            do=tr("Accepted: {accepted}.", accepted=what_is_accepted(unit)),
        )
    if unit == "n" and value != int(value):
        raise _refused(shown, unit)
    return value


def what_is_accepted(unit: str) -> str:
    """Return in a few words what may be typed for this unit."""
    if unit == "n":
        return tr("a whole number, zero or more")
    if unit == "mm":
        return tr(
            'millimetres like 12.7 or 12,7, inches like 0.500 in or 1/2", or a sum like 0.30+0.15'
        )
    return tr("a number in {unit}, like 12.7", unit=unit)


def unit_question(value: float, other: float | None, typical: Span | None = None) -> str | None:
    """Return a question where millimetres and inches were probably mixed up, else None.

    `value` and `other` are in mm: the side just typed and the other side.
    """
    if value <= 0:
        return None
    for factor in (25.4, 1 / 25.4):
        if other is not None and other > 0:
            if abs(math.log(value * factor / other)) < _NEAR:
                return tr(
                    "{value:g} mm here and {other:g} mm on the other part are about "
                    "25.4 times apart. Was one of them read in inches?",
                    value=value,
                    other=other,
                )
        elif _belongs(value, factor, typical):
            if factor > 1:
                return tr("{value:g} mm is unusual for this part. Were those inches?", value=value)
            return tr(
                "{value:g} mm is unusual for this part. Were those already millimetres?",
                value=value,
            )
    return None


def _belongs(value: float, factor: float, typical: Span | None) -> bool:
    """Whether only the converted value lies in the typical range."""
    low, high = typical or (None, None)
    if low is None or high is None:
        return False
    return not low <= value <= high and low <= value * factor <= high


def _as_float(exact: Fraction) -> float:
    try:
        return float(exact)
    except OverflowError:
        return math.inf


def _number(part: str, text: str, unit: str) -> Fraction:
    found = _NUMBER.fullmatch(part.strip())
    if found is None:
        raise _refused(text, unit)
    if found["decimal"]:
        return Fraction(found["decimal"].replace(",", ".").replace("−", "-"))
    if int(found["bottom"]) == 0:
        raise _refused(text, unit)
    size = int(found["whole"] or 0) + Fraction(int(found["top"]), int(found["bottom"]))
    return -size if found["sign"] in ("-", "−") else size


def _refused(text: str, unit: str) -> ValueRefused:
    shown = text if len(text) <= _LONGEST else text[:37] + "..."
    return ValueRefused(
        tr("'{shown}' can't be understood as a value.", shown=shown),
        do=tr("Accepted: {accepted}.", accepted=what_is_accepted(unit)),
    )

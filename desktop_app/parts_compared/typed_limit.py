"""A maker's limit as a person types it, in the shop's unit of length or the dimension's own."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.readings_typed import read_readings
from desktop_app.parts_compared.shown_value import number
from desktop_app.shop_record.trouble import ShopTrouble


def read_limit(text: str, dimension: Dimension, length_unit: str) -> float | None:
    """Return the limit in the dimension's unit, None for an empty field.

    Raises a ShopTrouble that says what is accepted.
    """
    read = read_readings(text, dimension, length_unit)
    if len(read) > 1:
        raise ShopTrouble(
            tr("“{text}” is more than one limit.", text=text.strip()), do=tr("Type one number.")
        )
    return read[0][0] if read else None


def limit_text(value: float | None, dimension: Dimension, length_unit: str) -> str:
    """Return a kept limit as its field shows it."""
    if value is None:
        return ""
    unit, factor = shop_unit(dimension.unit, length_unit)
    return f"{number(value * factor)}{' in' if unit == 'in' else ''}"

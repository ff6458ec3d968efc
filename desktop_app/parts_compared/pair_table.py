"""One table of a pair file, read field by field with exact complaints."""

from __future__ import annotations

import difflib
import math
from collections.abc import Iterable, Mapping
from typing import Any

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble


class PairTrouble(ShopTrouble):
    """A pair file can't be used: file, table and row, field, and what would be accepted."""


class PairTable:
    """A TOML table of a pair file with the place that it came from."""

    def __init__(self, file: str, values: Mapping[str, Any], place: str = "") -> None:
        self.file = file
        self.values = values
        self.place = place

    def trouble(self, field: str, wrong: str, accepted: str) -> PairTrouble:
        """Return the trouble with one field of this table."""
        told = tr("field '{field}'", field=field)
        where = ", ".join(one for one in (self.file, self.place, told) if one)
        return PairTrouble(f"{where}: {wrong}.", do=tr("Accepted: {accepted}.", accepted=accepted))

    def only(self, *fields: str) -> None:
        """Refuse a field that such a table doesn't have: misspelt, it would be passed over."""
        for field in self.values:
            if field not in fields:
                near = difflib.get_close_matches(field, fields, n=1)
                hint = tr(" (did you mean {near}?)", near=near[0]) if near else ""
                raise self.trouble(
                    field, tr("there is no such field{hint}", hint=hint), ", ".join(fields)
                )

    def word(self, field: str, accepted: str, default: str | None = None) -> str:
        """Return a non-empty text; without a default it must be there."""
        value = self.values.get(field, default)
        if value is None:
            raise self.trouble(field, tr("it is missing"), accepted)
        if not isinstance(value, str) or not (value.strip() or value == default):
            raise self.trouble(field, tr("{shown} is not a text", shown=shown(value)), accepted)
        return value.strip()

    def one_of(self, field: str, known: Iterable[str]) -> str:
        """Return one of the known words; the complaint offers those most like it."""
        choices = sorted(known)
        accepted = ", ".join(choices)
        value = self.word(field, accepted)
        if value not in choices:
            near = difflib.get_close_matches(value, choices, n=3)
            hint = tr(" (did you mean {near}?)", near=tr(" or ").join(near)) if near else ""
            raise self.trouble(
                field, tr("'{value}' is not known{hint}", value=value, hint=hint), accepted
            )
        return value

    def number(self, field: str, lowest: float | None = None) -> float | None:
        """Return a finite number, not below `lowest`; None where the field is absent."""
        value = self.values.get(field)
        accepted = (
            tr("a number") if lowest is None else tr("a number, {lowest:g} or more", lowest=lowest)
        )
        if value is None:
            return None
        if isinstance(value, bool) or not isinstance(value, int | float):
            raise self.trouble(field, tr("{shown} is not a number", shown=shown(value)), accepted)
        if not math.isfinite(value) or (lowest is not None and value < lowest):
            raise self.trouble(field, tr("{value:g} is not possible", value=value), accepted)
        return float(value)

    def rows(self, field: str) -> tuple[PairTable, ...]:
        """Return the repeated tables [[field]]."""
        value = self.values.get(field, [])
        if not isinstance(value, list) or not all(isinstance(one, dict) for one in value):
            raise self.trouble(
                field, tr("these are not tables"), tr("tables that begin [[{field}]]", field=field)
            )
        return tuple(
            PairTable(self.file, one, f"{field} {index}") for index, one in enumerate(value, 1)
        )

    def named(self, field: str) -> dict[str, PairTable]:
        """Return the named tables [field.NAME]."""
        value = self.values.get(field, {})
        if not isinstance(value, dict) or not all(isinstance(one, dict) for one in value.values()):
            raise self.trouble(
                field,
                tr("these are not tables"),
                tr("tables that begin [{field}.NAME]", field=field),
            )
        return {name: PairTable(self.file, one, f"{field}.{name}") for name, one in value.items()}


def shown(value: object) -> str:
    """Return a value as it looks in the file, shortened."""
    text = f"'{value}'" if isinstance(value, str) else str(value)
    return text if len(text) <= 40 else text[:37] + "..."

"""The fields of a bench sum as someone filled them in, read one by one."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.instrument_doubt import one_reading, two_readings
from desktop_app.parts_compared.bench_sums.sum_field import MEASURED, SumField
from desktop_app.parts_compared.bench_sums.typed_list import (
    MOST_PARTS,
    list_parts,
    typed_groups,
    typed_wholes,
)
from desktop_app.parts_compared.instruments.instrument import (
    Instrument,
    tool_words,
    usual_instrument,
)
from desktop_app.parts_compared.shown_value import amount, number
from desktop_app.parts_compared.typed_value import ValueRefused, typed_value, what_is_accepted
from desktop_app.parts_compared.uncertainty import side_estimate, side_reading
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class Filled:
    """Typed texts by field name; every question raises ShopTrouble with place and remedy."""

    sum_name: str
    fields: tuple[SumField, ...]
    typed: Mapping[str, str]
    drawer: Mapping[str, Instrument]

    def inputs(self, *unused: str) -> tuple[tuple[str, str], ...]:
        """Return (label, text) of everything that the sum was worked out from.

        `unused` names the fields that this time had no say.
        """
        asked = (field for field in self.fields if field.name not in unused)
        found = ((field.label, self._input_text(field)) for field in asked)
        return tuple((label, text) for label, text in found if text)

    def is_typed(self, name: str) -> bool:
        """Whether something stands in the field."""
        return bool(self.typed.get(name, "").strip())

    def number(self, name: str) -> float:
        """Return the value of a number field in its unit."""
        field = self._field(name)
        return self._measured(field, self._text(field))

    def maybe(self, name: str) -> float | None:
        """Return the value of a number field, or None where it was left empty."""
        return self.number(name) if self.is_typed(name) or self._field(name).default else None

    def numbers(self, name: str) -> tuple[float, ...]:
        """Return the values of a list field in its unit."""
        field = self._field(name)
        text = self._text(field)
        parts = list_parts(text) if field.kind == "list" else [text]
        if not parts:
            raise self.trouble(name, tr("nothing is entered."), self._accepted(field))
        if len(parts) > MOST_PARTS:
            raise self.trouble(
                name,
                tr("{count} values.", count=len(parts)),
                tr("Accepted: {most} at most.", most=MOST_PARTS),
            )
        return tuple(self._measured(field, part) for part in parts)

    def whole(self, name: str) -> int:
        """Return the value of a field for one whole number."""
        field = self._field(name)
        return self._bounded_wholes(field, self._one_whole(field, self._text(field)))[0]

    def wholes(self, name: str) -> tuple[int, ...]:
        """Return the values of a field for whole numbers; none where it was left empty."""
        field = self._field(name)
        if not self.is_typed(name) and field.optional:
            return ()
        text = self._text(field)
        found = typed_wholes(text)
        if found is None:
            raise self._refused(field, text, tr("whole numbers, like 1-3-4-2 or 14, 11, 9, 16"))
        return self._bounded_wholes(field, found)

    def groups(self, name: str) -> tuple[tuple[int, ...], ...]:
        """Return the lists of whole numbers; none where the field was left empty."""
        if not self.is_typed(name):
            return ()
        field = self._field(name)
        found = typed_groups(self.typed[name])
        if found is None:
            raise self._refused(field, self.typed[name], tr("groups like 1 4 / 2 3"))
        return found

    def choice(self, name: str) -> str:
        """Return which of the choices was taken."""
        field = self._field(name)
        text = self._text(field)
        for one in field.choices:
            if text.casefold() in (one.casefold(), tr(one).casefold()):
                return one
        raise self._refused(field, text, _either(field.choices))

    def text(self, name: str) -> str:
        """Return a text as typed, without the spaces around it; empty where nothing stands."""
        return " ".join(self.typed.get(name, "").split())

    def doubt(self, name: str) -> float:
        """Return how far one reading may be off: as typed, else as the instrument may."""
        if self.is_typed(name):
            return self.number(name)
        return one_reading(self._instrument(self._field(name)))

    def doubt_of_difference(self, name: str) -> float:
        """Return how far the difference of two such readings may be off.

        Typed, both readings may be off independently; with one instrument its own error cancels.
        """
        if self.is_typed(name):
            return math.sqrt(2) * self.number(name)
        return two_readings(self._instrument(self._field(name)))

    def doubt_of_mean(self, name: str, values: Sequence[float]) -> float:
        """Return how far the mean of repeats may be off, never less than what they scatter."""
        if self.is_typed(name):
            return max(self.number(name), (max(values) - min(values)) / 2)
        return side_estimate(side_reading(values, self._instrument(self._field(name)))).expanded()

    def trouble(self, name: str, what: str, do: str) -> ShopTrouble:
        """Return the trouble with one field: what is wrong there, and what is accepted."""
        return ShopTrouble(f"{self.sum_name}, {self._field(name).label}: {what}", do=do)

    def _field(self, name: str) -> SumField:
        return next(field for field in self.fields if field.name == name)

    def _text(self, field: SumField) -> str:
        text = self.typed.get(field.name, "").strip() or field.default
        if not text:
            raise self.trouble(field.name, tr("nothing is entered."), self._accepted(field))
        return text

    def _accepted(self, field: SumField) -> str:
        if field.kind in MEASURED:
            bounds = f", {field.bounds()}" if field.bounds() else ""
            several = tr("; several parted by a semicolon") if field.kind == "list" else ""
            what = what_is_accepted(field.unit) if field.unit else tr("a number like 12.7 or 12,7")
            return tr(
                "Accepted: {what}{bounds}{several}.", what=what, bounds=bounds, several=several
            )
        bounds = f" ({field.bounds()})" if field.bounds() else ""
        kinds = {
            "whole": tr("a whole number"), "wholes": tr("whole numbers, like 1-3-4-2"),
            "groups": tr("groups like 1 4 / 2 3"), "choice": _either(field.choices),
        }  # fmt: skip
        return tr(
            "Accepted: {what}{bounds}.",
            what=kinds.get(field.kind, tr("the text as printed")),
            bounds=bounds,
        )

    def _measured(self, field: SumField, text: str) -> float:
        # A share or a trim may be below zero; elsewhere the unit says what may.
        below_zero = field.unit == "%" and text[:1] in ("-", "−")
        try:
            size = typed_value(
                text[1:] if below_zero else text, field.unit, spaced=field.kind != "list"
            )
        except ValueRefused as refused:
            raise self.trouble(field.name, refused.what, self._accepted(field)) from refused
        value = -size if below_zero else size
        if not field.holds(value):
            raise self._refused(field, text, field.bounds())
        return value

    def _one_whole(self, field: SumField, text: str) -> tuple[int, ...]:
        found = typed_wholes(text)
        if found is None or len(found) != 1:
            raise self._refused(field, text, field.bounds() or tr("a whole number"))
        return found

    def _bounded_wholes(self, field: SumField, found: tuple[int, ...]) -> tuple[int, ...]:
        for one in found:
            if not field.holds(one):
                raise self._refused(
                    field, str(one), tr("whole numbers, {bounds}", bounds=field.bounds())
                )
        return found

    def _instrument(self, field: SumField) -> Instrument:
        own = self.drawer.get(field.instrument)
        if own is not None and own.unit == field.unit:
            return own
        return usual_instrument(field.instrument, field.unit) or Instrument(
            field.instrument, field.unit, 0.0, 0.0
        )

    def _input_text(self, field: SumField) -> str:
        typed = self.text(field.name)
        if field.kind in MEASURED and typed:
            values = self.numbers(field.name)
            shown = [number(one) for one in values[:-1]] + [amount(values[-1], field.unit)]
            return "; ".join(shown).rstrip()
        if field.kind == "choice":
            return tr(self.choice(field.name) if typed else field.default)
        if typed or (field.optional and not field.instrument):
            return typed
        if field.instrument:
            off = self.doubt(field.name)
            return tr(
                "{amount} (one reading, {instrument})",
                amount=amount(off, field.unit, off),
                instrument=tool_words(field.instrument),
            )
        return tr("{amount} (usual)", amount=amount(self.number(field.name), field.unit).rstrip())

    def _refused(self, field: SumField, text: str, accepted: str) -> ShopTrouble:
        shown = text if len(text) <= 40 else text[:37] + "..."
        return self.trouble(
            field.name,
            tr("'{typed}' doesn't do.", typed=shown),
            tr("Accepted: {accepted}.", accepted=accepted),
        )


def _either(choices: Sequence[str]) -> str:
    return ", ".join(tr(one) for one in choices)

"""One thing that a bench sum asks for: its label, unit and help, and what may be left empty."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.figures_shown import shown
from desktop_app.language import marked, tr
from desktop_app.parts_compared.instruments.instrument import tool_words

#: number: one value; whole: a whole number; list, wholes: several of them; groups: several
#: lists of whole numbers, parted by "/"; choice: one of `choices`, which tr() says; text: as
#: printed on the part.
FieldKind: TypeAlias = Literal["number", "whole", "list", "wholes", "groups", "choice", "text"]

#: Fields of these kinds are read as numbers in the field's unit.
MEASURED: tuple[FieldKind, ...] = ("number", "list")


@dataclass(frozen=True, slots=True)
class SumField:
    """One field. `default` is a typed text; `help` says where the figure comes from.

    `above`, `least` and `most` bound every number of the field, in `unit`. A field with an
    `instrument` asks how far a reading may be off: left empty, that is the instrument's own
    expanded uncertainty.
    """

    name: str
    label: str
    unit: str
    kind: FieldKind = "number"
    optional: bool = False
    default: str = ""
    help: str = ""
    choices: tuple[str, ...] = ()
    above: float | None = None
    least: float | None = None
    most: float | None = None
    instrument: str = ""

    def bounds(self) -> str:
        """Return the bounds in words, like "more than 0, at most 90", or nothing."""
        said = (
            tr("more than {above:g}", above=self.above) if self.above is not None else "",
            tr("at least {least:g}", least=self.least) if self.least is not None else "",
            tr("at most {most:g}", most=self.most) if self.most is not None else "",
        )
        return ", ".join(one for one in said if one)

    def holds(self, value: float) -> bool:
        """Whether the value lies within the bounds."""
        return (
            (self.above is None or value > self.above)
            and (self.least is None or value >= self.least)
            and (self.most is None or value <= self.most)
        )


def shown_default(field: SumField) -> str:
    """Return what stands in a field before anything is typed, figures as they are shown."""
    return shown(field.default) if field.kind in MEASURED else field.default


def doubt_field(name: str, label: str, unit: str, instrument: str) -> SumField:
    """Return the field for how far a reading with that instrument may be off."""
    help_text = tr(
        "Left empty: what a {instrument} may be off in one reading.",
        instrument=tool_words(instrument),
    )
    return SumField(
        name, label, unit, optional=True, help=help_text, least=0.0, instrument=instrument
    )


def distance_unit_field() -> SumField:
    """Return the field that says whether distances are miles or kilometres."""
    return SumField(
        "distance_unit",
        tr("distances are in"),
        "",
        "choice",
        default="miles",
        choices=(marked("miles"), "km"),
    )

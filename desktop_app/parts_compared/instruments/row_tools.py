"""The instrument of a row of readings: what can be chosen, and what is shown as chosen."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import Instrument, tool_words
from desktop_app.parts_compared.instruments.instrument_choice import instruments_for
from desktop_app.parts_compared.instruments.photo_marks import BY_EYE, PHOTO
from desktop_app.parts_compared.part_kinds.part_kind import Dimension

FROM_MARKS = tr("from marks")


@dataclass(frozen=True, slots=True)
class RowTools:
    """What can be chosen, as (instrument or None, words), and which one is shown.

    None is no instrument: the sides were read with two, or all readings came from marks.
    """

    choices: tuple[tuple[str | None, str], ...]
    shown: str | None


def row_tools(
    dimension: Dimension,
    drawer: Mapping[str, Instrument],
    typed: tuple[str, ...],
    *,
    marks: bool,
    picked: str | None,
) -> RowTools:
    """Return the choice of a row; `typed` are the instruments of what was typed on either side.

    `marks` tells that readings were taken from marks, `picked` is what a person chose or used in
    this row before. What a mark gave says nothing of the instrument of what is typed beside it:
    there nothing is chosen before a person does.
    """
    choices: list[tuple[str | None, str]] = [
        (tool, _words(tool)) for tool in instruments_for(dimension, drawer, typed)
    ]
    different = tuple(dict.fromkeys(typed))
    if len(different) > 1:
        choices.insert(0, (None, " / ".join(map(_words, different))))
        return RowTools(tuple(choices), None)
    if marks and not typed:
        choices.insert(0, (None, FROM_MARKS))
        return RowTools(tuple(choices), picked)
    return RowTools(tuple(choices), different[0] if different else picked or dimension.instrument)


def _words(tool: str) -> str:
    return BY_EYE if tool == PHOTO else tool_words(tool)

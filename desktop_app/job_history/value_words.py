"""Values of the record in plain words: people, kinds, days, money and lengths by name and unit."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any, Literal

from desktop_app.figures_shown import figure
from desktop_app.job_history.job_rows import Row
from desktop_app.job_history.table_words import ColumnWords, How
from desktop_app.language import as_shown, tr
from desktop_app.parts_compared.instruments.instrument import tool_words
from desktop_app.parts_compared.pair_view import ORIGINS
from desktop_app.parts_compared.part_kinds.kind_names import place_words
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.shown_value import amount
from desktop_app.repair_jobs.concern_conditions import condition_words
from desktop_app.repair_jobs.distance import distance_in_words, from_miles
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.our_words import NOTHING as OURS_NOTHING
from desktop_app.repair_jobs.our_words import WHY_UNREAD
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.proof_steps import STEPS
from desktop_app.repair_jobs.self_tests import monitor_words
from desktop_app.repair_jobs.systems import system_name
from desktop_app.repair_jobs.who_did_what import work_words
from desktop_app.returns_watched.judgement import return_cause
from desktop_app.returns_watched.return_cost import money

NOTHING = tr("nothing")
LONGEST = 300  # letters of one value; all of it stands in the sealed copy
Values = Mapping[str, Any]
_STEPS = {step.id: step.words for step in STEPS}
_ORIGINS = dict(ORIGINS)
_OURS = {*WHY_UNREAD, OURS_NOTHING}


@dataclass(frozen=True, slots=True)
class ShopSpeech:
    """How a shop speaks: its money, the car's unit, the shop's unit, the names of what has an id.

    `names` are those of rows; `rows` are the job's own rows, each with all of its values.
    """

    currency: str = "$"
    odometer_unit: Literal["mi", "km"] = "mi"
    distance_unit: Literal["mi", "km"] = "mi"
    kinds: Mapping[str, PartKind] = field(default_factory=dict)
    symptoms: Mapping[str, str] = field(default_factory=dict)
    names: Mapping[Row, str] = field(default_factory=dict)
    rows: Mapping[Row, Values] = field(default_factory=dict)


def value_in_words(value: Any, column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    """Return one value of a column in words; `values` are those of its whole row.

    What was changed from outside into something that no column of its sort holds is shown as it is.
    """
    if value is None or value == "":
        return NOTHING
    if column.says is not None and value in column.says:
        return column.says[value]
    try:
        said = _TOLD[column.how](value, column, values, speech)
    except (ValueError, TypeError, KeyError, ArithmeticError):
        said = str(value)
    return said if len(said) <= LONGEST else f"{said[:LONGEST]}…"


def dimension_of(values: Values, speech: ShopSpeech) -> Dimension | None:
    """Return the dimension that a reading or a limit is about, where it is known."""
    kind = _kind_of(values, speech)
    return kind.dimension(values.get("dimension", "")) if kind else None


def _kind_of(values: Values, speech: ShopSpeech) -> PartKind | None:
    pair = speech.rows.get(("pair", values.get("pair_id", 0)), {})
    return speech.kinds.get(pair.get("part_kind", ""))


def moment_in_words(at: str) -> str:
    """Return a kept day, or a moment with its time of day: "16 November 2026, 12:05"."""
    moment = datetime.fromisoformat(at)
    day = day_in_words(moment.date())
    return f"{day}, {moment:%H:%M}" if len(at) > 10 else day


def _row(value: Any, column: ColumnWords, _values: Values, speech: ShopSpeech) -> str:
    return speech.names.get(
        (column.table, value), tr("one that is gone (its number was {number})", number=value)
    )


def _dimension(value: Any, _column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    dimension = dimension_of(values, speech)
    return dimension.label if dimension and dimension.name == value else str(value)


def _reading(value: Any, _column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    dimension = dimension_of(values, speech)
    return amount(value, dimension.unit) if dimension else figure(value, "g")


def _causes(value: Any, _column: ColumnWords, _values: Values, _speech: ShopSpeech) -> str:
    listed = json.loads(value)
    return ", ".join(map(_cause, listed)) if isinstance(listed, list) else str(value)


def _cause(identity: Any) -> str:
    cause = return_cause(identity)
    return cause.words if cause else str(identity)


def _figures(value: Any, *_rest: Any) -> str:
    return tr("{letters:,} letters of figures, whole in the sealed copy", letters=len(str(value)))


def _typed(value: Any, *_rest: Any) -> str:
    return f"“{value}”" if isinstance(value, str) else str(value)


def _term(value: Any, *_rest: Any) -> str:
    return _typed(tr(value) if isinstance(value, str) else value)


def _ours(value: Any, *_rest: Any) -> str:
    return _typed(as_shown(value, _OURS))


def _instrument(value: Any, *_rest: Any) -> str:
    return _typed(tool_words(value))


def _seen(value: Any, _column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    dimension = dimension_of(values, speech)
    return _typed(dimension.word_said(value) if dimension else value)


def _state_of_part(value: Any, _column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    kind = _kind_of(values, speech)
    return _typed(kind.term_words(value) if kind else value)


def _place(value: Any, _column: ColumnWords, values: Values, speech: ShopSpeech) -> str:
    if not isinstance(value, str):
        return _typed(value)
    return _typed(place_words(value, values.get("part_kind", ""), speech.kinds))


def _on_a_list(value: Any, _column: ColumnWords, values: Values, _speech: ShopSpeech) -> str:
    """Tell of a check in words of ours, as it stands on a list; a finding as it was typed."""
    return _typed(value) if values.get("kind") == "inspection" else _term(value)


_TOLD: dict[How, Callable[[Any, ColumnWords, Values, ShopSpeech], str]] = {
    "words": _typed,
    "term": _term,
    "ours": _ours,
    "on a list": _on_a_list,
    "instrument": _instrument,
    "seen": _seen,
    "state of a part": _state_of_part,
    "place": _place,
    "yes": lambda value, *_: {1: tr("yes"), 0: tr("no")}[value],
    "money": lambda value, _c, _v, speech: money(value, speech.currency),
    "odometer": lambda value, _c, _v, speech: distance_in_words(value, speech.odometer_unit),
    "miles": lambda value, _c, _v, speech: distance_in_words(
        from_miles(value, speech.distance_unit), speech.distance_unit
    ),
    "hours": lambda value, *_: figure(value, "g"),
    "mm": lambda value, *_: amount(value, "mm"),
    "number": lambda value, *_: (
        figure(value, ",") if isinstance(value, int) else figure(value, "g")
    ),
    "moment": lambda value, *_: moment_in_words(value),
    "row": _row,
    "above": _row,
    "kind": lambda value, _c, _v, speech: (
        speech.kinds[value].name if value in speech.kinds else str(value)
    ),
    "system": lambda value, *_: system_name(value),
    "symptom": lambda value, _c, _v, speech: speech.symptoms.get(value, str(value)),
    "condition": lambda value, *_: condition_words(value),
    "monitor": lambda value, *_: monitor_words(value),
    "step": lambda value, *_: _STEPS.get(value, str(value)),
    "origin": lambda value, *_: _ORIGINS.get(value, str(value)),
    "dimension": _dimension,
    "reading": _reading,
    "limit": _reading,
    "cause": lambda value, *_: _cause(value),
    "causes": _causes,
    "level": lambda value, *_: ProofLevel(value).word,
    "work": lambda value, *_: work_words(value),
    "figures": _figures,
    "inner": _typed,
}

"""Questions about readings that look mistyped, exchanged or copied: asked, never decided."""

from __future__ import annotations

from collections.abc import Container, Mapping, Sequence

from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_NAMES
from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.dimension_sentence import label_of
from desktop_app.parts_compared.instruments.instrument import Instrument, instrument_for
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import SIDES, ConditionSeen, Reading
from desktop_app.parts_compared.reading_off import (
    apart_question,
    off_question,
    reading_off,
    two_apart,
)
from desktop_app.parts_compared.rounded_off import rounded_questions
from desktop_app.parts_compared.typed_value import unit_question
from desktop_app.shop_record.question import Question, questions_of

#: Dimensions with one equal reading each on both sides before that is odd. A reading in steps
#: repeats itself by chance now and then (common practice, no source).
MOST_ALIKE = 4


def questions_about(
    kind: PartKind,
    judged: Sequence[DimensionComparison],
    readings: Sequence[Reading],
    conditions: Sequence[ConditionSeen],
    instruments: Mapping[str, Instrument],
) -> tuple[Question, ...]:
    """Return what to ask: inches for millimetres, the sides exchanged, one side copied.

    The answers are kept by the dimensions' names in the program's own words.
    """

    def ask(kind: PartKind) -> tuple[str, ...]:
        inside = _inside(kind, readings)
        return (
            *_units(kind, judged, inside),
            *inside.values(),
            *_exchanged(kind, judged, conditions),
            *_copied(kind, readings, instruments),
            *rounded_questions(kind.dimensions, readings, instruments),
        )

    return questions_of(ask(kind), lambda: ask(_as_written(kind)))


def _as_written(kind: PartKind) -> PartKind:
    dimensions = (one._replace(label=one.plain) for one in kind.dimensions)
    return kind._replace(dimensions=tuple(dimensions))


def _units(
    kind: PartKind, judged: Sequence[DimensionComparison], inside: Container[tuple[str, str]]
) -> list[str]:
    """Ask where one side, or both, were probably read in the other unit; once a dimension.

    A side of which one reading is asked about is left out: its mean says nothing.
    """
    questions = []
    for dimension, one in zip(kind.dimensions, judged, strict=True):
        if dimension.unit != "mm" or dimension.role not in ("same", "restored"):
            continue
        sides = (("replacement", one.replacement), ("removed", one.removed))
        sizes = [
            value.value
            for side, value in sides
            if value is not None and (dimension.name, side) not in inside
        ]
        lengths = [size for size in sizes if isinstance(size, float)]
        other = lengths[1] if len(lengths) == 2 else None
        asked = [unit_question(lengths[0], other, dimension.typical)] if lengths else []
        asked += [unit_question(size, None, dimension.typical) for size in lengths]
        question = next((words for words in asked if words), None)
        if question:
            questions.append(f"{label_of(dimension)}: {question}")
    return questions


def _inside(kind: PartKind, readings: Sequence[Reading]) -> dict[tuple[str, str], str]:
    """Ask where readings of one part can't all be right, by dimension and side."""
    questions = {}
    for dimension in kind.dimensions:
        for side in SIDES if dimension.role not in ("count", "word", "orientation") else ():
            found = (v for v in _values(dimension, readings, side) if isinstance(v, float | int))
            asked = _inside_one([float(one) for one in found], dimension.unit)
            if asked:
                questions[dimension.name, str(side)] = tr(
                    "{label}, {part}: {question}",
                    label=label_of(dimension),
                    part=SIDE_NAMES[side],
                    question=asked,
                )
    return questions


def _inside_one(values: Sequence[float], unit: str) -> str:
    off = reading_off(values, unit)
    if off is not None:
        return off_question(off, unit)
    apart = len(values) > 1 and unit == "mm" and min(values) > 0
    if apart and unit_question(min(values), max(values)):
        return tr(
            "readings of one part are about 25.4 times apart. Was one of them read in inches?"
        )
    return apart_question(values, unit) if two_apart(values, unit) else ""


def _exchanged(
    kind: PartKind, judged: Sequence[DimensionComparison], conditions: Sequence[ConditionSeen]
) -> list[str]:
    """Ask where everything that wear moves says that the old part is the fresh one."""
    worn = [
        dimension.label
        for dimension, one in zip(kind.dimensions, judged, strict=True)
        if one.verdict == "worse than the old one"
    ]
    fresh = [one for one in judged if one.verdict == "restored"]
    seen = {one.side for one in conditions for term in one.terms if not _may_be_new(kind, term)}
    if not fresh and worn:
        labels = tr(" and ").join(worn[:3])
        return [
            tr(
                "By {labels} the old part is the fresh one. Were the two sides exchanged?",
                labels=labels,
            )
        ]
    if not fresh and seen == {"replacement"} and any(_equal(one) for one in judged):
        return [tr("Only the new part is noted as worn. Were the two sides exchanged?")]
    return []


def _may_be_new(kind: PartKind, term: str) -> bool:
    known = kind.condition(term)
    return known is not None and known.allowed_when_new


def _equal(one: DimensionComparison) -> bool:
    return one.removed is not None and one.replacement is not None


def _copied(
    kind: PartKind, readings: Sequence[Reading], instruments: Mapping[str, Instrument]
) -> list[str]:
    """Ask where the two sides were read exactly alike more often than readings repeat."""
    repeated, single = [], []
    for dimension in kind.dimensions:
        old, new = (_values(dimension, readings, side) for side in ("removed", "replacement"))
        if not old or old != new or not _scatters(dimension, readings, instruments):
            continue
        if (len(old) > 1 and len(set(old)) > 1) or (dimension.role == "restored" and len(old) > 1):
            repeated.append(dimension.label)
        else:
            single.append(dimension.label)
    if repeated:
        labels = tr(" and ").join(repeated[:3])
        return [
            tr(
                "{labels}: the same readings on both parts. Was one copied?",
                labels=labels[:1].upper() + labels[1:],
            )
        ]
    if len(single) >= MOST_ALIKE:
        return [
            tr(
                "{dimensions} dimensions read exactly alike on both parts. Was one side copied?",
                dimensions=len(single),
            )
        ]
    return []


def _values(dimension: Dimension, readings: Sequence[Reading], side: str) -> tuple[object, ...]:
    mine = [one for one in readings if one.dimension == dimension.name and one.side == side]
    return tuple(value for one in mine for value in one.values)


def _scatters(
    dimension: Dimension, readings: Sequence[Reading], instruments: Mapping[str, Instrument]
) -> bool:
    """Whether repeated readings of it scatter at all: what is counted or read off does not."""
    if dimension.role in ("count", "word"):
        return False
    names = {one.instrument for one in readings if one.dimension == dimension.name}
    tools = [instrument_for(name, dimension, instruments) for name in names]
    return all(tool is not None and 0 < tool.resolution <= tool.usual_spread * 4 for tool in tools)

"""A removed part against its replacement: fits, stop and look, or not enough measured."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import (
    DimensionComparison,
    PairComparison,
    PairVerdict,
)
from desktop_app.parts_compared.condition_check import ConditionSentences, check_conditions
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.dimension_sentence import shows_no_wear
from desktop_app.parts_compared.dimension_verdict import judge_dimension
from desktop_app.parts_compared.instruments.instrument import Instrument, tool_words
from desktop_app.parts_compared.pair_questions import questions_about
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import ConditionSeen, Explanation, MakerLimit, Reading


def compare(
    kind: PartKind,
    readings: Sequence[Reading],
    conditions: Sequence[ConditionSeen] = (),
    instruments: Mapping[str, Instrument] | None = None,
    explained: Sequence[Explanation] = (),
    limits: Sequence[MakerLimit] = (),
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Judge a pair. The same inputs always give the same answer, in whatever order they come.

    `instruments` are the shop's own by name; others have their usual figures. `limits` are the
    maker's for dimensions of the role "limit". A yes or no is wrong at most 1 - confidence.
    """
    drawer = instruments or {}
    entered = {one.dimension: (one.at_least, one.at_most) for one in limits}
    reasons_given = {one.dimension: one for one in explained}
    judged = tuple(
        _explained(
            judge_dimension(one, readings, drawer, entered.get(one.name), confidence),
            reasons_given.get(one.name),
        )
        for one in kind.dimensions
    )
    sentences = check_conditions(kind, conditions)
    questions = questions_about(kind, judged, readings, conditions, drawer)
    steps = _next_steps(kind, judged)
    return PairComparison(
        kind=kind.id,
        verdict=_pair_verdict(judged, sentences),
        dimensions=judged,
        reasons=(*questions, *_reasons(judged, sentences), *_orphans(kind, readings)),
        next_steps=steps,
        questions=questions,
    )


def _pair_verdict(
    judged: Sequence[DimensionComparison], conditions: ConditionSentences
) -> PairVerdict:
    if conditions.against or any(one.settled_against for one in judged):
        return "stop and look"
    needed = [one for one in judged if one.essential] or judged
    return "fits" if all(one.settled_for for one in needed) else "not enough measured"


def _explained(judged: DimensionComparison, explanation: Explanation | None) -> DimensionComparison:
    if explanation is None or not judged.settled_against:
        return judged
    why = f": {explanation.why}" if explanation.why else ""
    said = tr(
        "{sentence} Explained by {by}{why}.", sentence=judged.sentence, by=explanation.by, why=why
    )
    return replace(judged, verdict="explained", sentence=said)


def _reasons(
    judged: Sequence[DimensionComparison], conditions: ConditionSentences
) -> tuple[str, ...]:
    """Order the sentences: what speaks against it, what is open, what speaks for it."""
    against = [one.sentence for one in judged if one.settled_against]
    close = [one.sentence for one in judged if one.verdict == "too close to tell"]
    open_ones = [
        one.sentence
        for one in judged
        if one.verdict == "not measured" and (one.essential or one.removed or one.replacement)
    ]
    speaking_for = [one.sentence for one in judged if one.settled_for]
    return (*against, *conditions.against, *close, *open_ones, *speaking_for, *conditions.notes)


def _next_steps(kind: PartKind, judged: Sequence[DimensionComparison]) -> tuple[str, ...]:
    """Say what to measure next for the essential dimensions that are still open."""
    steps = []
    for dimension, one in zip(kind.dimensions, judged, strict=True):
        if not one.essential or one.settled_for or one.settled_against:
            continue
        if one.verdict == "not measured":
            steps.append(_measure(dimension, one))
        else:
            steps.append(_settle(dimension, one))
    return tuple(steps)


def _settle(dimension: Dimension, one: DimensionComparison) -> str:
    """Say what would probably settle a dimension that is too close to tell."""
    if dimension.role in ("count", "word"):
        if dimension.role == "count":
            return tr("Count {label} again on both parts.", label=one.label)
        return tr("Look at {label} again on both parts.", label=one.label)
    on_one = dimension.role == "limit"
    if one.readings_needed is not None:
        return _read_more(one.label, one.readings_needed, on_one)
    if shows_no_wear(dimension, one.difference or 0.0, one.difference_expanded_uncertainty or 0.0):
        return tr("Look whether the old part is worn at all: {label}.", label=one.label)
    if not on_one and _two_instruments(one):
        return tr("Measure {label} on both parts with one instrument.", label=one.label)
    return _measure_finer(one.label, one.finer, on_one)


def _read_more(label: str, more: int, on_one: bool) -> str:
    if on_one and more == 1:
        return tr("Take 1 more reading of {label} on the replacement.", label=label)
    if on_one:
        return tr(
            "Take {more} more readings of {label} on the replacement.", more=more, label=label
        )
    if more == 1:
        return tr("Take 1 more reading of {label} on each side.", label=label)
    return tr("Take {more} more readings of {label} on each side.", more=more, label=label)


def _measure_finer(label: str, finer: str | None, on_one: bool) -> str:
    if finer is None and on_one:
        return tr("Measure {label} again with a finer instrument, on the replacement.", label=label)
    if finer is None:
        return tr("Measure {label} again with a finer instrument, both parts alike.", label=label)
    tool = tool_words(finer)
    if on_one:
        return tr(
            "Measure {label} again with the {finer}, on the replacement.", label=label, finer=tool
        )
    return tr("Measure {label} again with the {finer}, both parts alike.", label=label, finer=tool)


def _two_instruments(one: DimensionComparison) -> bool:
    sides = [side.instrument for side in (one.removed, one.replacement) if side is not None]
    return len(set(sides)) > 1


def _measure(dimension: Dimension, one: DimensionComparison) -> str:
    if one.replacement is not None and (dimension.role == "limit" or one.removed is not None):
        return tr("Enter what is still missing to judge {label}.", label=one.label)
    where = tr("both parts")
    if one.removed is not None or dimension.role == "limit":
        where = tr("the replacement")
    elif one.replacement is not None:
        where = tr("the removed part")
    tool = dimension.instrument
    with_tool = "" if tool in ("eye", "label") else f" ({tool_words(tool)})"
    if dimension.role == "count":
        said = tr("Count {label} on {where}{tool}.", label=one.label, where=where, tool=with_tool)
    elif dimension.role == "word":
        said = tr("Look at {label} on {where}{tool}.", label=one.label, where=where, tool=with_tool)
    else:
        said = tr("Measure {label} on {where}{tool}.", label=one.label, where=where, tool=with_tool)
    return said


def _orphans(kind: PartKind, readings: Sequence[Reading]) -> tuple[str, ...]:
    known = {one.name for one in kind.dimensions}
    strange = sorted({one.dimension for one in readings} - known)
    return tuple(
        tr(
            "A reading of '{name}' is kept, but this part kind doesn't have that dimension.",
            name=name,
        )
        for name in strange
    )

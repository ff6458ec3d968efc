"""A removed part against its replacement: fits, stop and look, or not enough measured."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace

from desktop_app.parts_compared.comparison import (
    DimensionComparison,
    PairComparison,
    PairVerdict,
)
from desktop_app.parts_compared.condition_check import ConditionSentences, check_conditions
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.dimension_sentence import shows_no_wear
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_questions import questions_about
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import ConditionSeen, Explanation, MakerLimit, Reading
from desktop_app.parts_compared.verdict import judge_dimension


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
    said = f"{judged.sentence} Explained by {explanation.by}{why}."
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
        verb = "Count" if dimension.role == "count" else "Look at"
        return f"{verb} {one.label} again on both parts."
    on_one = dimension.role == "limit"
    if one.readings_needed is not None:
        more = one.readings_needed
        noun = "reading" if more == 1 else "readings"
        where = "the replacement" if on_one else "each side"
        return f"Take {more} more {noun} of {one.label} on {where}."
    if shows_no_wear(dimension, one.difference or 0.0, one.difference_expanded_uncertainty or 0.0):
        return f"Look whether the old part is worn at all: {one.label}."
    if not on_one and _two_instruments(one):
        return f"Measure {one.label} on both parts with one instrument."
    tool = f"the {one.finer}" if one.finer else "a finer instrument"
    where = "on the replacement" if on_one else "both parts alike"
    return f"Measure {one.label} again with {tool}, {where}."


def _two_instruments(one: DimensionComparison) -> bool:
    sides = [side.instrument for side in (one.removed, one.replacement) if side is not None]
    return len(set(sides)) > 1


def _measure(dimension: Dimension, one: DimensionComparison) -> str:
    if one.replacement is not None and (dimension.role == "limit" or one.removed is not None):
        return f"Enter what is still missing to judge {one.label}."
    where = "both parts"
    if one.removed is not None or dimension.role == "limit":
        where = "the replacement"
    elif one.replacement is not None:
        where = "the removed part"
    verb = {"count": "Count", "word": "Look at"}.get(dimension.role, "Measure")
    tool = "" if dimension.instrument in ("eye", "label") else f" ({dimension.instrument})"
    return f"{verb} {one.label} on {where}{tool}."


def _orphans(kind: PartKind, readings: Sequence[Reading]) -> tuple[str, ...]:
    known = {one.name for one in kind.dimensions}
    strange = sorted({one.dimension for one in readings} - known)
    return tuple(
        f"A reading of '{name}' is kept, but this part kind doesn't have that dimension."
        for name in strange
    )

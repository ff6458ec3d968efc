"""What a gauge study says, in sentences."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.gauge_plan import GaugePlan
from desktop_app.parts_compared.instruments.gauge_study import (
    ENOUGH_DOF,
    METHOD,
    POOL_ABOVE,
    GaugeReading,
    GaugeRR,
    StudyResult,
)
from desktop_app.parts_compared.instruments.instrument import Instrument, tool_words
from desktop_app.parts_compared.shown_value import amount

_COMPONENT = {
    "interaction": tr("what depends on person and part together"),
    "people": tr("what lies between the people"),
    "parts": tr("what lies between the parts"),
}


def study_sentences(
    result: StudyResult, tool: Instrument, unit: str = "", factor: float = 1.0
) -> tuple[str, ...]:
    """Return what the readings say, the repeatability first, the method last.

    `factor` turns a value of the instrument's unit into the `unit` that is shown.
    """
    shown = unit or tool.unit
    spread = result.repeatability
    if spread is None:
        return (tr("Nothing was read twice yet: read the same part again, taken off in between."),)
    said = [_repeats(spread, result.dof, tool, shown, factor)]
    if result.full is None:
        said.append(
            tr("From the repeats alone, pooled: not everyone has read every part equally often.")
        )
        return tuple(said)
    said += _between(result.full, shown, factor)
    said += _parts(result.full, shown, factor)
    said += [
        tr(
            "{component} came out below nought and counts as nought.",
            component=_COMPONENT[one].capitalize(),
        )
        for one in result.full.nought
    ]
    said.append(_method(result.full))
    return tuple(said)


def missing_sentence(plan: GaugePlan, readings: Sequence[GaugeReading], who: str = "") -> str:
    """Return how many readings are still too few for the study to count."""
    more = plan.too_few(readings, who)
    left = len(plan.empty_places(readings))
    if more is None:
        return tr(
            "These readings will be too few: {enough_dof} repeats are needed, beyond "
            "the first reading of each part by each person. Plan more repeats.",
            enough_dof=ENOUGH_DOF,
        )
    if more:
        return tr("Still too few to count: {readings} more at least.", readings=_readings(more))
    if left:
        return tr("Enough to count; the plan still asks for {readings}.", readings=_readings(left))
    return tr("Enough to count; the plan is complete.")


def too_few_sentence(result: StudyResult) -> str:
    """Return why a study can't be used yet."""
    return tr(
        "The study has {repeats} repeats so far and needs {enough_dof}, beyond the "
        "first reading of each part by each person.",
        repeats=result.repeats,
        enough_dof=ENOUGH_DOF,
    )


def _readings(count: int) -> str:
    return tr("1 reading") if count == 1 else tr("{count} readings", count=count)


def _figure(spread: float, unit: str, factor: float) -> str:
    """Return a standard deviation with two digits."""
    return amount(float(f"{spread * factor:.2g}"), unit)


def _repeats(spread: float, dof: int, tool: Instrument, unit: str, factor: float) -> str:
    if spread == 0:
        return tr(
            "All repeats are alike: the scatter hides within one step of {amount}, "
            "which is counted for itself ({dof} degrees of freedom).",
            amount=amount(tool.resolution * factor, unit),
            dof=dof,
        )
    return tr(
        "In one hand the {name} repeats itself to {figure} (standard deviation, {dof} "
        "degrees of freedom).",
        name=tool_words(tool.name),
        figure=_figure(spread, unit, factor),
        dof=dof,
    )


def _between(full: GaugeRR, unit: str, factor: float) -> list[str]:
    if full.between_people is None:
        return []
    if full.between_people == 0:
        return [tr("No difference between the people shows beyond that.")]
    said = [
        tr(
            "Between the people it is {between}; with the repeats {with_repeats}. Let the same "
            "person read the old part and the new one.",
            between=_figure(full.between_people, unit, factor),
            with_repeats=_figure(full.rr, unit, factor),
        )
    ]
    if full.interaction is not None:
        said.append(tr("How far the people differ depends on the part."))
    return said


def _parts(full: GaugeRR, unit: str, factor: float) -> list[str]:
    if full.parts is None:
        return []
    spread, share = _figure(full.parts, unit, factor), full.share(full.rr)
    if share is None:
        return [tr("The parts differ by {spread} (standard deviation).", spread=spread)]
    if full.groups is None:
        said = tr(
            "The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % "
            "of the whole study variation.",
            spread=spread,
            share=share,
        )
    elif full.groups < 2:
        said = tr(
            "The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % "
            "of the whole study variation and tells no group of them apart from another.",
            spread=spread,
            share=share,
        )
    else:
        said = tr(
            "The parts differ by {spread} (standard deviation); the measuring is {share:.1f} % "
            "of the whole study variation and tells {groups} groups of them apart.",
            spread=spread,
            share=share,
            groups=int(full.groups),
        )
    return [said]


def _method(full: GaugeRR) -> str:
    table = full.anova
    if table.p is None:
        return tr("Method: {method}.", method=METHOD)
    if table.pooled:
        return tr(
            "Method: {method}; person and part together pooled with the repeats "
            "(p = {p:.3f}, above {limit:g}).",
            method=METHOD,
            p=table.p,
            limit=POOL_ABOVE,
        )
    return tr(
        "Method: {method}; person and part together kept apart (p = {p:.3f}, not above {limit:g}).",
        method=METHOD,
        p=table.p,
        limit=POOL_ABOVE,
    )

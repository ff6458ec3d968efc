"""What a gauge study says, in sentences."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.parts_compared.instruments.gauge_plan import GaugePlan
from desktop_app.parts_compared.instruments.gauge_study import (
    ENOUGH_DOF,
    METHOD,
    POOL_ABOVE,
    GaugeReading,
    GaugeRR,
    StudyResult,
)
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.shown_value import amount

_COMPONENT = {
    "interaction": "what depends on person and part together",
    "people": "what lies between the people",
    "parts": "what lies between the parts",
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
        return ("Nothing was read twice yet: read the same part again, taken off in between.",)
    said = [_repeats(spread, result.dof, tool, shown, factor)]
    if result.full is None:
        said.append(
            "From the repeats alone, pooled: not everyone has read every part equally often."
        )
        return tuple(said)
    said += _between(result.full, shown, factor)
    said += _parts(result.full, shown, factor)
    said += [
        f"{_COMPONENT[one].capitalize()} came out below nought and counts as nought."
        for one in result.full.nought
    ]
    said.append(_method(result.full))
    return tuple(said)


def missing_sentence(plan: GaugePlan, readings: Sequence[GaugeReading], who: str = "") -> str:
    """Return how many readings are still too few for the study to count."""
    more = plan.too_few(readings, who)
    left = len(plan.empty_places(readings))
    if more is None:
        return (
            f"These readings will be too few: {ENOUGH_DOF} repeats are needed, beyond the first "
            "reading of each part by each person. Plan more repeats."
        )
    if more:
        return f"Still too few to count: {_readings(more)} more at least."
    if left:
        return f"Enough to count; the plan still asks for {_readings(left)}."
    return "Enough to count; the plan is complete."


def too_few_sentence(result: StudyResult) -> str:
    """Return why a study can't be used yet."""
    return (
        f"The study has {result.repeats} repeats so far and needs {ENOUGH_DOF}, beyond the first "
        "reading of each part by each person."
    )


def _readings(count: int) -> str:
    return "1 reading" if count == 1 else f"{count} readings"


def _figure(spread: float, unit: str, factor: float) -> str:
    """Return a standard deviation with two digits."""
    return amount(float(f"{spread * factor:.2g}"), unit)


def _repeats(spread: float, dof: int, tool: Instrument, unit: str, factor: float) -> str:
    if spread == 0:
        return (
            "All repeats are alike: the scatter hides within one step of "
            f"{amount(tool.resolution * factor, unit)}, which is counted for itself "
            f"({dof} degrees of freedom)."
        )
    return (
        f"In one hand the {tool.name} repeats itself to {_figure(spread, unit, factor)} "
        f"(standard deviation, {dof} degrees of freedom)."
    )


def _between(full: GaugeRR, unit: str, factor: float) -> list[str]:
    if full.between_people is None:
        return []
    if full.between_people == 0:
        return ["No difference between the people shows beyond that."]
    said = [
        f"Between the people it is {_figure(full.between_people, unit, factor)}; with the repeats "
        f"{_figure(full.rr, unit, factor)}. Let the same person read the old part and the new one."
    ]
    if full.interaction is not None:
        said.append("How far the people differ depends on the part.")
    return said


def _parts(full: GaugeRR, unit: str, factor: float) -> list[str]:
    if full.parts is None:
        return []
    said = f"The parts differ by {_figure(full.parts, unit, factor)} (standard deviation)"
    share = full.share(full.rr)
    if share is None:
        return [f"{said}."]
    said += f"; the measuring is {share:.1f} % of the whole study variation"
    if full.groups is None:
        return [f"{said}."]
    count = max(1, int(full.groups))
    groups = (
        "no group of them apart from another" if count == 1 else f"{count} groups of them apart"
    )
    return [f"{said} and tells {groups}."]


def _method(full: GaugeRR) -> str:
    table = full.anova
    if table.p is None:
        return f"Method: {METHOD}."
    way = "above" if table.pooled else "not above"
    kept = "pooled with the repeats" if table.pooled else "kept apart"
    return (
        f"Method: {METHOD}; person and part together {kept} "
        f"(p = {table.p:.3f}, {way} {POOL_ABOVE:g})."
    )

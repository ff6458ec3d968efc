"""A pair judged for printing: in millimetres, or told in inches where the shop reads inches."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from datetime import date

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import PairComparison
from desktop_app.parts_compared.decision import CONFIDENCE
from desktop_app.parts_compared.instruments.instrument import (
    Instrument,
    tool_words,
    usual_instrument,
)
from desktop_app.parts_compared.instruments.instrument_check import is_overdue
from desktop_app.parts_compared.instruments.photo_marks import BY_EYE, PHOTO
from desktop_app.parts_compared.judged_in_inches import judge_in_inches, tool_in_inches
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.shown_value import amount


def judge_in(
    length_unit: str,
    pair: PairView,
    kind: PartKind,
    drawer: Mapping[str, Instrument],
    confidence: float = CONFIDENCE,
) -> PairComparison:
    """Compare the two parts and tell lengths in the shop's unit ("mm" or "inch").

    What was decided in millimetres stands. A dimension whose inches would come out otherwise,
    by rounding or for want of an instrument, is told in millimetres.
    """
    compared = judge(pair, kind, drawer, confidence)
    if length_unit != "inch":
        return compared
    told = judge_in_inches(pair, kind, drawer, confidence)
    both = zip(compared.dimensions, told.dimensions, strict=True)
    dimensions = tuple(
        inches if inches.verdict == millimetres.verdict else millimetres
        for millimetres, inches in both
    )
    return replace(compared, dimensions=dimensions)


def instrument_words(
    name: str, unit: str, length_unit: str, own: Instrument | None, today: date
) -> str:
    """Describe an instrument by what it can see; `own` is the shop's, else the usual figures.

    What it repeats to is said, by the shop's own study or usually, and that its check is overdue.
    """
    ours = own is not None and own.unit == unit
    tool = own if ours else usual_instrument(name, unit)
    called = BY_EYE if name == PHOTO else tool_words(name)
    if tool is None or (tool.resolution == 0 and tool.max_error == 0):
        return called
    if length_unit == "inch" and unit == "mm":
        tool = tool_in_inches(tool)
    step, error = (
        amount(float(f"{figure:.3g}"), tool.unit) for figure in (tool.resolution, tool.max_error)
    )
    said = [tr("reads to {step}", step=step), tr("permitted error ± {error}", error=error)]
    if tool.repeatability is not None:
        spread = amount(float(f"{tool.repeatability:.2g}"), tool.unit)
        said.append(
            tr("repeats to {spread} by our own study", spread=spread)
            if ours
            else tr("repeats to {spread}", spread=spread)
        )
    if not ours:
        said.append(tr("usual figures"))
    if is_overdue(tool.checked_on, today):
        said.append(
            tr("last checked {checked_on}, so its check is overdue", checked_on=tool.checked_on)
        )
    return f"{called} ({', '.join(said)})"

"""Readings that a person seems to have rounded: whole millimetres off a tool that shows hundredths.

How sure a reading is comes from its tool. Written down as 27 where the tool showed 27.34 it is told
with fifty times less doubt than it has, so it is asked about; 27.00 is kept as the same number.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import Instrument, instrument_for
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.reading import Reading
from desktop_app.parts_compared.shown_value import amount

#: Steps of the tool. Two readings both fall on a hundredth one by chance once in 10,000 times.
COARSE = 100
FEWEST = 2


def rounded_questions(
    dimensions: Sequence[Dimension],
    readings: Sequence[Reading],
    instruments: Mapping[str, Instrument],
) -> tuple[str, ...]:
    """Ask once about all dimensions that were read so."""
    steps = ((one.label, _coarse_step(one, readings, instruments)) for one in dimensions)
    found = {label: step for label, step in steps if step}
    if not found:
        return ()
    labels, step = tr(" and ").join([*found][:3]), max(found.values())
    return (
        tr(
            "{labels}: every reading is a whole number of {step}, and the tool shows {shown}. "
            "Were they rounded?",
            labels=labels[:1].upper() + labels[1:],
            step=amount(step, "mm"),
            shown=amount(step / COARSE, "mm"),
        ),
    )


def _coarse_step(
    dimension: Dimension, readings: Sequence[Reading], instruments: Mapping[str, Instrument]
) -> float:
    """Return what all readings of a length are multiples of, where its tools show far less; or 0.

    Those taken from photos were reckoned, and nobody rounded them.
    """
    if dimension.unit != "mm":
        return 0.0
    mine = [one for one in readings if one.dimension == dimension.name and one.photo is None]
    tools = [instrument_for(one.instrument, dimension, instruments) for one in mine]
    values = [float(value) for one in mine for value in one.values if not isinstance(value, str)]
    if len(values) < FEWEST or not all(values) or None in tools:
        return 0.0
    step = COARSE * max(tool.resolution for tool in tools if tool is not None)
    return step if step and all(_is_whole(value / step) for value in values) else 0.0


def _is_whole(steps: float) -> bool:
    return abs(steps - round(steps)) < 1e-6

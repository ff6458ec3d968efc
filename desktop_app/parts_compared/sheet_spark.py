"""The spark path on the sheet: what the old parts asked of the coil, what the new ones ask."""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.parts_compared.compressed_air import Air
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Cautions,
    Heading,
    Room,
    SparkBar,
    SparkPicture,
    Words,
)
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.spark import (
    ESTIMATE,
    EVEN_FIELD,
    FULL_CYLINDER,
    HIGH_VOLTAGE,
    SERIES,
    Gap,
    SparkPath,
    Volts,
    change_sentence,
    gap_volts,
)
from desktop_app.parts_compared.spark_gaps import GapsTaken, NumberedPair, plug_gaps, rotor_gaps

# Where nobody wrote the engine's own. Common practice, no source.
ASSUMED_RATIO = 10.0
COLOURS: dict[Side, str] = {"removed": "#E69F00", "replacement": "#0072B2"}
NAMES: dict[Side, str] = {"removed": tr("Old parts"), "replacement": tr("New parts")}
ROW, FOOT, LABEL, NUMBERS = 26.0, 30.0, 74.0, 138.0  # points


def spark_blocks(sheet: SheetFacts, ratio: float | None = None) -> Iterator[Block]:
    """Give the spark path of a job's rotor, cap and plugs; nothing where no gap was read.

    `ratio` is the engine's compression ratio; without it a usual one is taken, and said.
    """
    pairs = [
        NumberedPair(number, printed.compared, "" if printed.kind is None else printed.kind.sort)
        for number, printed in enumerate(sheet.pairs, 1)
        if printed.compared is not None and printed.pair.fitted
    ]
    rotor, plug = rotor_gaps(pairs), plug_gaps(pairs)
    if rotor is None and plug is None:
        return
    paths = {side: _path(side, rotor, plug, ratio or ASSUMED_RATIO) for side in SIDES}
    bars = tuple(bar for side in SIDES if (bar := _bar(side, paths[side])) is not None)
    outside = dict.fromkeys(words for path in paths.values() for words in path.outside)
    yield Room(60.0)  # the picture stays with its heading
    yield Heading(tr("What the spark asks of the coil"))
    change = change_sentence(paths["removed"], paths["replacement"])
    if change:
        yield Words(change, look="strong")
    if bars:
        yield SparkPicture(tr("kilovolts (kV)"), bars)
    for side in SIDES:
        if words := _gap_words(paths[side]):
            yield Words(words, NAMES[side])
    for words in outside:
        yield Words(words)
    both = all(path.valid for path in paths.values())
    yield Words(f"{ESTIMATE} {SERIES if both else _alone(rotor, plug)}")
    if plug is not None:
        yield Words(FULL_CYLINDER)
    yield Words(_taken(rotor, plug, ratio), look="quiet")
    yield Cautions(HIGH_VOLTAGE)


def _path(side: Side, rotor: GapsTaken | None, plug: GapsTaken | None, ratio: float) -> SparkPath:
    air = Air()
    one, why_one = _volts(tr("rotor gap"), _gap(side, rotor), air)
    other, why_other = _volts(tr("plug gap"), _gap(side, plug), air.compressed(ratio))
    return SparkPath(one, other, (*why_one, *why_other))


def _gap(side: Side, taken: GapsTaken | None) -> Gap | None:
    if taken is None:
        return None
    return taken.before if side == "removed" else taken.after


def _volts(name: str, gap: Gap | None, air: Air) -> tuple[Volts | None, tuple[str, ...]]:
    return (None, ()) if gap is None else gap_volts(name, gap, air)


def _bar(side: Side, path: SparkPath) -> SparkBar | None:
    """Return the bar of one side: larger to sum, or the one gap that is known."""
    low = path.larger or path.rotor or path.plug
    high = path.sum or low
    if low is None or high is None:
        return None
    words = (
        tr("{low:.1f} to {high:.1f} kV", low=low.kv, high=high.kv)
        if path.valid
        else f"{figure(low.kv, '.1f')} kV"
    )
    drawn = tr("{low:.1f} to {high:.1f} kV", low=low.low_kv, high=high.high_kv)
    name = "" if path.valid else tr("rotor gap alone") if path.rotor else tr("plug gap alone")
    said = (
        tr("{kilovolts} (in all {range})", kilovolts=words, range=drawn)
        if path.valid
        else f"{words} ({drawn})"
    )
    return SparkBar(side, name, low.kv, high.kv, low.low_kv, high.high_kv, said)


def _gap_words(path: SparkPath) -> str:
    """Say what each gap of one side asks for, and both together; nothing where one is not known."""
    if path.larger is None or path.sum is None:
        return ""
    named = ((tr("rotor gap"), path.rotor), (tr("plug gap"), path.plug))
    said = [
        tr("{gap} about {kilovolts}", gap=name, kilovolts=volts.words())
        for name, volts in named
        if volts is not None
    ]
    said.append(tr("larger of the two {kilovolts}", kilovolts=path.larger.words()))
    said.append(tr("sum {kilovolts}", kilovolts=path.sum.words()))
    return f"{'; '.join(said)}."


def _alone(rotor: GapsTaken | None, plug: GapsTaken | None) -> str:
    if rotor is None or plug is None:
        other = tr("rotor gap") if rotor is None else tr("plug gap")
        return tr("The {gap} was not measured; what it asks for is not in this picture.", gap=other)
    return tr("Where a gap has no number, what it asks for is not in this picture.")


def _taken(rotor: GapsTaken | None, plug: GapsTaken | None, ratio: float | None) -> str:
    air = Air()
    words = [taken.words for taken in (rotor, plug) if taken is not None]
    words.append(
        tr(
            "Air at {pressure:g} kPa and {temperature:g} °C.",
            pressure=air.pressure_kpa,
            temperature=air.temperature_c,
        )
    )
    if plug is not None:
        words.append(_compression(ratio))
    return " ".join((*words, EVEN_FIELD))


def _compression(ratio: float | None) -> str:
    if ratio:
        return tr(
            "Compression {ratio:g} to 1; the squeezed air is taken as denser by that ratio alone.",
            ratio=ratio,
        )
    return tr(
        "Compression {ratio:g} to 1, a usual figure, for the engine's own was not written; the "
        "squeezed air is taken as denser by that ratio alone.",
        ratio=ASSUMED_RATIO,
    )


def spark_drawing(picture: SparkPicture, width: float, plain: str, bold: str) -> Any:
    """Return the picture as a drawing `width` points wide, lettered in the two fonts."""
    from reportlab.graphics.shapes import Drawing, Line, String

    height = FOOT + ROW * len(picture.bars)
    drawing = Drawing(width, height)
    step = _step(max(bar.most for bar in picture.bars))
    steps = math.ceil(max(bar.most for bar in picture.bars) / step)
    scale = (width - LABEL - NUMBERS) / (steps * step)
    for index in range(steps + 1):
        x = LABEL + index * step * scale
        drawing.add(Line(x, FOOT - 6, x, height, strokeColor=_grey(0.8), strokeWidth=0.4))
        mark = figure(index * step, "g")
        drawing.add(String(x, FOOT - 15, mark, fontName=plain, fontSize=7.5, textAnchor="middle"))
    drawing.add(Line(LABEL, FOOT - 6, width - NUMBERS, FOOT - 6, strokeWidth=0.8))
    middle = (LABEL + width - NUMBERS) / 2
    axis = String(middle, 4, picture.axis, fontName=plain, fontSize=7.5, textAnchor="middle")
    drawing.add(axis)
    for row, bar in enumerate(picture.bars):
        y = height - ROW * (row + 0.5)
        for shape in _bar_shapes(bar, y, scale, width, (plain, bold)):
            drawing.add(shape)
    return drawing


def _bar_shapes(
    bar: SparkBar, y: float, scale: float, width: float, fonts: tuple[str, str]
) -> Iterator[Any]:
    from reportlab.graphics.shapes import Line, Rect, String
    from reportlab.lib.colors import HexColor, black

    low, high, least, most = (LABEL + kv * scale for kv in (bar.low, bar.high, bar.least, bar.most))
    plain, bold = fonts
    head = f"{SIDE_SIGNS[bar.side]} {NAMES[bar.side]}"
    yield String(0, y + (1 if bar.name else -3), head, fontName=bold, fontSize=9)
    if bar.name:
        yield String(0, y - 9, bar.name, fontName=plain, fontSize=7.5)
    yield Line(least, y, most, y, strokeWidth=1.2)
    for end in (least, most):
        yield Line(end, y - 4, end, y + 4, strokeWidth=1.2)
    colour = HexColor(COLOURS[bar.side])
    thick = max(high - low, 3.0)
    left = (low + high - thick) / 2
    yield Rect(left, y - 6, thick, 12, fillColor=colour, strokeColor=black, strokeWidth=0.8)
    first, _, rest = bar.words.partition(" (")
    yield String(width - NUMBERS + 8, y + 1, first, fontName=bold, fontSize=9)
    yield String(width - NUMBERS + 8, y - 9, f"({rest}", fontName=plain, fontSize=7.5)


def _step(most: float) -> float:
    """Return a step of 1, 2, 5 or 10 kV, such that about five of them reach the end."""
    return next((step for step in (0.5, 1.0, 2.0, 5.0, 10.0) if most / step <= 7), 20.0)


def _grey(light: float) -> Any:
    from reportlab.lib.colors import Color

    return Color(light, light, light)

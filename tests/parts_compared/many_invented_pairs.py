"""Pairs drawn by hypothesis for invented kinds, near the places where verdicts turn."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from hypothesis import strategies as st

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.many_pairs.many_sides import LOOKED_AT
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.photo_doubt import PhotoDoubt
from desktop_app.parts_compared.reading import (
    SIDES,
    ConditionSeen,
    Explanation,
    MakerLimit,
    Reading,
)
from tests.parts_compared.invented_kinds import dimension, kind, worn

LENGTH = dimension(name="length", label="length", essential=False)
ONE_END = dimension(name="depth", label="depth", allowed=(None, 0.3), essential=False)
TIP = worn(name="tip")
BORE = worn(low=-1.5, high=-0.1, name="bore", label="bore", direction="smaller")
ANYHOW = dimension(name="wear", label="wear", role="restored", allowed=(0.1, 1.5))
ANGLE = dimension(
    name="plug-angle",
    label="plug angle",
    role="orientation",
    unit="deg",
    allowed=(-8.0, 8.0),
    instrument="protractor",
)
HEAT = dimension(name="heat", label="heat", unit="C", instrument="thermometer", allowed=None)
OHMS = dimension(
    name="ohms",
    label="ohms",
    unit="kohm",
    role="limit",
    allowed=(4.9, 5.1),
    instrument="ohmmeter",
    essential=False,
)
RIPPLE = dimension(
    name="ripple", label="ripple", unit="V", role="limit", allowed=None, instrument="oscilloscope"
)
RATED = dimension(
    name="rated", label="rated", unit="A", allowed=(0.0, 0.0), instrument="label", essential=False
)
TEETH = dimension(name="teeth", label="teeth", role="count", unit="", instrument="eye")
COLOUR = dimension(
    name="colour", label="colour", role="word", unit="", instrument="eye", essential=False
)

KINDS: tuple[PartKind, ...] = (
    kind(LENGTH, TIP, ANGLE, TEETH, COLOUR),
    kind(BORE, OHMS, RATED, ONE_END, RIPPLE),
    kind(LENGTH, RATED, COLOUR),
    kind(ANGLE, ANYHOW, HEAT),
    kind(TEETH),
)
#: Their own names, figures that clash, one without any doubt, and one in another unit.
DRAWER: dict[str, Instrument] = {
    "fine": Instrument("fine", "mm", 0.001, 0.002, 0.001, 22.5),
    "twin": Instrument("calliper", "mm", 0.01, 0.03, 0.02),
    "exact": Instrument("exact", "mm", 0.0, 0.0, 0.0),
    "dial": Instrument("dial", "deg", 0.1, 0.1, 0.0),
    "micrometer": Instrument("micrometer", "deg", 1.0, 1.0),
}
NAMES = (
    *(None, None, None, None, "calliper", "calliper", "fine", "twin", "exact", "pin gauge"),
    *("dial", "micrometer", "unheard of"),
)
#: Of one card and height, of another, and one that shares nothing.
MARKS = (
    PhotoDoubt(0.05, 0.02, 0.03, 0.01, "card 1, 10 ± 1 mm up"),
    PhotoDoubt(0.08, 0.02, 0.05, 0.01, "card 1, 10 ± 1 mm up"),
    PhotoDoubt(0.05, 0.02, 0.03, 0.01, "card 2, 10 ± 1 mm up"),
    PhotoDoubt(0.11, 0.04, 0.0, 0.0),
)
TERMS = ("burned tip", "Eroded  TIP", "storage film", "hairline crack", "no cracks", "printed", " ")
WORDS = ("black", "Black", "M8 x 1", "m8×1", "grey", "")


@dataclass(frozen=True, slots=True)
class InventedPair:
    """What was seen of one pair."""

    readings: tuple[Reading, ...]
    conditions: tuple[ConditionSeen, ...] = ()
    explained: tuple[Explanation, ...] = ()
    limits: tuple[MakerLimit, ...] = ()


def _values(one: Dimension) -> st.SearchStrategy[Any]:
    if one.role == "word":
        return st.sampled_from(WORDS)
    if one.role == "count":
        return st.sampled_from((4.0, 4.0, 4.0, 8.0, 10.0))
    if one.role == "orientation":
        whole = st.integers(-200, 560).map(float)
        near = st.integers(-12, 12).map(lambda n: n % 360 * 1.0)
        return near | near | whole | st.floats(-360, 720)
    if one.instrument == "label":
        return st.sampled_from((60.0, 60.0, 90.0, 60.1))
    around = {"ohms": 5.0, "heat": 90.0}.get(one.name, 20.0)
    steps = st.integers(-40, 40).map(lambda n: around + n / 50)
    return steps | st.integers(-150, 150).map(lambda n: around + n / 100) | st.floats(19.7, 20.3)


@st.composite
def readings_of(draw: st.DrawFn, one: Dimension) -> list[Reading]:
    """Draw what was read of one dimension: nothing, one side, or both, with repeats."""
    found = []
    for side in SIDES:
        for _ in range(draw(st.sampled_from((1, 1, 1, 1, 0, 2)))):
            values = tuple(draw(st.lists(_values(one), min_size=0, max_size=4)))
            repeats = draw(st.sampled_from(("as drawn", "equal", "near", "near")))
            if values and repeats != "as drawn":
                values = (values[0],) * len(values)
            if values and repeats == "near" and one.role not in LOOKED_AT:
                # Such repeats scatter about as much as sets the usual spread aside.
                off = draw(st.lists(st.integers(-4, 4), min_size=2, max_size=4))
                values = tuple(round(values[0] + step / 100, 2) for step in off)
            if values and one.role not in LOOKED_AT and draw(st.integers(0, 5)) == 0:
                photo = tuple(draw(st.sampled_from(MARKS)) for _ in values)
                found.append(Reading(side, one.name, values, "photo", photo))
            else:
                found.append(Reading(side, one.name, values, draw(st.sampled_from(NAMES))))
    return found


@st.composite
def invented_pair(draw: st.DrawFn, part: PartKind) -> InventedPair:
    """Draw one pair of a kind."""
    readings = [one for each in part.dimensions for one in draw(readings_of(each))]
    if draw(st.booleans()):
        readings.append(Reading("removed", "no such dimension", (1.0,)))
    name = st.sampled_from([one.name for one in part.dimensions] + ["no such dimension"])
    end = st.none() | st.sampled_from((0.3, 4.9, 5.1, 19.9, 20.5))
    return InventedPair(
        tuple(draw(st.permutations(readings))),
        tuple(
            ConditionSeen(side, (term,))
            for side, term in draw(
                st.lists(st.tuples(st.sampled_from(SIDES), st.sampled_from(TERMS)), max_size=2)
            )
        ),
        tuple(Explanation(one, "the supplier") for one in draw(st.lists(name, max_size=2))),
        tuple(
            MakerLimit(one, low, high)
            for one, low, high in draw(st.lists(st.tuples(name, end, end), max_size=2))
        ),
    )


def many_pairs(part: PartKind) -> st.SearchStrategy[list[InventedPair]]:
    """Draw a handful of pairs of one kind."""
    return st.lists(invented_pair(part), max_size=6)

"""The shares of a set's sum: from readings of the parts, from what was entered, from the set."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import Instrument, instrument_for, tool_words
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.part_sets.part_set import GivenTerm, PartSet, PartTerm
from desktop_app.parts_compared.part_sets.set_room import SetRoom, Share, room_of
from desktop_app.parts_compared.reading import SIDES, Reading, Side
from desktop_app.parts_compared.sides import Named, both_sides, by_tool, fitting
from desktop_app.parts_compared.uncertainty import (
    SideReading,
    side_estimate,
    side_reading,
)


@dataclass(frozen=True, slots=True)
class PartRead:
    """A pair as a set needs it: its kind and the readings of both sides.

    Sets find it by the kind's `sort`: a copied kind stands in for what it was copied from.
    """

    kind: PartKind
    readings: tuple[Reading, ...]


@dataclass(frozen=True, slots=True)
class SetRead:
    """Everything that a set is judged from; `entered` are figures of given terms by name, in mm."""

    part_set: PartSet
    parts: Mapping[str, PartRead]
    instruments: Mapping[str, Instrument] = field(default_factory=dict)
    entered: Mapping[str, float] = field(default_factory=dict)

    def side_of(self, term: PartTerm, side: Side) -> SideReading | None:
        """Return what was read of a term's dimension on one side.

        Instruments are chosen for both sides together, as for the pair, so that both say the
        same difference.
        """
        dimension = self._measured(term)
        if dimension is None:
            return None
        mine, tools = self._read(term, dimension)
        return both_sides(dimension, mine, tools)[SIDES.index(side)]

    def each_of(self, term: PartTerm, side: Side) -> tuple[SideReading, ...]:
        """Return one reading for each place, where as many were read as places were counted."""
        if not term.each_of:
            return ()
        read = self._of_side(term, side)
        counted = self._numbers(term.kind, term.each_of, side)
        if len(read) != 1 or not counted or len(set(counted)) != 1:
            return ()
        ((tool, values),) = read.items()
        if len(values) < 2 or len(values) != counted[0]:
            return ()
        return tuple(side_reading((value,), tool) for value in values)

    def dimension(self, term: PartTerm) -> Dimension | None:
        """Return the dimension of a term, or None where the kind has none by that name."""
        part = self.parts.get(term.kind)
        return None if part is None else part.kind.dimension(term.dimension)

    def label(self, term: PartTerm) -> str:
        """Return what a term measures, in words."""
        dimension = self.dimension(term)
        return term.dimension.replace("-", " ") if dimension is None else dimension.label

    def measure(self, term: PartTerm, side: Side) -> str:
        """Say what to measure so that a term is known on one side."""
        dimension, part = self.dimension(term), self.parts.get(term.kind)
        name = term.kind.replace("-", " ") if part is None else part.kind.name
        tool = f" ({tool_words(dimension.instrument)})" if dimension is not None else ""
        label = self.label(term)
        if side == "removed":
            return tr(
                "Measure {label} on the removed {name}{tool}.", label=label, name=name, tool=tool
            )
        return tr("Measure {label} on the new {name}{tool}.", label=label, name=name, tool=tool)

    def _measured(self, term: PartTerm) -> Dimension | None:
        """Return the dimension of a term where it is in the unit of the set."""
        dimension = self.dimension(term)
        fits = dimension is not None and dimension.unit == self.part_set.unit
        return dimension if fits else None

    def _read(self, term: PartTerm, dimension: Dimension) -> tuple[list[Reading], Named]:
        """Return the readings of a term that have a say, and their instruments."""
        mine = fitting(dimension, self.parts[term.kind].readings)
        found = {
            one.instrument: instrument_for(one.instrument, dimension, self.instruments)
            for one in mine
            if not one.photo
        }
        return mine, {name: tool for name, tool in found.items() if tool is not None}

    def _of_side(self, term: PartTerm, side: Side) -> dict[Instrument, list[float]]:
        dimension = self._measured(term)
        if dimension is None:
            return {}
        mine, tools = self._read(term, dimension)
        return by_tool(dimension, mine, side, tools)

    def _numbers(self, kind: str, name: str, side: Side) -> Sequence[float]:
        part = self.parts.get(kind)
        dimension = None if part is None else part.kind.dimension(name)
        if part is None or dimension is None:
            return ()
        mine = [one for one in fitting(dimension, part.readings) if one.side == side]
        return [float(value) for one in mine for value in one.values]


@dataclass(frozen=True, slots=True)
class Gathered:
    """The rooms of one side, one for each place, or what is missing for them."""

    rooms: tuple[SetRoom, ...]
    missing: tuple[str, ...]


def rooms_of_side(read: SetRead, side: Side) -> Gathered:
    """Return the sum with the parts of one side, at each place that was read."""
    shares: list[Share] = []
    missing: list[str] = []
    places: tuple[PartTerm, tuple[SideReading, ...]] | None = None
    for term, which, times in _net(read.part_set, side):
        each = read.each_of(term, which)
        if each and places is None:
            places = (PartTerm(term.kind, term.dimension, times, place=term.place), each)
            continue
        share = _part_share(read, term, which, times)
        if share is None:
            missing.append(read.measure(term, which))
        else:
            shares.append(share)
    for given in read.part_set.given:
        share = given_share(given, read.entered) if given.times else None
        if share is not None:
            shares.append(share)
        elif given.times:
            missing.append(given_step(given))
    if missing:
        return Gathered((), tuple(missing))
    if places is None:
        return Gathered((room_of(shares),), ())
    term, each = places
    at_each = (_measured(read, term, side, one, term.times) for one in each)
    rooms = (room_of((*shares, one), f"{term.place} {n}") for n, one in enumerate(at_each, 1))
    return Gathered(tuple(rooms), ())


def given_share(term: GivenTerm, entered: Mapping[str, float]) -> Share | None:
    """Return what a given term gives; None where its value must be entered and was not."""
    figure = entered.get(term.name)
    plays = term.enters == "play"
    value = term.value if figure is None or plays else figure
    if value is None:
        return None
    half_width = abs(figure) if figure is not None and plays else term.half_width
    return Share(
        label=term.label,
        value=value,
        half_width=half_width,
        times=term.times,
        source="from the set" if figure is None else "entered",
        moves=plays,
        do=given_step(term),
    )


def given_step(term: GivenTerm) -> str:
    """Say how a given term is measured and entered."""
    enter = tr("Enter the {label}.", label=term.label)
    return f"{enter} {term.how}" if term.how else enter


def _net(part_set: PartSet, side: Side) -> list[tuple[PartTerm, Side, float]]:
    """Return each dimension once with what it counts in all; what counts nothing is left out."""
    total: dict[tuple[str, str, Side], float] = {}
    terms: dict[tuple[str, str, Side], PartTerm] = {}
    for term in part_set.parts:
        key = (term.kind, term.dimension, side if term.side == "own" else term.side)
        total[key] = total.get(key, 0.0) + term.times
        terms.setdefault(key, term)
    return [(terms[key], key[2], times) for key, times in total.items() if times]


def _part_share(read: SetRead, term: PartTerm, side: Side, times: float) -> Share | None:
    found = read.side_of(term, side)
    if found is not None:
        return _measured(read, term, side, found, times)
    if term.value is None:
        return None
    return Share(
        label=read.label(term),
        value=term.value,
        half_width=term.half_width,
        times=times,
        source="from the set",
        do=read.measure(term, side),
    )


def _measured(read: SetRead, term: PartTerm, side: Side, found: SideReading, times: float) -> Share:
    estimate = side_estimate(found)
    name = read.label(term)
    do = (
        tr(
            "Measure {name} of the removed part again, several times or with a finer instrument.",
            name=name,
        )
        if side == "removed"
        else tr(
            "Measure {name} of the new part again, several times or with a finer instrument.",
            name=name,
        )
    )
    return Share(name, estimate.value, estimate.expanded(), times, do=do)

"""What the drawing of parts that meet shows: the room before and after, and where it ends."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.in_shop_unit import shop_unit
from desktop_app.parts_compared.part_sets.set_room import SetRoom
from desktop_app.parts_compared.part_sets.set_sentence import room_words
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.shown_value import amount


@dataclass(frozen=True, slots=True)
class DrawnRoom:
    """One side's room in the unit that is shown: its value, how far usually, how far at worst."""

    side: Side
    value: float
    usual: float
    worst: float
    words: str


@dataclass(frozen=True, slots=True)
class DrawnSet:
    """Both rooms on one axis, with the ends that they must keep off."""

    result: str
    unit: str
    rooms: tuple[DrawnRoom, ...]
    low: float
    high: float | None
    said: str

    def edges(self) -> tuple[float, ...]:
        """Return every value that the axis must hold."""
        ends = (self.low,) if self.high is None else (self.low, self.high)
        lows = tuple(one.value - one.worst for one in self.rooms)
        return (*ends, *lows, *(one.value + one.worst for one in self.rooms))


def drawn_set(judged: SetComparison, length_unit: str) -> DrawnSet | None:
    """Return what is drawn of a judged set; None where neither side's room is known."""
    unit, factor = shop_unit(judged.part_set.unit, length_unit)
    sides: tuple[tuple[Side, str, SetRoom | None], ...] = (
        ("removed", tr("old parts"), judged.before),
        ("replacement", tr("new parts"), judged.after),
    )
    known = [(side, name, room) for side, name, room in sides if room is not None]
    if not known:
        return None
    said = "; ".join(f"{name} {room_words(room, unit, factor)}" for _, name, room in known)
    return DrawnSet(
        result=judged.part_set.result,
        unit=unit,
        rooms=tuple(_room(side, room, unit, factor) for side, _, room in known),
        low=judged.part_set.at_least * factor,
        high=None if judged.at_most is None else judged.at_most.value * factor,
        said=f"{judged.part_set.result}: {said}.",
    )


def _room(side: Side, room: SetRoom, unit: str, factor: float) -> DrawnRoom:
    usual = room.usual * factor
    said = amount(room.value * factor, unit, usual)
    words = tr("old {room}", room=said) if side == "removed" else tr("new {room}", room=said)
    return DrawnRoom(side, room.value * factor, usual, room.worst * factor, words)

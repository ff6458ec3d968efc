"""The deeds about instruments, gauge studies and the shop's own part kinds."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.parts_compared import actions, gauge_actions, kind_actions
from desktop_app.parts_compared.part_kinds.own_kind import without_dimension
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import GaugeReading, GaugeStudy, Instrument
from tests.undo_machine.deeds_to_do import LENGTHS, Deeds, Given, Seen, using
from tests.undo_machine.old_and_new import built_in

PEOPLE = ("Ana", " Bo  B ", "", "x" * 90)


def kind(seen: Seen) -> PartKind:
    """Choose a kind, perhaps as somebody else has renamed it."""
    one = built_in()[seen.of(("distributor-rotor", "brake-pads"))]
    return one._replace(name=seen.of((one.name, "spinner")))


def change(seen: Seen) -> Callable[[PartKind], PartKind]:
    """A change of a kind that renames it or takes a dimension out."""
    name = seen.of(("spinner", "finger"))
    if seen.yes():
        return lambda one: one._replace(name=name, also=(*one.also, "whirler"))
    return lambda one: without_dimension(one, one.dimensions[-1].name)


def place(seen: Seen) -> tuple[str, int, int]:
    """Who reads which part the how manieth time."""
    return seen.of(PEOPLE), seen.of((1, 2)), seen.of((1, 2, 3))


def instrument(seen: Seen) -> Given:
    """Put an instrument into the drawer."""
    name = seen.of(("calliper 2", "micrometer", ""))
    figures = seen.of(LENGTHS), seen.of(LENGTHS)
    return using(name, seen.of(("mm", "in")), *figures, seen.of((None, "2026-01-05")))


def named(seen: Seen) -> Given:
    """Give a person of a study another name."""
    return using(seen.one(GaugeStudy), seen.of(PEOPLE), seen.of(PEOPLE))


DEEDS: Deeds = {
    actions.keep_instrument: instrument,
    actions.put_instrument_away: lambda s: using(s.one(Instrument)),
    gauge_actions.begin_study: lambda s: using(
        s.one(Instrument), s.words(), place(s), s.of(LENGTHS)
    ),
    gauge_actions.add_reading: lambda s: using(s.one(GaugeStudy), place(s), s.of(LENGTHS)),
    gauge_actions.take_reading_out: lambda s: using(s.one(GaugeStudy), s.one(GaugeReading)),
    gauge_actions.name_person: named,
    gauge_actions.say_what_is_read: lambda s: using(s.one(GaugeStudy), s.words()),
    gauge_actions.use_from_now_on: lambda s: using(s.one(GaugeStudy)),
    gauge_actions.back_to_usual: lambda s: using(s.one(Instrument)),
    kind_actions.keep_own_kind: lambda s: using(kind(s)),
    kind_actions.change_own_kind: lambda s: using(kind(s), change(s)),
    kind_actions.copy_kind: lambda s: using(kind(s), s.words(), tuple(built_in())),
    kind_actions.give_back: lambda s: using(kind(s)),
}

"""The bench sum for a belt's identity: ribs, profile and length, old against new."""

from __future__ import annotations

import math
from dataclasses import dataclass

from desktop_app.parts_compared.bench_sums.belt_marking import (
    RIB_PITCH,
    BeltMarking,
    belt_marking,
    profiles_near,
)
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import BELT_CAUTION, SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt, number

NAME = "Belt identity"
LIMIT = (
    "Pitch by ISO 9981. A marking is a nominal length, made with a tolerance of its own, and a "
    "worn belt has stretched. Stretch-fit belts have no tensioner: there only the same will do."
)
#: Worn flanks and the missing edge of the outer ribs, mm of pitch (common practice, no source).
PITCH_ROOM = 0.10
#: What has no say where the old belt's marking can be read.
MEASURED_ONLY = ("ribs", "width", "length", "width_doubt", "length_doubt")


@dataclass(frozen=True, slots=True)
class OldBelt:
    """What is known of the removed belt; `length_doubt` is 0 where the length is a marking."""

    ribs: int
    profiles: tuple[str, ...]
    length: float
    length_doubt: float
    said: str


def _worked(filled: Filled) -> BenchSum:
    old, new = _old_belt(filled), _marked(filled, "new_marking")
    difference = new.length - old.length
    against = []
    if new.ribs != old.ribs:
        against.append(f"{new.ribs} ribs against {old.ribs}")
    if new.profile not in old.profiles:
        seen = " or ".join(old.profiles) or "none of the known ones"
        against.append(f"profile {new.profile} against {seen}")
    sentence = f"{old.said} {_length_words(difference, old.length_doubt)}"
    if against:
        sentence = f"Not the same belt: {', '.join(against)}. {sentence}"
    unused = MEASURED_ONLY if filled.is_typed("old_marking") else ()
    expanded = old.length_doubt or None
    return BenchSum(NAME, difference, "mm", expanded, sentence, LIMIT, filled.inputs(*unused))


def _length_words(difference: float, off: float) -> str:
    if abs(difference) <= off or difference == 0:
        return f"No difference in length was found{doubt(off)}."
    size = amount(abs(difference), "mm", off)
    side = "longer" if difference > 0 else "shorter"
    nominal = "" if off else ", as marked"
    return (
        f"The new one is {size} {side}{doubt(off)}{nominal}, which moves one tensioner pulley by "
        f"about {amount(abs(difference) / 2, 'mm', off / 2)}."
    )


def _marked(filled: Filled, name: str) -> BeltMarking:
    found = belt_marking(filled.text(name))
    if found is None:
        what = f"'{filled.text(name)[:40]}' isn't a belt's marking."
        profiles = ", ".join(RIB_PITCH)
        do = f"Accepted: ribs, profile ({profiles}) and length in mm, like 6PK1230."
        raise filled.trouble(name, what, do)
    return found


def _old_belt(filled: Filled) -> OldBelt:
    if filled.is_typed("old_marking"):
        old = _marked(filled, "old_marking")
        said = f"The old one is marked {old.ribs} ribs {old.profile}, {old.length:g} mm."
        return OldBelt(old.ribs, (old.profile,), old.length, 0.0, said)
    if not all(filled.is_typed(name) for name in MEASURED_ONLY[:3]):
        what = "it is empty, and so is one of ribs, width and length."
        raise filled.trouble("old_marking", what, "Accepted: the marking, or all of those three.")
    ribs = filled.whole("ribs")
    width, length = filled.number("width"), filled.number("length")
    pitch = width / ribs
    off = math.hypot(filled.doubt("width_doubt") / ribs, PITCH_ROOM)
    profiles = profiles_near(pitch, off)
    points = f"points to {' or '.join(profiles)}" if profiles else "fits no known profile"
    said = f"{ribs} ribs on {amount(width, 'mm')}: a pitch of {number(pitch, off)} mm {points}."
    return OldBelt(ribs, profiles, length, filled.doubt("length_doubt"), said)


OFFERED = SumOffered(
    id="belt-identity",
    name=NAME,
    about="Ribs, profile and length of the old belt against the new one's marking.",
    kinds=("serpentine-belt", "tensioner-idler"),
    fields=(
        SumField("new_marking", "marking on the new belt", "", "text", help="Like 6PK1230."),
        SumField("old_marking", "marking on the old belt", "", "text", optional=True,
                 help="Where it can't be read: count and measure below."),
        SumField("ribs", "ribs on the old belt", "", "whole", optional=True, least=1, most=30,
                 help="Counted. Only without the old marking."),
        SumField("width", "width of the old belt", "mm", optional=True, above=0.0,
                 help="Over all ribs. Only without the old marking."),
        SumField("length", "length of the old belt", "mm", optional=True, above=0.0,
                 help="As its marking counts: a tape around the outside reads some millimetres "
                 "more. Only without the old marking."),
        doubt_field("width_doubt", "the width may be off by, ±", "mm", "calliper"),
        doubt_field("length_doubt", "the length may be off by, ±", "mm", "tape"),
    ),
    work=_worked,
    caution=BELT_CAUTION,
)  # fmt: skip

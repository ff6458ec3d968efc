"""The bench sum for a belt's identity: ribs, profile and length, old against new."""

from __future__ import annotations

import math
from dataclasses import dataclass

from desktop_app.language import tr
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

NAME = tr("Belt identity")
LIMIT = tr(
    "Pitch by ISO 9981. A marking is a nominal length, made with a tolerance of its "
    "own, and a worn belt has stretched. Stretch-fit belts have no tensioner: there "
    "only the same will do."
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
        against.append(tr("{new} ribs against {old}", new=new.ribs, old=old.ribs))
    if new.profile not in old.profiles:
        seen = tr(" or ").join(old.profiles) or tr("none of the known ones")
        against.append(tr("profile {new} against {old}", new=new.profile, old=seen))
    sentence = f"{old.said} {_length_words(difference, old.length_doubt)}"
    if against:
        sentence = tr(
            "Not the same belt: {against}. {sentence}",
            against=", ".join(against),
            sentence=sentence,
        )
    unused = MEASURED_ONLY if filled.is_typed("old_marking") else ()
    expanded = old.length_doubt or None
    return BenchSum(NAME, difference, "mm", expanded, sentence, LIMIT, filled.inputs(*unused))


def _length_words(difference: float, off: float) -> str:
    if abs(difference) <= off or difference == 0:
        return tr("No difference in length was found{doubt}.", doubt=doubt(off))
    size = amount(abs(difference), "mm", off)
    values = {
        "size": size,
        "doubt": doubt(off),
        "as_marked": "" if off else tr(", as marked"),
        "moved": amount(abs(difference) / 2, "mm", off / 2),
    }
    if difference > 0:
        return tr(
            "The new one is {size} longer{doubt}{as_marked}, which moves one tensioner "
            "pulley by about {moved}.",
            **values,
        )
    return tr(
        "The new one is {size} shorter{doubt}{as_marked}, which moves one tensioner "
        "pulley by about {moved}.",
        **values,
    )


def _marked(filled: Filled, name: str) -> BeltMarking:
    found = belt_marking(filled.text(name))
    if found is None:
        what = tr("'{typed}' isn't a belt's marking.", typed=filled.text(name)[:40])
        profiles = ", ".join(RIB_PITCH)
        do = tr(
            "Accepted: ribs, profile ({profiles}) and length in mm, like 6PK1230.",
            profiles=profiles,
        )
        raise filled.trouble(name, what, do)
    return found


def _old_belt(filled: Filled) -> OldBelt:
    if filled.is_typed("old_marking"):
        old = _marked(filled, "old_marking")
        said = tr(
            "The old one is marked {ribs} ribs {profile}, {length:g} mm.",
            ribs=old.ribs,
            profile=old.profile,
            length=old.length,
        )
        return OldBelt(old.ribs, (old.profile,), old.length, 0.0, said)
    if not all(filled.is_typed(name) for name in MEASURED_ONLY[:3]):
        what = tr("it is empty, and so is one of ribs, width and length.")
        raise filled.trouble(
            "old_marking", what, tr("Accepted: the marking, or all of those three.")
        )
    ribs = filled.whole("ribs")
    width, length = filled.number("width"), filled.number("length")
    pitch = width / ribs
    off = math.hypot(filled.doubt("width_doubt") / ribs, PITCH_ROOM)
    profiles = profiles_near(pitch, off)
    on, per_rib = amount(width, "mm"), number(pitch, off)
    said = (
        tr(
            "{ribs} ribs on {width}: a pitch of {pitch} mm points to {profiles}.",
            ribs=ribs,
            width=on,
            pitch=per_rib,
            profiles=tr(" or ").join(profiles),
        )
        if profiles
        else tr(
            "{ribs} ribs on {width}: a pitch of {pitch} mm fits no known profile.",
            ribs=ribs,
            width=on,
            pitch=per_rib,
        )
    )
    return OldBelt(ribs, profiles, length, filled.doubt("length_doubt"), said)


OFFERED = SumOffered(
    id="belt-identity",
    name=NAME,
    about=tr("Ribs, profile and length of the old belt against the new one's marking."),
    kinds=("serpentine-belt", "tensioner-idler"),
    fields=(
        SumField("new_marking", tr("marking on the new belt"), "", "text",
                 help=tr("Like 6PK1230.")),
        SumField("old_marking", tr("marking on the old belt"), "", "text", optional=True,
                 help=tr("Where it can't be read: count and measure below.")),
        SumField("ribs", tr("ribs on the old belt"), "", "whole", optional=True, least=1, most=30,
                 help=tr("Counted. Only without the old marking.")),
        SumField("width", tr("width of the old belt"), "mm", optional=True, above=0.0,
                 help=tr("Over all ribs. Only without the old marking.")),
        SumField("length", tr("length of the old belt"), "mm", optional=True, above=0.0,
                 help=tr(
                     "As its marking counts: a tape around the outside reads some "
                     "millimetres more. Only without the old marking."
                 )),
        doubt_field("width_doubt", tr("the width may be off by, ±"), "mm", "calliper"),
        doubt_field("length_doubt", tr("the length may be off by, ±"), "mm", "tape"),
    ),
    work=_worked,
    caution=BELT_CAUTION,
)  # fmt: skip

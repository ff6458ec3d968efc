"""Whether a part's features sit as on the old one, are turned by an angle, or are mirrored."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import SumOffered
from desktop_app.parts_compared.shown_value import amount, doubt
from desktop_app.parts_compared.uncertainty import unwound, wrapped

NAME = tr("Turned or mirrored")
LIMIT = tr(
    "Angles count from the same key, the same way round, seen from the same side, "
    "feature by feature in one order. A single angle can't tell a turn from a mirror "
    "image for certain."
)
Finding: TypeAlias = Literal["same", "turned", "mirrored", "neither", "too close to tell"]


@dataclass(frozen=True, slots=True)
class Orientation:
    """What the angles say, and the common turn in degrees.

    `mirror_seen`: a mirror image would show on these features; `turn_fits`: one turn of the
    whole part explains them, whatever else does.
    """

    finding: Finding
    turn: float
    mirror_seen: bool
    turn_fits: bool


def compare_angles(
    old: Sequence[float], new: Sequence[float], allowed: float, off: float
) -> Orientation:
    """Compare features by their angles from the key, in degrees, in the same order.

    `allowed` is how far each may differ and still be the same, `off` the expanded uncertainty
    of one difference. Mirrored means new = -old, about the key's line.
    """
    turns = unwound([wrapped(b - a) for a, b in zip(old, new, strict=True)])
    mirrors = [wrapped(b + a) for a, b in zip(old, new, strict=True)]
    turn = wrapped(sum(turns) / len(turns))
    farthest = max(abs(wrapped(one)) for one in turns)
    reach = allowed + off
    # Features on the key's line look the same in a mirror.
    mirror_seen = any(abs(wrapped(2 * a)) > 2 * reach for a in old)
    turn_fits = max(turns) - min(turns) <= 2 * off
    finding: Finding = "neither"
    if farthest + off <= allowed:
        finding = "same"
    elif farthest - off <= allowed:
        finding = "too close to tell"
    elif mirror_seen and all(abs(one) <= reach for one in mirrors):
        finding = "mirrored"
    elif turn_fits:
        finding = "turned"
    return Orientation(finding, turn, mirror_seen, turn_fits)


def _worked(filled: Filled) -> BenchSum:
    old, new = filled.numbers("old"), filled.numbers("new")
    if len(old) != len(new):
        raise filled.trouble(
            "new",
            tr("{new} angles stand against {old} of the old part.", new=len(new), old=len(old)),
            tr("Accepted: as many angles as the old part has, in the same order."),
        )
    off = filled.doubt_of_difference("angle_doubt")
    found = compare_angles(old, new, filled.number("allowed"), off)
    sentence = _sentence(found, off)
    return BenchSum(NAME, found.turn, "deg", off, sentence, LIMIT, filled.inputs())


def _sentence(found: Orientation, off: float) -> str:
    turn = f"{amount(abs(found.turn), 'deg', off)}{doubt(off)}"
    if found.finding == "same":
        unseen = (
            "" if found.mirror_seen else tr(" On the key's line a mirror image looks the same.")
        )
        return tr(
            "The features sit as on the old part{doubt}.{unseen}", doubt=doubt(off), unseen=unseen
        )
    if found.finding == "too close to tell":
        return tr(
            "Turned by {turn}: too close to what is allowed to tell. Read finer or again.",
            turn=turn,
        )
    if found.finding == "mirrored":
        also = (
            tr(" Or it is turned by {turn}: another feature tells.", turn=turn)
            if found.turn_fits
            else ""
        )
        return tr(
            "Mirrored: the new part is the old one's mirror image about the key.{also}", also=also
        )
    if found.finding == "turned":
        return tr(
            "Turned by {turn} against the old part, the features among themselves alike.", turn=turn
        )
    return tr(
        "Neither turned nor mirrored: the features stand differently to each other. Which part?"
    )


OFFERED = SumOffered(
    id="turned-or-mirrored",
    name=NAME,
    about=tr(
        "Angles from a key, old against new: left for right, or a housing clocked "
        "otherwise."
    ),
    kinds=(),
    fields=(
        SumField("old", tr("angles on the old part"), "deg", "list", least=-360.0, most=360.0,
                 help=tr("From the key, clockwise counted up; several parted by a semicolon.")),
        SumField("new", tr("angles on the new part"), "deg", "list", least=-360.0, most=360.0,
                 help=tr("The same features in the same order.")),
        SumField("allowed", tr("may differ by, ±"), "deg", default="5", least=0.0, most=90.0,
                 help=tr("From the part kind or the maker (5 is common practice, no source).")),
        doubt_field("angle_doubt", tr("one angle may be off by, ±"), "deg", "protractor"),
    ),
    work=_worked,
)  # fmt: skip

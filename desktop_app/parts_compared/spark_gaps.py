"""Rotor gap and plug gap before and after, taken from the pairs of one job."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from desktop_app.language import tr
from desktop_app.parts_compared.comparison import DimensionComparison, PairComparison, SideValue
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.spark import Gap

ROTOR, CAP, PLUG = "distributor-rotor", "distributor-cap", "spark-plug"
SPARK_KINDS = (ROTOR, CAP, PLUG)
MM_PER_INCH = 25.4
WOBBLE = tr("Shaft play and the cap's seat are not in its range.")


@dataclass(frozen=True, slots=True)
class GapsTaken:
    """One gap on both sides, None where it is not known; `words` say where it came from."""

    before: Gap | None
    after: Gap | None
    words: str = ""


@dataclass(frozen=True, slots=True)
class NumberedPair:
    """A pair as judged, with its number in its job, counted from 1.

    `like` is the `sort` of its kind: what a shop's own kind was copied from.
    """

    number: int
    compared: PairComparison
    like: str = ""

    @property
    def sort(self) -> str:
        """Return which part of the spark path it is, by the id of the built-in kind."""
        return self.like or self.compared.kind


def plug_gaps(pairs: Sequence[NumberedPair]) -> GapsTaken | None:
    """Return the plug gap of the pair whose removed plug had the widest gap."""
    found = [gaps for pair in pairs if (gaps := _plug_gaps(pair)) is not None]
    if not found:
        return None
    return max(found, key=lambda each: each.before.mm if each.before else -math.inf)


def rotor_gaps(pairs: Sequence[NumberedPair], gap_before: float | None = None) -> GapsTaken | None:
    """Return the rotor gap: terminal radius of the cap less tip radius of the rotor, each side.

    With `gap_before` (mm) that is the old gap, and the new one follows from what changed. Two
    radii read apart give the gap's uncertainty as the root of their squares (JCGM 100, 5.1.2).
    """
    rotor = _measured(pairs, ROTOR, "tip-radius")
    cap = _measured(pairs, CAP, "terminal-radius")
    if gap_before is not None:
        return _from_given(gap_before, rotor, cap)
    if rotor is None or cap is None:
        return None
    tip, terminal = rotor[1], cap[1]
    words = f"{_taken_from(cap, rotor)} {WOBBLE}"
    taken = (_gap(terminal, tip, "removed"), _gap(terminal, tip, "replacement"))
    return GapsTaken(*taken, words) if any(taken) else None


def _taken_from(
    cap: tuple[int, DimensionComparison], rotor: tuple[int, DimensionComparison]
) -> str:
    """Say which pairs gave the rotor gap, and where one side of the cap stands for both."""
    if cap[1].removed is None:
        return tr(
            "Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}; only the "
            "replacement was read and stands for both.",
            cap=cap[0],
            rotor=rotor[0],
        )
    if cap[1].replacement is None:
        return tr(
            "Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}; only the "
            "removed cap was read and stands for both.",
            cap=cap[0],
            rotor=rotor[0],
        )
    return tr(
        "Rotor gap: terminal radius of pair {cap} less tip radius of pair {rotor}.",
        cap=cap[0],
        rotor=rotor[0],
    )


def in_millimetres(side: SideValue | None, unit: str) -> Gap | None:
    """Return a length with its expanded uncertainty in mm; None for what is no length."""
    if side is None or isinstance(side.value, str):
        return None
    scale = MM_PER_INCH if unit == "in" else 1.0
    return Gap(side.value * scale, (side.expanded_uncertainty or 0.0) * scale)


def _plug_gaps(pair: NumberedPair) -> GapsTaken | None:
    one = pair.compared.dimension("gap") if pair.sort == PLUG else None
    if one is None or (one.removed is None and one.replacement is None):
        return None
    before, after = in_millimetres(one.removed, one.unit), in_millimetres(one.replacement, one.unit)
    return GapsTaken(
        before, after, tr("Plug gap: the gap readings of pair {number}.", number=pair.number)
    )


def _measured(
    pairs: Sequence[NumberedPair], kind: str, dimension: str
) -> tuple[int, DimensionComparison] | None:
    """Return the first pair of a kind with this dimension read, and that dimension."""
    for pair in pairs:
        one = pair.compared.dimension(dimension) if pair.sort == kind else None
        if one is not None and (one.removed is not None or one.replacement is not None):
            return pair.number, one
    return None


def _gap(terminal: DimensionComparison, tip: DimensionComparison, side: Side) -> Gap | None:
    removed = side == "removed"
    own, other = (
        (terminal.removed, terminal.replacement)
        if removed
        else (terminal.replacement, terminal.removed)
    )
    outer = in_millimetres(own or other, terminal.unit)
    inner = in_millimetres(tip.removed if removed else tip.replacement, tip.unit)
    if outer is None or inner is None:
        return None
    return Gap(outer.mm - inner.mm, math.hypot(outer.doubt_mm, inner.doubt_mm))


def _from_given(
    before: float,
    rotor: tuple[int, DimensionComparison] | None,
    cap: tuple[int, DimensionComparison] | None,
) -> GapsTaken:
    """Take the old gap as given; a longer tip closes it, a wider terminal circle opens it."""
    gap = Gap(before)
    words = [tr("Rotor gap before: {before:g} mm as given", before=before)]
    for found, sign, name in ((rotor, -1.0, tr("tip radius")), (cap, 1.0, tr("terminal radius"))):
        if found is None or found[1].difference is None:
            continue
        scale = MM_PER_INCH if found[1].unit == "in" else 1.0
        doubt = (found[1].difference_expanded_uncertainty or 0.0) * scale
        gap = replace(
            gap,
            mm=gap.mm + sign * found[1].difference * scale,
            doubt_mm=math.hypot(gap.doubt_mm, doubt),
        )
        words.append(
            tr("after: changed by the {radius} of pair {number}", radius=name, number=found[0])
        )
    if len(words) == 1:
        words.append(tr("after: the same, for nothing that changes it was read"))
    return GapsTaken(Gap(before), gap, f"{'; '.join(words)}. {WOBBLE}")

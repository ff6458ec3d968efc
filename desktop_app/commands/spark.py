"""`spark`: what rotor gap and plug gap ask of the coil, for given gaps or for a pair of a job."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from desktop_app.commands.opened_shop import shop_of
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.compressed_air import Air
from desktop_app.parts_compared.spark import (
    ESTIMATE,
    EVEN_FIELD,
    FULL_CYLINDER,
    HIGH_VOLTAGE,
    SERIES,
    Gap,
    SparkPath,
    change_sentence,
    spark_path,
)
from desktop_app.parts_compared.spark_gaps import (
    ROTOR,
    SPARK_KINDS,
    GapsTaken,
    NumberedPair,
    plug_gaps,
    rotor_gaps,
)
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_record.record import ShopRecord

_MEASURED_IN = {"rotor": "its rotor pair and its cap pair", "plug": "its spark-plug pair"}
MOST_OPEN_AIR_KPA = 110.0  # the open air's own pressure never reaches that
CAP_IN_OPEN_AIR = (
    f"More than {MOST_OPEN_AIR_KPA:g} kPa is a charged intake: that pressure counts for the plug "
    f"gap alone; the cap is taken to stand in open air at {Air().pressure_kpa:g} kPa."
)
AFTERWORDS = (SERIES, ESTIMATE, EVEN_FIELD, FULL_CYLINDER, *HIGH_VOLTAGE)


@dataclass(frozen=True, slots=True)
class _Given:
    """The figures of the command line, looked over."""

    rotor_gap: float | None
    plug_gap: float | None
    ratio: float
    air: Air
    intake: Air
    notes: tuple[str, ...] = ()

    def path(self, rotor: Gap, plug: Gap) -> SparkPath:
        """Return the spark path of two gaps in this air."""
        found = spark_path(rotor, plug, self.ratio, self.air, self.intake)
        return replace(found, notes=self.notes)


def spark(asked: Asked) -> Outcome:
    """Say what the gaps ask of the coil; with --pair before and after."""
    given = _given(asked)
    if asked.pair is not None:
        return _of_pair(asked, given)
    rotor, plug = _needed(given.rotor_gap, "rotor"), _needed(given.plug_gap, "plug")
    path = given.path(Gap(rotor), Gap(plug))
    return Outcome(path.as_json(), (*path.sentences(), *given.notes, *AFTERWORDS))


def _given(asked: Asked) -> _Given:
    ratio = _figure("--compression-ratio", asked.compression_ratio, 1, 40)
    if ratio is None:
        raise ShopTrouble("Which compression ratio?", do="Say --compression-ratio R, such as 9.5.")
    pressure = _figure("--pressure-kpa", asked.pressure_kpa, 1, 1000)
    warmth = _figure("--temperature-c", asked.temperature_c, -90, 500)
    usual = Air()
    intake = Air(
        usual.pressure_kpa if pressure is None else pressure,
        usual.temperature_c if warmth is None else warmth,
    )
    charged = intake.pressure_kpa > MOST_OPEN_AIR_KPA
    return _Given(
        _figure("--rotor-gap-mm", asked.rotor_gap_mm, 0, 1000),
        _figure("--plug-gap-mm", asked.plug_gap_mm, 0, 1000),
        ratio,
        replace(intake, pressure_kpa=usual.pressure_kpa) if charged else intake,
        intake,
        (CAP_IN_OPEN_AIR,) if charged else (),
    )


def _figure(flag: str, said: str | None, least: float, most: float) -> float | None:
    """Return a number with a point or a comma that lies within its bounds; None if not said."""
    if said is None:
        return None
    try:
        number = float(said.replace(",", ".")) if "_" not in said else math.nan
    except ValueError:
        number = math.nan
    if not least <= number <= most:
        raise ShopTrouble(
            f"{flag} “{said[:40]}” is not understood.",
            do=f"Accepted: a number from {least:g} to {most:g}.",
        )
    return number


def _needed(gap: float | None, name: str) -> float:
    if gap is None:
        raise ShopTrouble(f"The {name} gap is missing.", do=f"Say --{name}-gap-mm in millimetres.")
    return gap


def _of_pair(asked: Asked, given: _Given) -> Outcome:
    job, wanted = asked.pair
    with shop_of(asked) as record:
        pairs, kind = _pairs(record, job, wanted)
    own = [pair for pair in pairs if pair.number == int(wanted)]
    # The pair asked for stands for its kind; the others give what it has not.
    pairs = own + [pair for pair in pairs if pair.sort != kind]
    rotor = rotor_gaps(pairs, given.rotor_gap)
    plug = _filled(plug_gaps(pairs), given.plug_gap)
    if kind in SPARK_KINDS[:2]:
        _check_own(own[0], kind)
    before, after = (
        given.path(_side(rotor, side, "rotor"), _side(plug, side, "plug"))
        for side in ("before", "after")
    )
    taken = tuple(each.words for each in (rotor, plug) if each is not None)
    said = {
        "before": before.as_json(),
        "after": after.as_json(),
        "ranges": {"before": _ranges(before), "after": _ranges(after)},
        "taken": list(taken),
    }
    lines = (*taken, *_lines("Before", before), *_lines("After", after))
    change = change_sentence(before, after)
    return Outcome(said, (*lines, *((change,) if change else ()), *given.notes, *AFTERWORDS))


def _pairs(record: ShopRecord, job: str, wanted: str) -> tuple[list[NumberedPair], str]:
    """Return the judged pairs of a job, numbered as its page shows them, and the asked sort.

    A part that was not fitted is left out, unless it is the pair asked for.
    """
    from desktop_app.parts_compared.pair_view import judge
    from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
    from desktop_app.repair_jobs.stored_reading import job_by_number

    kinds = kinds_of(record)
    with record.reading() as connection:
        ids = pairs_of_job(connection, job_by_number(connection, job))
        tools = drawer(connection)
        views = [read_pair(connection, pair_id) for pair_id in ids]
    numbers = {str(number): number for number in range(1, len(views) + 1)}
    if wanted not in numbers:
        accepted = f"1 to {len(views)}" if views else "none, the job has no pairs"
        raise ShopTrouble(f"Job {job} has no pair “{wanted[:20]}”.", do=f"Accepted: {accepted}.")
    sorts = [kinds[view.part_kind].sort if view.part_kind in kinds else "" for view in views]
    kind = views[numbers[wanted] - 1].part_kind
    if sorts[numbers[wanted] - 1] not in SPARK_KINDS:
        raise ShopTrouble(
            f"Pair {wanted} of job {job} is no part of the spark path, but: {kind}.",
            do=f"Accepted: a pair of the kind {', '.join(SPARK_KINDS)}.",
        )
    judged = [
        NumberedPair(number, judge(view, kinds[view.part_kind], tools), sort)
        for number, (view, sort) in enumerate(zip(views, sorts, strict=True), 1)
        if sort in SPARK_KINDS and (view.fitted or number == numbers[wanted])
    ]
    return judged, sorts[numbers[wanted] - 1]


def _check_own(pair: NumberedPair, kind: str) -> None:
    """Refuse a rotor or cap pair that says nothing: before and after would be one guess."""
    name = "tip-radius" if kind == ROTOR else "terminal-radius"
    one = pair.compared.dimension(name)
    if one is None or one.removed is None or one.replacement is None:
        raise ShopTrouble(
            f"Pair {pair.number} has no {name.replace('-', ' ')} on both sides.",
            do="Measure it on the old and on the new part.",
        )


def _filled(taken: GapsTaken | None, given: float | None) -> GapsTaken | None:
    """Fill the plug gap's missing sides with what was given."""
    if given is None:
        return taken
    gap = Gap(given)
    if taken is None:
        return GapsTaken(gap, gap, f"Plug gap: {given:g} mm as given, before and after.")
    if taken.before is not None and taken.after is not None:
        return GapsTaken(taken.before, taken.after, f"{taken.words} --plug-gap-mm was not used.")
    side = "after" if taken.after is None else "before"
    words = f"{taken.words} The gap {side}: {given:g} mm as given."
    return GapsTaken(taken.before or gap, taken.after or gap, words)


def _side(taken: GapsTaken | None, side: str, name: str) -> Gap:
    gap = None if taken is None else taken.before if side == "before" else taken.after
    if gap is None:
        raise ShopTrouble(
            f"The {name} gap {side} is not in the readings of this job.",
            do=f"Measure it in {_MEASURED_IN[name]}, or say --{name}-gap-mm.",
        )
    return gap


def _ranges(path: SparkPath) -> dict[str, Any]:
    named = {"rotor_gap_kv": path.rotor, "plug_gap_kv": path.plug}
    named |= {"sum_kv": path.sum, "larger_kv": path.larger}
    return {name: volts and [volts.low_kv, volts.high_kv] for name, volts in named.items()}


def _lines(name: str, path: SparkPath) -> tuple[str, ...]:
    return (f"{name}:", *(f"  {sentence}" for sentence in path.sentences()))

"""What came from suppliers in a year, read from the record."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta

from sqlalchemy import Connection, select

from desktop_app.parts_compared.dimension_verdict import looks_mirrored
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.many_pairs.judge_many import ManyVerdicts, judge_many
from desktop_app.parts_compared.many_pairs.many_decisions import code
from desktop_app.parts_compared.many_pairs.one_by_one import judge_one_by_one
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair
from desktop_app.parts_compared.stored_many import KindPairs, pairs_by_kind
from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched.stored_money_owed import claims_between
from desktop_app.returns_watched.stored_vehicles import each_block
from desktop_app.weekly_report.supplied import PartSupplied, Supplied, WayRound


@dataclass(frozen=True, slots=True)
class PairsSeen:
    """What comparing showed, by the id of the pair."""

    verdicts: dict[int, str] = field(default_factory=dict)
    ways_round: dict[int, WayRound] = field(default_factory=dict)


def judge_pairs(
    connection: Connection,
    kinds: Mapping[str, PartKind],
    drawer: Mapping[str, Instrument],
    confidence: float,
    pairs: frozenset[int],
) -> PairsSeen:
    """Judge some pairs by the kinds as they stand now; one of another kind is not compared."""
    seen = PairsSeen()
    for some in pairs_by_kind(connection, kinds, of=pairs):
        judged = judge_many(some.kind, some.columns, drawer, confidence)
        seen.verdicts.update(zip(some.ids, judged.verdicts(), strict=True))
        seen.ways_round.update(_ways_round(some, judged, drawer, confidence))
    return seen


def _ways_round(
    some: KindPairs, judged: ManyVerdicts, drawer: Mapping[str, Instrument], confidence: float
) -> Iterator[tuple[int, WayRound]]:
    """Yield the pairs with an angle that is turned; few are, and those are looked at one by one."""
    turned = list(judged.dimensions == code("turned"))
    found = judge_one_by_one(some.kind, some.columns, turned, drawer, confidence)
    # "Mirrored" goes before "turned" where two angles of one part say both.
    ways: dict[int, WayRound] = {}
    for place, pair, one in found:
        old, new = (None if side is None else side.value for side in (one.removed, one.replacement))
        mirror = (
            isinstance(old, float)
            and isinstance(new, float)
            and looks_mirrored(some.kind.dimensions[place], old, new)
        )
        ways[pair] = "mirrored" if mirror or ways.get(pair) == "mirrored" else "turned"
    yield from ((some.ids[pair], way) for pair, way in ways.items())


def read_supplied(connection: Connection, first: date, last: date, seen: PairsSeen) -> Supplied:
    """Read the replacements of the jobs handed over from one day to another, and the claims."""
    parts = tuple(_parts(connection, first, last, seen))
    return Supplied(parts, claims_between(connection, first, last))


def _parts(
    connection: Connection, first: date, last: date, seen: PairsSeen
) -> Iterator[PartSupplied]:
    wanted = (
        select(Pair.id, Job.number, Pair.supplier, Pair.fitted)
        .join(Job, Job.id == Pair.job_id)
        .where(Job.left_at >= first.isoformat())
        .where(Job.left_at < (last + timedelta(days=1)).isoformat())
        .order_by(Job.left_at, Job.number, Pair.id)
    )
    for block in each_block(connection, wanted):
        for pair, job, supplier, fitted in zip(*block, strict=True):
            verdict, way = seen.verdicts.get(pair, ""), seen.ways_round.get(pair, "")
            yield PartSupplied(job, supplier, bool(fitted), verdict, way)

"""The two jobs of a return as they stand side by side, and the chain that they hang on."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.stored_reading import photos_by_id
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.signs import PAIR_SIGNS
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.repair_jobs.rate_of_use import ShopUse
from desktop_app.repair_jobs.stored import Job, Visit
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.job_then import JobThen
from desktop_app.returns_watched.judgement import Chains, ReturnJudged, counts_against
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_links import kept_cause, kept_judgement
from desktop_app.returns_watched.stored_vehicles import each_row
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.kept_value import row_place

Kinds = Mapping[str, PartKind]


@dataclass(frozen=True, slots=True)
class ChainedJob:
    """One job of a chain; days are ISO dates."""

    job_id: int
    number: str
    came_on: str


def read_then_and_now(
    connection: Connection, earlier_job: int, later_job: int, kinds: Kinds
) -> tuple[JobThen, JobThen] | None:
    """Read both jobs of a return; None where one of them is no longer there.

    The verdict of a pair is that of its kind as it is now; other kinds have none.
    """
    there = select(Job.id).where(Job.id.in_((earlier_job, later_job)))
    if len({earlier_job, later_job} & set(connection.execute(there).scalars())) < 2:
        return None
    then, now = (read_one(connection, job, kinds) for job in (earlier_job, later_job))
    return then, now


def read_chain(connection: Connection, earlier_job: int, later_job: int) -> tuple[ChainedJob, ...]:
    """Return the chain of comebacks through both jobs, the first one first.

    The two stand in it even where nobody has judged them yet. It costs the links of one vehicle.
    """
    jobs, links = _linked(connection, {earlier_job, later_job})
    if earlier_job not in jobs or later_job not in jobs:
        return ()
    by_number = {row.number: row for row in jobs.values()}
    links.sort(key=lambda link: (jobs[link[0]].left_at or "", jobs[link[0]].number))
    chains = Chains(
        ReturnJudged(jobs[one].number, jobs[other].number, word) for one, other, word in links
    )
    before = chains.chain_of(jobs[earlier_job].number)
    found = [*before, *([jobs[later_job].number] if jobs[later_job].number not in before else [])]
    after = sorted(
        (row for row in jobs.values() if row.number not in found),
        key=lambda row: (row.came_at, row.number),
    )
    last = jobs[later_job].number
    found += [row.number for row in after if last in chains.chain_of(row.number)]
    rows = [by_number[number] for number in found]
    return tuple(ChainedJob(row.id, row.number, row.came_at[:10]) for row in rows)


def _linked(
    connection: Connection, start: set[int]
) -> tuple[dict[int, Any], list[tuple[int, int, Any]]]:
    """Return the jobs that hang together by comebacks, and those links."""
    known: set[int] = set()
    fresh = set(start)
    links: dict[tuple[int, int], Any] = {}
    wanted = select(ReturnLink).where(
        ReturnLink.judgement.is_not(None), ReturnLink.same_vehicle == 1
    )
    while fresh:
        known |= fresh
        met: Iterable[Any] = (
            *each_row(connection, wanted, ReturnLink.earlier_job_id, fresh),
            *each_row(connection, wanted, ReturnLink.later_job_id, fresh),
        )
        for row in met:
            place = row_place("return_link", row.id)
            word = kept_judgement(row.judgement, place)
            if counts_against(word, kept_cause(row.cause_class, place)):
                links[row.earlier_job_id, row.later_job_id] = word
        fresh = {job for pair in links for job in pair} - known
    named = select(Job.id, Job.number, Job.left_at, Visit.came_at).join(
        Visit, Visit.id == Job.visit_id
    )
    jobs = {row.id: row for row in each_row(connection, named, Job.id, known)}
    return jobs, [(one, other, word) for (one, other), word in links.items()]


def read_one(connection: Connection, job_id: int, kinds: Kinds) -> JobThen:
    """Read one job as it stands beside another."""
    pairs = tuple(read_pair(connection, pair) for pair in pairs_of_job(connection, job_id))
    photos = photos_by_id(connection, [p.photo_id for pair in pairs for p in pair.photos])
    return JobThen(
        job=read_job(connection, job_id),
        pairs=pairs,
        verdicts=_verdicts(connection, pairs, kinds),
        photos=_in_order(pairs, photos),
        proof=read_proof(connection, job_id, ShopUse()),  # nothing here speaks of its use
        kinds=kinds,
    )


def _verdicts(connection: Connection, pairs: Iterable[PairView], kinds: Kinds) -> dict[int, str]:
    known = [pair for pair in pairs if pair.part_kind in kinds]
    if not known:
        return {}
    tools, sure = drawer(connection), read_rules(connection).confidence
    words = {pair.id: judge(pair, kinds[pair.part_kind], tools, sure).verdict for pair in known}
    return {pair: f"{PAIR_SIGNS[word]} {tr(word)}" for pair, word in words.items()}


def _in_order(pairs: Iterable[PairView], photos: Mapping[int, KeptPhoto]) -> tuple[KeptPhoto, ...]:
    """Return each photo once, removed before replacement, as the pairs show them."""
    shown = dict.fromkeys(p.photo_id for pair in pairs for p in pair.photos)
    return tuple(photos[one] for one in shown if one in photos)


KindsNow = Callable[[], Kinds]

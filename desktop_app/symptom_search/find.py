"""Finding: a text in, the past jobs that are about it out, with what fixed it before."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from heapq import nlargest
from typing import TypedDict

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.repair_jobs.trouble_code import code_book
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search import stored
from desktop_app.symptom_search.fixes import Fix, FixJson, count_fixes
from desktop_app.symptom_search.question import Piece, Question, read_question
from desktop_app.symptom_search.ranking import (
    ALL_WORDS,
    Evidence,
    Judge,
    Span,
    Standing,
    sought_word,
)
from desktop_app.symptom_search.stored_evidence import MOST_OF_ONE, Named, gather, jobs_named
from desktop_app.symptom_search.stored_words import WordHits, jobs_with_words
from desktop_app.symptom_search.vocabulary import Vocabulary

WEIGHED = 45  # jobs that are read and weighed word by word; those before them by the indexes
COUNTED = MOST_OF_ONE  # jobs that "what fixed it" is counted over, at most: the newest


class HitJson(TypedDict):
    """One job as the `find` command prints it."""

    number: str
    score: float
    concern: str
    why: list[str]


class FoundJson(TypedDict):
    """The answer as the `find` command prints it."""

    read_as: list[str]
    jobs: list[HitJson]
    fixes: list[FixJson]


@dataclass(frozen=True, slots=True)
class Hit:
    """One job found; `marks` are the places (start, end) of matched words in each text."""

    job_id: int
    number: str
    day: str
    left: str
    vehicle: str
    plate: str
    concern: str
    cause: str
    correction: str
    score: float
    why: tuple[str, ...]
    marks: Mapping[str, tuple[Span, ...]]


@dataclass(frozen=True, slots=True)
class Found:
    """The answer to one text. `counted` is the number of jobs that the fixes are counted over."""

    text: str
    read_as: tuple[Piece, ...]
    hits: tuple[Hit, ...]
    fixes: tuple[Fix, ...]
    counted: int

    def counted_over(self) -> str:
        """Return over which jobs the fixes were counted, as one sentence."""
        if self.counted == 1:
            return "Counted over one job handed over."
        newest = "the newest " if self.counted >= COUNTED else ""
        return f"Counted over {newest}{self.counted} jobs handed over."

    def as_json(self) -> FoundJson:
        """Return the fields of the command contract."""
        return {
            "read_as": [piece.shown for piece in self.read_as],
            "jobs": [
                {
                    "number": hit.number,
                    "score": hit.score,
                    "concern": hit.concern,
                    "why": list(hit.why),
                }
                for hit in self.hits
            ],
            "fixes": [fix.as_json() for fix in self.fixes],
        }


def find(
    record: ShopRecord,
    vocabulary: Vocabulary,
    kinds: Mapping[str, PartKind],
    text: str,
    limit: int = 20,
) -> Found:
    """Find the past jobs that a text is about, the best first, and what fixed them.

    Whatever is typed can be asked; what means nothing finds nothing.
    """
    question = read_question(text, vocabulary, kinds)
    plain = _plain(question, vocabulary)
    near = [group for group in plain if group not in {one.id for one in question.groups}]
    with record.reading() as connection:
        named = jobs_named(connection, question.names)
        words = [word for word in question.words if word.place not in named.places]
        hits = jobs_with_words(connection, words, limit)
        evidence = gather(connection, question, named, near, code_book(), hits)
        first = nlargest(
            max(WEIGHED, limit), evidence, key=lambda job: (_first_points(evidence[job]), job)
        )
        seen = stored.jobs_seen(connection, first)
        mended = stored.mended_jobs(connection, _about_the_same(evidence, hits))
    judge = Judge(
        question, [sought_word(one.word, one.weight, one.near) for one in hits.sought], plain
    )
    standings = [(job, judge.weigh(evidence[job.id], job.texts)) for job in seen.values()]
    standings.sort(key=lambda pair: (-pair[1].score, -pair[0].id))
    best = tuple(_hit(job, standing) for job, standing in standings if standing.why)[:limit]
    fixes = count_fixes(mended, {k: v.name for k, v in kinds.items()}, record.clock().date())
    pieces = _pieces(question, named)
    return Found(text, pieces, best, fixes, len(mended))


def open_page(record: ShopRecord, most: int = 30) -> tuple[tuple[Hit, ...], tuple[Hit, ...]]:
    """Return what an empty field shows: the jobs of the cars that are here, and the latest jobs."""
    with record.reading() as connection:
        here = stored.jobs_here_now(connection, most)
        latest = [job for job in stored.jobs_latest(connection, most) if job not in set(here)]
        seen = stored.jobs_seen(connection, here + latest)
    nothing = Standing(0.0, (), {})
    return (
        tuple(_hit(seen[job], nothing) for job in here if job in seen),
        tuple(_hit(seen[job], nothing) for job in latest if job in seen),
    )


def _first_points(evidence: Evidence) -> float:
    return evidence.points() + ALL_WORDS * evidence.share_of_words


def _about_the_same(evidence: Mapping[int, Evidence], hits: WordHits) -> list[int]:
    """Return the jobs to count fixes over: those of the fault that was asked for."""
    jobs = [job for job, one in evidence.items() if one.groups or one.codes]
    if not jobs:
        jobs = list(hits.with_all) or [job for job, one in evidence.items() if one.named]
    if not jobs:
        jobs = [job for job, one in evidence.items() if one.parts]
    return sorted(jobs, reverse=True)[:COUNTED]


def _plain(question: Question, vocabulary: Vocabulary) -> dict[str, str]:
    """Return the names of the symptoms read and, after them, of their neighbours."""
    plain = {group.id: group.plain for group in question.groups}
    for group in question.groups:
        for other in vocabulary.near(group.id):
            plain.setdefault(other.id, other.plain)
    return plain


def _pieces(question: Question, named: Named) -> tuple[Piece, ...]:
    used = {word.word for word in question.words if word.place in named.places}
    rest = (one for one in question.pieces if one.kind != "word" or one.id not in used)
    return (*named.pieces, *rest)


def _hit(job: stored.JobSeen, standing: Standing) -> Hit:
    return Hit(
        job.id,
        job.number,
        job.day,
        job.left,
        job.vehicle,
        job.plate,
        job.texts["concern"],
        job.texts["cause"],
        job.texts["correction"],
        standing.score,
        standing.why,
        standing.marks,
    )

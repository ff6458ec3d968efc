"""The score of desktop_app/symptom_search/points.py in plain Python, job by job."""

from __future__ import annotations

from collections.abc import Sequence
from math import floor

from desktop_app.symptom_search import points
from desktop_app.symptom_search.word_index import course, entry
from desktop_app.symptom_search.word_index.asked import Asked, AskedWord, Way
from desktop_app.symptom_search.word_index.entry import JobEntry, marked
from desktop_app.symptom_search.word_index.porter import porter_stem
from desktop_app.symptom_search.word_index.weights import FIELD_WEIGHTS, impact, share_of_field

Lengths = Sequence[float]


def ranked(
    entries: Sequence[JobEntry], asked: Asked, lengths: Lengths, most: int
) -> list[tuple[int, int]]:
    """Return (points, id) of the best jobs: the best first, among equals the newest."""
    found = [(points_of(one, asked, lengths), one.job) for one in entries if keeps(one, asked)]
    known = [(score, job) for score, job in found if score is not None]
    return sorted(known, key=lambda pair: (-pair[0], -pair[1]))[:most]


def keeps(job: JobEntry, asked: Asked) -> bool:
    """Tell whether the filters keep a job."""
    kept = asked.kept
    return (
        set(kept.terms) <= set(job.facts)
        and (kept.since is None or job.came >= kept.since)
        and (kept.until is None or job.came <= kept.until)
    )


def points_of(job: JobEntry, asked: Asked, lengths: Lengths) -> int | None:
    """Return a job's points in units; None where nothing speaks for it."""

    def having(kind: str, values: Sequence[str]) -> int:
        return sum(marked(kind, value) in job.facts for value in values)

    same, near = having(entry.SYMPTOM, asked.groups), having(entry.SYMPTOM, asked.near_groups)
    units = points.UNIT * (
        points.SAME_SYMPTOM * same
        + points.NEAR_SYMPTOM * (near > 0 and not same)
        + points.SAME_CODE * having(entry.CODE, asked.codes)
        + points.RELATED_CODE * (having(entry.CODE, asked.related) > 0)
        + points.SAME_PART * (having(entry.PART, asked.parts) > 0)
    )
    if job.job in asked.numbered:
        units += points.UNIT * points.JOB_NUMBER
    elif job.vehicle in asked.vehicles:
        units += points.UNIT * points.NAMED_CAR
    units += sum(word.weight * word_value(job, word, lengths) for word in asked.words)
    if units <= 0:
        return None
    units += points.UNIT * points.SAME_CONDITION * having(entry.HAPPENS, asked.conditions)
    units += points.UNIT * points.NEVER_CONDITION * having(entry.NEVER, asked.conditions)
    if job.course & course.BACK:
        return units + points.UNIT * points.CAME_BACK
    trouble = job.course & (course.TROUBLE | course.LOST)
    stayed = is_settled(job, asked.today) and not trouble
    return units + points.UNIT * points.SEEN_FINE * stayed


def word_value(job: JobEntry, word: AskedWord, lengths: Lengths) -> int:
    """Return what the best way of a word says, in hundredths."""
    return max((_way_value(job, way, lengths) for way in word.ways), default=0)


def is_settled(job: JobEntry, today: int) -> bool:
    """Tell whether a repair was handed over, its window is behind it, and no return is open."""
    is_over = job.left != entry.NOT_HANDED_OVER and job.settles < today
    return course.is_settled(job.course, is_over=is_over)


def _way_value(job: JobEntry, way: Way, lengths: Lengths) -> int:
    said = _impacts(job, lengths)
    if way.begins:
        best = max((v for term, v in said.items() if term.startswith(way.terms[0])), default=0)
    else:
        best = min(said.get(term, 0) for term in way.terms)
    return floor(best * way.fit / 100 + 0.5)


def _impacts(job: JobEntry, lengths: Lengths) -> dict[str, int]:
    counts: dict[str, float] = {}
    for text, weight, mean in zip(job.texts, FIELD_WEIGHTS, lengths, strict=True):
        words = text.split()
        for word in words:
            share = share_of_field(len(words), mean)
            stem = porter_stem(word)
            counts[stem] = counts.get(stem, 0.0) + weight * share
    return {stem: impact(count) for stem, count in counts.items()}

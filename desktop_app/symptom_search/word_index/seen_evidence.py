"""What the arrays say of a few jobs in particular: the evidence behind their points."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from desktop_app.symptom_search.reasons import Evidence
from desktop_app.symptom_search.word_index import entry
from desktop_app.symptom_search.word_index.arrays import Arrays
from desktop_app.symptom_search.word_index.asked import Asked
from desktop_app.symptom_search.word_index.course import became
from desktop_app.symptom_search.word_index.scoring import Best


def evidence_of(best: Sequence[Best], asked: Asked) -> dict[int, Evidence]:
    """Return what speaks for each of these jobs and what became of it, by the jobs' ids."""
    found: dict[int, Evidence] = {}
    for arrays in {id(one.arrays): one.arrays for one in best}.values():
        those = [one for one in best if one.arrays is arrays]
        evidence = _evidence(arrays, asked, [one.place for one in those])
        found |= {one.job: said for one, said in zip(those, evidence, strict=True)}
    return found


def _evidence(arrays: Arrays, asked: Asked, places: Sequence[int]) -> list[Evidence]:
    import numpy as np

    at = np.array(places, np.intp)

    def having(kind: str, values: Iterable[str]) -> list[tuple[str, ...]]:
        those: list[tuple[str, ...]] = [()] * len(places)
        for value in values:
            for i, has in enumerate(arrays.having_at(entry.marked(kind, value), at)):
                those[i] += (value,) if has else ()
        return those

    symptoms, near = (having(entry.SYMPTOM, one) for one in (asked.groups, asked.near_groups))
    codes, related = (having(entry.CODE, one) for one in (asked.codes, asked.related))
    parts = having(entry.PART, asked.parts)
    happens, never = (having(one, asked.conditions) for one in (entry.HAPPENS, entry.NEVER))
    columns = (arrays.course, arrays.left, arrays.settles, arrays.seen)
    courses = (one[at].tolist() for one in columns)
    fates = [_became(*one, today=asked.today) for one in zip(*courses, strict=True)]
    return [
        Evidence(
            groups=symptoms[i],
            near_groups=near[i],
            codes=codes[i],
            related=related[i],
            parts=parts[i],
            happens=happens[i],
            never=never[i],
            became=fates[i],
        )
        for i in range(len(places))
    ]


def _became(course: int, left: int, settles: int, seen: int, *, today: int) -> str:
    """Return what became of a job by a day, in words; nothing of one that is still here."""
    if left == entry.NOT_HANDED_OVER:
        return ""
    return became(course, is_over=settles < today, seen_after=settles < seen <= today).value

"""The answer to a question: the jobs found, why, and what fixed it before."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple, TypedDict

from desktop_app.language import tr
from desktop_app.symptom_search.fixes import Fix, FixJson
from desktop_app.symptom_search.question import Piece
from desktop_app.symptom_search.reasons import Span


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
    words_in_common: list[HitJson]
    fixes: list[FixJson]


class Hit(NamedTuple):
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


class Found(NamedTuple):
    """The answer to one text.

    `weak` are jobs that have but a word or two of many in common with the text: about something
    else, most likely. `counted` is the number of jobs that the fixes are counted over: all that
    match, or, while the word index is still being made (`of_all` is False), the newest of them.
    """

    text: str
    read_as: tuple[Piece, ...]
    hits: tuple[Hit, ...]
    fixes: tuple[Fix, ...]
    counted: int
    of_all: bool = True
    weak: tuple[Hit, ...] = ()

    def counted_over(self) -> str:
        """Return over which jobs the fixes were counted, as one sentence."""
        if self.counted == 1:
            return tr("Counted over one repair handed over.")
        if not self.of_all:
            return tr(
                "Counted over the newest {counted:,} repairs handed over, not yet over all.",
                counted=self.counted,
            )
        return tr(
            "Counted over all {counted:,} repairs handed over that match.", counted=self.counted
        )

    def as_json(self) -> FoundJson:
        """Return the fields of the command contract."""
        return {
            "read_as": [piece.as_written() for piece in self.read_as],
            "jobs": [_hit_json(hit) for hit in self.hits],
            "words_in_common": [_hit_json(hit) for hit in self.weak],
            "fixes": [fix.as_json() for fix in self.fixes],
        }


def _hit_json(hit: Hit) -> HitJson:
    return {
        "number": hit.number,
        "score": hit.score,
        "concern": hit.concern,
        "why": list(hit.why),
    }

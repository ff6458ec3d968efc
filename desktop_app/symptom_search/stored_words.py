"""Words looked up in the record's own full-text index, for while there are no arrays to ask."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.databases.dialect_search import (
    Wanted,
    best,
    jobs_with_stems,
    newest,
    stems_beginning,
)
from desktop_app.symptom_search.typing_mistake import stem_lengths
from desktop_app.symptom_search.word_index.asked import AskedWord, Way

AT_A_STEP = 200  # jobs taken from one step of the ladder
# Scoring costs by the match, so words that all stand in more jobs than this aren't scored by
# the database: the newest that have them are taken.
MOST_SCORED = 3000
LEFT_OUT = 6  # with more words than this, only the rare ones are tried without the others
_STEMS_LOOKED_AT = 60
_SHELF = 5000


class WordsKept:
    """The stems that the record's index knows, and in how many jobs each stands."""

    def __init__(self, connection: Connection) -> None:
        self._connection = connection
        self.jobs: int = connection.execute(select(func.max(Job.id))).scalar() or 0

    def having(self, term: str) -> int:
        """Return in how many jobs a stem stands."""
        return jobs_with_stems(self._connection, [term]).get(term, 0)

    def having_way(self, way: Way) -> int:
        """Return in how many jobs, at most, a word may stand in this way."""
        if not way.begins:
            return min(map(self.having, way.terms))
        begun = stems_beginning(self._connection, way.terms[0], _STEMS_LOOKED_AT)
        return sum(count for _, count in begun)

    def shelf(self, beginning: str, word: str, allowed: int) -> dict[str, int]:
        """Return all stems that begin so and are near a word, and others, with the jobs of each."""
        stems = stems_beginning(self._connection, beginning, _SHELF)
        lengths = stem_lengths(word, allowed)
        return {stem: jobs for stem, jobs in stems if len(stem) in lengths}


def jobs_with_words(connection: Connection, words: Sequence[AskedWord], enough: int) -> set[int]:
    """Return jobs that have the words: all of them first, then one left out, then rare ones."""
    known = [one for one in words if one.jobs]
    if not known:
        return set()
    found = _take(connection, known)
    rarest_first = sorted(known, key=lambda one: one.jobs)
    if len(found) < enough and 1 < len(known) <= LEFT_OUT:
        for left_out in reversed(rarest_first):
            found |= _take(connection, [one for one in known if one is not left_out])
            if len(found) >= enough * 3:
                break
    if len(found) < enough and len(known) > 2:
        for alone in rarest_first[:4]:
            found |= _take(connection, [alone])
    return found


def _take(connection: Connection, words: Sequence[AskedWord]) -> set[int]:
    find = best if min(one.jobs for one in words) <= MOST_SCORED else newest
    return set(find(connection, [_wanted(one) for one in words], AT_A_STEP))


def _wanted(word: AskedWord) -> Wanted:
    """Return what the full-text index is asked for; of parted words the first one will do."""
    return Wanted((word.word,), tuple(dict.fromkeys(way.terms[0] for way in word.ways)))

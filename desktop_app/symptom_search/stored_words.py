"""Jobs found by their words: all of them first, then one left out, then the rare ones alone."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from math import log

from sqlalchemy import Connection, func, select

from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.dialect_search import (
    Wanted,
    best,
    jobs_with_stems,
    newest,
    stems_beginning,
)
from desktop_app.symptom_search.question import Word
from desktop_app.symptom_search.typing_mistake import mistakes_allowed, nearest
from desktop_app.symptom_search.word_forms import forms_to_find, possible_stems

AT_A_STEP = 200  # jobs taken from one step of the ladder
# Scoring costs by the match, so words that all stand in more jobs than this aren't scored by
# the database: the newest that have them are taken, and ranked with the rest.
MOST_SCORED = 3000
LEFT_OUT = 6  # with more words than this, only the rare ones are tried without the others
_STEMS_LOOKED_AT = 60
_SHELF = 5000


@dataclass(frozen=True, slots=True)
class SoughtWord:
    """One word as it is sought: what stands for it, in how many jobs, and how telling it is."""

    word: Word
    wanted: Wanted
    jobs: int
    weight: float
    near: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class WordHits:
    """Jobs by how much of the words they have (0 to 1), and those that have all of them."""

    sought: tuple[SoughtWord, ...] = ()
    shares: dict[int, float] = field(default_factory=dict)
    with_all: frozenset[int] = frozenset()


def jobs_with_words(connection: Connection, words: Sequence[Word], enough: int) -> WordHits:
    """Return jobs that have the words, going down the ladder until there are enough."""
    total = connection.execute(select(func.max(Job.id))).scalar() or 0
    sought = tuple(_seek(connection, word, total) for word in words)
    known = [one for one in sought if one.jobs]
    shares: dict[int, float] = {}
    if not known:
        return WordHits(sought)
    whole = sum(one.weight for one in sought)
    with_all = _take(connection, known, shares, whole)
    if len(shares) < enough and 1 < len(known) <= LEFT_OUT:
        for left_out in sorted(known, key=lambda one: one.weight):
            _take(connection, [one for one in known if one is not left_out], shares, whole)
            if len(shares) >= enough * 3:
                break
    if len(shares) < enough and len(known) > 2:
        for alone in sorted(known, key=lambda one: -one.weight)[:4]:
            _take(connection, [alone], shares, whole)
    complete = with_all if len(known) == len(sought) else ()
    return WordHits(sought, shares, frozenset(complete))


def _take(
    connection: Connection, words: Sequence[SoughtWord], shares: dict[int, float], whole: float
) -> list[int]:
    """Add the jobs that have all these words; the better the match, the larger the share."""
    rarest = min(one.jobs for one in words)
    find = best if rarest <= MOST_SCORED else newest
    found = find(connection, [one.wanted for one in words], AT_A_STEP)
    most = sum(one.weight for one in words) / whole if whole else 0.0
    for place, job in enumerate(found):
        share = most * (1 - 0.2 * place / AT_A_STEP)
        shares[job] = max(shares.get(job, 0.0), share)
    return found


def _seek(connection: Connection, word: Word, total: int) -> SoughtWord:
    """Find out how common a word is; where nobody wrote it, take the nearest that somebody did."""
    stems = jobs_with_stems(connection, possible_stems(word.word))
    jobs = max(stems.values(), default=0)
    if word.unfinished:
        begun = stems_beginning(connection, word.word, _STEMS_LOOKED_AT)
        jobs = max(jobs, sum(count for _, count in begun))
    forms = forms_to_find(word.word, word.unfinished)
    wanted = Wanted(forms.whole, forms.beginnings)
    # Our list of endings is shorter than Porter's; the index itself has the last word.
    jobs = jobs or len(newest(connection, [wanted], MOST_SCORED))
    if jobs or word.understood:
        return _sought(word, wanted, jobs, total)
    near, counted = _near(connection, word.word)
    return _sought(word, Wanted(beginnings=near), counted, total, near)


def _near(connection: Connection, word: str) -> tuple[tuple[str, ...], int]:
    """Return the nearest stems and in how many jobs they stand.

    Most mistakes leave the first two letters right, so those stems are looked at first; then
    those with the same first letter, and those that begin as if it had been swapped or dropped.
    """
    if not word.isalpha() or not mistakes_allowed(word):
        return (), 0
    for beginnings in ((word[:2],), (word[0], word[1] + word[0], word[1:3])):
        shelf = {
            stem: jobs
            for beginning in beginnings
            for stem, jobs in stems_beginning(connection, beginning, _SHELF)
            if stem.isalpha()
        }
        near = nearest(word, shelf.items())
        if near:
            return near, sum(shelf[stem] for stem in near)
    return (), 0


def _sought(
    word: Word, wanted: Wanted, jobs: int, total: int, near: tuple[str, ...] = ()
) -> SoughtWord:
    weight = log(1 + max(total, jobs) / (1 + jobs))
    return SoughtWord(word, wanted, jobs, max(weight, 0.05), near)

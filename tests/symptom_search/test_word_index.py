"""The arrays score and count exactly what the stated score says, however they are cut up."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.points import WHOLE_FIT
from desktop_app.symptom_search.word_index import arrays, entry, packing
from desktop_app.symptom_search.word_index.arrays import Part
from desktop_app.symptom_search.word_index.asked import Asked, AskedWord, Kept, Way
from desktop_app.symptom_search.word_index.counting import (
    Chosen,
    about_the_same,
    commonest_fixes,
    count_repairs,
)
from desktop_app.symptom_search.word_index.course import BACK, COUNTED, LOST, WAITS
from desktop_app.symptom_search.word_index.entry import JobEntry, fix_key, marked
from desktop_app.symptom_search.word_index.packing import NotAnIndex, facts_of, pack, unpack
from desktop_app.symptom_search.word_index.scoring import best_of, score
from desktop_app.symptom_search.word_index.writing import ArraysWriter, arrays_of, mean_lengths
from tests.symptom_search.plain_score import is_settled, ranked

TODAY = 1000
WORDS = ("stalls", "stalling", "stall", "hot", "hose", "hoses", "idle")
COURSES = st.sampled_from((COUNTED, COUNTED | BACK, COUNTED | WAITS, COUNTED | LOST, 0, BACK))
SAID = st.lists(st.sampled_from(WORDS), max_size=4)
IDS = st.sampled_from(("one", "two", "three"))
KINDS = (entry.SYMPTOM, entry.CODE, entry.PART, entry.HAPPENS, entry.NEVER, entry.SYSTEM)
FACTS = st.sets(st.builds(marked, st.sampled_from(KINDS), IDS), max_size=6)


@st.composite
def job_entries(draw: st.DrawFn) -> list[JobEntry]:
    """Draw up to twelve jobs with rising ids."""
    ids = sorted(draw(st.sets(st.integers(1, 40), max_size=12)))
    entries = []
    for job in ids:
        texts = tuple(" ".join(draw(SAID)) for _ in entry.FIELDS)
        left = draw(st.sampled_from((entry.NOT_HANDED_OVER, 900, 990)))
        settles = draw(st.sampled_from((999, 1000, entry.NEVER_SETTLED)))
        fixes = draw(st.sets(st.sampled_from((3, 5, 8)), max_size=2)) if left > 0 else set()
        rest = draw(st.tuples(COURSES, st.sampled_from((0, 995)), st.integers(1, 3)))
        came = draw(st.integers(880, 885))
        facts = tuple(sorted(draw(FACTS)))
        entries.append(
            JobEntry(job, texts, facts, came, left, settles, *rest, tuple(sorted(fixes)))
        )
    return entries


WAYS = st.one_of(
    st.builds(
        Way,
        st.tuples(st.sampled_from(("stall", "hot", "hose", "idl", "none"))),
        st.sampled_from((100, 90, 60)),
    ),
    st.builds(
        Way, st.tuples(st.sampled_from(("ho", "sta", "i", "x"))), st.just(WHOLE_FIT), st.just(True)
    ),
    st.just(Way(("hot", "hose"), 90)),
)
SEVERAL = st.sets(IDS, max_size=2).map(lambda ids: tuple(sorted(ids)))
QUESTIONS = st.builds(
    Asked,
    today=st.just(TODAY),
    groups=SEVERAL,
    near_groups=SEVERAL,
    guessed=SEVERAL,
    codes=SEVERAL,
    related=SEVERAL,
    parts=SEVERAL,
    conditions=SEVERAL,
    words=st.lists(
        st.builds(
            AskedWord,
            st.just("word"),
            st.lists(WAYS, max_size=3).map(tuple),
            st.integers(0, 2),
            st.integers(1, 9000),
        ),
        max_size=3,
    ).map(tuple),
    numbered=st.sets(st.integers(1, 40), max_size=1).map(tuple),
    vehicles=st.sets(st.integers(1, 3), max_size=1).map(tuple),
    kept=st.builds(
        Kept,
        st.sampled_from(((), (marked(entry.SYSTEM, "one"),))),
        st.sampled_from((None, 882)),
        st.sampled_from((None, 883)),
    ),
)


def cut_in_two(entries: Sequence[JobEntry], later: Sequence[JobEntry]) -> list[Part]:
    """Return the arrays of jobs as they once were, and of those that were changed since."""
    lengths = mean_lengths(entries)
    changed = np.array([one.job for one in later], np.int32)
    main = arrays_of([one._replace(course=COUNTED) for one in entries], lengths)
    alive = ~np.isin(main.ids, changed)
    return [Part(main, alive), Part(arrays_of(later, lengths))]


@given(job_entries(), QUESTIONS, st.integers(0, 5))
def test_the_best_jobs_are_exactly_those_of_the_stated_score(
    entries: list[JobEntry], asked: Asked, most: int
) -> None:
    lengths = mean_lengths(entries)
    right = ranked(entries, asked, lengths, most)
    whole = [score(Part(arrays_of(entries)), asked)]
    assert [(one.points, one.job) for one in best_of(whole, TODAY, most)] == right


@given(job_entries(), QUESTIONS, st.data())
def test_jobs_changed_since_are_scored_as_they_are_now(
    entries: list[JobEntry], asked: Asked, data: st.DataObject
) -> None:
    later = [one for one in entries if one.course != COUNTED or data.draw(st.booleans())]
    parts = [score(part, asked) for part in cut_in_two(entries, later)]
    right = ranked(entries, asked, mean_lengths(entries), 40)
    assert [(one.points, one.job) for one in best_of(parts, TODAY, 40)] == right


@given(job_entries(), st.integers(1, 4), st.data())
def test_what_fixed_it_is_counted_over_every_job(
    entries: list[JobEntry], most: int, data: st.DataObject
) -> None:
    later = [one for one in entries if one.course != COUNTED or data.draw(st.booleans())]
    chosen = [
        Chosen(part.arrays, np.ones(part.arrays.jobs, bool) if part.alive is None else part.alive)
        for part in cut_in_two(entries, later)
    ]
    right = []
    for key in (3, 5, 8):
        those = sorted((one for one in entries if key in one.fixes), reverse=True)
        if those:
            right.append((-len(those), -those[0].job, key, those))
    right.sort()
    counted = commonest_fixes(chosen, TODAY, most)
    assert [one.key for one in counted] == [key for _, _, key, _ in right[:most]]
    for fix, (_, _, _, those) in zip(counted, right, strict=False):
        settled = [one for one in those if is_settled(one, TODAY)]
        assert list(fix.jobs) == [one.job for one in those]
        assert list(fix.settled) == [one.job for one in settled]
        assert list(fix.back) == [one.job for one in those if one.course & BACK]
        assert fix.settled_back == sum(bool(one.course & BACK) for one in settled)
        assert fix.newest == those[0].job
    repairs = [one for one in entries if one.left > 0 and one.course & COUNTED]
    assert count_repairs(chosen) == len(repairs)


@given(job_entries(), QUESTIONS)
def test_the_jobs_counted_over_are_those_of_the_fault_asked_for(
    entries: list[JobEntry], asked: Asked
) -> None:
    chosen = about_the_same(asked, [score(Part(arrays_of(entries)), asked)])
    ids = {int(job) for one in chosen for job in one.arrays.ids[one.jobs]}
    found = {job for _, job in ranked(entries, asked, mean_lengths(entries), 40)}
    fault = {marked(entry.SYMPTOM, one) for one in asked.groups}
    fault |= {marked(entry.CODE, one) for one in asked.codes}
    same = {one.job for one in entries if fault.intersection(one.facts)} & found
    assert ids <= found
    assert ids == same or not same


@given(job_entries(), st.integers(1, 5))
def test_writing_in_pieces_makes_no_difference(entries: list[JobEntry], at_a_time: int) -> None:
    writer = ArraysWriter(mean_lengths(entries))
    for start in range(0, len(entries), at_a_time):
        writer.add(entries[start : start + at_a_time])
    in_pieces, at_once = writer.finish().named(), arrays_of(entries).named()
    for name, array in at_once.items():
        assert array.tolist() == in_pieces[name].tolist(), name


@given(job_entries())
def test_a_packed_index_comes_out_as_it_went_in(entries: list[JobEntry]) -> None:
    arrays = arrays_of(entries)
    packed = b"".join(pack(arrays, {"seq": 7}))
    assert facts_of(packed) == {"seq": 7}
    for name, array in unpack(np.frombuffer(packed, np.uint8)).named().items():
        assert array.dtype == arrays.named()[name].dtype, name
        assert array.tolist() == arrays.named()[name].tolist(), name


ONE_JOB = JobEntry(
    4, ("hose split",) * 8, (marked(entry.CODE, "P0300"),), 1, 2, 3, BACK, 2, 5, (6,)
)
PACKED = b"".join(pack(arrays_of([ONE_JOB]), {"seq": 7}))


@given(st.integers(0, len(PACKED) - 1), st.integers(1, 255))
def test_a_damaged_index_is_never_taken_for_whole(place: int, by: int) -> None:
    damaged = bytearray(PACKED)
    damaged[place] ^= by
    with pytest.raises(NotAnIndex):
        unpack(np.frombuffer(bytes(damaged), np.uint8))


@pytest.mark.parametrize("end", [0, 100, 4096, len(PACKED) - 1])
def test_an_index_that_was_cut_off_is_refused(end: int) -> None:
    with pytest.raises(NotAnIndex):
        unpack(np.frombuffer(PACKED[:end], np.uint8))


def test_an_index_of_another_version_is_not_read(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(packing, "VERSION", packing.VERSION - 1)
    older = b"".join(pack(arrays_of([ONE_JOB]), {"seq": 7}))
    monkeypatch.undo()
    for read in (facts_of, lambda file: unpack(np.frombuffer(file, np.uint8))):
        with pytest.raises(NotAnIndex):
            read(older)


def test_a_term_is_found_however_few_are_remembered(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(arrays, "_REMEMBERED", 2)
    terms = arrays_of([ONE_JOB]).terms
    asked = ["hose", "split", "none", "hose", "split"]
    places = [terms.place(word) for word in asked]
    assert [place if place is None else terms[place].decode() for place in places] == [
        *("hose", "split", None, "hose", "split")
    ]


def test_different_fixes_have_different_keys() -> None:
    words = [f" hose {number} replaced" for number in range(20_000)]
    assert len(set(map(fix_key, words))) == len(words)
    assert all(0 <= fix_key(one) < 2**63 for one in words)

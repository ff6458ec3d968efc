"""What was done before is counted without ever taking an open window for a success."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.fixes import Fix, fix_words, name_fix
from desktop_app.symptom_search.word_index.counting import Chosen, commonest_fixes
from desktop_app.symptom_search.word_index.course import BACK, COUNTED
from desktop_app.symptom_search.word_index.entry import JobEntry, fix_key
from desktop_app.symptom_search.word_index.writing import arrays_of

TODAY = date(2026, 11, 16)


def mended(days_ago: int, *fixes: str, back: bool = False) -> JobEntry:
    """Return a job handed over so many days ago, with a window of 90 days."""
    left = (TODAY - timedelta(days=days_ago)).toordinal()
    keys = tuple(sorted(map(fix_key, fixes)))
    course = COUNTED | BACK * back
    return JobEntry(days_ago, ("",) * 8, (), left, left, left + 90, course, 0, 1, keys)


def counted(jobs: Sequence[JobEntry], **names: str) -> list[Fix]:
    """Return the fixes of these jobs, of the kinds a and b or by the words of the correction."""
    arrays = arrays_of(sorted(jobs))
    fixes = commonest_fixes([Chosen(arrays, np.ones(len(jobs), bool))], TODAY.toordinal())
    return [name_fix(one, ("a", "b"), "Cleaned the ground.", names) for one in fixes]


def test_a_job_is_settled_from_the_day_after_its_last() -> None:
    assert counted([mended(90, "a")])[0].settled == 0
    assert counted([mended(91, "a")])[0].settled == 1


def test_open_windows_are_counted_but_not_in_the_share() -> None:
    (fix,) = counted([mended(200, "a"), mended(10, "a"), mended(5, "a", back=True)])
    assert (len(fix.jobs), fix.settled, fix.settled_back, fix.came_back) == (3, 1, 0, 1)
    assert fix.rate == 0.0
    assert fix.high == pytest.approx(0.7934, abs=1e-4)  # Wilson for 0 of 1: z²/(1 + z²)
    assert "of 1 settled none came back; of 2 not settled 1 came back already" in fix.sentence()


def test_the_jobs_behind_each_number_can_be_opened() -> None:
    (fix,) = counted([mended(200, "a", back=True), mended(10, "a"), mended(300, "a")])
    assert list(fix.jobs) == [300, 200, 10]
    assert list(fix.settled_jobs) == [300, 200]
    assert list(fix.back_jobs) == [200]
    assert fix.jobs[0] == 300
    assert fix.jobs[1:] == (200, 10)


def test_without_a_settled_job_there_is_no_share() -> None:
    (fix,) = counted([mended(10, "a")], a="rotor")
    assert (fix.rate, fix.low, fix.high) == (None, None, None)
    assert fix.name == "rotor"
    assert fix.sentence() == "once; none is settled yet"


SETTLED, OPEN = 200, 10  # days since the hand-over


@pytest.mark.parametrize(
    ("jobs", "said"),
    [
        ([(OPEN, True)], "once, and it came back"),
        ([(SETTLED, True)], "once, and it came back. Few: the true share may be 21% to 100%."),
        ([(OPEN, True)] * 2, "2 times, and all came back"),
        (
            [(OPEN, True), (SETTLED, True)],
            "2 times, and all came back. Few: the true share may be 21% to 100%.",
        ),
        ([(SETTLED, True)] * 10, "10 times, and all came back: 100% (72% to 100%)"),
        ([(OPEN, True), (OPEN, False)], "2 times; none is settled yet, 1 came back already"),
        ([(OPEN, False)] * 2, "2 times; none is settled yet"),
        (
            [(OPEN, True), (SETTLED, False)],
            "2 times; of 1 settled none came back; of 1 not settled 1 came back already. "
            "Few: the true share may be 0% to 79%.",
        ),
        (
            [(OPEN, True), (OPEN, False)] + [(SETTLED, False)] * 10,
            "12 times; of 10 settled none came back: 0% (0% to 28%); "
            "of 2 not settled 1 came back already",
        ),
    ],
)
def test_what_came_back_is_said_plainly_whatever_is_settled(
    jobs: list[tuple[int, bool]], said: str
) -> None:
    told = [mended(ago + at, "a", back=back) for at, (ago, back) in enumerate(jobs)]
    (fix,) = counted(told)
    assert fix.sentence() == said


def test_small_numbers_are_said_to_be_small() -> None:
    few = counted([mended(200 + i, "a") for i in range(4)])[0]
    many = counted([mended(200 + i, "a") for i in range(40)])[0]
    assert "Few" in few.sentence()
    assert "Few" not in many.sentence()


def test_two_parts_count_under_both_and_words_under_themselves() -> None:
    words = fix_words("Cleaned the ground.")
    jobs = [
        mended(100, "a", "b"),
        mended(101, words),
        mended(102, fix_words("cleaned  the ground")),
    ]
    assert sorted((fix.name, len(fix.jobs)) for fix in counted(jobs, a="cap", b="rotor")) == [
        ("Cleaned the ground.", 2),
        ("cap", 1),
        ("rotor", 1),
    ]
    assert fix_words(" ") == ""


def test_signs_and_capitals_make_no_other_fix() -> None:
    written = ("Set of leads renewed.", "set of leads – renewed!", "Set of leads renewed")
    assert len(counted([mended(100 + i, fix_words(one)) for i, one in enumerate(written)])) == 1
    assert fix_words("Set of leads renewed") != fix_words("Set of leads renewed and clipped")
    assert fix_words("plug-wire") != "plug-wire"  # never a part kind's id


@given(st.lists(st.tuples(st.integers(0, 300), st.booleans()), min_size=1, max_size=60))
def test_the_share_is_that_of_the_settled_jobs(told: list[tuple[int, bool]]) -> None:
    jobs = [mended(ago, "a", back=back)._replace(job=at) for at, (ago, back) in enumerate(told)]
    (fix,) = counted(jobs)
    settled = [back for ago, back in told if ago > 90]
    assert (fix.settled, fix.settled_back) == (len(settled), sum(settled))
    if settled:
        assert fix.rate == sum(settled) / len(settled)
        assert fix.low is not None
        assert fix.high is not None
        assert 0 <= fix.low <= fix.rate <= fix.high <= 1

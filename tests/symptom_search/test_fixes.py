"""What fixed it before is counted without ever taking an open window for a success."""

from __future__ import annotations

from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.symptom_search.fixes import MendedJob, count_fixes

TODAY = date(2026, 11, 16)


def mended(days_ago: int, *parts: str, back: bool = False, words: str = "") -> MendedJob:
    left = TODAY - timedelta(days=days_ago)
    return MendedJob(days_ago, frozenset(parts), words, left, 90, back)


def test_a_job_is_settled_from_the_day_after_its_last() -> None:
    assert not mended(90, "a").is_settled(TODAY)
    assert mended(91, "a").is_settled(TODAY)


def test_open_windows_are_counted_but_not_in_the_share() -> None:
    (fix,) = count_fixes([mended(200, "a"), mended(10, "a"), mended(5, "a", back=True)], {}, TODAY)
    assert (len(fix.jobs), fix.settled, fix.settled_back, fix.came_back) == (3, 1, 0, 1)
    assert fix.rate == 0.0
    assert fix.high == pytest.approx(0.7934, abs=1e-4)  # Wilson for 0 of 1: z²/(1 + z²)
    assert "1 of the rest came back already" in fix.sentence()


def test_without_a_settled_job_there_is_no_share() -> None:
    (fix,) = count_fixes([mended(10, "a")], {"a": "rotor"}, TODAY)
    assert (fix.rate, fix.low, fix.high) == (None, None, None)
    assert fix.name == "rotor"
    assert fix.sentence() == "once; no window is over yet"


def test_small_numbers_are_said_to_be_small() -> None:
    few = count_fixes([mended(200 + i, "a") for i in range(4)], {}, TODAY)[0]
    many = count_fixes([mended(200 + i, "a") for i in range(40)], {}, TODAY)[0]
    assert "Few" in few.sentence()
    assert "Few" not in many.sentence()


def test_two_parts_count_under_both_and_words_only_without_parts() -> None:
    jobs = [
        mended(100, "cap", "rotor", words="cap and rotor replaced"),
        mended(101, words="Cleaned the ground."),
        mended(102, words="cleaned  the ground"),
        mended(103, words=" "),
    ]
    counted = [(fix.name, len(fix.jobs)) for fix in count_fixes(jobs, {}, TODAY)]
    assert counted == [("Cleaned the ground.", 2), ("cap", 1), ("rotor", 1)]


@given(
    st.lists(
        st.builds(
            mended,
            st.integers(0, 400),
            st.sampled_from("abc"),
            back=st.booleans(),
        ),
        max_size=40,
    )
)
def test_counts_add_up(jobs: list[MendedJob]) -> None:
    fixes = count_fixes(jobs, {}, TODAY)
    assert sum(len(fix.jobs) for fix in fixes) == len(jobs)
    for fix in fixes:
        assert fix.settled_back <= fix.settled <= len(fix.jobs)
        assert fix.settled_back <= fix.came_back
        if fix.rate is not None and fix.low is not None and fix.high is not None:
            assert 0 <= fix.low <= fix.rate <= fix.high <= 1

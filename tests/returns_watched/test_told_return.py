"""A return that was only told: it is judged, counts once, and is counted alike everywhere."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs.odometer import RunningMiles
from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, HeardBy
from desktop_app.returns_watched.job_facts import JobFacts
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.met_by import met_by
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.told_return import (
    in_other_window,
    speaking_for,
    told_returns,
    told_row,
)
from desktop_app.returns_watched.window import Window

LEFT = date(2026, 10, 1)
JOB = JobFacts(
    "J-1", "car", LEFT, LEFT, odometer_out=RunningMiles(0, 10_000), window=Window(90, 3000)
)
SAME, FINE, NOT_REACHED = Answer.SAME_TROUBLE, Answer.FINE, Answer.NOT_REACHED
BACK = Judgement.SAME_SYMPTOM


def said(
    number: int, day: int, answer: Answer = SAME, judged: Judgement | None = None, **more: object
) -> CustomerSaid:
    on = LEFT + timedelta(days=day)
    return CustomerSaid(number, 1, on, answer, judgement=judged, **more)  # type: ignore[arg-type]


def rows(*answers: CustomerSaid, reading: RunningMiles | None = None) -> list[ReturnRow]:
    """What was told of the one job, as rows."""
    told = told_returns(answers, LEFT)
    return [told_row(one, JOB, job_id=1, vehicle="hatchback", reading=reading) for one in told]


def still_told(told: Sequence[ReturnRow], came: Sequence[ReturnRow]) -> tuple[ReturnRow, ...]:
    """What was told and no visit speaks for."""
    return tuple(row for row in told if speaking_for(row, came) is None)


def seen(
    day: int,
    judged: Judgement | None,
    *,
    inside: bool = True,
    in_chain: bool = False,
    cause: str | None = None,
) -> ReturnRow:
    """A later visit of the car."""
    one = Candidate("J-1", f"J-{day}", day, None, inside, "time", (), None, "J-1", judged)
    came_on = LEFT + timedelta(days=day)
    chained = replace(one, in_chain=in_chain)
    return ReturnRow(chained, 1, 100 + day, "hatchback", LEFT, came_on, cause_class=cause)


def test_what_is_told_again_is_one_return_until_something_else_is_said() -> None:
    answers = [said(1, 5), said(2, 6, NOT_REACHED), said(3, 9, words="in the rain")]
    [one] = told_returns(answers, LEFT)
    assert (one.on, one.judged_on.id, one.words) == (LEFT + timedelta(days=5), 1, "in the rain")
    assert told_returns([said(1, -3)], LEFT) == ()
    fine = said(4, 12, FINE)  # another shop may have mended it
    assert told_returns([*answers, fine], LEFT) == (one,)
    first, second = told_returns([*answers, fine, said(5, 20)], LEFT)
    assert (first, second.on) == (one, LEFT + timedelta(days=20))


def test_what_is_told_after_a_visit_of_the_car_is_told_anew() -> None:
    answers = [said(1, 5), said(2, 9)]
    for day, tellings in ((4, 1), (5, 2), (7, 2), (9, 2), (10, 1)):
        assert len(told_returns(answers, LEFT, [LEFT + timedelta(days=day)])) == tellings


def test_answers_of_the_day_on_which_the_car_came_stay_together() -> None:
    answers = [said(1, 5), said(2, 5)]
    assert len(told_returns(answers, LEFT, [LEFT + timedelta(days=5)])) == 1


def test_what_was_judged_no_comeback_and_is_told_again_waits() -> None:
    for judged, returns in ((BACK, 1), (Judgement.UNRELATED, 2), (Judgement.CANNOT_TELL, 2)):
        found = rows(said(1, 5, SAME, judged), said(2, 30))
        assert [row.waits for row in found] == [False, True][:returns]


def test_no_judgement_is_lost_between_two() -> None:
    first = said(1, 5, SAME, Judgement.CANNOT_TELL)
    second = said(2, 30, SAME, BACK, dangerous=True)
    for between in ((), (said(3, 10, FINE),), (said(3, 10, NOT_REACHED),)):
        found = rows(first, *between, second)
        assert [row.judgement for row in found] == [Judgement.CANNOT_TELL, BACK]
        assert [row.dangerous for row in found] == [None, True]


def test_an_earlier_call_noted_later_hides_nothing() -> None:
    known = said(1, 12, dangerous=True, why="brake hose", cause_class="fitted-badly")
    [row] = rows(known, said(2, 10))
    assert (row.came_on, row.judged_id) == (LEFT + timedelta(days=10), 1)
    assert (row.dangerous, row.why, row.cause_class) == (True, "brake hose", "fitted-badly")


def test_a_judgement_stays_with_what_was_told_however_often_it_is_told_again() -> None:
    more = {"why": "the bill says so", "dangerous": True}
    answers = [said(1, 5, SAME, BACK, **more), said(2, 9), said(3, 30)]
    for until in (1, 2, 3):
        [row] = rows(*answers[:until])
        assert (row.judgement, row.why, row.dangerous) == (BACK, "the bill says so", True)
    [row] = rows(said(1, 5), said(2, 9, SAME, BACK))  # wherever the judgement was written
    assert row.judgement is BACK


@pytest.mark.parametrize(
    ("judged", "cause", "where"),
    [
        (None, None, "waits"),
        (BACK, None, "back"),
        (Judgement.FROM_OUR_HANDS, "fitted-badly", "back"),
        (BACK, "other-use", "aside"),
        (Judgement.UNRELATED, "new", "aside"),
        (Judgement.CANNOT_TELL, None, "unsure"),
        (Judgement.OTHER_HANDS, None, ""),
    ],
)
def test_it_counts_as_it_was_judged(
    judged: Judgement | None, cause: str | None, where: str
) -> None:
    met = met_by(rows(said(1, 20, SAME, judged, cause_class=cause)))
    assert [name for name, row in met._asdict().items() if row is not None] == [where][: len(where)]


def test_days_and_miles_both_say_whether_it_lies_in_the_window() -> None:
    told = said(1, 20, odometer_told=12_000)
    for miles, inside in ((12_999, True), (13_000, True), (13_001, False)):
        [row] = rows(told, reading=RunningMiles(0, miles))
        assert (row.candidate.distance_miles, row.in_window) == (miles - 10_000, inside)
    [row] = rows(told, reading=RunningMiles(1, 12_000))  # another odometer since
    assert (row.candidate.distance_miles, row.in_window) == (None, True)
    [row] = rows(said(1, 91))
    assert (row.in_window, met_by([row]).later) == (False, row)
    assert in_other_window(row, Window(365, 12_000)).waits
    assert not in_other_window(rows(told)[0], Window(10, 1000)).in_window


def test_it_says_how_the_shop_knows_of_it() -> None:
    assert rows(said(1, 33))[0].later == "told 2026-11-03"
    paper = rows(said(1, 33), said(2, 40, source=HeardBy.PAPER))[0]
    assert (paper.later, paper.heard_by, paper.asked_id) == ("on paper 2026-11-03", "paper", 1)
    assert paper.opens == "J-1"


@pytest.mark.parametrize(
    ("told", "visit", "stands"),
    [
        (None, seen(25, None), False),
        (None, seen(25, None, inside=False), True),
        (None, seen(25, Judgement.UNRELATED), True),
        (None, seen(25, BACK, cause="new"), True),
        (None, seen(25, Judgement.FORETOLD), False),
        (None, seen(95, BACK, inside=False), True),
        (None, seen(25, None, in_chain=True), False),
        (None, seen(19, BACK), True),
        (BACK, seen(25, None), True),  # it was judged, the visit was not
        (BACK, seen(25, BACK), False),
        (BACK, seen(25, None, in_chain=True), False),
        (BACK, seen(25, Judgement.CANNOT_TELL), True),
        (BACK, seen(25, Judgement.FORETOLD), True),
        (BACK, seen(25, Judgement.OTHER_HANDS), True),
        (BACK, seen(25, BACK, cause="other-use"), True),
        (BACK, seen(25, Judgement.UNRELATED), True),
        (Judgement.OTHER_HANDS, seen(25, None), True),
        (Judgement.OTHER_HANDS, seen(25, Judgement.UNRELATED), True),
        (Judgement.OTHER_HANDS, seen(25, BACK), False),
        (Judgement.CANNOT_TELL, seen(25, Judgement.FORETOLD), False),
        (BACK, seen(95, BACK, inside=False), True),
        (BACK, seen(19, BACK), True),
    ],
)
def test_a_later_visit_speaks_for_what_was_told(
    told: Judgement | None, visit: ReturnRow, stands: bool
) -> None:
    assert bool(still_told(rows(said(1, 20, SAME, told)), [visit])) is stands


answers = st.lists(
    st.tuples(
        st.integers(0, 60),
        st.sampled_from((SAME, SAME, SAME, FINE, NOT_REACHED)),
        st.sampled_from((None, None, *Judgement)),
    ),
    max_size=4,
).map(lambda some: [said(n, *one) for n, one in enumerate(some, 1)])
visits = st.lists(
    st.builds(seen, st.integers(0, 90), st.sampled_from((None, *Judgement))), max_size=3
)


@given(answers, visits)
def test_the_order_in_which_they_are_read_never_matters(
    said: list[CustomerSaid], came: list[ReturnRow]
) -> None:
    expected = still_told(rows(*said), came)
    for mixed in permutations(said):
        assert still_told(rows(*mixed), came[::-1]) == expected


@given(answers, visits)
def test_told_and_seen_never_count_twice(said: list[CustomerSaid], came: list[ReturnRow]) -> None:
    stand = still_told(rows(*said), came)
    for row in stand:
        if row.is_comeback:  # no visit since that was judged a comeback inside the window
            assert not any(v.is_comeback and v.came_on >= row.came_on for v in came)
        if row.waits:
            assert not any(v.waits and v.came_on >= row.came_on for v in came)
    judged = {answer.id for answer in said if answer.answer is SAME and answer.judgement}
    assert sum(row.judgement is not None for row in stand) <= len(judged)
    others = sum(answer.answer is FINE for answer in said)
    assert sum(row.waits for row in stand) <= 1 + others
    for row in rows(*said):  # what was told is never lost: it stands, or a visit speaks for it
        assert (row in stand) == (speaking_for(row, came) is None)
        if not came:
            assert row in stand

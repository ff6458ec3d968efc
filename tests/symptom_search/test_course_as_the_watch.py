"""The search and the watch say the same of a job: every mix of return, cause, time and telling."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from itertools import product
from typing import NamedTuple

import pytest

from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement, return_cause
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.symptom_search.word_index.course import CAUSES_NOT_OURS, COMEBACKS
from tests.symptom_search.conftest import OldJobs

TODAY = date(2026, 11, 16)
LEFT = "2026-03-02T16:00:00+00:00"  # 90 days: until 31 May
SOON, LATER = "2026-04-06", "2026-08-03"
SAME, OTHER = "brakes squeal again", "heater blows cold"
# What the search says otherwise: a return that waits has a word of its own there.
SAID = {Standing.UNDER_WATCH: "a return waits to be judged"}


class Visit(NamedTuple):
    """A later visit: when, for what, and what a person said of it (nothing: not judged)."""

    on: str
    concern: str
    judgement: Judgement | None = None
    cause: str | None = None


VISITS = [
    Visit(*one)
    for one in product((SOON, LATER), (SAME, OTHER), (None, *Judgement), (None, "other-use", "new"))
    if one[2] is not None or one[3] is None
]
ANSWERS = (None, "fine", "same trouble", "other trouble", "car is gone", "not reached")


def write(jobs: OldJobs, visits: tuple[Visit, ...], told: dict[str, str], sold: str = "") -> int:
    """Write a job of last spring with what came of it; return its id."""
    car = jobs.car()
    first = jobs.job("brakes squeal", car=car, left=LEFT)
    later = [jobs.job(one.concern, car=car, left=f"{one.on}T09:00:00+00:00") for one in visits]

    def work(deed: Deed) -> None:
        for job, one in zip(later, visits, strict=True):
            if one.judgement is not None:
                said = {"judgement": one.judgement.value, "cause_class": one.cause}
                deed.add(ReturnLink, earlier_job_id=first, later_job_id=job, **said)
        for on, answer in told.items():
            deed.add(CustomerAsked, job_id=first, answer=answer, asked_on=on)
        if sold:
            deed.add(VehicleEvent, vehicle_id=car, kind="sold", happened_on=sold)

    jobs.record.do("Say what came of it", work)
    return first


def both(jobs: OldJobs, ids: dict[int, object]) -> Iterator[tuple[object, str, str]]:
    """Yield what was written, what the watch says of it and what the search says."""
    hits = {hit.job_id: hit.why[-1] for hit in jobs.find("brakes squeal", 5000).hits}
    with jobs.record.reading() as connection:
        for job, about in ids.items():
            standing = read_standing(connection, job, TODAY).standing
            yield about, SAID.get(standing, standing.value), hits[job]


def differing(jobs: OldJobs, ids: dict[int, object]) -> list[tuple[object, str, str]]:
    return [one for one in both(jobs, ids) if one[1] != one[2]]


def test_the_causes_and_judgements_are_those_of_the_watch() -> None:
    assert {one.value for one in Judgement if one.is_comeback} == COMEBACKS
    assert {one.id for one in RETURN_CAUSES if not one.ours} == CAUSES_NOT_OURS
    assert return_cause("other-use") is not None


def test_one_visit_however_it_was_judged(old_jobs: OldJobs) -> None:
    ids: dict[int, object] = {write(old_jobs, (one,), {}): one for one in VISITS}
    assert differing(old_jobs, ids) == []
    assert {said for *_, said in both(old_jobs, ids)} == {
        "came back",
        "came back, not ours",
        "came back, cannot tell",
        "came back after the window",
        "a return waits to be judged",
        "seen fine",
        "nothing heard",
    }


def test_a_visit_and_what_the_customer_told_after_the_window(old_jobs: OldJobs) -> None:
    some = [one for one in VISITS if one.cause is None]
    ids: dict[int, object] = {
        write(old_jobs, (visit,), {"2026-09-01": answer}): (visit, answer)
        for visit, answer in product(some, ANSWERS)
        if answer is not None
    }
    assert differing(old_jobs, ids) == []


def test_two_tellings_and_no_visit(old_jobs: OldJobs) -> None:
    days = ("2026-04-20", "2026-09-01")
    ids: dict[int, object] = {}
    for pair in product(ANSWERS, repeat=2):
        told = {day: answer for day, answer in zip(days, pair, strict=True) if answer is not None}
        ids[write(old_jobs, (), told)] = told
    assert differing(old_jobs, ids) == []


@pytest.mark.parametrize("rule", ["no", "yes"])
def test_a_sale_counts_as_the_house_rules_have_it(old_jobs: OldJobs, rule: str) -> None:
    some = [one for one in VISITS if one.cause is None]
    ids: dict[int, object] = {
        write(old_jobs, visits, {}, sold): (visits, sold)
        for visits, sold in product([(), *((one,) for one in some)], ("2026-03-20", "2026-09-01"))
    }
    old_jobs.find("brakes squeal")  # what is known by now is kept
    change_rule(old_jobs.record, "sale_ends_window", rule)
    assert differing(old_jobs, ids) == []

"""What is said of a proof: codes, steps, doubts about the level, what to watch for, the window."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import CodeRead, JobView
from desktop_app.repair_jobs.proof import ProofLevel
from desktop_app.repair_jobs.proof_codes import codes_in_words, codes_said, pending_after
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_said import (
    codes_to_say,
    conditions_told,
    level_words,
    proof_doubts,
    watch_for,
    window_in_words,
)
from desktop_app.repair_jobs.proof_steps import STEPS, order_said, step_question
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.repair_jobs.self_tests_compared import StageTests
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord


def codes(*read: str) -> tuple[CodeRead, ...]:
    """Read "P0300 stored found" and the like."""
    split = [one.split(" ", 2) for one in read]
    return tuple(CodeRead(row, *words) for row, words in enumerate(split))


@pytest.fixture
def job(shop: ShopRecord) -> JobView:
    """A car that misses when damp and pulling, about the ignition; its window is the shop's."""
    said = WriteUp("misses", plate="TH 1", odometer=1000, conditions=("damp", "pulling"))
    actions.write_up(shop, said)
    actions.choose_system(shop, 1, "ignition")
    with shop.reading() as connection:
        return read_job(connection, 1)


def test_a_permanent_code_that_stays_is_said_to_leave_by_itself_alone() -> None:
    read = codes("P0420 permanent found", "P0420 permanent after repair", "P0300 stored found")
    said = codes_said(read, True, False, False)
    assert said == (
        "P0420 stays as a permanent code: it leaves only by the car's own passed self-test; "
        "no clearing takes it away.",
        "An emission test may refuse the car until its own tests have run.",
    )
    unread = codes_said(codes("P0420 permanent found"), False, False, False)
    assert unread[0].startswith("P0420 was a permanent code before")
    assert codes_said(codes("P0420 permanent found"), True, False, False) == ()


def test_what_is_there_again_and_what_is_new_is_said() -> None:
    read = codes("P0300 stored found", "P0300 pending after repair", "P0171 stored after repair")
    assert codes_said(read, True, False, False) == (
        "There before and there again: P0300.",
        "Not there before: P0171.",
    )
    assert pending_after(read) == ("P0300", "P0171")


def test_codes_that_nobody_read_again_are_not_called_gone() -> None:
    found = codes("P0300 stored found")
    assert codes_in_words(found, were_read_after=False) == (
        "Before: P0300 stored.",
        "After: not written down.",
    )
    assert codes_in_words(found, were_read_after=True)[1] == "After: read again, none is left."
    assert codes_in_words((), were_read_after=False) == ()


def test_tests_that_wait_or_were_wiped_may_fail_an_emission_test(job: JobView) -> None:
    waits = ProofKept(tests={"after repair": StageTests("00 07 65 04")})
    assert codes_to_say(job, waits) == (
        "An emission test may refuse the car until its own tests have run.",
    )
    cleared = ProofKept(steps={"saved": "1", "cleared": "2"})
    assert "set the car's own tests back" in codes_to_say(job, cleared)[0]
    assert codes_to_say(job, ProofKept(tests={"after repair": StageTests("00 07 65 00")})) == ()


def test_clearing_before_saving_is_asked_about_and_stays_in_view() -> None:
    assert "Nothing is ticked as saved yet" in (step_question({}, "cleared") or "")
    assert step_question({"saved": "2026-11-16T12:00"}, "cleared") is None
    assert "No drive is ticked yet" in (step_question({}, "cold-read") or "")
    assert [step_question({}, one.id) for one in STEPS if one.id in ("saved", "driven")] == [
        None
    ] * 2
    assert order_said({"cleared": "2026-11-16T12:00"})
    assert order_said({"cleared": "2026-11-16T12:00", "saved": "2026-11-16T12:30"})
    assert order_said({"cleared": "2026-11-16T12:30", "saved": "2026-11-16T12:00"}) == ()
    assert order_said({"saved": "2026-11-16T12:00"}) == ()


def test_a_level_is_doubted_where_what_was_read_speaks_against_it(job: JobView) -> None:
    not_run = ProofKept(tests={"after repair": StageTests("00 17 65 00")})
    full = ProofLevel.FULL_TRIP
    assert proof_doubts(job, not_run, full) == (
        "The car's own test has not run: misfire. Not run is not passed.",
    )
    assert proof_doubts(job, not_run, ProofLevel.ROAD) == ()
    run = ProofKept(tests={"after repair": StageTests("00 07 65 00")})
    assert proof_doubts(job, run, full) == ()
    assert "not written down" in proof_doubts(job, ProofKept(), full)[0]
    left = replace(job, codes=codes("P0300 pending after repair"))
    assert "P0300 is written down as read" in proof_doubts(left, run, full)[0]
    assert proof_doubts(left, run, ProofLevel.UNPROVEN) == ()
    still = replace(run, provoked=Provoked(9, 5, 1, 5))
    assert "it still came" in proof_doubts(job, still, ProofLevel.BAY)[0]


def test_same_conditions_says_how_many_of_them_were_met(job: JobView) -> None:
    told, same = conditions_told(job), ProofLevel.SAME_CONDITIONS
    assert level_words(same, {"damp": True}, told) == "4  same conditions (1 of 2 met)"
    assert level_words(same, {"damp": True, "pulling": True}, told) == "4  same conditions"
    assert level_words(same, {}, ()) == "4  same conditions"
    assert level_words(ProofLevel.ROAD, {}, told) == "2  road"


def test_what_to_watch_for_never_calls_a_car_safe(job: JobView) -> None:
    waits = ProofKept(tests={"after repair": StageTests("00 07 65 04")})
    said = watch_for(job, waits)
    assert said[0] == (
        "Tell us when you notice the same trouble again, above all: damp, pulling hard or uphill."
    )
    assert "have not run yet" in said[1]
    assert "safe" not in " ".join(said)
    assert len(watch_for(job, ProofKept())) == 2


def test_the_window_is_said_in_plain_words_and_in_the_cars_unit(job: JobView) -> None:
    here = replace(job, window_days=90, window_miles=3000, window_rule="first")
    assert window_in_words(here) == (
        "90 days or 3,000 miles after the hand-over, whichever comes first. "
        "So far: it is given at the hand-over."
    )
    given = replace(here, left_at="2026-11-13T16:00:00+00:00")
    until = "(the last is 11 February 2027)"
    assert window_in_words(given) == (
        f"90 days {until} or 3,000 miles after the hand-over, whichever comes first."
    )
    both = replace(given, window_rule="both")
    assert window_in_words(both) == (
        f"90 days {until} and 3,000 miles after the hand-over, until both have ended."
    )
    metric = replace(given, vehicle=replace(job.vehicle, odometer_unit="km"))
    assert "4,828 km" in window_in_words(metric)
    assert (
        window_in_words(replace(given, window_miles=0)) == f"90 days {until} after the hand-over."
    )
    assert window_in_words(replace(given, window_days=0)) == "3,000 miles after the hand-over."
    assert "No limit" in window_in_words(replace(given, window_days=0, window_miles=0))
    assert window_in_words(given, months=3).startswith(f"3 months {until} or 3,000 miles")

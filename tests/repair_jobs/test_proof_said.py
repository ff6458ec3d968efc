"""What is said of a proof: codes, steps, doubts about the level, what to watch for, the window."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import CheckMade, CodeRead, JobView
from desktop_app.repair_jobs.proof import (
    CODES_READ,
    RECORDED_LEVELS,
    ProofLevel,
    why_not_offered,
    worth_saying,
)
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.proof_codes import codes_in_words, codes_said, pending_after
from desktop_app.repair_jobs.proof_kept import CaughtKept, ProofKept, caught_in_words
from desktop_app.repair_jobs.proof_said import (
    codes_to_say,
    conditions_told,
    drive_said,
    level_words,
    proof_doubts,
    proof_reached,
    readings_doubted,
    watch_for,
)
from desktop_app.repair_jobs.proof_steps import STEPS, order_said, step_question
from desktop_app.repair_jobs.provocation import Provoked, provoked_sentence
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.self_tests import SelfTestState
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


def test_times_the_wrong_way_round_stay_in_view() -> None:
    times = {step.id: f"2026-11-16T{hour:02}:00" for hour, step in enumerate(STEPS, start=8)}
    assert order_said(times) == ()
    assert order_said({**times, "driven": "2026-11-16T08:30"}) == (
        "By their times “Driven” was done before “Cleared once”.",
    )
    assert order_said({**times, "cold-read": "2026-11-16T08:30"}) == (
        "By their times “Read again cold” was done before “Driven”.",
    )


def test_same_conditions_is_offered_only_where_a_condition_was_told() -> None:
    for level in RECORDED_LEVELS:
        assert why_not_offered(level, ["damp"]) is None
    refused = [level for level in RECORDED_LEVELS if why_not_offered(level, []) is not None]
    assert refused == [ProofLevel.SAME_CONDITIONS]
    said = why_not_offered(ProofLevel.SAME_CONDITIONS, [])
    assert said is not None
    assert "nobody has told us of a condition" in said.what


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


def ticked(*words: str) -> tuple[CheckMade, ...]:
    """The checks of the proof with these words, ticked as done."""
    return tuple(CheckMade(row, "proof", one, "done") for row, one in enumerate(words))


FULL, ROAD, BAY = ProofLevel.FULL_TRIP, ProofLevel.ROAD, ProofLevel.BAY
RUN = ProofKept(tests={"after repair": StageTests("00 07 65 00")})


@pytest.mark.parametrize("system", ["brakes", "steering", "airbags", "a made-up system"])
def test_a_full_trip_of_the_engine_says_nothing_of_the_brakes(job: JobView, system: str) -> None:
    here = replace(job, system=system, checks=ticked(CODES_READ))
    all_complete = ProofKept(tests={"after repair": StageTests("41 01 00 07 E5 00")})
    reached = proof_reached(here, all_complete, FULL)
    assert (reached.means, reached.own_test) == ("", None)
    assert "says nothing of this repair" in " ".join(worth_saying(reached))
    assert "passed" not in " ".join(worth_saying(reached))


def test_an_engine_that_has_no_such_test_is_not_asked_for_one(job: JobView) -> None:
    here = replace(job, system="evaporative", checks=ticked(CODES_READ))
    no_spark = StageTests(by_hand={"boost-pressure": SelfTestState.COMPLETE})
    reached = proof_reached(here, ProofKept(tests={"after repair": no_spark}), FULL)
    assert reached.own_test is None
    assert "says nothing of this repair" in " ".join(worth_saying(reached))


def test_a_test_that_nobody_read_has_not_passed_because_another_did(job: JobView) -> None:
    here = replace(job, system="exhaust", checks=ticked(CODES_READ))
    one = StageTests(by_hand={"secondary-air": SelfTestState.COMPLETE})
    reached = proof_reached(here, ProofKept(tests={"after repair": one}), FULL)
    assert not reached.means
    assert "nobody read: catalyst" in " ".join(worth_saying(reached))


@pytest.mark.parametrize("system", ["", "brakes", "ignition", "exhaust"])
@pytest.mark.parametrize("typed", ["", "41 01 00 77 E5 E5"])
def test_a_test_that_nobody_saw_running_through_never_passed(
    job: JobView, system: str, typed: str
) -> None:
    here = replace(job, system=system, checks=ticked(CODES_READ))
    reached = proof_reached(here, ProofKept(tests={"after repair": StageTests(typed)}), FULL)
    assert reached.means == ""
    said = " ".join(worth_saying(reached))
    assert "not run" in said if typed else "is not written down" in said
    assert "passed" not in said.replace("Not run is not passed", "")


def test_a_full_trip_is_claimed_where_all_of_it_is_written_down(job: JobView) -> None:
    here = replace(job, checks=ticked(CODES_READ))
    reached = proof_reached(here, RUN, FULL)
    assert reached.means == FULL.means
    assert "The car's own test passed" in worth_saying(reached)[0]
    left = proof_reached(replace(here, codes=codes("P0302 pending after repair")), RUN, FULL)
    assert (left.means, worth_saying(left)[0]) == (
        "",
        "P0302 is written down as read after the repair.",
    )
    permanent = replace(job, codes=codes("P0302 permanent after repair"))
    unread = proof_reached(permanent, RUN, FULL)  # says nothing of the pending ones
    assert unread.means == ""
    assert "That no code was pending afterwards is not written down." in worth_saying(unread)


def test_a_count_or_a_lamp_in_the_bytes_speaks_against_any_level(job: JobView) -> None:
    lamp = ProofKept(tests={"after repair": StageTests("82 07 65 00")})
    assert proof_doubts(job, lamp, BAY) == (
        "The bytes read after the repair count 2 stored codes.",
        "By the bytes read after the repair the engine's warning lamp is on.",
    )


def test_bytes_that_do_not_speak_of_the_system_prove_nothing_of_it(job: JobView) -> None:
    other = ProofKept(tests={"after repair": StageTests("00 07 01 00")})
    assert proof_doubts(replace(job, system="evaporative"), other, FULL) == (
        "No test of the car's own that was read speaks of this repair: evaporative system.",
    )


def test_the_bay_claims_what_was_ticked_and_nothing_else(job: JobView) -> None:
    brakes = replace(job, system="brakes", conditions={})
    checks = proof_checks("brakes")
    plain = proof_reached(brakes, ProofKept(), BAY)
    assert plain.means == ""
    said = " ".join(worth_saying(plain))
    assert "Which checks were made is not written down." in said
    assert f"Never left out, and not ticked: {checks.bay[0]};" in said
    done = replace(brakes, checks=ticked(*checks.bay, *checks.road))
    said = " ".join(worth_saying(proof_reached(done, ProofKept(), BAY)))
    assert f"Ticked as done: {checks.bay[0]};" in said
    assert "not ticked" not in said


def test_a_car_that_was_driven_is_not_called_not_driven(job: JobView) -> None:
    told = worth_saying(proof_reached(job, ProofKept(), BAY))[0]
    assert told == "Proved in the bay only; it was not driven."
    far = replace(job, proof_distance=12.0)
    assert "not driven" not in " ".join(worth_saying(proof_reached(far, ProofKept(), BAY)))
    step = ProofKept(steps={"driven": "2026-11-16T12:00:00"})
    assert "not driven" not in " ".join(worth_saying(proof_reached(job, step, BAY)))


def test_a_test_that_was_seen_to_run_is_not_called_not_seen(job: JobView) -> None:
    assert "not seen to pass" in worth_saying(proof_reached(job, ProofKept(), ROAD))[0]
    assert "not seen" not in " ".join(worth_saying(proof_reached(job, RUN, ROAD)))


def test_same_conditions_says_what_was_not_read(job: JobView) -> None:
    met = replace(RUN, conditions={"damp": True, "pulling": True})
    said = worth_saying(proof_reached(job, met, ProofLevel.SAME_CONDITIONS))
    assert "That no code was pending afterwards is not written down." in said


def test_same_conditions_is_not_offered_where_one_was_not_met() -> None:
    said = why_not_offered(ProofLevel.SAME_CONDITIONS, ["damp", "rain"], ["rain", "cold"])
    assert said is not None
    assert said.what == "“Same conditions” is not offered: rain was not met."
    assert why_not_offered(ProofLevel.SAME_CONDITIONS, ["damp"], ["cold"]) is None
    assert why_not_offered(ROAD, ["damp"], ["damp"]) is None


def test_at_random_is_no_condition_that_a_drive_could_have(job: JobView) -> None:
    assert conditions_told(replace(job, conditions={"damp": True, "random": True})) == ("damp",)
    assert conditions_told(replace(job, conditions={"damp": False, "random": True})) == ()


@pytest.mark.parametrize(
    ("found", "after", "one", "says"),
    [
        ("P0300 pending after repair", "01 07 65 00", "P0300 is written", "count 1 stored code."),
        (
            "P0300 pending after repair|P0171 stored after repair",
            *("02 07 65 00", "P0300, P0171 are written", "count 2 stored codes."),
        ),
    ],
)
def test_codes_that_are_there_after_the_repair_speak_against_any_level(
    job: JobView, found: str, after: str, one: str, says: str
) -> None:
    read = replace(job, codes=codes(*found.split("|")))
    doubts = proof_doubts(read, ProofKept(tests={"after repair": StageTests(after)}), BAY)
    assert doubts[0].startswith(f"{one} down as read after the repair.")
    assert doubts[1].endswith(says)
    assert proof_doubts(read, ProofKept(), ProofLevel.UNPROVEN) == ()


def test_a_fault_that_still_comes_on_purpose_speaks_against_any_level(job: JobView) -> None:
    still = ProofKept(provoked=Provoked(37, 10, 1, 10))
    gone = ProofKept(provoked=Provoked(37, 10, 0, 10))
    assert proof_doubts(job, still, ROAD) == (
        "Made to happen on purpose, it still came after the repair.",
    )
    assert proof_doubts(job, gone, ROAD) == ()


def test_codes_and_states_after_the_repair_are_said_in_a_line() -> None:
    after = codes("P0300 pending found", "P0171 stored after repair")
    assert codes_in_words(after, were_read_after=True) == (
        "Before: P0300 pending.",
        "After: P0171 stored.",
    )


def test_readings_that_the_codes_written_down_contradict_are_odd(job: JobView) -> None:
    one = ProofKept(tests={"found": StageTests("81 07 65 00")})
    written = replace(job, codes=codes("P0300 stored found", "P0301 pending found"))
    assert readings_doubted(written, one) == ()
    unwritten = replace(job, codes=codes("P0301 pending found"))
    [odd] = readings_doubted(unwritten, one)
    assert "count 1 code, and none is written down as stored." in odd


def test_what_a_drive_and_a_count_are_worth_is_said_where_they_were_told(job: JobView) -> None:
    assert drive_said(job, ProofKept()) == ()
    every = ProofKept(every=FaultEvery(4, "mi"), conditions={"damp": False})
    [lacked] = drive_said(replace(job, proof_distance=31.0), every)
    assert lacked.startswith("Not met on the drive: damp.")
    counted = ProofKept(provoked=Provoked(37, 10, 0, 10))
    assert drive_said(job, counted) == (provoked_sentence(Provoked(37, 10, 0, 10)),)


def test_when_it_was_caught_stands_before_what_happened() -> None:
    one = CaughtKept(1, "2026-11-16T14:05:00+00:00", "lamp on again")
    assert caught_in_words(one) == "on 16 November 2026, 14:05:"


@pytest.mark.parametrize(
    ("caught", "conditions", "says"),
    [
        (None, {}, "Tell us when you notice the same trouble again."),
        (False, {}, "Tell us when you notice the trouble again."),
        (True, {"damp": True}, "Tell us when you notice the same trouble again, above all: damp."),
        (False, {"damp": True}, "Tell us when you notice the trouble again, above all: damp."),
    ],
)
def test_the_customer_is_asked_to_tell_of_what_was_found(
    job: JobView, caught: bool | None, conditions: dict[str, bool], says: str
) -> None:
    told = replace(job, cause_found=caught, conditions=conditions)
    assert watch_for(told, ProofKept())[0] == says


def test_brakes_have_no_test_of_the_cars_own_and_only_a_full_trip_claims_one(job: JobView) -> None:
    brakes = replace(job, system="brakes")
    assert proof_doubts(brakes, RUN, ProofLevel.SAME_CONDITIONS) == ()
    [doubt] = proof_doubts(brakes, RUN, FULL)
    assert "not known to have a test of its own for this system" in doubt

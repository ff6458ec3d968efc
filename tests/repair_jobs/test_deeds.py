"""The deeds of a job, from the first words to the hand-over, and what each refuses."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from desktop_app.repair_jobs import actions, odometer_actions, proof_actions, vehicle_actions
from desktop_app.repair_jobs.hand_over import open_answers
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.repair_jobs.stored_known_car import find_vehicle
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_questions import odometer_still_asked
from desktop_app.repair_jobs.stored_reading import (
    earlier_jobs,
    events_of,
    job_by_number,
    jobs_of_visit,
    read_job,
)
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.another_language import another_language

SAID = WriteUp(
    concern="misses when damp and uphill",
    plate="TH 1042",
    description="1.8-litre compact hatchback, 1990s",
    odometer=118_420,
    customer="J. Ferrow",
    symptoms=("misfire",),
    conditions=("damp",),
)


def take_in(shop: ShopRecord, said: WriteUp = SAID) -> int:
    made = actions.write_up(shop, said).made
    assert made is not None
    return made


def job(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def finish(shop: ShopRecord, job_id: int) -> None:
    actions.name_cause(shop, job_id, "tip burned back, shown by the gap")
    actions.write_correction(shop, job_id, "rotor and cap replaced")
    actions.say_proof(shop, job_id, 2)
    actions.say_declined(shop, job_id, "nothing")


def test_a_car_is_taken_in_with_its_words(shop: ShopRecord) -> None:
    seen = job(shop, take_in(shop))
    assert seen.number == "J-101"
    assert seen.concern == "misses when damp and uphill"
    assert seen.vehicle.plate == "TH 1042"
    assert seen.odometer_in == 118_420
    assert seen.customer == "J. Ferrow"
    assert seen.symptoms == ("misfire",)
    assert seen.conditions == {"damp": True}
    assert (seen.window_days, seen.window_miles, seen.window_rule) == (90, 3000, "first")
    assert seen.left_at is None


@pytest.mark.parametrize(
    ("said", "asks"),
    [
        (WriteUp(concern="x", odometer=1), "Which car"),
        (WriteUp(concern="x", plate="A"), "odometer say"),
        (WriteUp(concern=" ", plate="A", odometer=1), "customer say"),
    ],
)
def test_the_three_answers_of_the_write_up_are_asked_for(
    shop: ShopRecord, said: WriteUp, asks: str
) -> None:
    with pytest.raises(ShopTrouble, match=asks):
        actions.write_up(shop, said)
    assert shop.can_undo() is None


def test_cannot_be_read_is_an_answer(shop: ShopRecord) -> None:
    seen = job(shop, take_in(shop, WriteUp("dies", plate="A 1", odometer_unread="display dead")))
    assert seen.odometer_in is None
    assert seen.odometer_unread == "display dead"


def test_a_car_that_was_here_is_found_by_plate_and_by_vin(shop: ShopRecord) -> None:
    take_in(shop, WriteUp("x", plate="TH 1042", vin="1M8GDM9AXKP042788", odometer=1))
    with shop.reading() as connection:
        assert find_vehicle(connection, plate="th-1042") == 1
        assert find_vehicle(connection, vin="1m8gdm9axkp042788") == 1
        assert find_vehicle(connection, plate="TH 1043") is None
        # A whole VIN that differs is another car, whatever the plate says.
        assert find_vehicle(connection, plate="TH 1042", vin="11111111111111111") is None


def test_a_second_visit_completes_what_is_known(shop: ShopRecord) -> None:
    take_in(shop)
    again = WriteUp("again", vehicle_id=1, vin="11111111111111111", odometer=119_000)
    seen = job(shop, take_in(shop, again))
    assert seen.vehicle.id == 1
    assert seen.vehicle.vin == "11111111111111111"
    assert seen.vehicle.plate == "TH 1042"
    with shop.reading() as connection:
        assert [e.number for e in earlier_jobs(connection, 1)] == ["J-102", "J-101"]


def test_taking_a_car_in_is_undone_whole(shop: ShopRecord) -> None:
    take_in(shop)
    shop.undo()
    with shop.reading() as connection:
        assert find_vehicle(connection, plate="TH 1042") is None
        with pytest.raises(ShopTrouble, match="no job"):
            job_by_number(connection, "J-101")


def test_the_groups_read_from_new_words_replace_those_read_before(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.choose_symptom(shop, one, "rough-idle", chosen=True)
    actions.write_concern(shop, one, "stalls at lights", ("stalls-stopping",))
    assert set(job(shop, one).symptoms) == {"rough-idle", "stalls-stopping"}


def test_a_group_that_was_read_already_is_kept_as_it_is(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.write_concern(shop, one, "misses, and idles rough", ("misfire", "rough-idle"))
    assert set(job(shop, one).symptoms) == {"misfire", "rough-idle"}


def test_a_group_is_chosen_by_hand_and_taken_out(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.choose_symptom(shop, one, "stalls", chosen=True)
    assert actions.choose_symptom(shop, one, "stalls", chosen=True).seq is None
    actions.write_concern(shop, one, "other words", ())
    assert job(shop, one).symptoms == ("stalls",)  # what a person chose stays
    actions.choose_symptom(shop, one, "stalls", chosen=False)
    assert actions.choose_symptom(shop, one, "stalls", chosen=False).seq is None
    assert job(shop, one).symptoms == ()


def test_conditions_have_three_answers(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.tick_condition(shop, one, "damp", False)
    actions.tick_condition(shop, one, "hot", True)
    assert job(shop, one).conditions == {"damp": False, "hot": True}
    actions.tick_condition(shop, one, "damp", None)
    assert job(shop, one).conditions == {"hot": True}


def test_a_code_is_written_once_and_refused_where_it_is_none(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.write_code(shop, one, "p0300", "stored", "found")
    actions.write_code(shop, one, "P0300", "stored", "found")
    assert [c.code for c in job(shop, one).codes] == ["P0300"]
    with pytest.raises(ShopTrouble, match="X9"):
        actions.write_code(shop, one, "X9", "stored", "found")


def test_what_was_written_by_mistake_is_taken_out(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.write_code(shop, one, "P0300", "stored", "found")
    actions.write_code(shop, one, "P0301", "stored", "after repair")
    actions.write_finding(shop, one, " cap crusted ")
    with pytest.raises(ShopTrouble, match="nothing to write down yet"):
        actions.write_finding(shop, one, "  ")
    actions.hand_over(shop, one, 118_500)
    seen = job(shop, one)
    assert [check.words for check in seen.checks] == ["cap crusted"]
    found, after = seen.codes
    with pytest.raises(ShopTrouble, match="The car has left"):
        actions.strike_code(shop, after.id)
    actions.strike_code(shop, found.id)
    actions.strike_check(shop, seen.checks[0].id)
    assert (job(shop, one).codes, job(shop, one).checks) == ((after,), ())


def test_a_check_has_one_answer_that_can_be_changed_and_taken_back(shop: ShopRecord) -> None:
    one = take_in(shop)

    def outcomes() -> list[tuple[str, str]]:
        return [(check.words, check.outcome) for check in job(shop, one).checks]

    actions.tick_check(shop, one, "refit", "key home", "done")
    actions.tick_check(shop, one, "refit", "key home", "not needed")
    assert outcomes() == [("key home", "not needed")]
    actions.tick_check(shop, one, "refit", "key home", "")
    assert outcomes() == []
    with another_language():
        with shop.deed("As an older program kept it") as deed:
            deed.add(JobCheck, job_id=one, kind="refit", words="«key home»", outcome="done")
        actions.tick_check(shop, one, "refit", "key home", "")
    assert outcomes() == []


def test_a_question_is_answered_once(shop: ShopRecord) -> None:
    take_in(shop)
    assert actions.keep_as_typed(shop, "visit:1:odometer", "A digit too many?").seq is not None
    assert actions.keep_as_typed(shop, "visit:1:odometer", "A digit too many?").seq is None


def test_the_hand_over_asks_for_what_is_missing_and_keeps_the_rest(shop: ShopRecord) -> None:
    one = take_in(shop)
    missing = [lacks.words for lacks in open_answers(job(shop, one), [(1, "distributor rotor")])]
    with pytest.raises(ShopTrouble) as refused:
        actions.hand_over(shop, one, missing=missing)
    for words in ("the cause", "distributor rotor", "how far it was proved", "declined"):
        assert words in refused.value.what
    assert job(shop, one).left_at is None


def test_not_caught_needs_no_correction(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.say_not_caught(shop, one)
    actions.say_proof(shop, one, 0)
    actions.say_declined(shop, one, "nothing")
    assert open_answers(job(shop, one)) == ()


def test_the_visit_ends_with_its_last_job(shop: ShopRecord) -> None:
    first = take_in(shop)
    second = actions.add_job(shop, 1, "sweet smell").made
    assert second is not None
    for each in (first, second):
        finish(shop, each)
    actions.hand_over(shop, first, 118_430)
    with shop.reading() as connection:
        assert [number for _, number, _ in jobs_of_visit(connection, 1)] == ["J-101", "J-102"]
    assert job(shop, second).left_at is None
    actions.hand_over(shop, second, 118_430)
    assert job(shop, second).left_on == "2026-11-16"
    shop.undo()
    assert job(shop, second).left_at is None


def test_a_car_cannot_leave_before_it_came(shop: ShopRecord) -> None:
    one = take_in(shop)
    with pytest.raises(ShopTrouble, match="cannot leave"):
        actions.hand_over(shop, one, left_at="2026-11-15T08:00:00+00:00")


@pytest.mark.parametrize(
    "moment", ["16.11.2026", "20261118", "2026-W47-3", "tomorrow", "2026-13-01"]
)
def test_a_hand_over_on_no_day_is_refused_in_words(shop: ShopRecord, moment: str) -> None:
    one = take_in(shop)
    with pytest.raises(ShopTrouble, match=r"is not a moment\. Accepted: a day like 2026-11-16"):
        actions.hand_over(shop, one, left_at=moment)
    with shop.reading() as connection:
        assert read_job(connection, one).left_on is None


def test_a_condition_that_is_none_is_refused(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="“moonlight” is not accepted"):
        actions.write_up(shop, replace(SAID, conditions=("moonlight",)))
    with pytest.raises(ShopTrouble, match="“moonlight” is not accepted"):
        proof_actions.meet_condition(shop, take_in(shop), "moonlight", True)


def test_a_lower_odometer_is_asked_about_until_someone_answers(shop: ShopRecord) -> None:
    take_in(shop)
    said = WriteUp("again", vehicle_id=1, odometer=11_842)
    second = take_in(shop, said)
    today = shop.clock().date()
    with shop.reading() as connection:
        question = odometer_still_asked(connection, read_job(connection, second), today)
    assert question is not None
    assert "118,420" in question
    actions.keep_as_typed(shop, "visit:2:odometer", question)
    with shop.reading() as connection:
        assert odometer_still_asked(connection, read_job(connection, second), today) is None
    assert job(shop, second).odometer_in == 11_842


def test_how_a_reading_came_is_said_and_asked_back(shop: ShopRecord) -> None:
    one = take_in(shop)
    for source, kept in (("told", "told"), ("estimated", "estimated"), ("read", None)):
        odometer_actions.say_how_read(shop, 1, source)
        assert job(shop, one).odometer_source == kept
    with pytest.raises(ShopTrouble, match="Accepted: read, told, estimated"):
        odometer_actions.say_how_read(shop, 1, "dreamt")
    with pytest.raises(ShopTrouble, match="What does the odometer say"):
        odometer_actions.change_odometer(shop, 1, None, "  ")


def test_a_note_of_a_car_is_taken_out(shop: ShopRecord) -> None:
    take_in(shop)
    noted = odometer_actions.note_vehicle_event(shop, 1, "sold", "2026-11-01").made
    assert noted is not None
    with shop.reading() as connection:
        assert [one.kind for one in events_of(connection, 1)] == ["sold"]
    odometer_actions.strike_vehicle_event(shop, noted)
    with shop.reading() as connection:
        assert events_of(connection, 1) == ()


def test_somebody_without_a_name_is_nobody(shop: ShopRecord) -> None:
    with pytest.raises(ShopTrouble, match="Who is it"):
        actions.add_person(shop, " \x00 ")


def test_people_come_and_go_and_keep_their_name(shop: ShopRecord) -> None:
    one = take_in(shop)
    actions.add_person(shop, "Tuuli")
    actions.choose_technician(shop, one, 1)
    actions.person_left(shop, 1)
    with shop.reading() as connection:
        assert people_here(connection) == ()
    assert job(shop, one).technician == "Tuuli"
    actions.add_person(shop, "Tu\x00uli")
    with shop.reading() as connection:
        assert people_here(connection) == ((1, "Tuuli"),)


def test_every_deed_of_a_job_can_be_undone_one_after_the_other(
    shop: ShopRecord, tmp_path: Path
) -> None:
    one = take_in(shop)
    start = job(shop, one)
    deeds = [
        lambda: actions.write_concern(shop, one, "other words", ("rough-idle",)),
        lambda: actions.say_same_trouble(shop, one, same=True),
        lambda: actions.write_code(shop, one, "P0301", "pending", "after repair"),
        lambda: actions.write_finding(shop, one, "cap crusted"),
        lambda: actions.tick_check(shop, one, "refit", "key home", "done"),
        lambda: actions.name_cause(shop, one, "cap"),
        lambda: actions.write_correction(shop, one, "new cap"),
        lambda: actions.choose_system(shop, one, "ignition"),
        lambda: actions.write_hours(shop, one, 1.5, False),
        lambda: actions.write_price(shop, one, 12_000),
        lambda: actions.say_proof(shop, one, 3),
        lambda: proof_actions.write_tried(shop, one, "wet hill"),
        lambda: proof_actions.write_distance(shop, one, 31.0),
        lambda: actions.say_declined(shop, one, "leads"),
        lambda: odometer_actions.change_odometer(shop, 1, 118_421),
        lambda: vehicle_actions.change_vehicle(shop, 1, plate="TH 9", description="van"),
        lambda: actions.hand_over(shop, one, 118_500),
    ]
    states = [start]
    for deed in deeds:
        assert deed().seq is not None
        states.append(job(shop, one))
    for state in reversed(states[:-1]):
        shop.undo()
        assert job(shop, one) == state
    for state in states[1:]:
        shop.redo()
        assert job(shop, one) == state

"""The demo shop as it is built: every story is in the record, and the counts are as told."""

from __future__ import annotations

from datetime import date, datetime
from pathlib import Path

import pytest
from sqlalchemy import select

from demo_shop.build import SEED, build_demo
from demo_shop.demo_marker import DemoMarker, read_marker
from demo_shop.people import DRAWER, PEOPLE, SUPPLIERS
from demo_shop.written_jobs import JOBS
from demo_shop.written_returns import ROOTS
from desktop_app.part_photos.stored_marks import marks_of_photos
from desktop_app.part_photos.stored_scales import scale_of_photo
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.repair_jobs.stored import Job, SelfTests
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_reading import job_by_number
from desktop_app.repair_jobs.vin import read_vin
from desktop_app.returns_watched.standing import JobCourse, Sighting, stands
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_returns import read_watch
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.past.history import chain_problems
from desktop_app.shop_record.trouble import ShopTrouble
from tests.demo_shop.built_demo import NOW, Built

COMEBACKS = ("same symptom", "same system", "same part", "from our hands")


def test_every_written_job_is_there_as_it_is_told(built: Built) -> None:
    for story in JOBS:
        view = built.jobs[story.key]
        assert (view.odometer_in, view.odometer_unread or "") == (story.odometer, story.unread)
        assert (view.cause, view.correction) == (story.cause, story.correction)
        assert (view.left_at is not None) == bool(story.left)
        assert {code.code for code in view.codes} >= {*story.codes, *story.pending}
        assert len(built.pairs[story.key]) == len(story.pairs)
        if story.left:
            assert view.proof_level == story.proof
            assert view.cause_found == story.caught


def test_nothing_lies_after_now_and_no_concern_is_said_twice(built: Built) -> None:
    views = built.jobs.values()
    moments = [datetime.fromisoformat(at) for v in views for at in (v.came_at, v.left_at) if at]
    assert max(moments) <= NOW
    assert len({view.concern for view in views}) == len(built.jobs)


def test_plain_jobs_are_many_and_their_rate_is_believable(built: Built) -> None:
    plain = [view for key, view in built.jobs.items() if key == view.number]
    assert len(plain) >= 170
    handed = [view for view in plain if view.left_at and view.cause_found]
    numbers = {view.number for view in handed}
    back = {row.earlier for row in built.returns if row.is_comeback} & numbers
    assert 0.04 <= len(back) / len(handed) <= 0.07
    assert any(view.cause_found is False for view in plain)
    assert {view.technician for view in plain} >= {"Marek", "Tuuli"}
    first = min(date.fromisoformat(view.came_on) for view in plain)
    assert 600 < (NOW.date() - first).days <= 735


def test_the_roots_and_what_became_of_them(built: Built) -> None:
    assert len(ROOTS) == 21
    for key in ROOTS:
        view = built.jobs[key]
        assert view.left_at
        assert view.cause_found
        assert view.correction
    comebacks = built.keys_of(*COMEBACKS, in_window=True)
    assert {then for then, _ in comebacks if then in ROOTS} == {
        *("3", "5", "9b", "10", "12", "13", "14", "16", "17", "19")
    }
    assert len({now for _, now in comebacks}) == 11
    assert built.keys_of("foretold") == {("2", "2-back"), ("8-first", "8")}
    assert built.keys_of("unrelated") == {("7", "7-later")}
    assert built.keys_of("other hands") == {("18", "18-later")}
    chain = next(r for r in built.returns if r.later == built.number("10-again"))
    assert chain.candidate.root == built.number("10")


@pytest.mark.parametrize(
    ("then", "now", "days", "miles"),
    [
        ("2", "2-back", 37, 1120), ("3", "3-back", 19, 640), ("5", "5-back", 47, 2050),
        ("7", "7-later", 25, 860), ("9b", "9b-back", 6, 210), ("10", "10-back", 58, 2480),
        ("10-back", "10-again", 31, 1400), ("12", "12-back", 71, 2900),
        ("13", "13-back", 75, 2200), ("14", "14-back", 62, None), ("16", "16-back", 12, 310),
        ("17", "17-back", 5, 160), ("18", "18-later", 44, 1900), ("19", "19-back", 26, 980),
    ],
)  # fmt: skip
def test_days_and_miles_between(
    built: Built, then: str, now: str, days: int, miles: float | None
) -> None:
    pair = (built.number(then), built.number(now))
    row = next(row for row in built.returns if (row.earlier, row.later) == pair)
    assert row.candidate.days == days
    assert row.candidate.distance_miles == (None if miles is None else pytest.approx(miles))
    assert row.in_window


def standing(built: Built, key: str) -> str:
    number = built.number(key)
    job = next(one for one in built.facts.jobs if one.number == number)
    assert job.handed_over_on is not None
    placed = built.facts.odometers.readings.get(job.vehicle, ())
    start = job.odometer_out
    seen = tuple(
        Sighting(one.reading.on, one.place.miles - start.miles)
        for one in placed
        if start and one.place and one.reading.on > job.handed_over_on
    )
    course = JobCourse(
        job.window or Window(90, 3000),
        handed_over_on=job.handed_over_on,
        sightings=seen,
        came_back=any(row.is_comeback and row.earlier == number for row in built.returns),
    )
    return stands(course, NOW.date()).value


def test_where_the_written_jobs_stand(built: Built) -> None:
    for key in ("1", "4", "6", "8", "9a", "11"):
        assert standing(built, key) == "seen fine", key
    for key in ("7", "15"):
        assert standing(built, key) == "nothing heard", key
    for key in ("20", "10-again"):
        assert standing(built, key) == "under watch", key
    with built.record.reading() as connection:
        watched = {job.job for job in read_watch(connection, NOW.date())}
    assert {built.number("20"), built.number("10-again")} <= watched
    assert len(watched) >= 20


def test_days_only_where_the_odometer_cannot_say(built: Built) -> None:
    by_number = {job.number: job for job in built.facts.jobs}
    assert by_number[built.number("15")].odometer_out is None
    later = next(r for r in built.returns if r.later == built.number("14-back"))
    assert later.candidate.decided_by == "time only: odometer unknown"
    assert built.jobs["13-back"].customer != built.jobs["13"].customer


def test_three_parts_were_stopped_before_fitting(built: Built) -> None:
    stopped = {key for key, pairs in built.pairs.items() for pair in pairs if not pair.fitted}
    assert stopped == {"4", "5", "11"}


def test_pairs_have_photos_of_both_sides(built: Built) -> None:
    kinds = load_kinds([resource_path("part_kinds")]).kinds
    with built.record.reading() as connection:
        tools = drawer(connection)
    shown = [pair for pairs in built.pairs.values() for pair in pairs if pair.photos]
    assert len(shown) >= 12
    for pair in shown:
        for view in {photo.view for photo in pair.photos}:
            assert view in kinds[pair.part_kind].views
            removed, replacement = pair.photo("removed", view), pair.photo("replacement", view)
            assert removed is not None
            assert replacement is not None
            assert removed.sha256 != replacement.sha256
            assert built.record.photos.is_whole(removed.sha256)
    stories = {job.key: job for job in JOBS}
    for key, pairs in built.pairs.items():
        for pair, story in zip(pairs, stories[key].pairs if key in stories else (), strict=False):
            assert judge(pair, kinds[pair.part_kind], tools).verdict == story.verdict


def test_the_rotors_in_the_shop_now_are_measured_by_photo(built: Built) -> None:
    rotor = built.pairs["hatch-now"][0]
    said = {}
    with built.record.reading() as connection:
        for shown in rotor.photos:
            assert scale_of_photo(connection, shown.photo_id) is not None
            for kept in marks_of_photos(connection, [shown.photo_id]):
                said[shown.side, kept.mark.name] = kept.value
    true = {
        ("removed", "tip protrusion"): 3.92,
        ("replacement", "tip protrusion"): 4.65,
        ("removed", "tip radius"): 26.71,
        ("replacement", "tip radius"): 27.45,
    }
    assert said == pytest.approx(true, abs=0.04)  # two thirds of the demo's pixels


def test_the_shop_is_open_with_work_to_go_on_with(built: Built) -> None:
    inside = {key for key, view in built.jobs.items() if view.left_at is None}
    assert inside == {"hatch-now", "estate-now", "minivan-now"}
    rotor = built.pairs["hatch-now"][0]
    assert rotor.photos
    assert rotor.origin is None
    assert ("bore", "removed") in rotor.typed
    assert ("bore", "replacement") not in rotor.typed
    waiting = [row for row in built.returns if row.judgement is None]
    assert built.number("minivan-now") in {row.later for row in waiting}
    assert 2 <= len(waiting) <= 6
    assert all(row.in_window for row in waiting)


def test_people_tools_and_names_are_the_shops_own(built: Built) -> None:
    with built.record.reading() as connection:
        assert read_rules(connection).shop_name == "Tin Heron Garage"
        assert {name for _, name in people_here(connection)} == set(PEOPLE)
        assert {tool.name for tool in DRAWER} == set(drawer(connection))
    vins = [view.vehicle.vin for view in built.jobs.values() if view.vehicle.vin]
    assert vins
    assert all(read_vin(vin).check_digit_ok for vin in vins)
    suppliers = {pair.supplier for pairs in built.pairs.values() for pair in pairs}
    assert suppliers <= {*SUPPLIERS, ""}


def test_the_record_is_whole_and_can_be_searched(built: Built) -> None:
    with built.record.reading() as connection:
        entries, problems = chain_problems(connection)
        indexed = connection.exec_driver_sql("SELECT count(*) FROM job_text").scalar()
    assert problems == []
    assert entries > len(built.jobs)
    assert indexed == len(built.jobs)
    assert job_numbers_run_on(built)


def job_numbers_run_on(built: Built) -> bool:
    with built.record.reading() as connection:
        return all(job_by_number(connection, v.number) == v.id for v in built.jobs.values())


def test_progress_ends_where_it_said_and_the_folder_is_marked(built: Built) -> None:
    assert [step.done for step in built.steps] == list(range(1, len(built.steps) + 1))
    assert {step.of for step in built.steps} == {len(built.steps)}
    assert read_marker(built.record.folder) == DemoMarker(SEED, NOW.date())


def test_a_folder_with_something_in_it_is_refused(tmp_path: Path) -> None:
    kept = tmp_path / "letter.txt"
    kept.write_text("Dear Benno")
    with pytest.raises(ShopTrouble, match="not empty"):
        next(build_demo(tmp_path, NOW, photos=False))
    assert [path.name for path in tmp_path.iterdir()] == ["letter.txt"]


def test_a_demo_that_was_stopped_leaves_nothing(tmp_path: Path) -> None:
    building = build_demo(tmp_path, NOW, photos=False)
    next(building)
    building.close()
    assert list(tmp_path.iterdir()) == []
    assert read_marker(tmp_path) is None


def test_what_was_proved_on_a_full_trip_did_not_leave_unproven(built: Built) -> None:
    wanted = (
        select(Job.number)
        .join(ReturnLink, ReturnLink.earlier_job_id == Job.id)
        .where(Job.proof_level >= 3, ReturnLink.cause_class == "left-unproven")
    )
    with built.record.reading() as connection:
        assert connection.execute(wanted).scalars().all() == []
        ran = select(Job.id).where(Job.proof_words.contains("own test ran"))
        read = select(SelfTests.job_id).where(SelfTests.stage == "after repair")
        told, kept = (set(connection.execute(one).scalars()) for one in (ran, read))
    assert told
    assert told <= kept


def test_a_car_came_back_for_each_of_the_usual_reasons(built: Built) -> None:
    classes = {row.cause_class for row in built.returns if row.is_comeback}
    usual = {"wrong-part", "part-died-early", "fitted-badly", "wrong-place", "not-the-whole"}
    assert usual <= classes

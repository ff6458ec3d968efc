"""The history of a job: its own entries, newest first, in plain words; where clocks went back."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest

from desktop_app.job_history.told_entry import EntryRead, clock_words, tell
from desktop_app.job_history.value_words import ShopSpeech
from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.stored import Pair, Reading
from desktop_app.repair_jobs.actions import (
    add_job,
    add_person,
    keep_as_typed,
    name_cause,
    write_correction,
)
from desktop_app.repair_jobs.stored import Job, Vehicle, Visit
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.past.entries_kept import AT_A_TIME
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.job_history.told import history, newest
from tests.parts_compared.sheet_story import RotorStory, a_rotor


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    shop.who = "Tuuli"
    return a_rotor(shop)


def test_a_change_says_who_when_where_before_and_after(rotor: RotorStory) -> None:
    name_cause(rotor.record, rotor.job, "Cap tracked.")
    entry = newest(rotor.record, rotor.job)
    assert (entry.who, entry.when, entry.state) == ("Tuuli", "16 November 2026, 12:00", "holds")
    assert entry.lines == ("Cause: “Rotor tip burned back.” → “Cap tracked.”",)


def test_the_newest_stands_first_and_the_taking_in_last(rotor: RotorStory) -> None:
    told = history(rotor.record, rotor.job).told
    numbers = [entry.seq for entry in told]
    assert numbers == sorted(numbers, reverse=True)
    assert told[-1].words == "Take a car in"
    assert any(line.startswith("Added: Job (Number: “J-104”") for line in told[-1].lines)


def test_entries_of_other_jobs_and_of_the_shop_are_left_out(rotor: RotorStory) -> None:
    before = history(rotor.record, rotor.job).told
    add_person(rotor.record, "Benno")
    change_rule(rotor.record, "currency", "€")
    other = add_job(rotor.record, 1, "The wipers judder.").made
    assert other is not None
    name_cause(rotor.record, other, "Blades.")
    assert [e.seq for e in history(rotor.record, rotor.job).told] == [e.seq for e in before]
    assert "Blades." in newest(rotor.record, other).lines[0]


def test_readings_are_told_with_part_side_and_unit_also_when_they_are_gone(
    rotor: RotorStory,
) -> None:
    rotor.read("bore", "14.05")
    entry = newest(rotor.record, rotor.job)
    gone, added = entry.lines
    name = "Reading, removed part, bore diameter, distributor rotor"
    assert gone.startswith(f"Taken out: {name} (")
    assert "Value: 14.02 mm" in gone
    assert added.startswith(f"Added: {name} (")
    assert "Value: 14.05 mm" in added


def test_what_hung_on_a_pair_that_is_gone_is_still_the_jobs(rotor: RotorStory) -> None:
    record = rotor.record
    written = [e.seq for e in history(record, rotor.job).told]
    while "Lay" not in (record.can_undo() or ""):
        record.undo()
    record.undo()
    told = history(record, rotor.job).told
    assert set(written) <= {entry.seq for entry in told}
    read = next(entry for entry in told if "bore" in entry.words and entry.state == "taken back")
    assert "bore diameter, distributor rotor" in read.lines[0]


def test_an_odd_entry_kept_as_typed_is_still_the_jobs_when_that_was_undone(
    rotor: RotorStory,
) -> None:
    record = rotor.record
    keep_as_typed(record, "visit:1:odometer", "It has gone back by 40 mi.")
    record.undo()
    before = [entry.seq for entry in history(record, rotor.job).told]
    taken_back = history(record, rotor.job).told[1]
    assert (taken_back.words, taken_back.state) == ("Keep it as typed", "taken back")
    for not_its_own in ("visit:2:odometer", "one vehicle on two rows", "visit:x:odometer"):
        keep_as_typed(record, not_its_own, "1 2")
        record.undo()
    assert [entry.seq for entry in history(record, rotor.job).told] == before


def test_undone_and_done_again_are_told_as_that(rotor: RotorStory) -> None:
    record = rotor.record
    write_correction(record, rotor.job, "Cap and rotor.")
    record.undo()
    again, deed, *_ = history(record, rotor.job).told
    assert (again.state, deed.state) == ("takes back", "taken back")
    assert again.lines[0] == f"This undoes entry {deed.seq}."
    assert "undone already" in deed.stays
    record.redo()
    redone, undone, deed, *_ = history(record, rotor.job).told
    states = (redone.state, undone.state, deed.state)
    assert states == ("brings back", "taken back", "holds")
    record.undo()
    newest, redone, undone, deed, *_ = history(record, rotor.job).told
    states = (newest.state, redone.state, undone.state, deed.state)
    assert states == ("takes back", "taken back", "takes back", "taken back")


def test_rows_outside_the_job_are_counted_and_not_shown(rotor: RotorStory) -> None:
    record = rotor.record
    with record.deed("Two at once") as deed:
        deed.change(Job, rotor.job, hours=1.5)
        deed.add(Vehicle, plate="SECRET 1", odometer_unit="km")
    entry = newest(record, rotor.job)
    assert entry.lines == ("Hours: nothing → 1.5", "It also changed 1 row outside this job.")


def test_several_rows_outside_the_job_are_counted_in_the_plural(rotor: RotorStory) -> None:
    with rotor.record.deed("Three at once") as deed:
        deed.change(Job, rotor.job, hours=1.5)
        for plate in ("SECRET 1", "SECRET 2"):
            deed.add(Vehicle, plate=plate, odometer_unit="km")
    assert newest(rotor.record, rotor.job).lines[1:] == (
        "It also changed 2 rows outside this job.",
    )


def test_no_text_is_taken_for_a_row(rotor: RotorStory) -> None:
    """Someone may type what the body of an entry looks like."""
    record = rotor.record
    other = add_job(record, 1, "x").made
    assert other is not None
    trick = f'"row_id":{rotor.job},"table":"job"}}],"bulk":[{{"after":null'
    before = len(history(record, rotor.job).told)
    name_cause(record, other, trick)
    assert len(history(record, rotor.job).told) == before
    assert newest(record, other).lines[0].endswith(f"→ “{trick}”")


def test_a_job_is_read_no_further_than_its_first_entry(shop: ShopRecord) -> None:
    for number in range(AT_A_TIME + 10):
        with shop.deed("An older deed") as deed:
            deed.add(Vehicle, plate=f"OLD {number}", odometer_unit="mi")
    rotor = a_rotor(shop)
    read = history(shop, rotor.job)
    assert read.told[-1].words == "Take a car in"
    assert read.first > AT_A_TIME


def test_an_old_job_is_found_below_many_younger_entries(rotor: RotorStory) -> None:
    before = [entry.lines for entry in history(rotor.record, rotor.job).told]
    for number in range(AT_A_TIME + 10):
        with rotor.record.deed("A younger deed") as deed:
            deed.add(Vehicle, plate=f"NEW {number}", odometer_unit="mi")
    assert [entry.lines for entry in history(rotor.record, rotor.job).told] == before


@pytest.mark.parametrize("who_was_late", ["the job's own entry", "another entry"])
def test_a_clock_that_went_back_is_noted_between_the_jobs_entries(
    tmp_path: Path, who_was_late: str
) -> None:
    from desktop_app.shop_record.record import create_shop

    at = [NOON]
    record = create_shop(tmp_path / "shop", lambda: at[0])
    rotor = a_rotor(record)
    at[0] = NOON - timedelta(days=3)
    if who_was_late == "another entry":
        add_person(record, "Benno")
    name_cause(record, rotor.job, "Cap tracked.")
    write_correction(record, rotor.job, "Cap and rotor.")
    told = history(record, rotor.job).told
    assert [bool(entry.clock) for entry in told[:3]] == [False, True, False]
    assert "16 November 2026, 12:00" in told[1].clock
    assert "13 November 2026, 12:00" in told[1].clock
    assert told[1].lines[0] == told[1].clock
    record.close()


def test_a_minute_between_two_computers_is_no_clock_set_back(tmp_path: Path) -> None:
    from desktop_app.shop_record.record import create_shop

    at = [NOON]
    record = create_shop(tmp_path / "shop", lambda: at[0])
    rotor = a_rotor(record)
    at[0] = NOON - timedelta(seconds=50)
    name_cause(record, rotor.job, "Cap tracked.")
    assert not newest(record, rotor.job).clock
    record.close()


@pytest.mark.parametrize("odd", ["", "yesterday", "2026-11-16T11:00:00"])
def test_a_moment_that_is_none_is_shown_as_it_stands_and_compared_with_no_other(odd: str) -> None:
    """A history that was changed from outside, or written by a clock without its zone."""
    entry = EntryRead(2, "no moment", "", "desk", "Name the cause", None, ())
    (told,) = tell([entry], ShopSpeech())
    assert told.when == "no moment"
    assert clock_words(2, NOON.isoformat(), odd) == ""
    assert clock_words(2, odd, NOON.isoformat()) == ""


def test_a_job_that_was_undone_has_no_history_to_show(shop: ShopRecord) -> None:
    with shop.deed("Take a car in") as deed:
        car = deed.add(Vehicle, plate="TIN 9", odometer_unit="mi")
        visit = deed.add(Visit, vehicle_id=car, came_at=NOON.isoformat())
        window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
        job = deed.add(Job, number="J-1", visit_id=visit, **window)
    shop.undo()
    with pytest.raises(ShopTrouble, match="not in the record any more"):
        history(shop, job)


def test_a_job_that_came_with_a_table_says_so_and_is_not_undone_from_here(
    shop: ShopRecord,
) -> None:
    with shop.deed("Import jobs.csv") as deed:
        for number in range(3):
            car = deed.add(Vehicle, plate=f"TIN {number}", odometer_unit="mi")
            visit = deed.add(Visit, vehicle_id=car, came_at=NOON.isoformat())
            window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
            deed.add(Job, number=f"J-{number}", visit_id=visit, concern="hums", **window)
        deed.changes.clear()
        for kept in (Vehicle, Visit, Job):
            deed.remember_added(kept, 1, 3)
    (entry,) = history(shop, 2).told
    assert entry.lines == ("The job came or went with 9 rows at once.",)
    assert "undo menu" in entry.stays


def test_photos_and_what_shows_them_are_told(rotor: RotorStory) -> None:
    record = rotor.record
    with record.deed("Add a photo") as deed:
        photo = deed.add(
            Photo,
            job_id=rotor.job,
            sha256="ab" * 32,
            name="tip.jpg",
            media_type="image/jpeg",
            size_bytes=12_345,
            width=4,
            height=3,
        )
    assert newest(record, rotor.job).lines[0].startswith("Added: Photo, tip.jpg (SHA-256: “abab")
    actions.show_in_pair(record, rotor.pair, [photo], "removed", "side, tip to the right")
    shown = newest(record, rotor.job).lines[0]
    assert "Photo of a part, removed part, Photo, tip.jpg, distributor rotor" in shown


def test_a_reading_of_a_part_of_another_job_is_not_shown(rotor: RotorStory) -> None:
    record = rotor.record
    other = add_job(record, 1, "x").made
    before = len(history(record, rotor.job).told)
    with record.deed("Elsewhere") as deed:
        pair = deed.add(Pair, job_id=other, part_kind="distributor-cap")
        deed.add(
            Reading,
            pair_id=pair,
            side="removed",
            dimension="towers",
            instrument="eye",
            value=4.0,
            typed="4",
            taken_at=NOON.isoformat(),
        )
    record.undo()
    assert len(history(record, rotor.job).told) == before

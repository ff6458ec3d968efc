"""The program on a real X server, driven from outside like a person would: a car is taken in, old
and new are compared, the week is written, an old job is found."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from openpyxl import load_workbook
from sqlalchemy import text

from desktop_app.commands.shop_place import new_place, open_place, shelf_of
from desktop_app.parts_compared.pair_view import PairView, judge
from desktop_app.parts_compared.stored_pairs import drawer, pairs_of_job, read_pair
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.actions import judge_return
from desktop_app.shop_record.record import ShopRecord
from tests.part_photos.bench_pictures import encoded, noisy
from tests.shop_stories.real_screen import places_of, real_screen, until
from tests.shop_stories.timed_day import ROTOR

pytestmark = [
    pytest.mark.needs_tool("Xvfb", "xdotool"),
    pytest.mark.usefixtures("qapp"),  # words are drawn to be found on the screen
]
MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)
WEEK = "2026-W10"  # the week of that Monday
WINDOW = "Our shop - Benchwitness"


class Calendar:
    """The clock of the days before: it stands where the story puts it."""

    def __init__(self) -> None:
        self.now = MONDAY - timedelta(days=41)

    def __call__(self) -> datetime:
        return self.now


def a_job(record: ShopRecord, plate: str, concern: str, symptom: str, odometer: int) -> int:
    said = WriteUp(concern, plate=plate, odometer=odometer, symptoms=(symptom,))
    job = actions.write_up(record, said).made
    assert job is not None
    return job


def mended(record: ShopRecord, job: int, cause: str, correction: str, odometer: int) -> None:
    actions.name_cause(record, job, cause)
    actions.write_correction(record, job, correction)
    actions.hand_over(record, job, odometer)


def jobs(shop: Path) -> int:
    record = open_place(shop)
    try:
        with record.reading() as connection:
            return int(connection.execute(text("SELECT count(*) FROM job")).scalar_one())
    finally:
        record.close()


def pair_and_verdict(shop: Path, job: int) -> tuple[PairView, str]:
    """Look into the record for the one pair of a job, and judge it."""
    record = open_place(shop)
    try:
        with record.reading() as connection:
            (pair_id,) = pairs_of_job(connection, job)
            pair, tools = read_pair(connection, pair_id), drawer(connection)
        kind = shelf_of(record).kinds[pair.part_kind]
        return pair, judge(pair, kind, tools).verdict
    finally:
        record.close()


def test_a_car_is_taken_in(tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    new_place(shop, lambda: MONDAY).close()
    with real_screen(shop, tmp_path) as screen:
        screen.press("A car is here")
        screen.until_reads("Heard", 2)  # on the rail and over the page
        screen.type("TH 1042", "Tab", "Tab", "Tab")
        screen.type("118420", "Tab", "Tab", "Tab")
        screen.type("misses when damp")
        screen.press("Take the car in")
        until(lambda: jobs(shop) > 0, "the job in the record")
        screen.until_reads("J-101")
    record = open_place(shop)
    with record.reading() as connection:
        job = read_job(connection, 1)
    record.close()
    assert "misses when damp" in job.concern
    assert job.odometer_in == 118_420


def test_old_and_new_are_compared_at_the_counter(tmp_path: Path) -> None:
    shop, photos = tmp_path / "shop", [tmp_path / "old rotor.jpg", tmp_path / "new rotor.jpg"]
    for seed, photo in enumerate(photos):
        photo.write_bytes(encoded(noisy(400, 300, seed)))
    record = new_place(shop, lambda: MONDAY)
    job = a_job(record, "TH 1042", "misses when damp", "misfire-random", 118_420)
    record.close()
    with real_screen(shop, tmp_path) as screen:
        screen.type("J-101", "Return")
        screen.until_reads("Comparison sheet…")
        screen.keys("ctrl+l")
        screen.type("distributor rotor", "Return")
        screen.until_reads("Distributor rotor: not enough measured.")
        assert not places_of("Distributor rotor: fits.", screen.seen())

        screen.keys("ctrl+3")
        screen.press("Add photos…", 0, turning=True)
        screen.answer_with_file("Add photos", photos[0], back_in=WINDOW)
        until(lambda: len(pair_and_verdict(shop, job)[0].photos) == 1, "the first photo")
        with screen.copied(photos[1]):
            screen.press("Paste", 1, turning=True)
            until(lambda: len(pair_and_verdict(shop, job)[0].photos) == 2, "the second photo")

        screen.keys("ctrl+3")
        screen.press("→  Measure tip radius from the shaft axis on both parts (calliper).")
        for _, old, new in ROTOR:
            screen.type(old, "Return")
            screen.type(new, "Return")
        screen.until_reads("Distributor rotor: fits.")
        screen.keys("ctrl+3")
        screen.until_reads("fits", 2)  # on the card too
    pair, verdict = pair_and_verdict(shop, job)
    assert [(one.side, one.name) for one in pair.photos] == [
        ("removed", "old rotor.jpg"),
        ("replacement", "new rotor.jpg"),
    ]
    assert len(pair.readings) == 8  # four of each part
    assert {(one.dimension, one.side): one.values for one in pair.readings}[
        "tip-radius", "removed"
    ] == (26.62, 26.64, 26.63)
    assert verdict == "fits"


def test_the_weeks_comebacks_are_written_to_a_spreadsheet(tmp_path: Path) -> None:
    shop, book = tmp_path / "shop", tmp_path / "comebacks.xlsx"
    calendar = Calendar()
    record = new_place(shop, calendar)
    first = a_job(record, "TH 1042", "misses when damp", "misfire-random", 117_540)
    mended(record, first, "tip burned back, shown by the gap", "rotor replaced", 117_542)
    calendar.now = MONDAY + timedelta(days=1)
    again = a_job(record, "TH 1042", "misses when damp again", "misfire-random", 118_420)
    judge_return(record, first, again, "same symptom", by="Odile")
    record.close()
    with real_screen(shop, tmp_path) as screen:
        screen.press("Monday Book")
        before, after = map(screen.until_reads, ("◀  Week before", "Week after  ▶"))
        screen.press_at(((before[0][0] + after[0][0]) // 2, after[0][1]))  # the field between them
        screen.fill_in(WEEK, "Return")
        screen.until_reads("2 March 2026 to 8 March 2026")
        screen.press("Came back")
        screen.until_reads("J-102")
        screen.press("Write the week")
        screen.answer_with_file("Write the week", book, back_in=WINDOW)
        screen.until_reads(f"Wrote {WEEK} to")
    rows = [[*row] for row in load_workbook(book)["Came back"].iter_rows(values_only=True)]
    assert [row for row in rows if "J-101" in row and "J-102" in row and "same symptom" in row]


def test_an_old_job_is_found_by_its_symptom(tmp_path: Path) -> None:
    shop = tmp_path / "shop"
    record = new_place(shop, Calendar())
    for number, (concern, symptom, cause) in enumerate(
        (
            ("misses when damp", "misfire-random", "tip burned back"),
            ("brakes squeal in the morning", "brake-squeal", "pads glazed"),
            ("clonks over bumps", "clunk-suspension", "link worn"),
            ("squeals when braking downhill", "brake-squeal", "pads down to metal"),
        )
    ):
        job = a_job(record, f"TH {1042 + number}", concern, symptom, 117_540)
        mended(record, job, cause, "parts replaced", 117_542)
    record.close()
    with real_screen(shop, tmp_path) as screen:
        screen.press("Heard")  # away from the field, which the window begins with
        screen.press("Find")
        screen.type("brakes screech, worst downhill")
        screen.until_reads("symptom: brake squeal")
        screen.until_reads("What was done here before")
        screen.keys("Return", "Return")  # into the list, and the job on top
        screen.until_reads("J-104", 2)  # on the rail and over the page
        screen.press("Comparison sheet…")
        screen.go_into("Sheet of job J-104")
        screen.keys("Escape")
        screen.until_gone("Sheet of job J-104")

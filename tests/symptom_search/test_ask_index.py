"""The word index beside the record: thrown away at will, never behind a deed, never in the way."""

from __future__ import annotations

import shutil
from argparse import Namespace
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlalchemy import insert

from desktop_app.commands.finding import find as find_command
from desktop_app.commands.shop_place import kinds_of, open_place
from desktop_app.repair_jobs.stored import Job, JobSymptom, TroubleCode, Visit
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search import stored_ask_index
from desktop_app.symptom_search.find import Found, find
from desktop_app.symptom_search.index_actions import index_is_behind, renew_index
from desktop_app.symptom_search.stored_ask_file import FOLDER
from desktop_app.symptom_search.stored_ask_index import AT_ONCE, index_of
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.conftest import NOON
from tests.from_outside import damage
from tests.large_history import large_history

# Its many jobs are written straight into the file.
pytestmark = pytest.mark.embedded

JOBS = AT_ONCE + 200
LAST_VISIT = JOBS
KINDS = kinds_of()
QUESTIONS = ("misses when damp", "brakes squeal", "P0300", "renewed", "hose since last week")


@pytest.fixture(scope="module")
def written(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A shop with a little more jobs than are read each time, and no index yet."""
    folder = tmp_path_factory.mktemp("written") / "shop"
    large_history(folder, JOBS)
    return folder


@pytest.fixture
def place(written: Path, tmp_path: Path) -> Path:
    return Path(shutil.copytree(written, tmp_path / "shop"))


@pytest.fixture
def record(place: Path) -> Iterator[ShopRecord]:
    shop = open_place(place, lambda: NOON)
    yield shop
    shop.close()


def ask(shop: ShopRecord, text: str, limit: int = 20) -> Found:
    return find(shop, shop_vocabulary(), KINDS, text, limit)


def renew(shop: ShopRecord) -> None:
    """Make the index, as an errand does."""
    steps = list(renew_index(shop))
    assert steps[-1].done == steps[-1].of
    assert list(renew_index(shop)) == []  # once is enough


def files(place: Path) -> list[Path]:
    return sorted((place / FOLDER).iterdir()) if (place / FOLDER).exists() else []


def told(found: Found) -> tuple[object, ...]:
    """Return what of an answer must not depend on how it was come by."""
    fixes = [(fix.name, tuple(fix.jobs), fix.settled, tuple(fix.back_jobs)) for fix in found.fixes]
    return [hit.number for hit in found.hits], fixes, found.counted


def as_made_anew(shop: ShopRecord, text: str, limit: int = 20) -> Found:
    """Return the answer of an index made this moment."""
    fresh = open_place(shop.folder, lambda: NOON)
    list(index_of(fresh).renew(fresh))
    answer = ask(fresh, text, limit)
    fresh.close()
    return answer


def test_the_newest_jobs_are_found_before_there_is_an_index(record: ShopRecord) -> None:
    found = ask(record, "brakes squeal")
    assert found.hits
    assert found.fixes
    assert not found.of_all
    assert "not yet over all" in found.counted_over()
    assert index_is_behind(record)


def test_with_the_index_every_matching_job_is_counted(record: ShopRecord, place: Path) -> None:
    before = ask(record, "renewed ")
    renew(record)
    after = ask(record, "renewed ")
    assert after.of_all
    assert after.counted > before.counted
    assert "all" in after.counted_over()
    assert len(files(place)) == 1
    assert not index_is_behind(record)


@pytest.mark.parametrize("text", QUESTIONS)
def test_what_is_read_back_from_the_file_answers_the_same(record: ShopRecord, text: str) -> None:
    renew(record)
    again = open_place(record.folder, lambda: NOON)
    assert told(ask(again, text)) == told(ask(record, text))
    assert ask(again, text).of_all
    again.close()


def test_the_find_command_makes_the_index_once(place: Path) -> None:
    asked = Namespace(shop=str(place), text="renewed", limit=3)
    first = find_command(asked).json
    assert len(files(place)) == 1
    assert find_command(asked).json == first
    shop = open_place(place, lambda: NOON)
    assert not index_is_behind(shop)
    fixes = ask(shop, "renewed", 3).fixes
    assert [fix["jobs"] for fix in first["fixes"]] == [len(fix.jobs) for fix in fixes]
    shop.close()


def test_a_deed_its_undo_and_its_redo_are_felt_at_once(record: ShopRecord) -> None:
    renew(record)
    assert ask(record, "zebra").hits == ()

    def work(deed: Deed) -> None:
        deed.change(Job, 7, concern="the zebra hums", correction="zebra oiled")
        deed.add(TroubleCode, job_id=7, code="P2999", kind="stored", stage="found")

    record.do("Write another concern", work)
    for text in ("zebra ", "P2999"):
        assert [hit.job_id for hit in ask(record, text).hits] == [7], text
        assert [list(fix.jobs) for fix in ask(record, text).fixes] == [[7]], text
    record.undo()
    assert ask(record, "zebra ").hits == ()
    assert ask(record, "P2999").hits == ()
    record.redo()
    assert [hit.job_id for hit in ask(record, "zebra ").hits] == [7]


def test_a_new_job_and_one_taken_out_are_felt_at_once(record: ShopRecord) -> None:
    renew(record)
    made: list[int] = []

    def add(deed: Deed) -> None:
        visit = deed.add(Visit, vehicle_id=1, came_at="2026-11-16T09:00:00+00:00", odometer_in=9)
        window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
        made.append(deed.add(Job, visit_id=visit, number="NEW-1", concern="zebra", **window))

    record.do("Take a car in", add)
    assert [hit.number for hit in ask(record, "zebra ").hits] == ["NEW-1"]

    def remove(deed: Deed) -> None:
        deed.remove(Job, made[0])

    record.do("Take the job out", remove)
    assert ask(record, "zebra ").hits == ()


def test_answers_after_many_deeds_are_those_of_an_index_made_anew(record: ShopRecord) -> None:
    renew(record)
    for job in range(1, 60, 3):

        def work(deed: Deed, job: int = job) -> None:
            deed.change(Job, job, concern="brakes squeal when damp", system="brakes")
            deed.change(Job, job + 1, correction="Hose renewed.")
            deed.add(JobSymptom, job_id=job + 2, symptom="squeal-brakes-made-up")

        record.do("Change three jobs", work)
    for text in QUESTIONS:
        late, anew = ask(record, text, 200), as_made_anew(record, text, 200)
        assert told(late)[1:] == told(anew)[1:], text
        assert late.of_all


def test_jobs_added_in_bulk_and_taken_out_again_are_felt_at_once(record: ShopRecord) -> None:
    renew(record)
    first, last = JOBS + 1, JOBS + 30
    window = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}
    words = {"visit_id": 1, "says_same": 0, "system": "", "cause": "Hungry.", "proof_words": ""}
    told = {"concern": "zebra", "correction": "Zebra fed.", "left_at": "2026-03-02T08:00:00+00:00"}

    def work(deed: Deed) -> None:
        rows = [
            {"id": job, "number": f"B-{job}", **words, **told, **window}
            for job in range(first, last + 1)
        ]
        deed.connection.execute(insert(Job), rows)
        deed.remember_added(Job, first, last)

    record.do("Bring in old jobs", work)
    found = ask(record, "zebra ", 100)
    assert {hit.job_id for hit in found.hits} == set(range(first, last + 1))
    assert [(len(fix.jobs), fix.settled) for fix in found.fixes] == [(30, 30)]
    record.undo()
    assert ask(record, "zebra ").hits == ()


@pytest.mark.parametrize("how", ["seen here", "only told"])
def test_a_return_that_is_judged_lowers_the_job_and_counts(record: ShopRecord, how: str) -> None:
    renew(record)
    best = ask(record, "brakes squeal").hits[0]
    assert {"seen fine", "nothing heard"}.intersection(best.why)
    soon = (date.fromisoformat(best.left) + timedelta(days=30)).isoformat()

    def work(deed: Deed) -> None:
        if how == "seen here":
            deed.change(Visit, LAST_VISIT, came_at=f"{soon}T08:00:00+00:00")
            link = deed.add(ReturnLink, earlier_job_id=best.job_id, later_job_id=JOBS)
            deed.change(ReturnLink, link, judgement="same symptom")
        else:
            said = {"job_id": best.job_id, "answer": "same trouble", "asked_on": soon}
            told = deed.add(CustomerAsked, **said)
            deed.change(CustomerAsked, told, judgement="same symptom")

    record.do("Judge a return", work)
    found = ask(record, "brakes squeal", JOBS)
    now = next(hit for hit in found.hits if hit.job_id == best.job_id)
    assert now.score == pytest.approx(best.score - 2, abs=0.02)  # the words weigh a little less
    assert "came back" in now.why
    assert [list(fix.back_jobs) for fix in found.fixes if fix.came_back] == [[best.job_id]]


@pytest.mark.parametrize("damage", ["flipped", "cut", "empty", "foreign"])
def test_a_damaged_index_is_taken_away_and_made_again(
    record: ShopRecord, place: Path, damage: str
) -> None:
    renew(record)
    right = told(ask(record, "brakes squeal"))
    (path,) = files(place)
    whole = path.read_bytes()
    path.unlink()  # what is open stays as it was
    flipped = bytearray(whole)
    flipped[len(whole) // 2] ^= 1
    kinds = {"flipped": bytes(flipped), "cut": whole[:9000], "empty": b"", "foreign": b"x" * 9000}
    path.write_bytes(kinds[damage])
    again = open_place(place, lambda: NOON)
    assert not ask(again, "brakes squeal").of_all
    assert files(place) == []
    renew(again)
    assert told(ask(again, "brakes squeal")) == right
    again.close()


def test_the_index_of_another_history_is_not_believed(
    record: ShopRecord, place: Path, written: Path, tmp_path: Path
) -> None:
    def write(shop: ShopRecord, concern: str) -> None:
        def work(deed: Deed) -> None:
            deed.change(Job, 7, concern=concern)

        shop.do("Write another concern", work)

    other = open_place(Path(shutil.copytree(written, tmp_path / "other")), lambda: NOON)
    write(record, "zebra")
    write(other, "giraffe")
    renew(record)
    shutil.copytree(place / FOLDER, other.folder / FOLDER)
    found = ask(other, "giraffe ")
    assert [hit.job_id for hit in found.hits] == [7]
    assert not found.of_all
    assert files(other.folder) == []
    other.close()


def test_two_programs_do_not_disturb_each_other(record: ShopRecord, place: Path) -> None:
    other = open_place(place, lambda: NOON)
    ours, theirs = index_of(record).renew(record), index_of(other).renew(other)
    for _ in zip(ours, theirs, strict=True):
        pass
    assert told(ask(record, "brakes squeal")) == told(ask(other, "brakes squeal"))
    assert len(files(place)) == 1
    other.close()


def test_a_deed_while_the_index_is_made_is_not_lost(record: ShopRecord) -> None:
    steps = index_of(record).renew(record)
    next(steps)

    def work(deed: Deed) -> None:
        deed.change(Job, 7, concern="zebra")

    record.do("Change while it is read", work)
    list(steps)
    assert [hit.job_id for hit in ask(record, "zebra ").hits] == [7]


def test_an_index_that_was_stopped_half_way_leaves_nothing(record: ShopRecord, place: Path) -> None:
    steps = index_of(record).renew(record)
    next(steps)
    steps.close()
    assert files(place) == []
    assert not ask(record, "brakes squeal").of_all


def test_a_folder_that_cannot_be_written_costs_only_time(record: ShopRecord, place: Path) -> None:
    (place / FOLDER).write_text("in the way")
    renew(record)
    assert ask(record, "brakes squeal").of_all


def test_jobs_that_were_deleted_past_the_history_are_left_out(record: ShopRecord) -> None:
    renew(record)
    before = ask(record, "brakes squeal")
    gone = {before.hits[0].job_id, *(fix.jobs[0] for fix in before.fixes)}
    damage(record, *(f"DELETE FROM job WHERE id = {job}" for job in gone))
    after = ask(record, "brakes squeal")
    assert after.hits
    assert gone.isdisjoint(hit.job_id for hit in after.hits)


def test_too_many_changes_are_left_to_the_next_index(
    record: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(stored_ask_index, "MOST_LATE", 2)
    renew(record)

    def work(deed: Deed) -> None:
        for job in (7, 8, 9):
            deed.change(Job, job, concern="zebra")

    record.do("Change three", work)
    found = ask(record, "zebra ")
    assert not found.of_all
    assert {hit.job_id for hit in found.hits} == {7, 8, 9}
    renew(record)
    assert ask(record, "zebra ").of_all

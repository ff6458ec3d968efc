"""What can be made anew is, what is nobody's is set aside; rows, history and photos stay."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from desktop_app.commands.checking import check
from desktop_app.commands.mending import mend
from desktop_app.commands.whole_check import whole_check
from desktop_app.part_photos.stored_thumbnails import thumbnails_of
from desktop_app.shop_record.record_name import FILE_NAME, is_server_folder
from tests.faults.busy_shop import busy_shop, by_hand, found_in, opened, photos_of
from tests.faults.test_hands_in_the_folder import Words
from tests.from_outside import damage
from tests.shop_record.backed_up import all_files, through

pytestmark = pytest.mark.expects_trouble_log
LONG_AGO = 1_600_000_000


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    busy_shop(tmp_path / "shop", photos=3)
    return tmp_path / "shop"


def left_behind(path: Path, at: int = LONG_AGO) -> Path:
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_bytes(b"nobody's")
    os.utime(path, (at, at))
    return path


def test_what_nobody_names_is_told_and_only_moved_when_asked_to(shop: Path) -> None:
    photos = shop / "photos"
    left = [
        left_behind(photos / "ab" / f"ab{'0' * 62}"),
        left_behind(photos / "cd" / f"cd{'1' * 62}.tmp"),
        left_behind(photos / "holiday.jpg"),
    ]
    before = all_files(shop)
    problems = found_in(shop)
    assert [problem.lost for problem in problems] == [False] * 3
    assert all(
        any(path.name in problem.what for problem in problems) and "--mend" in problems[0].do
        for path in left
    )
    assert all_files(shop) == before
    outcome = check(Words(shop, mend=True))
    assert outcome.status == 0
    assert outcome.json["mended"] == [
        f"Moved {path.relative_to(shop).as_posix()} to trash/{_when(shop)}/"
        f"{path.relative_to(shop).as_posix()}."
        for path in left
    ]
    now = all_files(shop)
    assert sorted(now.values()) == sorted(before.values())
    record = "server.toml" if is_server_folder(shop) else FILE_NAME
    assert now[record] == before[record]


def test_nothing_is_moved_once_the_history_cannot_be_read(shop: Path) -> None:
    left_behind(shop / "photos" / "holiday.jpg")
    with opened(shop) as record:
        checked = through(whole_check(record))
        damage(record, "UPDATE history SET body = 'torn' WHERE seq = 2")
        [said] = through(mend(record, checked))
    assert said.startswith("Nothing was moved out of the photo folder")
    assert (shop / "photos" / "holiday.jpg").exists()


def test_former_copies_of_the_record_are_told_and_moved_when_asked_to(shop: Path) -> None:
    left_behind(shop / "shop-before-import.sqlite")
    [problem] = found_in(shop)
    assert "shop-before-import.sqlite was set aside before an import" in problem.what
    assert not problem.lost
    assert check(Words(shop, mend=True)).json["mended"] == [
        f"Moved shop-before-import.sqlite to trash/{_when(shop)}/shop-before-import.sqlite."
    ]
    assert found_in(shop) == []


def _when(shop: Path) -> str:
    return next((shop / "trash").iterdir()).name


def test_what_may_still_be_written_and_what_undo_brings_back_stay(shop: Path) -> None:
    with opened(shop) as record:
        (shop / "photos" / "ee").mkdir(exist_ok=True)
        (shop / "photos" / "ee" / f"ee{'0' * 62}.tmp").write_bytes(b"just being written")
        undone = record.photos.path(photos_of(record)[0][0])
        os.utime(undone, (LONG_AGO, LONG_AGO))
        with record.deed("Take the photo out") as deed:
            from desktop_app.part_photos.stored import Photo

            deed.remove(Photo, 1)
    assert found_in(shop) == []


@pytest.mark.embedded
def test_a_damaged_index_is_made_anew_and_nothing_else_is_written(shop: Path) -> None:
    with by_hand(shop) as raw:
        raw.execute("DELETE FROM job_text WHERE rowid = 2")
        raw.execute("UPDATE job_text SET concern = 'nonsense' WHERE rowid = 3")
        entries = raw.execute("SELECT * FROM history").fetchall()
    assert [(p.where, "2 jobs" in p.what, p.lost) for p in found_in(shop)] == [
        ("the search index", True, False)
    ]
    outcome = check(Words(shop, mend=True))
    assert (outcome.status, outcome.json["problems"]) == (0, [])
    assert outcome.json["mended"] == ["The search index was made anew from 23 jobs."]
    with by_hand(shop) as raw:
        assert raw.execute("SELECT * FROM history").fetchall() == entries


@pytest.mark.embedded
def test_words_of_the_index_that_were_torn_are_made_anew(shop: Path) -> None:
    with by_hand(shop) as raw:
        raw.execute("UPDATE job_text_data SET block = zeroblob(30) WHERE id > 10")
    assert [problem.where for problem in found_in(shop)] == ["the search index"]
    assert check(Words(shop, mend=True)).status == 0


def test_torn_thumbnails_are_told_and_go(shop: Path) -> None:
    with opened(shop) as record:
        sha256 = photos_of(record)[0][0]
        torn = thumbnails_of(record).path(sha256)
    torn.parent.mkdir(parents=True)
    torn.write_bytes(b"\xff\xd8\xff half of it")
    assert [(p.where, p.lost) for p in found_in(shop)] == [("the thumbnails", False)]
    outcome = check(Words(shop, mend=True))
    assert outcome.json["problems"] == []


@pytest.mark.embedded
def test_photos_that_are_gone_or_changed_come_back_from_a_backup(shop: Path) -> None:
    with opened(shop) as record:
        gone, changed = (record.photos.path(sha256) for sha256, _ in photos_of(record)[:2])
    as_taken = {path: path.read_bytes() for path in (gone, changed)}
    gone.unlink()
    changed.chmod(0o644)
    changed.write_bytes(b"another part")
    found = found_in(shop)
    assert [(gone.name in p.what or changed.name in p.what, p.lost) for p in found] == [
        (True, True)
    ] * 2
    assert all("--mend" in problem.do for problem in found)
    outcome = check(Words(shop, mend=True))
    assert (outcome.status, outcome.json["problems"]) == (0, [])
    assert {path: path.read_bytes() for path in as_taken} == as_taken
    assert all("was brought back from" in words for words in outcome.json["mended"])
    (trash,) = (shop / "trash").rglob(changed.name)
    assert trash.read_bytes() == b"another part"


@pytest.mark.embedded
def test_a_photo_that_is_whole_nowhere_stays_told(shop: Path) -> None:
    with opened(shop) as record:
        gone = record.photos.path(photos_of(record)[0][0])
    for path in shop.rglob(gone.name):
        path.unlink()
    outcome = check(Words(shop, mend=True))
    assert outcome.status == 1
    assert outcome.json["mended"] == ["1 photo was found whole nowhere."]
    assert any(gone.name in problem["what"] for problem in outcome.json["problems"])


def test_a_whole_shop_has_nothing_to_mend(shop: Path) -> None:
    before = all_files(shop)
    outcome = check(Words(shop, mend=True))
    assert (outcome.status, outcome.json["mended"]) == (0, [])
    assert all_files(shop) == before

"""Exports that were changed, cut or made up: refused with file, row and reason, all or nothing."""

from __future__ import annotations

import csv
import hashlib
import os
import shutil
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from desktop_app.records_exchanged.whole_actions import bring_back, is_new
from desktop_app.shop_record.past.history import GENESIS, chained_hash
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.exported import checked_anew, export, fill, walked
from tests.records_exchanged.importing import a_shop

Change = Callable[[Path], object]


@pytest.fixture(scope="module")
def exported(tmp_path_factory: pytest.TempPathFactory) -> Path:
    place = tmp_path_factory.mktemp("export")
    for record in a_shop(place):
        fill(record)
        export(record, place / "out")
    return place / "out"


@pytest.fixture(scope="module")
def new_shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    """One that stays new: whatever is refused leaves nothing in it."""
    yield from a_shop(tmp_path_factory.mktemp("new"))


def swapped(name: str, old: str, new: str) -> Change:
    def change(folder: Path) -> None:
        content = (folder / name).read_bytes()
        assert content.count(old.encode()) >= 1
        (folder / name).write_bytes(content.replace(old.encode(), new.encode(), 1))

    return change


def gone(name: str) -> Change:
    return lambda folder: (folder / name).unlink()


def added(name: str, content: str = "") -> Change:
    return lambda folder: (folder / name).write_text(content)


def linked_outside(folder: Path) -> None:
    outside = folder.parent / "outside.csv"
    shutil.move(folder / "tables" / "visits.csv", outside)
    (folder / "tables" / "visits.csv").symlink_to(outside)


def linked_to_itself(folder: Path) -> None:
    (folder / "tables" / "visits.csv").unlink()
    os.symlink("visits.csv", folder / "tables" / "visits.csv")


def not_utf8(name: str) -> Change:
    return lambda folder: (folder / name).write_bytes(
        (folder / name).read_bytes().replace(b"2", b"\xe4", 1)
    )


def rewritten_past(folder: Path) -> None:
    """Change a word of the first entry in its columns and its body, and its own hash with it."""
    swapped("history.csv", "shop name", "shop fame")(folder)
    swapped("history.csv", "shop name", "shop fame")(folder)


REFUSED_CHECKED_ANEW: list[tuple[Change, str]] = [
    (gone("tables/visits.csv"), "checksums.sha256: tables/visits.csv is missing"),
    (gone("history.csv"), "history.csv is missing"),
    (gone("photo_files.csv"), "photo_files.csv is missing"),
    (added("tables/horses.csv"), "tables/horses.csv is no file of an export"),
    (added("part_kinds.exe"), "part_kinds.exe is no file"),
    (swapped("tables/visits.csv", "came_at", "came_by"), "visits.csv, row 1: the column “came_by”"),
    (swapped("tables/visits.csv", "id,", "id,id,"), "visits.csv, row 1: the columns stand"),
    (swapped("tables/visits.csv", ",50001", ",many"), "visits.csv, row 2, odometer_in: “many”"),
    (swapped("tables/visits.csv", ",50001", ",1_0"), "visits.csv, row 2, odometer_in: “1_0”"),
    (swapped("tables/visits.csv", ",50001", ""), "visits.csv, row 2: it has 9 cells where"),
    (swapped("tables/visits.csv", "2024-03-03T", "yesterdayT"), "tables/visits.csv, id 3: "),
    (swapped("tables/readings.csv", "26.9,", "nan,"), "readings.csv, row 2, value: “nan”"),
    (swapped("tables/readings.csv", "26.9,", "1e999,"), "readings.csv, row 2, value"),
    (
        swapped("tables/vehicles.csv", "mi\r\n", "furlong\r\n"),
        "vehicles.csv, row 2: the record can",
    ),
    (swapped("tables/visits.csv", "\n3,", "\n2,"), "visits.csv, row 4, id: 2 is not above"),
    (swapped("tables/visits.csv", "\n9,", "\n999999999999,"), "visits.csv, row 10, id"),
    (
        swapped("tables/visits.csv", "\n9,2,", "\n9,77,"),
        "row 10, vehicle_id: there is no vehicle 77",
    ),
    (
        swapped("tables/jobs_in_full.csv", "\n9,J-9", "\n9,J-1"),
        "jobs_in_full.csv, row 10: the record",
    ),
    (swapped("tables/jobs_in_full.csv", '"', ""), "jobs_in_full.csv, "),
    (
        swapped("tables/house_rules.csv", "Corner", 'C"'),
        "house_rules.csv, after row 1: this is no CSV",
    ),
    (swapped("ids_given.csv", "visit,9", "visit,8"), "ids_given.csv, row"),
    (swapped("ids_given.csv", "visit,", "horse,"), "there is no table “horse”"),
    (swapped("photo_files.csv", "\n1,", "\n5,"), "photo_files.csv: it doesn't say of photo 1"),
    (swapped("photo_files.csv", "photos/J-7/pair", "../pair"), "photo_files.csv, row 2, file"),
    (swapped("history.csv", "Jobs", "Lies"), "history.csv, row 5: the entry says one thing"),
    (swapped("history.csv", "\n2,", "\n3,"), "history.csv, row 3, seq: entry 2 is missing"),
    (rewritten_past, "history.csv: history entry 1"),
    (not_utf8("tables/visits.csv"), "tables/visits.csv, after row 1: it is not UTF-8"),
]


@pytest.mark.parametrize(("change", "says"), REFUSED_CHECKED_ANEW)
def test_what_contradicts_itself_is_refused_though_its_checksums_hold(
    exported: Path, new_shop: ShopRecord, tmp_path: Path, change: Change, says: str
) -> None:
    folder = shutil.copytree(exported, tmp_path / "out")
    change(folder)
    checked_anew(folder)
    refuse(new_shop, folder, says)


def line(sha256: str, name: str) -> Change:
    def change(folder: Path) -> None:
        with (folder / "checksums.sha256").open("a") as file:
            file.write(f"{sha256}  {name}\n")

    return change


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (swapped("tables/visits.csv", "50001", "50002"), "tables/visits.csv: it is not as it was"),
        (swapped("jobs.csv", "J-1", "J-8"), "jobs.csv: it is not as it was written"),
        (gone("tables/visits.csv"), "tables/visits.csv: it is missing"),
        (linked_outside, "tables/visits.csv: it is no plain file in the folder"),
        (line("0" * 64, "../outside.csv"), "../outside.csv is no file of an export"),
        (line("0" * 64, "photos/../../x.jpg"), "photos/../../x.jpg is no file of an export"),
        (line("0" * 64, "/etc/passwd"), "is no file of an export"),
        (line("0" * 64, "photos\\J-1\\x.jpg"), "this is no checksum of a file"),
        (line("0" * 64, "photos/J-1/not-there.jpg"), "photos/J-1/not-there.jpg: it is missing"),
        (line("0" * 63, "jobs.csv"), "this is no checksum of a file"),
        (line("0" * 64, "jobs.csv"), "jobs.csv is named twice"),
        (line("0" * 64, f"photos/J-1/{'x' * 300}.jpg"), "it can't be read (File name too long)"),
        (linked_to_itself, "tables/visits.csv: it is no plain file in the folder"),
        (added("checksums.sha256", "\x00\x01"), "checksums.sha256, line 1"),
        (not_utf8("checksums.sha256"), "checksums.sha256: it is not written in UTF-8"),
        (added("checksums.sha256"), "checksums.sha256: README.txt is missing"),
    ],
)
def test_what_is_not_as_it_was_written_is_refused(
    exported: Path, new_shop: ShopRecord, tmp_path: Path, change: Change, says: str
) -> None:
    folder = shutil.copytree(exported, tmp_path / "out")
    change(folder)
    refuse(new_shop, folder, says)


def refuse(shop: ShopRecord, folder: Path, says: str) -> None:
    with pytest.raises(ShopTrouble) as trouble:
        walked(bring_back(shop, folder))
    assert says in trouble.value.what
    assert "Nothing was brought back." in trouble.value.kept
    assert is_new(shop)
    assert not shop.photos.folder.exists()


def test_a_shop_in_which_something_is_written_is_left_as_it_is(
    exported: Path, tmp_path: Path
) -> None:
    for record in a_shop(tmp_path):
        fill(record)
        with pytest.raises(ShopTrouble, match="written in this shop already"):
            walked(bring_back(record, exported))


def test_the_hash_of_an_entry_is_what_the_read_me_says() -> None:
    inner = hashlib.sha256(b"\x00" + b'{"a":1}').digest()
    outer = hashlib.sha256(b"\x01" + bytes(32) + b"1" + inner).hexdigest()
    assert chained_hash(GENESIS, 1, '{"a":1}') == outer


@pytest.mark.parametrize(
    ("limit", "says"),
    [
        ("whole_checksums.MOST_FILES", "it names more than 7 files"),
        ("whole_folder_files.MOST_PHOTO_BYTES", "it is larger than any photo"),
    ],
)
def test_more_than_any_export_has_is_refused(
    exported: Path, new_shop: ShopRecord, limit: str, says: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(f"desktop_app.records_exchanged.{limit}", 7)
    refuse(new_shop, exported, says)


def test_how_long_a_cell_may_be_for_others_stays_as_it_was(
    exported: Path, new_shop: ShopRecord, tmp_path: Path
) -> None:
    before, limits = csv.field_size_limit(), set[int]()
    folder = shutil.copytree(exported, tmp_path / "out")
    swapped("ids_given.csv", "visit,", "horse,")(folder)
    checked_anew(folder)
    with pytest.raises(ShopTrouble):  # noqa: PT012 - what is asked between the steps counts
        for _ in bring_back(new_shop, folder):
            limits.add(csv.field_size_limit())
    assert limits == {before}

"""What an export holds, that it stays whole, and that all of it comes back byte for byte."""

from __future__ import annotations

import csv
import hashlib
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlalchemy import text

from desktop_app.part_photos.stored import Photo
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.export_files import export_everything
from desktop_app.records_exchanged.export_folder_files import export_folder
from desktop_app.records_exchanged.export_names import TABLE_FILES, table_file
from desktop_app.records_exchanged.stored_export import kept_tables
from desktop_app.records_exchanged.whole_actions import bring_back, is_new
from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.from_outside import lose_photo, spoil_photo
from tests.records_exchanged.exported import NASTY, export, files_of, fill, walked
from tests.records_exchanged.importing import a_shop, bring_in, counts, found_by


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    for record in a_shop(tmp_path_factory.mktemp("filled")):
        fill(record)
        own = record.folder / "part_kinds"
        own.mkdir()
        (own / "our own.toml").write_bytes(b"# not a kind yet\n")
        yield record


@pytest.fixture(scope="module")
def folder(shop: ShopRecord, tmp_path_factory: pytest.TempPathFactory) -> Path:
    to = tmp_path_factory.mktemp("export") / "out"
    export(shop, to)
    return to


@pytest.fixture
def other(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


def rows_in(folder: Path, name: str) -> list[dict[str, str]]:
    with (folder / name).open(encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file, strict=True))


def test_every_file_is_named_with_its_checksum_and_said_what_it_is(folder: Path) -> None:
    files = files_of(folder)
    lines = files.pop("checksums.sha256").decode().splitlines()
    assert {line[66:]: line[:64] for line in lines} == {
        name: hashlib.sha256(content).hexdigest() for name, content in files.items()
    }
    said = files.pop("README.txt").decode()
    named = {name for name in files if not name.startswith(("photos/", "part_kinds/"))}
    assert [name for name in named if name not in said] == []
    assert files["part_kinds/our own.toml"] == b"# not a kind yet\n"


def test_every_table_has_a_plain_name_and_words_of_its_own() -> None:
    tables = {table.name for table in kept_tables()}
    assert tables == TABLE_FILES.keys()
    assert len({table_file(table) for table in tables}) == len(tables)


def test_a_job_has_a_line_for_each_part_and_its_own_cells_once(folder: Path) -> None:
    rows = rows_in(folder, "jobs.csv")
    assert list(rows[0]) == list(FIELDS)
    mine = [row for row in rows if row["job_number"] == "J-7"]
    parts = [(row["part_kind"], row["part_number"], row["part_origin"]) for row in mine]
    assert parts == [
        ("distributor-rotor", "'=7", "used"),
        ("ignition-coil", "'=7", ""),
        ("ignition-coil", "'=7", "used"),
    ]
    assert [row["price"] for row in mine] == ["86.38", "", ""]
    assert [row["codes"] for row in mine] == ["P0301 P0300", "", ""]
    assert [(row["return_of"], row["judgement"]) for row in mine] == [
        ("J-1", "same part"),
        ("J-4", "cannot tell"),
        ("", ""),
    ]
    assert [row["return_of"] for row in rows if row["job_number"] == "J-1"] == ["", "J-9"]
    assert {row["odometer_unit"] for row in rows} == {"mi", "km", ""}


def test_texts_that_look_like_a_formula_stay_text(folder: Path) -> None:
    concerns = [row["concern"] for row in rows_in(folder, "jobs.csv") if row["opened_on"]]
    assert concerns[0] == "'=1+1"
    assert all(cell[:1] not in ("=", "+", "-", "@", "\t", "\r") for cell in concerns)
    assert len(concerns) == len(NASTY) + 1


def test_photos_have_readable_names_and_their_whole_hash_in_a_table(folder: Path) -> None:
    rows = rows_in(folder, "photo_files.csv")
    for row in rows:
        content = (folder / row["file"]).read_bytes()
        assert hashlib.sha256(content).hexdigest() == row["sha256"]
    names = [row["file"] for row in rows]
    assert (
        names[0] == f"photos/J-7/pair-1_distributor-rotor_removed_top_{rows[0]['sha256'][:12]}.jpg"
    )
    assert names[2] == f"photos/J-1/photo_{rows[2]['sha256'][:12]}.jpg"


def test_jobs_alone_come_back_through_an_ordinary_import(
    folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    content = (folder / "jobs.csv").read_bytes().decode()
    told = bring_in(other, content)
    assert told.rejected == []
    export(other, tmp_path / "again")
    assert (tmp_path / "again" / "jobs.csv").read_bytes() == (folder / "jobs.csv").read_bytes()
    lines = len(rows_in(folder, "jobs.csv"))
    assert counts(bring_in(other, content)) == (0, 0, lines, 0)


def test_everything_comes_back_byte_for_byte(
    shop: ShopRecord, folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    told = walked(bring_back(other, folder))
    assert (told.rows["job"], told.photos, told.rows["photo"]) == (9, 4, 4)
    export(other, tmp_path / "again")
    assert files_of(tmp_path / "again") == files_of(folder)
    assert files_of(other.folder / "photos") == files_of(shop.folder / "photos")
    checked = check_shop(other, [])
    assert checked.ok
    assert checked.history_entries_checked == told.history_entries + 1


def test_one_deed_says_so_and_can_be_undone(
    folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    walked(bring_back(other, folder))
    assert other.can_undo() == "Bring back the export out"
    assert found_by(other, "misfires") == [9]
    other.undo()
    with other.reading() as connection:
        left = [
            connection.execute(text(f'SELECT * FROM "{t.name}"')).first() for t in kept_tables()
        ]
    assert left == [None] * len(left)
    export(other, tmp_path / "undone")
    before, after = (rows_in(one, "history.csv") for one in (folder, tmp_path / "undone"))
    assert [row["reverses"] for row in after[len(before) :]] == ["", str(len(before) + 1)]


def test_what_is_done_afterwards_stands_in_the_history_and_gets_new_ids(
    folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    walked(bring_back(other, folder))
    with other.deed("Someone new") as deed:
        made = deed.add(Person, name="Someone new")
    highest = {row["table"]: int(row["highest_id"]) for row in rows_in(folder, "ids_given.csv")}
    assert (highest["customer"], made) == (3, highest["person"] + 1)
    export(other, tmp_path / "later")
    before, after = (rows_in(one, "history.csv") for one in (folder, tmp_path / "later"))
    assert after[: len(before)] == before
    assert [row["words"] for row in after[len(before) :]] == [
        "Bring back the export out",
        "Someone new",
    ]


def test_a_dry_run_leaves_nothing(folder: Path, other: ShopRecord) -> None:
    assert walked(bring_back(other, folder, dry_run=True)).photos == 4
    assert is_new(other)
    assert not other.photos.folder.exists()


def test_who_stops_leaves_nothing(shop: ShopRecord, folder: Path, tmp_path: Path) -> None:
    for stopped_after in (1, 10, 25):
        steps = export_everything(shop, tmp_path / "stopped")
        for _ in range(stopped_after):
            step = next(steps)
            assert 0 <= step.done <= step.of
        steps.close()
    assert list(tmp_path.iterdir()) == []
    for other in a_shop(tmp_path):
        back = bring_back(other, folder)
        while "photos" not in next(back).words:
            pass
        back.close()
        assert is_new(other)
        assert not other.photos.folder.exists()


def test_no_place_for_it_is_said_in_words(shop: ShopRecord, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("mine")
    for to in (tmp_path / "file" / "out", tmp_path / ("long" * 100)):
        with pytest.raises(ShopTrouble, match="was not written"):
            export(shop, to)
    assert [file.name for file in tmp_path.iterdir()] == ["file"]


def test_a_folder_that_holds_something_is_left_as_it_is(shop: ShopRecord, tmp_path: Path) -> None:
    (tmp_path / "note.txt").write_text("mine")
    with pytest.raises(ShopTrouble, match="not empty"):
        export(shop, tmp_path)
    assert [file.name for file in tmp_path.iterdir()] == ["note.txt"]


def test_a_photo_that_is_gone_or_damaged_is_told_and_the_rest_written(
    folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    walked(bring_back(other, folder))
    gone, changed, *_ = sorted(other.photos.all_names())
    lose_photo(other, gone)
    spoil_photo(other, changed, b"changed")
    told = export(other, tmp_path / "out")
    assert len({one.split(" of ")[0] for one in told.missing}) == 2
    rows = rows_in(tmp_path / "out", "photo_files.csv")
    assert sum(not row["file"] for row in rows) == len(told.missing)
    for third in a_shop(tmp_path / "third"):
        assert walked(bring_back(third, tmp_path / "out")).photos == told.photos


def test_two_photos_whose_names_would_be_the_same_are_both_kept(
    other: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.records_exchanged.export_names.SHORT_HASH", 1)
    fill(other)
    alike = [str(n).encode() for n in range(99)]
    alike = [one for one in alike if hashlib.sha256(one).hexdigest()[0] == "a"][:2]
    size = {"media_type": "image/png", "size_bytes": 1, "width": 1, "height": 1}
    with other.deed("Two more") as deed:
        for content in alike:
            deed.add(Photo, job_id=2, sha256=other.photos.keep(content), name="one.png", **size)
    told = export(other, tmp_path / "out")
    assert (told.photos, told.missing) == (6, [])
    short, long = (row["file"] for row in rows_in(tmp_path / "out", "photo_files.csv")[-2:])
    assert short == "photos/J-2/photo_a.png"
    assert long == f"photos/J-2/photo_{hashlib.sha256(alike[1]).hexdigest()}.png"


def test_photos_of_one_name_are_told_apart_and_one_that_is_there_is_not_written_twice(
    tmp_path: Path,
) -> None:
    contents = (b"one", b"two")
    one, two = (hashlib.sha256(content).hexdigest() for content in contents)
    for sha256, content in zip((one, two), contents, strict=True):
        (tmp_path / sha256).write_bytes(content)
    name, longer = f"photos/J-1/tip_{one[:12]}.jpg", f"photos/J-1/tip_{two}.jpg"
    with export_folder(tmp_path / "out") as (folder, _):
        for _ in range(2):
            assert folder.copy_photo(tmp_path / one, name, one) == name
            assert folder.copy_photo(tmp_path / two, name, two) == longer
        assert (folder.files, folder.bytes_written) == (2, 6)
    lines = (tmp_path / "out" / "checksums.sha256").read_text().splitlines()
    assert lines == [f"{one}  {name}", f"{two}  {longer}"]


def test_an_empty_folder_that_was_made_for_it_is_filled(tmp_path: Path) -> None:
    (tmp_path / "out").mkdir()
    with export_folder(tmp_path / "out") as (folder, _):
        folder.write_whole("README.txt", b"read me")
    assert set(files_of(tmp_path / "out")) == {"README.txt", "checksums.sha256"}


def test_an_export_of_many_rows_is_read_in_pieces(
    folder: Path, other: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.records_exchanged.whole_folder_files.AT_A_TIME", 2)
    told = walked(bring_back(other, folder))
    assert told.rows["job"] == 9
    export(other, tmp_path / "again")
    jobs = "tables/jobs_in_full.csv"
    assert (tmp_path / "again" / jobs).read_bytes() == (folder / jobs).read_bytes()


@pytest.mark.parametrize(("there", "says"), [("file", "is there already"), ("no folder", "not wr")])
def test_own_part_kinds_that_find_no_place_are_told_and_nothing_comes_back(
    folder: Path, other: ShopRecord, there: str, says: str
) -> None:
    place = other.folder / "part_kinds"
    mine = place / "our own.toml" if there == "file" else place
    mine.parent.mkdir(exist_ok=True)
    mine.write_text("mine")
    with pytest.raises(ShopTrouble, match=says) as refused:
        walked(bring_back(other, folder))
    assert refused.value.kept == "Nothing was brought back."
    assert mine.read_text() == "mine"
    assert is_new(other)
    assert not other.photos.folder.exists()


def test_a_photo_that_is_changed_while_it_is_brought_back_is_refused(
    folder: Path, other: ShopRecord, tmp_path: Path
) -> None:
    copy = shutil.copytree(folder, tmp_path / "copy")
    steps = bring_back(other, copy)
    assert any(step.words == "reading history.csv" for step in steps)
    for photo in (copy / "photos").rglob("*.*"):
        photo.write_bytes(b"another picture")
    with pytest.raises(ShopTrouble, match="it was changed while it was read"):
        walked(steps)
    assert is_new(other)

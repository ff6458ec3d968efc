"""`backup` and `restore` from the command line: whole, or one line that says why not."""

from __future__ import annotations

import json
from contextlib import closing
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import new_place, open_place
from desktop_app.shop_record.backups.backups_made import daily_backup
from tests.conftest import NOON
from tests.from_outside import damage, lose_photo
from tests.shop_record.backed_up import all_files, named, through, with_photo


@pytest.fixture
def place(tmp_path: Path) -> str:
    record = new_place(tmp_path / "shop", lambda: NOON)
    named(record, "Odile")
    with_photo(record)
    record.close()
    return str(tmp_path / "shop")


def told(capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    """Run a command line: its status, what it printed, what it said on standard error."""
    status = run(words, lambda _folder: 0, lambda _folder, _picture: None)
    captured = capsys.readouterr()
    return status, captured.out, captured.err


def refused(capsys: pytest.CaptureFixture[str], *words: str) -> str:
    status, out, err = told(capsys, *words)
    assert (status, out, err.count("\n")) == (2, "", 1)
    return err


def test_there_and_back(place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file, again = str(tmp_path / "shop.zip"), str(tmp_path / "again")
    status, out, err = told(capsys, "backup", file, "--shop", place)
    assert (status, err) == (0, "")
    assert "1 photo and 2 entries of the history" in out
    assert "It was read again and is whole." in out
    status, out, err = told(capsys, "restore", file, again)
    assert (status, err) == (0, "")
    assert "1 photo and 2 entries of the history" in out
    assert told(capsys, "check", "--shop", again)[0] == 0
    find = ("find", "hums", "--json", "--shop")
    assert told(capsys, *find, place)[1] == told(capsys, *find, again)[1]


def test_both_say_the_same_facts_as_json(
    place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file, again = str(tmp_path / "shop.zip"), str(tmp_path / "again")
    made = json.loads(told(capsys, "backup", file, "--shop", place, "--json")[1])
    back = json.loads(told(capsys, "restore", file, again, "--json")[1])
    assert made["file"] == file
    assert made["bytes"] == Path(file).stat().st_size
    assert back["shop"] == again
    for name in ("photos", "history_entries", "head", "missing_photos"):
        assert made[name] == back[name]


def test_a_missing_photo_is_told_by_both(
    place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    with closing(open_place(Path(place))) as record:
        for photo in list(record.photos.all_names()):
            lose_photo(record, photo)
    file = str(tmp_path / "shop.zip")
    assert "Not in it, because it is gone" in told(capsys, "backup", file, "--shop", place)[1]
    assert "missing in the shop already" in told(capsys, "restore", file, str(tmp_path / "b"))[1]


def test_what_cannot_be_done_is_one_line(
    place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = str(tmp_path / "shop.zip")
    told(capsys, "backup", file, "--shop", place)
    before = all_files(tmp_path)
    assert "is there already" in refused(capsys, "backup", file, "--shop", place)
    assert "There is no folder" in refused(
        capsys, "backup", str(tmp_path / "no" / "b.zip"), "--shop", place
    )
    assert "There is no shop" in refused(capsys, "backup", file + "2", "--shop", str(tmp_path))
    assert "not empty" in refused(capsys, "restore", file, place)
    assert "There is no backup" in refused(capsys, "restore", file + "2", str(tmp_path / "b"))
    assert "required" in refused(capsys, "restore", file)
    assert all_files(tmp_path) == before


def test_a_file_in_the_way_of_the_new_folder_is_left_alone(
    place: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = str(tmp_path / "shop.zip")
    told(capsys, "backup", file, "--shop", place)
    (tmp_path / "note").write_text("mine")
    assert "is there already" in refused(capsys, "restore", file, str(tmp_path / "note"))
    said = refused(capsys, "restore", file, str(tmp_path / "note" / "deeper"))
    assert "was not written" in said
    assert (tmp_path / "note").read_text() == "mine"


@pytest.mark.embedded  # a server keeps no count of the entries that it was given
def test_check_says_how_old_backups_are_and_finds_a_history_that_was_cut(
    place: str, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, _ = told(capsys, "check", "--shop", place)
    assert status == 0  # no backup is no damage
    assert "There is no backup of this shop." in out
    record = open_place(Path(place))
    through(daily_backup(record))
    status, out, _ = told(capsys, "check", "--shop", place)
    assert (status, "backup" in out) == (0, False)
    damage(record, "DELETE FROM history WHERE seq = 2")
    record.close()
    found = json.loads(told(capsys, "check", "--shop", place, "--json")[1])
    of_history = [one["what"] for one in found["problems"] if one["where"] == "the history"]
    assert ["after the backup" in what for what in of_history] == [False, True]

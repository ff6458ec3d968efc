"""`problem-report`: what is sent when something went wrong, without a name in it."""

from __future__ import annotations

import json
import zipfile
from importlib import metadata
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import new_place, now
from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.own_program import own_version, problem_report

PRIVATE = ("Abernathy", "TH 1042", "stalls", "Hill Garage", "usb-stick", "6000")


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    """A shop with names in its record, its rules and its log."""
    folder = tmp_path / "Hill Garage"
    record = new_place(folder, now)
    change_rule(record, "shop_name", "Hill Garage")
    change_rule(record, "second_backup_folder", "/media/usb-stick")
    change_rule(record, "text_size", 14)
    write_up(record, WriteUp("Abernathy: stalls", plate="TH 1042", odometer=90_100))
    record.close()
    (folder / "benchwitness.log.1").write_text("2026-01-02 08:00:00,001 ERROR Qt: before\n")
    (folder / "benchwitness.log").write_text(
        "2026-11-16 12:00:01,123 ERROR not foreseen\n"
        "Traceback (most recent call last):\n"
        '  File "/home-of-sam/desktop_app/places.py", line 3, in ask\n'
        "    self.find(words)\n"
        "ValueError: Abernathy, TH 1042\n",
        encoding="utf-8",
    )
    return folder


def asked(*words: str) -> int:
    return run(words, lambda _folder: 0, lambda _folder, _picture: None)


def test_it_is_shown_before_it_is_written(shop: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert asked("problem-report", "--shop", str(shop)) == 0
    said = capsys.readouterr().out
    assert "Benchwitness 0." in said
    assert "sqlalchemy 2." in said.lower()
    assert "text_size = 14" in said
    assert "window_days = 90" in said
    assert said.index("Qt: before") < said.index("desktop_app/places.py, line 3, in ask")
    assert "ValueError" in said
    assert [word for word in PRIVATE if word in said] == []
    assert not list(shop.parent.glob("*.zip"))


def test_what_is_written_is_what_was_shown(shop: Path, capsys: pytest.CaptureFixture[str]) -> None:
    to = shop.parent / "report.zip"
    assert asked("problem-report", "--shop", str(shop), "--json") == 0
    shown = json.loads(capsys.readouterr().out)
    assert asked("problem-report", "--shop", str(shop), "--out", str(to)) == 0
    assert f"Wrote {to}" in capsys.readouterr().out
    with zipfile.ZipFile(to) as file:
        assert {name: file.read(name).decode().rstrip("\n") for name in file.namelist()} == shown


@pytest.mark.embedded
def test_a_shop_that_cannot_be_opened_is_no_hindrance(
    shop: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (shop / "shop.sqlite").write_bytes(b"torn")
    assert asked("problem-report", "--shop", str(shop)) == 0
    said = capsys.readouterr().out
    assert "The shop's settings could not be read." in said
    assert "ValueError" in said


def test_without_a_shop_it_tells_of_the_program(capsys: pytest.CaptureFixture[str]) -> None:
    assert asked("problem-report") == 0
    assert "Benchwitness 0." in capsys.readouterr().out


def test_a_file_that_cannot_be_written_is_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for place in (tmp_path / "gone" / "report.zip", tmp_path):
        assert asked("problem-report", "--out", str(place)) == 2
        assert "cannot be written" in capsys.readouterr().err
    assert list(tmp_path.parent.glob("*.part")) == []


def test_a_program_that_was_never_installed_has_no_version_to_tell(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def nobody(name: str) -> str:
        raise metadata.PackageNotFoundError(name)

    monkeypatch.setattr(metadata, "version", nobody)
    monkeypatch.setattr(metadata, "requires", nobody)
    assert (own_version.version(), problem_report.libraries()) == ("", [])

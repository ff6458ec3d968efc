"""`menu-entry`: the program in the menu of a Linux desktop, and out of it again."""

from __future__ import annotations

import configparser
import json
import os
import shlex
import sqlite3
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.menu_entry import entry_text
from desktop_app.shop_record.record_name import FILE_NAME

on_linux = pytest.mark.skipif(sys.platform != "linux", reason="other systems have other menus")


def asked(*words: str) -> int:
    return run(words, lambda _folder: 0, lambda _folder, _picture: None)


def written(capsys: pytest.CaptureFixture[str]) -> list[Path]:
    """Put the program into the menu; the files that were written for it."""
    assert asked("menu-entry", "--json") == 0
    return [Path(file) for file in json.loads(capsys.readouterr().out)["files"]]


def read(text: str) -> configparser.SectionProxy:
    entry = configparser.RawConfigParser(strict=True)
    entry.optionxform = str  # type: ignore[assignment]  # keys of such a file keep their capitals
    entry.read_string(text)
    return entry["Desktop Entry"]


@on_linux
def test_the_entry_starts_this_program_and_shows_its_icon(
    capsys: pytest.CaptureFixture[str], strange_home: Path
) -> None:
    files = written(capsys)
    assert all(file.is_file() and strange_home in file.parents for file in files)
    entry = read(files[0].read_text("utf-8"))
    assert shlex.split(entry["Exec"]) == [sys.executable, "-P", "-m", "desktop_app", "%f"]
    assert {file.stem for file in files} == {entry["Icon"]} == {entry["StartupWMClass"]}


@on_linux
def test_a_record_is_a_kind_of_file_that_this_program_opens(
    capsys: pytest.CaptureFixture[str], strange_home: Path
) -> None:
    files = written(capsys)
    [kind] = [file for file in files if file.suffix == ".xml"]
    told = ElementTree.parse(kind).getroot()[0]
    assert read(files[0].read_text("utf-8"))["MimeType"] == f"{told.get('type')};"
    assert [one.get("pattern") for one in told if one.tag.endswith("}glob")] == [FILE_NAME]
    assert kind.parts[-3:-1] == ("mime", "packages")  # where the specification has them


@on_linux
@pytest.mark.needs_tool("gio", "update-mime-database")
def test_the_desktop_itself_takes_a_record_for_one_and_no_other_database(
    strange_home: Path, tmp_path: Path
) -> None:
    assert asked("menu-entry") == 0
    kinds = {}
    for name in (FILE_NAME, "stock.sqlite"):
        sqlite3.connect(tmp_path / name).execute("CREATE TABLE one (a)").connection.close()
        order = ["gio", "info", "-a", "standard::content-type", str(tmp_path / name)]
        kinds[name] = subprocess.run(order, capture_output=True, text=True, check=True).stdout
    assert "application/x-benchwitness-shop" in kinds[FILE_NAME]
    assert "benchwitness" not in kinds["stock.sqlite"]


@on_linux
def test_what_the_desktop_reads_anew_it_is_told_of(
    strange_home: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    told = tmp_path / "told"
    for name in ("update-mime-database", "update-desktop-database"):
        program = tmp_path / "bin" / name
        program.parent.mkdir(exist_ok=True)
        program.write_text(f'#!/bin/sh\necho "$0 $1" >> {told}\nexit 1\n')
        program.chmod(0o755)
    monkeypatch.setenv("PATH", str(tmp_path / "bin"), prepend=os.pathsep)
    assert asked("menu-entry") == asked("menu-entry", "--remove") == 0
    lines = [line.split() for line in told.read_text().splitlines()]
    assert [Path(program).name for program, _ in lines] == [
        "update-desktop-database",
        "update-mime-database",
    ] * 2
    assert [Path(folder).name for _, folder in lines] == ["applications", "mime"] * 2


@on_linux
def test_without_the_desktops_program_its_order_is_said(
    capsys: pytest.CaptureFixture[str], strange_home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("PATH", str(strange_home))
    assert asked("menu-entry") == 0
    assert "update-mime-database" in capsys.readouterr().out.splitlines()[-1]


@on_linux
def test_it_goes_again_as_often_as_it_is_asked(strange_home: Path) -> None:
    assert asked("menu-entry") == asked("menu-entry", "--remove") == 0
    assert [file for file in strange_home.rglob("*benchwitness*") if file.is_file()] == []
    assert asked("menu-entry", "--remove") == 0


def test_a_path_with_any_letters_is_quoted_as_the_specification_says() -> None:
    order = ['/srv/Sam\'s 100 % "shop"/a\\b/$c`d/benchwitness']
    said = read(entry_text(order))["Exec"]
    once = said.replace("\\\\", "\\")  # what reads the file undoes one
    words = once.replace("%%", "%").replace("\\`", "`").replace("\\$", "$")
    assert shlex.split(words) == [*order, "%f"]


def test_elsewhere_it_says_who_makes_an_entry_there(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "platform", "darwin")
    assert asked("menu-entry") == 2
    assert "on macOS the program lies in Applications" in capsys.readouterr().err

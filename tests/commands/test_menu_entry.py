"""`menu-entry`: the program in the menu of a Linux desktop, and out of it again."""

from __future__ import annotations

import configparser
import json
import shlex
import sys
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.menu_entry import entry_text

on_linux = pytest.mark.skipif(sys.platform != "linux", reason="other systems have other menus")


def asked(*words: str) -> int:
    return run(words, lambda _folder: 0, lambda _folder, _picture: None)


def read(text: str) -> configparser.SectionProxy:
    entry = configparser.RawConfigParser(strict=True)
    entry.optionxform = str  # type: ignore[assignment]  # keys of such a file keep their capitals
    entry.read_string(text)
    return entry["Desktop Entry"]


@on_linux
def test_the_entry_starts_this_program_and_shows_its_icon(
    capsys: pytest.CaptureFixture[str], strange_home: Path
) -> None:
    assert asked("menu-entry", "--json") == 0
    files = [Path(file) for file in json.loads(capsys.readouterr().out)["files"]]
    assert all(file.is_file() and strange_home in file.parents for file in files)
    entry = read(files[0].read_text("utf-8"))
    assert shlex.split(entry["Exec"]) == [sys.executable, "-P", "-m", "desktop_app"]
    assert {file.stem for file in files} == {entry["Icon"]} == {entry["StartupWMClass"]}


@on_linux
def test_it_goes_again_as_often_as_it_is_asked(strange_home: Path) -> None:
    assert asked("menu-entry") == asked("menu-entry", "--remove") == 0
    assert [file for file in strange_home.rglob("*benchwitness*") if file.is_file()] == []
    assert asked("menu-entry", "--remove") == 0


def test_a_path_with_any_letters_is_quoted_as_the_specification_says() -> None:
    order = ['/srv/Sam\'s 100 % "shop"/a\\b/$c`d/benchwitness']
    said = read(entry_text(order))["Exec"]
    once = said.replace("\\\\", "\\")  # what reads the file undoes one
    assert shlex.split(once.replace("%%", "%").replace("\\`", "`").replace("\\$", "$")) == order


def test_elsewhere_it_says_who_makes_an_entry_there(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setattr(sys, "platform", "darwin")
    assert asked("menu-entry") == 2
    assert "on macOS the program lies in Applications" in capsys.readouterr().err

"""A shop that a desktop hands over: its record pressed twice, or its folder."""

from __future__ import annotations

import tempfile
from datetime import UTC, datetime
from pathlib import Path

import pytest

from desktop_app.commands.command_line import run
from desktop_app.commands.shop_place import new_place
from desktop_app.shop_record.record_name import FILE_NAME


class Opened:
    """The window that would be opened: on which shop, and what it would say first."""

    def __init__(self) -> None:
        self.folders: list[Path | None] = []
        self.said = ""

    def __call__(self, *words: object) -> int:
        def open_window(folder: Path | None, say: object = None) -> int:
            self.folders.append(folder)
            self.said = str(say()) if callable(say) else ""
            return 0

        return run([*map(str, words)], open_window, lambda _folder, _picture: None)


@pytest.fixture
def opened() -> Opened:
    return Opened()


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A shop among files that the system takes for temporary ones."""
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path))
    new_place(tmp_path / "our shop", lambda: datetime(2026, 11, 16, tzinfo=UTC)).close()
    return tmp_path / "our shop"


def test_a_record_opens_its_shop_and_so_does_its_folder(opened: Opened, folder: Path) -> None:
    (folder / "photos").mkdir(exist_ok=True)
    assert opened(folder / FILE_NAME) == opened(folder) == 0
    assert opened.folders == [folder, folder]


def test_a_record_that_is_named_from_here_is_found(
    opened: Opened, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (folder / "photos").mkdir(exist_ok=True)
    monkeypatch.chdir(folder.parent)
    opened(f"{folder.name}/{FILE_NAME}")
    assert opened.folders == [folder]


def test_who_names_the_record_as_the_shop_means_the_shop(opened: Opened, folder: Path) -> None:
    opened("--shop", folder / FILE_NAME)
    assert opened.folders == [folder]


def test_a_record_unpacked_to_be_looked_at_is_not_worked_on(opened: Opened, folder: Path) -> None:
    assert [one.name for one in folder.iterdir()] == [FILE_NAME]
    assert opened(folder / FILE_NAME) == 0
    assert opened.folders == [None]
    assert "Bring the backup back as a whole" in opened.said


def test_another_file_of_a_shop_opens_nothing(
    opened: Opened, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "report.zip").write_bytes(b"")
    assert opened(folder / "report.zip") == 2
    assert opened.folders == []
    assert "report.zip" in capsys.readouterr().err


def test_a_word_alone_is_a_command_whatever_lies_here(
    opened: Opened, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(folder)
    assert opened(FILE_NAME) == 2
    assert opened.folders == []

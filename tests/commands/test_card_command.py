"""`card` keeps its contract: both files and one document, or one line of refusal and no file."""

from __future__ import annotations

import json
import os
from pathlib import Path

import pytest

from desktop_app.part_photos.bench_card.card_file import read_card
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.sheet_card import card_pdf
from tests.commands.test_command_line import Shell


@pytest.fixture
def shell(capsys: pytest.CaptureFixture[str]) -> Shell:
    return Shell(capsys)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_both_files_are_written_and_said(shell: Shell, tmp_path: Path, paper: str) -> None:
    pdf, layout = tmp_path / "CARD.pdf", tmp_path / "CARD.json"
    said = shell("card", "--paper", paper, "--out", str(pdf), "--layout", str(layout), "--json")
    assert said == {
        "name": bench_card(paper).name,
        "paper": paper,
        "pdf": str(pdf),
        "layout": str(layout),
        "markers": 20,
        "check_length_mm": 150.0,
    }
    assert pdf.read_bytes() == card_pdf(bench_card(paper))
    assert read_card(layout.read_text("utf-8"), "CARD.json") == bench_card(paper)
    assert set(json.loads(layout.read_text("utf-8"))) >= {"name", "dictionary", "paper", "markers"}
    assert len(list(tmp_path.iterdir())) == 2


def test_a_person_is_told_to_print_it_true_and_to_measure_it(shell: Shell, tmp_path: Path) -> None:
    pdf, layout = str(tmp_path / "c.pdf"), str(tmp_path / "c.json")
    shell("card", "--paper", "a4", "--out", pdf, "--layout", layout)
    assert shell.status == 0
    assert "Print it at 100 %" in shell.out
    assert "it should be 150 mm" in shell.out


@pytest.mark.parametrize(
    ("out", "layout", "said"),
    [
        ("gone/c.pdf", "c.json", "There is no folder"),
        ("c.pdf", "gone/c.json", "There is no folder"),
        ("c.json", "c.pdf", "does not end in .pdf"),
        ("c.pdf", "c.txt", "does not end in .json"),
        (".", "c.json", "is a folder"),
        ("c.pdf", "folder.json", "is a folder"),
        ("pipe.pdf", "c.json", "a device or a pipe"),
    ],
)
def test_a_place_that_cannot_be_is_refused_and_nothing_written(
    shell: Shell, tmp_path: Path, out: str, layout: str, said: str
) -> None:
    (tmp_path / "folder.json").mkdir()
    os.mkfifo(tmp_path / "pipe.pdf")
    before = sorted(tmp_path.iterdir())
    line = shell.refused(
        *("card", "--paper", "a4", "--out", str(tmp_path / out)),
        *("--layout", str(tmp_path / layout), "--json"),
    )
    assert said in line
    assert sorted(tmp_path.iterdir()) == before


def test_a_folder_that_may_not_be_written_is_said(
    shell: Shell, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    whole = Path.open

    def refuse(path: Path, mode: str = "r", *more: object, **named: object) -> object:
        if mode == "wb" and path.name.startswith(".c.json"):
            raise PermissionError(13, "Permission denied", str(path))
        return whole(path, mode, *more, **named)  # type: ignore[call-overload]

    monkeypatch.setattr(Path, "open", refuse)
    (tmp_path / "c.pdf").write_bytes(b"an older card")
    pdf, layout = str(tmp_path / "c.pdf"), str(tmp_path / "c.json")
    line = shell.refused("card", "--paper", "a4", "--out", pdf, "--layout", layout)
    assert "c.json was not written: Permission denied" in line
    assert [file.name for file in tmp_path.iterdir()] == ["c.pdf"]
    assert (tmp_path / "c.pdf").read_bytes() == b"an older card"


def test_a_place_without_a_name_is_refused(shell: Shell, tmp_path: Path) -> None:
    pdf, layout = str(tmp_path / "c.pdf"), str(tmp_path / "c.json")
    assert "--out is empty" in shell.refused("card", "--paper=a4", "--out=", "--layout", layout)
    assert "--layout is empty" in shell.refused("card", "--paper=a4", "--out", pdf, "--layout= ")


def test_the_paper_must_be_said(shell: Shell, tmp_path: Path) -> None:
    places = ("--out", str(tmp_path / "c.pdf"), "--layout", str(tmp_path / "c.json"))
    assert "--paper" in shell.refused("card", *places)
    assert "a5" in shell.refused("card", "--paper", "a5", *places)
    assert shell("card", "--paper", "Letter", *places, "--json")["paper"] == "letter"

"""The command `import` as the command line runs it."""

from __future__ import annotations

import csv
import io
import json
from pathlib import Path
from typing import Any

import pytest

from desktop_app.commands.command_line import run
from tests.records_exchanged.importing import lines
from tests.records_exchanged.test_writing import BACK, FIRST

TWO = [FIRST, {**BACK, "return_of": "B9"}]


def command(*words: str) -> int:
    return run(words, lambda folder: 0, lambda folder, file: None)


@pytest.fixture
def shop(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> str:
    assert command("new-shop", str(tmp_path / "shop")) == 0
    capsys.readouterr()
    return str(tmp_path / "shop")


def imported(capsys: pytest.CaptureFixture[str], file: Path, shop: str, *words: str) -> Any:
    assert command("import", str(file), "--shop", shop, "--json", *words) == 0
    return json.loads(capsys.readouterr().out)


def test_the_command_says_what_it_did(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(lines(*TWO), "utf-8")
    for words, added in ((["--dry-run"], 1), ([], 1), ([], 0)):
        said = imported(capsys, file, shop, *words)
        assert (said["read"], said["added"], said["unchanged"]) == (2, added, 1 - added)
        assert [(one["row"], one["column"]) for one in said["rejected"]] == [(3, "return_of")]


def test_refused_rows_lie_beside_the_file_to_be_mended_and_imported_again(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file, mend = tmp_path / "jobs.csv", tmp_path / "jobs.rejected.csv"
    file.write_text(lines(*TWO), "utf-8")
    assert "rejected_file" not in imported(capsys, file, shop, "--dry-run")
    assert not mend.exists()
    assert imported(capsys, file, shop)["rejected_file"] == str(mend)
    header, row = csv.reader(io.StringIO(mend.read_text("utf-8")))
    assert row[header.index("job_number")] == "A2"
    assert row[header.index("why")] == (
        "return_of: No job has this number, neither here nor in the file."
    )
    mend.write_text(mend.read_text("utf-8").replace("B9", "A1"), "utf-8")
    said = imported(capsys, mend, shop)
    assert (said["added"], said["rejected"]) == (1, [])


def test_a_file_of_refused_rows_is_never_written_over(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file, there = tmp_path / "jobs.csv", tmp_path / "jobs.rejected.csv"
    file.write_text(lines(*TWO), "utf-8")
    there.write_text("mine", "utf-8")
    second = tmp_path / "jobs.rejected-2.csv"
    assert imported(capsys, file, shop)["rejected_file"] == str(second)
    assert there.read_text("utf-8") == "mine"
    second.write_text("mine too", "utf-8")
    assert command("import", str(file), "--shop", shop) == 0
    assert str(tmp_path / "jobs.rejected-3.csv") in capsys.readouterr().out
    assert second.read_text("utf-8") == "mine too"


def test_the_same_refused_rows_are_kept_once_however_often_the_file_comes(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(lines(*TWO), "utf-8")
    first = imported(capsys, file, shop)["rejected_file"]
    assert imported(capsys, file, shop)["rejected_file"] == first
    file.write_text(lines(FIRST, {**BACK, "return_of": "B8"}), "utf-8")
    assert imported(capsys, file, shop)["rejected_file"] == str(tmp_path / "jobs.rejected-2.csv")
    assert len(list(tmp_path.iterdir())) == 4  # the shop and three files


def test_all_that_is_wrong_with_a_row_is_said_at_once(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file, mend = tmp_path / "jobs.csv", tmp_path / "jobs.rejected.csv"
    file.write_text(
        lines({**FIRST, "odometer": "12.5x", "price": "abc", "job_number": ""}), "utf-8"
    )
    said = imported(capsys, file, shop)
    rejected = [(one["row"], one["column"], one["value"]) for one in said["rejected"]]
    assert rejected == [(2, "job_number", ""), (2, "odometer", "12.5x"), (2, "price", "abc")]
    assert set(said["rejected"][0]) == {"row", "column", "value", "why"}
    assert said["read"] == 1
    header, row = csv.reader(io.StringIO(mend.read_text("utf-8")))
    why = row[header.index("why")]
    assert [why.index(f"{name}: ") >= 0 for name in ("job_number", "odometer", "price")]
    assert command("import", str(file), "--shop", shop) == 0
    said_plainly = capsys.readouterr().out
    assert said_plainly.startswith("1 row read: 0 added, 0 updated, 0 unchanged, 1 refused.")
    assert "Row 2, price “abc”: This is not an amount of money." in said_plainly


def test_the_rows_counted_before_and_after_are_the_same(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "jobs.csv"
    good = "J-{0},2024-02-14,AB {0},stalls"
    odd = ["", ",,,", "  , ,,", 'J-2,2024-02-14,"AB 2,x', "J-3,2024-02-14,A\0B,x", "J-4"]
    rows = ["job_number,opened_on,plate,concern", good.format(1), *odd, good.format(9)]
    file.write_text("\n".join(rows) + "\n", "utf-8")
    assert command("import", str(file), "--shop", shop) == 0
    said = capsys.readouterr()
    assert said.out.startswith("5 rows read: 2 added, 0 updated, 0 unchanged, 3 refused.")
    assert said.err.startswith("5 rows below the headers")


def test_a_map_adds_to_what_the_headers_say(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file, laid_down = tmp_path / "jobs.csv", tmp_path / "map.toml"
    file.write_text("Auftrag-Nr,opened_on,plate,concern\nA1,2024-01-02,TH 1,stalls\n", "utf-8")
    assert command("import", str(file), "--shop", shop) == 2
    assert 'job_number = "its header" under [columns]' in capsys.readouterr().err
    laid_down.write_text('[columns]\njob_number = "Auftrag-Nr"\n', "utf-8")
    assert command("import", str(file), "--shop", shop, "--columns", str(laid_down)) == 0
    said = capsys.readouterr()
    assert "1 added" in said.out
    assert "Left out" not in said.err


def test_where_they_cannot_be_written_the_import_stands_and_says_so(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(lines(*TWO), "utf-8")

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(Path, "replace", full)
    assert command("import", str(file), "--shop", shop) == 0
    said = capsys.readouterr().out
    assert "1 added" in said
    assert "was not written: No space left on device" in said
    assert sorted(p.name for p in tmp_path.glob("*jobs*")) == ["jobs.csv"]


class _Terminal(io.StringIO):
    """A terminal at which somebody presses Ctrl-C when the first progress is shown."""

    def isatty(self) -> bool:
        return True

    def write(self, said: str) -> int:
        if "rows" in said:
            raise KeyboardInterrupt
        return super().write(said)


def test_an_import_that_is_stopped_ends_in_words_and_leaves_nothing(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(lines(FIRST), "utf-8")
    terminal = _Terminal()
    with monkeypatch.context() as patch:
        patch.setattr("sys.stderr", terminal)
        assert command("import", str(file), "--shop", shop) == 130
    assert terminal.getvalue().startswith("Stopped. Nothing of the file was brought in")
    assert imported(capsys, file, shop)["added"] == 1  # nothing was there before


def test_a_file_that_is_none_is_refused_in_one_line(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert command("import", str(tmp_path / "none.csv"), "--shop", shop) == 2
    assert capsys.readouterr().err.count("\n") == 1


def test_what_was_taken_for_granted_is_said_beside_the_answer(
    tmp_path: Path, shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text("RO,Date in,Date in\nJ-1,13/02/2024,2024-02-14\n", "utf-8")
    assert command("import", str(file), "--shop", shop, "--json") == 0
    said = capsys.readouterr()
    assert json.loads(said.out)["added"] == 1
    assert "Days are read day first." in said.err
    assert "Left out: Date in (2)." in said.err


@pytest.mark.skipif(not Path("/proc/self/mem").exists(), reason="no such file on this system")
def test_a_file_that_opens_but_cannot_be_read_is_named(
    shop: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert command("import", "/proc/self/mem", "--shop", shop) == 2
    said = capsys.readouterr().err
    assert said.startswith("/proc/self/mem can't be read: ")
    assert said.count("\n") == 1

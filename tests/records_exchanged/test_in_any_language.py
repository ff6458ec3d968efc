"""What is read from a table and written into an export is the same, whatever language is spoken."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.records_exchanged.exported import files_of
from tests.records_exchanged.importing import lines

ROOT = Path(__file__).resolve().parents[2]
SIGN = "§"
# Every text that the program has words for begins with the sign: nothing is said as it is written.
MARKED = f"speak(lambda text: {SIGN!r} + text)"
SPEAKING = """
import sys
from desktop_app.language import speak
{speak}
from desktop_app.__main__ import main
sys.exit(main(sys.argv[1:]))
"""
TABLE = lines(
    {
        **{"job_number": "J-1", "opened_on": "4 March 2025", "closed_on": "5 mar 2025"},
        **{"plate": "TH 1", "vehicle": "small car", "odometer": "120,500 miles"},
        **{"technician": "Tuuli", "concern": "misfires when cold", "cause": "cap cracked"},
        **{"correction": "cap replaced", "codes": "P0301, P0300", "system": "Gearbox"},
        **{"part_kind": "Distributor cap", "part_origin": "remanufactured", "price": "1,120.50"},
        **{"hours": "90 min"},
    },
    {
        **{"job_number": "J-2", "opened_on": "6/23/2025", "plate": "TH 1", "vin": "not known"},
        **{"concern": "misfires", "codes": "no codes", "system": "ignition system"},
        **{"part_kind": "rotor arm", "part_origin": "rebuilt in this shop", "return_of": "J-1"},
        **{"judgement": "From our hands"},
    },
)


def command(speak: str, *words: str) -> None:
    """Carry out a command where this language is spoken."""
    order = [sys.executable, "-c", SPEAKING.format(speak=speak), *words]
    environ = {**os.environ, "PYTHONPATH": str(ROOT), "BENCHWITNESS_LANGUAGE": ""}
    done = subprocess.run(order, env=environ, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr


def brought_in_and_out(folder: Path, speak: str) -> Path:
    """The folder of an export of a shop into which the table was brought."""
    (folder / "jobs.csv").write_text(TABLE, encoding="utf-8")
    shop = ("--shop", str(folder / "shop"))
    command(speak, "new-shop", str(folder / "shop"))
    command(speak, "import", str(folder / "jobs.csv"), *shop)
    command(speak, "export", str(folder / "out"), *shop)
    return folder / "out"


@pytest.fixture(scope="module")
def as_written(tmp_path_factory: pytest.TempPathFactory) -> dict[str, bytes]:
    return files_of(brought_in_and_out(tmp_path_factory.mktemp("as-written"), ""))


@pytest.fixture(scope="module")
def export(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return brought_in_and_out(tmp_path_factory.mktemp("marked"), MARKED)


@pytest.fixture(scope="module")
def marked(export: Path) -> dict[str, bytes]:
    return files_of(export)


def test_a_table_is_read_alike(as_written: dict[str, bytes], marked: dict[str, bytes]) -> None:
    assert b"distributor-cap,,,reman,1120.50,1.5" in as_written["jobs.csv"]
    assert b"J-1,from our hands" in as_written["jobs.csv"]
    assert marked["jobs.csv"] == as_written["jobs.csv"]


def test_an_export_has_the_same_names_headings_and_words_to_read_first(
    as_written: dict[str, bytes], marked: dict[str, bytes]
) -> None:
    assert set(marked) == set(as_written)
    assert marked["README.txt"] == as_written["README.txt"]
    for name, content in as_written.items():
        assert marked[name].split(b"\r\n")[0] == content.split(b"\r\n")[0] or name.endswith(
            ".sha256"
        )


def test_only_what_was_done_is_told_in_their_language(marked: dict[str, bytes]) -> None:
    told = {name for name, content in marked.items() if SIGN.encode() in content}
    assert told == {"history.csv"}


def test_what_was_brought_back_in_one_language_is_known_as_that_in_another(
    export: Path, marked: dict[str, bytes], tmp_path: Path
) -> None:
    shop = ("--shop", str(tmp_path / "other"))
    command(MARKED, "new-shop", str(tmp_path / "other"))
    command(MARKED, "import", str(export), *shop)
    command("", "export", str(tmp_path / "again"), *shop)
    assert files_of(tmp_path / "again") == marked

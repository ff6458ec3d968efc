"""A large file is read by a process beside the one that writes: the record is the same."""

from __future__ import annotations

import io
import pickle
import random
import sqlite3
import subprocess
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest

from desktop_app.commands.shop_place import kinds_of
from desktop_app.records_exchanged import large_files, rows_process
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.import_actions import import_rows
from desktop_app.records_exchanged.import_told import ImportTold
from desktop_app.records_exchanged.job_row import AT_A_TIME, JobRow
from desktop_app.records_exchanged.large_files import rows_beside
from desktop_app.records_exchanged.row_words import kind_ids
from desktop_app.records_exchanged.rows_process import Heard
from desktop_app.records_exchanged.stored_hanging import ReadWith
from desktop_app.records_exchanged.table_files import open_table
from desktop_app.shop_record.own_program.own_process import own_process
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.records_exchanged.importing import a_shop, everything, lines

ROWS = AT_A_TIME + 500
WORDS = [
    "stalls",
    "warm",
    "idle",
    "hunts",
    "misfire",
    "load",
    "knocks",
    "brake",
    "squeal",
    "no",
    "never",
    "cold",
    "drive",
]
OWN = {"sings like a kettle": "gear-whine"}
Started = list["subprocess.Popen[bytes]"]


def old_jobs(file: Path) -> Path:
    """Jobs of some hundred cars: further lines, returns, contradictions, what no one can read."""
    chance, said = random.Random(11), list[dict[str, Any]]()
    for number in range(ROWS):
        came = date(2021, 1, 1) + timedelta(days=number // 4)
        words = " ".join(chance.choices(WORDS, k=chance.randint(0, 9)))
        car = chance.randrange(400)
        row = {
            "job_number": f"J-{number}",
            "opened_on": came,
            "closed_on": chance.choice(["", came, came + timedelta(days=2)]),
            "plate": chance.choice(["", f"AB {car}"]),
            "vehicle": chance.choice(["", f"hatchback {car % 9}"]),
            "odometer": chance.choice(["", "75k", 9_000 + number]),
            "odometer_unit": chance.choice(["mi", "km"]),
            "technician": chance.choice(["", "Sam", "n/a", "Ed"]),
            "concern": chance.choice([words, f"{words} {number}", "sings like a kettle"]),
            "cause": chance.choice(["", "coil cracked"]),
            "codes": chance.choice(["", "P0300", "P0301 P0420", "P03"]),
            "part_kind": chance.choice(["", "spark-plug", "something of ours"]),
            "price": chance.choice(["", "12.50", "1,200.00"]),
        }
        if said and number % 7 == 0:
            row = {**chance.choice(said[-200:]), "codes": "P0455", "part_kind": "ignition coil"}
        if said and number % 11 == 0:
            row = {**row, "return_of": chance.choice(said[-300:])["job_number"]}
        said.append({} if number % 501 == 500 else row)
    file.write_text(lines(*said), encoding="utf-8")
    return file


def reads(own: dict[str, str] | None) -> tuple[ReadWith, list[str]]:
    """What rows are read with, and the concerns that were read here and not beside."""
    words, here = shop_vocabulary().with_own(OWN), list[str]()

    def groups(concern: str) -> tuple[str, ...]:
        here.append(concern)
        return tuple(group.id for group in words.groups_in(concern))

    return ReadWith(groups, words.conditions_in, kind_ids(kinds_of().values()), own), here


def bring_in(shop: ShopRecord, file: Path, read_with: ReadWith, **said: Any) -> ImportTold:
    with open_table(file, ColumnMap(encoding="utf-8", odometer_unit="mi")) as table:
        return import_rows(shop, table, file.name, read_with, **said)


def whole_record(shop: ShopRecord) -> dict[str, list[tuple[Any, ...]]]:
    """Every table of the file, those of the search index as well."""
    kept = sqlite3.connect(shop.folder / "shop.sqlite")
    names = "SELECT name FROM sqlite_master WHERE type = 'table' AND sql NOT LIKE '%VIRTUAL%'"
    found = {
        name: kept.execute(f'SELECT * FROM "{name}"').fetchall() for (name,) in kept.execute(names)
    }
    kept.close()
    return found


@pytest.fixture
def started(monkeypatch: pytest.MonkeyPatch) -> Started:
    """The processes that are started, for files of a hundred rows already."""
    found: Started = []

    def start(*said: Any, **pipes: Any) -> subprocess.Popen[bytes]:
        found.append(own_process(*said, **pipes))
        return found[-1]

    monkeypatch.setattr(large_files, "own_process", start)
    monkeypatch.setattr(large_files, "FROM_ROWS", 100)
    return found


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return old_jobs(tmp_path_factory.mktemp("old") / "jobs.csv")


@pytest.fixture(scope="module")
def simply(
    file: Path, tmp_path_factory: pytest.TempPathFactory
) -> tuple[dict[str, Any], dict[str, list[tuple[Any, ...]]]]:
    """What the file comes to where one process does all, twice over: the second changes nothing."""
    for shop in a_shop(tmp_path_factory.mktemp("simply")):
        told = [bring_in(shop, file, reads(None)[0]).as_json() for _ in range(2)]
        found = {"first": told[0], "again": told[1]}, whole_record(shop)
    return found


@pytest.mark.embedded
def test_the_record_is_the_same_row_by_row(
    shop: ShopRecord, file: Path, started: Started, simply: tuple[Any, Any]
) -> None:
    read_with, here = reads(OWN)
    told = [bring_in(shop, file, read_with).as_json() for _ in range(2)]
    assert {"first": told[0], "again": told[1]} == simply[0]
    assert min(told[0]["added"], told[0]["updated"], len(told[0]["rejected"])) > 100
    found = whole_record(shop)
    assert found.keys() == simply[1].keys()
    assert [name for name in found if found[name] != simply[1][name]] == []
    assert len(started) == 2
    assert here == []  # all of it was heard beside, the shop's own phrase as well
    assert "gear-whine" in {symptom for _, symptom, *_ in found["job_symptom"]}
    shop.undo()
    assert everything(shop)["job"] == []


@pytest.mark.parametrize("comes", ["after the first rows", "before any", "at the start"])
def test_a_process_that_comes_to_nothing_changes_nothing(
    shop: ShopRecord,
    file: Path,
    started: Started,
    simply: tuple[Any, Any],
    comes: str,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    def refused(*said: Any, **pipes: Any) -> subprocess.Popen[bytes]:
        raise OSError("no more processes")

    def ended(read: int) -> None:
        started[0].kill()
        started[0].wait()

    read_with, here = reads(OWN)
    if comes == "at the start":
        monkeypatch.setattr(large_files, "own_process", refused)
    elif comes == "before any":
        monkeypatch.setattr(large_files, "_READING", "desktop_app.no_such_module")
    told = bring_in(shop, file, read_with, told=ended if comes == "after the first rows" else print)
    assert told.as_json() == simply[0]["first"]
    assert here != []


def test_what_is_wrong_with_the_file_is_told_as_ever(
    shop: ShopRecord, file: Path, started: Started, tmp_path: Path
) -> None:
    before, damaged = whole_record(shop), tmp_path / "damaged.csv"
    damaged.write_bytes(file.read_bytes() + b'"J-9","2024-01-05","caf\xe9"\n')
    with open_table(file, ColumnMap(odometer_unit="mi")) as table:
        found = table.found
    with (
        open_table(damaged, ColumnMap(odometer_unit="mi")) as table,
        pytest.raises(ShopTrouble, match=r"damaged\.csv is not written in utf-8"),
    ):
        import_rows(
            shop, type(table)(table.source, ColumnMap(), found), "damaged.csv", reads(OWN)[0]
        )
    assert len(started) == 1
    assert whole_record(shop) == before


def test_who_stops_it_ends_the_process_too(shop: ShopRecord, file: Path, started: Started) -> None:
    def stop(read: int) -> None:
        raise KeyboardInterrupt

    before = whole_record(shop)
    with pytest.raises(KeyboardInterrupt):
        bring_in(shop, file, reads(OWN)[0], told=stop)
    assert started[0].poll() is not None
    assert whole_record(shop) == before


def test_a_small_file_needs_no_process(shop: ShopRecord, started: Started, tmp_path: Path) -> None:
    small = tmp_path / "small.csv"
    small.write_text(lines({"job_number": "J-1", "opened_on": "2024-01-05"}), encoding="utf-8")
    assert bring_in(shop, small, reads(OWN)[0]).added == 1
    assert started == []


class ToldAlready:
    """A process that has told all already, piece by piece."""

    def __init__(self, *pieces: tuple[list[Any], Heard]) -> None:
        self.stdin = io.BytesIO()
        self.stdout = io.BytesIO(b"".join(map(pickle.dumps, pieces)))
        self.ended = False

    def __enter__(self) -> ToldAlready:
        return self

    def __exit__(self, *_: object) -> None:
        assert self.ended

    def kill(self) -> None:
        self.ended = True


def small_table(folder: Path, *concerns: str) -> Path:
    file = folder / "few.csv"
    file.write_text("job_number,concern\n" + "".join(f"J,{said}\n" for said in concerns), "utf-8")
    return file


def test_what_was_heard_long_ago_is_let_go_and_heard_again_here(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def piece(number: int) -> tuple[list[Any], Heard]:
        row = (number, *("",) * (len(JobRow._fields) - 1))
        return [row], {f"said {number}": (("told beside",), ())}

    told = ToldAlready(*map(piece, range(4)), ([], {}))
    monkeypatch.setattr(large_files, "own_process", lambda *_, **_kw: told)
    monkeypatch.setattr(large_files, "FROM_ROWS", 1)
    monkeypatch.setattr(large_files, "MOST_SAID", 1)
    file = small_table(tmp_path, "x")
    here = ReadWith(lambda _: ("heard here",), lambda _: (), {}, {})
    with open_table(file) as table, rows_beside(table, here) as (rows, heard):
        assert [row.row for row in rows] == [0, 1, 2, 3]
        groups = [heard.symptoms(f"said {number}") for number in range(4)]
        assert groups == [*[("heard here",)] * 3, ("told beside",)]


def test_the_process_tells_a_concern_once_until_it_has_told_many(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(rows_process, "AT_A_TIME", 2)
    monkeypatch.setattr(rows_process, "MOST_SAID", 2)
    file = small_table(tmp_path, "stalls", "stalls", "stalls", "hunts", "idles", "", "stalls")
    asked, out = io.BytesIO(), io.BytesIO()
    with open_table(file) as table:
        pickle.dump((table.source, table.found, {}), asked)
        asked.seek(0)
        rows_process.give_rows(asked, out)
    out.seek(0)
    pieces = [pickle.load(out) for _ in range(5)]
    assert [len(rows) for rows, _ in pieces] == [2, 2, 2, 1, 0]
    assert [sorted(heard) for _, heard in pieces] == [
        ["stalls"],
        ["hunts"],
        ["idles"],
        ["stalls"],
        [],
    ]
    assert pieces[0][1]["stalls"] == pieces[3][1]["stalls"] != ((), ())

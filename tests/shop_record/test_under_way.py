"""While somebody writes for a long time others read on, and are told at once what is under way."""

from __future__ import annotations

import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place, open_place
from desktop_app.repair_jobs.stored import Person
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.databases.dialect_search import room_to_write
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME as RECORD
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.under_way import FILE_NAME, LongWriting, under_way
from tests.records_exchanged.importing import bring_in, lines
from tests.records_exchanged.test_writing import FIRST

Two = tuple[ShopRecord, ShopRecord]


def _now() -> datetime:
    return datetime(2026, 11, 16, 12, tzinfo=UTC)


@pytest.fixture
def desks(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Two]:
    monkeypatch.setattr(dialect, "WAIT_SECONDS", 3600)  # who waits as usual never comes back
    one = new_place(tmp_path / "shop", _now)
    other = open_place(tmp_path / "shop", _now)
    yield one, other
    other.close()
    one.close()


def add(record: ShopRecord, name: str) -> None:
    record.do(f"Add {name}", lambda deed: deed.add(Person, name=name) and None)


def names(record: ShopRecord) -> list[str]:
    with record.reading() as connection:
        return [row[0] for row in connection.exec_driver_sql("SELECT name FROM person ORDER BY id")]


def test_who_would_write_during_an_import_is_told_its_name_and_who_reads_reads(desks: Two) -> None:
    one, other = desks
    add(one, "Sam")

    def meanwhile(rows_read: int) -> None:
        with pytest.raises(ShopTrouble) as refused:
            add(other, "Ann")
        assert refused.value.what == "“Import jobs.csv” is under way."
        assert names(other) == ["Sam"]

    bring_in(one, lines({**FIRST, "technician": ""}), told=meanwhile)
    assert under_way(one.folder) == ""
    add(other, "Ann")
    assert names(one) == ["Sam", "Ann"]


def test_an_import_that_fails_is_under_way_no_more(desks: Two) -> None:
    def fail(rows_read: int) -> None:
        raise KeyError

    with pytest.raises(KeyError):
        bring_in(desks[0], lines(FIRST), told=fail)
    assert not (desks[0].folder / FILE_NAME).exists()


def test_what_a_killed_import_said_is_forgotten_with_the_next_deed(desks: Two) -> None:
    one, _ = desks
    (one.folder / FILE_NAME).write_bytes(b"Import \xff.csv")
    add(one, "Sam")
    assert names(one) == ["Sam"]
    assert not (one.folder / FILE_NAME).exists()


@pytest.mark.embedded
def test_what_a_killed_import_said_shortens_no_wait_and_names_nothing(
    desks: Two, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Somebody else holds the record while the notice of a dead import lies there."""
    one, other = desks
    dying = (
        "import os, sys; from pathlib import Path; "
        "from desktop_app.shop_record.under_way import LongWriting; "
        "LongWriting(Path(sys.argv[1])).say('Import jobs.csv'); os.kill(os.getpid(), 9)"
    )
    subprocess.run((sys.executable, "-c", dying, str(one.folder)), check=False)
    assert (one.folder / FILE_NAME).read_text() == "Import jobs.csv"
    assert under_way(one.folder) == ""
    waited: list[float | None] = []
    monkeypatch.setattr(dialect, "wait_at_most", lambda _c, seconds: waited.append(seconds))
    holds = sqlite3.connect(one.folder / RECORD, isolation_level=None)
    holds.execute("BEGIN IMMEDIATE")
    with other.reading() as connection:
        connection.exec_driver_sql("PRAGMA busy_timeout = 20")
    with pytest.raises(ShopTrouble, match="busy in another program"):
        add(other, "Ann")
    assert waited == [None, None]
    holds.close()


def test_who_is_alive_in_another_program_is_named(desks: Two) -> None:
    one, _ = desks
    living = (
        "import sys; from pathlib import Path; "
        "from desktop_app.shop_record.under_way import LongWriting; long = "
        "LongWriting(Path(sys.argv[1])); long.say('Import jobs.csv'); print('said'); "
        "sys.stdout.flush(); sys.stdin.read(); long.__exit__(None, None, None)"
    )
    pipe = subprocess.PIPE
    words = (sys.executable, "-c", living, str(one.folder))
    with subprocess.Popen(words, stdin=pipe, stdout=pipe, text=True) as program:
        assert program.stdout is not None
        assert program.stdout.readline() == "said\n"
        assert under_way(one.folder) == "Import jobs.csv"
        program.communicate("")
    assert under_way(one.folder) == ""


@pytest.mark.embedded
def test_many_pages_wait_in_memory_and_shut_no_reader_out(desks: Two) -> None:
    one, other = desks

    def write(deed: Deed) -> None:
        long.say("Much")
        with room_to_write(deed.connection):
            deed.connection.exec_driver_sql("PRAGMA cache_size = 10")
            for number in range(300):
                deed.add(Person, name=f"{number} {'x' * 5_000}")
            assert names(other) == []

    with LongWriting(one.folder) as long:
        one.do("Much", write)
    assert len(names(other)) == 300

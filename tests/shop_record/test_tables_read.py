"""TOML that was read before is not read again, and nothing that lies in its file is trusted."""

from __future__ import annotations

import json
import tomllib
from hashlib import sha256
from pathlib import Path

import pytest

from desktop_app.shop_record.own_program import tables_read
from desktop_app.shop_record.own_program.tables_read import TablesRead

TEXT = 'name = "Rotor"\nlow = 1\nhigh = 1.0\nloose = false\n[[dimensions]]\nid = "tip"\n'


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return tmp_path / "cache" / "tables.json"


@pytest.fixture
def read(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The texts that were really read as TOML."""
    texts: list[str] = []
    really = tomllib.loads

    def noted(text: str) -> dict[str, object]:
        texts.append(text)
        return really(text)

    monkeypatch.setattr(tomllib, "loads", noted)
    return texts


def kept(file: Path, *texts: str) -> None:
    tables = TablesRead(file)
    for text in texts:
        tables.values(text)
    tables.keep()


def test_the_next_start_reads_the_same_without_reading_toml(file: Path, read: list[str]) -> None:
    before = TablesRead(file).values(TEXT)
    kept(file, TEXT)
    read.clear()
    after = TablesRead(file).values(TEXT)
    assert after == before
    assert [type(one) for one in after.values()] == [type(one) for one in before.values()]
    assert read == []


def test_a_text_that_was_changed_is_read_anew(file: Path, read: list[str]) -> None:
    kept(file, TEXT)
    read.clear()
    assert TablesRead(file).values("more = 2\n" + TEXT)["more"] == 2
    assert len(read) == 1


def test_what_one_reader_does_to_the_values_no_other_sees(file: Path) -> None:
    kept(file, TEXT)
    tables = TablesRead(file)
    tables.values(TEXT)["dimensions"].clear()
    assert tables.values(TEXT)["dimensions"] == [{"id": "tip"}]


@pytest.mark.parametrize(
    "lies",
    [b"", b"{", b"[]", b"\xff\xfe", b'{"a": 1}', b"[" * 100_000, json.dumps({"KEY": "{"}).encode()],
)
def test_a_file_that_is_torn_costs_only_time(file: Path, lies: bytes) -> None:
    file.parent.mkdir()
    file.write_bytes(lies.replace(b"KEY", sha256(TEXT.encode()).hexdigest().encode()))
    tables = TablesRead(file)
    assert tables.values(TEXT)["name"] == "Rotor"
    tables.keep()
    assert TablesRead(file).values(TEXT)["name"] == "Rotor"


def test_a_file_larger_than_any_that_is_written_is_left_alone(
    file: Path, read: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    kept(file, TEXT)
    read.clear()
    monkeypatch.setattr(tables_read, "MOST_BYTES", 10)
    assert TablesRead(file).values(TEXT)["low"] == 1
    assert len(read) == 1


def test_a_date_is_read_each_time(file: Path) -> None:
    kept(file, "day = 2026-11-16\n")
    assert str(TablesRead(file).values("day = 2026-11-16\n")["day"]) == "2026-11-16"


def test_what_is_no_longer_read_is_not_kept(file: Path) -> None:
    kept(file, TEXT, "a = 1\n")
    kept(file, TEXT, "b = 1\n")
    assert len(json.loads(file.read_text("utf-8"))) == 2


def test_nothing_new_writes_nothing(file: Path) -> None:
    kept(file, TEXT)
    before = file.stat().st_mtime_ns
    kept(file, TEXT)
    assert file.stat().st_mtime_ns == before


def test_a_place_that_cannot_be_written_is_no_trouble(tmp_path: Path) -> None:
    (tmp_path / "cache").write_text("a file where the folder should be")
    kept(tmp_path / "cache" / "tables.json", TEXT)


def test_a_mistake_is_told_as_ever(file: Path) -> None:
    with pytest.raises(ValueError, match="line 1"):
        TablesRead(file).values("name = \n")

"""The process that turns a workbook into CSV: what it tells where the system is unlike others."""

from __future__ import annotations

import io
import json
import sys
from types import SimpleNamespace

import pytest

from desktop_app.records_exchanged.workbook_read import as_csv
from tests.records_exchanged.workbooks import by_library


class KeptOpen(io.BytesIO):
    """What a process writes to; it can be read when that has ended."""

    def close(self) -> None:
        """Stay open."""


def in_the_process(monkeypatch: pytest.MonkeyPatch) -> tuple[io.BytesIO, io.StringIO]:
    """This process in the place of the one that turns a workbook: what it writes and tells."""
    good = io.BytesIO(by_library([["RO", "Concern"], ["1", "stalls"]]))
    out, told = KeptOpen(), io.StringIO()
    monkeypatch.setattr("sys.stdin", SimpleNamespace(buffer=good))
    monkeypatch.setattr("sys.stdout", SimpleNamespace(buffer=out))
    monkeypatch.setattr("sys.stderr", told)
    monkeypatch.setattr("sys.argv", ["as_csv"])
    return out, told


def test_where_the_system_knows_no_limits_a_workbook_is_read_all_the_same(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    out, told = in_the_process(monkeypatch)
    monkeypatch.setitem(sys.modules, "resource", None)
    assert as_csv.main() == 0
    assert out.getvalue() == b"RO,Concern\r\n1,stalls\r\n"
    assert json.loads(told.getvalue().splitlines()[-1]) == {"sheets": ["Jobs"]}


def test_memory_that_is_all_used_is_told_in_words(monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise MemoryError

    _, told = in_the_process(monkeypatch)
    monkeypatch.setattr(as_csv, "limit_myself", lambda: None)
    monkeypatch.setattr(as_csv, "read_texts", full)
    assert as_csv.main() == as_csv.REFUSED
    said = json.loads(told.getvalue().splitlines()[-1])
    assert said == {"what": "The workbook needs more memory than it is given.", "do": ""}

"""Records In and Out: the report for who looks after the program, shown before it is written."""

from __future__ import annotations

import logging
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QFileDialog, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.records_exchanged.screen.report_box import ReportBox
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.last_resort import keep_log
from tests.records_exchanged.importing import a_shop
from tests.screens.records_page import AtThePage


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    at.page.column.addWidget(ReportBox(at.desk))
    yield at
    at.desk.errands.finish()


@pytest.mark.expects_trouble_log
def test_it_is_shown_and_then_written_as_it_was_shown(at: AtThePage, tmp_path: Path) -> None:
    close = keep_log(at.record.folder)
    logging.getLogger("benchwitness").warning("Qt: something about a painter")
    close()
    assert not at.offers("Write it into a file")
    at.press("Show the report")
    at.settle()
    shown = at.find(QPlainTextEdit, "What the report says").toPlainText()
    assert "Qt: something about a painter" in shown
    assert "text_size = 12" in shown
    to = tmp_path / "report.zip"
    at.save_as(to, "Write it into a file")
    assert at.says(f"Wrote {to}.")
    with zipfile.ZipFile(to) as file:
        for name in file.namelist():
            assert file.read(name).decode().rstrip("\n") in shown


def test_where_it_cannot_be_written_that_is_said(at: AtThePage, tmp_path: Path) -> None:
    at.press("Show the report")
    at.settle()
    at.save_as(tmp_path / "gone" / "report.zip", "Write it into a file")
    assert at.says("cannot be written")


def test_who_names_no_file_writes_none(
    at: AtThePage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    at.press("Show the report")
    at.settle()
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    at.press("Write it into a file")
    assert at.says("This is all that is in it.")
    assert not list(tmp_path.glob("*.zip"))

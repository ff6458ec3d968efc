"""Records In and Out: everything checked from the window, and what was found said in a list."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.whole_check import whole_check
from desktop_app.records_exchanged.screen.check_box import CheckBox
from desktop_app.shop_record.record import ShopRecord
from tests.faults.busy_shop import by_hand
from tests.records_exchanged.importing import a_shop
from tests.screens.records_page import AtThePage
from tests.shop_record.backed_up import with_photo


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    at.page.column.addWidget(CheckBox(at.desk, lambda: whole_check(record)))
    yield at
    at.desk.errands.finish()


def found(at: AtThePage) -> list[str]:
    box = at.find(QListWidget, "What the check found")
    return [box.item(row).text() for row in range(box.count())] if box.isVisibleTo(at.page) else []


def test_a_whole_shop_is_said_to_be_whole(at: AtThePage) -> None:
    with_photo(at.record)
    at.press("Check everything")
    at.settle()
    assert at.says("1 photos and 1 entries of the history were checked: all is whole.")
    assert found(at) == []
    assert at.button("Check everything").isEnabled()


def test_what_is_wrong_is_listed_with_what_to_do(at: AtThePage) -> None:
    photo = with_photo(at.record, b"one")
    with_photo(at.record, b"two")
    at.record.photos.path(photo).unlink()
    with by_hand(at.record.folder) as raw:
        raw.execute("UPDATE job SET cause = '<b>ours</b>' WHERE id = 2")
    at.press("Check everything")
    at.settle()
    row, gone = sorted(line for line in found(at) if "search" not in line)
    assert row.startswith("job row 2: was changed past the history: cause is “<b>ours</b>”")
    assert f"photos/{photo[:2]}/{photo} is missing." in gone
    assert "Bring it back from a copy." in gone


def test_stopped_it_says_so(at: AtThePage) -> None:
    for number in range(300):
        with_photo(at.record, b"%d" % number)
    at.press("Check everything")
    at.press("Stop: checking")
    at.settle()
    assert at.says("Stopped. Nothing was changed.")
    at.press("Check everything")
    at.settle()
    assert at.says("300 photos")

"""Records In and Out: everything checked from the window, and what was found said in a list."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QListWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.mending import mend, will_mend
from desktop_app.commands.whole_check import whole_check
from desktop_app.records_exchanged.screen.check_box import CheckBox, Mending
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from tests.faults.busy_shop import by_hand
from tests.records_exchanged.importing import a_shop
from tests.screens.records_page import AtThePage
from tests.shop_record.backed_up import with_photo
from tests.shop_record.test_mending import LONG_AGO


@pytest.fixture
def record(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


@pytest.fixture
def at(record: ShopRecord, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[AtThePage]:
    at = AtThePage(record, qtbot, monkeypatch)
    mending = Mending(will_mend, lambda found: mend(record, found))
    at.page.column.addWidget(CheckBox(at.desk, lambda: whole_check(record), mending))
    yield at
    at.desk.errands.finish()


def found(at: AtThePage) -> list[str]:
    box = at.find(QListWidget, "What the check found")
    return [box.item(row).text() for row in range(box.count())] if box.isVisibleTo(at.page) else []


def test_a_whole_shop_is_said_to_be_whole(at: AtThePage) -> None:
    with_photo(at.record)
    at.press("Check everything")
    at.settle()
    assert at.says("1 photo and 1 entry of the history were checked: all is whole.")
    assert found(at) == []
    assert at.button("Check everything").isEnabled()


@pytest.mark.embedded
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
    assert "brings it back where a backup" in gone


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


@pytest.mark.embedded
def test_what_can_be_mended_is_mended_when_somebody_presses(at: AtThePage) -> None:
    folder = at.record.folder
    with_photo(at.record)
    nobodys, copy = folder / "photos" / "holiday.jpg", folder / "shop-before-import-1.sqlite"
    for left in (nobodys, copy):
        left.write_bytes(b"nobody's")
        os.utime(left, (LONG_AGO, LONG_AGO))
    with by_hand(folder) as raw:
        raw.execute("DELETE FROM job_text WHERE rowid = 1")
    at.press("Check everything")
    at.settle()
    assert len(found(at)) == 3
    assert at.says("The search index is made anew from the jobs.")
    assert at.says("Former copies of the record are moved into the folder “trash” of the shop")
    assert nobodys.exists()
    assert copy.exists()
    at.press("Mend this")
    at.settle()
    assert at.says("Mended: The search index was made anew from 1 job.")
    assert at.says("Mended: Moved photos/holiday.jpg to trash/")
    assert at.says("Mended: Moved shop-before-import-1.sqlite to trash/")
    assert at.says("1 photo and 1 entry of the history were checked: all is whole.")
    assert not at.offers("Mend this")
    moved = {path.name for path in (folder / "trash").rglob("*") if path.is_file()}
    assert moved == {nobodys.name, copy.name}


@pytest.mark.embedded
def test_where_nothing_can_be_mended_nothing_is_offered(at: AtThePage) -> None:
    with_photo(at.record)
    with by_hand(at.record.folder) as raw:
        raw.execute("UPDATE job SET price_cents = 1 WHERE id = 1")
    at.press("Check everything")
    at.settle()
    assert len(found(at)) == 1
    assert not at.offers("Mend this")


@pytest.mark.embedded
def test_a_shop_that_takes_no_writing_is_not_mended(at: AtThePage) -> None:
    with_photo(at.record)
    with by_hand(at.record.folder) as raw:
        raw.execute("DELETE FROM job_text WHERE rowid = 1")
    at.press("Check everything")
    at.settle()
    at.desk.shut(ShopDamaged("The shop's record is damaged."))
    assert not at.button("Mend this").isEnabled()
    assert "is damaged" in at.button("Mend this").toolTip()

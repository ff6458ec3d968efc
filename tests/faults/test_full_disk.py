"""The disk is full while something is saved: a sentence, nothing half done, what was typed kept."""

from __future__ import annotations

import errno
import os
from datetime import timedelta
from pathlib import Path

import pytest
from PySide6.QtWidgets import QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.checks.check import check_shop
from desktop_app.shop_record.checks.leftovers import leftovers
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.faults.busy_shop import MUCH_LATER, opened, photos_of
from tests.shop_record.backed_up import all_files, named, with_photo
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.one_job import take_in

LONG = "tip burned back, " + "shown by the gap, " * 300


def typed_cause(at: Counter) -> QPlainTextEdit:
    """Type more than the disk has room for."""
    cause = at.find(QPlainTextEdit, "Cause")
    cause.setFocus()
    cause.insertPlainText(LONG)
    return cause


def fill(disk: Path) -> Path:
    """Leave not one byte of a disk."""
    ballast = disk / "ballast"
    with ballast.open("wb", buffering=0) as file:
        for size in (65_536, 1):
            try:
                while file.write(b"x" * size) == size:
                    pass
            except OSError:
                continue
    return ballast


@pytest.mark.embedded  # a server has a disk of its own
def test_a_photo_and_a_deed_on_a_full_disk(own_disk: Path) -> None:
    from desktop_app.commands.shop_place import new_place

    record = new_place(own_disk / "shop", lambda: NOON)
    with_photo(record, b"the first")
    before = all_files(own_disk / "shop")
    ballast = fill(own_disk)
    with pytest.raises(ShopTrouble, match=r"The photo was not saved: No space left"):
        record.photos.keep(b"a photo" * 2000)
    with pytest.raises(ShopTrouble, match="The disk is full"):
        named(record, "Bram" * 5000)
    assert record.can_undo() == "Write up a car with its photo"  # it can still be read
    assert all_files(own_disk / "shop") == before
    ballast.unlink()
    named(record, "Bram")  # and written again, once there is room
    assert check_shop(record, photos_of(record)).ok
    record.close()


@pytest.mark.embedded  # a server has a disk of its own
def test_what_was_typed_stays_in_its_field(own_disk: Path, qtbot: QtBot) -> None:
    with sitting(qtbot, own_disk / "shop", NOON) as at:
        take_in(at, "misses when damp", "90100")
        ballast, cause = fill(own_disk), typed_cause(at)
        at.leave()
        at.wait_for("The disk is full.")
        assert cause.toPlainText() == LONG
        ballast.unlink()
        cause.setFocus()
        qtbot.keyClicks(cause, ".")
        at.leave()
        at.quiet()
    with opened(own_disk / "shop") as record, record.reading() as connection:
        assert connection.exec_driver_sql("SELECT cause FROM job").scalar_one().startswith("tip")


@pytest.mark.embedded  # a server has a disk of its own
def test_what_was_not_saved_is_tried_again_and_the_notice_goes_then(
    own_disk: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("desktop_app.shop_window.saved_again.AGAIN_MS", 100)
    with sitting(qtbot, own_disk / "shop", NOON) as at:
        take_in(at, "misses when damp", "90100")
        ballast = fill(own_disk)
        typed_cause(at)
        at.wait_for("The disk is full.")
        at.press("Put the notice away")
        qtbot.wait(400)
        assert at.window.strip.words() == ""  # it is said once, not with each try
        at.press("Proved: bay")
        at.wait_for("The disk is full.")
        ballast.unlink()
        at.bot.waitUntil(lambda: at.window.strip.words() == "", timeout=5000)
    with opened(own_disk / "shop") as record, record.reading() as connection:
        assert connection.exec_driver_sql("SELECT cause FROM job").scalar_one() == LONG


@pytest.mark.embedded  # a server has a disk of its own
@pytest.mark.parametrize("call", ["write", "fsync", "replace"])
def test_a_disk_that_refuses_at_any_point_leaves_no_half_photo(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch, call: str
) -> None:
    def refuse(*_said: object, **_how: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    if call == "write":
        monkeypatch.setattr(Path, "open", refuse)
    elif call == "fsync":
        monkeypatch.setattr(os, "fsync", refuse)
    else:
        monkeypatch.setattr(Path, "replace", refuse)
    with pytest.raises(ShopTrouble, match="The photo was not saved"):
        shop.photos.keep(b"a photo")
    monkeypatch.undo()
    assert list(shop.photos.all_names()) == []


def test_a_photo_whose_row_could_not_be_written_is_no_row(shop: ShopRecord) -> None:
    def refuse(*_said: object) -> None:
        raise ShopTrouble("refused")

    shop.followers.append(refuse)
    with pytest.raises(ShopTrouble, match="refused"):
        with_photo(shop, b"a photo")
    assert photos_of(shop) == []
    left = leftovers(shop.photos, set(), MUCH_LATER + timedelta(days=36_500))
    assert [path.name for path, _ in left] == list(shop.photos.all_names())
    shop.followers.clear()
    with_photo(shop, b"a photo")  # the same once more
    assert len(photos_of(shop)) == 1

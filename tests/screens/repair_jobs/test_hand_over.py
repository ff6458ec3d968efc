"""The hand-over asks where someone can get hurt, and where the odometer does not show a drive."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk

NUTS = "Nuts to the maker's torque."


class Leaving:
    """A job on which everything is said, at its hand-over."""

    def __init__(
        self, bot: QtBot, shop: ShopRecord, points: Sequence[tuple[str, bool]] = (), **more: Any
    ) -> None:
        self.bot, self.shop, self.desk = bot, shop, Desk(shop)
        said = WriteUp("misses", plate="TH 1", description="hatchback", odometer=900)
        actions.write_up(shop, said)
        with shop.deed("All is said") as deed:
            told = {"cause": "worn", "cause_found": 1, "correction": "new", "declined": "nothing"}
            deed.change(Job, 1, **{"proof_level": 1, **told, **more})
        self.gone = GoneSection(self.desk, lambda _job: (), lambda _job: points)
        bot.addWidget(self.gone)
        self.gone.show()
        self.show()
        self.desk.changed.connect(lambda _done: self.show())

    def show(self) -> None:
        self.gone.show_job(self.job())

    def job(self) -> JobView:
        with self.shop.reading() as connection:
            return read_job(connection, 1)

    def press(self, words: str) -> None:
        QApplication.processEvents()  # what is asked is laid out
        shown = [b for b in self.gone.findChildren(QPushButton) if b.isVisible()]
        button = next(b for b in shown if words in b.text())
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def asks(self, words: str) -> bool:
        labels = self.gone.findChildren(QLabel)
        return any(words in one.text() for one in labels if one.isVisible())


def test_points_where_someone_can_get_hurt_are_asked_about_before_the_car_leaves(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    at = Leaving(qtbot, shop, ((NUTS, True), ("Key fully home.", False)))
    at.press("Hand the car over")
    assert at.job().left_at is None
    assert at.asks("nobody has answered them: Nuts to the maker's torque. Hand the car over all")
    at.press("Not yet")
    at.desk.do(actions.tick_check, 1, "refit", NUTS, "done")
    at.press("Hand the car over")
    assert at.job().left_at is not None


def test_a_point_where_nobody_gets_hurt_stops_nothing(qtbot: QtBot, shop: ShopRecord) -> None:
    at = Leaving(qtbot, shop, (("Key fully home.", False),))
    at.press("Hand the car over")
    assert at.job().left_at is not None


def test_an_empty_odometer_out_after_a_drive_is_asked_about(qtbot: QtBot, shop: ShopRecord) -> None:
    at = Leaving(qtbot, shop, proof_level=2, proof_distance=12)
    assert not at.asks("12 mi were driven")
    at.press("Hand the car over")
    assert at.asks("12 mi were driven, but the odometer out, 900 mi, is the same as")
    assert at.job().left_at is None
    at.press("Right as typed")
    at.press("Hand the car over")
    assert at.job().odometer_out == 900

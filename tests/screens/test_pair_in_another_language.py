"""A pair's card in another language keeps the same words as in English.

Its part kind was read before: kinds stay in the language that was spoken then.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot
from sqlalchemy import select

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs.stored import Answered
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.another_language import another_language
from tests.screens.bench_desk import Bench, new_job, retype


def test_that_readings_are_right_as_typed(qtbot: QtBot, shop: ShopRecord) -> None:
    job, desk = new_job(shop), Desk(shop)
    lay_side_by_side(shop, job, "distributor-rotor")
    bench = Bench(desk, job)
    qtbot.addWidget(bench)
    bench.resize(1100, 760)
    bench.show()
    qtbot.waitExposed(bench)
    with another_language():
        retype(bench, qtbot, "bore diameter, removed", "12.7")
        retype(bench, qtbot, "bore diameter, replacement", "0.5")
        buttons = (b for b in bench.findChildren(QPushButton) if b.isVisibleTo(bench))
        keep = next(b for b in buttons if "«Right as typed: Bore" in b.accessibleName())
        qtbot.mouseClick(keep, Qt.MouseButton.LeftButton)
    with shop.reading() as connection:
        (kept,) = connection.scalars(select(Answered.question))
    assert kept.startswith("Bore diameter: 0.5 mm here and 12.7 mm on the other part")
    desk.errands.finish()

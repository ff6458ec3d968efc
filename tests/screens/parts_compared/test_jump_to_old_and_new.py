"""A jump to Old & New lands where Enter does no harm."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.screen.old_and_new_section import OldAndNewSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.tab_order import stops
from tests.screens.bench_desk import all_kinds, named, new_job


def test_a_jump_to_the_pairs_does_not_land_on_what_takes_one_away(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    desk, job_id = Desk(shop), new_job(shop)
    kind = next(iter(all_kinds()))
    desk.do(lay_side_by_side, job_id, kind, "")
    section = OldAndNewSection(desk, all_kinds())
    page = JobPage(desk, [("Old & New", section)], lambda _job: "", lambda _job: [])
    qtbot.addWidget(page)
    page.resize(1100, 700)
    page.show()
    page.activateWindow()
    qtbot.waitUntil(page.isActiveWindow)
    page.open_job(job_id)
    away = [one for one in stops(section) if "Take the pair away" in one.accessibleName()]
    assert away, "Tab still reaches it"
    qtbot.mouseClick(named(page, QPushButton, "Go to Old & New"), Qt.MouseButton.LeftButton)
    there = page.focusWidget()
    assert section.isAncestorOf(there)
    assert there is not away[0]
    desk.errands.finish()

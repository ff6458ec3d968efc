"""Parts are called by the name of their kind, on It's Back and where a supplier owes for them."""

from __future__ import annotations

from PySide6.QtWidgets import QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.money_owed_actions import write_owed
from desktop_app.returns_watched.screen.watch_section import WatchSection
from desktop_app.returns_watched.stored_money_owed import parts_of_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.another_language import another_language
from tests.screens.judging_page import opened, says
from tests.watched_shop import a_week_of_returns


def test_a_return_names_the_parts_by_their_kind(shop: ShopRecord, qtbot: QtBot) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("A sensor on both jobs") as deed:
        for number in ("J-104", "J-131"):
            deed.add(Pair, job_id=ids[number], part_kind="crank-cam-sensor")
    desk = Desk(shop)
    page = opened(desk, qtbot, lambda: kinds_of(shop))
    assert says(page, "same part kind: crankshaft or camshaft position sensor")
    assert says(page, "crankshaft or camshaft position sensor: origin not said")
    assert not says(page, "crank cam sensor")
    desk.errands.finish()


def test_a_supplier_owes_for_a_part_by_its_name(shop: ShopRecord, qtbot: QtBot) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("Leads on J-104") as deed:
        pair = deed.add(Pair, job_id=ids["J-104"], part_kind="plug-wire", position="set")
    write_owed(shop, pair, "core")
    desk = Desk(shop)
    section = WatchSection(desk, {}, kinds_of(shop))
    qtbot.addWidget(section)
    section.show()
    section.show_job(desk.ask(read_job, ids["J-104"]))
    assert "Core: ignition lead, set" in [b.text() for b in section.findChildren(QPushButton)]
    assert says(section, "Core for ignition lead, set, from the supplier")
    desk.errands.finish()


def test_the_side_of_a_part_is_said_in_the_language_spoken(shop: ShopRecord, qtbot: QtBot) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("Pads and a fuse on both jobs") as deed:
        for number in ("J-104", "J-131"):
            deed.add(Pair, job_id=ids[number], part_kind="brake-pads", position="left")
            deed.add(Pair, job_id=ids[number], part_kind="fuse", position="behind the seat")
    desk, kinds = Desk(shop), kinds_of(shop)
    with another_language():
        page = opened(desk, qtbot, lambda: kinds)
        assert says(page, "«same position: «left»»")
        assert says(page, "«same position: behind the seat»")
        assert says(page, "brake pads, «left»: «origin not said»")
        assert says(page, "fuse, behind the seat: «origin not said»")
        pads = desk.ask(parts_of_job, ids["J-104"], kinds)
        assert [part for _, part, _ in pads][-2:] == [
            "disc brake pads, «left»",
            "fuse, behind the seat",
        ]
    desk.errands.finish()

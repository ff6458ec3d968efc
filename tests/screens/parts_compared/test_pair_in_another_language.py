"""A pair's card in another language keeps the same words as in English."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot
from sqlalchemy import select

from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Answered
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.another_language import another_language
from tests.screens.bench_desk import Bench, named, new_job, retype, words_of


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


def kept_place(record: ShopRecord) -> str:
    """Return the position of the only pair as the record has it."""
    with record.reading() as connection:
        (place,) = connection.scalars(select(Pair.position))
    return str(place)


def test_the_side_that_is_pressed_is_the_same_side_at_every_desk(
    qtbot: QtBot, shop: ShopRecord
) -> None:
    desk = Desk(shop)
    with another_language():
        bench = Bench(desk, new_job(shop))
        qtbot.addWidget(bench)
        bench.resize(1100, 760)
        bench.show()
        qtbot.waitExposed(bench)
        qtbot.keyClicks(named(bench, QLineEdit, "«Part kind»"), "brake-pads")
        for side in ("outer", "left"):
            chip = named(bench, QPushButton, f"«position «{side}»»")
            assert chip.text() == f"«{side}»"
            qtbot.mouseClick(chip, Qt.MouseButton.LeftButton)
        place = named(bench, QLineEdit, "«Position of the part»")
        assert place.text() == "«outer» «left»"
        qtbot.keyClick(place, Qt.Key.Key_Return)
        assert kept_place(shop) == "outer left"
        assert "«disc brake pads», «outer» «left»" in words_of(bench)
        field = "position, «disc brake pads»"
        assert named(bench, QLineEdit, field).text() == "«outer» «left»"
        retype(bench, qtbot, field, "«left»")
        assert kept_place(shop) == "left"
        retype(bench, qtbot, field, "left, the newer one")
        assert kept_place(shop) == "left, the newer one"
        assert "«disc brake pads», left, the newer one" in words_of(bench)
    desk.errands.finish()

"""Heights on the photo bench: in the shop's unit, as the last mark, cleared, and never unsaid."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import refused_fields
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.screens.bench_desk import retype, words_of
from tests.screens.marking import (
    click,
    give_scale,
    marks_kept,
    old_stage,
    open_bench,
    press,
)
from tests.screens.part_photos.test_photo_bench_surfaces import shown
from tests.screens.photo_desk import named

HEIGHT, DOUBT = "Height above the card", "Height plus or minus"
CLEAR = "Clear the height: it is not known"


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench with a length on the removed part's photo."""
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    press(qtbot, bench, "Draw: Length")
    draw(qtbot, bench, 150)
    return bench


def draw(qtbot: QtBot, bench: PhotoBench, y: float) -> None:
    """Draw a length along the plate with the tool in hand."""
    click(qtbot, old_stage(bench), (100, y), (299, y))


def kept_heights(desk: Desk, bench: PhotoBench) -> list[tuple[float, float] | None]:
    """Height and half range of each mark in mm; None where nobody said it."""
    return [
        (one.mark.height_mm, one.mark.height_u_mm) if one.height_known else None
        for one in marks_kept(desk, bench)
    ]


def test_the_unit_follows_a_switch_and_what_is_kept_stays_what_it_was(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    retype(bench, qtbot, HEIGHT, "12.5")
    assert "\nmm\n" in words_of(bench)
    desk.do(change_rule, "length_unit", "inch")
    assert named(bench, QLineEdit, HEIGHT).text() == "0.492126"
    assert named(bench, QLineEdit, HEIGHT).accessibleDescription() == "in inches"
    assert "\nin\n" in words_of(bench)
    assert "\nmm\n" not in words_of(bench)
    retype(bench, qtbot, DOUBT, "0.01")
    assert kept_heights(desk, bench) == [(12.5, pytest.approx(0.254))]  # not the rounded inches
    retype(bench, qtbot, HEIGHT, "1/2 or so")
    assert refused_fields(bench) == [HEIGHT]
    retype(bench, qtbot, HEIGHT, "0.5")
    assert kept_heights(desk, bench) == [(pytest.approx(12.7), pytest.approx(0.254))]
    retype(bench, qtbot, DOUBT, "0.05 mm")
    assert kept_heights(desk, bench) == [(pytest.approx(12.7), 0.05)]
    desk.do(change_rule, "length_unit", "mm")
    assert named(bench, QLineEdit, HEIGHT).text() == "12.7"
    assert named(bench, QLineEdit, DOUBT).text() == "0.05"


def test_a_half_typed_height_keeps_the_unit_it_was_begun_in(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    field = named(bench, QLineEdit, HEIGHT)
    field.setFocus()
    qtbot.keyClicks(field, "12")
    desk.do(change_rule, "length_unit", "inch")
    assert field.text() == "12 mm"
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert kept_heights(desk, bench) == [(12.0, 0.5)]


def test_what_was_typed_for_a_mark_that_another_desk_took_out_is_told(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    name = named(shown(bench), QLineEdit, "Name of the mark")
    name.setFocus()
    qtbot.keyClicks(name, "tip width")
    other = Desk(desk.record)
    with qtbot.waitSignal(desk.told) as told:
        other.undo()
        desk.changed.emit(desk.do(change_rule, "length_unit", "inch"))
    assert "“tip width”" in str(told.args[0])


def test_a_height_taken_over_from_the_last_mark_says_so_until_it_is_changed(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    assert "No height is said." in words_of(shown(bench))
    assert not named(shown(bench), QPushButton, CLEAR).isEnabled()
    retype(bench, qtbot, HEIGHT, "12")
    assert "as the last mark" not in words_of(shown(bench))
    draw(qtbot, bench, 180)
    assert "⚠  Height 12.00 ± 0.50 mm, as the last mark." in words_of(shown(bench))
    retype(shown(bench), qtbot, HEIGHT, "8")
    assert "as the last mark" not in words_of(shown(bench))
    assert kept_heights(desk, bench) == [(12, 0.5), (8, 0.5)]


def test_a_height_is_cleared_and_the_next_mark_takes_the_one_before(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    retype(bench, qtbot, HEIGHT, "12")
    draw(qtbot, bench, 180)
    press_in(qtbot, shown(bench), CLEAR)
    assert kept_heights(desk, bench) == [(12, 0.5), None]
    assert named(shown(bench), QLineEdit, HEIGHT).text() == ""
    assert named(shown(bench), QLineEdit, DOUBT).text() == ""
    assert "No height is said." in words_of(shown(bench))
    desk.undo()
    assert named(shown(bench), QLineEdit, HEIGHT).text() == "12"


def press_in(qtbot: QtBot, details: object, name: str) -> None:
    """Press a button of the chosen mark's fields."""
    button = named(details, QPushButton, name)  # type: ignore[arg-type]
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)


def test_a_doubt_that_is_typed_first_waits_for_its_height(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    retype(bench, qtbot, DOUBT, "0.2")
    assert kept_heights(desk, bench) == [None]
    assert "Say the height too" in words_of(shown(bench))
    retype(bench, qtbot, HEIGHT, "12")
    assert kept_heights(desk, bench) == [(12, 0.2)]
    assert "Say the height too" not in words_of(shown(bench))


def test_an_emptied_doubt_becomes_the_usual_one_and_shows_it(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    retype(bench, qtbot, HEIGHT, "12")
    retype(bench, qtbot, DOUBT, "0.1")
    field = named(bench, QLineEdit, DOUBT)
    field.selectAll()
    qtbot.keyClick(field, Qt.Key.Key_Delete)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert kept_heights(desk, bench) == [(12, 0.5)]
    assert field.text() == "0.5"


def test_on_the_card_is_typed_as_nought(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    retype(bench, qtbot, HEIGHT, "0")
    assert kept_heights(desk, bench) == [(0, 0)]
    assert "No height is said." not in words_of(shown(bench))


def test_a_known_length_names_the_shops_unit_too(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    give_scale(qtbot, bench, (50, 20), (350, 20), "30")
    name = "Known length, removed part"
    doubt = named(bench, QLineEdit, "Known length plus or minus, removed part")
    assert doubt.placeholderText() == "0.05"
    desk.do(change_rule, "length_unit", "inch")
    assert named(bench, QLineEdit, name).accessibleDescription() == "in inches"
    assert doubt.placeholderText() == "0.002"  # 0.05 mm, as it is kept where nobody says it
    give_scale(qtbot, bench, (50, 20), (350, 20), "1.5")
    assert marks_kept(desk, bench)[0].value == pytest.approx(25.27, abs=0.4)

"""Bench sums on the job's page: chosen, filled from the pairs, worked out while typing, kept."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QPushButton, QWidget

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.screen.sum_bench import SumBench
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.tab_order import stops
from tests.screens.bench_desk import Bench, all_kinds, named, new_job, words_of


@pytest.fixture
def bench(desk: Desk, qtbot: Any) -> Bench:
    """The bench of a job with a measured rotor, shown."""
    job = new_job(desk.record)
    pair = actions.lay_side_by_side(desk.record, job, "distributor-rotor").made
    assert pair is not None
    radius = all_kinds()["distributor-rotor"].dimension("tip-radius")
    assert radius is not None
    actions.write_readings(desk.record, pair, radius, "removed", "26.90")
    actions.write_readings(desk.record, pair, radius, "replacement", "27.45")
    page = Bench(desk, job)
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    qtbot.waitExposed(page)
    return page


def choose(bench: Bench, qtbot: Any, words: str) -> None:
    """Choose a sum with the keyboard."""
    choice = named(bench, QComboBox, "Work one out")
    choice.setFocus()
    while choice.currentText() != words:
        before = choice.currentIndex()
        qtbot.keyClick(choice, Qt.Key.Key_Down)
        assert choice.currentIndex() != before


def button(page: QWidget, words: str) -> QPushButton:
    """Return the button that says this."""
    found = [b for b in page.findChildren(QPushButton) if words in (b.text(), b.accessibleName())]
    assert len(found) == 1, [b.text() for b in page.findChildren(QPushButton)]
    return found[0]


def test_a_sum_takes_what_was_read_and_says_what_is_missing(bench: Bench, qtbot: Any) -> None:
    choose(bench, qtbot, "Rotor gap and its change")
    assert named(bench, QLineEdit, "Tip radius, old rotor, mm").text() == "26.9"
    assert "terminal radius in the cap" in words_of(bench)
    keep = button(bench, "Keep it with the job")
    assert not keep.isEnabled()
    qtbot.keyClicks(named(bench, QLineEdit, "Terminal radius in the cap, mm"), "28.40")
    assert "0.55 mm smaller" in words_of(bench)
    qtbot.mouseClick(keep, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: not bench.findChildren(QLineEdit, "Terminal radius in the cap, mm"))
    (kept,) = bench.desk.ask(sums_of_job, bench.job_id)
    assert kept.on_sheet
    qtbot.waitUntil(lambda: "Rotor gap and its change: The gap was 1.50 mm" in words_of(bench))


def test_a_kept_sum_is_left_off_the_sheet_and_taken_out(bench: Bench, qtbot: Any) -> None:
    choose(bench, qtbot, "Worth of a road test")
    qtbot.keyClicks(named(bench, QLineEdit, "It came about once in"), "40")
    qtbot.keyClicks(named(bench, QLineEdit, "Driven without it"), "120")
    qtbot.keyClick(named(bench, QLineEdit, "Driven without it"), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "Worth of a road test:" in words_of(bench))
    qtbot.mouseClick(button(bench, "on the sheet: yes"), Qt.MouseButton.LeftButton)
    (kept,) = bench.desk.ask(sums_of_job, bench.job_id)
    assert not kept.on_sheet
    qtbot.waitUntil(lambda: bool(bench.findChildren(SumBench)))
    away = next(
        b
        for b in bench.findChildren(QPushButton)
        if b.accessibleName().startswith("Take the sum out") and b.isVisibleTo(bench)
    )
    qtbot.mouseClick(away, Qt.MouseButton.LeftButton)
    assert bench.desk.ask(sums_of_job, bench.job_id) == ()
    qtbot.waitUntil(lambda: "Worth of a road test:" not in words_of(bench))


def test_what_is_typed_into_a_sum_is_there_again_when_the_job_is(bench: Bench, qtbot: Any) -> None:
    choose(bench, qtbot, "Worth of a road test")
    qtbot.keyClicks(named(bench, QLineEdit, "It came about once in"), "40")
    bench.section.keep_draft()
    again = Bench(bench.desk, bench.job_id)
    qtbot.addWidget(again)
    again.show()
    choose(again, qtbot, "Worth of a road test")
    assert named(again, QLineEdit, "It came about once in").text() == "40"


def test_a_shop_that_reads_inches_types_inches(bench: Bench, qtbot: Any) -> None:
    change_rule(bench.desk.record, "length_unit", "inch")
    bench.desk.undo()
    bench.desk.redo()  # the desk reads its rules again
    choose(bench, qtbot, "Rotor gap and its change")
    assert named(bench, QLineEdit, "Tip radius, old rotor, in").text() == "26.9 mm"
    qtbot.keyClicks(named(bench, QLineEdit, "Terminal radius in the cap, in"), "1.1181")
    assert "The gap was 1.50 mm" in words_of(bench)


def test_a_draft_in_inches_comes_back_in_inches(bench: Bench, qtbot: Any) -> None:
    change_rule(bench.desk.record, "length_unit", "inch")
    bench.desk.undo()
    bench.desk.redo()  # the desk reads its rules again
    choose(bench, qtbot, "Rotor gap and its change")
    qtbot.keyClicks(named(bench, QLineEdit, "Terminal radius in the cap, in"), "1.1181")
    bench.section.keep_draft()
    again = Bench(bench.desk, bench.job_id)
    qtbot.addWidget(again)
    again.show()
    choose(again, qtbot, "Rotor gap and its change")
    assert named(again, QLineEdit, "Terminal radius in the cap, in").text() == "1.1181"
    assert "The gap was 1.50 mm" in words_of(again)


def test_typing_that_rests_is_kept_by_itself(bench: Bench, qtbot: Any) -> None:
    choose(bench, qtbot, "Worth of a road test")
    qtbot.keyClicks(named(bench, QLineEdit, "Driven without it"), "31")
    kept = bench.desk.record.folder / "drafts.json"
    qtbot.waitUntil(lambda: kept.exists() and '"31"' in kept.read_text(), timeout=4000)


def test_a_result_that_no_longer_holds_is_not_kept(bench: Bench, qtbot: Any) -> None:
    choose(bench, qtbot, "Worth of a road test")
    qtbot.keyClicks(named(bench, QLineEdit, "It came about once in"), "40")
    driven = named(bench, QLineEdit, "Driven without it")
    qtbot.keyClicks(driven, "31")
    assert button(bench, "Keep it with the job").isEnabled()
    qtbot.keyClicks(driven, "x")
    qtbot.keyClick(driven, Qt.Key.Key_Return)
    assert not button(bench, "Keep it with the job").isEnabled()
    assert bench.desk.ask(sums_of_job, bench.job_id) == ()


def test_tab_goes_through_a_form_as_it_is_laid_out(bench: Bench, qtbot: Any) -> None:
    """The form was made last, and stands in the middle of the page."""
    choose(bench, qtbot, "Rotor gap and its change")
    bench.activateWindow()
    first = named(bench, QLineEdit, "Terminal radius in the cap, mm")
    first.setFocus()
    qtbot.waitUntil(first.hasFocus)
    for name in ("Tip radius, old rotor, mm", "Tip radius, new rotor, mm"):
        qtbot.keyClick(bench.focusWidget(), Qt.Key.Key_Tab)
        assert named(bench, QLineEdit, name).hasFocus()
    qtbot.keyClick(bench.focusWidget(), Qt.Key.Key_Backtab)
    assert named(bench, QLineEdit, "Tip radius, old rotor, mm").hasFocus()


def test_tab_stops_stand_in_reading_order(bench: Bench, qtbot: Any) -> None:
    actions.lay_side_by_side(bench.desk.record, bench.job_id, "distributor-cap")
    bench.reread()
    choose(bench, qtbot, "Worth of a road test")
    qtbot.waitUntil(lambda: bool(bench.findChildren(QLineEdit, "")))
    names = [one.accessibleName() for one in stops(bench.body)]
    rotor = names.index("tip radius from the shaft axis, removed")
    cap = names.index("towers, removed")
    kind, form = names.index("Part kind"), names.index("Driven without it")
    assert rotor < cap < kind < form

"""Old & New as the technician at the bench meets it: by keyboard, by mouse, by its names."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton

from desktop_app.part_photos.screen.locked_views import LockedViews
from desktop_app.part_photos.screen.photo_tray import PhotoTray
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.part_kinds.kind_names import kind_called
from desktop_app.parts_compared.part_numbers import numbers_differ
from desktop_app.parts_compared.screen.dimension_drawing import DimensionDrawing
from desktop_app.parts_compared.screen.scale_axis import axis_for
from desktop_app.parts_compared.stored_pairs import pairs_of_job, read_pair
from desktop_app.parts_compared.stored_refit import refit_checks_for
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from tests.screens.bench_desk import (
    Bench,
    all_kinds,
    lay,
    named,
    new_job,
    press,
    retype,
    words_of,
)
from tests.screens.photo_desk import CAP, ROTOR

ENTER = Qt.Key.Key_Return


def measure(bench: Bench, qtbot: Any, name: str, text: str) -> QLineEdit:
    """Type readings into a field and press Enter."""
    return retype(bench, qtbot, name, text)


def test_an_empty_bench_says_how_to_begin_and_refuses_what_is_no_kind(
    bench: Bench, qtbot: Any
) -> None:
    assert "Keep the old part on the bench" in words_of(bench)
    qtbot.keyClicks(named(bench, QLineEdit, "Part kind"), "flux thing")
    press(bench, qtbot, "Lay old and new side by side")
    assert "“flux thing” is no one kind" in words_of(bench)
    assert bench.desk.ask(pairs_of_job, bench.job_id) == ()


def test_another_name_of_a_kind_finds_it(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "rotor arm", "cylinder bank 1")
    kept = bench.desk.ask(read_pair, pair)
    assert (kept.part_kind, kept.position) == ("distributor-rotor", "cylinder bank 1")
    assert "Distributor rotor, cylinder bank 1" in words_of(bench)
    assert "Ignition voltage" in words_of(bench)
    assert named(bench, QLineEdit, "tip radius from the shaft axis, removed").hasFocus()


def test_a_calliper_types_row_by_row_and_the_verdict_follows(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    head = named(bench, QLabel, "verdict on the distributor rotor: not enough measured")
    first = named(bench, QLineEdit, "tip radius from the shaft axis, removed")
    first.setFocus()
    typed = ("33.10; 33.11; 33.12", "33.65; 33.66; 33.67", "12.00", "12.00; 12.00")
    for reading in (*typed, "22.10", "22.12", "35", "35"):
        field = bench.focusWidget()
        qtbot.keyClicks(field, reading)
        qtbot.keyClick(field, ENTER)
    assert head.accessibleName() == "verdict on the distributor rotor: fits"
    assert "Wear can explain that." in words_of(bench)
    picture = named(bench, DimensionDrawing, "drawing of tip radius from the shaft axis")
    assert "replacement 33.66 mm" in picture.accessibleDescription()
    assert "Hatched is where" in picture.toolTip()
    assert picture.grab().toImage() != type(picture)("").grab().toImage()


def test_a_corrected_reading_leads_to_its_neighbour(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.00")
    measure(bench, qtbot, "bore diameter, replacement", "12.10")
    measure(bench, qtbot, "bore diameter, removed", "12.20")
    neighbour = named(bench, QLineEdit, "bore diameter, replacement")
    assert neighbour.hasFocus()
    qtbot.keyClicks(bench.focusWidget(), "12.21")
    qtbot.keyClick(neighbour, ENTER)
    typed = bench.desk.ask(read_pair, pair).typed
    assert typed == {("bore", "removed"): ("12.20",), ("bore", "replacement"): ("12.21",)}
    assert not neighbour.hasFocus()


def test_one_more_reading_leads_to_one_more_beside_it_and_none_to_the_next_empty_field(
    bench: Bench, qtbot: Any
) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.00")
    measure(bench, qtbot, "bore diameter, replacement", "12.10")
    measure(bench, qtbot, "bore diameter, removed", "12.00; 12.01")
    qtbot.keyClicks(bench.focusWidget(), "12.11")
    qtbot.keyClick(bench.focusWidget(), ENTER)
    assert bench.desk.ask(read_pair, pair).typed["bore", "replacement"] == ("12.10", "12.11")
    measure(bench, qtbot, "bore diameter, removed", "12.00; 12.01")
    assert named(bench, QLineEdit, "tip height above the seat, removed").hasFocus()


def test_the_next_step_leads_to_its_field(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12")
    for name in ("tip radius from the shaft axis", "tip height above the seat"):
        measure(bench, qtbot, f"{name}, removed", "30")
        measure(bench, qtbot, f"{name}, replacement", "30.5; 30.5; 30.5")
    press(bench, qtbot, "Next: Measure bore diameter on the replacement (pin gauge).")
    assert named(bench, QLineEdit, "bore diameter, replacement").hasFocus()
    assert "The thickest pin that enters" in words_of(bench)


def test_a_refused_reading_stays_and_says_what_is_accepted(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    field = measure(bench, qtbot, "bore diameter, removed", "twelve")
    assert field.text() == "twelve"
    assert field.hasFocus()
    assert "millimetres like 12.7" in words_of(bench)
    assert bench.desk.ask(read_pair, pair).readings == ()
    measure(bench, qtbot, "bore diameter, removed", "12,01")
    assert "millimetres like 12.7" not in words_of(bench)
    assert bench.desk.ask(read_pair, pair).readings[0].values == (12.01,)


def test_inches_are_read_and_said_by_the_house_rule(bench: Bench, qtbot: Any) -> None:
    bench.desk.do(change_rule, "length_unit", "inch")
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "0.500")
    measure(bench, qtbot, "bore diameter, replacement", "0.560")
    values = [one.values[0] for one in bench.desk.ask(read_pair, pair).readings]
    assert values == pytest.approx([12.7, 14.224])
    assert "the new one measures 0.0600 in more" in words_of(bench)
    assert "Bore diameter, inch" in words_of(bench)
    picture = named(bench, DimensionDrawing, "drawing of bore diameter")
    assert "removed 0.5000 in" in picture.accessibleDescription()


def test_millimetres_typed_before_keep_their_meaning_when_the_rule_turns_to_inches(
    bench: Bench, qtbot: Any
) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.7")
    bench.desk.do(change_rule, "length_unit", "inch")
    field = named(bench, QLineEdit, "bore diameter, removed")
    assert field.text() == "12.7 mm"
    measure(bench, qtbot, "bore diameter, removed", "12.7 mm; 0.5")
    (kept,) = bench.desk.ask(read_pair, pair).readings
    assert kept.values == pytest.approx((12.7, 12.7))


def test_a_difference_is_explained_once_it_is_said_by_whose_word(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "tip height above the seat, removed", "22.1; 22.1")
    measure(bench, qtbot, "tip height above the seat, replacement", "23.2; 23.2")
    named(bench, QLabel, "verdict on the distributor rotor: stop and look")
    measure(bench, qtbot, "why, tip height above the seat", "new number, taller body")
    assert "By whose word?" in words_of(bench)
    assert bench.desk.ask(read_pair, pair).explained == ()
    measure(bench, qtbot, "by whose word, tip height above the seat", "supplier's letter 12")
    (kept,) = bench.desk.ask(read_pair, pair).explained
    assert (kept.why, kept.by) == ("new number, taller body", "supplier's letter 12")
    named(bench, QLabel, "verdict on tip height above the seat: explained")
    measure(bench, qtbot, "why, tip height above the seat", " ")
    assert bench.desk.ask(read_pair, pair).explained == ()


def test_makers_limits_are_entered_and_judged(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    press_more(bench, qtbot)
    measure(bench, qtbot, "resistance from centre to tip, replacement", "5.0")
    assert "No maker's limit is entered" in words_of(bench)
    measure(bench, qtbot, "at most, resistance from centre to tip", "2 bananas")
    assert "can't be understood" in words_of(bench)
    measure(bench, qtbot, "at most, resistance from centre to tip", "2")
    named(bench, QLabel, "verdict on resistance from centre to tip: outside limits")


def test_limits_that_can_not_be_are_said_and_not_kept(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    press_more(bench, qtbot)
    measure(bench, qtbot, "where the limits stand, resistance from centre to tip", "page 12")
    assert "One of the two limits is needed; the other may stay open." in words_of(bench)
    measure(bench, qtbot, "at most, resistance from centre to tip", "2")
    measure(bench, qtbot, "at least, resistance from centre to tip", "3")
    assert "The lower limit is above the upper one. Swap them." in words_of(bench)
    limits = bench.desk.ask(read_pair, pair).limits
    assert [(one.at_least, one.at_most) for one in limits] == [(None, 2.0)]


def press_more(bench: Bench, qtbot: Any) -> None:
    """Unfold the dimensions that are not essential."""
    buttons = bench.findChildren(QPushButton)
    more = next(one for one in buttons if "More dimensions" in one.text())
    qtbot.mouseClick(more, Qt.MouseButton.LeftButton)


def test_box_and_part_with_different_numbers_are_said_in_the_head(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "number on the box, distributor rotor", "R-1180")
    measure(bench, qtbot, "number on the new part, distributor rotor", "R 1180")
    assert "The box says" not in words_of(bench)
    measure(bench, qtbot, "number on the new part, distributor rotor", "R 1181")
    assert "≠  The box says R-1180, the part says R 1181." in words_of(bench)


def test_conditions_are_pressed_and_words_chosen(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "disc brake pads", "front left")
    button = named(bench, QPushButton, "cracked, replacement")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert bench.desk.ask(read_pair, pair).terms("replacement") == ("cracked",)
    named(bench, QLabel, "verdict on the disc brake pads: stop and look")
    press_more(bench, qtbot)
    combo = named(bench, QComboBox, "direction arrow, removed, choices")
    combo.setFocus()
    qtbot.keyClick(combo, Qt.Key.Key_Down)
    qtbot.keyClick(combo, Qt.Key.Key_Down)
    qtbot.keyClick(combo.lineEdit(), ENTER)
    assert bench.desk.ask(read_pair, pair).typed["direction-arrow", "removed"] == ("left",)


def test_mixed_up_units_are_asked_about_until_someone_says_they_are_right(
    bench: Bench, qtbot: Any
) -> None:
    lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.7")
    measure(bench, qtbot, "bore diameter, replacement", "0.5")
    question = "Was one of them read in inches?"
    assert question in words_of(bench)
    keep = next(b for b in bench.findChildren(QPushButton) if question in b.accessibleName())
    qtbot.mouseClick(keep, Qt.MouseButton.LeftButton)
    bench.reread()
    assert question not in words_of(bench)


def test_what_is_typed_and_not_saved_survives_changes_elsewhere(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    field = named(bench, QLineEdit, "bore diameter, removed")
    field.setFocus()
    qtbot.keyClicks(field, "12.0")
    bench.desk.do(actions.write_about_pair, pair, "lot", "W46")
    assert field.text() == "12.0"
    assert named(bench, QLineEdit, "lot or date code, distributor rotor").text() == "W46"
    qtbot.keyClicks(field, "4")
    qtbot.keyClick(field, ENTER)
    assert bench.desk.ask(read_pair, pair).readings[0].values == (12.04,)


def test_another_instrument_counts_for_what_is_written(bench: Bench, qtbot: Any) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.0; 12.0")
    tools = named(bench, QComboBox, "instrument, bore diameter")
    tools.setFocus()
    qtbot.keyClicks(tools, "cal")
    qtbot.keyClick(tools, Qt.Key.Key_Down)
    qtbot.keyClick(tools, Qt.Key.Key_Up)
    kept = bench.desk.ask(read_pair, pair)
    assert tools.currentText() == kept.instruments_used["bore", "removed"] != "pin gauge"


def test_a_pair_is_taken_away_and_undo_brings_it_back(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    measure(bench, qtbot, "bore diameter, removed", "12.0")
    press(bench, qtbot, "Take the pair away: distributor rotor")
    qtbot.waitUntil(lambda: "Keep the old part on the bench" in words_of(bench))
    bench.desk.undo()
    assert named(bench, QLineEdit, "bore diameter, removed").text() == "12.0"


def test_photos_line_up_by_side_and_view_and_can_be_taken_out(
    bench: Bench, qtbot: Any, tmp_path: Path
) -> None:
    pair = lay(bench, qtbot, "distributor rotor")
    view = all_kinds()["distributor-rotor"].views[2]
    press(bench, qtbot, f"view {view}, distributor rotor")
    for side, content in (("removed part", CAP), ("replacement", ROTOR)):
        file = tmp_path / f"{side}.jpg"
        file.write_bytes(content)
        tray = named(bench, PhotoTray, f"photos of the {side}, distributor rotor")
        with qtbot.waitSignal(tray.photos_added):
            tray.add_paths([str(file)])
    shown = bench.desk.ask(read_pair, pair).photos
    assert [(one.side, one.view) for one in shown] == [("removed", view), ("replacement", view)]
    stages = bench.findChildren(LockedViews)
    assert [one.removed.photo().id for one in stages] == [shown[0].photo_id]
    assert f"{view}  ◆●" in [one.text() for one in bench.findChildren(QPushButton)]
    out = "Take the chosen photo out of this view, removed, distributor rotor"
    press(bench, qtbot, out)
    assert [one.side for one in bench.desk.ask(read_pair, pair).photos] == ["replacement"]
    bench.desk.errands.finish()


def test_several_pairs_each_get_their_card_in_order(bench: Bench, qtbot: Any) -> None:
    kinds = ("distributor-rotor", "distributor-cap", "spark-plug")
    other = new_job(bench.desk.record, plate="TH 2")
    for kind in kinds:
        actions.lay_side_by_side(bench.desk.record, other, kind)
    bench.job_id = other
    bench.reread()
    names = ["Distributor rotor", "Distributor cap", "Spark plug"]

    def titles() -> list[str]:
        labels = [one for one in bench.findChildren(QLabel) if one.isVisibleTo(bench)]
        there = sorted(labels, key=lambda one: one.mapTo(bench, one.pos()).y())
        return [one.text() for one in there if one.text() in names]

    qtbot.waitUntil(lambda: titles() == names)


def test_a_kind_that_left_the_shelf_is_shown_and_not_judged(bench: Bench) -> None:
    actions.lay_side_by_side(bench.desk.record, bench.job_id, "our-own-bracket")
    bench.reread()
    assert "not on the shelf any more" in words_of(bench)


def test_refit_checks_are_those_of_the_fitted_parts_each_once(desk: Desk) -> None:
    job = new_job(desk.record)
    kinds = all_kinds()
    for kind in ("spark-plug", "spark-plug", "brake-pads"):
        made = actions.lay_side_by_side(desk.record, job, kind).made
    assert made is not None
    actions.say_fitted(desk.record, made, fitted=False)
    plug = [(one.say, one.hurt) for one in kinds["spark-plug"].refit]
    assert list(desk.ask(refit_checks_for, job, kinds)) == plug


@pytest.mark.parametrize(
    ("box", "part", "asked"),
    [("A-1", "a 1", False), ("A1", "", False), ("A1", "A7", True)],
)
def test_numbers_differ_only_where_both_were_read(box: str, part: str, asked: bool) -> None:
    assert (numbers_differ(box, part) is not None) is asked


def test_a_name_that_can_mean_two_kinds_means_none() -> None:
    kinds = all_kinds()
    assert kind_called("distributor", kinds) is None
    assert kind_called("Pads", kinds) is kinds["brake-pads"]


@given(st.lists(st.floats(-1e5, 1e5), min_size=1, max_size=6))
def test_an_axis_holds_every_value_and_has_marks_in_order(values: list[float]) -> None:
    axis = axis_for(values)
    assert axis is not None
    assert all(axis.low <= one <= axis.high for one in (*values, *axis.ticks))
    assert list(axis.ticks) == sorted(set(axis.ticks))
    assert 1 <= len(axis.ticks) <= 7


def test_the_head_says_that_something_typed_is_not_in_the_verdict(bench: Bench, qtbot: Any) -> None:
    lay(bench, qtbot, "distributor rotor")
    field = measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.10; thirty")
    said = "One entry below can't be read and is not in this verdict"
    assert said in words_of(bench)
    assert field.text() == "33.10; thirty"
    measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.10; 33.12")
    assert said not in words_of(bench)


def test_the_verdict_on_the_pair_in_hand_is_said_for_where_it_stays_in_view(
    bench: Bench, qtbot: Any
) -> None:
    said: list[str] = []
    bench.section.said.connect(said.append)
    lay(bench, qtbot, "distributor rotor")
    named(bench, QLineEdit, "tip radius from the shaft axis, removed").setFocus()
    qtbot.waitUntil(lambda: bool(said))
    assert said[-1].startswith("◌  Distributor rotor: not enough measured.  → Measure tip radius")
    measure(bench, qtbot, "tip radius from the shaft axis, removed", "33.10; 33.12")
    measure(bench, qtbot, "tip radius from the shaft axis, replacement", "30.10; 30.12")
    assert "stop and look" in said[-1]
    assert "measures 3.00 mm less" in said[-1]


def test_a_narrow_page_lays_drawing_and_instrument_below_and_never_scrolls_sideways(
    bench: Bench, qtbot: Any
) -> None:
    lay(bench, qtbot, "distributor rotor")
    field = named(bench, QLineEdit, "tip radius from the shaft axis, removed")
    drawing = named(bench, DimensionDrawing, "drawing of tip radius from the shaft axis")
    tool = named(bench, QComboBox, "instrument, tip radius from the shaft axis")

    def below() -> list[bool]:
        top = field.mapTo(bench, field.rect().bottomLeft()).y()
        return [one.mapTo(bench, one.rect().center()).y() > top for one in (drawing, tool)]

    bench.resize(1200, 760)
    qtbot.waitUntil(lambda: below() == [False, False])
    bench.resize(806, 760)  # what a window of 1040 leaves to the page
    qtbot.waitUntil(lambda: below() == [True, True])
    qtbot.waitUntil(lambda: bench.horizontalScrollBar().maximum() == 0)
    bench.resize(1200, 760)
    qtbot.waitUntil(lambda: below() == [False, False])

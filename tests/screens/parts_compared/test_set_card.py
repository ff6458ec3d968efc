"""The card of parts that meet, as the technician sees it and types into it."""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QLabel, QLineEdit

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.screen.drawn_set import drawn_set
from desktop_app.parts_compared.screen.set_card import SetCard
from desktop_app.parts_compared.screen.set_drawing import SetDrawing
from desktop_app.parts_compared.stored_sets import JobSet, sets_of_job
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from tests.screens.bench_desk import all_kinds, named, new_job

ENTER = Qt.Key.Key_Return
WOBBLE = "Wobble of the tip from play in the shaft bushing"


def lay(desk: Desk, job: int, kind: str, dimension: str, old: str, new: str) -> None:
    """Lay a pair and write one dimension of both sides down."""
    pair = actions.lay_side_by_side(desk.record, job, kind).made
    known = all_kinds()[kind].dimension(dimension)
    assert pair is not None
    assert known is not None
    actions.write_readings(desk.record, pair, known, "removed", old)
    actions.write_readings(desk.record, pair, known, "replacement", new)


class Shown:
    """A card on a desk that is shown again after every deed."""

    def __init__(self, desk: Desk, job: int, qtbot: Any) -> None:
        self.desk, self.job = desk, job
        first = self.now()
        self.card = SetCard(desk, first.judged.part_set, first.position)
        qtbot.addWidget(self.card)
        self.card.resize(760, 620)
        self.again()
        self.card.show()
        desk.changed.connect(self.again)

    def now(self) -> JobSet:
        """Return the job's only set as it is kept."""
        (one,) = self.desk.ask(sets_of_job, self.job, all_kinds())
        assert isinstance(one, JobSet)
        return one

    def again(self, _done: object = None) -> None:
        """Show what is kept now."""
        self.card.show_set(self.now())

    def words(self) -> str:
        """Return everything that is written on the card."""
        return " ".join(label.text() for label in self.card.findChildren(QLabel))


@pytest.fixture
def ignition(desk: Desk, qtbot: Any) -> Shown:
    """The card of a rotor and a cap that leave each other 0.95 mm."""
    job = new_job(desk.record)
    lay(desk, job, "distributor-rotor", "tip-radius", "26.90", "27.45")
    lay(desk, job, "distributor-cap", "terminal-radius", "28.40", "28.40")
    return Shown(desk, job, qtbot)


def test_the_card_says_the_verdict_with_its_numbers(ignition: Shown) -> None:
    assert "▣  room enough" in ignition.words()
    assert "The tip clears the terminals." in ignition.words()
    assert "became 0.55 mm smaller" in ignition.words()
    assert "Ignition voltage can injure or kill" in ignition.words()


def test_a_wobble_that_is_typed_turns_the_verdict(ignition: Shown, qtbot: Any) -> None:
    field = named(ignition.card, QLineEdit, WOBBLE)
    field.setFocus()
    qtbot.keyClicks(field, "1.2")
    qtbot.keyClick(field, ENTER)
    assert ignition.now().entered == {"wobble": 1.2}
    assert "☞  may touch" in ignition.words()
    ignition.desk.undo()
    assert field.text() == ""
    assert "▣  room enough" in ignition.words()


def test_a_refused_figure_stays_in_its_field(ignition: Shown, qtbot: Any) -> None:
    told: list[object] = []
    ignition.desk.told.connect(told.append)
    field = named(ignition.card, QLineEdit, WOBBLE)
    field.setFocus()
    qtbot.keyClicks(field, "much")
    qtbot.keyClick(field, ENTER)
    assert told
    assert field.text() == "much"
    assert ignition.now().entered == {}


def test_an_empty_field_says_what_is_taken(ignition: Shown) -> None:
    assert named(ignition.card, QLineEdit, WOBBLE).placeholderText() == "usual 0.08 mm"


def test_the_drawing_says_itself_in_words(ignition: Shown) -> None:
    drawing = named(ignition.card, SetDrawing, "drawing of air gap between tip and terminal")
    assert "old parts 1.50 mm" in drawing.accessibleDescription()
    assert "new parts 0.95 mm" in drawing.accessibleDescription()


def test_the_drawing_is_to_scale(ignition: Shown) -> None:
    drawn = drawn_set(ignition.now().judged, "mm")
    assert drawn is not None
    assert [one.side for one in drawn.rooms] == ["removed", "replacement"]
    assert drawn.low == 0.0
    assert drawn.high is None
    assert min(drawn.edges()) == 0.0
    picture = named(ignition.card, SetDrawing, "drawing of air gap between tip and terminal").grab()
    image = picture.toImage().convertToFormat(QImage.Format.Format_RGB32)
    assert len({image.pixel(x, y) for x in range(image.width()) for y in (20, 60, 90)}) > 3


def test_lengths_are_told_in_inches_where_the_shop_reads_inches(ignition: Shown) -> None:
    change_rule(ignition.desk.record, "length_unit", "inch")
    desk = Desk(ignition.desk.record)
    card = SetCard(desk, ignition.now().judged.part_set)
    card.show_set(ignition.now())
    said = " ".join(label.text() for label in card.findChildren(QLabel))
    assert "0.022 in smaller" in said
    assert f"{WOBBLE}, inch" in said
    desk.errands.finish()


def test_a_belt_asks_where_the_tensioner_stands(desk: Desk, qtbot: Any) -> None:
    job = new_job(desk.record)
    lay(desk, job, "serpentine-belt", "length", "1230", "1215")
    shown = Shown(desk, job, qtbot)
    assert "◌  not measured" in shown.words()
    assert "→  Enter the travel left to the slack end, old belt on." in shown.words()
    for name, figure in (
        ("Travel left to the slack end, old belt on", "20"),
        ("Whole travel of the tensioner between its marks", "50"),
    ):
        field = named(shown.card, QLineEdit, name)
        field.setFocus()
        qtbot.keyClicks(field, figure)
        qtbot.keyClick(field, ENTER)
    assert "▣  room enough" in shown.words()
    assert "became 7.5 mm larger" in shown.words()


def test_two_meetings_in_one_position_write_their_own_figures(desk: Desk, qtbot: Any) -> None:
    job = new_job(desk.record)
    lay(desk, job, "distributor-rotor", "tip-radius", "26.90", "27.45")
    lay(desk, job, "distributor-rotor", "tip-radius", "26.90", "27.40")
    lay(desk, job, "distributor-cap", "terminal-radius", "28.40", "28.40")
    cards = []
    for one in desk.ask(sets_of_job, job, all_kinds()):
        card = SetCard(desk, one.judged.part_set, one.position)
        qtbot.addWidget(card)
        card.show_set(one)
        card.show()
        cards.append(card)
    first, second = cards
    assert first.accessibleName() != second.accessibleName()
    field = named(second, QLineEdit, f"{WOBBLE}, pairs 2 and 3")
    field.setFocus()
    qtbot.keyClicks(field, "0.3")
    qtbot.keyClick(field, ENTER)
    entered = [one.entered for one in desk.ask(sets_of_job, job, all_kinds())]
    assert entered == [{}, {"wobble": 0.3}]

"""Ask the Old Jobs: words that mean nothing yet are told what they mean in this shop."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QLineEdit, QListView, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.phrase_actions import add_phrase, take_phrase_away
from desktop_app.symptom_search.stored_shop_words import ShopWords
from tests.screens.searching import Sought, search_page, write_old_jobs

SAY, OUR_OWN = "Say what these words mean here", "The shop's own phrases"
PHRASE, PART = "What customers say", "The symptom that it means here"
LIST, SYMPTOMS = "The shop's own phrases", "Symptoms to choose from"
KEEP, AWAY = "Keep what it means here", "Take this phrase away"


@pytest.fixture
def at(shop: ShopRecord, qtbot: QtBot) -> Iterator[Sought]:
    """The search's page on a shop with misfires and squealing brakes."""
    write_old_jobs(shop)
    with search_page(qtbot, shop, ShopWords(shop)) as sought:
        yield sought


def type_in(at: Sought, name: str, text: str) -> QLineEdit:
    field = at.named(QLineEdit, name)
    field.setFocus()
    field.selectAll()
    at.bot.keyClicks(field, text)
    return field


def tell(at: Sought, phrase: str, part: str) -> None:
    """Say what a phrase means, as typed into the open form."""
    type_in(at, PHRASE, phrase)
    type_in(at, PART, part)
    at.press(KEEP)


def listed(at: Sought) -> list[str]:
    return at.rows(LIST)


def test_free_words_of_a_question_get_a_meaning_and_count_at_once(at: Sought) -> None:
    type_in(at, "Ask the old jobs", "it yodels in the tunnel")
    at.press(SAY)
    assert at.named(QLineEdit, PHRASE).text() == "yodels in the tunnel"
    at.bot.keyClicks(at.named(QLineEdit, PART), "brake squ")
    at.press(KEEP)
    at.offers("Take out symptom: brake squeal")
    at.bot.waitUntil(lambda: len(at.rows()) == 3)
    assert PHRASE not in [w.accessibleName() for w in at.shown.findChildren(QLineEdit) if shown(w)]
    assert SAY not in at.buttons()
    assert at.field.hasFocus() or at.shown.focusWidget() is at.field
    at.desk.undo()
    at.offers("Take out yodels")
    at.desk.redo()
    at.offers("Take out symptom: brake squeal")


def shown(widget: QWidget) -> bool:
    return widget.isVisible()


def test_it_is_done_by_keyboard_alone(at: Sought) -> None:
    field = type_in(at, "Ask the old jobs", "it yodels")
    at.offers(SAY)
    at.bot.keyClick(field, Qt.Key.Key_M, Qt.KeyboardModifier.ControlModifier)
    part = at.named(QLineEdit, PART)
    at.bot.keyClicks(part, "squeal")
    assert at.rows(SYMPTOMS) == ["belt squeal", "brake squeal"]
    at.bot.keyClick(part, Qt.Key.Key_Down)
    symptoms = at.named(QListView, SYMPTOMS)
    at.bot.keyClick(symptoms, Qt.Key.Key_Down)
    at.bot.keyClick(symptoms, Qt.Key.Key_Return)
    assert part.text() == "brake squeal"
    at.bot.keyClick(part, Qt.Key.Key_Return)
    at.offers("Take out symptom: brake squeal")
    assert at.desk.record.can_undo() == "Let “yodels” mean brake squeal here"


def test_kept_phrases_are_changed_and_taken_away_in_the_list(at: Sought) -> None:
    at.press(OUR_OWN)
    tell(at, "it yodels", "brake squeal")
    at.bot.waitUntil(lambda: listed(at) == ["“it yodels” means brake squeal"])
    view = at.named(QListView, LIST)
    place = view.visualRect(view.model().index(0, 0)).center()
    at.bot.mouseClick(view.viewport(), Qt.MouseButton.LeftButton, pos=place)
    assert at.named(QLineEdit, PHRASE).text() == "it yodels"
    type_in(at, PART, "hesitation")
    assert at.says("Here it means brake squeal")
    at.press(KEEP)
    at.bot.waitUntil(lambda: listed(at) == ["“it yodels” means hesitation"])
    type_in(at, PHRASE, "It yodeled.")  # the same words in another form
    at.press(AWAY)
    at.bot.waitUntil(lambda: not listed(at))
    assert at.says("No phrase is the shop's own yet")
    at.desk.undo()
    at.bot.waitUntil(lambda: listed(at) == ["“it yodels” means hesitation"])


def test_a_built_in_meaning_is_named_before_it_is_set_aside(at: Sought) -> None:
    at.press(OUR_OWN)
    type_in(at, PHRASE, "brakes squeal")
    type_in(at, PART, "hesitation")
    assert at.says("So far it is read as brake squeal; kept here, the shop's meaning holds.")
    at.press(KEEP)
    at.bot.waitUntil(lambda: listed(at) == ["“brakes squeal” means hesitation"])
    type_in(at, "Ask the old jobs", "brakes squeal ")
    at.offers("Take out symptom: hesitation")


def test_what_is_refused_stays_in_the_form(at: Sought) -> None:
    told: list[object] = []
    at.desk.told.connect(told.append)
    at.press(OUR_OWN)
    tell(at, "it has the", "hesitation")
    assert "only little words" in str(told[0])
    assert at.named(QLineEdit, PHRASE).text() == "it has the"
    type_in(at, PART, "zzz")
    at.press(KEEP)
    assert at.says("Which symptom?")
    assert len(told) == 1


def test_a_part_that_several_names_have_is_asked_about(at: Sought) -> None:
    at.press(OUR_OWN)
    tell(at, "it yodels", "squeal")
    assert at.says("Which symptom?")
    assert listed(at) == []


def test_another_question_offers_its_own_words(at: Sought) -> None:
    for said in ("yodels", "gobbles"):
        type_in(at, "Ask the old jobs", said + " ")
        at.offers(f"Take out {said}")
        at.press(SAY)
        assert at.named(QLineEdit, PHRASE).text() == said
    type_in(at, PHRASE, "honks")
    type_in(at, "Ask the old jobs", "yodels ")
    at.offers("Take out yodels")
    at.press(SAY)
    assert at.named(QLineEdit, PHRASE).text() == "honks"


def test_what_another_desk_took_away_is_said(at: Sought) -> None:
    record = at.desk.record
    at.press(OUR_OWN)
    tell(at, "it yodels", "brake squeal")
    at.bot.waitUntil(lambda: len(listed(at)) == 1)
    type_in(at, PHRASE, "it yodels")
    take_phrase_away(record, 1)
    told: list[object] = []
    at.desk.told.connect(told.append)
    at.press(AWAY)
    assert "no longer there" in str(told[0])
    assert listed(at) == []


def test_a_symptom_is_found_by_what_people_say_for_it(at: Sought) -> None:
    at.press(OUR_OWN)
    tell(at, "it yodels", "bogs down")
    at.bot.waitUntil(lambda: listed(at) == ["“it yodels” means hesitation"])


def test_escape_goes_back_to_the_question(at: Sought) -> None:
    at.press(OUR_OWN)
    at.bot.keyClick(at.named(QLineEdit, PHRASE), Qt.Key.Key_Escape)
    assert at.shown.focusWidget() is at.field
    assert KEEP not in at.buttons()


def test_what_another_desk_kept_counts_with_the_next_question(at: Sought) -> None:
    record = at.desk.record
    add_phrase(record, ShopWords(record)(), "it yodels", "brake-squeal")
    type_in(at, "Ask the old jobs", "yodels ")
    at.offers("Take out symptom: brake squeal")


def test_every_control_has_a_name(at: Sought) -> None:
    at.press(OUR_OWN)
    tell(at, "it yodels", "brake squeal")
    at.bot.waitUntil(lambda: len(listed(at)) == 1)
    assert len(at.rows(SYMPTOMS)) > 70
    assert at.named(QPushButton, AWAY).isVisible()
    for widget in at.shown.findChildren(QWidget):
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            face = QAccessible.queryAccessibleInterface(widget)
            assert face.text(QAccessible.Text.Name), widget

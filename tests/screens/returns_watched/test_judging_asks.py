"""Judging asks: who judges, whether it is two vehicles, which of two writings holds."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored import ConditionMet, Job, JobCondition, Person
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import ReadingPage
from tests.screens.judging_page import (
    button,
    choose,
    field,
    first_shown,
    kept,
    listed,
    opened,
    press,
    says,
    settle,
    write,
)
from tests.watched_shop import a_week_of_returns, job, vehicle

APART, TOGETHER = "These are two vehicles", "It is the same vehicle after all"


@pytest.fixture
def told(desk: Desk) -> list[str]:
    """What the notice strip would say."""
    words: list[str] = []
    desk.told.connect(lambda news: words.append(str(news)))
    return words


@pytest.fixture
def page(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> ItsBackPage:
    """The page on J-131 after J-104; nobody is at the desk."""
    a_week_of_returns(shop)
    with shop.deed("Name people") as deed:
        deed.add(Person, name="Ana")
        deed.add(Person, name="Ben")
    return opened(desk, qtbot)


def test_a_judgement_takes_a_person(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    press(page, qtbot, "Same part")
    assert kept(shop, "J-104", "J-131").judgement is None
    assert says(page, "Nobody is named at the desk. Who judges it “same part”?")
    assert not button(page, "Same part").isChecked()
    press(page, qtbot, "Ben")
    row = kept(shop, "J-104", "J-131")
    assert (row.judgement, row.judged_by) == (Judgement.SAME_PART, "Ben")
    assert shop.who == ""
    assert not says(page, "Who judges it")
    press(page, qtbot, "Unrelated")
    press(page, qtbot, "Nobody yet")
    assert kept(shop, "J-104", "J-131").judgement is Judgement.SAME_PART
    settle(desk, qtbot)


def test_who_judges_is_asked_until_it_is_answered(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, told: list[str]
) -> None:
    press(page, qtbot, "Same part")
    write(page, qtbot, "What it rests on", "the old tip")
    write(page, qtbot, "Parts", "12")
    settle(desk, qtbot)
    assert says(page, "Nobody is named at the desk. Who judges it “same part”?")
    desk.name("Ana")
    assert not says(page, "Nobody is named at the desk.")
    assert says(page, "Who judges it “same part”?")
    press(page, qtbot, "Ben")
    row = kept(shop, "J-104", "J-131")
    assert (row.judgement, row.judged_by) == (Judgement.SAME_PART, "Ben")
    assert not says(page, "Who judges it")
    desk.name("")
    press(page, qtbot, "Unrelated")
    choose(page, "J-160 after J-104")
    assert told[-1] == ("J-131 after J-104 was not judged “unrelated”: nobody said who judges it.")
    settle(desk, qtbot)


def test_without_people_it_says_where_they_are_named(
    shop: ShopRecord, desk: Desk, qtbot: QtBot, told: list[str]
) -> None:
    a_week_of_returns(shop)
    page = opened(desk, qtbot)
    press(page, qtbot, "Same part")
    assert "Put the names under House Rules first." in told[-1]
    assert kept(shop, "J-104", "J-131").judgement is None


def test_two_vehicles_are_asked_about_said_and_given_back(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, told: list[str]
) -> None:
    shop.who = "Ben"
    press(page, qtbot, "Same part")
    write(page, qtbot, "Parts", "1320.50")
    press(page, qtbot, APART)
    assert says(page, "It is judged “same part”.")
    assert says(page, "Total: $1,320.50. As two vehicles it leaves the list")
    settle(desk, qtbot)
    assert any("J-131 after J-104" in row for row in listed(page))
    press(page, qtbot, "No, the same vehicle")
    assert kept(shop, "J-104", "J-131").judgement is Judgement.SAME_PART
    press(page, qtbot, APART)
    button(page, "Yes, two vehicles").setFocus()
    press(page, qtbot, "Yes, two vehicles")
    settle(desk, qtbot)
    assert not any("J-131 after J-104" in row for row in listed(page))
    assert "J-104 and J-131 are two vehicles: the return left the list." in told[-1]
    assert says(page, "These are two vehicles: it is no return, and nothing counts.")
    assert not says(page, "It counts as a comeback.")
    assert QApplication.focusWidget() in (None, button(page, TOGETHER))
    press(page, qtbot, TOGETHER)
    settle(desk, qtbot)
    assert kept(shop, "J-104", "J-131").judgement is Judgement.SAME_PART
    assert says(page, "It counts as a comeback.")


def test_a_second_space_after_confirming_does_not_make_two_vehicles(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    shop.who = "Ana"
    press(page, qtbot, "Same part")
    shop.who = "Ben"
    confirm = button(page, "Confirm it as a second person")
    confirm.setFocus()
    qtbot.keyClick(confirm, Qt.Key.Key_Space)
    assert says(page, "Second look: Ben")
    after = page.window().focusWidget()
    assert after is field(page, "Why")
    qtbot.keyClick(after, Qt.Key.Key_Space)
    settle(desk, qtbot)
    row = kept(shop, "J-104", "J-131")
    assert (row.judgement, row.why) == (Judgement.SAME_PART, "")


def test_another_desks_judgement_is_shown_and_not_revised_unasked(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, told: list[str]
) -> None:
    shop.who = "Ben"
    actions.judge_return(shop, 1, 2, "same part", why="pinched", cause_class="fitted-badly")
    shop.who = "Ana"
    press(page, qtbot, "Unrelated")
    row = kept(shop, "J-104", "J-131")
    assert (row.judgement, row.judged_by) == (Judgement.SAME_PART, "Ben")
    assert "What it is: “same part”; Why: “pinched”; Main cause: “fitted badly”" in told[-1]
    assert "“Judge the return “unrelated”” was not done" in told[-1]
    assert says(page, "Judged “same part” by Ben")
    assert field(page, "Why").toPlainText() == "pinched"
    press(page, qtbot, "Unrelated")
    assert kept(shop, "J-104", "J-131").judgement is Judgement.UNRELATED
    settle(desk, qtbot)


@pytest.mark.parametrize(
    ("answer", "stays"), [("Keep what I typed", "short"), ("Keep what was written", "pinched")]
)
def test_of_two_writings_a_person_says_which_one_holds(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, answer: str, stays: str
) -> None:
    actions.say_why(shop, 1, 2, "pinched")
    write(page, qtbot, "Why", "short")
    field(page, "Why").save_now()  # as leaving the field does once more
    assert kept(shop, "J-104", "J-131").why == "pinched"
    assert field(page, "Why").toPlainText() == "short"
    assert says(page, "Why: “pinched”. Typed here, not kept: “short”.")
    press(page, qtbot, answer)
    assert kept(shop, "J-104", "J-131").why == stays
    assert field(page, "Why").toPlainText() == stays
    assert not says(page, "Typed here, not kept")
    settle(desk, qtbot)


def test_a_cost_written_meanwhile_is_not_written_over(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    judging_actions.write_amount(shop, 1, 2, "tow_cents", 8500)
    write(page, qtbot, "Towing", "12")
    assert says(page, "Towing: 85.00. Typed here, not kept: “12”.")
    press(page, qtbot, "Keep what was written")
    assert field(page, "Towing").text() == "85.00"
    settle(desk, qtbot)


def test_costs_of_the_same_visit_are_pointed_out(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    with shop.deed("Hours") as deed:
        deed.change(Job, 3, unbilled_hours=1.5)
    judging_actions.write_amount(shop, 2, 3, "tow_cents", 8500)
    desk.changed.emit(judging_actions.write_amount(shop, 2, 3, "parts_cents", 1))
    settle(desk, qtbot)
    choose(page, "J-160 after J-104")
    assert says(page, "Costs of this visit are written with J-131 already.")
    assert says(page, "other amounts are added up; the very same amounts count once.")
    with pytest.raises(LookupError):
        button(page, "Take 1.5 hours from J-160")
    choose(page, "J-160 after J-131")
    assert not says(page, "Costs of this visit are written with")
    assert button(page, "Take 1.5 hours from J-160")


def test_what_was_not_tried_or_not_read_stands_beside(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("Prove J-104 without rain") as deed:
        deed.change(Job, ids["J-104"], proof_level=2)
        deed.add(JobCondition, job_id=ids["J-104"], condition="rain", happens=1)
        deed.add(ConditionMet, job_id=ids["J-104"], condition="rain", met=0)
    page = opened(desk, qtbot)
    assert says(page, "Not tried: rain.")
    assert says(page, "P0300; after the repair: not read")
    choose(page, "J-162 after J-140")
    assert says(page, "nobody said; after the repair: not read")
    assert says(page, "none written down")


def test_a_visit_judged_in_its_chain_waits_no_more_anywhere(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    shop.who = "Ana"
    for one, other in ((1, 2), (2, 3), (5, 6)):
        desk.do(actions.judge_return, one, other, "same symptom")
    settle(desk, qtbot)
    assert says(page, "Nothing waits for a judgement.")
    assert not any("waits" in row for row in listed(page))
    assert "○ judged in its chain" in next(r for r in listed(page) if "J-160 after J-104" in r)


def test_what_was_told_stands_in_the_list_of_what_waits(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    then = job(shop, vehicle(shop), "J-1", "2026-06-01", "2026-06-02")
    page = opened(desk, qtbot)
    with qtbot.waitSignal(page.waiting) as waits:
        desk.do(note_answer, then, "same trouble", on=date(2026, 7, 1))
        settle(desk, qtbot)
    assert waits.args == [1]
    assert says(page, "1 return that was only told waits for a judgement, since 2026-07-01")
    [row] = listed(page)
    assert row.startswith("J-1: told on 1 July 2026\n")
    assert "\n29 days" in row
    first_shown(page, qtbot)
    with qtbot.waitSignal(page.job_chosen) as asked:
        press(page, qtbot, "Then: J-1")
    assert asked.args == [then]


@pytest.mark.parametrize("width", [820, 1100, 1500])
def test_nothing_is_cut_at_any_width(page: ItsBackPage, qtbot: QtBot, width: int) -> None:
    page.resize(width, 640)
    QApplication.processEvents()
    QApplication.processEvents()
    right = page.findChild(ReadingPage)
    assert right.horizontalScrollBar().maximum() == 0
    assert button(page, "Now: J-131").geometry().right() < right.viewport().width()

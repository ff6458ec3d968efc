"""It's Back for what was only told: listed, judged beside the earlier job, dangerous or not."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored import Person
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.customer_actions import note_answer, say_source
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.asked_box import AskedBox
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_told_judging import read_told_judging
from desktop_app.returns_watched.told_actions import judge_told
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.screens.judging_page import (
    button,
    choose,
    listed,
    opened,
    press,
    says,
    settle,
    write,
)
from tests.watched_shop import a_week_of_returns, as_made, vehicle
from tests.watched_shop import job as a_job

DANGEROUS, CAUSE = "Was it dangerous?", "Main cause"


@pytest.fixture
def told(shop: ShopRecord) -> tuple[int, int]:
    """J-1 and the answer in which its customer tells of the same trouble."""
    a_week_of_returns(shop)
    with shop.deed("Name people") as deed:
        deed.add(Person, name="Ana")
    car = vehicle(shop, plate="TIN 07", description="2.0-litre saloon")
    job = a_job(shop, car, "J-150", "2026-10-20", "2026-10-20", 10_000)
    words = "dies at the lights, they put a new cap on"
    said = note_answer(
        shop, job, "same trouble", on=date(2026, 11, 3), odometer_told=10_600, words=words
    )
    shop.who = "Ana"
    return job, as_made(said)


@pytest.fixture
def page(desk: Desk, told: tuple[int, int], qtbot: QtBot) -> ItsBackPage:
    """The page on what was told of J-150."""
    page = opened(desk, qtbot)
    choose(page, "J-150")
    return page


def now(shop: ShopRecord, told: tuple[int, int]) -> Judging:
    with shop.reading() as connection:
        found = read_told_judging(connection, *told)
    assert found is not None
    return found


def box(page: QWidget, name: str) -> QComboBox:
    QApplication.processEvents()
    boxes = (one for one in page.findChildren(QComboBox) if one.isVisibleTo(page))
    [found] = [one for one in boxes if one.accessibleName() == name]
    return found


def pick(page: QWidget, name: str, words: str) -> None:
    """Choose a line of a list as a user does."""
    combo = box(page, name)
    lines = [combo.itemText(i) for i in range(combo.count())]
    place = next((i for i, one in enumerate(lines) if one == words), -1)
    if place < 0:
        place = next(i for i, one in enumerate(lines) if one.startswith(words))
    combo.setCurrentIndex(place)
    combo.activated.emit(place)


def test_what_was_told_is_judged_beside_the_earlier_job(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, told: tuple[int, int], qtbot: QtBot
) -> None:
    [row] = [one for one in listed(page) if "J-150" in one]
    assert row.startswith(
        "J-150: told on 3 November 2026\nTIN 07 · 2.0-litre saloon\n14 days, 600 mi\n◇ waits"
    )
    assert says(page, "told on 3 November 2026 at 10,600 mi: “dies at the lights, they put a new")
    assert says(page, "not here: the car was not seen yet")
    assert not button(page, "told 2026-11-03: there is no later job").isEnabled()
    press(page, qtbot, "Same part")
    write(page, qtbot, "Why", "their bill names the cap")
    pick(page, CAUSE, "part died early")
    pick(page, DANGEROUS, "yes")
    settle(desk, qtbot)
    one = now(shop, told)
    assert (one.judgement, one.judged_by, one.why, one.cause_class, one.dangerous) == (
        *(Judgement.SAME_PART, "Ana", "their bill names the cap", "part-died-early"),
        True,
    )
    assert says(page, "It counts as a comeback.")
    assert says(page, "Tell the customer today not to drive it")
    assert "□ same part" in next(one for one in listed(page) if "J-150" in one)
    press(page, qtbot, "Take the judgement back")
    settle(desk, qtbot)
    assert now(shop, told).judgement is None
    shop.undo()
    assert now(shop, told).judgement is Judgement.SAME_PART


def test_what_needs_a_later_visit_is_not_asked_of_it(page: ItsBackPage) -> None:
    shown = {one.text() for one in page.findChildren(QLabel) if one.isVisibleTo(page)}
    for words in ("What it rests on", "What did it cost?", "What helped it along"):
        assert not any(words in one for one in shown)
    for name in ("These are two vehicles", "Confirm it as a second person"):
        with pytest.raises(LookupError):
            button(page, name)


def test_a_visit_is_asked_about_danger_too_and_no_says_nothing_of_the_car(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    choose(page, "J-131 after J-104")
    pick(page, DANGEROUS, "no")
    assert says(page, "nothing of how the car is now")
    with shop.reading() as connection:
        one = read_judging(connection, 1, 2)
    assert one is not None
    assert one.dangerous is False
    choose(page, "J-150")
    assert box(page, DANGEROUS).currentText() == "not said"


def test_another_desk_judged_it_meanwhile(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, told: tuple[int, int], qtbot: QtBot
) -> None:
    news: list[str] = []
    desk.told.connect(lambda one: news.append(str(one)))
    judge_told(shop, *told, "unrelated", by="Ben")
    press(page, qtbot, "Same part")
    assert "What it is: “unrelated” (judged by Ben)" in news[-1]
    assert now(shop, told).judged_by == "Ben"


def test_told_or_seen_on_a_bill_is_chosen_where_the_answer_is_written(
    shop: ShopRecord, desk: Desk, told: tuple[int, int], qtbot: QtBot
) -> None:
    asked = AskedBox(desk)
    qtbot.addWidget(asked)
    asked.show()
    asked.show_job(desk.ask(read_job, told[0]))
    name = "How it became known on 2026-11-03"
    assert box(asked, name).currentText() == "told by the customer"
    pick(asked, name, "seen on another shop's bill")
    assert now(shop, told).later == "on paper 2026-11-03"
    desk.do(note_answer, told[0], "fine")
    asked.show_job(desk.ask(read_job, told[0]))
    boxes = [one for one in asked.findChildren(QComboBox) if "known" in one.accessibleName()]
    assert [one.isVisibleTo(asked) for one in boxes] == [True, False]  # only for the same trouble


def test_the_jobs_page_leads_to_what_was_told(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, told: tuple[int, int], qtbot: QtBot
) -> None:
    say_source(shop, told[1], "paper")
    choose(page, "J-131 after J-104")
    page.show_pair(told[0], 0)
    assert says(page, "seen on another shop's bill on 3 November 2026")
    press(page, qtbot, "Other hands")
    assert now(shop, told).judgement is Judgement.OTHER_HANDS

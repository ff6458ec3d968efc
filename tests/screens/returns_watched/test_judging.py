"""Judging one return on It's Back: the answer, what goes with it, its cost, what will change."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.another_language import another_language
from tests.screens.judging_page import (
    button,
    choose,
    field,
    kept,
    listed,
    opened,
    press,
    says,
    settle,
    write,
)
from tests.watched_shop import a_week_of_returns


@pytest.fixture
def page(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> ItsBackPage:
    """The page on J-131 after J-104; Ana did J-104, and J-131 has hours that nobody pays."""
    ids = a_week_of_returns(shop)
    with shop.deed("Name the repairer") as deed:
        ana = deed.add(Person, name="Ana")
        deed.add(Person, name="Ben")
        deed.change(Job, ids["J-104"], technician_id=ana)
        deed.change(Job, ids["J-131"], unbilled_hours=1.5)
    shop.who = "Odile"
    return opened(desk, qtbot)


def _now(shop: ShopRecord) -> Judging:
    with shop.reading() as connection:
        found = read_judging(connection, 1, 2)
    assert found is not None
    return found


def _choose_cause(page: ItsBackPage, words: str) -> None:
    cause = next(c for c in page.findChildren(QComboBox) if c.accessibleName() == "Main cause")
    place = next(i for i in range(cause.count()) if words in cause.itemText(i))
    cause.setCurrentIndex(place)
    cause.activated.emit(place)


@pytest.mark.parametrize("judgement", list(Judgement))
def test_each_answer_is_one_press_with_its_sentence(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot, judgement: Judgement
) -> None:
    name = judgement.value.capitalize()
    assert says(page, judgement.means)
    press(page, qtbot, f"{name}: {judgement.means}")
    assert kept(shop, "J-104", "J-131").judgement is judgement
    assert says(page, f"Judged “{judgement.value}” by Odile on 2026-11-16")
    assert button(page, f"{name}: {judgement.means}").isChecked()
    counts = "It counts as a comeback." if judgement.is_comeback else "It is not counted"
    assert says(page, counts)
    settle(desk, qtbot)
    assert judgement.value in listed(page)[-1]


def test_a_judgement_can_be_taken_back_and_undone(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    assert says(page, "Nobody has judged it yet")
    press(page, qtbot, "Unrelated")
    press(page, qtbot, "Take the judgement back")
    assert kept(shop, "J-104", "J-131").judgement is None
    assert says(page, "Judged “unrelated” by Odile on 2026-11-16, taken back by Odile on 2026-11-1")
    assert says(page, "It waits for a judgement again.")
    assert not button(page, "Take the judgement back").isEnabled()
    desk.undo()
    assert button(page, "Unrelated").isChecked()
    settle(desk, qtbot)


def test_a_revised_judgement_keeps_the_first_in_view(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    shop.who = "Ben"
    press(page, qtbot, "Unrelated")
    shop.who = "Odile"
    press(page, qtbot, "Same part")
    assert says(
        page,
        "Judged “unrelated” by Ben on 2026-11-16, revised to “same part” by Odile on 2026-11-16. "
        "It counts as a comeback.",
    )
    desk.undo()
    assert says(page, "Judged “unrelated” by Ben on 2026-11-16. It is not counted")
    settle(desk, qtbot)


def test_that_a_judgement_stands_is_answered_in_every_language(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    shop.who = "Ana"
    asked = "Ana did the repair on J-104"
    with another_language():
        press(page, qtbot, "Other hands")
        assert says(page, f"«{asked}")
        press(page, qtbot, "It stands as judged")
        assert not says(page, asked)
        settle(desk, qtbot)
    choose(page, "J-162")
    choose(page, "J-131 after J-104")
    assert not says(page, asked)
    settle(desk, qtbot)


def test_a_line_may_be_several_kinds_at_once(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    assert not says(page, "It is as well:")
    press(page, qtbot, "Same symptom")
    press(page, qtbot, "○  same part")
    assert _now(shop).kinds() == (Judgement.SAME_SYMPTOM, Judgement.SAME_PART)
    assert button(page, "●  same part").isChecked()
    press(page, qtbot, "Unrelated")
    assert not says(page, "It is as well:")
    assert _now(shop).also == ()
    settle(desk, qtbot)


def test_judging_your_own_repair_is_asked_about_and_not_refused(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    shop.who = "Ana"
    press(page, qtbot, "Other hands")
    assert _now(shop).judgement is Judgement.OTHER_HANDS
    asked = "Ana did the repair on J-104 and judged this return. Should someone else look at it"
    assert says(page, asked)
    shop.who = "Ben"
    press(page, qtbot, "Confirm it as a second person")
    assert not says(page, asked)
    assert says(page, "Second look: Ben, 2026-11-16.")
    press(page, qtbot, "Take the second look back")
    assert says(page, asked)
    press(page, qtbot, "It stands as judged")
    assert not says(page, asked)
    settle(desk, qtbot)
    choose(page, "J-162")
    choose(page, "J-131 after J-104")
    assert not says(page, asked)


def test_the_same_person_cannot_confirm_and_hears_why(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    told: list[object] = []
    desk.told.connect(told.append)
    shop.who = "Ben"
    press(page, qtbot, "Foretold")
    press(page, qtbot, "Confirm it as a second person")
    assert "A second look takes a second person." in str(told[-1])
    assert _now(shop).second_look == ""
    settle(desk, qtbot)


def test_words_save_themselves_and_stay_with_their_return(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    write(page, qtbot, "Why", "plug left hanging")
    write(page, qtbot, "What it rests on", "old part kept")
    write(page, qtbot, "First repairer's own view", "it clicked in")
    assert says(page, "Ana did the first repair.")
    qtbot.keyClicks(field(page, "What will be done differently"), "look twice")
    choose(page, "J-162 after J-140")
    now = _now(shop)
    assert (now.why, now.evidence, now.first_view) == (
        "plug left hanging",
        "old part kept",
        "it clicked in",
    )
    assert now.change.words == "look twice"
    for name in ("Why", "What it rests on", "What will be done differently"):
        assert field(page, name).toPlainText() == ""
    settle(desk, qtbot)


def test_one_main_cause_and_any_number_that_helped(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    _choose_cause(page, "fitted badly")
    press(page, qtbot, "○  left unproven")
    press(page, qtbot, "○  badly told")
    now = _now(shop)
    assert (now.cause_class, now.helping) == ("fitted-badly", ("left-unproven", "badly-told"))
    with pytest.raises(LookupError):
        button(page, "○  fitted badly")
    _choose_cause(page, "left unproven")
    assert _now(shop).helping == ("badly-told",)
    settle(desk, qtbot)


def test_a_cause_that_is_not_ours_leaves_the_count_and_says_so(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    press(page, qtbot, "Same symptom")
    _choose_cause(page, "other hands or use after")
    assert says(page, "This cause is not ours: the return stays written down and leaves the count")
    assert says(page, "It stays written down and is not counted: its cause is not ours.")
    assert not kept(shop, "J-104", "J-131").is_comeback
    settle(desk, qtbot)
    assert listed(page)[-1].endswith("○ same symptom")


def test_the_cost_stands_apart_and_is_added_up(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    preset = (
        "$60.00 an hour is the price that the program comes with: set what an hour costs you "
        "on House Rules, “hour cost”."
    )
    assert says(page, f"Nobody has written what it cost. {preset}")
    press(page, qtbot, "Take 1.5 hours from J-131")
    write(page, qtbot, "Parts", "40,10")
    write(page, qtbot, "Towing", "85")
    write(page, qtbot, "Got back", "30")
    assert says(
        page,
        "Hours: 1.5 h at $60.00, $90.00. Cash out: $125.10. Got back: $30.00. Total: $185.10. "
        f"{preset}",
    )
    assert field(page, "Hours nobody pays").text() == "1.5"
    assert field(page, "Towing").text() == "85"  # as it was typed
    write(page, qtbot, "In one sum", "10")
    assert says(page, "In one sum: $10.00. Got back: $30.00. Total: $195.10.")
    assert kept(shop, "J-104", "J-131").cost_cents == 1000
    settle(desk, qtbot)


@pytest.mark.parametrize(
    ("name", "typed", "says_so"),
    [
        ("Parts", "a lot", "120.50"),
        ("Goodwill", "12.", "is not an amount of money"),
        ("Hours nobody pays", "1h", "Type a number such as 1.5"),
        ("Hours nobody pays", "10001", "10,000"),
        ("Due on", "16.11.26", "Type it like 2026-11-16."),
        ("Done on", "2026-12-24", None),
    ],
)
def test_what_is_not_accepted_stays_typed_and_says_what_is(
    page: ItsBackPage,
    shop: ShopRecord,
    desk: Desk,
    qtbot: QtBot,
    name: str,
    typed: str,
    says_so: str | None,
) -> None:
    told: list[object] = []
    desk.told.connect(told.append)
    write(page, qtbot, name, typed)
    press(page, qtbot, "Unrelated")  # the page is read again meanwhile
    assert field(page, name).text() == typed
    assert says(page, says_so) if says_so else told
    now = _now(shop)
    assert not now.cost.is_written
    assert not now.change.is_said
    settle(desk, qtbot)


def test_a_promise_of_change_is_followed_until_it_helped(
    page: ItsBackPage, shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    write(page, qtbot, "What will be done differently", "pull at every plug")
    assert says(page, "Not done yet; no day was named.")
    write(page, qtbot, "Who does it", "Ben")
    write(page, qtbot, "Due on", "2026-11-14")
    assert says(page, "Not done, 2 days late.")
    write(page, qtbot, "Done on", "2026-11-16")
    write(page, qtbot, "Look on whether it helped", "2027-02-01")
    assert says(page, "Done on 2026-11-16, to be looked at on 2027-02-01.")
    assert _now(shop).change.by == "Ben"
    for _ in range(5):
        desk.undo()
    assert not _now(shop).change.is_said
    assert field(page, "Due on").text() == ""
    settle(desk, qtbot)

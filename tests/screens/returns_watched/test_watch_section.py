"""Under Watch on a job's page: asking the customer, and what suppliers owe."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox
from pytestqt.qtbot import QtBot
from sqlalchemy import select

from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.customer_actions import take_answer_out
from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid
from desktop_app.returns_watched.money_owed_actions import (
    take_owed_out,
    write_next_step,
    write_owed_amount,
)
from desktop_app.returns_watched.owed import Owed, State, What
from desktop_app.returns_watched.screen.watch_section import WatchSection
from desktop_app.returns_watched.stored_customers_asked import answers_of_job
from desktop_app.returns_watched.stored_money_owed import owed_for_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.screens.judging_page import button, field, press, says, write
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle


class Shown(WatchSection):
    """The section as the job's page keeps it: read again after each deed."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, {})
        self.desk, self.job_id = desk, 0
        desk.changed.connect(lambda _done: self.open_job(self.job_id))

    def open_job(self, job_id: int) -> None:
        """Show a job."""
        self.job_id = job_id
        self.show_job(self.desk.ask(read_job, job_id))


@pytest.fixture
def section(shop: ShopRecord, qtbot: QtBot) -> Iterator[Shown]:
    ids = a_week_of_returns(shop)
    desk = Desk(shop)
    section = Shown(desk)
    qtbot.addWidget(section)
    section.resize(1000, 700)
    section.show()
    section.open_job(ids["J-104"])
    yield section
    desk.errands.finish()


def _said(shop: ShopRecord) -> tuple[CustomerSaid, ...]:
    with shop.reading() as connection:
        return answers_of_job(connection, 1)


def _owed(shop: ShopRecord) -> tuple[Owed, ...]:
    with shop.reading() as connection:
        return owed_for_job(connection, 1)


def test_one_press_notes_what_the_customer_said(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    shop.who = "Ana"
    press(section, qtbot, "The customer was asked: same trouble")
    assert says(section, "2026-11-16, asked by Ana")
    write(section, qtbot, "Odometer as told", "119,000 mi")
    write(section, qtbot, "In the customer's words", "again in the rain")
    [said] = _said(shop)
    assert (said.answer, said.odometer_told, said.words) == (
        Answer.SAME_TROUBLE,
        119_000,
        "again in the rain",
    )
    press(section, qtbot, "Take the answer of 2026-11-16 out")
    assert _said(shop) == ()
    assert not says(section, "asked by Ana")
    section.desk.undo()
    assert field(section, "In the customer's words").text() == "again in the rain"


def test_an_odd_odometer_is_asked_about_and_nonsense_stays_typed(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    with shop.deed("It left with this reading") as deed:
        deed.change(Job, 1, odometer_out=118_420)
    section.open_job(1)
    press(section, qtbot, "The customer was asked: fine")
    write(section, qtbot, "Odometer as told", "18,900")
    assert says(section, "Lower than when the car was here (118,420 mi). Was it heard right?")
    write(section, qtbot, "Odometer as told", "many")
    assert field(section, "Odometer as told").text() == "many"
    assert says(section, "“many” is not an odometer reading.")
    assert _said(shop)[0].odometer_told == 18_900
    write(section, qtbot, "In the customer's words", "fine so far")  # shown again meanwhile
    assert says(section, "“many” is not an odometer reading.")
    write(section, qtbot, "Odometer as told", "")
    assert _said(shop)[0].odometer_told is None


def test_of_a_car_that_came_back_nobody_is_asked_here(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    asked = "How does the car do?"
    assert says(section, asked)
    with shop.reading() as connection:
        ids = {row.number: row.id for row in connection.execute(select(Job.number, Job.id))}
    section.open_job(ids["J-131"])
    assert says(section, asked)  # nobody has judged that it came back
    judge_return(shop, ids["J-131"], ids["J-160"], "same part")
    section.open_job(ids["J-131"])
    assert says(section, "The car came back as J-160. How it does is asked there")
    assert not says(section, asked)
    with pytest.raises(LookupError):
        button(section, "The customer was asked: fine")
    judge_return(shop, ids["J-131"], ids["J-160"], "unrelated")
    section.open_job(ids["J-131"])
    assert says(section, asked)
    assert button(section, "The customer was asked: fine")


def test_an_answer_can_be_changed(section: Shown, shop: ShopRecord, qtbot: QtBot) -> None:
    press(section, qtbot, "The customer was asked: not reached")
    [answer] = [c for c in section.findChildren(QComboBox) if "Answer of" in c.accessibleName()]
    answer.setCurrentIndex(0)
    answer.activated.emit(0)
    assert _said(shop)[0].answer is Answer.FINE


def test_a_car_that_is_here_is_not_asked_after(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    here = job(shop, vehicle(shop, plate="TIN 9"), "J-9", "2026-11-15")
    assert button(section, "The customer was asked: fine")
    section.open_job(here)
    with pytest.raises(LookupError):
        button(section, "The customer was asked: fine")
    assert not says(section, "Owed by suppliers")


def test_what_a_supplier_owes_is_written_and_ended(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    press(section, qtbot, "The supplier owes a core: distributor rotor")
    name = "core, distributor rotor"
    assert says(section, "Core for distributor rotor, from the supplier: since 2026-11-16, 0 days.")
    write(section, qtbot, f"Amount, {name}", "35")
    write(section, qtbot, f"Next step, {name}", "send it back")
    write(section, qtbot, f"Amount, {name}", "a lot")
    assert field(section, f"Amount, {name}").text() == "a lot"
    assert says(section, "Type a number such as 120")
    [owed] = _owed(shop)
    assert (owed.what, owed.amount_cents, owed.next_step) == (What.CORE, 3_500, "send it back")
    [far] = [c for c in section.findChildren(QComboBox) if name in c.accessibleName()]
    paid = far.findData("paid")
    far.setCurrentIndex(paid)
    far.activated.emit(paid)
    assert _owed(shop)[0].state is State.PAID
    assert says(section, "ended on 2026-11-16")
    press(section, qtbot, f"Take out: {name}")
    assert _owed(shop) == ()


@pytest.mark.parametrize(
    ("answer", "kept"),
    [("Keep what I typed", (900, "ask")), ("Keep what was written", (4500, "x"))],
)
def test_of_two_amounts_and_steps_a_person_chooses(
    section: Shown, shop: ShopRecord, qtbot: QtBot, answer: str, kept: tuple[int, str]
) -> None:
    press(section, qtbot, "The supplier owes a core: distributor rotor")
    write_owed_amount(shop, 1, 4500)  # at the other desk
    write(section, qtbot, "Amount, core, distributor rotor", "9")
    assert says(section, "meanwhile: 45.00. Typed here, not kept: “9”.")
    press(section, qtbot, f"{answer}: Amount, core, distributor rotor")
    write_next_step(shop, 1, "x")
    write(section, qtbot, "Next step, core, distributor rotor", "ask")
    press(section, qtbot, f"{answer}: Next step, core, distributor rotor")
    [owed] = _owed(shop)
    assert (owed.amount_cents, owed.next_step) == kept
    assert field(section, "Amount, core, distributor rotor").text() in ("9", "45.00")
    assert not says(section, "Typed here, not kept")


def test_words_typed_for_one_job_do_not_reach_another(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    press(section, qtbot, "The customer was asked: fine")
    qtbot.keyClicks(field(section, "In the customer's words"), "runs well")
    section.open_job(2)
    assert _said(shop)[0].words == "runs well"
    assert not says(section, "In the customer's words")
    section.open_job(1)
    assert field(section, "In the customer's words").text() == "runs well"


def test_nothing_came_back_before_a_person_said_so(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    assert says(section, "May have come back as J-131: 41 days, 880 mi.")
    assert not says(section, "Came back as")
    section.desk.do(judge_return, 1, 2, "same symptom")
    assert says(section, "Came back as J-131")
    section.desk.do(judge_return, 1, 2, "unrelated")
    assert says(section, "Seen again as J-131")
    with qtbot.waitSignal(section.judge_wanted) as wanted:
        press(section, qtbot, "Then and now: J-104 and J-131")
    assert wanted.args == [1, 2]


def test_a_job_may_be_promised_calendar_months_or_days(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    here = job(shop, vehicle(shop, plate="TIN 9"), "J-9", "2026-11-15")
    section.open_job(here)
    write(section, qtbot, "Window in months", "12")
    assert field(section, "Window in days").text() == ""
    assert _window(shop, here) == (366, 12, "job")
    write(section, qtbot, "Window in days", "60")
    assert field(section, "Window in months").text() == ""
    assert _window(shop, here) == (60, None, "job")


def test_a_job_may_be_promised_another_distance_and_another_end(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    here = job(shop, vehicle(shop, plate="TIN 9"), "J-9", "2026-11-15")

    def ends() -> tuple[object, ...]:
        kept = read_job_kept(shop, here)
        return kept.window_miles, kept.window_rule

    section.open_job(here)
    write(section, qtbot, "Window by distance", "5,000")
    assert ends() == (5000, "first")
    write(section, qtbot, "Window by distance", "far")
    assert says(section, "Accepted: a whole number, such as 3,000.")
    assert field(section, "Window by distance").text() == "far"
    assert ends() == (5000, "first")
    [rule] = [c for c in section.findChildren(QComboBox) if c.accessibleName() == "The window ends"]
    qtbot.keyClick(rule, Qt.Key.Key_Down)
    assert ends() == (5000, "both")
    qtbot.keyClick(rule, Qt.Key.Key_Up)
    write(section, qtbot, "Window by distance", "")
    assert ends() == (0, "first")


def test_a_window_in_months_is_said_with_its_months_once_the_car_has_left(
    section: Shown, shop: ShopRecord
) -> None:
    months = {"window_days": 365, "window_months": 12, "window_from": "shop"}
    gone = job(shop, vehicle(shop, plate="TIN 9"), "J-9", "2026-11-10", "2026-11-10", **months)
    section.open_job(gone)
    assert says(section, "365 days or 3,000 mi, whichever ends first. It left 6 days ago.")
    assert says(section, "It is the shop's promise, said as 12 calendar months.")


def read_job_kept(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        kept = read_job(connection, job_id)
    assert kept is not None
    return kept


def _window(shop: ShopRecord, job_id: int) -> tuple[object, ...]:
    with shop.reading() as connection:
        wanted = select(Job.window_days, Job.window_months, Job.window_from)
        return tuple(connection.execute(wanted.where(Job.id == job_id)).one())


def test_words_half_typed_into_an_answer_that_is_taken_out_elsewhere_are_kept_and_told(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    told: list[str] = []
    section.desk.told.connect(lambda news: told.append(str(news)))
    press(section, qtbot, "The customer was asked: fine")
    write(section, qtbot, "Odometer as told", "abc 12 (she will ring)")
    take_answer_out(shop, _said(shop)[0].id)
    section.open_job(1)
    assert "Odometer as told “abc 12 (she will ring)”" in told[-1]
    assert says(section, "Odometer as told “abc 12 (she will ring)”")
    press(section, qtbot, "Put these words away")
    assert not says(section, "she will ring")


def test_words_half_typed_into_what_is_owed_are_kept_and_told(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    told: list[str] = []
    section.desk.told.connect(lambda news: told.append(str(news)))
    press(section, qtbot, "The supplier owes a core: distributor rotor")
    amount = "Amount, core, distributor rotor"
    write(section, qtbot, amount, "about 12 or so")
    take_owed_out(shop, _owed(shop)[0].id)
    section.open_job(1)
    assert f"{amount} “about 12 or so”" in told[-1]
    assert says(section, f"{amount} “about 12 or so”")


def test_a_car_seen_fine_after_its_window_is_proved_by_time(
    section: Shown, shop: ShopRecord, qtbot: QtBot
) -> None:
    car = vehicle(shop, plate="TIN 9")
    first = job(shop, car, "J-9", "2026-03-01", "2026-03-02")
    nothing = {"cause": "", "correction": "", "cause_found": 0}
    bare = job(shop, car, "J-10", "2026-03-01", "2026-03-02", **nothing)
    section.open_job(first)
    assert not says(section, "Proof 5, time")
    job(shop, car, "J-11", "2026-09-01", "2026-09-01", system="brakes", concern="new tyres")
    section.open_job(first)
    assert says(section, "Proof 5, time: the car was seen fine after its window had ended.")
    section.open_job(bare)  # nothing was put right: there is nothing to prove
    assert says(section, "seen fine")
    assert not says(section, "Proof 5, time")

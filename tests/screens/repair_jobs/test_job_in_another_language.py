"""A job's page in another language keeps the same words as in English."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import TypeVar

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.hand_over import refit_unanswered
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.back_on_section import BackOnSection
from desktop_app.repair_jobs.screen.gone_section import GoneSection
from desktop_app.repair_jobs.screen.heard_section import HeardSection
from desktop_app.repair_jobs.screen.job_page import JobPage
from desktop_app.repair_jobs.screen.proof_section import ProofSection
from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.repair_jobs.stored_reading import events_of, read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.another_language import another_language

W = TypeVar("W", bound=QWidget)
NUTS, WET = "Nuts to the maker's torque.", "Idle it wet."  # as part kinds ask for them


@dataclass
class Page:
    """The page of job 1, and what of it is kept."""

    bot: QtBot
    shop: ShopRecord
    page: JobPage

    def named(self, kind: type[W], name: str) -> W:
        return next(one for one in self.page.findChildren(kind) if one.accessibleName() == name)

    def press(self, name: str) -> None:
        buttons = self.page.findChildren(QPushButton)
        button = next(b for b in buttons if name == b.accessibleName() or b.text().endswith(name))
        self.bot.mouseClick(button, Qt.MouseButton.LeftButton)

    def kept(self) -> JobView:
        with self.shop.reading() as connection:
            return read_job(connection, 1)


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[Page]:
    actions.write_up(shop, WriteUp("pulls", plate="TH 1", odometer=900, conditions=("damp",)))
    actions.choose_system(shop, 1, "brakes")
    desk = Desk(shop)
    with another_language():
        sections: list[tuple[str, QWidget]] = [
            ("Heard", HeardSection(desk, lambda _words: (), lambda symptom: symptom)),
            ("Back on", BackOnSection(desk, lambda _job: [(NUTS, True)])),
            ("Proof", ProofSection(desk, lambda _job: (WET,))),
            ("Gone", GoneSection(desk, lambda _job: (), lambda _job: [(NUTS, True)])),
        ]
        page = JobPage(desk, sections, lambda _job: "", lambda _job: [])
        qtbot.addWidget(page)
        page.show()
        page.open_job(1)
        yield Page(qtbot, shop, page)
        desk.errands.finish()


def test_nothing_was_declined(at: Page) -> None:
    at.press("«Nothing was declined or left undone»")
    assert at.kept().declined == "nothing"
    field = at.named(QPlainTextEdit, "«Declined or left undone»")
    assert field.toPlainText() == "«nothing»"


def test_why_the_odometer_cannot_be_read(at: Page) -> None:
    field = at.named(QLineEdit, "«Odometer in»")
    field.clear()
    at.bot.keyClicks(field, "«display dead»")
    at.bot.keyClick(field, Qt.Key.Key_Return)
    assert at.kept().odometer_unread == "display dead"
    assert field.text() == "«display dead»"


def test_a_code_with_its_kind(at: Page) -> None:
    kind = at.named(QComboBox, "«What kind of code, «after repair»»")
    kind.setCurrentText("«pending»")
    field = at.named(QLineEdit, "«Trouble codes, «after repair»»")
    at.bot.keyClicks(field, "P0300")
    at.bot.keyClick(field, Qt.Key.Key_Return)
    (code,) = at.kept().codes
    assert (code.code, code.kind, code.stage) == ("P0300", "pending", "after repair")
    at.press("«Take out P0300, «pending»»")
    assert at.kept().codes == ()


def test_a_check_that_was_made(at: Page) -> None:
    at.press("«pedal held for a minute, no leak»: «done»")
    (check,) = at.kept().checks
    assert (check.words, check.outcome) == ("pedal held for a minute, no leak", "done")


def test_checks_that_part_kinds_ask_for(at: Page) -> None:
    at.press(f"«{NUTS}»: «done»")
    at.press(f"«{WET}»: «not needed»")
    kept = {(one.kind, one.words, one.outcome) for one in at.kept().checks}
    assert kept == {("refit", NUTS, "done"), ("proof", WET, "not needed")}
    assert refit_unanswered(at.kept(), [(NUTS, True)]) == ()


def test_a_check_that_was_kept_as_it_was_spoken_counts_and_is_taken_back(at: Page) -> None:
    with at.shop.deed("Tick a check") as deed:
        deed.add(JobCheck, job_id=1, kind="refit", words=f"«{NUTS}»", outcome="done")
    at.page.open_job(1)
    assert at.named(QPushButton, f"«{NUTS}»: «done»").isChecked()
    assert refit_unanswered(at.kept(), [(NUTS, True)]) == ()
    at.press(f"«{NUTS}»: «done»")
    assert at.kept().checks == ()


def test_what_happened_to_the_car(at: Page) -> None:
    at.press("«Odometer replaced, or car sold»")
    at.named(QComboBox, "«What happened»").setCurrentText("«sold»")
    at.press("«Note what happened to the car»")
    with at.shop.reading() as connection:
        assert [event.kind for event in events_of(connection, 1)] == ["sold"]

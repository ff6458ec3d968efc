"""What was done here before: every number opens to the jobs behind it, and there is a way back."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QListView
from pytestqt.qtbot import QtBot

from desktop_app.repair_jobs.stored import Job, JobSymptom
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.record import ShopRecord
from desktop_app.symptom_search.led_there import Led, LedThere
from desktop_app.symptom_search.screen.jobs_behind import Behind
from desktop_app.symptom_search.screen.led_box import LedBox
from tests.screens.searching import Sought, search_page, write_old_jobs

ROTOR = "distributor rotor"


@pytest.fixture
def at(shop: ShopRecord, qtbot: QtBot) -> Iterator[Sought]:
    """The search's page, on which the misfires were asked for."""
    write_old_jobs(shop)
    with search_page(qtbot, shop) as sought:
        sought.ask("misses", 3)
        yield sought


def test_each_number_opens_to_its_jobs(at: Sought) -> None:
    for name, jobs in (
        (f"{ROTOR}: 3 jobs", ["J-003", "J-002", "J-001"]),
        (f"{ROTOR}: 3 settled", ["J-003", "J-002", "J-001"]),
        (f"{ROTOR}: 1 came back", ["J-001"]),
    ):
        at.open(name)
        assert [row[:5] for row in at.rows()] == jobs


def test_a_long_list_says_that_it_is_cut_off() -> None:
    many = Behind("Cap: 1,234 jobs", range(1234, 0, -1))
    assert many.shown() == tuple(range(1234, 1034, -1))
    assert many.heading() == "Cap: 1,234 jobs. These are the newest 200 of 1,234."
    assert Behind("Cap: looked inside.", (3,)).heading() == "Cap: looked inside."


def test_what_was_read_of_many_jobs_is_said(qtbot: QtBot) -> None:
    box = LedBox("Cap", LedThere((Led("Looked inside", (9, 8)),), (), 2, 0), 2000, 5000)
    qtbot.addWidget(box)
    assert "Read from the newest 2,000 of 5,000 jobs." in [
        label.text() for label in box.findChildren(QLabel)
    ]


def test_escape_goes_back_to_the_jobs_found_and_then_to_an_empty_field(at: Sought) -> None:
    before = at.rows()
    at.open(f"{ROTOR}: 1 came back")
    found = at.named(QListView, "Jobs found")
    assert found.currentIndex().row() == 0  # the keys go on in the list
    at.bot.keyClick(found, Qt.Key.Key_Escape)
    assert at.rows() == before
    assert at.field.text() == "misses"
    at.open(f"{ROTOR}: 1 came back")
    at.bot.keyClick(at.field, Qt.Key.Key_Escape)
    assert at.rows() == before
    at.bot.keyClick(at.field, Qt.Key.Key_Escape)
    assert at.field.text() == ""


def test_the_button_goes_back_too_and_is_there_only_then(at: Sought) -> None:
    def back() -> list[str]:
        return [name for name in at.buttons() if name == "Back to the jobs found"]

    assert not back()
    before = at.rows()
    at.open(f"{ROTOR}: 1 came back")
    assert back()
    at.press("Back to the jobs found")
    assert at.rows() == before
    assert not back()


def test_a_job_behind_a_number_opens(at: Sought) -> None:
    at.open(f"{ROTOR}: 1 came back")
    with at.bot.waitSignal(at.shown.job_chosen) as chosen:
        at.bot.keyClick(at.named(QListView, "Jobs found"), Qt.Key.Key_Return)
    assert chosen.args == [1]


def test_another_question_closes_what_was_opened(at: Sought) -> None:
    at.open(f"{ROTOR}: 1 came back")
    at.field.setFocus()
    at.bot.keyClicks(at.field, " damp")
    at.bot.waitUntil(lambda: at.says("best first") and len(at.rows()) == 3)


def test_a_deed_meanwhile_leaves_it_open(at: Sought) -> None:
    at.open(f"{ROTOR}: 1 came back")

    def work(deed: Deed) -> None:
        deed.change(Job, 4, concern="misses", correction="other plugs")
        deed.add(JobSymptom, job_id=4, symptom="misfire-random")

    with at.bot.waitSignal(at.desk.changed):
        at.desk.do(lambda record: record.do("Write", work))
    at.offers("other plugs: 1 job")
    assert [row[:5] for row in at.rows()] == ["J-001"]
    at.press("Back to the jobs found")
    assert len(at.rows()) == 4


def test_what_led_there_is_counted_and_opens_alike(at: Sought) -> None:
    at.press(f"{ROTOR}: what led there")
    at.bot.waitUntil(lambda: at.says("Looked at first, of 2 jobs with a finding:"))
    assert at.says("Codes found, of 3 jobs with a code:")
    assert at.says("Few jobs: a hint, no more.")
    at.press(f"{ROTOR}: Looked into the cap.: 2 jobs")
    at.bot.waitUntil(lambda: [row[:5] for row in at.rows()] == ["J-002", "J-001"])
    at.press(f"{ROTOR}: P0300: 3 jobs")
    at.bot.waitUntil(lambda: [row[:5] for row in at.rows()] == ["J-003", "J-002", "J-001"])


def test_where_nothing_led_there_it_is_said(at: Sought) -> None:
    at.ask("squeal", 3, "squeal")
    at.press("cleaned and greased: what led there")
    at.bot.waitUntil(lambda: at.says("No finding and no code is written in these jobs."))


def test_hits_without_a_fix_say_why_none_is_counted(at: Sought) -> None:
    at.ask("rain greased", 5)
    assert at.says("no fix is counted")

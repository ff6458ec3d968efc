"""Only some of the old jobs: chosen, shown as pieces, taken out, and kept over a while."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from tests.screens.searching import Sought, search_page, write_old_jobs

VEHICLE, SYSTEM, TIME = "Only this kind of vehicle", "Only this system", "Only this time"


@pytest.fixture
def at(shop: ShopRecord, qtbot: QtBot) -> Iterator[Sought]:
    """The search's page, on which the misfires were asked for."""
    write_old_jobs(shop)
    with search_page(qtbot, shop) as sought:
        sought.ask("misses", 3)
        yield sought


def numbers(at: Sought) -> list[str]:
    return sorted(row[:5] for row in at.rows())


def test_the_shops_own_kinds_of_vehicles_are_offered_and_keep_others_out(at: Sought) -> None:
    at.choose(VEHICLE, "diesel estate")
    at.bot.waitUntil(lambda: numbers(at) == ["J-001"])
    at.offers("Take out only: diesel estate")
    at.press("Take out only: diesel estate")
    at.bot.waitUntil(lambda: len(numbers(at)) == 3)
    assert "Take out only: diesel estate" not in at.buttons()


def test_a_system_without_such_jobs_says_what_to_do(at: Sought) -> None:
    at.choose(SYSTEM, "Brakes")
    at.bot.waitUntil(lambda: at.says("No old job that is chosen above says this."))
    assert numbers(at) == []
    assert not at.says("What was done here before")


def test_the_last_years_leave_old_jobs_out_of_the_counts_too(at: Sought) -> None:
    at.choose(TIME, "Last 3 years")
    at.bot.waitUntil(lambda: numbers(at) == ["J-002", "J-003"])
    at.offers("distributor rotor: 2 jobs")


def test_from_and_to_are_typed_as_days_months_or_years(at: Sought) -> None:
    at.choose(TIME, "From … to …")
    until = at.named(QLineEdit, "To this day, month or year")
    at.bot.keyClicks(until, "2019")
    at.bot.waitUntil(lambda: numbers(at) == ["J-001"])
    at.offers("Take out only: to 2019-12-31")
    at.bot.keyClicks(at.named(QLineEdit, "From this day, month or year"), "2019-03-05")
    at.bot.waitUntil(lambda: numbers(at) == [])


def test_what_is_no_day_is_said_and_keeps_nothing_out(at: Sought) -> None:
    at.choose(TIME, "From … to …")
    since = at.named(QLineEdit, "From this day, month or year")
    at.bot.keyClicks(since, "2026-13")
    at.bot.waitUntil(lambda: at.says("“2026-13” is no day."))
    at.bot.waitUntil(lambda: len(numbers(at)) == 3)
    since.selectAll()
    at.bot.keyClicks(since, "2026")
    at.bot.waitUntil(lambda: numbers(at) == ["J-002", "J-003"])
    assert not at.says("is no day")
    at.bot.keyClicks(at.named(QLineEdit, "To this day, month or year"), "2025")
    at.bot.waitUntil(lambda: at.says("That ends before it begins"))


def test_backspace_at_the_fields_start_takes_the_pieces_out_one_by_one(at: Sought) -> None:
    at.choose(SYSTEM, "Ignition")
    at.offers("Take out only: Ignition")
    at.field.setFocus()
    at.bot.keyClick(at.field, Qt.Key.Key_Home)
    at.bot.keyClick(at.field, Qt.Key.Key_Backspace)
    at.bot.waitUntil(lambda: "Take out only: Ignition" not in at.buttons())
    assert at.field.text() == "misses"
    at.bot.keyClick(at.field, Qt.Key.Key_Backspace)
    assert at.field.text() == ""
    at.bot.keyClick(at.field, Qt.Key.Key_Backspace)  # nothing is left to take out
    at.bot.waitUntil(lambda: at.says("") and len(at.rows()) > 3)


def test_a_filter_stays_while_other_things_are_asked_and_is_not_silent(at: Sought) -> None:
    at.choose(VEHICLE, "diesel estate")
    at.bot.waitUntil(lambda: numbers(at) == ["J-001"])
    at.field.setFocus()
    at.bot.keyClick(at.field, Qt.Key.Key_Escape)
    at.bot.waitUntil(lambda: at.says("All jobs, whatever is chosen above"))
    at.offers("Take out only: diesel estate")
    at.bot.keyClicks(at.field, "rain")
    at.bot.waitUntil(lambda: numbers(at) == ["J-001"])

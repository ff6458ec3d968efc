"""Ask the Old Jobs, as it is used: typed into, walked through by keyboard, opened."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QAccessible
from PySide6.QtWidgets import QApplication, QLabel, QLineEdit, QListView, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import follow
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job, JobSymptom, Vehicle, Visit
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.look import dress
from desktop_app.symptom_search.filters import ALL_JOBS, Filters
from desktop_app.symptom_search.found import Found
from desktop_app.symptom_search.screen.ask_page import AskPage
from desktop_app.symptom_search.screen.hit_rows import HitRows
from desktop_app.symptom_search.screen.index_errand import IndexErrand
from desktop_app.symptom_search.screen.old_jobs import OldJobs
from desktop_app.symptom_search.screen.search_place import SearchPlace
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary

MORNING = "2026-11-16T08:00:00+00:00"


def write_job(record: ShopRecord, number: str, concern: str, left: str | None = MORNING) -> None:
    """Write one job with a fitted rotor."""

    def work(deed: Deed) -> None:
        job = deed.add(
            Job,
            number=number,
            visit_id=deed.add(
                Visit,
                vehicle_id=deed.add(
                    Vehicle, plate="AB12 CDE", description="hatchback", odometer_unit="mi"
                ),
                came_at=MORNING,
                left_at=left,
            ),
            concern=concern,
            cause="rotor burned",
            correction="rotor replaced",
            left_at=left,
            window_days=90,
            window_miles=3000,
            window_rule="first",
        )
        for group in shop_vocabulary().groups_in(concern):
            deed.add(JobSymptom, job_id=job, symptom=group.id)
        deed.add(Pair, job_id=job, part_kind="distributor-rotor")

    record.do(f"Write {number}", work)


@pytest.fixture
def page(shop: ShopRecord, qtbot: QtBot) -> Iterator[AskPage]:
    """The page on a shop of two jobs, J-1 still here."""
    kinds = load_kinds([resource_path("part_kinds")]).kinds
    words = shop_vocabulary()
    follow(shop)
    write_job(shop, "J-1", "misses <b>badly</b> in the rain", None)
    write_job(shop, "J-2", "brakes squeal in the rain")
    desk = Desk(shop)
    shown = SearchPlace(desk, lambda: words, lambda: kinds, lambda _job: None, QWidget).page()
    qtbot.addWidget(shown)
    shown.resize(1100, 760)
    shown.desk = desk
    shown.show()
    shown.came_here()
    yield shown
    desk.errands.finish()


def named(page: QWidget, kind: type, name: str) -> QWidget:
    """Return the control with this accessible name."""
    return next(w for w in page.findChildren(kind) if w.accessibleName() == name)


def rows(page: AskPage) -> list[str]:
    """Return what the list says, row by row."""
    model = named(page, QListView, "Jobs found").model()
    return [str(model.index(i, 0).data()) for i in range(model.rowCount())]


def words_shown(page: AskPage) -> str:
    """Return all visible labels."""
    return "\n".join(label.text() for label in page.findChildren(QLabel) if label.isVisible())


def test_an_empty_field_shows_who_is_here_and_the_latest(page: AskPage) -> None:
    shown = rows(page)
    assert shown[0] == "In the shop now"
    assert "J-1" in shown[1]
    assert shown[2] == "Latest jobs"
    assert "J-2" in shown[3]


def test_typing_finds_shows_how_it_was_read_and_what_fixed_it(page: AskPage, qtbot: QtBot) -> None:
    qtbot.keyClicks(named(page, QLineEdit, "Ask the old jobs"), "squeal rain")
    qtbot.waitUntil(lambda: len(rows(page)) == 3 and "J-2" in rows(page)[0])
    taken = [b.accessibleName() for b in page.findChildren(QPushButton) if b.isVisible()]
    assert "Take out condition: rain" in taken
    assert "What was done here before" in words_shown(page)
    assert "none is settled yet" in words_shown(page)


def test_a_piece_is_taken_out_by_a_press(page: AskPage, qtbot: QtBot) -> None:
    field = named(page, QLineEdit, "Ask the old jobs")
    qtbot.keyClicks(field, "squeal rain ")
    qtbot.waitUntil(lambda: len(rows(page)) == 3 and "J-2" in rows(page)[0])
    button = named(page, QPushButton, "Take out condition: rain")
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(rows(page)) == 1)
    assert field.text().strip() == "squeal"


def test_down_and_enter_open_a_job_without_a_mouse(page: AskPage, qtbot: QtBot) -> None:
    field = named(page, QLineEdit, "Ask the old jobs")
    qtbot.keyClicks(field, "rain")
    qtbot.waitUntil(lambda: len(rows(page)) == 2 and "why" not in rows(page)[0])
    found = named(page, QListView, "Jobs found")
    qtbot.keyClick(field, Qt.Key.Key_Down)
    assert found.currentIndex().row() == 0
    qtbot.keyClick(found, Qt.Key.Key_Down)
    wanted = found.currentIndex().data(HitRows.HIT).job_id
    with qtbot.waitSignal(page.job_chosen) as chosen:
        qtbot.keyClick(found, Qt.Key.Key_Return)
    assert chosen.args == [wanted]
    qtbot.keyClick(found, Qt.Key.Key_Up)
    qtbot.keyClick(found, Qt.Key.Key_Up)
    assert field.hasFocus() or page.focusWidget() is field


def test_a_job_that_was_pressed_is_opened_by_a_button(page: AskPage, qtbot: QtBot) -> None:
    qtbot.keyClicks(named(page, QLineEdit, "Ask the old jobs"), "rain")
    qtbot.waitUntil(lambda: len(rows(page)) == 2 and "why" not in rows(page)[0])
    found = named(page, QListView, "Jobs found")
    [button] = [one for one in page.findChildren(QPushButton) if one.text() == "Open the job"]
    assert not button.isVisible()
    first = found.model().index(0, 0)
    place = found.visualRect(first).center()
    qtbot.mouseClick(found.viewport(), Qt.MouseButton.LeftButton, pos=place)
    with qtbot.waitSignal(page.job_chosen) as chosen:
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert chosen.args == [first.data(HitRows.HIT).job_id]


def test_enter_on_a_job_number_opens_that_job(page: AskPage, qtbot: QtBot) -> None:
    field = named(page, QLineEdit, "Ask the old jobs")
    qtbot.keyClicks(field, "j-2")
    with qtbot.waitSignal(page.job_chosen):
        qtbot.keyClick(field, Qt.Key.Key_Return)


def test_what_is_written_elsewhere_appears(page: AskPage, qtbot: QtBot) -> None:
    page.ask("squeal")
    qtbot.waitUntil(lambda: len(rows(page)) == 1)
    write_job(page.desk.record, "J-3", "brakes squeal when cold")
    page.desk.undo()
    page.desk.redo()
    qtbot.waitUntil(lambda: len(rows(page)) == 2)


def test_nothing_found_is_said(page: AskPage, qtbot: QtBot) -> None:
    page.ask("zzzzqq")
    qtbot.waitUntil(lambda: "No old job says this" in words_shown(page))
    assert rows(page) == []


def test_a_slow_search_runs_beside_the_window(shop: ShopRecord, qtbot: QtBot) -> None:
    from time import perf_counter

    class Slow(OldJobs):
        def find(self, text: str, limit: int, kept: Filters = ALL_JOBS) -> Found:
            end = perf_counter() + 0.05
            while perf_counter() < end:
                pass
            return Found(text, (), (), (), 0)

    desk = Desk(shop)
    page = AskPage(desk, Slow(shop, shop_vocabulary, dict), IndexErrand(desk))
    qtbot.addWidget(page)
    page.show()
    page.ask("first")
    qtbot.waitUntil(lambda: "No old job" in words_shown(page))
    with qtbot.waitSignal(desk.errands.started):
        page.ask("second")
    page.ask("third")
    with qtbot.waitSignal(desk.errands.started):
        pass
    qtbot.waitUntil(lambda: not desk.errands.busy())
    desk.errands.finish()


def test_every_control_has_a_name(page: AskPage, qtbot: QtBot) -> None:
    page.ask("squeal rain")
    qtbot.waitUntil(lambda: len(rows(page)) == 3)
    for widget in page.findChildren(QWidget):
        if widget.isVisible() and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            face = QAccessible.queryAccessibleInterface(widget)
            assert face.text(QAccessible.Text.Name), widget


def test_a_long_cause_and_fix_are_read_whole_where_the_list_is_narrow(
    page: AskPage, qtbot: QtBot
) -> None:
    cause = (
        "the case of the coil was cracked on its under side, where nobody looks, and took water in"
    )
    done = "coil, its rubber seat and the two leads beside it renewed, plug wells dried"

    def say(record: ShopRecord) -> Done:
        return record.do("Say it", lambda deed: deed.change(Job, 2, cause=cause, correction=done))

    page.desk.do(say)
    qtbot.waitUntil(lambda: f"{cause}  →  {done}" in rows(page)[3])
    found = named(page, QListView, "Jobs found")
    short, long = found.model().index(1, 0), found.model().index(3, 0)
    line = found.fontMetrics().lineSpacing()

    def lines_more() -> int:
        return round((found.visualRect(long).height() - found.visualRect(short).height()) / line)

    page.resize(1500, 760)
    qtbot.waitUntil(lambda: lines_more() == 0)
    page.resize(800, 760)
    qtbot.waitUntil(lambda: lines_more() >= 1)
    letters = found.viewport().width() / found.fontMetrics().averageCharWidth()
    assert (lines_more() + 1) * letters >= len(cause + done)
    assert cause in long.data(Qt.ItemDataRole.ToolTipRole)
    assert done in long.data(Qt.ItemDataRole.ToolTipRole)


def test_the_plate_is_read_whole_in_the_largest_text(
    app: QApplication, page: AskPage, qtbot: QtBot
) -> None:
    dress(app, "light", 24)
    page.resize(900, 760)
    qtbot.waitUntil(lambda: len(rows(page)) == 4)
    found = named(page, QListView, "Jobs found")
    assert rows(page)[3].startswith("J-2   2026-11-16   AB12 CDE   hatchback")

    def high() -> int:
        return found.visualRect(found.model().index(3, 0)).height()

    before, line = high(), found.fontMetrics().lineSpacing()
    described = "hatchback of five doors with the larger engine"
    page.desk.do(
        lambda record: record.do(
            "Say it", lambda deed: deed.change(Vehicle, 2, description=described)
        )
    )
    qtbot.waitUntil(lambda: described in rows(page)[3])
    qtbot.waitUntil(lambda: high() >= before + line)  # it goes on in a second line

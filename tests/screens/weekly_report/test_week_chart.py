"""A chart of the Monday Book: what its picture carries, and that each of its points opens."""

from __future__ import annotations

from decimal import Decimal
from html import unescape

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QGuiApplication, QHelpEvent
from PySide6.QtWidgets import QApplication, QToolTip
from pytestqt.qtbot import QtBot

from desktop_app.returns_watched.return_cost import ReturnCost
from desktop_app.weekly_report.screen.chart_view import ChartView
from desktop_app.weekly_report.sheets.costs import costs_sheet
from desktop_app.weekly_report.sheets.rate import rate_sheet
from tests.weekly_report.year_made import came, done, figures


@pytest.fixture
def charts(qtbot: QtBot) -> list[ChartView]:
    """The charts of the sheet Rate, all of them with something in them."""
    seen = done("", 120).left_on
    jobs = [done(f"J-{n}", 200, miles_known=3200.0, known_on=seen) for n in range(30)]
    jobs += [done(f"B-{n}", 100, back_after=30, back_miles=1000.0) for n in range(3)]
    returns = [came(job, f"K-{job.number}", 30, 1000.0) for job in jobs[-3:]]
    sheet = rate_sheet(figures(jobs, returns))
    views = [ChartView(chart, sheet.table(chart.table)) for chart in sheet.charts]
    for view in views:
        qtbot.addWidget(view)
        view.resize(900, 300)
        view.show()
    return views


@pytest.fixture
def costs(qtbot: QtBot) -> ChartView:
    """The chart of what comebacks cost, a bar for each of three causes."""
    jobs, returns = [], []
    for cause, cents in (
        ("fitted-badly", 90_000),
        ("part-died-early", 30_000),
        ("wrong-cause", 10_000),
    ):
        job = done(f"B-{cause}", 200, back_after=30)
        cost = ReturnCost(Decimal(0), 0, cents, 0, 0)
        jobs.append(job)
        returns.append(came(job, f"K-{cause}", 30, cause=cause, cost=cost))
    sheet = costs_sheet(figures(jobs, returns))
    [chart] = sheet.charts
    view = ChartView(chart, sheet.table(chart.table))
    qtbot.addWidget(view)
    view.resize(900, 300)
    view.show()
    return view


def middle(view: ChartView, row: int) -> int:
    """Return the height in the picture at which a bar has its middle."""
    x = view.width() * 0.5
    found = [y for y in range(view.height()) if view.row_at(QPointF(x, y)) == row]
    return found[len(found) // 2]


def test_a_bar_is_as_long_as_its_figure_and_is_pressed_for_its_jobs(
    costs: ChartView, qtbot: QtBot
) -> None:
    picture = costs.grab().toImage()
    ends: list[int] = []
    for row in range(3):
        y = middle(costs, row)
        blue = [
            x
            for x in range(picture.width())
            for shown in [picture.pixelColor(x, y)]
            if shown.blue() > shown.red() + 40
        ]
        ends.append(blue[-1] - blue[0])
        with qtbot.waitSignal(costs.pressed) as pressed:
            qtbot.mouseClick(
                costs, Qt.MouseButton.LeftButton, pos=QPoint(sum(blue) // len(blue), y)
            )
        assert pressed.args == [row]
    assert [end / ends[2] for end in ends] == pytest.approx([9, 3, 1], rel=0.05)


def test_the_arrow_keys_go_from_point_to_point_and_enter_opens_one(
    charts: list[ChartView], costs: ChartView, qtbot: QtBot
) -> None:
    for view in (*charts, costs):
        bare = view.grab().toImage()
        qtbot.keyClick(view, Qt.Key.Key_Left)  # the last one, which was looked at last
        marked = view.grab().toImage()
        assert marked != bare
        with qtbot.waitSignal(view.pressed) as last:
            qtbot.keyClick(view, Qt.Key.Key_Return)
        qtbot.keyClick(view, Qt.Key.Key_Right)  # there is none beyond
        assert view.grab().toImage() == marked
        qtbot.keyClick(view, Qt.Key.Key_Up)
        with qtbot.waitSignal(view.pressed) as before:
            qtbot.keyClick(view, Qt.Key.Key_Return)
        assert before.args == [last.args[0] - 1]  # type: ignore[index]


def test_weeks_days_miles_and_returns_per_job_are_drawn(charts: list[ChartView]) -> None:
    names = [view.table_name() for view in charts]
    assert names == ["Weeks", "CurveOfReturns", "CurveByMiles", "ReturnsPerJob"]


def test_each_point_says_what_it_is_and_is_pressed_for_its_jobs(
    charts: list[ChartView], qtbot: QtBot
) -> None:
    for view in charts:
        spot = QPointF(view.width() * 0.6, view.height() * 0.4)
        row = view.row_at(spot)
        assert row is not None
        assert view.words_of(row)
        with qtbot.waitSignal(view.pressed) as pressed:
            qtbot.mouseClick(view, Qt.MouseButton.LeftButton, pos=spot.toPoint())
        assert pressed.args == [row]


def test_a_copied_picture_carries_its_title_and_whose_figures_these_are(
    charts: list[ChartView],
) -> None:
    chart = charts[0]
    QGuiApplication.clipboard().clear()
    chart.copy_picture("Tin Heron Garage · 2026-W46")
    picture = QGuiApplication.clipboard().pixmap()
    assert picture.height() > chart.grab().height()
    head = picture.toImage().copy(0, 0, picture.width(), picture.height() - chart.grab().height())
    ground = head.pixelColor(head.width() - 2, 2)
    lines = [
        any(head.pixelColor(x, y) != ground for x in range(8, 300)) for y in range(head.height())
    ]
    # Two lines of words with a gap between them.
    written = [before != now for before, now in zip([False, *lines], [*lines, False], strict=True)]
    assert sum(written) >= 4


@pytest.mark.qt_log_ignore("does not support raise", extend=True)  # off screen there is no front
def test_a_bar_says_what_it_is_where_the_mouse_rests(costs: ChartView) -> None:
    for row in (0, 2):
        at = QPoint(costs.width() // 2, middle(costs, row))
        told = QHelpEvent(QEvent.Type.ToolTip, at, costs.mapToGlobal(at))
        QApplication.sendEvent(costs, told)
        assert costs.words_of(row) in unescape(QToolTip.text())


def test_the_bar_under_the_mouse_is_marked_until_the_mouse_leaves(
    costs: ChartView, qtbot: QtBot
) -> None:
    costs.clearFocus()  # with the keys on it the mark stays
    plain = costs.grab().toImage()
    qtbot.mouseMove(costs, QPoint(costs.width() // 2, middle(costs, 1)))
    qtbot.waitUntil(lambda: costs.grab().toImage() != plain)
    QApplication.sendEvent(costs, QEvent(QEvent.Type.Leave))
    assert costs.grab().toImage() == plain


def test_a_press_beside_the_bars_opens_nothing(costs: ChartView, qtbot: QtBot) -> None:
    with qtbot.assertNotEmitted(costs.pressed):
        qtbot.mouseClick(costs, Qt.MouseButton.LeftButton, pos=QPoint(1, 1))

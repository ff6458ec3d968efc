"""A chart of the Monday Book: what its picture carries, and that each of its points opens."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QGuiApplication
from pytestqt.qtbot import QtBot

from desktop_app.weekly_report.screen.chart_view import ChartView
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

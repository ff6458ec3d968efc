"""The place where records go in and out, put together from boxes of two rooms."""

from __future__ import annotations

from collections.abc import Callable

from desktop_app.commands.mending import mend, will_mend
from desktop_app.commands.whole_check import whole_check
from desktop_app.records_exchanged.screen.check_box import CheckBox, Mending
from desktop_app.records_exchanged.screen.records_page import RecordsPage
from desktop_app.records_exchanged.screen.report_box import ReportBox
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_window.desk import Desk


def records_page(desk: Desk, reads: Callable[[], ReadWith]) -> RecordsPage:
    """Return Records In and Out with its check and its report; `reads` as RecordsPage takes it."""
    page, record = RecordsPage(desk, reads), desk.record
    mending = Mending(will_mend, lambda found: mend(record, found))
    page.column.addWidget(CheckBox(desk, lambda: whole_check(record), mending))
    page.column.addWidget(ReportBox(desk))
    return page

"""The place where records go in and out, put together from boxes of two rooms."""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop_app.commands.mending import mend, will_mend
from desktop_app.commands.whole_check import whole_check
from desktop_app.records_exchanged.row_words import kind_ids
from desktop_app.records_exchanged.screen.check_box import CheckBox, Mending
from desktop_app.records_exchanged.screen.records_page import RecordsPage
from desktop_app.records_exchanged.screen.report_box import ReportBox
from desktop_app.records_exchanged.stored_import import ReadWith
from desktop_app.shop_window.desk import Desk

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.part_kind import PartKind
    from desktop_app.symptom_search.vocabulary import Vocabulary


def records_page(
    desk: Desk, reads: Callable[[], ReadWith]
) -> Generator[QWidget, None, RecordsPage]:
    """Make Records In and Out with its check and its report; `reads` as RecordsPage takes it."""
    record = desk.record
    mending = Mending(will_mend, lambda found: mend(record, found))
    check = CheckBox(desk, lambda: whole_check(record), mending)
    report = ReportBox(desk)
    yield check
    yield report
    page = RecordsPage(desk, reads)
    page.column.addWidget(check)
    page.column.addWidget(report)
    yield page
    return page


def read_with(kinds: Iterable[PartKind], words: Vocabulary) -> ReadWith:
    """Return what rows of a table are read with, the same for all; no row waits for phrases."""
    return ReadWith(
        lambda said: tuple(group.id for group in words.groups_in(said)),
        words.conditions_in,
        kind_ids(kinds),
        words.own,
    )

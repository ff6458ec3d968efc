"""Each place: Tab reaches every control; at any text size the window fits and cuts no words off."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QCheckBox,
    QComboBox,
    QLabel,
    QListWidget,
    QRadioButton,
    QScrollArea,
    QStyle,
    QStyleOptionComboBox,
    QStyleOptionViewItem,
    QTableView,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.house_rules import all_rules, change_rule
from desktop_app.shop_window.place_names import JOB, ON_RAIL
from tests.shop_stories.counter import Counter
from tests.shop_stories.full_shop import TODAY, fill
from tests.shop_stories.one_job import SMALL, one_job, open_job

PLACES = (*ON_RAIL, JOB)
(LARGEST,) = (int(rule.bounds[1]) for rule in all_rules() if rule.name == "text_size")
SIZES = (9, 12, LARGEST)
MOST_TABS = 400
NARROW_ON_PURPOSE = QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop", TODAY) as counter:
        fill(counter)
        counter.window.resize(*SMALL)
        yield counter


def go(at: Counter, place: str) -> QWidget:
    if place == JOB:
        open_job(at)
    else:
        at.go(place)
    at.quiet()
    at.bot.wait(50)
    return at.page


def tells_itself(widget: QWidget) -> str:
    text = widget.text() if isinstance(widget, QAbstractButton | QLabel) else ""
    return f"{type(widget).__name__} “{widget.accessibleName() or text}”"


def controls(page: QWidget) -> set[QWidget]:
    """What Tab stops at on a page; of buttons that exclude each other only one has to be."""
    found = set()
    for widget in page.findChildren(QWidget):
        shown = widget.isVisible() and widget.isEnabled() and widget.focusProxy() is None
        inside = isinstance(widget.parent(), QComboBox | QAbstractItemView)
        group = isinstance(widget, QAbstractButton) and widget.group() is not None
        if shown and not inside and not group and widget.focusPolicy() & Qt.FocusPolicy.TabFocus:
            found.add(widget)
    return found


@pytest.mark.parametrize("place", PLACES)
def test_tab_reaches_every_control(at: Counter, place: str) -> None:
    page = go(at, place)
    at.window.activateWindow()
    left = controls(page)
    for _ in range(MOST_TABS):
        focus = at.window.focusWidget()
        left.discard(focus) if focus is not None else None
        if not left:
            break
        at.bot.keyClick(focus or at.window, Qt.Key.Key_Tab)
        left &= controls(page)  # what came and went meanwhile
    assert "\n".join(tells_itself(widget) for widget in left) == ""


def cut_off(page: QWidget) -> Iterator[str]:
    for widget in page.findChildren(QWidget):
        if not widget.isVisible():
            continue
        if isinstance(widget, QLabel) and not widget.wordWrap() and widget.pixmap().isNull():
            lines = widget.text().splitlines() or [""]
            wanted = max(widget.fontMetrics().horizontalAdvance(line) for line in lines)
            if wanted > widget.contentsRect().width() + 1:
                yield tells_itself(widget)
        elif isinstance(widget, QAbstractButton) and widget.text():
            if widget.width() + 1 < widget.minimumSizeHint().width():
                yield tells_itself(widget)
            if isinstance(widget, QCheckBox | QRadioButton):
                continue
            if widget.height() + 1 < widget.fontMetrics().height():
                yield f"{tells_itself(widget)} in height"
        if isinstance(widget, QLabel) and widget.wordWrap():
            needed = widget.heightForWidth(widget.width())
            if needed > widget.height() + 1:
                yield f"{tells_itself(widget)[:80]} in height"
        if isinstance(widget, QComboBox) and not widget.isEditable():
            yield from cut_off_choice(widget)
        elif isinstance(widget, QTableView):
            yield from cut_off_heads(widget)
        elif type(widget) is QListWidget:
            yield from cut_off_rows(widget)


def cut_off_choice(choice: QComboBox) -> Iterator[str]:
    """Say what is chosen where it is cut; one that is told to be narrow shows what it can."""
    if choice.sizeAdjustPolicy() == NARROW_ON_PURPOSE:
        return
    option = QStyleOptionComboBox()
    choice.initStyleOption(option)
    inside = choice.style().subControlRect(
        QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, choice
    )
    if choice.fontMetrics().horizontalAdvance(choice.currentText()) > inside.width() + 2:
        yield f"{tells_itself(choice)}: {choice.currentText()}"


def cut_off_heads(table: QTableView) -> Iterator[str]:
    """Say which heads are cut, and whether the first column cuts what its rows are called."""
    head = table.horizontalHeader()
    for column in range(head.count()):
        words = str(table.model().headerData(column, Qt.Orientation.Horizontal) or "")
        if not head.isSectionHidden(column):
            bold = QFont(head.font())
            bold.setBold(True)
            if QFontMetrics(bold).horizontalAdvance(words) > head.sectionSize(column):
                yield f"{tells_itself(table)}: {words}"
    for row in range(min(table.model().rowCount(), 30)):
        named = table.model().index(row, head.logicalIndex(0))
        hint = table.itemDelegate().sizeHint(QStyleOptionViewItem(), named).width()
        if hint > head.sectionSize(named.column()):
            yield f"{tells_itself(table)}: {named.data()}"


def cut_off_rows(listed: QListWidget) -> Iterator[str]:
    for row in range(listed.count()):
        item = listed.item(row)
        place = listed.visualItemRect(item)
        wide = QRect(0, 0, min(place.width(), listed.viewport().width()) - 6, 1000)
        needed = listed.fontMetrics().boundingRect(wide, Qt.TextFlag.TextWordWrap, item.text())
        if needed.width() > wide.width() or needed.height() > place.height() + 1:
            yield f"{tells_itself(listed)}: {item.text()}"


def outgrown(window: QWidget, screen: tuple[int, int] = SMALL) -> Iterator[str]:
    """Say where a window is larger than a screen, or has a page that is scrolled sideways."""
    for what, size in (("is", window.size()), ("wants", window.minimumSizeHint())):
        if size.width() > screen[0] or size.height() > screen[1]:
            yield f"the window {what} {size.width()} × {size.height()}"
    for page in window.findChildren(QScrollArea):
        if page.isVisible() and page.horizontalScrollBar().maximum() > 0:
            yield f"{tells_itself(page)} is {page.horizontalScrollBar().maximum()} too wide"


@pytest.mark.parametrize("size", SIZES)
def test_no_words_are_cut_off(at: Counter, size: int, tmp_path: Path) -> None:
    desk = at.program.desk
    assert desk is not None
    desk.do(change_rule, "text_size", size)
    found = {}
    for place in PLACES:
        go(at, place)
        at.bot.wait(100)
        if said := sorted({*cut_off(at.window), *outgrown(at.window)}):
            at.picture(tmp_path, f"{place}-{size}")
            found[place] = said
    assert found == {}

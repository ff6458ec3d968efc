"""A long page with a row to jump by, which stays in sight: by mouse, or by Ctrl and a number."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.page import ReadingPage
from desktop_app.shop_window.tab_order import first_stop
from desktop_app.shop_window.texts import plain_label, tooltip


class JumpedPage(QWidget):
    """A title, the row, and the page beneath them."""

    def __init__(
        self, title: str, page: ReadingPage, sections: Iterable[tuple[str, QWidget]]
    ) -> None:
        super().__init__()
        self._page = page
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        head = QVBoxLayout()
        head.setContentsMargins(18, 4, 18, 0)
        head.addWidget(plain_label(title, "title"))
        row = QWidget()
        jumps = FlowRow(row, spacing=4)
        for button in jump_buttons(page, sections):
            jumps.addWidget(button)
        head.addWidget(row)
        column.addLayout(head)
        column.addWidget(page, 1)

    def came_here(self) -> None:
        """Tell the page that it is shown."""
        come = getattr(self._page, "came_here", None)
        if come is not None:
            come()


def jump_buttons(
    page: ReadingPage, sections: Iterable[tuple[str, QWidget]]
) -> Iterator[QPushButton]:
    """Make a button for each section, which leads to its first field."""
    for number, (name, section) in enumerate(sections, start=1):
        yield _Jump(page, name, section, number)


class _Jump(QPushButton):
    def __init__(self, page: ReadingPage, name: str, section: QWidget, number: int) -> None:
        super().__init__(name.replace("&", "&&"))
        self._page, self._section = page, section
        press_by(self, f"Ctrl+{number}")
        self.setAccessibleName(tr("Go to {name}", name=name))
        self.setToolTip(tooltip(tr("Go to {name} (Ctrl+{number})", name=name, number=number)))
        self.clicked.connect(self._go)

    @Slot()
    def _go(self) -> None:
        self._page.bring_up(self._section)
        first = first_stop(self._section)
        if first is not None:
            first.setFocus()

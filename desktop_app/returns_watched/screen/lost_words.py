"""Words half typed into a row that is taken out elsewhere: told, and kept on the page."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.returns_watched.screen.asked_line import AskedLine
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import LineField


def let_row_go(desk: Desk, column: QVBoxLayout, row: QWidget, name: str) -> None:
    """Take a row off the page; what stands in it unsaved stays in a line until it is put away."""
    typed = [
        f"{field.accessibleName()} “{field.text().strip()}”"
        for field in row.findChildren(LineField)
        if field.unsaved() and field.text().strip()
    ]
    place = column.indexOf(row)
    column.removeWidget(row)
    row.hide()
    row.deleteLater()
    if not typed:
        return
    line = AskedLine()
    column.insertWidget(place, line)
    said = f"{name} is no longer there: it was taken out, here or at another desk, or undone."
    what = f"{said} Typed there and not kept: {'; '.join(typed)}."
    line.ask(what, {"Put these words away": line.deleteLater})
    desk.told.emit(f"{what} The words stay on the page until they are put away.")

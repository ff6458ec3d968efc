"""The menu of a table's columns: each with a tick, and the way back to how it was."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from PySide6.QtCore import Qt, Signal, Slot
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QMenu, QWidget

from desktop_app.language import tr


class ColumnsMenu(QMenu):
    """`shown` carries a column's header and whether it is to be seen; one always is."""

    shown = Signal(str, bool)
    as_it_was = Signal()

    @Slot(bool)
    def turn(self, yes: bool) -> None:
        """Tell of the column whose tick was turned."""
        action = self.sender()
        assert isinstance(action, QAction)
        self.shown.emit(str(action.data()), yes)


def columns_menu(
    parent: QWidget,
    names: Sequence[str],
    hidden: Collection[str],
    left_out: Collection[str],
) -> ColumnsMenu:
    """Return the menu of a table with these headers, some of them hidden.

    Those `left_out` are to be seen, and find no room.
    """
    menu = ColumnsMenu(tr("Columns"), parent)
    menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    shown = [name for name in names if name not in hidden]
    for name in names:
        said = tr("{column} (no room here)", column=name) if name in left_out else name
        action = QAction(said.replace("&", "&&"), menu)
        action.setCheckable(True)
        action.setChecked(name in shown)
        action.setEnabled(name not in shown or len(shown) > 1)
        action.setData(name)
        action.toggled.connect(menu.turn)
        menu.addAction(action)
    menu.addSeparator()
    menu.addAction(tr("As it was")).triggered.connect(menu.as_it_was)
    return menu

"""The row of tools: what is drawn next, and whether its points snap to the edges found."""

from __future__ import annotations

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.drawing_words import PURPOSE
from desktop_app.part_photos.mark_words import TOOLS, MarkTool
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import Tick
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.texts import tooltip

MOST_KEYS = 9  # 0 shows the whole photo
_SNAP = "snap_to_edges"


class ToolsRow(QWidget):
    """One button a tool, pressed again to put it down; keys 1 to 9 do the same."""

    taken = Signal(object)  # MarkTool, or None

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.setObjectName("tight")  # where words are large
        self._desk = desk
        row = FlowRow()
        self._buttons: list[QPushButton] = []
        for number, tool in enumerate(TOOLS, 1):
            has_key = number <= MOST_KEYS
            button = QPushButton(f"{number}  {tool.label}" if has_key else tool.label)
            button.setAccessibleName(tr("Draw: {label}", label=tool.label))
            said = (
                tr("Key {number}.", number=number) if has_key else "",
                tr("Clicks: {clicks}.", clicks="; ".join(tool.clicks)),
                PURPOSE.get(tool.type, ""),
            )
            button.setToolTip(tooltip(" ".join(part for part in said if part)))
            button.setCheckable(True)
            button.setProperty("number", number)
            button.clicked.connect(self._pressed)
            self._buttons.append(button)
            row.addWidget(button)
        self.snap = Tick(tr("Snap to the edge"))
        self.snap.setToolTip(
            tooltip(
                tr("Points move onto the nearest edge that is clear enough. The click stays seen.")
            )
        )
        self.snap.setChecked(bool(desk.property(_SNAP)))
        self.snap.toggled.connect(self._keep_snap)
        row.addWidget(self.snap)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(row)

    def take(self, number: int) -> None:
        """Take the tool of a key, 1 for the first; the one in hand is put down."""
        if 1 <= number <= MOST_KEYS:
            self._buttons[number - 1].click()

    def show_tool(self, tool: MarkTool | None) -> None:
        """Show which tool is in hand; nothing is said about it."""
        for button, one in zip(self._buttons, TOOLS, strict=True):
            button.setChecked(one is tool)

    @Slot()
    def _pressed(self) -> None:
        number = int(self.sender().property("number"))
        tool = TOOLS[number - 1] if self._buttons[number - 1].isChecked() else None
        self.show_tool(tool)
        self.taken.emit(tool)

    @Slot(bool)
    def _keep_snap(self, yes: bool) -> None:
        self._desk.setProperty(_SNAP, yes)  # as long as the shop is open

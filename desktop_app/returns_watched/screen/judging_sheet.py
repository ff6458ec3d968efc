"""Everything to be said about one return, one box under the other."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.cause_box import CauseBox
from desktop_app.returns_watched.screen.change_box import ChangeBox
from desktop_app.returns_watched.screen.cost_box import CostBox
from desktop_app.returns_watched.screen.danger_box import DangerBox
from desktop_app.returns_watched.screen.judgement_box import JudgementBox
from desktop_app.shop_window.desk import Desk


class JudgingSheet(QWidget):
    """What it is, whether it was dangerous, why, what it cost, what will change; for one return."""

    stale = Signal()  # the page shows less than there is by now

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__()
        self.key = judging.key
        self._judgement = JudgementBox(desk, judging)
        self._others: list[DangerBox | CauseBox | CostBox | ChangeBox] = [
            DangerBox(desk, judging),
            CauseBox(desk, judging),
        ]
        if not judging.is_told:  # there is no later job that could have cost anything
            self._others += [CostBox(desk, judging), ChangeBox(desk, judging)]
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(14)
        for box in (self._judgement, *self._others):
            column.addWidget(box)
            box.stale.connect(self.stale)

    def unjudged(self) -> str:
        """Return the answer that was pressed and waits for who gives it; "" where none does."""
        return self._judgement.unjudged()

    def show_return(self, judging: Judging, *, in_window: bool) -> None:
        """Show what is kept now about the return that this sheet was made for."""
        self._judgement.show_return(judging, in_window=in_window)
        for box in self._others:
            box.show_return(judging)

"""Everything to be said about one return, one box under the other."""

from __future__ import annotations

from PySide6.QtCore import QTimer, Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.screen.cause_box import CauseBox
from desktop_app.returns_watched.screen.change_box import ChangeBox
from desktop_app.returns_watched.screen.cost_box import CostBox
from desktop_app.returns_watched.screen.danger_box import DangerBox
from desktop_app.returns_watched.screen.judgement_box import JudgementBox
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.saves_itself import tell_page

_SOON_MS = 10  # without a pause all of them would come in the turn of the first
_Below = DangerBox | CauseBox | CostBox | ChangeBox


class JudgingSheet(QWidget):
    """What it is, whether it was dangerous, why, what it cost, what will change; for one return.

    Only the judgement is there at once: what is further down follows in the next turns, so that
    going through a list of returns never waits for it.
    """

    stale = Signal()  # the page shows less than there is by now
    grown = Signal()  # a box has come

    def __init__(self, desk: Desk, judging: Judging) -> None:
        super().__init__()
        self.key = judging.key
        self._desk, self._judging = desk, judging
        self._judgement = JudgementBox(desk, judging)
        self._others: list[_Below] = []
        self._to_come: list[type[_Below]] = [DangerBox, CauseBox]
        if not judging.is_told:  # there is no later job that could have cost anything
            self._to_come += [CostBox, ChangeBox]
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(14)
        self._add(self._judgement)
        QTimer.singleShot(_SOON_MS, self, self._add_next)

    def unjudged(self) -> str:
        """Return the answer that was pressed and waits for who gives it; "" where none does."""
        return self._judgement.unjudged()

    def is_whole(self) -> bool:
        """Tell whether all of its boxes have come."""
        return not self._to_come

    def show_return(self, judging: Judging, *, in_window: bool) -> None:
        """Show what is kept now about the return that this sheet was made for."""
        self._judging = judging
        self._judgement.show_return(judging, in_window=in_window)
        for box in self._others:
            box.show_return(judging)

    @Slot()
    def _add_next(self) -> None:
        make = self._to_come.pop(0)
        if self._to_come:
            QTimer.singleShot(_SOON_MS, self, self._add_next)
        box = make(self._desk, self._judging)
        self._others.append(box)
        self._add(box)
        box.show_return(self._judging)
        box.show()  # not with the next layout: keys typed meanwhile would find it hidden
        tell_page(box, "part_came", box)
        self.grown.emit()

    def _add(self, box: JudgementBox | _Below) -> None:
        self._column.addWidget(box)
        box.stale.connect(self.stale)

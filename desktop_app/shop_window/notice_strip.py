"""The strip at the foot of the window: notices that never steal the focus, and running errands."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QProgressBar, QPushButton, QWidget

from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.texts import plain_label

if TYPE_CHECKING:
    from desktop_app.shop_record.step import Step
    from desktop_app.shop_window.errands import Errand

LONGEST = 600  # letters of a notice; it may quote what somebody typed
QUIET_FOR_MS = 500  # an errand shorter than this is never shown


class NoticeStrip(QFrame):
    """Shows the newest notice until it is put away, and an errand's progress with a Stop button."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._words: QLabel = plain_label("", wrap=True)
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._bar = QProgressBar()
        self._bar.setAccessibleName("Progress")
        self._bar.setMaximumWidth(260)
        self._button = QPushButton("Put away")
        self._button.setAccessibleName("Put the notice away")
        self._button.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a click leaves the focus where it is
        self._button.clicked.connect(self._press)
        row = QHBoxLayout(self)
        row.addWidget(self._words, 1)
        row.addWidget(self._bar)
        row.addWidget(self._button)
        self._errand: Errand | None = None
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._show_errand)
        self.hide()

    def words(self) -> str:
        """Return what the strip says now; empty when it is hidden."""
        return "" if self.isHidden() else self._words.text()

    @Slot(object)
    def tell(self, news: Any) -> None:
        """Show a ShopTrouble or a plain sentence."""
        words = news.sentence() if isinstance(news, ShopTrouble) else str(news)
        self._words.setText(words if len(words) <= LONGEST else f"{words[:LONGEST]}…")
        self._bar.hide()
        self._button.setText("Put away")
        self.show()

    @Slot(object)
    def watch(self, errand: Errand) -> None:
        """Follow an errand; it is shown when it takes longer than half a second."""
        self._errand = errand
        errand.stepped.connect(self._step)
        self._later.start(QUIET_FOR_MS)

    @Slot()
    def _show_errand(self) -> None:
        if self._errand is not None:
            self._words.setText(self._errand.words + " …")
            self._bar.setRange(0, 0)
            self._bar.show()
            self._button.setText("Stop")
            self.show()

    @Slot(object)
    def _step(self, step: Step) -> None:
        if self._button.text() == "Stop":
            self._bar.setRange(0, step.of)
            self._bar.setValue(step.done)
            self._words.setText(step.words)

    @Slot(object)
    def leave(self, errand: Errand) -> None:
        """Stop following an errand that is over."""
        if errand is not self._errand:
            return
        self._errand = None
        self._later.stop()
        if self._button.text() == "Stop":
            self.hide()

    @Slot()
    def _press(self) -> None:
        if self._button.text() == "Stop" and self._errand is not None:
            self._errand.stop()
        self.hide()

"""The strip at the foot of the window: notices that never steal the focus, and running errands."""

from __future__ import annotations

from collections.abc import Callable
from time import monotonic
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt, QTimer, Signal, Slot
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QProgressBar, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import NotSaved, ShopDamaged, ShopTrouble
from desktop_app.shop_window.texts import plain_label

if TYPE_CHECKING:
    from desktop_app.shop_record.deed import Done
    from desktop_app.shop_record.step import Step
    from desktop_app.shop_window.errands import Errand

LONGEST = 600  # letters of a notice; it may quote what somebody typed
QUIET_FOR_MS = 500  # an errand shorter than this is never shown
OLD_AFTER_S = 20.0  # a trouble that asks for nothing is old by then, once another page is shown
NEW_FOR_S = 2.0  # what was done is told by the deeds of one press, and so long it is news
_STOP, _PUT_AWAY = tr("Stop"), tr("Put away")


class NoticeStrip(QFrame):
    """Shows the newest notice, and an errand's progress with a Stop button.

    A notice that asks for something, a ShopTrouble with something to do, stays until it is put
    away or its cause is gone. One that only tells something is shown over it for a while, and it
    comes back then, but not where something was done since and its cause is not known. What was
    done goes with the next deed or page, any other trouble with a later page. Beside a damaged
    shop the way back is offered: `way_back_wanted`.
    """

    way_back_wanted = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("notice")
        self._words: QLabel = plain_label("", wrap=True)
        self._words.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._words.setMinimumHeight(self.fontMetrics().height())  # a long one asks for no window
        self._bar = QProgressBar()
        self._bar.setAccessibleName(tr("Progress"))
        self._bar.setMaximumWidth(260)
        self._button = QPushButton(_PUT_AWAY, self)
        self._button.setAccessibleName(tr("Put the notice away"))
        self._button.setFocusPolicy(Qt.FocusPolicy.TabFocus)  # a click leaves the focus where it is
        self._button.clicked.connect(self._press)
        self._way_back = QPushButton(tr("Bring a backup back…"))
        self._way_back.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        self._way_back.clicked.connect(self.way_back_wanted)
        self._way_back.hide()
        row = QHBoxLayout(self)
        row.setContentsMargins(11, 5, 11, 5)
        row.addWidget(self._words, 1)
        row.addWidget(self._bar)
        row.addWidget(self._way_back)
        row.addWidget(self._button)
        self._asks = ""  # what was asked for and not put away
        self._damaged = False  # it says that the shop is damaged
        self._unsaved = False  # it says that nothing can be saved
        self._lasts = False  # its cause is known, and can be looked at again
        self._holds: Callable[[], bool] = bool  # whether its cause is still there
        self._told_at = 0.0
        self._tells_done = False  # it tells what was done, and is no trouble
        self._covered = ""  # what was told, and an errand is shown over now
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
        asks = isinstance(news, ShopTrouble) and bool(news.do)
        words = news.sentence() if isinstance(news, ShopTrouble) else str(news)
        words = words if len(words) <= LONGEST else f"{words[:LONGEST]}…"
        if asks:
            # Loaded with the first trouble, long after the frame was painted.
            from desktop_app.shop_window.notice import how_long, lasts

            self._asks, self._holds = words, how_long(news)
            self._damaged = isinstance(news, ShopDamaged)
            self._unsaved = isinstance(news, NotSaved)
            self._lasts = lasts(news)
        elif not isinstance(news, ShopTrouble) and not self._lasts:
            self._asks = ""  # something was done since, and nobody knows whether it still holds
        self._told_at, self._tells_done = monotonic(), not isinstance(news, ShopTrouble)
        self._show_words(words)

    @Slot()
    def look_again(self) -> None:
        """Let a notice go that asks for something whose cause is gone."""
        if self._asks and not self._holds():
            shown = self.words() == self._asks
            self._asks = ""
            if shown:
                self.hide()

    def page_changed(self) -> None:
        """Let a notice go whose cause is gone, and one that only told something and is no news."""
        self.look_again()
        self._let_go_after(NEW_FOR_S if self._tells_done else OLD_AFTER_S)

    def put_away(self) -> bool:
        """Put a notice away as its button does, and stop no errand; tell whether one was there."""
        if not self.words() or self._button.text() == _STOP:
            return False
        self._press()
        return True

    def shop_opened(self) -> None:
        """Let go what was told before: it was about a shop that is not open, or not there."""
        self._asks, self._damaged = "", False
        if self._button.text() != _STOP:
            self.hide()

    @Slot(object)
    def deed_done(self, done: Done) -> None:
        """Let a notice of what was done go with the next deed of this desk.

        So goes that nothing can be saved: something was.
        """
        if done.seq is not None and self._asks and self._unsaved:
            self._unsaved, asked, self._asks = False, self._asks, ""
            if self.words() == asked:
                self.hide()
        if done.seq is not None and self._tells_done:
            self._let_go_after(NEW_FOR_S)

    def _let_go_after(self, seconds: float) -> None:
        if self._button.text() != _STOP and monotonic() - self._told_at >= seconds:
            self._back_to_what_is_asked()

    def _show_words(self, words: str) -> None:
        self._words.setText(words)
        self._bar.hide()
        self._way_back.setVisible(self._damaged and words == self._asks)
        self._button.setText(_PUT_AWAY)
        self.show()

    def _back_to_what_is_asked(self) -> None:
        if self._asks:
            self._show_words(self._asks)
        else:
            self.hide()

    @Slot(object)
    def watch(self, errand: Errand) -> None:
        """Follow an errand; it is shown when it takes longer than half a second."""
        self._errand = errand
        errand.stepped.connect(self._step)
        self._later.start(QUIET_FOR_MS)

    @Slot()
    def _show_errand(self) -> None:
        if self._errand is not None:
            if self._button.text() != _STOP:  # what is asked for comes back by itself
                self._covered = "" if self.words() == self._asks else self.words()
            self._words.setText(self._errand.words + " …")
            self._bar.setRange(0, 0)
            self._bar.show()
            self._way_back.hide()
            self._button.setText(_STOP)
            self.show()

    @Slot(object)
    def _step(self, step: Step) -> None:
        if self._button.text() == _STOP:
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
        if self._button.text() != _STOP:
            return
        if self._covered and monotonic() - self._told_at < OLD_AFTER_S:
            self._show_words(self._covered)
        else:
            self._back_to_what_is_asked()

    @Slot()
    def _press(self) -> None:
        if self._button.text() == _STOP and self._errand is not None:
            self._errand.stop()
        elif self._words.text() == self._asks:
            self._asks = ""
        self._back_to_what_is_asked()

"""A box with one button for something that takes long: how far it is, and what came of it."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QPushButton

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.screen.telling import RunsErrands, Tell, Telling
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

UNDER_WAY = tr("It is under way: wait until it is done, or stop it.")


class LongWorkBox(Section):
    """The button, the line that tells how far it is and stops it, and the words at its end."""

    def __init__(self, host: RunsErrands, title: str, what: str, press: str, doing: str) -> None:
        """`what` says what the button `press` does; `doing` is said where it can be stopped."""
        super().__init__(title)
        self._host = host
        self._under_way: Telling | None = None
        self._begin = QPushButton(press)
        self._begin.clicked.connect(self._pressed)
        self._progress = ProgressLine(doing)
        self._progress.stop_wanted.connect(self._stop)
        self._said = plain_label("", wrap=True)
        self.column.addWidget(plain_label(what, "quiet", wrap=True))
        self.column.addWidget(self._begin, alignment=Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self._progress)
        self.column.addWidget(self._said)
        self._said.hide()

    @Slot()
    def _pressed(self) -> None:
        raise NotImplementedError

    def _start(
        self,
        words: str,
        work: Callable[[Tell], Any],
        ended: Callable[[Any], None],
        stopped: str = tr("Stopped. Nothing was written."),
    ) -> None:
        """Do `work` beside the window; `ended` is told what it gives, `stopped` said without it."""

        def gave_up(trouble: ShopTrouble | None) -> None:
            self._over(_said(trouble) if trouble else stopped)

        self._under_way = Telling(self._host, self, words, work, ended, gave_up)
        self._under_way.stepped.connect(self._progress.step)
        self._progress.begin(words)
        self._allow()
        self._said.hide()

    @Slot()
    def _stop(self) -> None:
        if self._under_way is not None:
            self._under_way.stop()

    def _allow(self) -> None:
        """Let be pressed what can be, and say why the rest can't."""
        off_because(self._begin, self._why_not())

    def _why_not(self) -> str:
        return "" if self._under_way is None else UNDER_WAY

    def _over(self, words: str) -> None:
        self._under_way = None
        self._progress.end()
        self._allow()
        self._said.setText(words)
        self._said.show()


def _said(trouble: ShopTrouble) -> str:
    """Say what went wrong; nothing was typed here, so nothing is still in a field."""
    if isinstance(trouble, NotSaved):
        trouble = ShopTrouble(trouble.what, tr("It was broken off."), trouble.again)
    return trouble.sentence()

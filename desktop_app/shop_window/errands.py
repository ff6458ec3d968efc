"""Errands: work that runs beside the window, with progress and a way to stop."""

from __future__ import annotations

import logging
from collections.abc import Callable, Generator
from typing import Any

from PySide6.QtCore import QObject, QThreadPool, QTimer, Signal, SignalInstance, Slot

from desktop_app.language import tr
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble


class Errand(QObject):
    """One running errand; lives in the window's thread.

    `failed` comes in the window's thread, with the trouble or None where it was stopped. What is
    reached beside the window is told by signals of its own, to `Errands` alone: the errand goes
    when it is over, and who else listened to those might be told nothing.
    """

    stepped = Signal(object)
    failed = Signal(object)
    ended_beside = Signal(object)
    failed_beside = Signal(object)

    def __init__(self, words: str, parent: QObject) -> None:
        super().__init__(parent)
        self.words = words
        self.wanted = True

    def stop(self) -> None:
        """Ask the errand to stop at its next step; nothing half-done stays behind."""
        self.wanted = False


class _Runner:
    """Carries out an errand's work in whatever thread calls it.

    No QRunnable: one that is over before its start has come back stays with its pool for good, and
    so does all that its work holds.
    """

    def __init__(self, errand: Errand, work: Callable[[], Any]) -> None:
        self._errand = errand
        self._work = work

    def __call__(self) -> None:
        told, what = self._carry_out()
        told.emit(what)

    def let_go(self) -> None:
        """Let the work go on this thread: what it holds of a window must not end on another."""
        self._work = bool

    def _carry_out(self) -> tuple[SignalInstance, Any]:
        errand = self._errand
        if not errand.wanted:  # stopped while it waited for its turn
            return errand.failed_beside, None
        try:
            result = self._work()
            if isinstance(result, Generator):
                result = self._walk(result)
        except ShopTrouble as trouble:
            return errand.failed_beside, trouble
        except Exception as mistake:
            logging.getLogger("benchwitness").exception("errand “%s” failed", errand.words)
            return errand.failed_beside, mistake
        return (errand.ended_beside, result) if errand.wanted else (errand.failed_beside, None)

    def _walk(self, steps: Generator[Step, None, Any]) -> Any:
        try:
            while self._errand.wanted:
                try:
                    self._errand.stepped.emit(next(steps))
                except StopIteration as end:
                    return end.value
        finally:
            steps.close()
        return None


class Errands(QObject):
    """Starts errands and keeps them until they are done; the window waits for them at its end."""

    started = Signal(object)  # Errand
    over = Signal(object)  # Errand, when it has ended, failed or was stopped
    told = Signal(object)  # ShopTrouble or a plain sentence

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(2)
        self._running: dict[Errand, tuple[_Runner, Callable[[Any], None] | None]] = {}
        self._ready: list[_Runner] = []
        self._finished = False

    def run(
        self, words: str, work: Callable[[], Any], then: Callable[[Any], None] | None = None
    ) -> Errand:
        """Run `work` (a function, or one that returns a generator of Steps) beside the window.

        `then(result)` is called in the window's thread; it is left out when the errand was stopped.
        What is asked for after the window went (by a timer that was still to come) never starts.
        """
        errand = Errand(words, self)
        if self._finished:
            errand.stop()
            return errand
        runner = _Runner(errand, work)
        self._running[errand] = runner, then
        errand.ended_beside.connect(self._end)
        errand.failed_beside.connect(self._fail)
        self.started.emit(errand)
        # It starts in the next turn, so that who asked can listen to `failed` before it fails.
        self._ready.append(runner)
        QTimer.singleShot(0, self, self._start_next)
        return errand

    @Slot()
    def _start_next(self) -> None:
        if self._ready:
            self._pool.start(self._ready.pop(0))

    def busy(self) -> bool:
        """Tell whether an errand is on its way."""
        return bool(self._running)

    def finish(self) -> None:
        """Stop all errands and wait for them, for good: call it before the window goes."""
        self._finished = True
        self._ready.clear()
        for errand in self._running:
            errand.stop()
        self._pool.waitForDone()
        for errand in tuple(self._running):
            self._take_out(errand)

    @Slot(object)
    def _end(self, result: Any) -> None:
        errand = self.sender()
        assert isinstance(errand, Errand)
        then = self._take_out(errand)
        self.over.emit(errand)
        if then is not None:
            then(result)
        errand.deleteLater()

    @Slot(object)
    def _fail(self, trouble: Any) -> None:
        errand = self.sender()
        assert isinstance(errand, Errand)
        self._take_out(errand)
        self.over.emit(errand)
        errand.failed.emit(trouble)
        errand.deleteLater()
        if isinstance(trouble, ShopTrouble):
            self.told.emit(trouble)
        elif trouble is not None:
            self.told.emit(
                ShopTrouble(
                    tr(
                        "“{words}” did not work; that is a mistake of the program.",
                        words=errand.words,
                    ),
                    kept=tr("Nothing was changed."),
                    do=tr("The log file in the shop's folder has the details."),
                )
            )

    def _take_out(self, errand: Errand) -> Callable[[Any], None] | None:
        """Forget an errand that is over, and return what was to be called then."""
        if errand not in self._running:
            return None
        runner, then = self._running.pop(errand)
        runner.let_go()
        return then

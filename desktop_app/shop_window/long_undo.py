"""An undo or a redo of very many rows: carried out beside the window, told and stopped there."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress

from PySide6.QtCore import QObject, Slot

from desktop_app.language import tr
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.own_program.no_walk import no_walk_through_everything
from desktop_app.shop_record.past.long_reverse import Tell
from desktop_app.shop_record.step import Step
from desktop_app.shop_window.errands import Errand, Errands

_TOLD = 200  # times at most


class _Unwanted(Exception):
    """Raised inside the deed when it was asked to stop: all of it is taken back."""


class LongUndo(QObject):
    """Runs `reverse` as an errand; `ended(done)` comes at its end, None where nothing was done.

    Where the wish to stop comes too late the deed holds, and is told. What went wrong is told as
    with any errand.
    """

    def __init__(
        self,
        errands: Errands,
        words: str,
        reverse: Callable[[Tell], Done],
        ended: Callable[[Done | None], None],
    ) -> None:
        super().__init__(errands)
        self.words = words
        self._reverse, self._ended = reverse, ended
        self._done: Done | None = None
        errands.over.connect(self._over)
        self._errand = errands.run(words, self._carry_out)

    def _carry_out(self) -> None:
        errand, words, said = self._errand, self.words, 0

        def tell(done: int, of: int) -> None:
            nonlocal said
            if not errand.wanted:
                raise _Unwanted
            share = _TOLD * done // max(1, of)
            if share > said:
                said = share
                so_far = (
                    tr("{words}: {done:,} of {of:,} rows", words=words, done=done, of=of)
                    if done < of
                    else tr("{words}: finishing", words=words)
                )
                errand.stepped.emit(Step(done, of, so_far))

        with suppress(_Unwanted), no_walk_through_everything():
            self._done = self._reverse(tell)

    def stopped(self) -> bool:
        """Tell whether somebody wanted it to stop."""
        return not self._errand.wanted

    @Slot(object)
    def _over(self, errand: Errand) -> None:
        if errand is self._errand:
            self._ended(self._done)
            self.deleteLater()

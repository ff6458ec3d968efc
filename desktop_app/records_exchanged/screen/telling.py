"""An errand that tells how far it is, and that is over only when it knows what came of it."""

from __future__ import annotations

from collections.abc import Callable, Generator
from contextlib import closing
from typing import Any, Protocol, TypeVar

from PySide6.QtCore import QObject, Signal, Slot
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.errands import Errand, Errands

Tell = Callable[[Step], None]
Came = TypeVar("Came")


class RunsErrands(Protocol):
    """Whoever lets work run beside the window: a desk, or a page where no shop is open yet."""

    @property
    def errands(self) -> Errands: ...


class _Unwanted(Exception):
    """Raised inside the work when it was asked to stop."""


class Telling(QObject):
    """Runs `work(tell)` beside the window; `tell` gives up where somebody wants it to stop.

    `then(result)` is called when the work was done, even where the wish to stop came too late for
    it; else `gave_up(trouble)`, None where it was stopped. Neither once `owner` is gone.
    """

    stepped = Signal(object)  # Step

    def __init__(
        self,
        desk: RunsErrands,
        owner: QObject,
        words: str,
        work: Callable[[Tell], Came],
        then: Callable[[Came], None],
        gave_up: Callable[[ShopTrouble | None], None],
    ) -> None:
        super().__init__(desk.errands)
        self._owner, self._work, self._then, self._gave_up = owner, work, then, gave_up
        self._came: list[Any] = []
        self._trouble: ShopTrouble | None = None
        self._errand = desk.errands.run(words, self._carry_out)
        self._errand.stepped.connect(self.stepped)
        desk.errands.over.connect(self._over)

    def stop(self) -> None:
        """Ask it to stop; nothing half done stays."""
        self._errand.stop()

    def _carry_out(self) -> None:
        errand = self._errand
        self._trouble = ShopTrouble(
            tr("It did not work."), tr("Nothing was changed.")
        )  # till it is known

        def tell(step: Step) -> None:
            if not errand.wanted:
                raise _Unwanted
            errand.stepped.emit(step)

        try:
            self._came.append(self._work(tell))
        except _Unwanted:
            self._trouble = None
        except ShopTrouble as trouble:
            self._trouble = trouble if errand.wanted else None
            if errand.wanted:
                raise  # what an unwanted work meets at its end is of no interest

    @Slot(object)
    def _over(self, errand: Errand) -> None:
        if errand is not self._errand:
            return
        if isValid(self._owner):
            if self._came:
                self._then(self._came[0])
            else:
                self._gave_up(self._trouble)
        self.deleteLater()


def walked(steps: Generator[Step, None, Came], tell: Tell) -> Came:
    """Walk through all steps, telling each; what `tell` raises closes them."""
    with closing(steps):
        while True:
            try:
                step = next(steps)
            except StopIteration as end:
                came: Came = end.value
                return came
            tell(step)

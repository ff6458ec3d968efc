"""The place of the photo bench: laid out for a pair, kept while something on it is refused."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import save_everything
from desktop_app.shop_window.main_window import MainWindow
from desktop_app.shop_window.notice import Notice, not_accepted, not_sent

if TYPE_CHECKING:
    from desktop_app.parts_compared.part_kinds.part_kind import PartKind


class BenchPlace(QObject):
    """Makes the bench for the photos that were asked for last, and brings them there."""

    def __init__(
        self,
        window: MainWindow,
        desk: Desk,
        name: str,
        kinds: Callable[[], Mapping[str, PartKind]],
        leave: Callable[[], None],
    ) -> None:
        super().__init__(window)
        self._window, self._desk, self._name = window, desk, name
        self._kinds, self._leave = kinds, leave
        self._asked: tuple[int, int | None, int | None] | None = None

    def page(self) -> QWidget:
        """Lay the photos on the bench that were asked for last."""
        from desktop_app.part_photos.screen.bench_page import PhotoBench
        from desktop_app.part_photos.stored_reading import photos_by_id
        from desktop_app.parts_compared.screen.bench_readings_of_pair import BenchReadingsOfPair

        assert self._asked is not None
        pair_id, *sides = self._asked
        readings = BenchReadingsOfPair(self._desk, pair_id, self._kinds)
        kept = self._desk.ask(photos_by_id, [one for one in sides if one is not None]) or {}
        old, new = (None if one is None else kept.get(one) for one in sides)
        bench = PhotoBench(self._desk, old, new, readings)
        bench.done.connect(self._leave)
        return bench

    def lay(self, pair_id: int, old: int | None, new: int | None) -> None:
        """Go to the bench with these photos; with those that lie there, if one of its fields waits.

        What is not accepted would be lost with other photos, so that it is said and stays.
        """
        asked = (pair_id, old, new)
        refused: Notice | None = None
        if self._asked is not None:
            page = self._window.page(self._name)
            save_everything(page)
            refused = not_accepted(
                page,
                tr(" on the bench is not accepted."),
                tr("Mend or empty it first; it would be lost with other photos."),
            )
            lost = tr(" on the bench is not sent yet; it would be lost with other photos.")
            refused = refused or not_sent(page, lost)
        another = asked != self._asked
        if refused is None:
            self._asked = asked
            self._window.renew(self._name)
        self._window.go_to(self._name)
        if refused is not None and another:
            self._window.strip.tell(refused)

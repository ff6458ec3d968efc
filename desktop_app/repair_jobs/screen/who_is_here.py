"""Who is at the desk now: a name for the history and for judgements, no log-in."""

from __future__ import annotations

from PySide6.QtCore import Slot

from desktop_app.repair_jobs.stored_reading import people_here
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField


class WhoIsHere(ChoiceField):
    """The people of the shop; what is done from now on carries the chosen name."""

    def __init__(self, desk: Desk) -> None:
        super().__init__("Who is at the desk", [], self._choose)
        self._desk = desk
        desk.changed.connect(self._reread)
        self._show()

    def _choose(self, name: str) -> object:
        self._desk.record.who = name
        return name

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if "person" in done.touched:
            self._show()

    def _show(self) -> None:
        names = [name for _, name in self._desk.ask(people_here) or ()]
        self.set_choices([("", "Who is here?"), *((name, name) for name in names)])
        self.show_value(self._desk.record.who)
        if self._desk.record.who not in names:
            self._desk.record.who = ""

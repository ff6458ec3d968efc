"""Who is at the desk now: a name for the history and for judgements, no log-in."""

from __future__ import annotations

from PySide6.QtCore import Slot

from desktop_app.language import tr
from desktop_app.repair_jobs.screen.person_field import PersonField
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk


class WhoIsHere(PersonField):
    """The people of the shop; what is done from now on carries the chosen name."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk, tr("Who is at the desk"), self._name)
        desk.changed.connect(self._reread)
        self._show()

    def _name(self, name: str) -> object:
        self._desk.name(name)
        return name

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if "person" in done.touched:
            self._show()

    def _show(self) -> None:
        people = self._desk.ask(people_here)
        if people is None:  # the server is away: whoever was here still is
            return
        names = [name for _, name in people]
        if self._desk.record.who not in names:
            self._desk.name("")
        self.show_people(("", tr("Who is here?")), [(name, name) for name in names])
        self.show_value(self._desk.record.who)

"""The people of the shop: who is on the list, and adding or taking off a name."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.row_field import RowField
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.deed import Done
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.tab_order import NEVER_FIRST
from desktop_app.shop_window.texts import plain_label, tooltip


class PeopleBox(Section):
    """A chip for each person; no roles and no log-ins."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(tr("People of the shop"))
        self._desk = desk
        self._chips = QWidget()
        self._row = FlowRow(self._chips)
        drafts = Drafts(desk.record.folder)
        self._name = RowField(tr("Name of a new person"), self._add, drafts)
        self._name.begin("new person")
        self._name.setPlaceholderText(tr("Name"))
        add = QPushButton(tr("Add"))
        add.setAccessibleName(tr("Add this person"))
        add.clicked.connect(self._add_now)
        line = QHBoxLayout()
        line.addWidget(self._name, 1)
        line.addWidget(add)
        self.column.addWidget(self._chips)
        self.column.addLayout(line)
        desk.changed.connect(self._reread)
        self._show()

    def look_for_names(self) -> None:
        """Put the cursor where a name is added."""
        self._name.setFocus()

    @Slot(object)
    def _reread(self, done: Done) -> None:
        if "person" in done.touched:
            self._show()

    def _show(self) -> None:
        self._row.clear()
        people = self._desk.ask(people_here) or ()
        for person, name in people:
            chip = QPushButton(f"{name}  ✕")
            chip.setProperty("person", person)
            chip.setProperty(NEVER_FIRST, True)
            chip.setAccessibleName(tr("Take {name} off the list", name=name))
            chip.setToolTip(tooltip(tr("Press to take off the list; their jobs keep the name")))
            chip.clicked.connect(self._take_off)
            self._row.addWidget(chip)
        if not people:
            self._row.addWidget(plain_label(tr("Nobody yet: type a name and press Add."), "quiet"))

    def _add(self, name: str) -> object:
        return self._desk.do(actions.add_person, name)

    @Slot()
    def _add_now(self) -> None:
        if self._name.text():
            self._name.save_now()
        else:
            self._add("")  # it says what is missing

    @Slot()
    def _take_off(self) -> None:
        self._desk.do(actions.person_left, int(self.sender().property("person")))

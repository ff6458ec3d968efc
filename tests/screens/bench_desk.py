"""A bench for the tests of Old & New and the Tool Drawer: a shop, a job, and its page."""

from __future__ import annotations

from typing import Any, TypeVar

from PySide6.QtCore import Qt, Slot
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton, QWidget

from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.old_and_new_section import OldAndNewSection
from desktop_app.parts_compared.stored_pairs import pairs_of_job
from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import ReadingPage

W = TypeVar("W", bound=QWidget)


def all_kinds() -> dict[str, PartKind]:
    """Return the kinds that come with the program."""
    return load_kinds([resource_path("part_kinds")]).kinds


def new_job(record: ShopRecord, plate: str = "TH 1") -> int:
    """Write up an invented car and return its job."""
    said = WriteUp(
        concern="misses when damp",
        plate=plate,
        description="1.8-litre compact hatchback",
        odometer=118_420,
    )
    made = write_up(record, said).made
    assert made is not None
    return made


def named(page: QWidget, sort: type[W], name: str) -> W:
    """Return the widget of this accessible name, or say which ones there are."""
    found = [one for one in page.findChildren(sort) if one.accessibleName() == name]
    there = sorted({one.accessibleName() for one in page.findChildren(sort)})
    assert len(found) == 1, f"{len(found)} called “{name}”; there are {there}"
    return found[0]


def words_of(page: QWidget) -> str:
    """Return everything that is written on the page now."""
    shown = (one for one in page.findChildren(QLabel) if one.isVisibleTo(page))
    return "\n".join(one.text() for one in shown).replace("\u00a0", " ")


def retype(page: QWidget, qtbot: Any, name: str, text: str) -> QLineEdit:
    """Type over what stands in a field and press Enter."""
    field = named(page, QLineEdit, name)
    field.setFocus()
    field.selectAll()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    return field


class Bench(ReadingPage):
    """A page with the Old & New section of one job, shown again after every deed."""

    def __init__(self, desk: Desk, job_id: int) -> None:
        super().__init__()
        self.desk = desk
        self.job_id = job_id
        self.section = OldAndNewSection(desk, all_kinds())
        self.column.addWidget(self.section)
        desk.changed.connect(self.reread)
        self.reread()

    @Slot(object)
    def reread(self, _done: object = None) -> None:
        """Show the job as it is kept now."""
        self.section.show_job(self.desk.ask(read_job, self.job_id))


def lay(bench: Bench, qtbot: Any, kind: str, position: str = "") -> int:
    """Lay a pair side by side as a user does, and return its id."""
    line = named(bench, QLineEdit, "Part kind")
    qtbot.keyClicks(line, kind)
    qtbot.keyClicks(named(bench, QLineEdit, "Position of the part"), position)
    press(bench, qtbot, "Lay old and new side by side")
    return int(bench.desk.ask(pairs_of_job, bench.job_id)[-1])


def press(bench: Bench, qtbot: Any, words: str) -> None:
    """Press the button that says this, by text or accessible name."""
    buttons = bench.findChildren(QPushButton)
    button = next(b for b in buttons if words in (b.text(), b.accessibleName()))
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)

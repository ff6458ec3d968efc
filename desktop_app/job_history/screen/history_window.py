"""The history of a job in a window of its own: what was done, undo from here, the sealed copy."""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import Qt, Slot
from PySide6.QtGui import QCloseEvent
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPushButton, QVBoxLayout, QWidget
from shiboken6 import isValid

from desktop_app.job_history.screen.history_list import HistoryList
from desktop_app.job_history.sealing_actions import (
    SealedCopy,
    make_sealed_copy,
    proposed_name,
)
from desktop_app.job_history.stored_job_history import JobHistory, read_history
from desktop_app.job_history.take_back_actions import undo_from_here
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.texts import plain_label

_READING = tr("The history is being read …")
_SEALING = tr("The sealed copy is being made …")
_NOTHING = tr("No entry of the history speaks of this job.")
_UNMARKED = tr("Mark an entry in the list first.")
_ALONE = tr("Takes back this entry alone; what came later stays.")
_WHAT_FOR = tr("All evidence of this job in one file, so that any change to it shows")


class HistoryWindow(QWidget):
    """Stands beside the main window and follows what is done there."""

    def __init__(
        self,
        desk: Desk,
        kinds: Mapping[str, PartKind],
        symptoms: Mapping[str, str],
        job_id: int,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr("History"))
        self.resize(1000, 720)
        self._desk, self._kinds, self._symptoms, self._job_id = desk, kinds, symptoms, job_id
        self._number = ""
        self._reading: Errand | None = None
        self._sealing: Errand | None = None
        self._title = plain_label(tr("History"), "heading", wrap=True)
        self._list = HistoryList()
        self._why = plain_label("", "quiet", wrap=True)
        self._says = plain_label("", wrap=True)
        self._undo = QPushButton(tr("Undo this entry"))
        self._seal = QPushButton(tr("Sealed copy…"))
        self._lay_out()
        self._list.chosen.connect(self._show_marked)
        self._undo.clicked.connect(self._press_undo)
        self._seal.clicked.connect(self._ask_where)
        on_key(self, Qt.Key.Key_Escape, tr("closes the history"), self.close)
        desk.changed.connect(self._hear)
        desk.told.connect(self._hear_trouble)
        self._show_marked()
        self.read()

    def read(self) -> None:
        """Read the history beside the window; what is on the way already is left."""
        if self._reading is not None and isValid(self._reading):
            self._reading.stop()
        if not self._number:
            self._says.setText(_READING)
        work = partial(read_history, self._desk.record, self._job_id, self._kinds, self._symptoms)
        self._reading = self._run(
            tr("Reading the history"), work, self._show_history, self._not_read
        )

    def closeEvent(self, event: QCloseEvent) -> None:
        for errand in (self._reading, self._sealing):
            if errand is not None and isValid(errand):
                errand.stop()
        self.deleteLater()
        super().closeEvent(event)

    def _lay_out(self) -> None:
        self._says.setTextInteractionFlags(
            Qt.TextInteractionFlag.TextSelectableByMouse
            | Qt.TextInteractionFlag.TextSelectableByKeyboard
        )
        self._undo.setAccessibleName(tr("Undo this entry: take back the marked entry alone"))
        self._seal.setAccessibleName(tr("Sealed copy of this job"))
        foot = QHBoxLayout()
        foot.addWidget(self._undo)
        foot.addWidget(self._why, 1)
        foot.addWidget(self._seal)
        column = QVBoxLayout(self)
        column.addWidget(self._title)
        column.addWidget(self._list, 1)
        column.addLayout(foot)
        column.addWidget(self._says)

    def _run(
        self,
        words: str,
        work: Callable[[], Generator[Step, None, Any]],
        then: Callable[[Any], None],
        failed: Callable[[Any], None],
    ) -> Errand:
        """Run an errand whose trouble this window says itself, as long as it is there."""

        def arrived(result: Any) -> None:
            if isValid(self):
                (failed if isinstance(result, ShopTrouble) else then)(result)

        errand = self._desk.errands.run(words, partial(_carried_out, work), arrived)
        errand.failed.connect(failed)
        return errand

    def _show_history(self, history: JobHistory) -> None:
        if not self._number:
            self._says.setText("")
        self._number = history.number
        self.setWindowTitle(tr("History of job {number}", number=history.number))
        self._title.setText(tr("What was done to job {number}", number=history.number))
        if not history.told:
            self._says.setText(_NOTHING)
        self._list.show_entries(history.told)
        if self.isActiveWindow() and self.focusWidget() is None:
            self._list.take_focus()

    @Slot()
    def _show_marked(self) -> None:
        entry = self._list.marked()
        off_because(self._undo, _UNMARKED if entry is None else entry.stays)
        off_because(self._seal, self._why_not_sealed(), _WHAT_FOR)
        self._why.setText("" if entry is None else entry.stays or _ALONE)

    def _why_not_sealed(self) -> str:
        if self._sealing is not None:
            return _SEALING
        return "" if self._number else tr("The history of this job is not read yet.")

    @Slot()
    def _press_undo(self) -> None:
        entry = self._list.marked()
        if entry is not None:
            self._says.setText("")
            self._desk.do(undo_from_here, entry.seq)

    @Slot(object)
    def _hear(self, _done: Any) -> None:
        self.read()

    @Slot(object)
    def _hear_trouble(self, trouble: Any) -> None:
        """Say what was refused here too: the notice strip is behind this window."""
        if self.isActiveWindow():
            self._say_failed(trouble)

    @Slot(object)
    def _say_failed(self, trouble: Any) -> None:
        if isinstance(trouble, ShopTrouble):
            self._says.setText(trouble.sentence())
        elif isinstance(trouble, str):
            self._says.setText(trouble)
        elif trouble is not None:
            self._says.setText(tr("That did not work; it is a mistake of the program."))

    @Slot()
    def _ask_where(self) -> None:
        name = f"{proposed_name(self._number)}.zip"
        chosen, _ = QFileDialog.getSaveFileName(
            self, tr("Where the sealed copy goes"), str(Path.home() / name), "ZIP (*.zip)"
        )
        if chosen:
            to = Path(chosen)
            to = to if to.suffix.lower() == ".zip" else to.with_name(f"{to.name}.zip")
            self._says.setText(_SEALING)
            record = self._desk.record
            work = partial(make_sealed_copy, record, self._job_id, self._kinds, self._symptoms, to)
            self._sealing = self._run(
                tr("Making the sealed copy"), work, self._say_sealed, self._not_sealed
            )
            self._show_marked()

    def _say_sealed(self, made: SealedCopy) -> None:
        said = [tr("Written to {place}.", place=made.place)]
        if gone := len(made.facts.missing_photos):
            said.append(
                tr("{photos} of its photos are gone or damaged and not in it.", photos=gone)
            )
        said.append(
            tr(
                "Its seal is {seal}: note it where nobody can change it. READ ME.txt in it says "
                "what it proves.",
                seal=made.seal,
            )
        )
        self._says.setText(" ".join(said))
        self._sealing = None
        self._show_marked()

    @Slot(object)
    def _not_sealed(self, trouble: Any) -> None:
        self._sealing = None
        self._show_marked()
        self._say_failed(trouble)

    @Slot(object)
    def _not_read(self, trouble: Any) -> None:
        """Show no longer what is not so any more; an errand that a newer one stopped says None."""
        if trouble is not None:
            self._number = ""
            self._list.show_entries(())
            self._say_failed(trouble)


def _carried_out(work: Callable[[], Generator[Step, None, Any]]) -> Generator[Step, None, Any]:
    """Do the work; a ShopTrouble becomes its result, so that the window itself can say it."""
    try:
        return (yield from work())
    except ShopTrouble as trouble:
        return trouble

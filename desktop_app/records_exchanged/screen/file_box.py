"""The file to be brought in: chosen, what it was taken for, and how it is cut into cells."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QFileDialog, QHBoxLayout, QPushButton, QWidget

from desktop_app.language import tr
from desktop_app.records_exchanged.screen.file_in_hand import FileInHand
from desktop_app.records_exchanged.screen.progress_line import ProgressLine
from desktop_app.records_exchanged.taken_for_granted import SIGNS, taken_for_granted
from desktop_app.shop_window.fields import ChoiceField, Labelled
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.page import Section
from desktop_app.shop_window.texts import plain_label

INVITATION = tr(
    "Choose a table of old jobs, or drop it here: CSV, text or XLSX, one row for each "
    "job, or for each part of a job. Nothing is written before you have seen what "
    "would happen."
)
_FILTER = tr("Tables (*.csv *.tsv *.txt *.xlsx *.xlsm);;All files (*)")
_LETTERS = ("utf-8", "cp1252", "cp1250", "latin-1", "utf-16")
_ROWS = 30  # so far down headers are looked for


class FileBox(Section):
    """Shows the file in hand; `chosen` names another file or folder."""

    chosen = Signal(object)  # Path

    def __init__(self, file: FileInHand) -> None:
        super().__init__(tr("Bring records in"))
        self._file = file
        self._folder = Path.home()
        self._name = plain_label("", wrap=True)
        self._said = plain_label("", "quiet", wrap=True)
        self._kept = plain_label(
            tr("The columns are taken from the last file like this one."), wrap=True
        )
        self._forget = QPushButton(tr("Forget this map"))
        self._forget.clicked.connect(file.forget_map)
        self._progress = ProgressLine(tr("looking through the file"))
        self._progress.stop_wanted.connect(file.stop)
        file.stepped.connect(self._progress.step)
        self._letters = self._choice(tr("Letters"), "encoding")
        self._parted = self._choice(tr("Cells parted by"), "delimiter")
        self._sheet = self._choice(tr("Sheet"), "sheet")
        self._headers = self._choice(tr("Headers in row"), "header_row")
        self._lay_out()
        file.changed.connect(self._show)

    def _choice(self, words: str, key: str) -> Labelled:
        def save(value: Any) -> None:
            self._file.lay_down(**{key: value})

        return Labelled(words, ChoiceField(words, [], save))

    def _lay_out(self) -> None:
        choose, folder = (
            QPushButton(tr("Choose a file…")),
            QPushButton(tr("Choose an export’s folder…")),
        )
        choose.setObjectName("next")
        choose.clicked.connect(self._choose)
        folder.clicked.connect(self._choose_folder)
        ways = QWidget()
        row = FlowRow(ways)
        row.addWidget(choose)
        row.addWidget(folder)
        self._cut = QWidget()
        cut = FlowRow(self._cut, spacing=12)
        for field in (self._letters, self._parted, self._sheet, self._headers):
            cut.addWidget(field)
        self._map = QWidget()
        kept = QHBoxLayout(self._map)
        kept.setContentsMargins(0, 0, 0, 0)
        kept.addWidget(self._kept, 1)
        kept.addWidget(self._forget)
        self.column.addWidget(plain_label(INVITATION, "quiet", wrap=True))
        self.column.addWidget(ways)
        for widget in (self._name, self._progress, self._said, self._map, self._cut):
            self.column.addWidget(widget)
            widget.hide()

    @Slot()
    def _choose(self) -> None:
        name, _ = QFileDialog.getOpenFileName(
            self, tr("A table of jobs"), str(self._folder), _FILTER
        )
        self._take(name)

    @Slot()
    def _choose_folder(self) -> None:
        self._take(QFileDialog.getExistingDirectory(self, tr("An export"), str(self._folder)))

    def _take(self, name: str) -> None:
        if name:
            path = Path(name)
            self._folder = path.parent
            self.chosen.emit(path)

    @Slot()
    def _show(self) -> None:
        file, found = self._file, self._file.found
        self._name.setText(file.trouble or (file.path.name if file.path else ""))
        self._name.setVisible(bool(file.path))
        if file.busy() and self._progress.isHidden():
            self._progress.begin(
                tr("Looking through {file}", file=file.path.name if file.path else "")
            )
        elif not file.busy():
            self._progress.end()
        said = [*taken_for_granted(found), file.said] if found is not None else []
        self._said.setText(" ".join(said).strip())
        self._said.setVisible(bool(said))
        self._map.setVisible(found is not None and file.choices.kept is not None)
        self._cut.setVisible(found is not None)
        if found is not None:
            self._show_cut()

    def _show_cut(self) -> None:
        """Offer for each choice what was found first, then what may stand in its place."""
        file, found = self._file, self._file.found
        assert found is not None
        laid, parted = file.laid_down, SIGNS.get(found.shape.delimiter, found.shape.delimiter)
        letters = [(name, name) for name in _LETTERS]
        _offer(
            self._letters,
            tr("as it looks ({found})", found=found.encoding),
            letters,
            laid.encoding,
        )
        _offer(
            self._parted,
            tr("as it looks ({found})", found=parted),
            list(SIGNS.items()),
            laid.delimiter,
        )
        sheets = [(name, name) for name in file.sheets[1:]]
        _offer(self._sheet, file.sheets[0] if file.sheets else "", sheets, laid.sheet)
        rows = [(row, str(row)) for row in range(1, _ROWS + 1)]
        _offer(
            self._headers,
            tr("as it looks ({found})", found=found.header_row),
            rows,
            laid.header_row,
        )
        for field, shown in (
            (self._letters, not found.from_workbook),
            (self._parted, not found.from_workbook),
            (self._sheet, len(file.sheets) > 1),
        ):
            field.setVisible(shown)


def _offer(labelled: Labelled, first: str, others: list[tuple[Any, str]], value: Any) -> None:
    field = labelled.field
    assert isinstance(field, ChoiceField)
    choices = [(None, first), *others]
    if [(field.itemData(i), field.itemText(i)) for i in range(field.count())] != choices:
        field.set_choices(choices)
    field.show_value(value)

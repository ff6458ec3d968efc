"""The preview of a job's sheet: its pages as they will be printed, to look at, print or save."""

from __future__ import annotations

from collections.abc import Callable, Generator, Mapping
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QSize, Qt, Slot
from PySide6.QtGui import QCloseEvent, QImage, QKeySequence, QPixmap
from PySide6.QtWidgets import (
    QFileDialog,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)
from shiboken6 import isValid

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.screen.sheet_pages import draw_pages
from desktop_app.parts_compared.screen.sheet_printing import ask_printer, no_printer, print_pages
from desktop_app.parts_compared.sheet import check_place, put_sheet, sheet_bytes
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.copied_file import copy_file
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.errands import Errand
from desktop_app.shop_window.keys import on_key
from desktop_app.shop_window.off_because import off_because
from desktop_app.shop_window.scrolled_by_keys import scroll_by_keys
from desktop_app.shop_window.texts import plain_label

SCREEN_DPI = 96
ZOOMS = (0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 3.0)
_NO_SHEET = tr("There is no sheet yet. Wait until it is made, or make it again.")


class SheetPreview(QWidget):
    """A window of its own beside the main one; it shows the sheet as of when it was made."""

    def __init__(
        self,
        desk: Desk,
        kinds: Mapping[str, PartKind],
        job_id: int,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, Qt.WindowType.Window)
        self.setWindowTitle(tr("Comparison sheet"))
        self.resize(QSize(960, 820).boundedTo(self.screen().availableSize()))
        self._desk = desk
        self._job_id = job_id
        self._kinds = kinds
        self._pdf = b""
        self._name = "sheet.pdf"
        self._zoom = ZOOMS.index(1.0)
        self._errands: set[Errand] = set()
        self._pages: list[QLabel] = []
        self._says = plain_label("", "quiet", wrap=True)
        self._again = self._button(tr("Make it again"), tr("Make the sheet again"), self.make)
        self._print = self._button(tr("Print…"), tr("Print the sheet"), self._ask_to_print)
        self._save = self._button(
            tr("Save as PDF…"), tr("Save the sheet as PDF"), self._ask_to_save
        )
        self._copy = self._button(tr("Copy"), tr("Copy the sheet as PDF"), self._copy_it)
        self._save.setObjectName("next")
        self._smaller = self._button("−", tr("Show the pages smaller"), self._zoom_out)
        self._larger = self._button("+", tr("Show the pages larger"), self._zoom_in)
        self._percent = plain_label("100 %")
        self._scroll = QScrollArea()
        self._lay_out()
        self._add_keys()
        desk.changed.connect(self._grow_old)
        self.make()

    def page_count(self) -> int:
        """Return how many pages are shown."""
        return len(self._pages)

    def pdf(self) -> bytes:
        """Return the sheet as it is shown; nothing while it is being made."""
        return self._pdf

    @Slot()
    def make(self) -> None:
        """Make the sheet from what the record says now, and show it."""
        self._again.hide()
        self._pdf = b""
        self._allow(False)
        self._say(tr("The sheet is being made …"))
        work = partial(_make, self._desk.record, self._job_id, self._kinds, self._dpi())
        self._run(tr("Making the sheet"), work, self._show_made)

    def closeEvent(self, event: QCloseEvent) -> None:
        for errand in self._errands:
            if isValid(errand):
                errand.stop()
        self.deleteLater()
        super().closeEvent(event)

    def _lay_out(self) -> None:
        row = QHBoxLayout()
        for widget in (self._smaller, self._percent, self._larger):
            row.addWidget(widget)
        row.addStretch(1)
        for widget in (self._again, self._copy, self._print, self._save):
            row.addWidget(widget)
        inside = QWidget()
        self._column = QVBoxLayout(inside)
        self._column.setSpacing(14)
        self._column.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self._scroll.setWidgetResizable(True)
        self._scroll.setAccessibleName(tr("Pages of the sheet"))
        self._scroll.setWidget(inside)
        scroll_by_keys(self._scroll)
        column = QVBoxLayout(self)
        column.addLayout(row)
        column.addWidget(self._says)  # in a line of its own: large words leave the row no room
        column.addWidget(self._scroll, 1)
        self._scroll.setFocus()

    def _say(self, words: str) -> None:
        self._says.setText(words)
        self._says.setVisible(bool(words))

    def _add_keys(self) -> None:
        for key, does, slot in (
            (QKeySequence.StandardKey.ZoomIn, tr("larger"), self._zoom_in),
            ("Ctrl+=", tr("larger"), self._zoom_in),
            (QKeySequence.StandardKey.ZoomOut, tr("smaller"), self._zoom_out),
            (QKeySequence.StandardKey.Copy, tr("copies the sheet"), self._copy.click),
            (QKeySequence.StandardKey.Save, tr("saves the sheet"), self._save.click),
            (QKeySequence.StandardKey.Print, tr("prints the sheet"), self._print.click),
            (Qt.Key.Key_Escape, tr("closes the preview"), self.close),
        ):
            on_key(self, key, does, slot)

    def _button(self, words: str, name: str, slot: Any) -> QPushButton:
        button = QPushButton(words)
        button.setAccessibleName(name)
        button.clicked.connect(slot)
        return button

    def _dpi(self) -> float:
        return SCREEN_DPI * ZOOMS[self._zoom] * self.devicePixelRatioF()

    def _run(self, words: str, work: Any, then: Any) -> None:
        def arrived(result: Any) -> None:
            # The preview may have been closed while the errand was on its way.
            if isValid(self):
                (self._say_failed if isinstance(result, ShopTrouble) else then)(result)

        self._errands = {errand for errand in self._errands if isValid(errand)}
        errand = self._desk.errands.run(words, partial(_carried_out, work), arrived)
        errand.failed.connect(self._say_failed)
        self._errands.add(errand)

    @Slot(object)
    def _say_failed(self, trouble: Any) -> None:
        if isinstance(trouble, ShopTrouble):
            self._say(trouble.sentence())
        elif trouble is not None:
            self._say(tr("That did not work; it is a mistake of the program."))
        self._again.setVisible(not self._pdf)

    def _show_made(self, made: tuple[bytes, str, list[QImage]]) -> None:
        self._pdf, self._name, pictures = made
        number = self._name.removesuffix(".pdf").removeprefix("sheet-")
        self.setWindowTitle(tr("Sheet of job {number}", number=number))
        self._say("")
        self._show_pages(pictures)
        self._allow(True)

    def _show_pages(self, pictures: list[QImage]) -> None:
        for page in self._pages:
            self._column.removeWidget(page)
            page.deleteLater()
        self._pages = []
        for number, picture in enumerate(pictures, 1):
            pixmap = QPixmap.fromImage(picture)
            pixmap.setDevicePixelRatio(self.devicePixelRatioF())
            page = plain_label("")
            page.setPixmap(pixmap)
            page.setAccessibleName(
                tr("Page {number} of {pictures}", number=number, pictures=len(pictures))
            )
            self._column.addWidget(page)
            self._pages.append(page)
        self._percent.setText(figure(ZOOMS[self._zoom], ".0%").replace("%", " %"))

    def _allow(self, ready: bool) -> None:
        none = "" if ready else _NO_SHEET
        smallest = "" if self._zoom > 0 else tr("The pages are as small as they get.")
        largest = "" if self._zoom < len(ZOOMS) - 1 else tr("The pages are as large as they get.")
        off_because(self._save, none)
        off_because(self._copy, none)
        off_because(self._print, no_printer() or none)
        off_because(self._smaller, none or smallest)
        off_because(self._larger, none or largest)

    @Slot()
    def _zoom_in(self) -> None:
        self._zoom_to(self._zoom + 1)

    @Slot()
    def _zoom_out(self) -> None:
        self._zoom_to(self._zoom - 1)

    def _zoom_to(self, zoom: int) -> None:
        if self._pdf and 0 <= zoom < len(ZOOMS):
            self._zoom = zoom
            self._allow(True)
            work = partial(_draw, self._pdf, self._dpi())
            self._run(tr("Drawing the pages"), work, self._show_pages)

    @Slot(object)
    def _grow_old(self, _done: Any) -> None:
        if self._pdf:
            self._say(tr("Something was written down since this sheet was made."))
            self._again.show()

    @Slot()
    def _ask_to_save(self) -> None:
        chosen, _ = QFileDialog.getSaveFileName(
            self, tr("Save the sheet"), str(Path.home() / self._name), "PDF (*.pdf)"
        )
        if chosen:
            to = Path(chosen)
            to = to if to.suffix.lower() == ".pdf" else to.with_name(f"{to.name}.pdf")
            self._run(tr("Saving the sheet"), partial(_put, self._pdf, to), self._say_saved)

    @Slot()
    def _copy_it(self) -> None:
        try:
            copy_file(self._pdf, self._name, "application/pdf", self._pages[0].pixmap().toImage())
        except OSError as error:
            self._say(tr("The sheet was not copied: {why}.", why=error.strerror))
            return
        self._say(tr("Copied: paste it as a file, or its first page as a picture."))

    def _say_saved(self, to: Path) -> None:
        self._say(tr("Saved as {to}.", to=to))

    @Slot()
    def _ask_to_print(self) -> None:
        printer = ask_printer(self, self._name, len(self._pages))
        if printer is not None:
            work = partial(print_pages, self._pdf, printer)
            self._run(tr("Printing the sheet"), work, self._say_printed)

    def _say_printed(self, pages: int) -> None:
        self._say(
            tr("Sent to the printer: 1 page.")
            if pages == 1
            else tr("Sent to the printer: {pages} pages.", pages=pages)
        )


def _carried_out(work: Callable[[], Any]) -> Generator[Step, None, Any]:
    """Do the work; a ShopTrouble becomes its result, so that the preview itself can say it."""
    try:
        result = work()
        if isinstance(result, Generator):
            result = yield from result
    except ShopTrouble as trouble:
        return trouble
    return result


def _make(
    record: ShopRecord, job_id: int, kinds: Mapping[str, PartKind], dpi: float
) -> tuple[bytes, str, list[QImage]]:
    facts = read_sheet(record, job_id, kinds)
    pdf = sheet_bytes(facts)
    return pdf, facts.file_name, list(draw_pages(pdf, dpi))


def _draw(pdf: bytes, dpi: float) -> list[QImage]:
    return list(draw_pages(pdf, dpi))


def _put(pdf: bytes, to: Path) -> Path:
    check_place(to)
    put_sheet(pdf, to)
    return to

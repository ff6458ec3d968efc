"""A sheet on its way to a printer: which one, and its pages drawn in the printer's fineness."""

from __future__ import annotations

from collections.abc import Generator
from typing import TYPE_CHECKING

from PySide6.QtCore import QRect
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.parts_compared.screen.sheet_pages import draw_pages
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

PRINT_DPI = 300


def no_printer() -> str:
    """Return why nothing can be printed here; nothing where a printer is set up."""
    from PySide6.QtPrintSupport import QPrinterInfo

    if QPrinterInfo.availablePrinterNames():
        return ""
    return tr("No printer is set up on this computer. Save the sheet as PDF instead.")


def ask_printer(parent: QWidget, name: str, pages: int) -> QPrinter | None:
    """Ask which printer and which of the pages; None where nobody wants to print after all."""
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(name)
    printer.setResolution(PRINT_DPI)
    printer.setFullPage(True)
    dialog = QPrintDialog(printer, parent)
    dialog.setMinMax(1, max(1, pages))
    return printer if dialog.exec() == QPrintDialog.DialogCode.Accepted else None


def print_pages(pdf: bytes, printer: QPrinter) -> Generator[Step, None, int]:
    """Print a sheet page by page and return how many pages went; runs beside the window.

    Each page keeps its size where the paper has room for it, and is made smaller where not.
    """
    pictures = list(draw_pages(pdf, PRINT_DPI))
    first = max(1, printer.fromPage())
    last = min(len(pictures), printer.toPage() or len(pictures))
    painter = QPainter()
    if not painter.begin(printer):
        raise ShopTrouble(
            tr("The printer did not take the sheet."),
            do=tr("Look whether it is on, or save it as PDF."),
        )
    try:
        for number in range(first, last + 1):
            yield Step(
                number - first, last - first + 1, tr("Printing page {number}", number=number)
            )
            if number > first:
                printer.newPage()
            picture = pictures[number - 1]
            paper = printer.paperRect(printer.Unit.DevicePixel).toRect()
            inked = printer.resolution() / PRINT_DPI
            wide, high = picture.width() * inked, picture.height() * inked
            fit = min(1.0, paper.width() / wide, paper.height() / high)
            painter.drawImage(QRect(0, 0, round(wide * fit), round(high * fit)), picture)
    finally:
        painter.end()
    return last - first + 1

"""A card on its way to a printer: at its true size, whatever the printer would rather do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QPageLayout, QPageSize, QPainter
from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, PAPER_WORDS, card_words
from desktop_app.part_photos.bench_card.card_page import card_page
from desktop_app.part_photos.screen.card_painting import paint
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from PySide6.QtPrintSupport import QPrinter

_PAPERS = {"a4": QPageSize.PageSizeId.A4, "letter": QPageSize.PageSizeId.Letter}
_SLACK_MM = 1.0  # papers are named in whole points or tenths of an inch
_MM_PER_INCH = 25.4


def no_printer() -> str:
    """Return why nothing can be printed here; nothing where a printer is set up."""
    from PySide6.QtPrintSupport import QPrinterInfo

    if QPrinterInfo.availablePrinterNames():
        return ""
    return tr("No printer is set up on this computer. Save the card as PDF instead.")


def ask_printer(parent: QWidget, layout: CardLayout) -> QPrinter | None:
    """Ask which printer takes the card; None where nobody wants to print after all."""
    from PySide6.QtPrintSupport import QPrintDialog, QPrinter

    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setDocName(card_words(layout))
    printer.setPageSize(QPageSize(_PAPERS[layout.paper]))
    printer.setPageOrientation(QPageLayout.Orientation.Portrait)
    printer.setFullPage(True)
    printer.setDuplex(QPrinter.DuplexMode.DuplexNone)
    dialog = QPrintDialog(printer, parent)
    dialog.setOption(QPrintDialog.PrintDialogOption.PrintPageRange, False)
    return printer if dialog.exec() == QPrintDialog.DialogCode.Accepted else None


def print_card(layout: CardLayout, printer: QPrinter) -> None:
    """Print a card at 100 %; a ShopTrouble where the chosen paper has no room for it."""
    printer.setFullPage(True)
    paper = printer.pageLayout().fullRect(QPageLayout.Unit.Millimeter)
    wide, high = PAGES_MM[layout.paper]
    if paper.width() < wide - _SLACK_MM or paper.height() < high - _SLACK_MM:
        raise ShopTrouble(
            tr(
                "The chosen paper is {width:.0f} × {height:.0f} mm; the card needs "
                "{wide:g} × {high:g} mm.",
                width=paper.width(),
                height=paper.height(),
                wide=wide,
                high=high,
            ),
            kept=tr("Nothing was printed: a card made smaller would measure wrongly."),
            do=tr(
                "Choose {paper} paper, upright, or a card for the other paper.",
                paper=PAPER_WORDS[layout.paper],
            ),
        )
    painter = QPainter()
    if not painter.begin(printer):
        raise ShopTrouble(
            tr("The printer did not take the card."),
            do=tr("Look whether it is on, or save it as PDF."),
        )
    try:
        painter.scale(printer.logicalDpiX() / _MM_PER_INCH, printer.logicalDpiY() / _MM_PER_INCH)
        paint(painter, card_page(layout))
    finally:
        painter.end()

"""The Bench Card page as someone uses it who prints a card and measures it once."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import cv2
import numpy as np
import pytest
from pypdfium2 import PdfDocument
from PySide6.QtCore import QMarginsF, Qt
from PySide6.QtGui import QPageLayout, QPageSize
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QApplication, QComboBox, QFileDialog, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.card_actions import note_printed_card
from desktop_app.part_photos.screen.bench_card_page import BenchCardPage
from desktop_app.part_photos.screen.card_printing import print_card
from desktop_app.part_photos.sheet_card import card_pdf
from desktop_app.part_photos.stored_cards import PrintedCardKept, printed_cards
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from tests.screens.bench_desk import named, retype, words_of


@pytest.fixture
def desk(qapp: QApplication, shop: ShopRecord) -> Iterator[Desk]:
    """A desk with an open shop."""
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


@pytest.fixture
def page(qtbot: QtBot, desk: Desk) -> BenchCardPage:
    """The page of a shop that has no card yet, shown."""
    page = BenchCardPage(desk)
    qtbot.addWidget(page)
    page.resize(1100, 900)
    page.show()
    page.came_here()
    return page


def press(qtbot: QtBot, page: QWidget, name: str) -> None:
    """Press the button of this accessible name."""
    qtbot.mouseClick(named(page, QPushButton, name), Qt.MouseButton.LeftButton)


def kept(desk: Desk) -> tuple[PrintedCardKept, ...]:
    """Return the cards in use."""
    found = desk.ask(printed_cards)
    assert isinstance(found, tuple)
    return found


def choose(qtbot: QtBot, page: QWidget, letter: str) -> None:
    """Choose a paper by its first letter."""
    box = named(page, QComboBox, "Paper of the card")
    box.setFocus()
    qtbot.keyClicks(box, letter)


def test_three_pictures_say_how_it_is_used(page: BenchCardPage) -> None:
    names = [one.accessibleName() for one in page.findChildren(QWidget)]
    assert [name for name in names if name.startswith("Picture: ")] == [
        "Picture: Card flat on a board",
        "Picture: Part in the tinted field",
        "Picture: Camera roughly above, all of it sharp",
    ]
    assert "3  Camera roughly above, all of it sharp" in words_of(page)
    assert "No card is noted yet" in words_of(page)


def test_a_card_is_noted_measured_and_put_away(
    qtbot: QtBot, page: BenchCardPage, desk: Desk
) -> None:
    press(qtbot, page, "Note that a card of this paper is printed")
    assert "Card 1, A4, printed 2026-11-16" in words_of(page)
    assert "Noted below as card 1: write that number on it" in words_of(page)
    assert "Never measured. Lengths from photos on this card may be off" in words_of(page)
    retype(page, qtbot, "Ruler of card 1 as measured", "150,3")
    assert kept(desk)[0].measured_mm == 150.3
    assert "printed 0.20 % larger than drawn" in words_of(page)
    desk.undo()
    assert named(page, QLineEdit, "Ruler of card 1 as measured").text() == ""
    assert "Never measured" in words_of(page)
    press(qtbot, page, "Put card 1 away")
    assert kept(desk) == ()
    assert "No card is noted yet" in words_of(page)
    desk.undo()
    assert named(page, QLineEdit, "Ruler of card 1 as measured").isVisible()


def test_inches_are_taken_and_a_wrong_length_stays_in_its_field(
    qtbot: QtBot, page: BenchCardPage, desk: Desk
) -> None:
    press(qtbot, page, "Note that a card of this paper is printed")
    field = retype(page, qtbot, "Ruler of card 1 as measured", "5.913")
    assert "Is that in inches? Then write 5.913 in." in words_of(page)
    assert (field.text(), kept(desk)[0].measured_mm) == ("5.913", None)
    retype(page, qtbot, "Ruler of card 1 as measured", "long")
    assert "“long” can't be understood as a length." in words_of(page)
    retype(page, qtbot, "Ruler of card 1 as measured", "5.913 in")
    assert kept(desk)[0].measured_mm == pytest.approx(150.19, abs=0.001)
    field.selectAll()
    qtbot.keyClick(field, Qt.Key.Key_Delete)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    assert kept(desk)[0].measured_mm is None


def test_a_shop_that_speaks_inches_reads_and_types_them(
    qtbot: QtBot, page: BenchCardPage, desk: Desk
) -> None:
    press(qtbot, page, "Note that a card of this paper is printed")
    desk.do(change_rule, "length_unit", "inch")
    assert "drawn: 5.9055 in" in words_of(page)
    retype(page, qtbot, "Ruler of card 1 as measured", "5.913")
    assert kept(desk)[0].measured_mm == pytest.approx(150.19, abs=0.001)


def test_another_paper_gives_another_card(qtbot: QtBot, page: BenchCardPage, desk: Desk) -> None:
    choose(qtbot, page, "L")
    assert named(page, QWidget, "Preview: Benchwitness bench card, Letter").isVisible()
    press(qtbot, page, "Note that a card of this paper is printed")
    assert kept(desk)[0].layout == bench_card("letter")


def test_the_preview_shows_the_card(page: BenchCardPage) -> None:
    preview = named(page, QWidget, "Preview: Benchwitness bench card, A4").grab().toImage()
    dark = [
        preview.pixelColor(x, y).lightness() < 60
        for x in range(preview.width())
        for y in range(preview.height())
    ]
    # Twenty markers of 16 mm, about three fifths black, on a page of 210 by 297 mm.
    assert 0.03 < sum(dark) / len(dark) < 0.08


def test_the_card_is_saved_as_pdf(
    qtbot: QtBot, page: BenchCardPage, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    proposed: list[str] = []

    def choose_place(_parent: object, _title: str, name: str, _filter: str) -> tuple[str, str]:
        proposed.append(Path(name).name)
        return str(tmp_path / "card for the bench"), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose_place)
    press(qtbot, page, "Save the card as PDF")
    to = tmp_path / "card for the bench.pdf"
    qtbot.waitUntil(lambda: f"Saved as {to}." in words_of(page), timeout=20_000)
    assert proposed == ["bench-card-a4.pdf"]
    assert to.read_bytes() == card_pdf(bench_card("a4"))


def test_a_place_that_cannot_be_written_is_told(
    qtbot: QtBot, page: BenchCardPage, desk: Desk, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    nowhere = str(tmp_path / "no such folder" / "card.pdf")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (nowhere, ""))
    with qtbot.waitSignal(desk.told, timeout=20_000) as told:
        press(qtbot, page, "Save the card as PDF")
    assert "There is no folder" in told.args[0].sentence()


def test_without_a_printer_the_button_says_why(
    page: BenchCardPage, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", lambda: [])
    page.came_here()
    button = named(page, QPushButton, "Print the card")
    assert not button.isEnabled()
    assert "No printer is set up" in button.accessibleDescription()
    assert "No printer is set up" in words_of(page)


def pdf_printer(to: Path, size: QPageSize.PageSizeId) -> QPrinter:
    """Return a printer that prints into a file."""
    printer = QPrinter(QPrinter.PrinterMode.HighResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(to))
    printer.setPageSize(QPageSize(size))
    return printer


def test_what_is_printed_has_its_true_size(
    qtbot: QtBot,
    page: BenchCardPage,
    desk: Desk,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    to = tmp_path / "printed.pdf"

    def accept(dialog: QPrintDialog) -> int:
        dialog.printer().setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        dialog.printer().setOutputFileName(str(to))
        return QPrintDialog.DialogCode.Accepted

    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", lambda: ["office"])
    monkeypatch.setattr(QPrintDialog, "exec", accept)
    page.came_here()
    press(qtbot, page, "Print the card")
    qtbot.waitUntil(lambda: "Sent to the printer" in words_of(page), timeout=20_000)
    assert "Card 1, A4" in words_of(page)
    document = PdfDocument(to.read_bytes())
    picture = document[0].render(scale=200 / 72).to_numpy()[:, :, :3].copy()
    assert len(document) == 1
    document.close()
    detector = cv2.aruco.ArucoDetector(cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_5X5_100))
    found, ids, _ = detector.detectMarkers(picture)
    where = {int(one): corners[0] for one, corners in zip(ids.ravel(), found, strict=True)}
    assert set(where) == bench_card("a4").ids
    for marker in bench_card("a4").markers:
        mm = (where[marker.id] + 0.5) * 25.4 / 200
        assert np.abs(mm - np.array(marker.corners_mm)).max() < 0.3


@pytest.mark.parametrize(
    ("size", "orientation"),
    [
        (QPageSize.PageSizeId.A5, QPageLayout.Orientation.Portrait),
        (QPageSize.PageSizeId.Letter, QPageLayout.Orientation.Portrait),
        (QPageSize.PageSizeId.A4, QPageLayout.Orientation.Landscape),
    ],
)
def test_a_card_is_never_made_smaller_to_fit(
    qapp: QApplication,
    tmp_path: Path,
    size: QPageSize.PageSizeId,
    orientation: QPageLayout.Orientation,
) -> None:
    printer = pdf_printer(tmp_path / "printed.pdf", size)
    printer.setPageOrientation(orientation)
    with pytest.raises(ShopTrouble, match="would measure wrongly"):
        print_card(bench_card("a4"), printer)
    assert not (tmp_path / "printed.pdf").exists()


def test_the_printers_margins_do_not_move_the_card(qapp: QApplication, tmp_path: Path) -> None:
    printer = pdf_printer(tmp_path / "printed.pdf", QPageSize.PageSizeId.A3)
    printer.setPageMargins(QMarginsF(20, 30, 20, 20), QPageLayout.Unit.Millimeter)
    print_card(bench_card("a4"), printer)
    document = PdfDocument((tmp_path / "printed.pdf").read_bytes())
    picture = document[0].render(scale=100 / 72).to_numpy()
    document.close()
    dark = np.argwhere(picture[:, :, 0] < 60)[:, ::-1].min(axis=0) * 25.4 / 100
    assert dark == pytest.approx([9, 9], abs=0.3)


def test_a_change_from_elsewhere_is_shown(page: BenchCardPage, desk: Desk) -> None:
    desk.do(note_printed_card, bench_card("letter"))
    assert "Card 1, Letter" in words_of(page)

"""The preview of a sheet: its pages are shown, enlarged, saved and printed."""

from __future__ import annotations

import tempfile
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor
from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QPushButton, QScrollArea
from pytestqt.qtbot import QtBot

from desktop_app.parts_compared.screen.sheet_preview import SheetPreview
from desktop_app.parts_compared.screen.sheet_printing import print_pages
from desktop_app.repair_jobs.actions import write_correction
from desktop_app.shop_window.desk import Desk
from tests.parts_compared.sheet_story import (
    TOP,
    RotorStory,
    a_rotor,
    kinds,
    page_count,
    phone_photo,
    words_in,
)
from tests.screens.photo_desk import named


@pytest.fixture
def story(desk: Desk) -> RotorStory:
    """The rotor of J-104 with both photos."""
    story = a_rotor(desk.record)
    story.photograph(TOP, phone_photo(1), phone_photo(2))
    return story


@pytest.fixture
def preview(qtbot: QtBot, desk: Desk, story: RotorStory) -> SheetPreview:
    """The preview with its pages shown."""
    preview = SheetPreview(desk, kinds(), story.job)
    qtbot.addWidget(preview)
    preview.show()
    assert not preview.isModal()
    qtbot.waitUntil(lambda: preview.page_count() > 0, timeout=20_000)
    return preview


def page(preview: SheetPreview, number: int) -> QLabel:
    """One page as it is shown."""
    return named(preview, QLabel, f"Page {number} of {preview.page_count()}")


def said(preview: SheetPreview, words: str) -> bool:
    """Whether the preview says these words somewhere."""
    return any(words in label.text() for label in preview.findChildren(QLabel))


def press(qtbot: QtBot, preview: SheetPreview, name: str) -> None:
    """Click a button by its name."""
    qtbot.mouseClick(named(preview, QPushButton, name), Qt.MouseButton.LeftButton)


def test_the_pages_are_those_of_the_sheet(preview: SheetPreview, story: RotorStory) -> None:
    assert preview.pdf() == story.pdf()
    assert preview.page_count() == page_count(story.pdf()) == 2
    assert preview.windowTitle() == "Sheet of job J-104"
    picture = page(preview, 1).pixmap().toImage()
    assert picture.pixelColor(2, 2) == QColor("white")
    across = range(picture.width())
    assert any(picture.pixelColor(x, y).lightness() < 60 for x in across for y in range(60, 120))


def test_keys_scroll_the_pages_at_once(qtbot: QtBot, desk: Desk, story: RotorStory) -> None:
    preview = SheetPreview(desk, kinds(), story.job)
    qtbot.addWidget(preview)
    qtbot.waitUntil(lambda: preview.page_count() > 0, timeout=20_000)
    preview.show()  # with all its buttons on
    preview.activateWindow()
    qtbot.waitUntil(preview.isActiveWindow)
    bar = named(preview, QScrollArea, "Pages of the sheet").verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > bar.pageStep())
    at: list[int] = []
    for key in (Qt.Key.Key_PageDown, Qt.Key.Key_PageUp, Qt.Key.Key_End, Qt.Key.Key_Home):
        focus = QApplication.focusWidget()
        assert focus is not None
        qtbot.keyClick(focus, key)
        at.append(bar.value())
    assert at == [bar.pageStep(), 0, bar.maximum(), 0]


def test_keys_and_buttons_enlarge_the_pages(qtbot: QtBot, preview: SheetPreview) -> None:
    before = page(preview, 1).pixmap().width()
    press(qtbot, preview, "Show the pages larger")
    qtbot.waitUntil(lambda: page(preview, 1).pixmap().width() > before)
    assert said(preview, "125 %")
    qtbot.keyClick(preview, Qt.Key.Key_Minus, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: page(preview, 1).pixmap().width() == before)


def test_the_sheet_is_saved_under_the_jobs_name(
    qtbot: QtBot, preview: SheetPreview, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    proposed: list[str] = []

    def choose(_parent: object, _title: str, name: str, _filter: str) -> tuple[str, str]:
        proposed.append(Path(name).name)
        return str(tmp_path / "for the counter"), ""

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    press(qtbot, preview, "Save the sheet as PDF")
    to = tmp_path / "for the counter.pdf"
    qtbot.waitUntil(lambda: said(preview, f"Saved as {to}."))
    assert proposed == ["sheet-J-104.pdf"]
    assert to.read_bytes() == preview.pdf()


def test_a_place_that_cannot_be_written_is_said_and_nothing_is_lost(
    qtbot: QtBot, preview: SheetPreview, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    nowhere = str(tmp_path / "no such folder" / "sheet.pdf")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (nowhere, ""))
    press(qtbot, preview, "Save the sheet as PDF")
    qtbot.waitUntil(lambda: said(preview, "There is no folder"))
    assert named(preview, QPushButton, "Save the sheet as PDF").isEnabled()
    assert preview.page_count() == 2


def test_without_a_printer_the_button_says_why(preview: SheetPreview) -> None:
    if QPrinterInfo.availablePrinterNames():
        pytest.skip("a printer is set up on this computer")
    button = named(preview, QPushButton, "Print the sheet")
    assert not button.isEnabled()
    assert "No printer is set up" in button.toolTip()
    assert "No printer is set up" in button.accessibleDescription()


def test_with_a_printer_the_sheet_is_printed(
    qtbot: QtBot,
    desk: Desk,
    story: RotorStory,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    printed = tmp_path / "printed.pdf"

    def accept(dialog: QPrintDialog) -> int:
        dialog.printer().setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        dialog.printer().setOutputFileName(str(printed))
        return QPrintDialog.DialogCode.Accepted

    monkeypatch.setattr(QPrinterInfo, "availablePrinterNames", lambda: ["office"])
    monkeypatch.setattr(QPrintDialog, "exec", accept)
    preview = SheetPreview(desk, kinds(), story.job)
    qtbot.addWidget(preview)
    preview.show()
    qtbot.waitUntil(lambda: preview.page_count() > 0, timeout=20_000)
    press(qtbot, preview, "Print the sheet")
    qtbot.waitUntil(lambda: said(preview, "Sent to the printer: 2 pages."), timeout=20_000)
    assert page_count(printed.read_bytes()) == 2


def test_chosen_pages_alone_are_printed(qapp: QApplication, story: RotorStory, tmp_path: Path):
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "second.pdf"))
    printer.setFromTo(2, 2)
    assert len(list(print_pages(story.pdf(), printer))) == 1
    assert page_count((tmp_path / "second.pdf").read_bytes()) == 1


def test_a_later_change_is_told_and_the_sheet_made_again(
    qtbot: QtBot, desk: Desk, preview: SheetPreview, story: RotorStory
) -> None:
    again = named(preview, QPushButton, "Make the sheet again")
    assert again.isHidden()
    assert desk.do(write_correction, story.job, "Rotor and cap replaced.")
    assert said(preview, "Something was written down since")
    assert "Rotor and cap replaced" not in words_in(preview.pdf())
    qtbot.mouseClick(again, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: bool(preview.pdf()), timeout=20_000)
    assert "Rotor and cap replaced" in words_in(preview.pdf())
    assert again.isHidden()


def test_closing_while_the_sheet_is_made_leaves_nothing_behind(
    qtbot: QtBot, desk: Desk, story: RotorStory
) -> None:
    preview = SheetPreview(desk, kinds(), story.job)
    with qtbot.waitActive(preview):
        preview.show()
    with qtbot.waitSignal(preview.destroyed):
        qtbot.keyClick(preview, Qt.Key.Key_Escape)
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)


def test_a_job_that_is_gone_is_said(qtbot: QtBot, desk: Desk) -> None:
    preview = SheetPreview(desk, kinds(), 404)
    qtbot.addWidget(preview)
    qtbot.waitUntil(lambda: said(preview, "not in the record any more"), timeout=20_000)
    assert not named(preview, QPushButton, "Save the sheet as PDF").isEnabled()


def test_the_sheet_is_copied_as_a_file_and_as_a_picture(
    qtbot: QtBot, preview: SheetPreview, story: RotorStory
) -> None:
    qtbot.keyClick(preview, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    copied = QApplication.clipboard().mimeData()
    (place,) = (Path(url.toLocalFile()) for url in copied.urls())
    assert place.name == "sheet-J-104.pdf"
    assert place.read_bytes() == preview.pdf()
    assert bytes(copied.data("application/pdf").data()) == preview.pdf()
    assert copied.imageData().size() == page(preview, 1).pixmap().size()
    assert said(preview, "Copied: paste it as a file")
    press(qtbot, preview, "Copy the sheet as PDF")
    assert not place.exists()  # only what was copied last lies about


def test_a_sheet_that_finds_no_room_to_be_copied_says_so(
    qtbot: QtBot, preview: SheetPreview, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "file").write_text("no folder")
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "file"))
    press(qtbot, preview, "Copy the sheet as PDF")
    assert said(preview, "The sheet was not copied: Not a directory.")

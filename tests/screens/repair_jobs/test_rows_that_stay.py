"""What comes with a press at Proof comes where a place was kept for it: nothing else moves."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QApplication, QComboBox, QLabel, QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_record.record import ShopRecord
from tests.screens.at_proof import AtProof, proof_page

NEXT_CHECK = "the codes read again"
CAUGHT = "The proof failed"


@pytest.fixture
def at(qtbot: QtBot, shop: ShopRecord) -> Iterator[AtProof]:
    with proof_page(qtbot, shop) as at:
        yield at


def top(at: AtProof, widget: QWidget) -> int:
    """Where something is seen, once the page is laid out."""
    at.page.grab()
    for _ in range(4):
        QApplication.processEvents()
    return widget.mapTo(at.page, QPoint(0, 0)).y()


def test_the_first_step_that_is_ticked_moves_nothing_beneath_it(at: AtProof) -> None:
    first = at.find(QPushButton, NEXT_CHECK)
    moment = at.find(QLineEdit, "When it was done")
    assert not moment.isEnabled()
    before = top(at, first)
    at.press("Step: Codes saved")
    assert top(at, first) == before
    assert moment.isEnabled()
    assert at.find(QComboBox, "Step to put right").currentText() == "Codes saved"


def test_what_a_level_means_moves_nothing_beneath_it(at: AtProof) -> None:
    line = at.find(QLineEdit, CAUGHT)
    before = top(at, line)
    for word in ("unproven", "bay", "road", "full trip"):
        at.press(f"Proved: {word}")
        assert top(at, line) == before, word
        assert at.find(QPushButton, f"Proved: {word}").isChecked()


def test_a_code_without_its_letter_says_what_to_type(at: AtProof) -> None:
    at.type("Trouble codes, after repair", "303")
    said = "✎ “303” is not a trouble code. With its letter: type P0303 if that is meant."
    assert any(one.text() == said for one in at.page.findChildren(QLabel))
    at.type("Trouble codes, after repair", "P0303 9999")
    said = "“9999” is not a trouble code; the others are. A code is a letter P, C, B or U"
    assert any(said in one.text() for one in at.page.findChildren(QLabel))

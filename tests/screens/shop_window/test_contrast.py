"""Words stand out from what is behind them, in every look.

Checked against the contrast ratio of the Web Content Accessibility Guidelines 2.2 (W3C, 2023),
success criteria 1.4.3 (4.5 to 1) and 1.4.6 (7 to 1); the formula is that of its definition of
relative luminance.
"""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication, QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.shop_window.look import PALETTES, dress

ROLE = QPalette.ColorRole
WORDS = (
    (ROLE.WindowText, (ROLE.Window, ROLE.Base, ROLE.AlternateBase)),
    (ROLE.Text, (ROLE.Base, ROLE.AlternateBase)),
    (ROLE.ButtonText, (ROLE.Button,)),
    (ROLE.PlaceholderText, (ROLE.Base, ROLE.Window, ROLE.AlternateBase)),
    (ROLE.ToolTipText, (ROLE.ToolTipBase,)),
    (ROLE.HighlightedText, (ROLE.Highlight,)),
    (ROLE.Link, (ROLE.Base,)),
)


def luminance(colour: str) -> float:
    shares = QColor(colour).getRgbF()[:3]
    linear = [one / 12.92 if one <= 0.04045 else ((one + 0.055) / 1.055) ** 2.4 for one in shares]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """The ratio of two colours, from 1 to 21."""
    dark, light = sorted((luminance(one), luminance(other)))
    return (light + 0.05) / (dark + 0.05)


def test_the_formula_gives_the_ends_of_its_scale() -> None:
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21)
    assert contrast("#777777", "#FFFFFF") == pytest.approx(4.48, abs=0.005)  # just too little


@pytest.mark.parametrize("look", PALETTES, ids=str)
def test_words_can_be_read(look: tuple[bool, bool]) -> None:
    colours: dict[Any, str] = PALETTES[look]
    least = 7.0 if look[1] else 4.5
    weak = [
        f"{words.name} on {behind.name}: {ratio:.2f}"
        for words, grounds in WORDS
        for behind in grounds
        if (ratio := contrast(colours[words], colours[behind])) < least
    ]
    assert weak == []


def test_the_house_rule_gives_the_window_its_high_contrast(qapp: QApplication) -> None:
    try:
        dress(qapp, "high contrast")
        assert qapp.palette().color(ROLE.Mid) in (QColor("#000000"), QColor("#FFFFFF"))
        assert qapp.palette().color(ROLE.Text) == qapp.palette().color(ROLE.Mid)
    finally:
        dress(qapp, "light")
    assert qapp.palette().color(ROLE.Base) == QColor(PALETTES[False, False][ROLE.Base])


def edge_of(button: QPushButton) -> list[str]:
    """The colours from a button's left edge inwards, the last of them its fill."""
    seen, middle = button.grab().toImage(), button.height() // 2
    return [seen.pixelColor(x, middle).name() for x in range(6)]


@pytest.mark.parametrize("look", ["light", "dark", "high contrast"])
@pytest.mark.parametrize("chosen", [False, True])
def test_the_ring_of_the_focus_is_seen_around_a_button(
    qtbot: QtBot, qapp: QApplication, look: str, chosen: bool
) -> None:
    """By success criterion 1.4.11: 3 to 1 against what is beside it."""
    page, button = QWidget(), QPushButton("top, key at twelve o'clock")
    QVBoxLayout(page).addWidget(button)
    button.setCheckable(True)
    button.setChecked(chosen)
    qtbot.addWidget(page)
    try:
        dress(qapp, look)
        page.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        page.show()
        page.activateWindow()
        page.setFocus()
        before = edge_of(button)
        button.setFocus()
        qtbot.waitUntil(button.hasFocus)
        *ring, fill = edge_of(button)
        new = [one for one, other in zip(ring, before, strict=False) if one != other]
        assert max(contrast(one, fill) for one in new) > 3
    finally:
        dress(qapp, "light")


@pytest.mark.parametrize("look", ["light", "dark", "high contrast"])
def test_what_was_chosen_and_is_locked_is_told_from_what_was_not(
    qtbot: QtBot, qapp: QApplication, look: str
) -> None:
    page = QWidget()
    row = QVBoxLayout(page)
    chosen, other = buttons = QPushButton("█████"), QPushButton("█████")
    for button in buttons:
        button.setCheckable(True)
        button.setChecked(button is chosen)
        button.setEnabled(False)
        row.addWidget(button)
    qtbot.addWidget(page)
    try:
        dress(qapp, look)
        page.show()
        seen, middle = chosen.grab().toImage(), chosen.height() // 2
        words, fill = (seen.pixelColor(x, middle).name() for x in (chosen.width() // 2, 6))
        assert contrast(words, fill) > 4.5
        assert contrast(fill, other.grab().toImage().pixelColor(6, middle).name()) > 3
    finally:
        dress(qapp, "light")

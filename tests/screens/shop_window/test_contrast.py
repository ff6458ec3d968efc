"""Words stand out from what is behind them, in every look.

Checked against the contrast ratio of the Web Content Accessibility Guidelines 2.2 (W3C, 2023),
success criteria 1.4.3 (4.5 to 1) and 1.4.6 (7 to 1); the formula is that of its definition of
relative luminance.
"""

from __future__ import annotations

from typing import Any

import pytest
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QApplication

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

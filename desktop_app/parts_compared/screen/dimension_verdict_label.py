"""The label that says the verdict on one dimension, with room for the longest word of any."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QFontMetrics

from desktop_app.parts_compared.comparison import DimensionComparison
from desktop_app.parts_compared.signs import DIMENSION_SIGNS
from desktop_app.shop_window.signs import signed
from desktop_app.shop_window.texts import PlainLabel

_BESIDE = 8  # pixels


class VerdictLabel(PlainLabel):
    """It may go on in the next line between words, never within one; its column never moves."""

    def __init__(self) -> None:
        super().__init__("")
        self.setWordWrap(True)
        self._font, self._widest = "", 0

    def show_verdict(self, one: DimensionComparison) -> None:
        """Say what came out, in bold where it is to be looked at."""
        self.setText(signed(DIMENSION_SIGNS, one.verdict))
        bold = self.font()
        bold.setBold(one.settled_against or one.verdict == "too close to tell")
        self.setFont(bold)

    def minimumSizeHint(self) -> QSize:
        bold = self.font()
        bold.setBold(True)
        if bold.key() != self._font:
            self._font, self._widest = bold.key(), _widest_piece(QFontMetrics(bold))
        return QSize(self._widest + _BESIDE, super().minimumSizeHint().height())


def _widest_piece(letters: QFontMetrics) -> int:
    """Return the width of the longest piece of any verdict: a word, the first with its sign.

    What stands in most rows at first, that nothing is measured, has its one line.
    """
    widest = letters.horizontalAdvance(signed(DIMENSION_SIGNS, "not measured"))
    for verdict in DIMENSION_SIGNS:
        sign, _, words = signed(DIMENSION_SIGNS, verdict).partition("  ")
        first, *others = words.split()
        pieces = (f"{sign}  {first}", *others)
        widest = max(widest, *(letters.horizontalAdvance(one) for one in pieces))
    return widest

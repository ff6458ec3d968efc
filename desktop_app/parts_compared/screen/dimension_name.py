"""The label that names a dimension beside its readings."""

from __future__ import annotations

from PySide6.QtCore import QSize

from desktop_app.shop_window.texts import PlainLabel

_LEAST = 130  # pixels, so that the columns of one pair stand as those of the next


class DimensionName(PlainLabel):
    """It goes on in the next line between words, and cuts none however large they are."""

    def __init__(self) -> None:
        super().__init__("")
        self.setWordWrap(True)

    def minimumSizeHint(self) -> QSize:
        letters = self.fontMetrics()
        widest = max(map(letters.horizontalAdvance, self.text().split()), default=0)
        return QSize(max(_LEAST, widest), super().minimumSizeHint().height())

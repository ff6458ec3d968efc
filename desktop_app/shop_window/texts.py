"""Labels and texts that show words as they are: nothing typed is ever taken for markup."""

from __future__ import annotations

import re

from PySide6.QtCore import QSize, Qt
from PySide6.QtWidgets import QFrame, QLabel, QSizePolicy, QVBoxLayout, QWidget

from desktop_app.language import tr

DEFERS = tr("The vehicle maker's procedure, local rules and licensed people come first.")
_DEFERRED = tr("maker's procedure")  # as words say it that defer already


NARROW = 240  # pixels; no label asks a page or the window for more than this,
_LETTERS = 20  # or than so many letters, where they are large
_UNBROKEN = re.compile(r"\S{50}")


class PlainLabel(QLabel):
    """A label that shows words as they are, and never makes the window wider than the screen.

    A run of letters without a space gets places where the line may break.
    """

    def __init__(self, words: str) -> None:
        super().__init__()
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setText(words)

    def text(self) -> str:
        return self._words

    def setText(self, words: str) -> None:
        self._words = words
        super().setText(_UNBROKEN.sub("\\g<0>\u200b", words))

    def minimumSizeHint(self) -> QSize:
        hint = super().minimumSizeHint()
        most = max(NARROW, _LETTERS * self.fontMetrics().averageCharWidth())
        return QSize(min(hint.width(), most), hint.height())


def plain_label(words: str, name: str = "", *, wrap: bool = False) -> QLabel:
    """Return a label of plain text; `name` picks a look (title, heading, quiet)."""
    label = PlainLabel(words)
    label.setWordWrap(wrap)
    if wrap:
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)  # a policy that is set anew has lost it, and cuts long words
        label.setSizePolicy(policy)
    if name:
        label.setObjectName(name)
    return label


def tooltip(words: str) -> str:
    """Return words for a tooltip, which Qt would otherwise read as markup."""
    plain = words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return f"<span>{plain}</span>"


class CautionBox(QFrame):
    """A boxed caution: a triangle sign, the words, and whom they defer to."""

    def __init__(self, cautions: tuple[str, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("caution")
        column = QVBoxLayout(self)
        for words in cautions:
            column.addWidget(plain_label(f"⚠  {words}", wrap=True))
        if not any(_DEFERRED in words for words in cautions):
            column.addWidget(plain_label(DEFERS, "quiet", wrap=True))

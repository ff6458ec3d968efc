"""Lines that go into the record only when they are whole: until then what is typed is a draft."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QLineEdit, QWidget

from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import LineField, typing_pause


class LineDraft(QObject):
    """Keeps the lines of one form once typing rests; they come back when the form does."""

    def __init__(self, owner: QWidget, drafts: Drafts, lines: Mapping[str, QLineEdit]) -> None:
        super().__init__(owner)
        self._drafts, self._lines = drafts, lines
        self._form = ""
        self._kept: dict[str, str] = {}
        self._pause = typing_pause(owner, self.keep)
        for line in lines.values():
            line.textChanged.connect(self.look_again)

    def begin(self, form: str) -> None:
        """Be the draft of this form, whose lines show what is in the record by now."""
        self._form, self._kept = form, self._drafts.read(form)
        for name, line in self._lines.items():
            if name in self._kept:
                line.setText(self._kept[name])
        self._pause.stop()

    @Slot()
    def keep(self) -> None:
        """Keep what is typed and not in the record; once nothing is, there is no draft."""
        self._pause.stop()
        wanted = {name: line.text() for name, line in self._lines.items() if _waits(line)}
        if self._form and wanted != self._kept:
            self._drafts.keep(self._form, wanted)
            self._kept = wanted

    @Slot()
    def look_again(self) -> None:
        """Look, once typing rests, at what stands in the lines and what of it is kept by now."""
        self._pause.start()


def _waits(line: QLineEdit) -> bool:
    return line.unsaved() if isinstance(line, LineField) else bool(line.text().strip())

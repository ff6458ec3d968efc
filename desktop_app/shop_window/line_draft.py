"""Lines that go into the record only when they are whole: until then what is typed is a draft."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from PySide6.QtCore import QObject, Slot
from PySide6.QtWidgets import QLineEdit, QWidget

from desktop_app.shop_window.choice_list import ChoiceList
from desktop_app.shop_window.drafts import Drafts
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.typing_pause import TypingPause


class LineDraft(QObject):
    """Keeps the lines of one form once typing rests; they come back when the form does.

    What is chosen beside them goes with them. With `waits` all of it is kept as long as that says
    so; else each line that is not in the record.
    """

    def __init__(
        self,
        owner: QWidget,
        drafts: Drafts,
        lines: Mapping[str, QLineEdit],
        choices: Mapping[str, ChoiceList] | None = None,
        waits: Callable[[], bool] | None = None,
    ) -> None:
        super().__init__(owner)
        self._drafts, self._lines, self._choices = drafts, lines, choices or {}
        self._waits = waits
        self._form = ""
        self._kept: dict[str, str] = {}
        self._pause = TypingPause(owner, self.keep)
        for line in lines.values():
            line.textChanged.connect(self.look_again)
            if isinstance(line, LineField):
                line.in_form = True
        for choice in self._choices.values():
            choice.currentIndexChanged.connect(self.look_again)

    def begin(self, form: str) -> None:
        """Be the draft of this form, whose lines show what is in the record by now."""
        self._form, self._kept = form, self._drafts.read(form)
        for name, line in self._lines.items():
            if name in self._kept:
                line.setText(self._kept[name])
        for name, choice in self._choices.items():
            if name in self._kept:
                choice.setCurrentIndex(max(0, choice.findData(self._kept[name])))
        self._pause.stop()

    @Slot()
    def keep(self) -> None:
        """Keep what is typed and not in the record; once nothing is, there is no draft."""
        self._pause.stop()
        wanted = {name: line.text() for name, line in self._lines.items() if self._stays(line)}
        if wanted:
            wanted |= {name: str(one.currentData()) for name, one in self._choices.items()}
        if self._form and wanted != self._kept:
            self._drafts.keep(self._form, wanted)
            self._kept = wanted

    @Slot()
    def look_again(self) -> None:
        """Look, once typing rests, at what stands in the lines and what of it is kept by now."""
        self._pause.typed()

    def _stays(self, line: QLineEdit) -> bool:
        if self._waits is not None:
            return self._waits()
        return line.unsaved() if isinstance(line, LineField) else bool(line.text().strip())

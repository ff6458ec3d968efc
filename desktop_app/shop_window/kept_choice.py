"""Choices that the record keeps: sent later where its server is away, put back where refused.

So the screen never shows for long what nobody has: what waits is sent as soon as its page is read
anew and shows that nothing else was chosen meanwhile; else that stands, and both are told.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QTimer, Slot
from PySide6.QtWidgets import QAbstractButton, QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.beside import say_beside
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField, ThreeWay, Tick

NOT_SAVED = tr("This was not saved, and is put back. The line at the foot of the window says why.")

Save = Callable[[Any], object]  # None where it was refused


class KeptChoice:
    """What the controls below have in common; `show_value` says which row the value belongs to."""

    _desk: Desk
    _save_choice: Save
    _kept: Any = None
    _of: object = None
    _waits = False

    def chosen(self) -> Any:
        """Return what is chosen now."""
        raise NotImplementedError

    def put(self, value: Any) -> None:
        """Show a value, whoever chose it."""
        raise NotImplementedError

    def typed(self) -> str:
        """Return in words what is chosen now."""
        raise NotImplementedError

    def waits(self) -> bool:
        """Tell whether something is chosen that waits for the server."""
        return self._waits

    def show_value(self, value: Any, of: object = None) -> None:
        """Show what is kept of a row, unless something chosen there waits to be sent."""
        if self._waits and self._desk.record.away is not None:
            return
        if self._waits and of == self._of and value in (self._kept, self.chosen()):
            self._kept = value
            QTimer.singleShot(0, self._widget(), self._send)
            return
        if self._waits:
            self._tell_not_kept(other_row=of != self._of)
            self._wait_no_more()
        self._kept, self._of = value, of
        self.put(value)

    @Slot()
    def choose(self) -> None:
        """Save what somebody chose just now; chosen back, what waited waits no more."""
        if self._waits and self.chosen() == self._kept:
            self._wait_no_more()
            return
        self._send_now()

    @Slot()
    def _send(self) -> None:
        if self._waits:
            self._send_now()

    def _send_now(self) -> None:
        waited, self._waits, value = self._waits, False, self.chosen()
        if self._save_choice(value) is not None:
            self._kept = value
        elif self._desk.record.away is not None:
            self._waits = True
        else:
            self.put(self._kept)
            say_beside(self._widget(), NOT_SAVED)
        if waited or self._waits:
            self._desk.waits.emit()

    def _wait_no_more(self) -> None:
        self._waits = False
        self._desk.waits.emit()

    def _tell_not_kept(self, *, other_row: bool) -> None:
        name, mine = self._widget().accessibleName(), self.typed()
        if other_row:
            self._desk.told.emit(
                tr("{name}: “{mine}” was chosen and is not kept.", name=name, mine=mine)
            )
            return
        self._desk.told.emit(
            ShopTrouble(
                tr(
                    "{name}: something else was chosen at another desk while the server was away.",
                    name=name,
                ),
                tr("That stays; “{mine}”, chosen here, is not kept.", mine=mine),
                tr("Look at it, and choose again if yours holds."),
            )
        )

    def _widget(self) -> QWidget:
        assert isinstance(self, QWidget)
        return self


class KeptChoiceField(KeptChoice, ChoiceField):
    """A choice among several."""

    def __init__(self, desk: Desk, name: str, choices: list[tuple[Any, str]], save: Save) -> None:
        self._desk, self._save_choice = desk, save
        super().__init__(name, choices, save)

    def set_choices(self, choices: list[tuple[Any, str]]) -> None:
        """Replace what can be chosen; what waits stays chosen."""
        waits = self.chosen() if self._waits else None
        super().set_choices(choices)
        if self._waits:
            self.put(waits)

    def chosen(self) -> Any:
        """Return the value of the chosen line."""
        return self.currentData()

    def put(self, value: Any) -> None:
        """Show a value."""
        ChoiceField.show_value(self, value)

    def typed(self) -> str:
        """Return the chosen line."""
        return self.currentText()

    @Slot(int)
    def _chosen(self, _index: int) -> None:
        self.choose()


class KeptThreeWay(KeptChoice, ThreeWay):
    """A button with three states."""

    def __init__(self, desk: Desk, words: str, save: Save) -> None:
        self._desk, self._save_choice = desk, save
        super().__init__(words)
        self.turned.connect(self.choose)

    def chosen(self) -> bool | None:
        """Return its state."""
        return self._state

    def put(self, value: bool | None) -> None:
        """Show a state."""
        ThreeWay.show_value(self, value)

    def typed(self) -> str:
        """Return the word of its state."""
        return self.WORDS[self._state]


class KeptTick(KeptChoice, Tick):
    """Yes or no."""

    def __init__(self, desk: Desk, words: str, save: Save) -> None:
        self._desk, self._save_choice = desk, save
        super().__init__(words)
        self.clicked.connect(self.choose)

    def chosen(self) -> bool:
        """Tell whether it is ticked."""
        return self.isChecked()

    def put(self, value: bool) -> None:
        """Tick it, or not."""
        self.setChecked(value)

    def typed(self) -> str:
        """Return its word."""
        return tr("yes") if self.isChecked() else tr("no")


def waiting_choices(page: QWidget) -> list[KeptChoiceField | KeptThreeWay | KeptTick]:
    """Return the choices of a page that wait for the server."""
    found: list[KeptChoiceField | KeptThreeWay | KeptTick] = [
        *page.findChildren(KeptChoiceField),
        *page.findChildren(KeptThreeWay),
        *page.findChildren(KeptTick),
    ]
    return [one for one in found if one.waits()]


def put_back(button: QAbstractButton, checked: bool) -> None:
    """Let a button that can be pressed in show again what is kept, and say so beside it."""
    if button.isChecked() != checked:
        button.setChecked(checked)
        say_beside(button, NOT_SAVED)

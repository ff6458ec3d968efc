"""A choice among the people of the shop; where nobody is on the list, the way to add names."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.fields import ChoiceField

ADD_NAMES = "Add names…"  # short: it stands in the strip above the page


class PersonField(ChoiceField):
    """Saves the chosen value itself; the way to the list of people is no answer."""

    def __init__(self, desk: Desk, name: str, save: Callable[[Any], object]) -> None:
        super().__init__(name, [], self._choose)
        self._desk = desk
        self._save_person = save
        self._kept: Any = None

    def show_people(self, nobody: tuple[Any, str], people: Sequence[tuple[Any, str]]) -> None:
        """Offer these (value, name), and `nobody` before them."""
        self.set_choices([nobody, *people, *(() if people else ((ADD_NAMES, ADD_NAMES),))])

    def show_value(self, value: Any) -> None:
        """Show the kept value."""
        self._kept = value
        super().show_value(value)

    def _choose(self, value: Any) -> object:
        if value != ADD_NAMES:
            return self._save_person(value)
        self.show_value(self._kept)
        self._desk.names_wanted.emit()
        return None

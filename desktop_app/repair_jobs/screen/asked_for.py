"""Of several fields the one that is asked for: marked, said beneath it, and gone to."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.shop_window.fields import Labelled
from desktop_app.shop_window.in_sight import bring_up


class AskedFor:
    """One field at a time is marked; going there never takes the cursor away by itself."""

    def __init__(self, boxes: Mapping[str, Labelled]) -> None:
        self._boxes = boxes

    def mark(self, about: str, words: str) -> None:
        """Say beneath a field that it is asked for, and beneath no other one."""
        for name, box in self._boxes.items():
            box.ask_for(words if name == about else "")

    def go_to(self, about: str) -> None:
        """Put the cursor into a field, and bring it into sight with what is said beneath it."""
        box = self._boxes.get(about)
        if box is not None:
            box.field.setFocus()
            bring_up(box)

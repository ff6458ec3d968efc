"""`new-shop`: a shop in an empty folder."""

from __future__ import annotations

from pathlib import Path

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import new_place


def new_shop(asked: Asked) -> Outcome:
    """Make a new shop."""
    folder = Path(asked.folder).expanduser()
    new_place(folder).close()
    return Outcome({"shop": str(folder)}, (f"Made a new shop in {folder}.",))

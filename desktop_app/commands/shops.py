"""`new-shop`: a shop in an empty folder."""

from __future__ import annotations

from desktop_app.commands.named_file import at_home
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import new_place
from desktop_app.shop_record.shared_disk import on_shared_disk


def new_shop(asked: Asked) -> Outcome:
    """Make a new shop."""
    folder = at_home(asked.folder)
    new_place(folder).close()
    shared = on_shared_disk(folder)
    more = () if shared is None else (shared.sentence(),)
    return Outcome({"shop": str(folder)}, (f"Made a new shop in {folder}.", *more))

"""What is typed and would be lost with the window, because the shop's folder can't take it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import NotSaved, ShopTrouble
from desktop_app.shop_window.drafts import are_unwritten
from desktop_app.shop_window.fields import unsaved_fields
from desktop_app.shop_window.off_where_shut import typed_in

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk


def kept_till_next_time(desk: Desk) -> bool:
    """Tell whether what is typed and not saved is kept, and offered when the shop is open again.

    So it is while the shop's server is away, and while its record takes nothing.
    """
    return desk.record.away is not None or desk.not_saved is not None


def kept_nowhere(desk: Desk, pages: Mapping[str, QWidget]) -> list[ShopTrouble]:
    """Say what of the forms on the pages, by the name of their place, is kept nowhere.

    Either the shop takes no writing any more, or nothing takes drafts. What could not be saved and
    is kept as a draft is said as well: nobody closes the window and believes it saved.
    """
    if desk.why_shut is None:
        if are_unwritten(desk.record.folder):
            said = tr("What is typed can't be kept: no folder for it takes a file.")
            do = tr("Make room on the disk, copy it out, or close the window once more.")
            return [ShopTrouble(said, do=do)]
        why = desk.not_saved
        return [_not_saved(why)] if why and any(map(unsaved_fields, pages.values())) else []
    do = tr("Copy it out, or close the window once more.")
    return [
        ShopTrouble(
            tr(
                "What is typed under “{name}” can't be kept: {what}",
                name=name,
                what=desk.why_shut.what,
            ),
            do=do,
        )
        for name, page in pages.items()
        if hasattr(page, "keep_draft") and typed_in(page)
    ]


def _not_saved(why: NotSaved) -> ShopTrouble:
    kept = tr("What is typed is kept on this computer, and comes back with the shop.")
    close = tr("Or close the window once more.")
    return ShopTrouble(why.what, kept, f"{why.do} {close}")

"""What is typed and would be lost with the window, because the shop's folder can't take it."""

from __future__ import annotations

from collections.abc import Mapping
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.drafts import are_unwritten
from desktop_app.shop_window.off_where_shut import typed_in

if TYPE_CHECKING:
    from desktop_app.shop_window.desk import Desk


def kept_nowhere(desk: Desk, pages: Mapping[str, QWidget]) -> list[ShopTrouble]:
    """Say what of the forms on the pages, by the name of their place, is kept nowhere.

    Either the shop takes no writing any more, or its disk takes no drafts.
    """
    if desk.why_shut is None:
        said = tr("What is typed in the forms can't be kept: the shop's folder takes no file.")
        do = tr("Make room on its disk, copy it out, or close the window once more.")
        return [ShopTrouble(said, do=do)] if are_unwritten(desk.record.folder) else []
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

"""A phone takes photos of one side of a pair: what it is told, and the deed behind it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from desktop_app.parts_compared.pair_view import PairView
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.phone_photo_actions import put_to_part
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.stored_pair_place import job_number_of_pair, job_of_pair
from desktop_app.shop_window.desk import Desk

if TYPE_CHECKING:
    from desktop_app.part_photos.screen.phone_panel import PhonePanel


def take_by_phone(
    beside: QWidget,
    desk: Desk,
    pair: PairView,
    kind: PartKind,
    views: Sequence[str],
    side: Side,
    view: str,
) -> PhonePanel | None:
    """Let phones take photos for this place from now on, and show the panel with their code."""
    from desktop_app.part_photos.screen.phone_bay import phone_of
    from desktop_app.part_photos.screen.phone_panel import show_panel
    from desktop_app.part_photos.screen.phone_place import PhonePlace, offered

    number = desk.ask(job_number_of_pair, pair.id)
    if number is None:
        return None
    bay, place = phone_of(desk), kind.place_said(pair.position)
    bay.offer(
        PhonePlace(
            offered(number, f"{kind.name} {place}".strip(), views, side, view),
            lambda record, taken, to, seen: put_to_part(record, pair.id, taken, to, seen),
            lambda connection: job_of_pair(connection, pair.id) is not None,
        )
    )
    return show_panel(bay, beside)

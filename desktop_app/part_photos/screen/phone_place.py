"""A pair that photos from a phone are taken for, and the deed that puts them there."""

from __future__ import annotations

import secrets
from collections.abc import Callable, Sequence
from dataclasses import dataclass

from desktop_app.part_photos.phone.offer import Offer
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord

Put = Callable[[ShopRecord, Sequence[PhotoTaken], str, str], Done]  # photos, side, view
MOST_VIEWS = 100  # a place names its view with two digits


@dataclass(frozen=True, slots=True)
class PhonePlace:
    """What the phone is told, how photos are put there, whether it is still there."""

    offer: Offer
    put: Put
    there: Callable[..., bool]  # asked with a connection


def offered(job: str, part: str, views: Sequence[str], side: str, view: str) -> Offer:
    """Return an offer with a name of its own."""
    shown = tuple(dict.fromkeys((view, *views)) if view not in views else views)[:MOST_VIEWS]
    return Offer(secrets.token_hex(8), job, part, shown, side, view)

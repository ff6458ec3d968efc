"""The darkroom: photos drawn beside the story are the very ones drawn here."""

from __future__ import annotations

from datetime import UTC, datetime

from demo_shop.darkroom import Darkroom, PhotoOrder, draw

ORDER = PhotoOrder("brake-pads", "removed", "edge", 7, datetime(2026, 4, 14, 9, 0, tzinfo=UTC))


def test_a_helper_draws_the_same_photo() -> None:
    with Darkroom(1) as darkroom:
        darkroom.take(ORDER)
        photo = darkroom.photo(ORDER)
    assert photo == draw(ORDER)
    assert photo.startswith(b"\xff\xd8")

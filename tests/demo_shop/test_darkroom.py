"""The darkroom: photos drawn beside the story are the very ones drawn here."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from demo_shop.darkroom import Darkroom, PhotoOrder, draw

ORDER = PhotoOrder("brake-pads", "removed", "edge", 7, datetime(2026, 4, 14, 9, 0, tzinfo=UTC))


def test_a_helper_draws_the_same_photo() -> None:
    with Darkroom(1) as darkroom:
        darkroom.take(ORDER)
        photo = darkroom.photo(ORDER)
    assert photo == draw(ORDER)
    assert photo.startswith(b"\xff\xd8")


def test_the_photo_was_drawn_beside_and_not_here(monkeypatch: pytest.MonkeyPatch) -> None:
    def not_here(order: PhotoOrder) -> bytes:
        raise AssertionError("it was drawn here")

    with Darkroom(1) as darkroom:
        darkroom.take(ORDER)
        monkeypatch.setattr("demo_shop.darkroom.draw", not_here)
        assert darkroom.photo(ORDER).startswith(b"\xff\xd8")


def test_where_no_process_is_to_be_had_it_is_drawn_here(monkeypatch: pytest.MonkeyPatch) -> None:
    def refused(*_said: object, **_pipes: object) -> None:
        raise OSError("no more processes")

    monkeypatch.setattr("demo_shop.darkroom.own_process", refused)
    with Darkroom(1) as darkroom:
        darkroom.take(ORDER)
        assert darkroom.photo(ORDER) == draw(ORDER)


def test_where_the_process_comes_to_nothing_it_is_drawn_here(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("demo_shop.darkroom._DRAWING", "demo_shop.shop_calendar")  # ends at once
    with Darkroom(1) as darkroom:
        darkroom.take(ORDER)
        assert darkroom.photo(ORDER) == draw(ORDER)

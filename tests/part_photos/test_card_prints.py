"""Which printed card scales a photo, and what its measured ruler does to photos taken before."""

from __future__ import annotations

import json
import math
from collections.abc import Generator
from dataclasses import replace
from datetime import date

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos import mark_actions
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.bench_card.print_scale import (
    PrintScale,
    one_of,
    print_scale,
    print_words,
    said_of_prints,
)
from desktop_app.part_photos.card_actions import note_printed_card, note_ruler, put_card_away
from desktop_app.part_photos.mark_actions import (
    draw_mark,
    forget_scale,
    keep_scale,
    keep_two_points,
)
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.print_actions import (
    SaidAhead,
    keep_card,
    said_by_ruler,
    say_print,
)
from desktop_app.part_photos.stored import PrintedCard
from desktop_app.part_photos.stored_cards import cards_by_id, printed_card, printed_cards
from desktop_app.part_photos.stored_marks import mark_by_id
from desktop_app.part_photos.stored_scales import (
    KeptScale,
    prints_to_choose,
    scale_of_photo,
    was_taken_out,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from tests.part_photos.marked_photos import scale_over_card
from tests.part_photos.test_mark_surfaces import photo  # noqa: F401 (a fixture)

CARD = bench_card("a4")
SEEN = replace(scale_over_card(), card=CARD.name)
FLAT = Mark("length", ((1800.0, 1500.0), (2200.0, 1500.0)))
HIGH = replace(FLAT, height_mm=20.0, height_u_mm=1.0)


def noted(record: ShopRecord, count: int) -> list[int]:
    """Note printed cards of one layout and return their ids."""
    made = [note_printed_card(record, CARD).made for _ in range(count)]
    return [one for one in made if one is not None]


def scaled(record: ShopRecord, photo_id: int) -> KeptScale:
    with record.reading() as connection:
        found = scale_of_photo(connection, photo_id)
    assert found is not None
    return found


def drawn(record: ShopRecord, photo_id: int, mark: Mark) -> int:
    made = draw_mark(record, photo_id, mark, height_known=True).made
    assert made is not None
    return made


def value(record: ShopRecord, mark_id: int) -> float:
    with record.reading() as connection:
        found = mark_by_id(connection, mark_id).value
    assert found is not None
    return found


@given(st.lists(st.floats(145.5, 154.5), min_size=1, max_size=5))
def test_what_covers_several_prints_holds_each_of_them(rulers: list[float]) -> None:
    prints = [print_scale(one, 150.0) for one in rulers]
    found = one_of(prints)
    for one in prints:
        assert abs(one.factor - found.factor) <= found.u + 1e-12
        assert found.u >= one.u


def test_one_print_counts_as_it_is_and_none_as_not_measured() -> None:
    assert one_of([PrintScale(1.002, 0.0003)]) == PrintScale(1.002, 0.0003)
    assert one_of([]) == PrintScale(1.0, 0.003)
    two = one_of([PrintScale(0.998, 0.0003), PrintScale(1.002, 0.0003)])
    assert two.factor == pytest.approx(1.0)
    assert two.u == pytest.approx(math.hypot(0.002, 0.0003))


def test_a_scale_says_on_which_print_it_rests() -> None:
    one = print_words(2, 149.8, date(2026, 11, 20))
    assert said_of_prints([one]) == "Card 2, ruler 149.8 mm measured 2026-11-20."
    other = print_words(3, None, None)
    assert said_of_prints([other]) == "Card 3, print not measured."
    assert "covers all 2 of them" in said_of_prints([one, other])
    assert "not measured" in said_of_prints([])


@pytest.mark.parametrize("times", [0.97, 1.0, 1.02])
def test_a_larger_print_makes_all_lengths_on_it_larger_and_moves_the_camera_off(
    times: float,
) -> None:
    points = np.array(HIGH.points_px)
    other = SEEN.printed_otherwise(times, 1e-4)
    assert other.on_plane(points) == pytest.approx(times * SEEN.on_plane(points))
    raised = other.on_plane(points, 20.0 * times)
    assert raised == pytest.approx(times * SEEN.on_plane(points, 20.0))
    assert (other.print_u, other.tilt_deg) == (1e-4, SEEN.tilt_deg)
    assert other.distance_mm == pytest.approx(times * SEEN.distance_mm)


def test_a_ruler_measured_later_reaches_the_photos_on_that_print_and_is_undone_with_them(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    first, second = noted(record, 2)
    keep_scale(record, photo, SEEN, first, 1.0)
    mark = drawn(record, photo, FLAT)
    before = value(record, mark)
    note_ruler(record, second, 151.5)  # another print: nothing to do with this photo
    assert value(record, mark) == before
    done = note_ruler(record, first, 150.3)
    assert {"printed_card", "photo_scale", "mark"} <= done.touched
    assert value(record, mark) == pytest.approx(1.002 * before)
    kept = scaled(record, photo)
    assert (kept.card_id, kept.card_scale) == (first, pytest.approx(1.002))
    assert kept.scale.print_u == pytest.approx(0.05 / 150)
    note_ruler(record, first, 149.7)
    assert value(record, mark) == pytest.approx(0.998 * before)
    record.undo()
    record.undo()
    assert value(record, mark) == before
    assert scaled(record, photo).card_scale == 1.0


def test_where_nobody_said_which_print_it_is_all_of_them_are_covered(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    first, second = noted(record, 2)
    keep_scale(record, photo, SEEN, None, 1.0, prints=(second, first))
    mark = drawn(record, photo, HIGH)
    note_ruler(record, first, 149.7)
    note_ruler(record, second, 150.3)
    kept = scaled(record, photo)
    assert (kept.card_id, set(kept.prints)) == (None, {first, second})
    assert kept.scale.print_u == pytest.approx(math.hypot(0.002, 0.05 / 150))
    put_card_away(record, second)  # the photo may show it all the same
    note_ruler(record, first, 149.85)
    assert scaled(record, photo).scale.print_u == pytest.approx(math.hypot(0.0015, 0.05 / 150))
    unsure = value(record, mark)
    heard: list[int] = []
    say_print(record, photo, second, lambda _deed, one: heard.append(one))
    kept = scaled(record, photo)
    assert (kept.card_id, kept.prints, kept.card_scale) == (second, (second,), 1.002)
    assert kept.scale.print_u == pytest.approx(0.05 / 150)
    assert value(record, mark) > unsure
    assert heard == [mark]
    record.undo()
    assert value(record, mark) == unsure
    assert scaled(record, photo).card_id is None


def test_only_prints_of_the_cards_own_layout_are_offered(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    (first,) = noted(record, 1)
    other = note_printed_card(record, bench_card("letter")).made
    assert other is not None
    keep_scale(record, photo, SEEN)
    with record.reading() as connection:
        offered = prints_to_choose(connection, scale_of_photo(connection, photo))
    assert [one.id for one in offered] == [first]
    with pytest.raises(ShopTrouble, match="can't be the one in this photo"):
        say_print(record, photo, other)
    say_print(record, photo, first)
    say_print(record, photo, None)  # it may be one that nobody noted
    assert (scaled(record, photo).card_id, scaled(record, photo).prints) == (None, ())
    keep_two_points(record, photo, ((0.0, 0.0), (50.0, 0.0)), 10.0)
    with pytest.raises(ShopTrouble, match="can't be the one"):
        say_print(record, photo, first)


@pytest.mark.parametrize("ruler", [-150.0, 0.0, 170.0, float("inf")])
def test_a_ruler_that_something_else_wrote_is_told_as_damage(
    record: ShopRecord, ruler: float
) -> None:
    (first,) = noted(record, 1)
    record.do("x", lambda deed: deed.change(PrintedCard, first, measured_mm=ruler))
    with record.reading() as connection:
        assert printed_cards(connection) == ()
        assert cards_by_id(connection)[first].words() == f"card {first}, damaged in the record"
        with pytest.raises(ShopDamaged, match=f"the ruler of bench card {first}"):
            printed_card(connection, first)


def test_a_kept_scale_says_how_large_its_card_was_taken_to_be() -> None:
    again = type(SEEN).from_json(SEEN.printed_otherwise(1.002, 3e-4).as_json())
    assert again.theta == pytest.approx(SEEN.printed_otherwise(1.002, 3e-4).theta)
    assert json.loads(again.as_json()) == json.loads(SEEN.printed_otherwise(1.002, 3e-4).as_json())


def test_what_rests_on_a_mark_follows_where_a_ruler_moves_it(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    [card] = noted(record, 1)
    keep_scale(record, photo, SEEN, card, 1.0)
    mark = drawn(record, photo, FLAT)
    followed: list[int] = []
    note_ruler(record, card, 150.3, lambda _deed, one: followed.append(one))
    assert followed == [mark]


def test_a_photo_may_show_a_card_that_was_put_away_so_it_is_covered_and_offered(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    away, used = noted(record, 2)
    note_ruler(record, away, 149.0)
    put_card_away(record, away)
    note_ruler(record, used, 150.6)
    keep_card(record, photo, SEEN, CARD)
    kept = scaled(record, photo)
    assert (kept.card_id, set(kept.prints)) == (None, {away, used})
    assert abs(kept.card_scale - 149 / 150) < 2 * kept.scale.print_u
    with record.reading() as connection:
        assert [one.id for one in prints_to_choose(connection, kept)] == [used, away]
    say_print(record, photo, away)
    kept = scaled(record, photo)
    assert (kept.card_id, kept.card_scale) == (away, pytest.approx(149 / 150))


def test_a_card_found_is_kept_with_the_ruler_that_its_print_has_by_then(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    keep_card(record, photo, SEEN, CARD)
    assert (scaled(record, photo).prints, scaled(record, photo).scale.print_u) == ((), 0.003)
    (card,) = noted(record, 1)
    note_ruler(record, card, 150.3)
    keep_card(record, photo, SEEN, CARD)
    kept = scaled(record, photo)
    assert (kept.card_id, kept.card_scale) == (card, pytest.approx(1.002))
    points = np.array(FLAT.points_px)
    assert kept.scale.on_plane(points) == pytest.approx(1.002 * SEEN.on_plane(points))


def test_one_damaged_card_stops_none_of_the_others_and_counts_as_a_print_not_measured(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    broken, sound = noted(record, 2)
    keep_scale(record, photo, SEEN, sound)
    record.do("x", lambda deed: deed.change(PrintedCard, broken, layout="{}"))
    note_ruler(record, sound, 150.3)
    assert scaled(record, photo).card_scale == pytest.approx(1.002)
    keep_card(record, photo, SEEN, CARD)  # it may be the damaged one that lies there
    kept = scaled(record, photo)
    assert (kept.card_id, set(kept.prints)) == (None, {broken, sound})
    assert kept.scale.print_u == pytest.approx(math.hypot(0.001, 0.003))
    say_print(record, photo, sound)
    assert scaled(record, photo).card_id == sound
    put_card_away(record, broken)


def ended(steps: Generator[Step, None, SaidAhead]) -> SaidAhead:
    """Go through all steps and return what comes of them."""
    while True:
        try:
            next(steps)
        except StopIteration as end:
            said: SaidAhead = end.value
            return said


def test_what_marks_say_by_a_ruler_is_worked_out_before_the_deed_that_keeps_it(
    record: ShopRecord,
    photo: int,  # noqa: F811
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    (card,) = noted(record, 1)
    keep_scale(record, photo, SEEN, card)
    flat, high = (drawn(record, photo, mark) for mark in (FLAT, HIGH))
    note_ruler(record, card, 150.3)
    wanted = [value(record, one) for one in (flat, high)]
    record.undo()
    draw_mark(record, photo, Mark("note", ((1800.0, 1500.0), (1900.0, 1600.0))))  # has no size
    ahead = ended(said_by_ruler(record, card, 150.3))
    assert {one.height_mm for one, _ in ahead} == {0.0, 20.0}
    before = value(record, flat)
    later = drawn(record, photo, replace(HIGH, height_mm=30.0))  # nobody knew of this one
    asked: list[float] = []
    whole = mark_actions.measure
    with monkeypatch.context() as watched:
        watched.setattr(
            mark_actions,
            "measure",
            lambda mark, scale: (asked.append(mark.height_mm), whole(mark, scale))[1],
        )
        note_ruler(record, card, 150.3, ahead=ahead)
    assert asked == [30.0]
    assert [value(record, one) for one in (flat, high)] == wanted
    assert value(record, flat) != before
    assert value(record, later) > 0


def test_a_scale_taken_out_is_remembered_as_such_and_another_can_be_given(
    record: ShopRecord,
    photo: int,  # noqa: F811
) -> None:
    keep_card(record, photo, SEEN, CARD)
    forget_scale(record, photo)
    with record.reading() as connection:
        assert was_taken_out(connection, photo)
        assert scale_of_photo(connection, photo) is None
    keep_two_points(record, photo, ((0.0, 0.0), (50.0, 0.0)), 10.0)
    assert scaled(record, photo).length_mm == 10.0
    record.undo()
    record.undo()
    assert scaled(record, photo).scale.source == "card"

"""Words of marks stand at the edges of a photo: apart from each other, off the points."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.label_places import EDGE, Room, Words, label_places

STAGE = (400.0, 300.0)
spots = st.tuples(st.floats(0, 400), st.floats(0, 300))
words = st.builds(Words, spots, st.floats(20, 600), st.floats(15, 30))


def test_words_stand_at_the_edge_that_is_nearer_to_their_mark() -> None:
    above, below = label_places([Words((200, 100), 90, 20), Words((200, 220), 90, 20)], STAGE)
    assert above == Room(155, EDGE, 90, 20)
    assert below == Room(155, 300 - EDGE - 20, 90, 20)


def test_a_second_mark_at_the_same_place_is_named_beside_the_first() -> None:
    first, second = label_places([Words((200, 100), 90, 20)] * 2, STAGE)
    assert first is not None
    assert second is not None
    assert not first.meets(second)
    assert first.top == second.top


def test_long_words_are_as_wide_as_the_stage_and_no_wider() -> None:
    (room,) = label_places([Words((10, 10), 900, 20)], STAGE)
    assert room == Room(EDGE, EDGE, 400 - 2 * EDGE, 20)


def test_words_give_way_to_a_point_that_must_be_seen() -> None:
    (room,) = label_places([Words((200, 20), 380, 20)], STAGE, seen=[(200, 10)])
    assert room == Room(10, 300 - EDGE - 20, 380, 20)


def test_what_finds_no_room_is_left_out_and_the_first_comes_first() -> None:
    many = [Words((200, 150), 390, 30)] * 9
    rooms = label_places(many, STAGE)
    assert rooms[0] is not None
    assert rooms[-1] is None
    assert label_places(many, (6, 6)) == [None] * 9


@given(st.lists(words, max_size=8), st.lists(spots, max_size=8), st.lists(spots, max_size=2))
def test_words_never_hide_points_nor_each_other(
    asked: list[Words], seen: list[tuple[float, float]], notes: list[tuple[float, float]]
) -> None:
    taken = [Room(x, y, 60, 20) for x, y in notes]
    rooms = label_places(asked, STAGE, seen, taken)
    assert len(rooms) == len(asked)
    placed = [room for room in rooms if room is not None]
    for number, room in enumerate(placed):
        assert 0 <= room.left <= room.left + room.width <= STAGE[0]
        assert 0 <= room.top <= room.top + room.height <= STAGE[1]
        assert not any(room.covers(spot) for spot in seen)
        assert not any(room.meets(other) for other in [*placed[:number], *taken])


@given(spots)
def test_the_line_starts_at_the_side_that_looks_to_the_mark(spot: tuple[float, float]) -> None:
    room = Room(100, 100, 80, 20)
    x, y = room.nearest(spot)
    assert 100 <= x <= 180
    assert 100 <= y <= 120
    assert (x, y) == spot or not room.covers(spot)

"""Photos from a phone put to a part: one deed, never doubled, never to a pair that is gone."""

from __future__ import annotations

import pytest

from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.stored_reading import photos_of_job
from desktop_app.parts_compared.actions import lay_side_by_side, take_from_pair, take_pair_away
from desktop_app.parts_compared.phone_photo_actions import put_to_part
from desktop_app.parts_compared.stored_pair_place import job_number_of_pair, job_of_pair
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.bench_pictures import encoded, job_with_no_photos, noisy


def taken(record: ShopRecord, seed: int) -> PhotoTaken:
    """A photo that came from a phone and is kept among the shop's photos."""
    return take_in(record, Arrival(f"IMG_{seed}.jpg", content=encoded(noisy(64, 48, seed))))


def pair_of(record: ShopRecord) -> int:
    """A pair of a new job."""
    made = lay_side_by_side(record, job_with_no_photos(record), "distributor-rotor").made
    assert made is not None
    return made


def shown(record: ShopRecord, pair: int) -> list[tuple[str, str, str]]:
    """What stands for which side in which view."""
    with record.reading() as connection:
        return [(one.name, one.side, one.view) for one in read_pair(connection, pair).photos]


def test_photos_are_added_and_put_to_the_part_in_one_deed(shop: ShopRecord) -> None:
    pair = pair_of(shop)
    done = put_to_part(shop, pair, [taken(shop, 1), taken(shop, 2)], "removed", "top")
    assert done.words == "Put 2 photos from the phone to a part"
    assert shown(shop, pair) == [("IMG_1.jpg", "removed", "top"), ("IMG_2.jpg", "removed", "top")]
    shop.undo()
    assert shown(shop, pair) == []
    with shop.reading() as connection:
        job = job_of_pair(connection, pair)
        assert job is not None
        assert photos_of_job(connection, job) == ()
    shop.redo()
    assert len(shown(shop, pair)) == 2


def test_sent_again_it_stands_there_once_and_no_entry_is_written(shop: ShopRecord) -> None:
    pair, photo = pair_of(shop), taken(shop, 1)
    put_to_part(shop, pair, [photo, photo], "removed", "top")
    assert put_to_part(shop, pair, [photo], "removed", "top").seq is None
    assert shown(shop, pair) == [("IMG_1.jpg", "removed", "top")]


def test_the_same_photo_may_show_two_views_and_is_on_the_job_once(shop: ShopRecord) -> None:
    pair, photo = pair_of(shop), taken(shop, 1)
    put_to_part(shop, pair, [photo], "removed", "top")
    put_to_part(shop, pair, [photo], "removed", "side")
    with shop.reading() as connection:
        job = job_of_pair(connection, pair)
        assert job is not None
        assert len(photos_of_job(connection, job)) == 1
        assert job_number_of_pair(connection, pair) == "J-101"
    assert [view for _, _, view in shown(shop, pair)] == ["top", "side"]


def test_one_that_was_taken_from_the_part_comes_back_by_sending_it_again(shop: ShopRecord) -> None:
    pair, photo = pair_of(shop), taken(shop, 1)
    put_to_part(shop, pair, [photo], "removed", "top")
    with shop.reading() as connection:
        link = read_pair(connection, pair).photos[0].link_id
    take_from_pair(shop, link)
    put_to_part(shop, pair, [photo], "removed", "top")
    assert len(shown(shop, pair)) == 1


def test_a_pair_that_is_gone_takes_none(shop: ShopRecord) -> None:
    pair, photo = pair_of(shop), taken(shop, 1)
    take_pair_away(shop, pair)
    with pytest.raises(ShopTrouble, match="no longer there"):
        put_to_part(shop, pair, [photo], "removed", "top")
    with shop.reading() as connection:
        assert job_number_of_pair(connection, pair) is None

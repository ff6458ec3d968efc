"""Both sides of a return are read as they stand: the jobs with their parts, or what was told."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.stored import PairPhoto
from desktop_app.returns_watched.customer_actions import note_answer, take_answer_out
from desktop_app.returns_watched.stored_then_now import read_then_and_now
from desktop_app.returns_watched.stored_told_judging import (
    judged_in,
    read_then_and_told,
    read_told_judging,
)
from desktop_app.returns_watched.told_actions import judge_told, take_told_judgement_back
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import as_made, job, vehicle

ROTOR = resource_path("part_kinds") / "distributor-rotor.toml"
KINDS = {"distributor-rotor": read_kind(ROTOR.read_text(encoding="utf-8"), ROTOR.name)}
TODAY = date(2026, 11, 16)


@pytest.fixture
def car(shop: ShopRecord) -> int:
    return vehicle(shop)


@pytest.fixture
def first(shop: ShopRecord, car: int) -> int:
    """A job at which a rotor was replaced, and a part of a kind that nobody knows any more."""
    kinds = ("distributor-rotor", "of-our-own")
    return job(shop, car, "J-1", "2026-10-19", "2026-10-20", 10_000, kinds=kinds)


def photo(shop: ShopRecord, job_id: int, name: str) -> int:
    """Name a photo in the record, as if it had been taken in."""
    size = {"size_bytes": 1, "width": 1, "height": 1}
    with shop.deed("Add a photo") as deed:
        return deed.add(
            Photo, job_id=job_id, sha256=name, name=name, media_type="image/png", **size
        )


def show(shop: ShopRecord, pair: int, photo: int, side: str) -> None:
    with shop.deed("Put a photo to a part") as deed:
        deed.add(PairPhoto, pair_id=pair, photo_id=photo, side=side, view="top")


def test_both_jobs_stand_side_by_side_with_the_verdicts_of_kinds_that_are_known(
    shop: ShopRecord, car: int, first: int
) -> None:
    second = job(shop, car, "J-2", "2026-11-03")
    with shop.reading() as connection:
        sides = read_then_and_now(connection, first, second, KINDS)
        assert read_then_and_now(connection, first, 99, KINDS) is None
        assert read_then_and_now(connection, 99, second, KINDS) is None
    assert sides is not None
    then, now = sides
    assert (then.number, now.number) == ("J-1", "J-2")
    known, unknown = then.pairs
    assert then.verdicts == {known.id: "◌ not enough measured"}
    parts = dict(then.lines())["Parts"].splitlines()
    assert parts == [
        "distributor rotor: origin not said. ◌ not enough measured.",
        "of our own: origin not said.",
    ]
    assert unknown.part_kind == "of-our-own"
    assert (now.verdicts, now.photos) == ({}, ())


def test_each_photo_of_the_parts_stands_there_once_as_the_pairs_show_them(
    shop: ShopRecord, car: int, first: int
) -> None:
    second = job(shop, car, "J-2", "2026-11-03")
    loose, new, old = (photo(shop, first, name) for name in ("loose", "new", "old"))
    show(shop, 1, old, "removed")
    show(shop, 1, new, "replacement")
    show(shop, 2, old, "removed")
    with shop.reading() as connection:
        sides = read_then_and_now(connection, first, second, {})
    assert sides is not None
    assert [one.id for one in sides[0].photos] == [old, new]
    assert loose not in [one.id for one in sides[0].photos]


def test_what_was_told_stands_beside_the_job_with_the_last_visit_since(
    shop: ShopRecord, car: int, first: int
) -> None:
    asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 3)))
    for came, seen in (
        (None, None),
        ("2026-11-01", None),  # before it was told
        ("2026-11-09", date(2026, 11, 9)),
        ("2026-11-20", date(2026, 11, 9)),  # dated after today
    ):
        if came is not None:
            job(shop, car, f"J-{came}", came)
        with shop.reading() as connection:
            sides = read_then_and_told(connection, first, asked, KINDS, TODAY)
        assert sides is not None
        then, now = sides
        assert (then.number, now.number, now.unit) == ("J-1", "told 2026-11-03", "mi")
        assert now.seen_on == seen


def test_nothing_is_told_of_a_car_that_has_not_left_or_of_a_job_that_is_not_there(
    shop: ShopRecord, car: int
) -> None:
    here = job(shop, car, "J-1", "2026-11-02")
    with shop.reading() as connection:
        for one in (here, 99):
            assert read_told_judging(connection, one, 1) is None
            assert read_then_and_told(connection, one, 1, KINDS, TODAY) is None


def test_an_answer_that_was_taken_out_tells_of_nothing(shop: ShopRecord, first: int) -> None:
    asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 3)))
    judge_told(shop, first, asked, "same part", by="Ana")
    with shop.reading() as connection:
        assert judged_in(connection, asked) == "same part"
    take_told_judgement_back(shop, first, asked)
    take_answer_out(shop, asked)
    with shop.reading() as connection:
        assert judged_in(connection, asked) is None
        assert read_told_judging(connection, first, asked) is None

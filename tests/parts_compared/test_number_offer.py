"""Which numbers of a photo go to which field of its pair, and what the numbers say together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path

import pytest

from desktop_app.part_photos.codes.code_meaning import CodeMeaning, What
from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.number_offer import MOST_OFFERED, number_offers
from desktop_app.parts_compared.pair_view import PairView, PhotoShown
from desktop_app.parts_compared.part_numbers import numbers_differ
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.shop_record.record import create_shop
from tests.part_photos.bench_pictures import monday
from tests.screens.bench_desk import new_job

EAN = "4006381333931"


@pytest.fixture(scope="module")
def empty(tmp_path_factory: pytest.TempPathFactory) -> PairView:
    """A pair of which nothing is known."""
    folder: Path = tmp_path_factory.mktemp("bench") / "shop"
    record = create_shop(folder, monday)
    pair = lay_side_by_side(record, new_job(record), "distributor-rotor").made
    assert pair is not None
    with record.reading() as connection:
        seen = read_pair(connection, pair)
    record.close()
    return seen


def photo(photo_id: int, side: Side) -> PhotoShown:
    return PhotoShown(photo_id, photo_id, "", side, "label", f"{photo_id}.jpg", "")


def offers(
    pair: PairView, sides: Sequence[Side], *seen: tuple[int, What, str]
) -> list[tuple[str, tuple[str, ...], tuple[int, ...]]]:
    """Return value, fields and photos of what is offered where each photo says so."""
    photos = tuple(photo(n, side) for n, side in enumerate(sides))
    found = number_offers(
        replace(pair, photos=photos),
        lambda photo_id: [CodeMeaning(what, value) for n, what, value in seen if n == photo_id],
    )
    return [(one.value, one.fields, one.photo_ids) for one in found]


def test_each_number_goes_where_it_may_stand(empty: PairView) -> None:
    both: list[Side] = ["removed", "replacement"]
    assert offers(
        empty,
        both,
        (0, "part number", "4711"),
        (0, "article number", EAN),
        (0, "VIN", "1M8GDM9AXKP042788"),
        (1, "part number", "4711-B"),
        (1, "article number", EAN),
    ) == [
        ("4711", ("number_removed",), (0,)),
        ("4711-B", ("number_on_box", "number_on_part"), (1,)),
        (EAN, ("number_on_box",), (1,)),
    ]


def test_several_photos_of_one_box_make_one_offer(empty: PairView) -> None:
    sides: list[Side] = ["replacement"] * 3
    same: list[tuple[int, What, str]] = [(n, "part number", "4711") for n in range(3)]
    assert offers(empty, sides, *same) == [("4711", ("number_on_box", "number_on_part"), (0, 1, 2))]


def test_a_field_that_has_it_already_is_left_out(empty: PairView) -> None:
    boxed = replace(empty, number_on_box="47-11 b")
    seen: tuple[int, What, str] = (0, "part number", "4711-B")
    assert offers(boxed, ["replacement"], seen) == [("4711-B", ("number_on_part",), (0,))]
    assert offers(replace(boxed, number_on_part="4711B"), ["replacement"], seen) == []


def test_a_label_full_of_codes_fills_no_page(empty: PairView) -> None:
    many: list[tuple[int, What, str]] = [(0, "part number", f"471{n}") for n in range(9)]
    assert len(offers(empty, ["removed"], *many)) == MOST_OFFERED


def test_what_other_fields_have_now_is_said(empty: PairView) -> None:
    pair = replace(empty, number_on_part="0815", photos=(photo(1, "replacement"),))
    [offer] = number_offers(pair, lambda _: [CodeMeaning("part number", "4711")])
    assert offer.says == (
        "The photo “1.jpg” (replacement, label) shows the number 4711. "
        "“Number on the new part” has 0815 now."
    )


def test_an_article_number_on_the_box_is_not_held_against_the_part_s_number() -> None:
    said = numbers_differ(EAN, "4711")
    assert said == (
        f"The box says {EAN}, which looks like an article number (EAN or UPC), the part says 4711. "
        "Is the part's number on the box too?"
    )
    other = numbers_differ("4006381333932", "4711")  # no article number: its last digit is wrong
    assert other is not None
    assert other.endswith("Is the right part in the box?")
    eight = numbers_differ("96385074", "4711")  # as many digits as part numbers often have
    assert eight is not None
    assert eight.endswith("Is the right part in the box?")
    assert numbers_differ(EAN, "036000291452") == (
        f"The box says {EAN}, the part says 036000291452. Is the right part in the box?"
    )

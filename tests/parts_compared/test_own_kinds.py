"""A shop's own part kinds: every kind can be written and read back, changed, copied, given back."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.commands.shop_place import kinds_of, shelf_of
from desktop_app.parts_compared.kind_actions import copy_kind, give_back, keep_own_kind
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.own_kind import (
    SHOPS_FIGURE,
    new_dimension,
    own_id,
    read_allowed,
    with_dimension,
    with_lines,
    without_dimension,
)
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.part_kinds.said_of_dimension import allowed_typed, allowed_words
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

KINDS = kinds_of()
ROTOR = KINDS["distributor-rotor"]


@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_a_kind_that_is_written_is_read_back_as_it_was(kind: object) -> None:
    assert isinstance(kind, type(ROTOR))
    again = read_kind(kind_as_toml(kind), "again")
    assert replace(again, dimensions=()) == replace(kind, dimensions=())
    assert again.dimensions == kind.dimensions


@pytest.mark.parametrize("length_unit", ["mm", "inch"])
@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_what_a_field_shows_as_allowed_means_the_same_when_read(
    kind: object, length_unit: str
) -> None:
    assert isinstance(kind, type(ROTOR))
    for one in kind.dimensions:
        span = read_allowed(allowed_typed(one, length_unit), one, length_unit)
        assert (span is None) == (one.allowed is None)
        for read, kept in zip(span or (), one.allowed or (), strict=True):
            assert read == pytest.approx(kept, rel=1e-3) or read is kept
        assert allowed_words(one, length_unit)


@pytest.mark.parametrize(
    ("typed", "dimension", "span"),
    [
        ("0.30", "bore", (-0.30, 0.30)),
        ("0,3", "bore", (-0.3, 0.3)),
        ("0.2 to 1.0", "tip-radius", (0.2, 1.0)),
        ("at least 4", "resistance", (4.0, None)),
        ("at most 6", "resistance", (None, 6.0)),
        ("4 to 6", "resistance", (4.0, 6.0)),
        ("", "resistance", None),
        ("3", "tip-angle", (-3.0, 3.0)),
    ],
)
def test_allowed_is_read_as_it_is_said(typed: str, dimension: str, span: object) -> None:
    one = ROTOR.dimension(dimension)
    assert one is not None
    assert read_allowed(typed, one) == span


@pytest.mark.parametrize(
    ("typed", "dimension"),
    [("", "bore"), ("wide", "bore"), ("1.0", "tip-radius"), ("1.5 to 0.1", "tip-radius")],
)
def test_what_is_no_figure_is_refused(typed: str, dimension: str) -> None:
    one = ROTOR.dimension(dimension)
    assert one is not None
    with pytest.raises(ShopTrouble):
        read_allowed(typed, one)


def test_a_dimension_can_be_added_and_taken_out_but_not_the_last() -> None:
    added = new_dimension(ROTOR, "collar width", "same", "mm", "calliper", "0.2")
    more = with_dimension(ROTOR, added)
    assert more.dimensions[-1].basis == SHOPS_FIGURE
    assert read_kind(kind_as_toml(more), "own").dimensions == more.dimensions
    less = without_dimension(more, "tip-radius")
    assert less.dimension("tip-radius") is None
    assert all("tip-radius" not in one.moves for one in less.conditions)
    bare = replace(ROTOR, dimensions=ROTOR.dimensions[:1])
    with pytest.raises(ShopTrouble, match="one dimension"):
        without_dimension(bare, bare.dimensions[0].name)


def test_lines_keep_what_went_with_them() -> None:
    said = "\n".join([*(one.say for one in ROTOR.refit), "", "A dab of grease on the shaft."])
    changed = with_lines(ROTOR, "refit", said)
    assert changed.refit[:-1] == ROTOR.refit
    assert changed.refit[-1].say == "A dab of grease on the shaft."
    terms = with_lines(ROTOR, "conditions", "burned tip\nchalky")
    assert [one.term for one in terms.conditions] == ["burned tip", "chalky"]
    assert terms.conditions[0] == ROTOR.condition("burned tip")


def test_a_name_gives_an_id_that_is_free() -> None:
    assert own_id("Wiper motor (rear)", ()) == "wiper-motor-rear"
    assert own_id("Relay", KINDS) == "relay-2"
    with pytest.raises(ShopTrouble, match="needs a name"):
        own_id("  !! ", ())


def test_the_shops_own_form_takes_the_place_of_the_built_in_one_until_it_is_given_back(
    shop: ShopRecord,
) -> None:
    bore = ROTOR.dimension("bore")
    assert bore is not None
    keep_own_kind(shop, with_dimension(ROTOR, replace(bore, allowed=(-0.1, 0.1))))
    shelf = shelf_of(shop)
    assert shelf.own == {"distributor-rotor"}
    own = shelf.kinds["distributor-rotor"].dimension("bore")
    assert own is not None
    assert own.allowed == (-0.1, 0.1)
    shop.undo()
    assert shelf_of(shop).own == frozenset()
    shop.redo()
    give_back(shop, ROTOR)
    assert shelf_of(shop).kinds["distributor-rotor"] == ROTOR
    with pytest.raises(ShopTrouble, match="not the shop's own"):
        give_back(shop, ROTOR)


def test_a_copy_has_a_name_of_its_own(shop: ShopRecord) -> None:
    copy_kind(shop, ROTOR, "Rotor, marine engine", KINDS)
    copy = shelf_of(shop).kinds["rotor-marine-engine"]
    assert copy.name == "Rotor, marine engine"
    assert copy.dimensions == ROTOR.dimensions


def test_a_kind_damaged_from_outside_is_told_and_left_out(shop: ShopRecord) -> None:
    from desktop_app.parts_compared.stored import OwnKind

    with shop.deed("Damage it") as deed:
        deed.add(OwnKind, kind="distributor-rotor", body="name = ")
    shelf = shelf_of(shop)
    assert shelf.kinds["distributor-rotor"] == ROTOR
    assert "the shop's own distributor-rotor" in shelf.troubles[0].sentence()

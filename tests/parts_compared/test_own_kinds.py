"""A shop's own part kinds: every kind can be written and read back, changed, copied, given back."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.commands.shop_place import kinds_of, shelf_of
from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.parts_compared.kind_actions import (
    change_own_kind,
    copy_kind,
    give_back,
    keep_own_kind,
)
from desktop_app.parts_compared.part_kinds.kind_lines import both_changes, lines_of, with_lines
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.own_kind import (
    SHOPS_FIGURE,
    new_dimension,
    own_id,
    read_allowed,
    with_change,
    with_dimension,
    without_dimension,
)
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.part_kinds.said_of_dimension import allowed_typed, allowed_words
from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

KINDS = kinds_of()
ROTOR = KINDS["distributor-rotor"]


@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_a_kind_that_is_written_is_read_back_as_it_was(kind: object) -> None:
    assert isinstance(kind, type(ROTOR))
    again = read_kind(kind_as_toml(kind), "again")
    assert again._replace(dimensions=()) == kind._replace(dimensions=())
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
    for label in ("  ", "x" * 121):
        with pytest.raises(ShopTrouble, match="needs a name of 1 to"):
            with_change(ROTOR, ROTOR.dimensions[0], label=label)
    bare = ROTOR._replace(dimensions=ROTOR.dimensions[:1])
    with pytest.raises(ShopTrouble, match="one dimension"):
        without_dimension(bare, bare.dimensions[0].name)


@pytest.mark.parametrize("part", ["cautions", "conditions", "refit", "proof", "wrongs"])
@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_lines_that_are_shown_and_kept_again_change_nothing(kind: object, part: Any) -> None:
    assert isinstance(kind, type(ROTOR))
    assert with_lines(kind, part, "\n".join(lines_of(kind, part))) == kind


def test_lines_keep_what_went_with_them() -> None:
    said = "\n".join([*lines_of(ROTOR, "refit"), "", "A dab of grease on the shaft."])
    changed = with_lines(ROTOR, "refit", said)
    assert changed.refit[:-1] == ROTOR.refit
    assert changed.refit[-1].say == "A dab of grease on the shaft."
    terms = with_lines(ROTOR, "conditions", "burned tip\nchalky")
    assert [one.term for one in terms.conditions] == ["burned tip", "chalky"]
    assert terms.conditions[0] == ROTOR.condition("burned tip")


@pytest.mark.parametrize("words", ["burned tips", "charred end"])
def test_a_reworded_line_keeps_what_went_with_the_old_one(words: str) -> None:
    lines = [words if one.term == "burned tip" else one.term for one in ROTOR.conditions]
    changed = with_lines(ROTOR, "conditions", "\n".join(lines)).condition(words)
    old = ROTOR.condition("burned tip")
    assert old is not None
    assert changed == old._replace(term=words, allowed_when_new=False)
    proof = next(one for one in ROTOR.proof if one.level != "bay")
    said = [f"{one.say} Twice." if one == proof else one.say for one in ROTOR.proof]
    assert proof.level in [
        one.level
        for one in with_lines(ROTOR, "proof", "\n".join(said)).proof
        if one.say == f"{proof.say} Twice."
    ]


def test_a_reworded_wrong_still_shows_on_its_dimensions_and_a_new_one_on_none() -> None:
    first = ROTOR.wrongs[0]
    assert first.shows_on
    lines = [f"Often {first.say}", *(one.say for one in ROTOR.wrongs[1:]), "Smells of fish"]
    wrongs = with_lines(ROTOR, "wrongs", "\n".join(lines)).wrongs
    assert wrongs[0].shows_on == first.shows_on
    assert wrongs[-1].shows_on == ()


def test_marks_say_what_can_injure_and_what_a_new_one_may_show() -> None:
    kind = with_lines(ROTOR, "refit", "! Hands off the belt\n⚠  Coil off\nSeat it")
    assert [(one.say, one.hurt) for one in kind.refit] == [
        ("Hands off the belt", True),
        ("Coil off", True),
        ("Seat it", False),
    ]
    assert lines_of(kind, "refit") == ("⚠ Hands off the belt", "⚠ Coil off", "Seat it")
    kind = with_lines(kind, "conditions", "dusty (New one may)\nburned tip")
    assert [one.allowed_when_new for one in kind.conditions] == [True, False]
    assert lines_of(kind, "conditions")[0] == "dusty (new one may)"
    bare = with_lines(ROTOR, "refit", "!\n⚠ \nSeat it")
    assert [one.say for one in bare.refit] == ["Seat it"]
    with pytest.raises(ShopTrouble, match="A line is too long"):
        with_lines(ROTOR, "refit", "x" * 10_000)
    assert read_kind(kind_as_toml(kind), "own") == kind


@pytest.mark.parametrize(
    ("shown", "typed", "kept", "both"),
    [
        ("a b", "a b c", "a b", "a b c"),
        ("a b", "a b2", "a1 b", "a1 b2"),
        ("a b", "a", "a b z", "a z"),
        ("a b", "a b c", "b", "b c"),
        ("", "a", "b", "b a"),
    ],
)
def test_lines_of_two_desks_come_together(shown: str, typed: str, kept: str, both: str) -> None:
    assert both_changes(shown.split(), typed.split(), kept.split()) == both.split()


def test_a_name_gives_an_id_that_is_free() -> None:
    assert own_id("Wiper motor (rear)", ()) == "wiper-motor-rear"
    assert own_id("Relay", KINDS) == "relay-2"
    assert (
        own_id("Bougie d'allumage à quatre électrodes", ())
        == "bougie-d-allumage-a-quatre-electrodes"
    )
    assert own_id("Щётка", ("own",)) == "own-2"
    for nothing in ("  !! ", "a\u202eb", "x\x00"):
        with pytest.raises(ShopTrouble, match="needs a name"):
            own_id(nothing, ())


def test_a_freed_name_is_not_given_to_something_else() -> None:
    bare = without_dimension(ROTOR, "resistance")
    again = new_dimension(
        bare, "resistance", "limit", "ohm", "ohmmeter", "at most 10", read=["resistance"]
    )
    assert again.name == "resistance-2"
    with pytest.raises(ShopTrouble, match="is there already"):
        new_dimension(ROTOR, "Bore diameter", "same", "mm", "calliper", "0.2")


def test_the_unit_behind_the_last_figure_is_that_of_both() -> None:
    tip = ROTOR.dimension("tip-radius")
    assert tip is not None
    low, high = read_allowed("0.1 to 0.5 in", tip) or (None, None)
    assert (low, high) == (pytest.approx(2.54), pytest.approx(12.7))
    assert read_allowed("0.5 to 1.5 mm", tip, "inch") == (0.5, 1.5)
    with pytest.raises(ShopTrouble, match="allows nothing"):
        read_allowed("0 to 0", tip)


def test_the_shops_own_form_takes_the_place_of_the_built_in_one_until_it_is_given_back(
    shop: ShopRecord,
) -> None:
    bore = ROTOR.dimension("bore")
    assert bore is not None
    keep_own_kind(shop, with_change(ROTOR, bore, allowed=(-0.1, 0.1)))
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
    with pytest.raises(ShopTrouble, match="more than 80 letters"):
        copy_kind(shop, ROTOR, "x" * 81, KINDS)
    copy = shelf_of(shop).kinds["rotor-marine-engine"]
    assert copy.name == "Rotor, marine engine"
    assert copy.dimensions == ROTOR.dimensions
    assert copy.like == "distributor-rotor"
    copy_kind(shop, copy, "Rotor of a boat", kinds_of(shop))
    assert kinds_of(shop)["rotor-of-a-boat"].like == "distributor-rotor"


def test_two_desks_change_one_kind_and_neither_change_is_lost(shop: ShopRecord) -> None:
    bore, height = ROTOR.dimensions[0], ROTOR.dimensions[1]
    keep_own_kind(shop, ROTOR)
    with pytest.raises(ShopTrouble, match="the shop's own already"):
        keep_own_kind(shop, ROTOR)
    change_own_kind(shop, ROTOR, lambda kept: with_change(kept, bore, essential=False))
    change_own_kind(shop, ROTOR, lambda kept: with_change(kept, height, essential=False))
    kept = kinds_of(shop)["distributor-rotor"]
    assert [one.essential for one in kept.dimensions[:2]] == [False, False]
    change_own_kind(shop, ROTOR, lambda kept: without_dimension(kept, bore.name))
    for change in (
        lambda kept: with_change(kept, bore, essential=True),
        lambda kept: without_dimension(kept, bore.name),
    ):
        with pytest.raises(ShopTrouble, match="more"):
            change_own_kind(shop, ROTOR, change)
    give_back(shop, ROTOR)
    with pytest.raises(ShopTrouble, match="not the shop's own any more"):
        change_own_kind(shop, ROTOR, lambda kept: kept)


def test_a_kind_that_pairs_are_judged_by_stays_on_the_shelf(shop: ShopRecord) -> None:
    copy_kind(shop, ROTOR, "Boat rotor", KINDS)
    job = write_up(
        shop,
        WriteUp(
            concern="misses", plate="TH 1", description="1.8-litre hatchback", odometer=118_420
        ),
    ).made
    assert job is not None
    lay_side_by_side(shop, job, "boat-rotor")
    copy = kinds_of(shop)["boat-rotor"]
    with pytest.raises(ShopTrouble, match="1 pair in the record is of this kind"):
        give_back(shop, copy)
    lay_side_by_side(shop, job, "boat-rotor")
    with pytest.raises(ShopTrouble, match="2 pairs in the record are of this kind"):
        give_back(shop, copy)
    lay_side_by_side(shop, job, "distributor-rotor")
    keep_own_kind(shop, ROTOR)
    give_back(shop, ROTOR)
    assert kinds_of(shop)["distributor-rotor"] == ROTOR


def test_a_kind_damaged_from_outside_is_told_and_left_out(shop: ShopRecord) -> None:
    from desktop_app.parts_compared.stored import OwnKind

    with shop.deed("Damage it") as deed:
        deed.add(OwnKind, kind="distributor-rotor", body="name = ")
    shelf = shelf_of(shop)
    assert shelf.kinds["distributor-rotor"] == ROTOR
    assert "the shop's own distributor-rotor" in shelf.troubles[0].sentence()
    keep_own_kind(shop, ROTOR)  # what can't be read may be written over
    assert shelf_of(shop).own == {"distributor-rotor"}

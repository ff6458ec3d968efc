"""The part kinds that come with the program, and files of a shop's own."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from desktop_app.parts_compared.instruments.instrument import usual_instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_kinds.kind_page import kind_as_json
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds, load_names
from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
from desktop_app.parts_compared.part_kinds.kind_writing import kind_as_toml
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.parts_compared.reading import Reading

BUILT_IN = Path(__file__).parents[2] / "resources" / "part_kinds"
SHELF = load_kinds([BUILT_IN])
GOOD = """\
id = "own-part"
name = "own part"
system = "engine"
[[dimensions]]
name = "width"
unit = "mm"
role = "same"
allowed = 0.2
instrument = "calliper"
"""
WIDTH_AGAIN = GOOD[GOOD.index("[[") :]
WORN = '"restored"\ndirection = "bigger"\n'
MOVES = '[[conditions]]\nterm = "worn"\nmoves = { width = '


def test_every_built_in_kind_can_be_read() -> None:
    assert SHELF.troubles == ()
    assert {
        "distributor-rotor", "distributor-cap", "spark-plug", "plug-wire", "ignition-coil",
        "brake-pads", "serpentine-belt", "oil-filter",
    } <= set(SHELF.kinds)  # fmt: skip


def test_the_names_alone_are_those_of_the_whole_kinds(tmp_path: Path) -> None:
    shop = tmp_path / "part_kinds"
    shop.mkdir()
    (shop / "good.toml").write_text(GOOD, "utf-8")
    (shop / "bad.toml").write_text(GOOD.replace('"width"', '"Width!"'), "utf-8")
    own = {"another": GOOD.replace("own-part", "another"), "no-kind": "id ="}
    for folders in ([BUILT_IN, shop], [BUILT_IN], [shop]):
        whole = load_kinds(folders, own).kinds
        assert load_names(folders, own) == {id_: kind.names for id_, kind in whole.items()}
    assert {"own-part", "another"} <= load_names([BUILT_IN, shop], own).keys()


@pytest.mark.parametrize("kind", SHELF.kinds.values(), ids=str)
def test_a_built_in_kind_is_whole(kind: PartKind) -> None:
    assert any(one.essential for one in kind.dimensions)
    assert kind.views
    assert kind.cautions
    assert kind.conditions
    assert kind.wrongs
    assert kind.refit
    assert kind.proof
    names = {one.name for one in kind.dimensions}
    for one in kind.dimensions:
        assert usual_instrument(one.instrument, one.unit), one.name
        assert one.basis
        assert (one.role == "limit") <= (not one.essential)
    for condition in kind.conditions:
        assert set(condition.moves) <= names, condition.term
    for wrong in kind.wrongs:
        assert set(wrong.shows_on) <= names, wrong.say


@pytest.mark.parametrize("kind", SHELF.kinds.values(), ids=str)
def test_spans_point_the_way_wear_is_undone(kind: PartKind) -> None:
    for one in kind_as_json(kind)["dimensions"]:
        if one["role"] == "restored":
            low, high = one["allowed"]
            assert low < high
            assert high <= 0 if one["direction"] == "smaller" else low >= 0
        else:
            assert one["direction"] is None


def test_wear_terms_of_a_kind_are_found_by_other_names() -> None:
    rotor = SHELF.kinds["distributor-rotor"]
    found = rotor.condition("  Eroded   Tip ")
    assert found is not None
    assert found.term == "burned tip"


@pytest.mark.parametrize(
    ("change", "line", "part"),
    [
        (('role = "same"', 'role = "alike"'), 7, "'role' is 'alike'"),
        (("allowed = 0.2", "allowed = -1"), 8, "'allowed'"),
        (("allowed = 0.2", "allowed = nan"), 8, "must be a number"),
        (("allowed = 0.2\n", ""), 4, "'allowed'"),
        (('name = "width"', 'name = "Wide One"'), 5, "'name' is 'Wide One'"),
        (('unit = "mm"\n', ""), 4, "'unit' is missing"),
        (('system = "engine"\n', ""), None, "'system' is missing"),
        (('id = "own-part"', "id = 7"), 1, "'id' must be a text"),
        (('name = "own part"', 'name = "own part'), 2, "can't be read as TOML"),
        (("[[dimensions]]", "[dimensions]"), None, "'dimensions' must be tables"),
        ((GOOD[GOOD.index("[[") :], ""), None, "'dimensions' is missing"),
        (('calliper"', f'calliper"\n{WIDTH_AGAIN}'), 11, "'width' is used twice"),
        (("allowed = 0.2", 'essential = "yes"\nallowed = 0.2'), 8, "must be true or false"),
        (("allowed = 0.2", 'choices = "a"\nallowed = 0.2'), 8, "must be a list of texts"),
        (("allowed = 0.2", "typical = [2, 1]\nallowed = 0.2"), 8, "the smaller first"),
        (("allowed = 0.2", "typical = [1]\nallowed = 0.2"), 8, "must be two numbers"),
        (("allowed = 0.2", 'typical = [1, "2"]\nallowed = 0.2'), 8, "must be two numbers"),
        (("allowed = 0.2", "typical = [1, true]\nallowed = 0.2"), 8, "must be two numbers"),
        (("allowed = 0.2", "allowed = true"), 8, "must be a number"),
        (('"same"\nallowed = 0.2', f"{WORN}restored_by = [-1, 2]"), 9, "a fresh part brings back"),
        (('"same"\nallowed = 0.2', f"{WORN}"), 4, "a fresh part brings back"),
        (('"same"\nallowed = 0.2', '"limit"\nat_least = 5\nat_most = 4'), 8, "is above at_most"),
        (('calliper"', f"calliper\"\n{MOVES}'sideways' }}"), 12, "becomes bigger or smaller"),
        (('calliper"', 'calliper"\n[[conditions]]\nterm = "x"\nmoves = 3'), 12, "which dimension"),
    ],
)
def test_a_bad_file_names_the_line_to_mend(
    change: tuple[str, str], line: int | None, part: str
) -> None:
    with pytest.raises(KindTrouble) as trouble:
        read_kind(GOOD.replace(*change), "own-part.toml")
    assert trouble.value.line == line
    assert "own-part.toml" in trouble.value.sentence()
    assert part in trouble.value.what


def test_unknown_keys_are_left_alone() -> None:
    kind = read_kind(GOOD + 'colour_of_box = "blue"\n', "own-part.toml")
    assert kind.dimensions[0].allowed == (-0.2, 0.2)


def test_a_shops_kind_replaces_ours_and_a_bad_one_hides_nothing(tmp_path: Path) -> None:
    (tmp_path / "a.toml").write_text(GOOD.replace("own-part", "oil-filter"), encoding="utf-8")
    (tmp_path / "b.toml").write_text("id = ", encoding="utf-8")
    (tmp_path / "c.toml").write_bytes(b"id = '\xff\xfe'")
    (tmp_path / "d.toml").mkdir()
    (tmp_path / "notes.txt").write_text("not a kind", encoding="utf-8")
    shelf = load_kinds([BUILT_IN, tmp_path, tmp_path / "absent"])
    assert shelf.kinds["oil-filter"].name == "own part"
    assert len(shelf.kinds) == len(SHELF.kinds)
    assert [one.file for one in shelf.troubles] == ["b.toml", "c.toml", "d.toml"]
    assert "can't be read (Is a directory)" in shelf.troubles[-1].what


def test_limits_of_a_kind_may_have_one_end_or_none() -> None:
    for figures, allowed in (
        ("", None),
        ("at_least = 4", (4.0, None)),
        ("at_most = 6", (None, 6.0)),
        ("at_least = 4\nat_most = 6", (4.0, 6.0)),
    ):
        text = GOOD.replace('"same"\nallowed = 0.2', f'"limit"\n{figures}')
        kind = read_kind(text, "own-part.toml")
        assert kind.dimensions[0].allowed == allowed
        assert read_kind(kind_as_toml(kind), "again") == kind


def test_a_text_of_the_record_that_is_another_kind_or_none_is_left_out_and_told() -> None:
    own = {"own-part": GOOD, "another": GOOD, "broken": "id = "}
    shelf = load_kinds([BUILT_IN], own)
    assert shelf.own == {"own-part"}
    assert (
        next(one.what for one in shelf.troubles)
        == "the shop's own another: it calls itself own-part."
    )
    assert [one.file for one in shelf.troubles] == [
        *("the shop's own another", "the shop's own broken"),
    ]


def good_readings(kind: PartKind, worn: bool) -> list[Reading]:
    """Return one reading a side of every judged dimension: alike, or worn half-way."""
    readings = []
    for one in kind.dimensions:
        if one.role == "limit":
            continue
        old: float | str = {"word": "alike", "count": 4.0}.get(one.role, 30.0)
        new = old
        if one.role == "restored" and worn:
            low, high = one.allowed or (None, None)
            assert low is not None
            assert high is not None
            new = 30.0 + (low + high) / 2
        readings += [Reading("removed", one.name, (old,)), Reading("replacement", one.name, (new,))]
    return readings


@pytest.mark.parametrize("kind", SHELF.kinds.values(), ids=str)
def test_a_right_part_fits_with_one_reading_a_side(kind: PartKind) -> None:
    pair = compare(kind, good_readings(kind, worn=True))
    assert pair.verdict == "fits"
    assert pair.next_steps == ()


@pytest.mark.parametrize("kind", SHELF.kinds.values(), ids=str)
def test_one_essential_thing_off_is_never_a_fit(kind: PartKind) -> None:
    good = good_readings(kind, worn=True)
    for one in kind.dimensions:
        if one.essential:
            wrong: float | str = "other" if one.role == "word" else 77.0
            others = [r for r in good if (r.side, r.dimension) != ("replacement", one.name)]
            pair = compare(kind, [*others, Reading("replacement", one.name, (wrong,))])
            assert pair.verdict == "stop and look", one.name
            assert compare(kind, others).verdict == "not enough measured", one.name


def test_a_figure_beyond_all_measure_is_told_and_not_a_mistake(tmp_path: Path) -> None:
    text = (BUILT_IN / "relay.toml").read_text("utf-8")
    wrong = re.sub(r"allowed = [0-9.]+", f"allowed = {'9' * 400}", text, count=1)
    (tmp_path / "relay.toml").write_text(wrong, "utf-8")
    shelf = load_kinds([BUILT_IN, tmp_path])
    assert "must be a number" in shelf.troubles[0].sentence()


def test_a_copied_kind_remembers_what_it_is_like() -> None:
    kind = next(iter(SHELF.kinds.values()))
    copy = kind._replace(id="our-own", like=kind.id)
    again = read_kind(kind_as_toml(copy), "our-own.toml")
    assert again == copy
    assert (kind.sort, again.sort) == (kind.id, kind.id)
    assert "like" not in kind_as_toml(kind).split("[[")[0].split()
    with pytest.raises(KindTrouble, match="Our Rotor"):
        read_kind(kind_as_toml(kind._replace(like="Our Rotor")), "our-own.toml")

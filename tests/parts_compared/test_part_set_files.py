"""The files of the part sets: what comes with the program, and what a shop is told of a bad one."""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.parts_compared.part_kinds.kind_trouble import KindTrouble
from desktop_app.parts_compared.part_sets.part_set_file import load_sets, read_set
from desktop_app.shop_record.own_program.resource_folder import resource_path
from tests.parts_compared.sheet_story import kinds

GOOD = """\
id = "two-parts"
name = "two parts"
result = "gap"
unit = "mm"
at_least = 0
at_most_given = "travel"
say_room = "Room."
say_touch = "No room."
say_run_out = "Too far."

[[parts]]
kind = "distributor-cap"
dimension = "terminal-radius"
times = 1

[[given]]
name = "travel"
label = "travel"
times = 0
enters = "value"
half_width = 0.5
"""


def test_a_good_file_is_read() -> None:
    part_set = read_set(GOOD, "two-parts.toml")
    assert part_set.kinds == ("distributor-cap",)
    assert part_set.at_most_given == "travel"
    assert part_set.parts[0].side == "own"


@pytest.mark.parametrize("part_set", load_sets(resource_path("part_sets")), ids=lambda one: one.id)
def test_the_sets_that_come_along_name_dimensions_that_there_are(part_set: object) -> None:
    from desktop_app.parts_compared.part_sets.part_set import PartSet

    assert isinstance(part_set, PartSet)
    for term in part_set.parts:
        dimension = kinds()[term.kind].dimension(term.dimension)
        assert dimension is not None, f"{term.kind} has no {term.dimension}"
        assert dimension.unit == part_set.unit
        if term.each_of:
            count = kinds()[term.kind].dimension(term.each_of)
            assert count is not None
            assert count.role == "count"


def test_the_files_are_named_by_their_ids() -> None:
    folder = Path(resource_path("part_sets"))
    names = sorted(file.stem for file in folder.glob("*.toml"))
    assert names == sorted(one.id for one in load_sets(folder))


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("times = 1\n", "", "'times' must say how often it counts"),
        ("times = 1\n", "times = 0\n", "'times' must say how often it counts"),
        ("half_width = 0.5", "half_width = -1", "'half_width' must say how far it may be off"),
        ('enters = "value"', 'enters = "guess"', "Write one of: value, play."),
        ('enters = "value"', 'enters = "play"', "'value' is missing"),
        ('unit = "mm"', 'unit = "ell"', "Write one of: mm."),
        ('"travel"\nsay', '"journey"\nsay', "Write one of: travel."),
        ('say_run_out = "Too far."\n', "", "'say_run_out' is missing"),
        ('id = "two-parts"', 'id = "Two Parts"', "Use small letters, digits and hyphens"),
        ("times = 1\n", 'times = 1\nside = "left"\n', "Write one of: own, removed, replacement."),
        ('result = "gap"', "result = gap", "this can't be read as TOML"),
    ],
)
def test_what_is_wrong_is_said_with_file_and_line(old: str, new: str, said: str) -> None:
    assert old in GOOD
    with pytest.raises(KindTrouble) as caught:
        read_set(GOOD.replace(old, new, 1), "two-parts.toml")
    assert said in caught.value.sentence()
    assert caught.value.sentence().startswith("two-parts.toml")
    assert (caught.value.line is None) == ("say_run_out" in said)


def test_two_given_terms_of_one_name_are_refused() -> None:
    doubled = GOOD + GOOD[GOOD.index("[[given]]") :]
    with pytest.raises(KindTrouble, match="given 2, 'name' 'travel' is used twice"):
        read_set(doubled, "two-parts.toml")


def test_a_set_without_parts_is_refused() -> None:
    start, end = GOOD.index("[[parts]]"), GOOD.index("[[given]]")
    with pytest.raises(KindTrouble, match="'parts' is missing"):
        read_set(GOOD[:start] + GOOD[end:], "two-parts.toml")

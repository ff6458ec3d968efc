"""What of a pair's readings has a share in a set."""

from __future__ import annotations

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_sets.part_set_file import load_sets
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import SetComparison, judge_set
from desktop_app.parts_compared.reading import Reading
from desktop_app.shop_record.own_program.resource_folder import resource_path
from tests.parts_compared.invented_kinds import both
from tests.parts_compared.sheet_story import kinds

SETS = {one.id: one for one in load_sets(resource_path("part_sets"))}


def judged(name: str, *parts: tuple[str, list[Reading]]) -> SetComparison:
    """Judge a set that comes with the program."""
    reads = {kind: PartRead(kinds()[kind], tuple(readings)) for kind, readings in parts}
    return judge_set(SetRead(SETS[name], reads))


def test_words_kept_for_what_is_measured_now_have_no_say() -> None:
    """A kind may have been changed after its readings were kept."""
    plain = judged(
        "rotor-and-cap",
        ("distributor-rotor", both("tip-radius", 26.9, 27.45)),
        ("distributor-cap", both("terminal-radius", 28.4, 28.4)),
    )
    with_words = judged(
        "rotor-and-cap",
        ("distributor-rotor", [*both("tip-radius", 26.9, 27.45), *both("tip-radius", "a", "b")]),
        ("distributor-cap", [*both("terminal-radius", 28.4, 28.4), *both("towers", "x", "y")]),
    )
    assert with_words == plain


def without(kind: str, name: str) -> PartKind:
    """A kind from which the shop has taken a dimension."""
    known = kinds()[kind]
    left = tuple(one for one in known.dimensions if one.name != name)
    return known._replace(dimensions=left)


ROTOR = PartRead(kinds()["distributor-rotor"], tuple(both("tip-radius", 26.9, 27.45)))
TERMINALS = tuple(both("terminal-radius", [28.4] * 4, [28.4, 28.5, 28.3, 28.4]))
COUNTED = tuple(both("towers", 4.0, 4.0))


def with_cap(cap: PartKind, *readings: Reading) -> SetComparison:
    """Judge the rotor with this cap."""
    reads = {"distributor-rotor": ROTOR, "distributor-cap": PartRead(cap, readings)}
    return judge_set(SetRead(SETS["rotor-and-cap"], reads))


def test_a_dimension_that_the_shop_took_out_of_a_kind_leaves_the_set_open() -> None:
    whole = with_cap(kinds()["distributor-cap"], *TERMINALS, *COUNTED)
    assert whole.after is not None
    assert whole.after.place == "terminal 3"  # the tightest
    bare = with_cap(without("distributor-cap", "terminal-radius"), *TERMINALS, *COUNTED)
    assert (bare.after, bare.verdict) == (None, "not measured")
    assert any("terminal radius" in step for step in bare.next_steps)


def test_places_that_nobody_counts_any_more_are_repeats_of_one() -> None:
    uncounted = with_cap(without("distributor-cap", "towers"), *TERMINALS, *COUNTED)
    assert uncounted.after is not None
    assert uncounted.after.place == ""


def test_a_reading_with_an_instrument_that_nobody_knows_is_none_of_the_places() -> None:
    stick = Reading("replacement", "terminal-radius", (20.0,), "grandfather's stick")
    plain = with_cap(kinds()["distributor-cap"], *TERMINALS, *COUNTED)
    assert with_cap(kinds()["distributor-cap"], *TERMINALS, *COUNTED, stick) == plain

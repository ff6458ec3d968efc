"""What of a pair's readings has a share in a set."""

from __future__ import annotations

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

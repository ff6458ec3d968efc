"""What a set of parts that meet says in words, and what it makes of a part read on one side."""

from __future__ import annotations

from dataclasses import replace

import pytest

from desktop_app.parts_compared.part_sets.set_room import Share, room_of
from desktop_app.parts_compared.part_sets.set_sentence import main_sentence, room_words
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import judge_set
from desktop_app.parts_compared.reading import Side
from tests.parts_compared.invented_kinds import both, read
from tests.parts_compared.judged_sets import PADS, PLAY, SETS, judged, rotor_and_cap, words
from tests.parts_compared.sheet_story import kinds


def test_each_verdict_says_in_one_sentence_what_it_stands_on() -> None:
    alone = judged("rotor-and-cap", ("distributor-rotor", both("tip-radius", 26.9, 27.45)))
    assert main_sentence(alone) == f"The {SETS['rotor-and-cap'].result} is not known yet."
    assert "From the old parts to the new ones" not in words(alone)
    loose = rotor_and_cap((26.90, 28.40 - PLAY - 0.02), (28.40, 28.40))
    assert main_sentence(loose).endswith("these readings can't tell.")
    short = judged(
        "pads-and-disc",
        ("brake-pads", list(PADS)),
        ("brake-disc", both("thickness", 20.2, 22.0)),
        opening=58.0,
        piston_travel=1.9,
    )
    assert main_sentence(short).endswith(SETS["pads-and-disc"].say_run_out)
    exact = room_of([Share("tip", 1.0, 0.0)])
    assert room_words(exact, "mm") == "1 mm"


def test_parts_that_are_as_the_old_ones_changed_by_less_than_the_doubt() -> None:
    same = rotor_and_cap((26.90, 26.90), (28.40, 28.40))
    assert same.change is not None
    most = same.change.expanded()
    assert f"changed by less than {most:.2f} mm" in words(same)


def test_where_only_the_play_was_measured_what_was_taken_as_usual_is_measured_first() -> None:
    """A set with a figure that is doubt and no play, taken as usual beside play that was read."""
    plain = SETS["rotor-and-cap"]
    given = tuple(
        replace(one, enters="value") if one.name == "cap-seat" else one for one in plain.given
    )
    reads = {
        "distributor-rotor": PartRead(
            kinds()["distributor-rotor"], tuple(both("tip-radius", [26.90] * 3, [28.00] * 3))
        ),
        "distributor-cap": PartRead(
            kinds()["distributor-cap"], tuple(both("terminal-radius", [28.40] * 3, [28.40] * 3))
        ),
    }
    entered = {"wobble": 0.6, "shaft-bend": 0.03}
    one = judge_set(SetRead(replace(plain, given=given), reads, entered=entered))
    assert one.verdict == "may touch"
    assert "Measure first what was taken as usual" in main_sentence(one)


@pytest.mark.parametrize("side", ["removed", "replacement"])
def test_a_plate_measured_on_one_side_is_held_against_the_usual_one(side: Side) -> None:
    """What is taken as usual on the other side leaves its whole doubt in the change."""
    lining, disc = both("lining-thickness", 4.0, 11.0), both("thickness", 20.2, 22.0)
    plates = read(side, "plate-thickness", 6.0)
    one = judged("pads-and-disc", ("brake-pads", [*lining, plates]), ("brake-disc", disc))
    neither = judged("pads-and-disc", ("brake-pads", lining), ("brake-disc", disc))
    assert one.change is not None
    assert neither.change is not None
    sign = 1 if side == "removed" else -1
    # Two plates, 0.5 mm thicker than usual on that side alone.
    assert one.change.value - neither.change.value == pytest.approx(sign * 2 * 0.5)
    assert one.change.expanded() > neither.change.expanded() + 1.0

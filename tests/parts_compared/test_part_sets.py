"""Parts that meet, judged together: room, touching, and what the readings can't tell."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.part_sets.part_set import GivenTerm, PartSet, PartTerm
from desktop_app.parts_compared.part_sets.set_reasons import with_set_reasons
from desktop_app.parts_compared.part_sets.set_room import Share, room_of
from desktop_app.parts_compared.part_sets.set_sentence import (
    main_sentence,
)
from desktop_app.parts_compared.part_sets.set_shares import PartRead, SetRead
from desktop_app.parts_compared.part_sets.set_verdict import judge_set
from tests.parts_compared.invented_kinds import both, read
from tests.parts_compared.judged_sets import PADS, PLAY, SETS, judged, rotor_and_cap, words
from tests.parts_compared.sheet_story import kinds

EXACT = Instrument("calliper", "mm", 0.0, 0.0, 0.0)


def test_a_new_tip_that_clears_the_terminals() -> None:
    one = rotor_and_cap((26.90, 27.45), (28.40, 28.40))
    assert one.verdict == "room enough"
    assert one.settled_for
    assert not one.settled_against
    assert one.before is not None
    assert one.after is not None
    assert one.change is not None
    assert one.before.value == pytest.approx(1.50)
    assert one.after.value == pytest.approx(0.95)
    assert one.change.value == pytest.approx(-0.55)
    assert "The tip clears the terminals." in main_sentence(one)
    assert "became 0.55 mm smaller" in words(one)


def test_the_change_is_known_better_than_the_gap() -> None:
    one = rotor_and_cap((26.90, 27.45), (28.40, 28.40))
    assert one.change is not None
    assert one.after is not None
    assert one.change.expanded() < one.after.usual / 3 < one.after.worst / 3


def test_a_tip_that_usual_play_brings_to_the_terminal_is_no_proof_of_a_wrong_part() -> None:
    one = rotor_and_cap((26.90, 28.36), (28.40, 28.40))
    assert one.verdict == "may touch"
    assert one.settled_against
    assert "Measure the play first" in main_sentence(one)
    assert "is the wrong one" not in main_sentence(one)
    assert any("wobble" in step for step in one.next_steps)


def test_with_the_play_measured_a_part_is_called_the_wrong_one() -> None:
    one = judged(
        "rotor-and-cap",
        ("distributor-rotor", both("tip-radius", [26.90] * 3, [28.36] * 3)),
        ("distributor-cap", both("terminal-radius", [28.40] * 3, [28.40] * 3)),
        wobble=0.08,
        shaft_bend=0.03,
        cap_seat=0.10,
    )
    assert one.verdict == "may touch"
    assert "one of the two parts is the wrong one" in main_sentence(one)
    assert one.next_steps == ()


def test_a_tip_longer_than_the_room_touches() -> None:
    one = rotor_and_cap((26.90, 28.60), (28.40, 28.40))
    assert one.verdict == "may touch"
    assert "Nothing is left even without play" in main_sentence(one)


def test_play_that_decides_only_within_the_doubt_of_the_readings_is_to_be_measured() -> None:
    one = rotor_and_cap((26.90, 28.40 - PLAY + 0.01), (28.40, 28.40))
    assert one.after is not None
    assert one.after.value < PLAY < one.after.value + one.after.doubt
    assert one.verdict == "too close to tell"
    assert "wobble of the tip" in one.next_steps[0]


def test_readings_too_loose_to_tell() -> None:
    one = rotor_and_cap((26.90, 28.40 - PLAY - 0.02), (28.40, 28.40))
    assert one.verdict == "too close to tell"
    assert not one.settled_against
    assert not one.settled_for
    assert "wobble" in one.next_steps[0]
    assert "Measure" in one.next_steps[-1]


def test_what_was_not_measured_is_said() -> None:
    one = rotor_and_cap((26.90, 27.45), (28.40, 28.40))
    assert {share.label for share in one.taken} == {
        "wobble of the tip from play in the shaft bushing",
        "bend of the shaft at the tip",
        "play of the cap on its seat",
    }
    assert "Not measured, but taken as usual: wobble of the tip" in words(one)


def test_play_that_was_measured_takes_the_place_of_the_usual_one() -> None:
    tips = ("distributor-rotor", both("tip-radius", 26.90, 28.05))
    caps = ("distributor-cap", both("terminal-radius", 28.40, 28.40))
    assert judged("rotor-and-cap", tips, caps).verdict == "room enough"
    loose = judged("rotor-and-cap", tips, caps, wobble=0.4)
    assert loose.verdict == "may touch"
    assert "wobble" not in " ".join(share.label for share in loose.taken)


def test_a_missing_part_is_asked_for() -> None:
    one = judged(
        "rotor-and-cap",
        ("distributor-rotor", both("tip-radius", 26.90, 27.45)),
        ("distributor-cap", [read("removed", "terminal-radius", 28.40)]),
    )
    assert one.verdict == "not measured"
    assert one.before is not None
    assert one.after is None
    assert one.change is None
    assert one.next_steps == (
        "Measure inner radius of the terminals on the new distributor cap (calliper).",
    )


def test_as_many_readings_as_towers_are_one_for_each_terminal() -> None:
    radii = [28.40, 28.10, 28.42, 28.38]
    caps = [*both("towers", 4, 4), *both("terminal-radius", [28.40] * 4, radii)]
    tips = ("distributor-rotor", both("tip-radius", 26.90, 27.45))
    one = judged("rotor-and-cap", tips, ("distributor-cap", caps))
    assert [room.place for room in one.places] == [f"terminal {n}" for n in (1, 2, 3, 4)]
    assert one.after is not None
    assert one.after.place == "terminal 2"
    assert one.after.value == pytest.approx(0.65)
    assert "at terminal 2, the tightest," in words(one)


def test_fewer_readings_than_towers_are_repeats() -> None:
    caps = [*both("towers", 4, 4), *both("terminal-radius", [28.40] * 3, [28.40] * 3)]
    tips = ("distributor-rotor", both("tip-radius", 26.90, 27.45))
    one = judged("rotor-and-cap", tips, ("distributor-cap", caps))
    assert [room.place for room in one.places] == [""]


def test_one_tight_terminal_decides() -> None:
    caps = [*both("towers", 2, 2), *both("terminal-radius", [28.4, 28.4], [28.4, 27.5])]
    tips = ("distributor-rotor", both("tip-radius", 26.90, 27.45))
    assert judged("rotor-and-cap", tips, ("distributor-cap", caps)).verdict == "may touch"


def test_parts_that_may_touch_stop_both_of_their_pairs() -> None:
    pair = compare(kinds()["distributor-rotor"], both("tip-radius", 26.90, 28.30))
    touching = rotor_and_cap((26.90, 28.30), (28.40, 28.40))
    stopped = with_set_reasons(pair, [touching])
    assert stopped.verdict == "stop and look"
    assert stopped.reasons[0] == main_sentence(touching)
    assert stopped.dimensions == pair.dimensions


def test_parts_with_room_leave_the_verdict_on_their_pairs_alone() -> None:
    pair = compare(kinds()["distributor-rotor"], both("tip-radius", 26.90, 27.45))
    assert with_set_reasons(pair, [rotor_and_cap((26.90, 27.45), (28.40, 28.40))]) == pair


def test_pads_and_disc_without_the_opening_still_say_what_changed() -> None:
    one = judged(
        "pads-and-disc",
        ("brake-pads", list(PADS)),
        ("brake-disc", both("thickness", 20.2, 22.0)),
    )
    assert one.verdict == "not measured"
    assert one.change is not None
    assert one.change.value == pytest.approx(-(2 * 7.0 + 1.8))
    assert any("opening of the calliper" in step for step in one.next_steps)


@pytest.mark.parametrize(
    ("opening", "travel", "verdict"),
    [(58.0, 30.0, "room enough"), (54.5, 30.0, "may touch"), (58.0, 1.9, "may run out"),
     (54.95, 30.0, "too close to tell"), (58.0, 2.9, "too close to tell")],
)  # fmt: skip
def test_pads_and_disc_in_the_calliper(opening: float, travel: float, verdict: str) -> None:
    # New: 2 * (11.0 + 5.5) + 22.0 = 55.0 mm.
    one = judged(
        "pads-and-disc",
        ("brake-pads", list(PADS)),
        ("brake-disc", both("thickness", 20.2, 22.0)),
        opening=opening,
        piston_travel=travel,
    )
    assert one.verdict == verdict


def test_backing_plates_that_were_not_measured_are_taken_as_usual() -> None:
    one = judged(
        "pads-and-disc",
        ("brake-pads", both("lining-thickness", 4.0, 11.0)),
        ("brake-disc", both("thickness", 20.2, 22.0)),
        opening=60.0,
    )
    assert one.after is not None
    assert one.after.value == pytest.approx(60.0 - 55.0)
    assert "thickness of the backing plate (5.5 ± 1.0 mm)" in words(one)
    assert one.verdict == "not measured"
    assert not one.settled_for
    assert "the other end can't be judged: the travel of the piston" in main_sentence(one)
    assert SETS["pads-and-disc"].say_room not in words(one)
    assert any("travel of the piston" in step for step in one.next_steps)


def test_an_end_that_is_not_entered_leaves_the_verdict_on_the_other_end_alone() -> None:
    one = judged(
        "pads-and-disc",
        ("brake-pads", list(PADS)),
        ("brake-disc", both("thickness", 20.2, 22.0)),
        opening=54.0,
    )
    assert one.verdict == "may touch"
    assert "The other end was not looked at: the travel of the piston" in words(one)


def test_a_set_gives_the_difference_and_the_doubt_that_the_pair_gives() -> None:
    # A rule on the old side only; the micrometer on both, and the calliper read most often.
    readings = [
        read("removed", "tip-radius", 26.9, 26.9, instrument="steel rule"),
        *both("tip-radius", [26.91] * 5, [27.45] * 5, "calliper"),
        read("replacement", "tip-radius", 27.451, instrument="micrometer"),
    ]
    pair = compare(kinds()["distributor-rotor"], readings).dimension("tip-radius")
    part_set = PartSet(
        "invented", "invented", "length", "mm",
        (PartTerm("distributor-rotor", "tip-radius", 1.0),), (), 0.0, "Room.", "No room.",
    )  # fmt: skip
    part = PartRead(kinds()["distributor-rotor"], tuple(readings))
    one = judge_set(SetRead(part_set, {"distributor-rotor": part}))
    assert pair is not None
    assert pair.difference is not None
    assert one.change is not None
    assert one.change.value == pytest.approx(pair.difference)
    assert one.change.expanded() == pytest.approx(pair.difference_expanded_uncertainty)


@pytest.mark.parametrize(
    ("new", "verdict"),
    [(1230.0, "room enough"), (1215.0, "room enough"), (1280.0, "may touch"),
     (1150.0, "may run out")],
)  # fmt: skip
def test_half_the_difference_of_the_belts_moves_the_tensioner(new: float, verdict: str) -> None:
    belts = ("serpentine-belt", both("length", 1230.0, new))
    one = judged("belt-and-tensioner", belts, travel_left=20.0, whole_travel=50.0)
    assert one.before is not None
    assert one.after is not None
    assert one.before.value == 20.0
    assert one.after.value == pytest.approx(20.0 - (new - 1230.0) / 2)
    assert one.verdict == verdict


def test_the_old_belt_need_not_be_measured_for_where_the_tensioner_stood() -> None:
    belts = ("serpentine-belt", [read("replacement", "length", 1215.0)])
    one = judged("belt-and-tensioner", belts, travel_left=20.0)
    assert one.before is not None
    assert one.before.value == 20.0
    assert one.verdict == "not measured"


def test_inches_are_said_where_the_shop_reads_inches() -> None:
    one = rotor_and_cap((26.90, 27.45), (28.40, 28.40))
    assert " mm" not in words(one, "inch")
    assert "0.0217 in smaller" in words(one, "inch")


lengths = st.floats(min_value=5.0, max_value=60.0)


@given(lengths, lengths, lengths, lengths)
def test_exchanging_old_and_new_turns_the_change_round(
    tip: float, new_tip: float, terminal: float, new_terminal: float
) -> None:
    there = rotor_and_cap((tip, new_tip), (terminal, new_terminal))
    back = rotor_and_cap((new_tip, tip), (new_terminal, terminal))
    assert there.change is not None
    assert back.change is not None
    assert there.change.value == pytest.approx(-back.change.value, abs=1e-9)
    assert there.before is not None
    assert back.after is not None
    assert (there.before.value, there.before.worst) == (back.after.value, back.after.worst)


@given(lengths, lengths, st.floats(min_value=0.0, max_value=5.0))
def test_a_longer_tip_never_makes_more_room(tip: float, terminal: float, more: float) -> None:
    order = ["may touch", "too close to tell", "room enough"]
    short = rotor_and_cap((tip, tip), (terminal, terminal)).verdict
    longer = rotor_and_cap((tip, tip + more), (terminal, terminal)).verdict
    assert order.index(longer) <= order.index(short)


@given(lengths, lengths, st.floats(min_value=0.0, max_value=2.0))
def test_more_wobble_never_makes_more_room(tip: float, terminal: float, wobble: float) -> None:
    order = ["may touch", "too close to tell", "room enough"]
    parts = (
        ("distributor-rotor", both("tip-radius", tip, tip)),
        ("distributor-cap", both("terminal-radius", terminal, terminal)),
    )
    steady = judged("rotor-and-cap", *parts, wobble=wobble / 2).verdict
    loose = judged("rotor-and-cap", *parts, wobble=wobble).verdict
    assert order.index(loose) <= order.index(steady)


shares = st.builds(
    Share,
    st.just("part"),
    st.floats(-100, 100),
    st.floats(0, 5),
    st.sampled_from([-2.0, -1.0, 0.5, 1.0]),
    st.just("measured"),
    st.booleans(),
)


@given(st.lists(shares, min_size=1, max_size=8))
def test_the_usual_case_lies_inside_the_worst_one(several: list[Share]) -> None:
    room = room_of(several)
    most = max(one.reach for one in several)
    assert most - 1e-9 <= room.usual <= room.worst + 1e-9
    assert room.play <= room.worst + 1e-9


@given(st.floats(0, 50), st.floats(0, 3), st.floats(0, 3))
def test_no_room_is_called_enough_that_could_be_used_up(
    gap: float, play: float, doubt: float
) -> None:
    part_set = PartSet(
        "invented", "invented", "gap", "mm",
        (PartTerm("distributor-rotor", "bore", 1.0),),
        (
            GivenTerm("play", "play", 1.0, play, "play", 0.0, cancels=True),
            GivenTerm("figure", "figure", 1.0, doubt, "value", 0.0),
        ),
        0.0, "Room.", "No room.",
    )  # fmt: skip
    part = PartRead(kinds()["distributor-rotor"], tuple(both("bore", gap, gap, "calliper")))
    one = judge_set(SetRead(part_set, {"distributor-rotor": part}, instruments={"calliper": EXACT}))
    expected = (
        "may touch" if gap + doubt <= play
        else "too close to tell" if gap <= play + doubt
        else "room enough"
    )  # fmt: skip
    assert one.verdict == expected


def test_what_is_new_each_time_does_not_cancel() -> None:
    part_set = SETS["pads-and-disc"]
    kept = part_set.given_term("pads-alike")
    assert kept is not None
    assert not kept.cancels
    parts = {
        "brake-pads": PartRead(kinds()["brake-pads"], PADS),
        "brake-disc": PartRead(kinds()["brake-disc"], tuple(both("thickness", 20.2, 22.0))),
    }
    one = judge_set(SetRead(part_set, parts))
    assert one.change is not None
    assert one.change.u > 0.3 * (2 / 3) ** 0.5

"""Conditions of a concern, systems, and the ladder of proof."""

from __future__ import annotations

import pytest

from desktop_app.repair_jobs.concern_conditions import (
    CONDITION_IDS,
    CONDITIONS,
    Tick,
    conditions_in_words,
)
from desktop_app.repair_jobs.proof import RECORDED_LEVELS, ProofLevel, ProofReached, worth_saying
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.share_interval import wilson
from desktop_app.repair_jobs.system_cautions import system_cautions
from desktop_app.repair_jobs.systems import (
    SYSTEMS,
    system_id,
    system_in_a_sentence,
    system_name,
)


def test_never_is_said_and_not_asked_is_not() -> None:
    ticks = {"damp": Tick.HAPPENS, "cold": Tick.HAPPENS, "hot": Tick.NEVER, "idle": Tick.NOT_ASKED}
    assert conditions_in_words(ticks) == "happens: cold, damp; never: hot"
    assert conditions_in_words({}) == ""


def test_three_presses_lead_back_to_not_asked() -> None:
    tick = Tick.NOT_ASKED
    seen = [tick := tick.next() for _ in range(3)]
    assert seen == [Tick.HAPPENS, Tick.NEVER, Tick.NOT_ASKED]


def test_every_condition_has_words_of_its_own() -> None:
    assert len(CONDITION_IDS) == len(CONDITIONS) == len({c.words for c in CONDITIONS})


@pytest.mark.parametrize(
    ("text", "identity"),
    [
        ("ignition", "ignition"),
        ("Ignition System", "ignition"),
        ("A/C", "air-conditioning"),
        ("air conditioning", "air-conditioning"),
        ("Gearbox", "transmission"),
        ("engine_control", "engine-control"),
        ("flux", None),
    ],
)
def test_systems_are_known_by_id_and_by_name(text: str, identity: str | None) -> None:
    assert system_id(text) == identity


def test_every_system_finds_itself() -> None:
    for system in SYSTEMS:
        assert system_id(system.id) == system.id
        assert system_id(system.name) == system.id
        assert system_name(system.id) == system.name
        assert all(system_id(word) is not None for word in system.also)
    assert system_name("flux") == "flux"


def test_a_system_is_named_inside_a_sentence_and_an_unknown_one_as_written() -> None:
    assert system_in_a_sentence("intake") == "intake and boost"
    assert system_in_a_sentence("Roof rack") == system_name("Roof rack") == "Roof rack"
    assert system_name("intake") == "Intake and boost"


@pytest.mark.parametrize(("system", "danger"), [("brakes", "can kill"), ("cooling", "scalds")])
def test_a_caution_defers_to_the_maker_and_the_law(system: str, danger: str) -> None:
    [caution] = system_cautions(system)
    assert danger in caution
    assert "maker's procedure and local rules" in caution
    assert system_cautions("mounts") == ()


def test_every_system_has_checks_and_its_own_where_it_matters() -> None:
    for system in SYSTEMS:
        checks = proof_checks(system.id)
        assert checks.bay
        assert checks.enough
    assert "Never left out" in proof_checks("brakes").enough


def test_the_ladder_has_five_recorded_steps_with_words() -> None:
    assert [int(level) for level in RECORDED_LEVELS] == [0, 1, 2, 3, 4]
    assert [level.word for level in ProofLevel] == [
        *("unproven", "bay", "road", "full trip", "same conditions", "time"),
    ]


def test_what_was_not_tried_is_said_and_nothing_is_called_safe() -> None:
    proof = ProofReached(ProofLevel.ROAD, ["pulling"], ["rain", "damp"], ["wheel torque"])
    assert worth_saying(proof) == (
        "Driven, but the car's own test for this system was not seen to pass.",
        "Tried: pulling hard or uphill.",
        "Not tried: rain, damp.",
        "Never left out, and not ticked: wheel torque.",
    )
    for level in ProofLevel:
        said = " ".join(worth_saying(ProofReached(level)))
        assert "safe" not in said


def test_the_same_conditions_are_proved_only_where_every_one_of_them_was_met() -> None:
    level = ProofLevel.SAME_CONDITIONS
    unread = "That no code was pending afterwards is not written down."
    assert worth_saying(ProofReached(level, ["damp"])) == (unread, "Tried: damp.")
    assert worth_saying(ProofReached(level, codes_were_read=True)) == (
        "No condition was told of, so there was none to meet.",
    )
    some = ProofReached(level, ["damp"], ["pulling"], not_said=["cold"])
    assert some.chosen_beyond
    assert worth_saying(some) == (
        "Not every condition you told us of is written down as met.",
        unread,
        "Tried: damp.",
        "Not tried: pulling hard or uphill.",
        "Not said whether tried: cold.",
    )
    assert not ProofReached(ProofLevel.ROAD, (), ["damp"]).chosen_beyond


def test_a_full_trip_without_a_reading_of_the_codes_says_so() -> None:
    said = worth_saying(ProofReached(ProofLevel.FULL_TRIP))
    assert said[-1] == "That no code was pending afterwards is not written down."
    read = worth_saying(ProofReached(ProofLevel.FULL_TRIP, codes_were_read=True))
    assert read == said[:-1]


@pytest.mark.parametrize(
    ("proof", "borne_out"),
    [
        (ProofReached(ProofLevel.UNPROVEN), False),
        (ProofReached(ProofLevel.UNPROVEN, done=["no leak"]), False),
        (ProofReached(ProofLevel.UNPROVEN, ["damp"]), False),
        (ProofReached(ProofLevel.UNPROVEN, drive_is_written=True), False),
        (ProofReached(ProofLevel.BAY, done=["no leak"]), False),
        (ProofReached(ProofLevel.ROAD), True),
        (ProofReached(ProofLevel.ROAD, doubts=["P0300 was read after the repair."]), False),
        (ProofReached(ProofLevel.FULL_TRIP, own_test=True, codes_were_read=True), True),
        (ProofReached(ProofLevel.FULL_TRIP, own_test=True), False),
        (ProofReached(ProofLevel.FULL_TRIP, codes_were_read=True), False),
        (ProofReached(ProofLevel.SAME_CONDITIONS, ["damp"]), True),
        (ProofReached(ProofLevel.SAME_CONDITIONS, ["damp"], ["cold"]), False),
        (ProofReached(ProofLevel.SAME_CONDITIONS, ["damp"], not_said=["cold"]), False),
        (ProofReached(ProofLevel.SAME_CONDITIONS), False),
    ],
)
def test_what_a_level_means_is_claimed_only_where_it_is_borne_out(
    proof: ProofReached, borne_out: bool
) -> None:
    assert proof.borne_out is borne_out
    assert proof.means == (proof.level.means if borne_out else "")


def test_a_passed_test_of_the_cars_own_says_which_conditions_were_not_tried() -> None:
    passed = {"own_test": True, "codes_were_read": True}
    assert worth_saying(ProofReached(ProofLevel.FULL_TRIP, ["damp"], **passed)) == (
        "The car's own test passed.",
        "Tried: damp.",
    )
    some = worth_saying(ProofReached(ProofLevel.FULL_TRIP, (), ["damp"], **passed))
    assert some[0] == (
        "The car's own test passed; the conditions you told us of were not all tried."
    )


def test_a_drive_with_a_passed_test_says_that_nobody_read_the_codes() -> None:
    road = ProofLevel.ROAD
    assert worth_saying(ProofReached(road, own_test=True)) == (
        "Driven; that no code was pending afterwards is not written down.",
    )
    assert worth_saying(ProofReached(road, own_test=True, codes_were_read=True)) == ()
    assert worth_saying(ProofReached(road, own_test=None)) == ()  # no such test is known


@pytest.mark.parametrize(
    ("k", "n", "low", "high"),
    [
        # E. B. Wilson's interval, worked out by hand from his formula with z = 1.959964.
        (1, 10, 0.0179, 0.4042),
        (0, 10, 0.0, 0.2775),
        (10, 10, 0.7225, 1.0),
    ],
)
def test_a_share_has_an_interval_and_none_of_few_is_not_never(
    k: int, n: int, low: float, high: float
) -> None:
    assert wilson(k, n) == (pytest.approx(low, abs=5e-5), pytest.approx(high, abs=5e-5))
    assert wilson(k, n, 0.5)[1] <= wilson(k, n)[1]


@pytest.mark.parametrize("nonsense", [(1, 0, 0.95), (3, 2, 0.95), (-1, 2, 0.95), (1, 2, 1.0)])
def test_what_is_no_share_is_refused(nonsense: tuple[int, int, float]) -> None:
    with pytest.raises(ValueError, match="is not a"):
        wilson(*nonsense)

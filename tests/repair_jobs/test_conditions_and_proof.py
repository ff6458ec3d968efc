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
from desktop_app.repair_jobs.systems import SYSTEMS, system_id, system_name


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

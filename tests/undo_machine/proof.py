"""The deeds by which a repair is proved."""

from __future__ import annotations

from desktop_app.repair_jobs import actions, proof_actions
from desktop_app.repair_jobs.proof_steps import STEP_IDS
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.repair_jobs.road_test import EVERY_UNITS
from desktop_app.repair_jobs.self_tests import SelfTestState
from desktop_app.repair_jobs.stored import CaughtHere, Job
from tests.undo_machine.at_the_counter import CONDITIONS, words_of_job
from tests.undo_machine.deeds_to_do import Deeds, Given, Seen, using

STAGES = ("found", "after repair")
STEPS = (*sorted(STEP_IDS)[:3], "sing")
BYTES = ("41 01 00 07 E5 00", "0007E500", "", "zz")
DISTANCES = (None, 0.0, 7.5, 100_000.0, 1e9, -1.0, float("nan"))
MOMENTS = ("14:05", "2026-11-16 09:00", "25:00", "", "2019-01-01 08:00")
COUNTS = (None, Provoked(37, 10.0, 0, 10.0), Provoked(2, 5.0, 1, 5.0))


def typed_bytes(seen: Seen) -> Given:
    """Type the four bytes of the car's own tests."""
    return using(seen.one(Job), seen.of(STAGES), seen.of(BYTES))


def self_test(seen: Seen) -> Given:
    """Enter how one of the car's own tests stands."""
    state = seen.of((None, *SelfTestState))
    return using(seen.one(Job), seen.of(STAGES), seen.of(("catalyst", "misfire")), state)


def distance(seen: Seen) -> Given:
    """Write how far it was driven."""
    job = seen.one(Job)
    return using(job, seen.of(DISTANCES), seen.shown(Job, job, "proof_distance"))


def every(seen: Seen) -> Given:
    """Say how often the fault came."""
    return using(seen.one(Job), seen.of(DISTANCES), seen.of((*EVERY_UNITS, "moons")))


DEEDS: Deeds = {
    actions.say_proof: lambda s: using(s.one(Job), s.of((None, 0, 1, 2, 3, 4, 5))),
    proof_actions.meet_condition: lambda s: using(
        s.one(Job), s.of(CONDITIONS), s.of((None, True, False))
    ),
    proof_actions.type_self_tests: typed_bytes,
    proof_actions.enter_self_test: self_test,
    proof_actions.tick_step: lambda s: using(s.one(Job), s.of(STEPS), done=s.yes()),
    proof_actions.time_step: lambda s: using(s.one(Job), s.of(STEPS), s.of(MOMENTS)),
    proof_actions.write_tried: words_of_job("proof_words"),
    proof_actions.write_distance: distance,
    proof_actions.say_fault_every: every,
    proof_actions.write_provoked: lambda s: using(s.one(Job), s.of(COUNTS)),
    proof_actions.catch_here: lambda s: using(s.one(Job), s.words()),
    proof_actions.strike_caught: lambda s: using(s.one(CaughtHere)),
}

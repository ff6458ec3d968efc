"""Tells how the repairs were proved: at the counter, in the bay, on the drive."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from functools import partial

from demo_shop.job_story import JobStory
from demo_shop.people import COUNTER
from demo_shop.proof_story import ProofStory
from demo_shop.storyteller import Storyteller
from demo_shop.written_proof import PROOFS
from desktop_app.repair_jobs import proof_actions
from desktop_app.repair_jobs.actions import tick_check
from desktop_app.repair_jobs.proof import CODES_READ
from desktop_app.repair_jobs.provocation import read_provoked

Told = tuple[datetime, Callable[[], None]]


def proof_told(teller: Storyteller, story: JobStory) -> Iterator[Told]:
    """Give what is told of a job's proof, each at its own moment."""
    proof = PROOFS.get(story.key)
    if proof is None:
        return
    at, came = teller.calendar.at, teller.calendar.at(story.came)
    who = story.technician or COUNTER
    if proof.every is not None:
        deed = partial(_do, teller, story, COUNTER, proof_actions.say_fault_every, *proof.every)
        yield came + timedelta(minutes=3), deed
    if proof.found:
        typed = partial(_do, teller, story, who, proof_actions.type_self_tests)
        yield came + timedelta(minutes=12), partial(typed, "found", proof.found)
    for step, moment in proof.steps.items():
        yield at(moment), partial(_do, teller, story, who, proof_actions.tick_step, step, done=True)
    if proof.caught_here is not None:
        moment, words = proof.caught_here
        yield at(moment), partial(_do, teller, story, who, proof_actions.catch_here, words)
    if story.left:
        yield at(story.left) - timedelta(minutes=11), partial(_tried, teller, story, proof)


def _tried(teller: Storyteller, story: JobStory, proof: ProofStory) -> None:
    """Write down what the drive and the car's own tests showed."""
    who = story.technician
    for conditions, met in ((proof.met, True), (proof.not_met, False)):
        for condition in conditions:
            _do(teller, story, who, proof_actions.meet_condition, condition, met)
    if proof.after:
        _do(teller, story, who, proof_actions.type_self_tests, "after repair", proof.after)
        if not story.codes_after:
            _do(teller, story, who, tick_check, "proof", CODES_READ, "done")
    for monitor, state in proof.by_hand.items():
        test = ("after repair", monitor, state)
        _do(teller, story, who, proof_actions.enter_self_test, *test)
    if proof.provoked:
        counted = read_provoked(proof.provoked)
        _do(teller, story, who, proof_actions.write_provoked, counted)


def _do(
    teller: Storyteller,
    story: JobStory,
    who: str,
    deed: Callable[..., object],
    *words: object,
    **more: object,
) -> None:
    teller.do(who, deed, teller.jobs[story.key], *words, **more)  # type: ignore[arg-type]

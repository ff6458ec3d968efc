"""The proof of repair on the sheet: what was reached, read and driven, and what to watch for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from desktop_app.parts_compared.sheet_blocks import Block, Heading, Listed, Words
from desktop_app.parts_compared.sheet_values import whole
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import ProofLevel, ProofReached, worth_saying
from desktop_app.repair_jobs.proof_checks import proof_checks
from desktop_app.repair_jobs.proof_codes import codes_in_words
from desktop_app.repair_jobs.proof_kept import ProofKept, caught_in_words
from desktop_app.repair_jobs.proof_said import (
    codes_to_say,
    drive_said,
    proof_doubts,
    proof_reached,
    unit_of,
    watch_for,
)
from desktop_app.repair_jobs.proof_window import window_in_words
from desktop_app.repair_jobs.road_test_words import LIMIT
from desktop_app.repair_jobs.self_tests_compared import self_tests_in_words

# A check that is asked for only where somebody told of wet.
_IF_WET = "if told wet"
_WET = ("damp", "rain", "wash")


def proof_blocks(job: JobView, kept: ProofKept) -> Iterator[Block]:
    """Yield what the customer reads: the proof, what was declined, what to watch, the window."""
    yield Heading("Proof")
    if job.proof_level is None:
        yield Words("How far this repair is proved has not been said yet.", "Reached")
    else:
        yield from _reached(job, kept, ProofLevel(job.proof_level))
    yield from _read_and_driven(job, kept)
    yield from _declined(job)
    yield Words(" ".join(watch_for(job, kept)), "What to watch for")
    yield Words(window_in_words(job), "Window")


def proof_file_blocks(
    job: JobView, kept: ProofKept, asked_by_parts: Sequence[str] = ()
) -> Iterator[Block]:
    """Yield what is kept beside it: what a drive is worth, what was ticked, what was not proved.

    `asked_by_parts` are the proof checks of the fitted parts' kinds.
    """
    system = proof_checks(job.system)
    asked = tuple(dict.fromkeys((*system.bay, *system.road, *asked_by_parts)))
    if not any(job.conditions.get(wet) for wet in _WET):
        asked = tuple(words for words in asked if _IF_WET not in words)
    ticked = {one.words: one.outcome for one in job.checks if one.kind == "proof"}
    said: list[Block] = []
    limit = () if kept.every is None else (LIMIT,)
    worth = " ".join((*drive_said(job, kept), *limit))
    if worth:
        said.append(Words(worth, "What the drive is worth"))
    if kept.caught:
        caught = tuple(
            f"{caught_in_words(one)} {whole(one.words).rstrip('.')}." for one in kept.caught
        )
        said.append(Listed("Caught here: a good sign, for the car had not left", caught, "⊙"))
    done = [words.rstrip(".") for words in asked if ticked.get(words) == "done"]
    if done:
        said.append(Words(f"{'; '.join(done)}.", "Ticked as done"))
    if job.proof_level is not None:
        doubts = proof_doubts(job, kept, ProofLevel(job.proof_level))
        left_open = [f"Not ticked: {w.rstrip('.')}." for w in asked if not ticked.get(w)]
        if doubts or left_open:
            said.append(Listed("Not proved", (*doubts, *left_open), "◌"))
    if said:
        yield Heading("Proof, in detail")
        yield from said


def _reached(job: JobView, kept: ProofKept, level: ProofLevel) -> Iterator[Block]:
    reached = proof_reached(job, kept, level)
    yield Words(f"{level.word} ({int(level)} of 4){_borne_out(reached)}", "Reached")
    said = " ".join(worth_saying(reached))
    if said:
        yield Words(said)


def _borne_out(reached: ProofReached) -> str:
    """Return how the level goes on: what it means, or that not all of it is written down."""
    if reached.means:
        return f". {reached.means}"
    if reached.level >= ProofLevel.FULL_TRIP or reached.doubts:
        return " was chosen. What is written down does not bear all of it out."
    return "."


def _read_and_driven(job: JobView, kept: ProofKept) -> Iterator[Block]:
    if job.proof_words.strip() or job.proof_distance is not None:
        unit = "km" if unit_of(job) == "km" else "miles"
        driven = "" if job.proof_distance is None else f"Driven {job.proof_distance:g} {unit}. "
        yield Words(driven + whole(job.proof_words), "What was done")
    codes = (*codes_in_words(job.codes, job.codes_were_read), *codes_to_say(job, kept))
    if codes:
        yield Words(" ".join(codes), "Codes")
    tests = " ".join(self_tests_in_words(kept.found, kept.after))
    if tests:
        yield Words(tests, "The car's own tests")


def _declined(job: JobView) -> Iterator[Block]:
    declined = (job.declined or "").strip()
    if job.declined is None:
        yield Words("Not said yet.", "Declined or left undone")
    elif declined.casefold().rstrip(".") in ("", "nothing"):
        yield Words("Nothing.", "Declined or left undone")
    else:
        yield Words(whole(declined), "Declined or left undone")

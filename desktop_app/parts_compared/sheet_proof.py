"""The proof of repair on the sheet: what was reached, read and driven, and what to watch for."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from desktop_app.language import tr
from desktop_app.parts_compared.sheet_blocks import Block, Heading, Listed, Words
from desktop_app.parts_compared.sheet_values import whole
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel, level_reached, worth_saying
from desktop_app.repair_jobs.proof_checks import check_words, proof_checks
from desktop_app.repair_jobs.proof_codes import codes_in_words
from desktop_app.repair_jobs.proof_kept import ProofKept, caught_in_words
from desktop_app.repair_jobs.proof_said import (
    codes_to_say,
    conditions_told,
    drive_said,
    none_was_tried,
    proof_doubts,
    proof_reached,
    tried_beside,
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
    yield Heading(tr("Proof"))
    if job.proof_level is None:
        yield Words(tr("How far this repair is proved has not been said yet."), tr("Reached"))
    else:
        yield from _reached(job, kept, ProofLevel(job.proof_level))
    yield from _read_and_driven(job, kept)
    yield from _declined(job)
    yield Words(" ".join(watch_for(job, kept)), tr("What to watch for"))
    yield Words(window_in_words(job), tr("Window"))


def proof_file_blocks(
    job: JobView, kept: ProofKept, asked_by_parts: Sequence[str] = ()
) -> Iterator[Block]:
    """Yield what is kept beside it: what a drive is worth, what was ticked, what was not proved.

    `asked_by_parts` are the proof checks of the fitted parts' kinds.
    """
    system = proof_checks(job.system)
    points = job.proof_points((*system.bay, *system.road, *asked_by_parts, CODES_READ))
    ticked = job.ticked("proof", points)
    wet = any(job.conditions.get(wet) for wet in _WET)
    # Whether the codes were read stands under Codes.
    asked = [
        words
        for words in points
        if words != CODES_READ and (wet or ticked[words] or _IF_WET not in words)
    ]
    spoken = {words: check_words(words).rstrip(".") for words in asked}
    said: list[Block] = []
    limit = () if kept.every is None else (LIMIT,)
    worth = " ".join((*drive_said(job, kept), *limit))
    if worth:
        said.append(Words(worth, tr("What the drive is worth")))
    if kept.caught:
        caught = tuple(
            f"{caught_in_words(one)} {whole(one.words).rstrip('.')}." for one in kept.caught
        )
        said.append(Listed(tr("Caught here: a good sign, for the car had not left"), caught, "⊙"))
    told, met = conditions_told(job), kept.conditions
    made = [words for words in asked if ticked[words] == "done"]
    gainsaid = [words for words in made if none_was_tried(words, told, met)]
    done = [tried_beside(words, told, met) for words in made if words not in gainsaid]
    if done:
        said.append(Words(f"{'; '.join(done)}.", tr("Ticked as done")))
    not_tried = [
        tr(
            "Ticked as done, and yet no condition was met: {check}.",
            check=tried_beside(w, told, met),
        )
        for w in gainsaid
    ]
    if job.proof_level is None:
        left_out = not_tried
    else:
        doubts = proof_doubts(job, kept, ProofLevel(job.proof_level))
        left_open = [tr("Not ticked: {check}.", check=spoken[w]) for w in asked if not ticked[w]]
        left_out = [*doubts, *not_tried, *left_open]
    if left_out:
        said.append(Listed(tr("Not proved"), tuple(left_out), "◌"))
    if said:
        yield Heading(tr("Proof, in detail"))
        yield from said


def _reached(job: JobView, kept: ProofKept, level: ProofLevel) -> Iterator[Block]:
    reached = proof_reached(job, kept, level)
    yield Words(level_reached(reached), tr("Reached"))
    said = " ".join(worth_saying(reached))
    if said:
        yield Words(said)


def _read_and_driven(job: JobView, kept: ProofKept) -> Iterator[Block]:
    if job.proof_words.strip() or job.proof_distance is not None:
        yield Words(_driven(job) + whole(job.proof_words), tr("What was done"))
    codes = (*codes_in_words(job.codes, job.codes_were_read), *codes_to_say(job, kept))
    if codes:
        yield Words(" ".join(codes), tr("Codes"))
    tests = " ".join(self_tests_in_words(kept.found, kept.after))
    if tests:
        yield Words(tests, tr("The car's own tests"))


def _driven(job: JobView) -> str:
    if job.proof_distance is None:
        return ""
    if unit_of(job) == "km":
        return tr("Driven {distance:g} km. ", distance=job.proof_distance)
    return tr("Driven {distance:g} miles. ", distance=job.proof_distance)


def _declined(job: JobView) -> Iterator[Block]:
    declined = (job.declined or "").strip()
    if job.declined is None:
        yield Words(tr("Not said yet."), tr("Declined or left undone"))
    elif declined.casefold().rstrip(".") in ("", "nothing", tr("nothing")):
        yield Words(tr("Nothing."), tr("Declined or left undone"))
    else:
        yield Words(whole(declined), tr("Declined or left undone"))

"""The hand-over: which of the nine answers are still missing, and the moment the car leaves."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.repair_jobs.job_view import JobView, ProofWritten
from desktop_app.repair_jobs.proof_checks import check_words, never_left_out

LEFT = tr("The car has left: what was proved at the hand-over stays as it was.")
REFUSED = "refused"  # what an answer is about whose field holds what was not accepted
REFIT = "refit"  # what a way is about that leads to the points for closing up
WRITE_UP_ANEW = tr("When the car is back, write it up as a new visit.")

# What lacks a job that is handed over without these answers of `left_open`.
_LACKING = {
    ("technician",): tr("Figures by person lack this job then."),
    ("system",): tr("Figures by system lack this job then."),
    ("technician", "system"): tr("Figures by person and by system lack this job then."),
}


@dataclass(frozen=True, slots=True)
class OpenAnswer:
    """One of the answers that are missing: its words, and the way to where it is given.

    `about` names its field for the page; `pair` is the pair (its id) that it is about, or None. Of
    a field that holds what was not accepted it is the place among those.
    """

    about: str
    words: str
    way: str
    pair: int | None = None


def open_answers(
    job: JobView, without_origin: Sequence[tuple[int, str]] = ()
) -> tuple[OpenAnswer, ...]:
    """Return what must still be answered before a job can be handed over, in the order of work.

    `without_origin` are the pairs (id, name of the kind) whose new part nobody knows the origin of.
    Maintenance has no cause to name, and an inspection nothing that was put right or proved.
    """
    open_ones = []
    if not job.concern.strip():
        open_ones.append(
            OpenAnswer("concern", tr("what the customer says"), tr("What the customer says"))
        )
    if job.cause_found is None and job.work is None:
        open_ones.append(OpenAnswer("cause", tr("the cause, or “not caught”"), tr("The cause")))
    if job.cause_found is not False and job.work != "inspection" and not job.correction.strip():
        open_ones.append(
            OpenAnswer("correction", tr("what was done about it"), tr("What was done"))
        )
    for pair, kind in without_origin:
        words = tr("the origin of the new {kind}", kind=kind)
        open_ones.append(
            OpenAnswer("origin", words, tr("Origin of the new {kind}", kind=kind), pair)
        )
    if job.proof_level is None and job.work != "inspection":
        words = tr("how far it was proved (“unproven” is an answer)")
        open_ones.append(OpenAnswer("proof", words, tr("How far it was proved")))
    if job.declined is None:
        words = tr("what was declined or left undone (“nothing” is an answer)")
        open_ones.append(OpenAnswer("declined", words, tr("Declined or left undone")))
    return tuple(open_ones)


def left_open(job: JobView, *, anybody: bool) -> tuple[OpenAnswer, ...]:
    """Return what is asked for before a car leaves, and what nobody has to say.

    Figures by person or by system lack the job then. No technician is asked for where the shop
    names nobody (`anybody`), and no system of what is no repair: no rate counts it.
    """
    open_ones = []
    if anybody and job.technician_id is None:
        open_ones.append(OpenAnswer("technician", tr("who the technician is"), tr("Technician")))
    if job.work is None and not job.system:
        open_ones.append(OpenAnswer("system", tr("which system it is"), tr("System")))
    return tuple(open_ones)


def not_accepted_here(fields: Sequence[tuple[str, str]]) -> tuple[OpenAnswer, ...]:
    """Return the ways to fields (name, section) that hold what was not accepted."""
    return tuple(
        OpenAnswer(
            REFUSED,
            tr("“{field}” under “{section}” is not accepted", field=field, section=section),
            field,
            place,
        )
        for place, (field, section) in enumerate(fields)
    )


def still_to_say(
    refused: Sequence[OpenAnswer],
    missing: Sequence[OpenAnswer],
    left: Sequence[OpenAnswer],
    *,
    passed_by: bool = False,
) -> str:
    """Say what is open before the hand-over: refused, still missing, and `left_open`.

    With something `passed_by` that nobody has to answer not everything is said.
    """
    said = []
    if refused:
        fields = "; ".join(one.words for one in refused)
        said.append(tr("To mend or empty: {fields}.", fields=fields))
    if missing:
        words = "; ".join(one.words for one in missing)
        said.append(tr("Still to say: {missing}.", missing=words))
    if left:
        words = "; ".join(one.words for one in left)
        said.append(tr("Still to say, or to leave out: {left}.", left=words))
        said.append(_LACKING[tuple(one.about for one in left)])
    if said:
        return " ".join(said)
    return tr("All that must be said is said.") if passed_by else tr("Everything is said.")


def listed(missing: Sequence[str]) -> str:
    """Return what is missing as it is said in a sentence; there is at least one."""
    if len(missing) == 1:
        return missing[0]
    return tr("{all_but_last} and {last}", all_but_last=", ".join(missing[:-1]), last=missing[-1])


def left_unanswered(job: ProofWritten) -> tuple[str, ...]:
    """Return the checks of the job's system that are never left out and that nobody answered.

    As they are kept: `check_words` says them.
    """
    ticked = job.ticked("proof", never_left_out(job.system))
    return tuple(check for check, outcome in ticked.items() if not outcome)


def refit_unanswered(
    job: JobView, points: Sequence[tuple[str, bool]]
) -> tuple[tuple[str, bool], ...]:
    """Return those of the points (words, hurts) for closing up that nobody answered, as kept."""
    ticked = job.ticked("refit", (words for words, _ in points))
    return tuple((words, hurts) for words, hurts in points if not ticked[words])


def ways_to_points(unanswered: Sequence[tuple[str, bool]]) -> tuple[OpenAnswer, ...]:
    """Return the way to the first point for closing up that nobody answered, if there is one."""
    if not unanswered:
        return ()
    words = tr("the points under “Before it is closed up”")
    return (OpenAnswer(REFIT, words, tr("Before it is closed up")),)


def unanswered_words(left: int, hurts: int) -> str:
    """Say how many points of closing up have no answer, and in how many someone can get hurt."""
    if not left:
        return ""
    if left == 1:
        return (
            tr(
                "⚠ 1 point has no answer under “Before it is closed up”, 1 of them where someone "
                "can get hurt."
            )
            if hurts
            else tr("⚠ 1 point has no answer under “Before it is closed up”.")
        )
    if not hurts:
        return tr("⚠ {left} points have no answer under “Before it is closed up”.", left=left)
    return tr(
        "⚠ {left} points have no answer under “Before it is closed up”, {hurts} of them where "
        "someone can get hurt.",
        left=left,
        hurts=hurts,
    )


def hand_over_question(job: JobView, points: Sequence[tuple[str, bool]] = ()) -> str:
    """Return what is asked before a car leaves where someone can get hurt; "" where nothing is.

    That is a check which is never left out, or one of the points for closing up (words, hurts).
    """
    closing = (words for words, hurts in refit_unanswered(job, points) if hurts)
    left = tuple(dict.fromkeys(map(check_words, (*left_unanswered(job), *closing))))
    if not left:
        return ""
    listed = "; ".join(words.rstrip(".") for words in left)
    return tr(
        "Someone can get hurt where these are left out, and nobody has answered them: "
        "{listed}. Hand the car over all the same? The sheet will say that they are "
        "not ticked.",
        listed=listed,
    )

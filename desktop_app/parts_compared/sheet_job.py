"""The job on its sheet: what was told, what was wrong, what was done, and how far it was proved."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from desktop_app.parts_compared.bench_sums.spark_voltage import ratio_kept
from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Cautions,
    Heading,
    Listed,
    Named,
    Title,
    Words,
)
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.sheet_pair import pair_blocks
from desktop_app.parts_compared.sheet_set import set_blocks
from desktop_app.parts_compared.sheet_spark import spark_blocks
from desktop_app.parts_compared.sheet_values import clipped
from desktop_app.repair_jobs.concern_conditions import Tick, condition_words, conditions_in_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof import ProofLevel, ProofReached, worth_saying
from desktop_app.repair_jobs.proof_checks import proof_checks

LONGEST_TEXT = 6000  # characters of one text; what is longer is cut with a note
SHEET_IS = "Old part and new part"
DEFERS = (
    "The vehicle maker's procedures, local rules and licensed practice come before anything "
    "on this sheet."
)
SHEET_LIMITS = (
    "This sheet compares parts as they were measured and seen on the bench. "
    "It is no inspection of the car."
)


def sheet_blocks(sheet: SheetFacts) -> tuple[Block, ...]:
    """Return the whole sheet from top to bottom, as plain words and photos."""
    job = sheet.job
    # With several pairs one smaller view of each has to do, and the proof fills the first page.
    crowded = len(sheet.pairs) > 1
    return (
        Title(sheet.shop_name, f"{SHEET_IS} · job {job.number}"),
        Named(_who(job)),
        *_told(job),
        *(_proof(job) if crowded else ()),
        *(block for pair in sheet.pairs for block in pair_blocks(pair, job, crowded)),
        *set_blocks(sheet),
        *spark_blocks(sheet, ratio_kept(sheet.sums)),
        *_sums(sheet),
        *(() if crowded else _proof(job)),
        Cautions(_cautions(sheet)),
    )


def foot_words(sheet: SheetFacts) -> str:
    """Return the foot of every page, to which the page's number is added."""
    made = sheet.made_at[:16].replace("T", " ")
    return f"Job {sheet.job.number} · made {made} · {sheet.anchor}"


def whole(text: str) -> str:
    """Return a text as it is printed: without blank ends, cut with a note where it has no end."""
    text = text.strip()
    if len(text) <= LONGEST_TEXT:
        return text
    return f"{text[:LONGEST_TEXT].rstrip()}… (cut here; the whole text is in the job)"


def _who(job: JobView) -> tuple[tuple[str, str], ...]:
    car = job.vehicle
    facts = [("Vehicle", clipped(car.description, 90) or "not described")]
    if car.plate or car.tag:
        facts.append(("Plate" if car.plate else "Tag", clipped(car.plate or car.tag, 24)))
    if car.vin:
        facts.append(("VIN ends", car.vin[-6:]))
    facts.append(("Came", _day(job.came_on)))
    if job.left_on is not None:
        facts.append(("Handed over", _day(job.left_on)))
    return tuple(facts)


def _told(job: JobView) -> Iterator[Block]:
    yield Words(f"“{whole(job.concern)}”" if job.concern.strip() else "Not written.", "Concern")
    ticks = {name: Tick.HAPPENS if yes else Tick.NEVER for name, yes in job.conditions.items()}
    conditions = conditions_in_words(ticks)
    if conditions:
        yield Words(f"{conditions[:1].upper()}{conditions[1:]}.", "When")
    cause = whole(job.cause)
    if job.cause_found is False:
        cause = f"Not caught. {cause}".strip()
    yield Words(cause or "Not named yet.", "Cause")
    yield Words(whole(job.correction) or "Nothing was written yet.", "Correction")


def _proof(job: JobView) -> Iterator[Block]:
    yield Heading("Proof")
    if job.proof_level is None:
        yield Words("How far this repair is proved has not been said yet.", "Reached")
    else:
        yield from _reached(job, ProofLevel(job.proof_level))
    declined = (job.declined or "").strip()
    if job.declined is None:
        yield Words("Not said yet.", "Declined or left undone")
    elif declined.casefold().rstrip(".") in ("", "nothing"):
        yield Words("Nothing.", "Declined or left undone")
    else:
        yield Words(whole(declined), "Declined or left undone")


def _reached(job: JobView, level: ProofLevel) -> Iterator[Block]:
    told_of = [name for name, yes in job.conditions.items() if yes]
    met = level is ProofLevel.SAME_CONDITIONS
    yield Words(f"{level.word} ({int(level)} of 4). {level.means}", "Reached")
    reached = ProofReached(level, told_of if met else (), codes_were_read=job.codes_were_read)
    said = " ".join(worth_saying(reached))
    if said:
        yield Words(said)
    if job.proof_words.strip() or job.proof_distance is not None:
        unit = "km" if job.vehicle.odometer_unit == "km" else "miles"
        driven = "" if job.proof_distance is None else f"Driven {job.proof_distance:g} {unit}. "
        yield Words(driven + whole(job.proof_words), "Tried")
    yield from _not_proved(job, level, told_of)


def _not_proved(job: JobView, level: ProofLevel, told_of: list[str]) -> Iterator[Block]:
    listed = proof_checks(job.system)
    ticked = {check.words for check in job.checks if check.kind == "proof" and check.outcome}
    left_open = [words for words in (*listed.bay, *listed.road) if words not in ticked]
    items = [f"Not ticked: {words}." for words in left_open]
    if told_of and level is not ProofLevel.SAME_CONDITIONS:
        conditions = ", ".join(condition_words(name) for name in told_of)
        items.insert(0, f"The conditions told of were not all met: {conditions}.")
    if items:
        yield Listed("Not proved", tuple(items), "◌")


def _sums(sheet: SheetFacts) -> Iterator[Block]:
    """Print each bench sum that was kept for the sheet: what it says, its limit, its inputs."""
    if sheet.sums:
        yield Heading("Bench sums, as they were worked out and kept")
    for one in sheet.sums:
        yield Words(f"{one.sentence} {one.limit}", one.name)
        yield Words("; ".join(f"{label} {text}" for label, text in one.inputs), look="quiet")


def _cautions(sheet: SheetFacts) -> tuple[str, ...]:
    kinds = [one.kind for one in sheet.pairs if one.kind is not None]
    said = dict.fromkeys(caution for kind in kinds for caution in kind.cautions)
    said |= dict.fromkeys(caution for _, one in sheet.sets for caution in one.part_set.cautions)
    return (*said, DEFERS, SHEET_LIMITS)


def _day(iso: str) -> str:
    return day_in_words(date.fromisoformat(iso))

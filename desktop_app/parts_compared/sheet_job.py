"""The job on its sheet: what was told, what was wrong, what was done, and how far it was proved."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.spark_voltage import ratio_kept
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.sheet_blocks import (
    Block,
    Cautions,
    Heading,
    Named,
    NextPage,
    Title,
    Words,
)
from desktop_app.parts_compared.sheet_facts import SheetFacts
from desktop_app.parts_compared.sheet_pair import pair_blocks
from desktop_app.parts_compared.sheet_pair_file import pair_file_blocks
from desktop_app.parts_compared.sheet_pair_short import short_pair
from desktop_app.parts_compared.sheet_proof import proof_blocks, proof_file_blocks
from desktop_app.parts_compared.sheet_refit import refit_file_blocks
from desktop_app.parts_compared.sheet_seen import found_words
from desktop_app.parts_compared.sheet_set import set_blocks, set_file_blocks
from desktop_app.parts_compared.sheet_spark import spark_blocks
from desktop_app.parts_compared.sheet_values import clipped, whole
from desktop_app.repair_jobs.concern_conditions import Tick, conditions_in_words
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.system_cautions import system_cautions

SHEET_IS = tr("Old part and new part")
WITHOUT_PARTS = tr("The repair and its proof")
FOR_THE_FILE = tr("For the file")
HALF_A_PAGE = 125.0  # mm; where more is left below the customer's part, the file begins there
DEFERS = tr(
    "The vehicle maker's procedures, local rules and licensed practice come before "
    "anything on this sheet."
)
NO_INSPECTION = tr("This sheet is no inspection of the car.")
SHEET_LIMITS = tr(
    "This sheet compares parts as they were measured and seen on the bench. It is no "
    "inspection of the car."
)


def sheet_blocks(sheet: SheetFacts, give: float = 0.0) -> tuple[Block, ...]:
    """Return the whole sheet from top to bottom: the customer's page, then those for the file.

    The cautions end the customer's part. `give` is how many mm photos leave to its words.
    """
    job = sheet.job
    # Several pairs are told in short, with one view in all, so that the customer's page holds two.
    crowded = len(sheet.pairs) > 1
    file = (
        *(block for pair in sheet.pairs for block in pair_file_blocks(pair, crowded)),
        *set_file_blocks(sheet),
        *spark_blocks(sheet, ratio_kept(sheet.sums)),
        *_sums(sheet),
        *refit_file_blocks(job, _fitted(sheet)),
        *proof_file_blocks(job, sheet.proof, _asked_by_parts(sheet)),
    )
    for_the_file = NextPage(
        tr("{for_the_file} · job {number}", for_the_file=FOR_THE_FILE, number=job.number),
        HALF_A_PAGE if crowded else None,
    )
    return (
        Title(
            sheet.shop_name,
            tr(
                "{sheet_is} · job {number}",
                sheet_is=SHEET_IS if sheet.pairs else WITHOUT_PARTS,
                number=job.number,
            ),
        ),
        Named(_who(job)),
        *_in_room(_told(job), crowded),
        *_pairs(sheet, crowded, give),
        *set_blocks(sheet),
        *_in_room(proof_blocks(job, sheet.proof), crowded),
        Cautions(_cautions(sheet)),
        *((for_the_file,) if sheet.pairs and file else ()),
        *file,
    )


def _pairs(sheet: SheetFacts, crowded: bool, give: float) -> Iterator[Block]:
    for pair in sheet.pairs:
        if crowded:
            yield short_pair(pair, sheet.job)
        else:
            yield from pair_blocks(pair, sheet.job, give=give)


def _in_room(blocks: Iterator[Block], crowded: bool) -> Iterator[Block]:
    """Set paragraphs in smaller type where the page is crowded."""
    for block in blocks:
        if crowded and isinstance(block, Words) and block.look == "plain":
            yield replace(block, look="small")
        else:
            yield block


def foot_words(sheet: SheetFacts) -> str:
    """Return the foot of every page, to which the page's number is added."""
    made = f"{_day(sheet.made_at[:10])}, {sheet.made_at[11:16]}"
    return tr(
        "Job {number} · made {made} · {anchor}",
        number=sheet.job.number,
        made=made,
        anchor=sheet.anchor,
    )


def _who(job: JobView) -> tuple[tuple[str, str], ...]:
    car = job.vehicle
    facts = [(tr("Vehicle"), clipped(car.description, 90) or tr("not described"))]
    if car.plate or car.tag:
        facts.append((tr("Plate") if car.plate else tr("Tag"), clipped(car.plate or car.tag, 24)))
    if car.vin:
        facts.append((tr("VIN ends"), car.vin[-6:]))
    facts.append((tr("Came"), _day(job.came_on)))
    if job.left_on is not None:
        facts.append((tr("Handed over"), _day(job.left_on)))
    return tuple(facts)


def _told(job: JobView) -> Iterator[Block]:
    yield Words(
        f"“{whole(job.concern)}”" if job.concern.strip() else tr("Not written."), tr("Concern")
    )
    ticks = {name: Tick.HAPPENS if yes else Tick.NEVER for name, yes in job.conditions.items()}
    conditions = conditions_in_words(ticks)
    if conditions:
        yield Words(f"{conditions[:1].upper()}{conditions[1:]}.", tr("When"))
    if found := found_words(job):
        yield Words(found, tr("Found"))
    cause = whole(job.cause)
    if job.cause_found is False:
        cause = tr("Not caught. {cause}", cause=cause).strip()
    yield Words(cause or tr("Not named yet."), tr("Cause"))
    yield Words(whole(job.correction) or tr("Nothing was written yet."), tr("Correction"))


def _asked_by_parts(sheet: SheetFacts) -> tuple[str, ...]:
    """Return what the kinds of the fitted parts ask for as proof."""
    return tuple(check.say for kind in _fitted(sheet) for check in kind.proof)


def _fitted(sheet: SheetFacts) -> list[PartKind]:
    return [one.kind for one in sheet.pairs if one.kind is not None and one.pair.fitted]


def _sums(sheet: SheetFacts) -> Iterator[Block]:
    """Print each bench sum that was kept for the sheet: what it says, its limit, its inputs."""
    if sheet.sums:
        yield Heading(tr("Bench sums, as they were worked out and kept"))
    for one in sheet.sums:
        yield Words(f"{one.sentence} {one.limit}", one.name)
        yield Words("; ".join(f"{label} {text}" for label, text in one.inputs), look="quiet")


def _cautions(sheet: SheetFacts) -> tuple[str, ...]:
    kinds = [one.kind for one in sheet.pairs if one.kind is not None]
    said = dict.fromkeys(caution for kind in kinds for caution in kind.cautions)
    said |= dict.fromkeys(system_cautions(sheet.job.system))
    said |= dict.fromkeys(caution for _, one in sheet.sets for caution in one.part_set.cautions)
    return (*said, DEFERS, SHEET_LIMITS if sheet.pairs else NO_INSPECTION)


def _day(iso: str) -> str:
    return day_in_words(date.fromisoformat(iso))

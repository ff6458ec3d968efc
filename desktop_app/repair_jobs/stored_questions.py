"""Which odd entries of a job are still to be asked about, and what its odometer is worth."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.repair_jobs.distance import DistanceUnit
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.odometer import OdometerReading, ReadingSource, reading_source
from desktop_app.repair_jobs.odometer_in_shop import drive_question, meant_after_drive
from desktop_app.repair_jobs.odometer_questions import (
    Proposal,
    odometer_proposals,
    odometer_questions,
    question_of_words,
    reading_in_words,
)
from desktop_app.repair_jobs.rate_of_use import RateOfUse, ShopUse, rate_of_use, stretches_of
from desktop_app.repair_jobs.stored_odometer import read_odometers, read_shop_use
from desktop_app.repair_jobs.stored_reading import was_answered
from desktop_app.repair_jobs.vehicle_odometers import VehicleOdometers
from desktop_app.repair_jobs.vin import vin_question
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_record.question import Question, question_of, questions_of


@dataclass(frozen=True, slots=True)
class OdometerAsked:
    """What is odd about a reading, and the readings that may be meant."""

    asked: Question | None = None
    proposals: tuple[Proposal, ...] = ()


@dataclass(frozen=True, slots=True)
class OdometerSaid:
    """What a visit's odometer is worth: the rate of use, what is odd, and what may be meant."""

    rate: RateOfUse
    unit: DistanceUnit
    asked: Question | None
    proposals: tuple[Proposal, ...]


def vin_still_asked(connection: Connection, job: JobView) -> Question | None:
    """Return the question about the vehicle's VIN that nobody has answered, or None."""
    question = question_of(lambda: vin_question(job.vehicle.vin))
    if question and was_answered(connection, f"vehicle:{job.vehicle.id}:vin", question):
        return None
    return question


def odometer_still_asked(connection: Connection, job: JobView, today: date) -> Question | None:
    """Return the question about the visit's odometer that nobody has answered, or None."""
    return _still_asked(connection, job, today, read_odometers(connection, job.vehicle.id)).asked


def odometer_asked(
    connection: Connection,
    vehicle_id: int,
    reading: int,
    on: date,
    today: date,
    source: ReadingSource = "read",
) -> OdometerAsked:
    """Return what is odd about a reading of a vehicle against its earlier ones."""
    known = read_odometers(connection, vehicle_id)
    seen = OdometerReading(on, reading, known.unit, source)
    return _odd(connection, seen, known, known.readings(), today)


def odometer_out_asked(
    connection: Connection, job: JobView, reading: int, today: date
) -> OdometerAsked:
    """Return what is odd about the reading that a job's car leaves, or left, with.

    It is held against what the car came with, too, and against what was driven to prove the
    repair. What somebody said is right as typed is not asked about again.
    """
    known = read_odometers(connection, job.vehicle.id)
    came = OdometerReading(
        kept_day(job.came_on), job.odometer_in, known.unit, reading_source(job.odometer_source)
    )
    left = today if job.left_on is None else kept_day(job.left_on)
    seen = OdometerReading(left, reading, known.unit)
    odd, drive = OdometerAsked(), _after_drive(job, reading, known.unit)
    if reading != job.odometer_in:  # else it was asked about when the car came
        others = (*known.beside(job.visit_id, left), came)
        odd = _odd(connection, seen, known, others, today, meant=drive.proposals)
    odd = odd if odd.asked else drive
    if odd.asked is None or was_answered(connection, about_odometer_out(job), odd.asked):
        return OdometerAsked()
    return odd


def _after_drive(job: JobView, reading: int, unit: DistanceUnit) -> OdometerAsked:
    """Return what the drive in the shop says, where the odometer was read when the car came.

    The readings that it says are meant go before those that the vehicle's history would allow.
    """
    came, driven = job.odometer_in, job.proof_distance
    if came is None or reading_source(job.odometer_source) != "read":
        return OdometerAsked()
    asked = question_of(lambda: drive_question(came, reading, driven, unit))
    meant = meant_after_drive(reading, came, driven, unit) if reading != came else ()
    return OdometerAsked(asked, meant)


def about_odometer_out(job: JobView) -> str:
    """Return what an answer about a job's odometer out is kept under."""
    return f"job:{job.id}:odometer out"


def read_odometer_said(
    connection: Connection, job: JobView, today: date, shop: ShopUse
) -> OdometerSaid:
    """Return how a job's vehicle is used, and what is odd about the odometer it came with.

    `shop` is how the shop's vehicles are used.
    """
    known = read_odometers(connection, job.vehicle.id)
    odd = _still_asked(connection, job, today, known, shop)
    rate = rate_of_use(stretches_of(known.readings(), known.replaced), shop)
    return OdometerSaid(rate, known.unit, odd.asked, odd.proposals)


def _still_asked(
    connection: Connection,
    job: JobView,
    today: date,
    known: VehicleOdometers,
    shop: ShopUse | None = None,
) -> OdometerAsked:
    about = f"visit:{job.visit_id}:odometer"
    if job.odometer_in is None:
        odd = _odd_words(job.odometer_unread or "", known.unit)
    else:
        odd = _odd_reading(connection, job, job.odometer_in, today, known, shop)
    if odd.asked and was_answered(connection, about, odd.asked):
        return OdometerAsked()
    return odd


def _odd_words(unread: str, unit: DistanceUnit) -> OdometerAsked:
    """Ask about a number in the words that say why the odometer cannot be read."""
    number = reading_in_words(unread)
    if number is None:
        return OdometerAsked()
    meant = Proposal(number, tr("the figures in these words"))
    return OdometerAsked(question_of(lambda: question_of_words(unread, number, unit)), (meant,))


def _odd_reading(
    connection: Connection,
    job: JobView,
    reading: int,
    today: date,
    known: VehicleOdometers,
    shop: ShopUse | None,
) -> OdometerAsked:
    how = reading_source(job.odometer_source)
    seen = OdometerReading(kept_day(job.came_on), reading, known.unit, how)
    others = known.beside(job.visit_id, seen.on)
    return _odd(connection, seen, known, others, today, shop)


def _odd(
    connection: Connection,
    seen: OdometerReading,
    known: VehicleOdometers,
    others: Sequence[OdometerReading],
    today: date,
    shop: ShopUse | None = None,
    meant: tuple[Proposal, ...] = (),
) -> OdometerAsked:
    before = [one for one in others if one.on <= seen.on]
    if not odometer_questions(seen, before, today, known.replaced, shop):
        return OdometerAsked()
    # Only an odd reading needs to know how the shop's cars are used.
    use = read_shop_use(connection) if shop is None else shop
    about = (seen, before, today, known.replaced, use)
    asked, *_ = questions_of(
        odometer_questions(*about, meant=meant)[:1],
        lambda: odometer_questions(*about, as_kept=True)[:1],
    )
    return OdometerAsked(asked, meant or odometer_proposals(seen, before, known.replaced, use))

"""What the shop does about odometers, one function a deed, and what else happens to a car."""

from __future__ import annotations

from desktop_app.language import marked, tr
from desktop_app.repair_jobs import stored_lookup
from desktop_app.repair_jobs.entry_bounds import check_day, check_reading, check_word
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.stored import Job, VehicleEvent, Visit
from desktop_app.shop_record.as_shown import change_as_shown, check_as_shown
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown

EVENT_KINDS = (marked("odometer replaced"), marked("sold"))


def change_odometer(
    record: ShopRecord,
    visit_id: int,
    reading: int | None,
    unread: str = "",
    shown: Shown[tuple[int | None, str | None]] | None = None,
) -> Done:
    """Change the odometer reading of a visit, or say why it cannot be read.

    `shown` is the reading and the reason; raises WrittenMeanwhile where others stand there by now.
    """
    if reading is None and not unread.strip():
        raise ShopTrouble(
            tr("What does the odometer say?"), do=tr("Type it, or why it cannot be read.")
        )
    check_reading(reading)
    why = unread.strip() or None

    def work(deed: Deed) -> None:
        change_as_shown(deed, Visit, visit_id, shown, odometer_in=reading, odometer_unread=why)

    return record.do(tr("Change the odometer"), work)


def change_odometer_out(
    record: ShopRecord,
    job_id: int,
    reading: int | None,
    shown: Shown[int | None] | None = None,
) -> Done:
    """Change the reading that a job's car left with; the one before stays in the history.

    The visit's own goes with it where it was the same: the one of its last hand-over.
    """
    check_reading(reading)

    def work(deed: Deed) -> None:
        if stored_lookup.left_at(deed, job_id) is None:
            raise ShopTrouble(
                tr("The car is still here."), do=tr("Type the reading when it leaves.")
            )
        job_out, visit_out = stored_lookup.odometers_out(deed, job_id)
        check_as_shown(deed, Job, shown, job_out, reading)
        deed.change(Job, job_id, odometer_out=reading)
        if visit_out == job_out:
            visit = stored_lookup.visit_of(deed, job_id).id
            if stored_lookup.open_jobs_of_visit(deed, visit, job_id) == 0:
                deed.change(Visit, visit, odometer_out=reading)

    return record.do(tr("Change the odometer out"), work)


def say_how_read(record: ShopRecord, visit_id: int, source: str) -> Done:
    """Say how a visit's odometer reading came: read, told by the customer, or estimated."""
    if source not in READING_SOURCES:
        accepted = ", ".join(READING_SOURCES)
        raise ShopTrouble(
            tr("A reading is not “{source}”.", source=source),
            do=tr("Accepted: {accepted}.", accepted=accepted),
        )
    kept = None if source == "read" else source
    return record.do(
        _SAY_HOW_READ[source],
        lambda deed: deed.change(Visit, visit_id, odometer_source=kept),
    )


_SAY_HOW_READ = {
    "read": tr("Say that the odometer was read"),
    "told": tr("Say that the odometer was told"),
    "estimated": tr("Say that the odometer was estimated"),
}


def note_vehicle_event(
    record: ShopRecord,
    vehicle_id: int,
    kind: str,
    on: str,
    before: int | None = None,
    after: int | None = None,
    note: str = "",
) -> Done:
    """Note that the odometer was replaced or the vehicle was sold, on an ISO day, none to come."""
    check_word(tr("what happened to a car"), kind, EVENT_KINDS)
    check_day(on, record.clock().date())
    for reading in (before, after):
        check_reading(reading)
    facts = {"kind": kind, "happened_on": on, "note": note}
    readings = {"reading_before": before, "reading_after": after}

    def work(deed: Deed) -> None:
        deed.add(VehicleEvent, vehicle_id=vehicle_id, **facts, **readings)

    return record.do(tr("Note: {kind}", kind=tr(kind)), work)


def strike_vehicle_event(record: ShopRecord, event: int) -> Done:
    """Take out what was noted of a vehicle by mistake."""
    return record.do(
        tr("Take a note of the car out"), lambda deed: deed.remove(VehicleEvent, event)
    )

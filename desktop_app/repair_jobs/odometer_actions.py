"""What the shop does about odometers, one function a deed, and what else happens to a car."""

from __future__ import annotations

from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.stored import VehicleEvent, Visit
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def change_odometer(
    record: ShopRecord, visit_id: int, reading: int | None, unread: str = ""
) -> Done:
    """Change the odometer reading of a visit, or say why it cannot be read."""
    if reading is None and not unread.strip():
        raise ShopTrouble("What does the odometer say?", do="Type it, or why it cannot be read.")
    values = {"odometer_in": reading, "odometer_unread": unread.strip() or None}
    return record.do("Change the odometer", lambda deed: deed.change(Visit, visit_id, **values))


def say_how_read(record: ShopRecord, visit_id: int, source: str) -> Done:
    """Say how a visit's odometer reading came: read, told by the customer, or estimated."""
    if source not in READING_SOURCES:
        accepted = ", ".join(READING_SOURCES)
        raise ShopTrouble(f"A reading is not “{source}”.", do=f"Accepted: {accepted}.")
    kept = None if source == "read" else source
    return record.do(
        f"Say that the odometer was {source}",
        lambda deed: deed.change(Visit, visit_id, odometer_source=kept),
    )


def note_vehicle_event(
    record: ShopRecord,
    vehicle_id: int,
    kind: str,
    on: str,
    before: int | None = None,
    after: int | None = None,
    note: str = "",
) -> Done:
    """Note that the odometer was replaced or the vehicle was sold, on an ISO day."""
    facts = {"kind": kind, "happened_on": on, "note": note}
    readings = {"reading_before": before, "reading_after": after}

    def work(deed: Deed) -> None:
        deed.add(VehicleEvent, vehicle_id=vehicle_id, **facts, **readings)

    return record.do(f"Note: {kind}", work)


def strike_vehicle_event(record: ShopRecord, event: int) -> Done:
    """Take out what was noted of a vehicle by mistake."""
    return record.do("Take a note of the car out", lambda deed: deed.remove(VehicleEvent, event))

"""A small record for tests of returns and of the week: vehicles, visits and jobs in one line."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import (
    Job,
    JobSymptom,
    TroubleCode,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.repair_jobs.vehicle_identity import matching_plate
from desktop_app.repair_jobs.vin import matching_vin
from desktop_app.returns_watched import actions
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord


def vehicle(record: ShopRecord, **values: Any) -> int:
    """Add a vehicle and return its id."""
    columns: dict[str, Any] = {
        "vin": None,
        "plate": "TIN 01",
        "tag": None,
        "description": "1.8-litre compact hatchback",
        "odometer_unit": "mi",
    } | values
    columns["plate_key"] = matching_plate(columns["plate"] or "") or None
    columns["vin"] = matching_vin(columns["vin"] or "") or None
    with record.deed("Add a vehicle") as deed:
        return deed.add(Vehicle, **columns)


def odometer_replaced(
    record: ShopRecord, vehicle_id: int, on: str, before: int | None, after: int | None
) -> None:
    """Say that the odometer of a vehicle was replaced on a day."""
    with record.deed("Replace the odometer") as deed:
        deed.add(
            VehicleEvent,
            vehicle_id=vehicle_id,
            kind="odometer replaced",
            happened_on=on,
            reading_before=before,
            reading_after=after,
        )


def job(
    record: ShopRecord,
    vehicle_id: int,
    number: str,
    came: str,
    left: str | None = None,
    odometer: int | None = None,
    odometer_out: int | None = None,
    *,
    symptoms: Sequence[str] = (),
    codes: Sequence[str] = (),
    kinds: Sequence[str] = (),
    **values: Any,
) -> int:
    """Add a visit with one job; `came` and `left` are days. Returns the job's id."""
    columns = {
        "concern": "misses in the rain",
        "system": "ignition",
        "cause": "cap tracked",
        "correction": "cap and rotor replaced",
        "window_days": 90,
        "window_miles": 3000,
        "window_rule": "first",
    } | values
    left_at = None if left is None else f"{left}T16:00:00+00:00"
    with record.deed(f"Add {number}") as deed:
        visit_id = deed.add(
            Visit,
            vehicle_id=vehicle_id,
            came_at=f"{came}T08:00:00+00:00",
            left_at=left_at,
            odometer_in=odometer,
            odometer_out=odometer_out,
        )
        job_id = deed.add(Job, number=number, visit_id=visit_id, left_at=left_at, **columns)
        for symptom in symptoms:
            deed.add(JobSymptom, job_id=job_id, symptom=symptom)
        for code in codes:
            deed.add(TroubleCode, job_id=job_id, code=code, kind="stored", stage="found")
        for kind in kinds:
            deed.add(Pair, job_id=job_id, part_kind=kind)
    return job_id


def judge_return(record: ShopRecord, earlier: int, later: int, judgement: str, **said: Any) -> Done:
    """Judge a return as the deed does: by Ana where nobody is named at the desk."""
    by = {"by": record.who or "Ana"} | said
    return actions.judge_return(record, earlier, later, judgement, **by)


def as_made(done: Done) -> int:
    """Return the id of the row that a deed made."""
    assert done.made is not None
    return done.made


def a_week_of_returns(record: ShopRecord) -> dict[str, int]:
    """Fill the week from 9 to 15 November 2026 (2026-W46) and what led to it; ids by number."""
    compact = vehicle(record)
    estate = vehicle(record, plate="TIN 02", description="2.2-litre estate", odometer_unit="km")
    van = vehicle(record, plate="TIN 03", description="1.6-litre van")
    misfire = {"symptoms": ["misfire"], "codes": ["P0300"], "kinds": ["distributor-rotor"]}
    ids = {
        "J-104": job(record, compact, "J-104", "2026-09-01", "2026-09-02", 118_420, **misfire),
        "J-131": job(record, compact, "J-131", "2026-10-13", "2026-10-14", 119_300, **misfire),
        "J-160": job(record, compact, "J-160", "2026-11-10", "2026-11-11", 119_900, **misfire),
        "J-161": job(
            record,
            estate,
            "J-161",
            "2026-11-09",
            "2026-11-13",
            197_600,
            concern='=HYPERLINK("x") brake pedal is soft',
            system="brakes",
            cause="pads worn",
            correction="pads replaced",
            kinds=["brake-pads"],
            hours=1.5,
            unbilled_hours=0.25,
            price_cents=18_450,
            proof_level=2,
        ),
        "J-140": job(record, van, "J-140", "2026-10-20", "2026-10-21", system="charging"),
        "J-162": job(
            record,
            van,
            "J-162",
            "2026-11-12",
            "2026-11-15",
            system="charging",
            cause="",
            correction="",
            cause_found=0,
            proof_level=0,
        ),
    }
    return ids

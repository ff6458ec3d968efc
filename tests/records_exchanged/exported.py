"""A small shop that has something in nearly every table, and what an export of it holds."""

from __future__ import annotations

import hashlib
from pathlib import Path
from typing import Any

from desktop_app.part_photos.stored import Mark, Photo, PrintedCard
from desktop_app.parts_compared.stored import Instrument, Pair, PairPhoto, PartCondition, Reading
from desktop_app.records_exchanged.export_files import ExportTold, export_everything
from desktop_app.repair_jobs.stored import (
    Customer,
    Job,
    JobCheck,
    JobCondition,
    JobSymptom,
    Person,
    TroubleCode,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.returns_watched.stored import CustomerAsked, KindWindow, MoneyOwed, ReturnLink
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import walked

NASTY = (
    "=1+1",
    "'=1+1",
    "-5 degrees; +3, @home",
    "\tbegins with a tab, ends in blanks  ",
    'two\nlines\r\nand a\rthird, “quoted” and "quoted"',
    "\u202eright to left \u05d0\u05d1, a face \U0001f697, e\u0301",
    "'",
    "  ",
)
WINDOW: dict[str, Any] = {"window_days": 90, "window_miles": 3000, "window_rule": "first"}


def export(record: ShopRecord, to: Path) -> ExportTold:
    told: ExportTold = walked(export_everything(record, to))
    return told


def files_of(folder: Path) -> dict[str, bytes]:
    """Every file below a folder by its name in it."""
    found = sorted(path for path in folder.rglob("*") if path.is_file())
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in found}


def checked_anew(folder: Path) -> None:
    """Write the checksums as somebody would who changed a file and wants it not to show."""
    lines = [
        f"{hashlib.sha256(content).hexdigest()}  {name}\n"
        for name, content in files_of(folder).items()
        if name != "checksums.sha256"
    ]
    (folder / "checksums.sha256").write_bytes("".join(lines).encode())


def fill(record: ShopRecord) -> None:
    """Fill a new shop: jobs with several parts and codes, returns, photos, a row taken out."""
    change_rule(record, "shop_name", "=Corner shop")
    with record.deed("People and cars") as deed:
        for name in ("Sam", "'Apostrophe' O'Hara"):
            deed.add(Person, name=name)
        customer = deed.add(Customer, name="@Somebody", phone="+0 12")
        gone = deed.add(Customer, name="taken out again")
        vin = {"vin": "1M8GDM9AXKP042788", "plate": "AB 12", "plate_key": "AB12"}
        deed.add(Vehicle, **vin, description="small car", odometer_unit="mi")
        deed.add(Vehicle, plate="-KM 7", plate_key="KM7", description="van", odometer_unit="km")
        deed.add(Vehicle, tag="under the tree", description="", odometer_unit="mi")
        event = {"kind": "odometer replaced", "happened_on": "2024-06-01"}
        deed.add(VehicleEvent, vehicle_id=2, **event, reading_before=199000, reading_after=0)
    with record.deed("Take out a customer") as deed:
        deed.remove(Customer, gone)
    with record.deed("Jobs") as deed:
        _jobs(deed, customer)
    with record.deed("Returns") as deed:
        _returns(deed)
    _parts(record)
    with record.deed("To be undone") as deed:
        deed.add(Customer, name="undone")
    record.undo()


def _jobs(deed: Deed, customer: int) -> None:
    """Add job n on the day n of 2024-03, job 9 on the day before the first."""
    for n, text in enumerate(NASTY, 1):
        day, vehicle = f"2024-03-{n:02d}", 1 + n % 3
        at = f"{day}T08:15:00+01:00"
        odometer = None if n == 4 else 50_000 + n
        came = {"vehicle_id": vehicle, "customer_id": customer, "came_at": at, "left_at": at}
        unread = None if odometer else "no key"
        visit = deed.add(Visit, **came, odometer_in=odometer, odometer_unread=unread)
        said = {"concern": text, "cause": text * 2, "correction": "" if n == 3 else text}
        money = {"price_cents": n * 1234, "hours": (0.0, 1.125, 1 / 3, None)[n % 4]}
        left = None if n == 8 else at
        person = 1 + n % 2
        deed.add(
            Job,
            **{"number": f"J-{n}", "visit_id": visit, "left_at": left, **said, **money, **WINDOW},
            system="ignition" if n % 2 else "",
            technician_id=person,
            declined=("", None, "nothing", "'", "''", "=", "no", "")[n - 1],
            cause_found=1,
        )
    came = {"vehicle_id": 2, "came_at": "2024-02-28T09:00:00+01:00"}
    visit = deed.add(Visit, **came, odometer_in=49_000)
    left = {"left_at": "2024-02-28T17:00:00+01:00"}
    deed.add(Job, number="J-9", visit_id=visit, concern="misfires when cold", **left, **WINDOW)


def _returns(deed: Deed) -> None:
    for earlier, later, values in (
        (1, 4, {"judgement": "same symptom", "judged_by": "Sam", "why": "=said so"}),
        (9, 1, {"judgement": "unrelated"}),  # the earlier job was written down later
        (2, 5, {}),
        (3, 6, {"same_vehicle": 0}),
        (8, 7, {"judgement": "same part"}),  # the earlier one is still here: no import takes it
        (1, 7, {"judgement": "same part", "also": '["same system"]'}),
        (4, 7, {"judgement": "cannot tell", "unbilled_hours": 0.1}),
    ):
        deed.add(ReturnLink, earlier_job_id=earlier, later_job_id=later, **values)


def _parts(record: ShopRecord) -> None:
    photos = [record.photos.keep(content) for content in (b"one picture", b"another", b"a third")]
    with record.deed("Parts and photos") as deed:
        for code, kind, stage in (
            ("P0301", "stored", "found"),
            ("P0300", "pending", "found"),
            ("P0301", "permanent", "found"),
            ("P0420", "stored", "after repair"),
        ):
            deed.add(TroubleCode, job_id=7, code=code, kind=kind, stage=stage)
        part = {"job_id": 7, "supplier": "North", "number_on_box": "=7", "origin": "used"}
        pair = deed.add(Pair, part_kind="distributor-rotor", **part)
        deed.add(Pair, part_kind="ignition-coil", **part | {"origin": None, "supplier": ""})
        deed.add(Pair, part_kind="ignition-coil", **part, fitted=0)
        deed.add(Pair, part_kind="ignition-coil", **part, number_on_part="P/8")
        deed.add(Pair, job_id=1, part_kind="spark-plug", number_on_part="-1")
        size = {"media_type": "image/jpeg", "size_bytes": 11, "width": 4, "height": 3}
        for n, (job, sha256) in enumerate(zip((7, 7, 1, 1), (*photos, photos[0]), strict=True)):
            deed.add(Photo, job_id=job, sha256=sha256, name=f"../{n}.jpg", **size)
        for photo, side in ((1, "removed"), (2, "replacement")):
            deed.add(PairPhoto, pair_id=pair, photo_id=photo, side=side, view="top")
        deed.add(Mark, photo_id=1, kind="note", points="[[1, 2]]", words="'", value=-0.1)
        deed.add(PartCondition, pair_id=pair, side="removed", term="burned tip")
        about = {"pair_id": pair, "side": "removed", "dimension": "tip-radius"}
        taken = {"instrument": "calliper", "taken_at": "2024-03-07T09:00:00+01:00"}
        for value in (26.9, 1 / 3, 1e-12):
            deed.add(Reading, **about, **taken, value=value, typed="")
        rule = {"resolution": 0.01, "max_error": 0.03}
        deed.add(Instrument, name="calliper", unit="mm", **rule)
        card = {"name": "a4", "layout": "{}", "printed_at": "2024-01-01T00:00:00+01:00"}
        deed.add(PrintedCard, **card)
        deed.add(JobSymptom, job_id=9, symptom="misfire-random")
        deed.add(JobCondition, job_id=9, condition="cold", happens=1)
        deed.add(JobCheck, job_id=9, kind="inspection", words="-loose plug wire")
        deed.add(KindWindow, part_kind="spark-plug", months=12, miles=None, rule="first")
        deed.add(CustomerAsked, job_id=1, asked_on="2024-04-01", answer="fine", odometer_told=1)
        deed.add(MoneyOwed, pair_id=pair, what="core", since="2024-04-01", state="open")

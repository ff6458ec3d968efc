"""The table of cases that a shop owner can read holds, word for word."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from pathlib import Path
from typing import Any

import pytest

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
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_returns import read_returns, read_returns_of_job
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord

CASES: list[dict[str, Any]] = tomllib.loads(
    Path(__file__).with_name("return_cases.toml").read_text("utf-8")
)["case"]
DECIDED = {
    "time": "by time",
    "distance": "by distance",
    "time only: odometer unknown": "by time, odometer unknown",
    "not decided: odometer unknown": "not decided, odometer unknown",
    "sale": "by the sale",
}


def test_the_table_is_long_enough_to_speak_for_the_rules() -> None:
    assert len(CASES) >= 60
    assert len({case["about"] for case in CASES}) == len(CASES)


@pytest.mark.parametrize("sale_ends", [False, True])
def test_every_case_of_the_table_holds(shop: ShopRecord, sale_ends: bool) -> None:
    cases = [case for case in CASES if case.get("sale_ends_window", False) is sale_ends]
    if sale_ends:
        change_rule(shop, "sale_ends_window", "yes")
    with shop.deed("Write the cases down") as deed:
        ids = [_written(deed, number, case) for number, case in enumerate(cases)]
    with shop.reading() as connection:
        rows = read_returns(connection)
        alone = [row for jobs in ids for row in read_returns_of_job(connection, jobs[-1])]
    found = {case["about"]: _said(case, number, rows) for number, case in enumerate(cases)}
    assert found == {case["about"]: _expected(case) for case in cases}
    last = {jobs[-1] for jobs in ids}
    assert sorted(map(repr, alone)) == sorted(repr(row) for row in rows if row.later_id in last)


def _said(case: Mapping[str, Any], number: int, rows: tuple[ReturnRow, ...]) -> dict[str, Any]:
    own = [row for row in rows if row.earlier.startswith(f"C{number}-")]
    said: dict[str, Any] = {"returns": sorted(_line(row) for row in own)}
    if "waits" in case:
        said["waits"] = sorted(_pair(row) for row in own if row.candidate.waits)
    if "because" in case:
        said["because"] = list(own[0].candidate.reasons)
    return said


def _expected(case: Mapping[str, Any]) -> dict[str, Any]:
    return {name: case[name] for name in ("returns", "waits", "because") if name in case}


def _pair(row: ReturnRow) -> str:
    return f"{row.later.split('-')[1]} after {row.earlier.split('-')[1]}"


def _line(row: ReturnRow) -> str:
    where = "in the window" if row.in_window else "beyond the window"
    line = f"{_pair(row)}: {where}, {DECIDED[row.candidate.decided_by]}"
    if row.candidate.root != row.earlier:
        line += f", in the chain of {row.candidate.root.split('-')[1]}"
    return line


def _written(deed: Deed, number: int, case: Mapping[str, Any]) -> list[int]:
    """Write one case down; its plates are its own, so that cases never meet."""
    cars: dict[Any, int] = {}
    jobs = [_job(deed, number, place, job, cars) for place, job in enumerate(case["jobs"], 1)]
    for kind, told in (("sold", case.get("sold")), ("odometer replaced", case.get("replaced"))):
        if told:
            of = told if isinstance(told, dict) else {"on": told}
            deed.add(
                VehicleEvent,
                vehicle_id=next(iter(cars.values())),
                kind=kind,
                happened_on=of["on"].isoformat(),
                reading_before=of.get("before"),
                reading_after=of.get("after"),
            )
    said = [*case.get("judged", {}).items(), *((pair, None) for pair in case.get("two_cars", ()))]
    for pair, judgement in said:
        later, earlier = (jobs[int(place) - 1] for place in pair.split(" after "))
        link = {"earlier_job_id": earlier, "later_job_id": later, "judgement": judgement}
        deed.add(ReturnLink, **link, same_vehicle=int(judgement is not None))
    return jobs


def _job(deed: Deed, number: int, place: int, job: Mapping[str, Any], cars: dict[Any, int]) -> int:
    left = None if "left" not in job else f"{job['left']}T16:00:00+00:00"
    window = job.get("window", {"days": 90, "miles": 3000})
    visit = deed.add(
        Visit,
        vehicle_id=_car(deed, number, job, cars),
        came_at=f"{job['came']}T08:00:00+00:00",
        left_at=left,
        odometer_in=job.get("miles", job.get("km")),
        odometer_source=job.get("reading"),
    )
    made = deed.add(
        Job,
        number=f"C{number}-{place}",
        visit_id=visit,
        concern="told",
        says_same=int(job.get("says_same", False)),
        system=job.get("system", ""),
        left_at=left,
        window_days=window["days"],
        window_miles=window["miles"],
        window_rule=window.get("ends", "first"),
    )
    if "symptom" in job:
        deed.add(JobSymptom, job_id=made, symptom=job["symptom"])
    if "code" in job:
        deed.add(TroubleCode, job_id=made, code=job["code"], kind="stored", stage="found")
    if "part" in job:
        deed.add(Pair, job_id=made, part_kind=job["part"], position=job.get("position", ""))
    return made


def _car(deed: Deed, number: int, job: Mapping[str, Any], cars: dict[Any, int]) -> int:
    plate = f"{number}Q{job['plate']}" if job.get("plate") else job.get("plate", f"{number}Q")
    vin = matching_vin(job.get("vin", ""))
    vin = vin and f"{vin[:-4]}{number:04}"  # each case has cars of its own
    key = (plate, vin, job.get("car"))
    if key not in cars:
        cars[key] = deed.add(
            Vehicle,
            vin=vin or None,
            plate=plate or None,
            plate_key=matching_plate(plate) or None,
            odometer_unit="km" if "km" in job else "mi",
        )
    return cars[key]

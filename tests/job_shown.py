"""A job as its page shows it, made of plain values: nothing is written down but what is named."""

from __future__ import annotations

from typing import Any

from desktop_app.repair_jobs.job_view import JobView, VehicleSeen

CAR = VehicleSeen(1, "", "TIN 01", "", "1.8-litre compact hatchback", "mi")


def job_shown(**written: Any) -> JobView:
    """Return a job of a car that came on 2 November 2026; only its concern is written down."""
    empty: dict[str, Any] = {
        "id": 1,
        "number": "J-1",
        "visit_id": 1,
        "concern": "misses in the rain",
        "says_same": False,
        "system": "",
        "cause_found": None,
        "cause": "",
        "correction": "",
        "technician_id": None,
        "technician": "",
        "work": None,
        "search_hours": None,
        "hours": None,
        "unbilled_hours": None,
        "price_cents": None,
        "proof_level": None,
        "proof_words": "",
        "proof_distance": None,
        "declined": None,
        "left_at": None,
        "window_days": 90,
        "window_months": None,
        "window_miles": 3000,
        "window_rule": "first",
        "came_at": "2026-11-02T08:00:00+00:00",
        "odometer_in": None,
        "odometer_unread": None,
        "odometer_source": None,
        "odometer_out": None,
        "brought_by": "",
        "customer": "",
        "phone": "",
        "vehicle": CAR,
        "symptoms": (),
        "conditions": {},
        "codes": (),
        "checks": (),
        "named": {},
    }
    return JobView(**(empty | written))

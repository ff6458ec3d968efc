"""What the rows of a car, its visit and its job are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import (
    STAGES,
    TableWords,
    above,
    chosen,
    row,
    told,
    words,
)

_JOB = above("job", "Job")

JOB_TABLES: Mapping[str, TableWords] = {
    "vehicle": TableWords(
        "Car",
        {
            "vin": words("VIN"),
            "plate": words("Plate"),
            "plate_key": told("Plate as it is compared", "inner"),
            "tag": words("Tag"),
            "description": words("Described as"),
            "odometer_unit": words("Odometer counts", mi="miles", km="kilometres"),
        },
    ),
    "vehicle_event": TableWords(
        "What happened to the car",
        {
            "vehicle_id": above("vehicle", "Car"),
            "kind": words("What"),
            "happened_on": told("On", "moment"),
            "reading_before": told("Odometer before", "odometer"),
            "reading_after": told("Odometer after", "odometer"),
            "note": words("Note"),
        },
        ("kind",),
    ),
    "customer": TableWords("Customer", {"name": words("Name"), "phone": words("Phone")}),
    "visit": TableWords(
        "Visit",
        {
            "vehicle_id": row("vehicle", "Car"),
            "customer_id": row("customer", "Customer"),
            "came_at": told("Came", "moment"),
            "left_at": told("Left", "moment"),
            "odometer_in": told("Odometer when it came", "odometer"),
            "odometer_out": told("Odometer when it left", "odometer"),
            "odometer_unread": words("Odometer can't be read"),
            "odometer_source": words("Odometer is", read="read", told="told by the customer"),
            "brought_by": words("Brought by"),
        },
    ),
    "job": TableWords(
        "Job",
        {
            "number": words("Number"),
            "visit_id": above("visit", "Visit"),
            "concern": words("Concern"),
            "says_same": told("Customer says it is the same trouble", "yes"),
            "system": told("System", "system"),
            "cause_found": chosen("Cause found", {1: "yes, named", 0: "not caught"}),
            "cause": words("Cause"),
            "correction": words("Correction"),
            "technician_id": row("person", "Technician"),
            "hours": told("Hours", "hours"),
            "unbilled_hours": told("Hours not billed", "hours"),
            "price_cents": told("Price", "money"),
            "proof_level": told("Proof", "level"),
            "proof_words": words("Proof in words"),
            "proof_distance": told("Proof drive", "odometer"),
            "declined": words("Declined or left undone"),
            "left_at": told("Handed over", "moment"),
            "odometer_out": told("Odometer at hand-over", "odometer"),
            "window_days": told("Window in days", "number"),
            "window_miles": told("Window in distance", "miles"),
            "window_rule": words(
                "Window ends", first="whichever ends first", both="when both have ended"
            ),
            "window_months": told("Window in months", "number"),
            "window_from": words("Window promised by"),
            "fault_every": told("The fault comes once in", "number"),
            "fault_every_unit": words("The fault is counted in"),
            "work": told("Kind of work", "work"),
            "search_hours": told("Hours of searching", "hours"),
        },
    ),
    "job_person": TableWords(
        "Who did it",
        {"job_id": _JOB, "did": words("Did"), "person_id": row("person", "Who")},
        ("did",),
    ),
    "job_symptom": TableWords(
        "Symptom",
        {
            "job_id": _JOB,
            "symptom": told("Symptom", "symptom"),
            "chosen": chosen("By", {1: "chosen by a person", 0: "read from the words"}),
        },
        ("symptom",),
    ),
    "job_condition": TableWords(
        "When it happens",
        {
            "job_id": _JOB,
            "condition": told("Condition", "condition"),
            "happens": chosen("Then it", {1: "happens", 0: "never happens"}),
        },
        ("condition",),
    ),
    "trouble_code": TableWords(
        "Trouble code",
        {
            "job_id": _JOB,
            "code": words("Code"),
            "kind": words("Kind"),
            "stage": chosen("Read", STAGES),
        },
        ("code",),
    ),
    "job_check": TableWords(
        "Looked at",
        {
            "job_id": _JOB,
            "kind": words("On the list", inspection="findings", refit="back on", proof="proof"),
            "words": words("What"),
            "outcome": words("Outcome"),
        },
        ("words",),
    ),
    "condition_met": TableWords(
        "Met on the proof drive",
        {
            "job_id": _JOB,
            "condition": told("Condition", "condition"),
            "met": chosen("It was", {1: "met", 0: "not met"}),
        },
        ("condition",),
    ),
    "self_tests": TableWords(
        "The car's own tests",
        {
            "job_id": _JOB,
            "stage": chosen("Read", STAGES),
            "typed": words("As typed"),
            "read_at": told("Read at", "moment"),
        },
        ("stage",),
    ),
    "self_test": TableWords(
        "The car's own test",
        {
            "job_id": _JOB,
            "stage": chosen("Read", STAGES),
            "monitor": told("Test", "monitor"),
            "state": words("It is"),
        },
        ("monitor", "stage"),
    ),
    "proof_step": TableWords(
        "Step of the proof",
        {"job_id": _JOB, "step": told("Step", "step"), "done_at": told("Done at", "moment")},
        ("step",),
    ),
    "caught_here": TableWords(
        "Caught before it left",
        {"job_id": _JOB, "caught_at": told("At", "moment"), "words": words("What")},
    ),
    "answered": TableWords(
        "Right as typed", {"about": words("About"), "question": words("Asked was")}
    ),
}

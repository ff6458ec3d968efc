"""What the rows of a car, its visit and its job are called in the history."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.job_history.table_words import (
    STAGES,
    TableWords,
    above,
    chosen,
    row,
    term,
    told,
    words,
)
from desktop_app.language import marked, tr

# Words of the record that are shown in the language spoken.
TERMS = (
    *(marked("odometer replaced"), marked("sold"), marked("estimated")),
    *(marked("job"), marked("shop")),
    *(marked("mi"), marked("km"), marked("days"), marked("drives")),
    *(marked("wrote up"), marked("searched"), marked("refitted"), marked("proved")),
    *(marked("stored"), marked("pending"), marked("permanent")),
    *(marked("done"), marked("not needed")),
    *(marked("complete"), marked("not run"), marked("not fitted")),
)

_JOB = above("job", tr("Job"))

JOB_TABLES: Mapping[str, TableWords] = {
    "vehicle": TableWords(
        tr("Car"),
        {
            "vin": words("VIN"),
            "plate": words(tr("Plate")),
            "plate_key": told(tr("Plate as it is compared"), "inner"),
            "tag": words(tr("Tag")),
            "description": words(tr("Described as")),
            "odometer_unit": words(tr("Odometer counts"), mi=tr("miles"), km=tr("kilometres")),
        },
    ),
    "vehicle_event": TableWords(
        tr("What happened to the car"),
        {
            "vehicle_id": above("vehicle", tr("Car")),
            "kind": term(tr("What")),
            "happened_on": told(tr("On"), "moment"),
            "reading_before": told(tr("Odometer before"), "odometer"),
            "reading_after": told(tr("Odometer after"), "odometer"),
            "note": words(tr("Note")),
        },
        ("kind",),
    ),
    "customer": TableWords(
        tr("Customer"), {"name": words(tr("Name")), "phone": words(tr("Phone"))}
    ),
    "visit": TableWords(
        tr("Visit"),
        {
            "vehicle_id": row("vehicle", tr("Car")),
            "customer_id": row("customer", tr("Customer")),
            "came_at": told(tr("Came at"), "moment"),
            "left_at": told(tr("Left at"), "moment"),
            "odometer_in": told(tr("Odometer when it came"), "odometer"),
            "odometer_out": told(tr("Odometer when it left"), "odometer"),
            "odometer_unread": told(tr("Odometer can't be read"), "ours"),
            "odometer_source": term(
                tr("Odometer is"), read=tr("read"), told=tr("told by the customer")
            ),
            "brought_by": words(tr("Brought by")),
        },
    ),
    "job": TableWords(
        tr("Job"),
        {
            "number": words(tr("Number")),
            "visit_id": above("visit", tr("Visit")),
            "concern": words(tr("Concern")),
            "says_same": told(tr("Customer says it is the same trouble"), "yes"),
            "system": told(tr("System"), "system"),
            "cause_found": chosen(tr("Cause found"), {1: tr("yes, named"), 0: tr("not caught")}),
            "cause": words(tr("Cause")),
            "correction": words(tr("Correction")),
            "technician_id": row("person", tr("Technician")),
            "hours": told(tr("Hours"), "hours"),
            "unbilled_hours": told(tr("Hours not billed"), "hours"),
            "price_cents": told(tr("Price"), "money"),
            "proof_level": told(tr("Proof"), "level"),
            "proof_words": words(tr("Proof in words")),
            "proof_distance": told(tr("Proof drive"), "odometer"),
            "declined": told(tr("Declined or left undone"), "ours"),
            "left_at": told(tr("Handed over"), "moment"),
            "odometer_out": told(tr("Odometer at hand-over"), "odometer"),
            "window_days": told(tr("Window in days"), "number"),
            "window_miles": told(tr("Window in distance"), "miles"),
            "window_rule": words(
                tr("Window ends"), first=tr("whichever ends first"), both=tr("when both have ended")
            ),
            "window_months": told(tr("Window in months"), "number"),
            "window_from": term(tr("Window promised by")),
            "fault_every": told(tr("The fault comes once in"), "number"),
            "fault_every_unit": term(tr("The fault is counted in")),
            "work": told(tr("Kind of work"), "work"),
            "search_hours": told(tr("Hours of searching"), "hours"),
        },
    ),
    "job_person": TableWords(
        tr("Who did it"),
        {"job_id": _JOB, "did": term(tr("Did")), "person_id": row("person", tr("Who"))},
        ("did",),
    ),
    "job_symptom": TableWords(
        tr("Symptom"),
        {
            "job_id": _JOB,
            "symptom": told(tr("Symptom"), "symptom"),
            "chosen": chosen(tr("By"), {1: tr("chosen by a person"), 0: tr("read from the words")}),
        },
        ("symptom",),
    ),
    "job_condition": TableWords(
        tr("When it happens"),
        {
            "job_id": _JOB,
            "condition": told(tr("Condition"), "condition"),
            "happens": chosen(tr("Then it"), {1: tr("happens"), 0: tr("never happens")}),
        },
        ("condition",),
    ),
    "trouble_code": TableWords(
        tr("Trouble code"),
        {
            "job_id": _JOB,
            "code": words(tr("Code")),
            "kind": term(tr("Kind")),
            "stage": chosen(tr("Read"), STAGES),
        },
        ("code",),
    ),
    "job_check": TableWords(
        tr("Looked at"),
        {
            "job_id": _JOB,
            "kind": words(
                tr("On the list"),
                inspection=tr("findings"),
                refit=tr("back on"),
                proof=tr("proof"),
            ),
            "words": told(tr("What"), "on a list"),
            "outcome": told(tr("Outcome"), "on a list"),
        },
        ("words",),
    ),
    "condition_met": TableWords(
        tr("Met on the proof drive"),
        {
            "job_id": _JOB,
            "condition": told(tr("Condition"), "condition"),
            "met": chosen(tr("It was"), {1: tr("met"), 0: tr("not met")}),
        },
        ("condition",),
    ),
    "self_tests": TableWords(
        tr("The car's own tests"),
        {
            "job_id": _JOB,
            "stage": chosen(tr("Read"), STAGES),
            "typed": words(tr("As typed")),
            "read_at": told(tr("Read at"), "moment"),
        },
        ("stage",),
    ),
    "self_test": TableWords(
        tr("The car's own test"),
        {
            "job_id": _JOB,
            "stage": chosen(tr("Read"), STAGES),
            "monitor": told(tr("Test"), "monitor"),
            "state": term(tr("It is")),
        },
        ("monitor", "stage"),
    ),
    "proof_step": TableWords(
        tr("Step of the proof"),
        {
            "job_id": _JOB,
            "step": told(tr("Step"), "step"),
            "done_at": told(tr("Done at"), "moment"),
        },
        ("step",),
    ),
    "caught_here": TableWords(
        tr("Caught before it left"),
        {"job_id": _JOB, "caught_at": told(tr("At"), "moment"), "words": words(tr("What"))},
    ),
    "answered": TableWords(
        tr("Right as typed"), {"about": words(tr("About")), "question": words(tr("Asked was"))}
    ),
}

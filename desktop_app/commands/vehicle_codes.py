"""`vin` and `code`: what a VIN and a trouble code say by themselves."""

from __future__ import annotations

from desktop_app.commands.outcome import Asked, Outcome, one_or_list
from desktop_app.repair_jobs.trouble_code import read_code
from desktop_app.repair_jobs.vin import read_vin


def vin(asked: Asked) -> Outcome:
    """Read one or more VINs."""
    readings = [read_vin(text) for text in asked.vins]
    lines: list[str] = []
    for reading in readings:
        said = reading.as_json()
        ok = "agrees" if said["check_digit_ok"] else "does not agree"
        years = " or ".join(str(year) for year in said["model_years"]) or "not said"
        lines.append(
            f"{said['vin']}: check digit {ok} (expected {said['expected_check_digit']}); "
            f"region {said['region']}; model year {years}"
        )
        lines.extend(f"  {note}" for note in said["notes"])
    return Outcome(one_or_list([r.as_json() for r in readings]), tuple(lines))


def code(asked: Asked) -> Outcome:
    """Read one or more trouble codes."""
    codes = [read_code(text).as_json() for text in asked.codes]
    lines = tuple(
        f"{c['code']}: {c['area']}, defined by: {c['defined_by']}; "
        f"{c['meaning'] or 'meaning not in our list'}"
        for c in codes
    )
    return Outcome(one_or_list(list(codes)), lines)

"""A workbook worked out again by an office program, to hold its results against the kept ones."""

from __future__ import annotations

import csv
import subprocess
from pathlib import Path

import pytest

# Tells the office program to work every formula out again, whatever result the file holds.
_ALWAYS_RECALCULATE = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load">
<prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item></oor:items>
"""


def recalculated(folder: Path) -> dict[str, list[list[str]]]:
    """Return what the office program shows in each cell of week.xlsx, by sheet."""
    settings = folder / "office" / "user"
    settings.mkdir(parents=True)
    (settings / "registrymodifications.xcu").write_text(_ALWAYS_RECALCULATE)
    # Sheet -1 asks for a file of each sheet: comma, double quotes, UTF-8, cells as shown.
    form = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1"
    office = f"-env:UserInstallation={(folder / 'office').as_uri()}"
    convert = ["--headless", "--convert-to", form, "--outdir", str(folder)]
    subprocess.run(
        ["soffice", office, *convert, str(folder / "week.xlsx")],
        check=True,
        capture_output=True,
        timeout=120,
    )
    shown = {}
    for path in folder.glob("week-*.csv"):
        with path.open(encoding="utf-8", newline="") as file:
            shown[path.stem.removeprefix("week-")] = list(csv.reader(file))
    return shown


def as_number(found: object) -> object:
    """Return a result to compare: shares to the point, as the office program writes them."""
    if isinstance(found, str) and found.endswith("%"):
        return pytest.approx(float(found[:-1]) / 100, abs=0.0051)
    return pytest.approx(float(str(found))) if found not in ("", None) else None

"""Memory of the whole program stays flat over an hour of work (with BENCHWITNESS_LONG=1)."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from statistics import median

import pytest

from desktop_app.commands.shop_place import new_place
from desktop_app.parts_compared.actions import lay_side_by_side
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp

ROOT = Path(__file__).resolve().parents[2]
# So many jobs that none grows long; warm is a window that has shown every place some times.
JOBS, MINUTES, WARM = 400, 62, 12
MOST = 1.05


@pytest.mark.skipif(os.environ.get("BENCHWITNESS_LONG") != "1", reason="it takes an hour")
def test_an_hour_of_work_leaves_memory_flat(tmp_path: Path) -> None:
    record = new_place(tmp_path / "shop")
    actions.add_person(record, "Tuuli")
    for number in range(JOBS):
        said = WriteUp("misses when damp", plate=f"TH {number}", odometer=1000 + number)
        actions.write_up(record, said)
        if number % 3 == 0:
            lay_side_by_side(record, number + 1, "distributor-rotor")
    record.close()
    worked = (sys.executable, "-m", "tests.benchmarks.worked_window", str(tmp_path / "shop"))
    done = subprocess.run(
        (*worked, str(JOBS), str(MINUTES)), cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr[-3000:]
    held = [float(line.split()[1]) for line in done.stdout.splitlines()]
    before, after = median(held[WARM : WARM + 5]), median(held[-5:])
    print(f"\nheld after {WARM} minutes {before:.0f} MB, after an hour {after:.0f} MB")
    assert after <= MOST * before

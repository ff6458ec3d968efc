"""The history of a job as its tests ask for it, and the sealed copy held by its own verifier."""

from __future__ import annotations

import shutil
import subprocess
import sys
from pathlib import Path

from desktop_app.job_history.sealing_actions import SealedCopy, make_sealed_copy
from desktop_app.job_history.stored_job_history import JobHistory, read_history
from desktop_app.job_history.told_entry import EntryTold
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from tests.parts_compared.sheet_story import kinds
from tests.shop_record.backed_up import through

SYMPTOMS = {"misfire": "misfires"}


def history(record: ShopRecord, job: int) -> JobHistory:
    """Read the whole history of a job."""
    return through(read_history(record, job, kinds(), SYMPTOMS))


def newest(record: ShopRecord, job: int) -> EntryTold:
    """Return the entry on top."""
    return history(record, job).told[0]


def sealed(record: ShopRecord, job: int, to: Path) -> SealedCopy:
    """Write the sealed copy of a job."""
    return through(make_sealed_copy(record, job, kinds(), SYMPTOMS, to))


def verified(folder: Path, *anchor: str) -> tuple[int, str]:
    """Run the program's own verifier on a copy, in a Python that sees nothing else."""
    verifier = resource_path("sealed_copy", "verify.py")
    done = subprocess.run(
        [sys.executable, "-I", str(verifier), str(folder), *anchor],
        capture_output=True,
        text=True,
        check=False,
        encoding="utf-8",
    )
    assert done.stderr == ""
    assert done.stdout.count("\n") == 1
    return done.returncode, done.stdout.strip()


def copied(folder: Path, to: Path) -> Path:
    """Return another copy of a copy, to be spoilt."""
    return Path(shutil.copytree(folder, to))

"""A workbook turned into CSV by a process of its own, that may be ended at any time."""

from __future__ import annotations

import json
import subprocess
from pathlib import Path
from typing import Any

from desktop_app.language import tr
from desktop_app.records_exchanged.table_source import Progress
from desktop_app.shop_record.own_program.own_process import own_process
from desktop_app.shop_record.trouble import ShopTrouble

_TURNING = "desktop_app.records_exchanged.workbook_read.as_csv"
_BEYOND = (
    tr("It was given up: it takes more time or memory than any sheet does, or it is damaged."),
    tr("Open it in a spreadsheet program and save the sheet as CSV."),
)


def turn_workbook(
    workbook: Path, to: Path, sheet: str = "", progress: Progress | None = None
) -> tuple[str, ...]:
    """Write a workbook's sheet (the first, without a name) as CSV; returns the sheets it has.

    A hostile workbook harms that process alone. Raises ShopTrouble with what is wrong with it, and
    what `progress` raises.
    """
    said: dict[str, Any] = {}
    with (
        workbook.open("rb") as source,
        to.open("wb") as out,
        own_process(_TURNING, sheet, stdin=source, stdout=out, stderr=subprocess.PIPE) as process,
    ):
        assert process.stderr is not None
        try:
            for line in process.stderr:
                told = _told(line)
                said |= told
                if progress is not None and "share" in told:
                    progress(float(told["share"]))
        except BaseException:
            process.kill()
            raise
    if process.returncode == 0 and "sheets" in said:
        return tuple(said["sheets"])
    what, do = (said["what"], said["do"]) if "what" in said else _BEYOND
    raise ShopTrouble(f"{workbook.name}: {what}", do=do)


def _told(line: bytes) -> dict[str, Any]:
    """Return what the process said; what Python itself wrote there says nothing to a shop."""
    try:
        told = json.loads(line)
    except ValueError:
        return {}
    return told if isinstance(told, dict) else {}

"""What a shop that was brought back remembers: where its history stood, so that it may part there.

Backups made before may hold later entries, of what was done after that backup and is gone now.
"""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from datetime import datetime
from pathlib import Path

from desktop_app.shop_record.backups.backup_manifest import Manifest

FILE_NAME = "restored-from.json"


@dataclass(frozen=True, slots=True)
class RestoredFrom:
    """The last entry that the backup had, its hash, when it was made, and when it was used."""

    entries: int
    head: str
    made_at: str
    restored_at: str


def say_restored(folder: Path, manifest: Manifest, now: datetime) -> None:
    """Write down in a folder what was brought back into it."""
    now_said = now.isoformat(timespec="seconds")
    said = RestoredFrom(manifest.entries, manifest.head, manifest.made_at, now_said)
    (folder / FILE_NAME).write_text(json.dumps(asdict(said), indent=1), encoding="utf-8")


def restored_from(folder: Path) -> RestoredFrom | None:
    """Return what was brought back into a shop's folder; None where nothing was."""
    try:
        said = json.loads((folder / FILE_NAME).read_text(encoding="utf-8"))
        return RestoredFrom(
            int(said["entries"]),
            str(said["head"]),
            _moment(said["made_at"]),
            _moment(said["restored_at"]),
        )
    except (OSError, ValueError, TypeError, KeyError):
        return None


def _moment(said: object) -> str:
    moment = datetime.fromisoformat(str(said))
    if moment.tzinfo is None:
        raise ValueError("a moment without its offset can be held against no other")
    return moment.isoformat()

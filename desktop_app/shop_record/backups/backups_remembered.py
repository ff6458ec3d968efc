"""What a shop remembers of its backups in a small file of its folder; all moments as ISO 8601."""

from __future__ import annotations

import json
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Any

MEMORY = "backups-made.json"


def keep_in_mind(shop: Path, name: str, value: Any) -> None:
    """Remember one thing; a memory that can't be written is no trouble."""
    said = remembered(shop) | {name: value}
    part = shop / f"{MEMORY}.part"
    with suppress(OSError):
        part.write_text(json.dumps(said, indent=1), encoding="utf-8")
        part.replace(shop / MEMORY)


def remembered(shop: Path) -> dict[str, Any]:
    """Return all that is remembered; nothing where the file is gone or can't be read."""
    try:
        said = json.loads((shop / MEMORY).read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return said if isinstance(said, dict) else {}


def moment_in(said: object) -> datetime | None:
    """Return a remembered moment by the shop's clock, without its offset; None where it is none."""
    try:
        return datetime.fromisoformat(str(said)).replace(tzinfo=None)
    except ValueError:
        return None

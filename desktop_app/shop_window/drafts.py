"""Drafts: what was typed into a form that is not in the record yet, kept over a crash."""

from __future__ import annotations

import json
from pathlib import Path

from PySide6.QtCore import QIODevice, QSaveFile


class Drafts:
    """Half-filled forms of one shop, in a small file in its folder; written whole or not at all."""

    def __init__(self, folder: Path) -> None:
        self._path = folder / "drafts.json"
        self._unwritten: dict[str, dict[str, str]] = {}  # where the folder takes no file just now

    def read(self, form: str) -> dict[str, str]:
        """Return the fields of a form's draft; empty where there is none or it can't be read."""
        found = self._unwritten.get(form, self._all().get(form, {}))
        return {str(k): str(v) for k, v in found.items()} if isinstance(found, dict) else {}

    def keep(self, form: str, fields: dict[str, str]) -> None:
        """Keep the fields of a form; all empty removes its draft."""
        drafts = self._all() | self._unwritten
        if any(fields.values()):
            drafts[form] = fields
        elif drafts.pop(form, None) is None:
            return
        file = QSaveFile(str(self._path))
        written = file.open(QIODevice.OpenModeFlag.WriteOnly)
        if written:
            file.write(json.dumps(drafts, ensure_ascii=False).encode())
            written = file.commit()
        if written:
            self._unwritten.clear()
        else:
            self._unwritten[form] = fields

    def _all(self) -> dict[str, object]:
        try:
            found = json.loads(self._path.read_text("utf-8"))
        except (OSError, ValueError):
            return {}
        return found if isinstance(found, dict) else {}

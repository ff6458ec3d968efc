"""Drafts: what was typed into a form that is not in the record yet, kept over a crash."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
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
        if self._write(drafts):
            self._unwritten.clear()
        else:
            self._unwritten[form] = fields

    def forms(self) -> list[str]:
        """Return the names of all forms that have a draft in the file."""
        return list(self._all())

    def forget(self, forms: Collection[str]) -> None:
        """Let the drafts of some forms go from the file."""
        self._write({form: said for form, said in self._all().items() if form not in forms})

    def _write(self, drafts: Mapping[str, object]) -> bool:
        file = QSaveFile(str(self._path))
        if not file.open(QIODevice.OpenModeFlag.WriteOnly):
            return False
        file.write(json.dumps(drafts, ensure_ascii=False).encode())
        return file.commit()

    def _all(self) -> dict[str, object]:
        try:
            found = json.loads(self._path.read_text("utf-8"))
        except (OSError, ValueError):
            return {}
        return found if isinstance(found, dict) else {}

"""Drafts: what was typed into a form that is not in the record yet, kept over a crash."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
from contextlib import suppress
from hashlib import sha256
from pathlib import Path
from weakref import WeakSet

from platformdirs import user_data_path
from PySide6 import QtCore


class Drafts:
    """Half-filled forms of one shop, in a small file in its folder; written whole or not at all.

    While the folder takes no file they lie on this computer, and come back with the folder.
    """

    def __init__(self, folder: Path) -> None:
        self._path = folder / "drafts.json"
        self._spare = _spare_of(folder)
        self._unwritten: dict[str, dict[str, str]] = {}  # where the folder takes no file just now
        self._seen: dict[str, dict[str, str]] = {}  # of each form, as it was read or kept last
        _ALL.add(self)

    def read(self, form: str) -> dict[str, str]:
        """Return the fields of a form's draft; empty where there is none or it can't be read."""
        found = self._unwritten.get(form, self._all().get(form, {}))
        fields = {str(k): str(v) for k, v in found.items()} if isinstance(found, dict) else {}
        self._seen[form] = _said(fields)
        return fields

    def keep(self, form: str, fields: dict[str, str]) -> None:
        """Keep the fields of a form; all empty removes its draft.

        Where nothing was typed since they were read or kept, nothing is written: another window
        on the same folder may have kept more of the form meanwhile.
        """
        if self._seen.get(form) == _said(fields) and form not in self._unwritten:
            return
        self._seen[form] = _said(fields)
        drafts = self._all() | self._unwritten
        if any(fields.values()):
            drafts[form] = fields
        elif drafts.pop(form, None) is None:
            return
        if self._write(drafts):
            self._unwritten.clear()
        else:
            self._unwritten[form] = fields

    def is_unwritten(self, folder: Path) -> bool:
        """Tell whether something typed in a shop's forms stands in no file."""
        return self._path.parent == folder and any(map(_said, self._unwritten.values()))

    def forms(self) -> list[str]:
        """Return the names of all forms that have a draft in the file."""
        return list(self._all())

    def forget(self, forms: Collection[str]) -> None:
        """Let the drafts of some forms go from the file."""
        self._write({form: said for form, said in self._all().items() if form not in forms})

    def _write(self, drafts: Mapping[str, object]) -> bool:
        """Write them into the shop's folder; where that can't be, beside the window's memory."""
        said = json.dumps(drafts, ensure_ascii=False).encode()
        if _written(self._path, said):
            with suppress(OSError):
                self._spare.unlink(missing_ok=True)
            return True
        with suppress(OSError):
            self._spare.parent.mkdir(parents=True, exist_ok=True)
        return _written(self._spare, said)

    def _all(self) -> dict[str, object]:
        return _read(self._path) | _read(self._spare)


_ALL: WeakSet[Drafts] = WeakSet()


def _spare_of(folder: Path) -> Path:
    """Return where drafts lie on this computer while a shop's folder takes none, or is gone."""
    name = sha256(str(folder.absolute()).encode("utf-8", "surrogatepass")).hexdigest()[:16]
    return user_data_path("benchwitness", appauthor=False) / "drafts" / f"{name}.json"


def _written(path: Path, said: bytes) -> bool:
    file = QtCore.QSaveFile(str(path))
    if not file.open(QtCore.QIODevice.OpenModeFlag.WriteOnly):
        return False
    file.write(said)
    return file.commit()


def _read(path: Path) -> dict[str, object]:
    try:
        found = json.loads(path.read_text("utf-8"))
    except (OSError, ValueError):
        return {}
    return found if isinstance(found, dict) else {}


def are_unwritten(folder: Path) -> bool:
    """Tell whether something typed in the forms of a shop's window can't be kept in its folder."""
    return any(drafts.is_unwritten(folder) for drafts in _ALL)


def _said(fields: Mapping[str, str]) -> dict[str, str]:
    return {name: words for name, words in fields.items() if words}

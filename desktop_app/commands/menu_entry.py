"""`menu-entry`: the program in the menu of a Linux desktop, with its icon, for this user alone.

A shop's record is opened by it from then on: the kind of file is that of the Shared MIME-info
Specification of freedesktop.org, known by the record's name, so that no other SQLite file is tied.
"""

from __future__ import annotations

import shutil
import subprocess
import sys
from contextlib import suppress
from pathlib import Path

from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.shop_record.own_program.own_start import program_order
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.trouble import ShopTrouble

NAME = "benchwitness"
_PATIENCE_S = 30
_SPECIAL = '"`$\\'


def menu_entry(asked: Asked) -> Outcome:
    """Write the entry and the icon below the user's data folder, or take them away."""
    if sys.platform != "linux":
        raise ShopTrouble(
            "Entries in a menu are made by this command on Linux alone.",
            do="On Windows the installer makes one, on macOS the program lies in Applications.",
        )
    files = _files()
    if asked.remove:
        for file in files:
            with suppress(FileNotFoundError):
                file.unlink()
        _make_known(files)
        return Outcome({"removed": [str(file) for file in files]}, ("Taken out of the menu.",))
    entry, large, drawn, kind = files
    for file in files:
        file.parent.mkdir(parents=True, exist_ok=True)
    shutil.copyfile(resource_path("icon", f"{NAME}.png"), large)
    shutil.copyfile(resource_path("icon", f"{NAME}.svg"), drawn)
    shutil.copyfile(resource_path("icon", f"{NAME}.xml"), kind)
    entry.write_text(entry_text(program_order()), encoding="utf-8")
    lines = ("In the menu from now on:", *(str(file) for file in files), *_make_known(files))
    return Outcome({"files": [str(file) for file in files]}, lines)


def entry_text(order: list[str]) -> str:
    """Return the desktop entry, with the order that starts the program where it lies now."""
    template = resource_path("icon", f"{NAME}.desktop").read_text("utf-8")
    return template.replace(f"Exec={NAME} ", f"Exec={' '.join(map(_quoted, order))} ")


def _make_known(files: tuple[Path, ...]) -> tuple[str, ...]:
    """Let the desktop read its lists of kinds of files anew; return what has to be said of it."""
    entry, *_, kind = files
    _ran("update-desktop-database", entry.parent)  # a list for speed alone: desktops do without
    kinds = kind.parent.parent
    if _ran("update-mime-database", kinds):
        return ()
    return (f"For a double click on a shop.sqlite: update-mime-database {kinds}",)


def _ran(program: str, folder: Path) -> bool:
    there = shutil.which(program)
    if there is None or not folder.is_dir():
        return False
    with suppress(OSError, subprocess.TimeoutExpired):
        order = [there, str(folder)]
        done = subprocess.run(order, capture_output=True, check=False, timeout=_PATIENCE_S)
        return done.returncode == 0
    return False


def _quoted(word: str) -> str:
    """Quote a word as the Desktop Entry Specification asks for in Exec."""
    inside = "".join(f"\\{sign}" if sign in _SPECIAL else sign for sign in word)
    quoted = f'"{inside}"'.replace("%", "%%")
    return quoted.replace("\\", "\\\\")  # a string of such a file is escaped once more


def _files() -> tuple[Path, Path, Path, Path]:
    from platformdirs import user_data_path

    data = user_data_path()
    icons = data / "icons" / "hicolor"
    return (
        data / "applications" / f"{NAME}.desktop",
        icons / "256x256" / "apps" / f"{NAME}.png",
        icons / "scalable" / "apps" / f"{NAME}.svg",
        data / "mime" / "packages" / f"{NAME}.xml",
    )

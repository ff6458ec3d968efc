"""What a shop can send when something went wrong: the program, its settings, its log.

No customer, no car, no person and no name of a place is in it; it is shown before it is written.
"""

from __future__ import annotations

import os
import platform
import re
import zipfile
from contextlib import suppress
from importlib import metadata
from pathlib import Path
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.shop_record.own_program.log_told import told_lines
from desktop_app.shop_record.own_program.own_start import is_built
from desktop_app.shop_record.own_program.own_version import version
from desktop_app.shop_record.trouble import ShopTrouble

if TYPE_CHECKING:
    from desktop_app.shop_record.house_rules import HouseRules

LOG = "benchwitness.log"
_OLDER_LOGS = (f"{LOG}.2", f"{LOG}.1", LOG)  # as they are rotated, the oldest first
_MOST_LINES = 3_000
_FOR_WHO_WORKS_ON_IT = ("build", "test")
_NAME = re.compile(r"[\w.-]+")
_NO_LOG = tr("There is no log: nothing was noted yet.")
_NO_RULES = tr("The shop's settings could not be read.")


def make_report(folder: Path | None, rules: HouseRules | None) -> dict[str, str]:
    """Return the report's files by their names; `folder` is the shop's, where there is one."""
    pieces = {"program.txt": _program()}
    if folder is not None:
        pieces["settings.txt"] = _settings(rules) if rules is not None else _NO_RULES
        pieces["log.txt"] = "\n".join(told_lines(_log(folder))) or _NO_LOG
    return pieces


def report_text(pieces: dict[str, str]) -> str:
    """Return all that the report says, as it is shown before it is written."""
    return "\n\n".join(f"--- {name}\n{text}" for name, text in pieces.items())


def write_report(pieces: dict[str, str], to: Path) -> None:
    """Write the report into one file, whole or not at all. Raises ShopTrouble."""
    beside = to.parent / f"{to.name}.part"
    try:
        with zipfile.ZipFile(beside, "w", zipfile.ZIP_DEFLATED) as file:
            for name, text in pieces.items():
                file.writestr(name, text + "\n")
        beside.replace(to)
    except OSError as error:
        with suppress(OSError):
            beside.unlink()
        raise ShopTrouble(
            tr("{path} cannot be written: {error}.", path=to, error=error.strerror),
            do=tr("Choose another place or name."),
        ) from error


def _program() -> str:
    lines = [
        f"Benchwitness {version()}".rstrip(),
        tr("built to run without Python") if is_built() else tr("run by Python"),
        f"Python {platform.python_version()}, {platform.platform()}",
        tr("{processors} processors", processors=os.cpu_count()),
        *(f"{name} {number}" for name, number in libraries()),
    ]
    return "\n".join(lines)


def libraries() -> list[tuple[str, str]]:
    """Return each library that the program stands on, with its version."""
    try:
        wanted = metadata.requires("benchwitness") or []
    except metadata.PackageNotFoundError:
        wanted = []
    said: list[tuple[str, str]] = []
    for line in wanted:
        extra = line.partition("extra ==")[2].strip(" '\"")
        name = _NAME.match(line)
        if name is not None and extra not in _FOR_WHO_WORKS_ON_IT:
            with suppress(metadata.PackageNotFoundError):  # what somebody may do without
                said.append((name[0], metadata.version(name[0])))
    return said


def _settings(rules: HouseRules) -> str:
    """Say the settings that are numbers or choices: names, places and money stay in the shop."""
    from desktop_app.shop_record.house_rules import all_rules

    told = [rule for rule in all_rules() if rule.allowed or rule.bounds]
    return "\n".join(
        f"{rule.name} = {getattr(rules, rule.name)}" for rule in told if "cents" not in rule.name
    )


def _log(folder: Path) -> list[str]:
    lines: list[str] = []
    for name in _OLDER_LOGS:
        with suppress(OSError):
            lines += (folder / name).read_text("utf-8", errors="replace").splitlines()
    return lines[-_MOST_LINES:]

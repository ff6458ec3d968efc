"""Under which licences the program and the libraries that it stands on are given away."""

from __future__ import annotations

from contextlib import suppress
from importlib import metadata

from desktop_app.language import tr
from desktop_app.shop_record.own_program.problem_report import libraries

OWN_LICENCE = "Apache License 2.0"
_LONGEST = 60  # letters; some put the whole licence there


def licences() -> list[tuple[str, str]]:
    """Return each library with its version, and its licence as it says itself."""
    return [(f"{name} {number}", _licence(name)) for name, number in libraries()]


def _licence(name: str) -> str:
    with suppress(metadata.PackageNotFoundError):
        said = metadata.metadata(name)
        for field in ("License-Expression", "License"):
            named: str = said[field] if field in said else ""  # noqa: SIM401
            if named and len(named) <= _LONGEST and "\n" not in named:
                return named
        for line in said.get_all("Classifier") or ():
            if str(line).startswith("License ::"):
                return str(line).rpartition(" :: ")[2]
    return tr("see the library")

"""Which program this is, as it stands in what it makes."""

from __future__ import annotations

from importlib import metadata


def version() -> str:
    """Return the program's version; empty where it runs without having been installed."""
    try:
        return metadata.version("benchwitness")
    except metadata.PackageNotFoundError:
        return ""


def made_by() -> str:
    """Return the program's name with its version, where that is known."""
    return f"benchwitness {version()}".rstrip()

"""A shop that a desktop hands over: its record, pressed twice in a file manager, or its folder."""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble


def handed_over(argv: Sequence[str]) -> Path | None:
    """Return the path that is the only word, if a record or a folder lies there; else None.

    A word without a folder before it is a command, whatever lies here.
    """
    if len(argv) != 1 or os.path.basename(argv[0]) == argv[0]:
        return None
    path = Path(os.path.abspath(argv[0]))
    return path if path.is_dir() or (path.name == FILE_NAME and path.is_file()) else None


def is_out_of_an_archive(record: Path) -> bool:
    """Tell whether a record was unpacked alone to be looked at: it goes when the archive closes."""
    import tempfile

    folder = record.parent
    among = folder.resolve().is_relative_to(Path(tempfile.gettempdir()).resolve())
    return record.is_file() and among and all(one.name == FILE_NAME for one in folder.iterdir())


def out_of_an_archive() -> ShopTrouble:
    """Say why such a record is not worked on."""
    return ShopTrouble(
        tr("That record was unpacked alone, without its photos, among temporary files."),
        kept=tr("It was left as it is: what is written there goes with it."),
        do=tr("Bring the backup back as a whole."),
    )

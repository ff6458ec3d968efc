"""The mark in a shared folder of photos: whose they are.

Two shops in one folder would take each other's photos for nobody's; and where the network share is
not connected, an empty folder lies in its place.
"""

from __future__ import annotations

import uuid
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection

from desktop_app.shop_record.backup_pieces import told_of_disk
from desktop_app.shop_record.photo_files import MARK
from desktop_app.shop_record.server_trouble import PhotosUnknown

_NAME = "photo_folder"  # of the line in `set_up` that has the mark


@contextmanager
def marked(photos: Path | None) -> Iterator[str]:
    """Mark a folder for a new shop and give its mark; where the block fails it goes again.

    Raises PhotosUnknown where there is no such folder or it is another shop's, a ShopTrouble where
    nothing can be written there. None is no folder: photos in the database have no mark.
    """
    mark = uuid.uuid4().hex
    if photos is None:
        yield ""
        return
    if not photos.is_dir():
        raise PhotosUnknown(
            f"There is no folder {photos} for the photos, seen from this computer.",
            do="Name one that all computers of the shop reach, or keep photos in the database.",
        )
    if (photos / MARK).exists():
        raise PhotosUnknown(
            f"The folder {photos} holds the photos of another shop.",
            do="Name an empty folder that all computers of the shop reach.",
        )
    with told_of_disk(f"The folder {photos}"):
        (photos / MARK).write_text(f"{mark}\n", "ascii")
    try:
        yield mark
    except BaseException:
        (photos / MARK).unlink(missing_ok=True)
        raise


def keep_mark(connection: Connection, mark: str) -> None:
    """Write a folder's mark into the record."""
    if mark:
        connection.exec_driver_sql("INSERT INTO set_up VALUES (%s, %s)", (_NAME, mark))


def refuse_other_folder(connection: Connection, photos: Path) -> None:
    """Raise PhotosUnknown where a folder is not the one that was marked for this shop."""
    said = "SELECT value FROM set_up WHERE name = %s"
    mark = connection.exec_driver_sql(said, (_NAME,)).scalar()
    try:
        found = (photos / MARK).read_text("ascii").strip()
    except (OSError, ValueError):
        found = ""
    if mark is None or mark == found:  # a shop of before has none
        return
    what = (
        f"The folder {photos} holds the photos of another shop."
        if found
        else f"The shop's photos don't lie in {photos}."
    )
    raise PhotosUnknown(
        what, do="Is the shared folder connected? If it moved, say where it is now."
    )

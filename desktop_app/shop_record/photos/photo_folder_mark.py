"""The mark in a shared folder of photos: whose they are.

Two shops in one folder would take each other's photos for nobody's; and where the network share is
not connected, an empty folder lies in its place.
"""

from __future__ import annotations

import os
import platform
import re
import uuid
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path

from sqlalchemy import Connection
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_pieces import told_of_disk
from desktop_app.shop_record.photos.photo_files import MARK, PhotoFiles, let_go, sync_folder
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_trouble import PhotosUnknown

_NAME = "photo_folder"  # of the line in `set_up` that has the mark
_MARK = re.compile(r"([0-9a-f]{32})\s*?(?:\n(.*))?", re.DOTALL)


@contextmanager
def marked(photos: Path | None, address: ServerAddress) -> Iterator[str]:
    """Mark a folder for a new shop and give its mark; where the block fails all is as it was.

    The mark is on the disk before any row names it, so a torn one is nobody's. One that names this
    very database, which is empty, was left by a program that was killed: it is taken over. It
    stays where nobody said whether the shop was made.

    Raises PhotosUnknown where there is no such folder or it is not empty, a ShopTrouble where
    nothing can be written there. None is no folder: photos in the database have no mark.
    """
    if photos is None:
        yield ""
        return
    with told_of_disk(tr("The folder {folder}", folder=photos)):
        _refuse_used(photos)
        found, whose = _read(photos)
        if found and whose != _whose(address):
            raise of_another(photos)
        mark = found or _write_anew(photos, address)
    try:
        yield mark
    except Exception as error:
        if not found and not _is_unsure(error):
            _empty_again(photos)
        raise


def keep_mark(connection: Connection, mark: str) -> None:
    """Write a folder's mark into the record."""
    if mark:
        connection.exec_driver_sql("INSERT INTO set_up VALUES (%s, %s)", (_NAME, mark))


def mark_of(connection: Connection) -> str | None:
    """Return the mark that the record names; None for a shop of before there were marks."""
    said = "SELECT value FROM set_up WHERE name = %s"
    found = connection.exec_driver_sql(said, (_NAME,)).scalar()
    return None if found is None else str(found)


def mark_in(photos: Path) -> str:
    """Return the mark that lies in a folder; "" where there is no whole one or it can't be read."""
    return _read(photos)[0]


def of_another(photos: Path) -> PhotosUnknown:
    """Return what to say of a folder that another shop's mark lies in."""
    return PhotosUnknown(
        tr("The folder {folder} holds the photos of another shop.", folder=photos),
        do=tr(
            "Name the shop's own; for a new shop an empty one that all its computers "
            "reach. The file {file} there says which shop it belongs to.",
            file=MARK,
        ),
    )


def _refuse_used(photos: Path) -> None:
    if not photos.is_dir():
        raise PhotosUnknown(
            tr(
                "There is no folder {folder} for the photos, seen from this computer.",
                folder=photos,
            ),
            do=tr("Name one that all computers of the shop reach, or keep photos in the database."),
        )
    if any(one.name != MARK for one in photos.iterdir()):
        raise PhotosUnknown(
            tr("The folder {folder} is not empty.", folder=photos),
            kept=tr("Nothing was written there."),
            do=tr(
                "Name an empty folder that all computers of the shop reach, also where the "
                "photos that lie there are the same."
            ),
        )


def _whose(address: ServerAddress) -> str:
    """Return the words of a database, the same whoever opens it."""
    here = f" on {platform.node()}" if address.is_here() else ""
    return f"{address._replace(user='').text()}{here}"


def _read(photos: Path) -> tuple[str, str]:
    try:
        found = _MARK.fullmatch((photos / MARK).read_text("utf-8-sig"))
    except (OSError, ValueError):
        return "", ""
    return (found[1], (found[2] or "").strip()) if found else ("", "")


def _write_anew(photos: Path, address: ServerAddress) -> str:
    """Put a new mark safely on the disk, in place of a torn one."""
    path, mark = photos / MARK, uuid.uuid4().hex
    path.unlink(missing_ok=True)
    try:
        with path.open("x", encoding="utf-8", newline="\n") as file:
            file.write(f"{mark}\n{_whose(address)}\n")
            file.flush()
            os.fsync(file.fileno())
        sync_folder(photos)
    except FileExistsError:  # somebody else makes a shop here just now
        raise of_another(photos) from None
    except OSError:
        path.unlink(missing_ok=True)
        raise
    return mark


def _is_unsure(error: Exception) -> bool:
    """Tell whether the connection was lost, so that the shop may have been made all the same."""
    return isinstance(error, DBAPIError) and (
        error.connection_invalidated or bool(getattr(error.orig, "gave_up", False))
    )


def _empty_again(photos: Path) -> None:
    """Take away what was put into a folder that was empty: else it would be refused next time."""
    files = PhotoFiles(photos)
    with suppress(OSError):
        for sha256 in files.all_names():
            let_go(files.path(sha256))
            files.path(sha256).unlink()
        for folder in photos.glob("??"):
            folder.rmdir()
        (photos / MARK).unlink()

"""A whole shop carried from a folder onto a server, or back, and both compared."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record import moved
from desktop_app.shop_record.backups.backup_pieces import KINDS, unfinished
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.photos.photos_in_shared_folder import photos_shared_in
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_database import make_where_missing
from desktop_app.shop_record.server.server_password import password_for
from desktop_app.shop_record.server.server_shop import connected, in_empty_database
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class Moved:
    """What was carried over and compared; `missing` photos were not there before either."""

    rows: int
    entries: int
    photos: int
    missing: int


def move_to_server(
    record: ShopRecord, address: ServerAddress, photos: Path | None, password: str | None
) -> Moved:
    """Carry a shop into an empty database: all of it is there when this returns, or nothing.

    `photos` is a shared folder for them, None the database. Raises ShopTrouble where the database
    is not empty, or where anything differs in the end.
    """
    make_where_missing(address, password or password_for(address))
    engine = connected(address, password)
    try:
        with record.reading() as source:
            dialect.let_it_lie(source)
            with in_empty_database(engine, address, photos) as target:
                carried = missing = 0
                shared = None if photos is None else photos_shared_in(target, photos)
                for sha256, content in _photos(source, record.photos):
                    if content is None:
                        missing += 1
                    elif shared is not None:
                        shared.keep(content)
                        carried += 1
                    else:  # the server holds it to its hash
                        said = "INSERT INTO photo_content VALUES (%s, %s)"
                        target.exec_driver_sql(said, (sha256, content))
                        carried += 1
                rows, entries = _carry_over(source, target)
        return Moved(rows, entries, carried, missing)
    finally:
        engine.dispose()


def move_into_folder(record: ShopRecord, to: Path) -> Moved:
    """Carry a shop into a new folder; it is there as a whole when this returns, or not at all."""
    if to.exists() and (not to.is_dir() or any(to.iterdir())):
        raise ShopTrouble(
            tr("{folder} is not empty.", folder=to), do=tr("Name a new or an empty folder.")
        )
    to.parent.mkdir(parents=True, exist_ok=True)
    with unfinished(to, "moving") as folder, record.reading() as source:
        dialect.let_it_lie(source)
        dialect.copy_whole(source, folder / FILE_NAME)
        here, carried, missing = PhotoFiles(folder / "photos"), 0, 0
        for _, content in _photos(source, record.photos):
            if content is None:
                missing += 1
            else:
                here.keep(content)
                carried += 1
        if (record.folder / KINDS).is_dir():
            shutil.copytree(record.folder / KINDS, folder / KINDS)
        engine = dialect.open_engine(folder / FILE_NAME)
        try:
            with engine.connect() as target, target.begin():
                moved.refuse_difference(source, target)
                rows, entries = moved.counted(target)
        finally:
            engine.dispose()
        if to.exists():
            to.rmdir()
        folder.replace(to)
        folder.mkdir()  # what goes with the block
    return Moved(rows, entries, carried, missing)


def _carry_over(source: Connection, target: Connection) -> tuple[int, int]:
    for _ in moved.carry_over(source, target):
        pass
    moved.refuse_difference(source, target)
    return moved.counted(target)


def _photos(source: Connection, photos: PhotoFiles) -> Iterator[tuple[str, bytes | None]]:
    """Give every kept photo, also those that no row names: an undo would bring them back."""
    said = "SELECT DISTINCT sha256 FROM photo"
    named = {str(row[0]) for row in source.exec_driver_sql(said)}
    for sha256 in sorted(named | set(photos.all_names())):
        try:
            content = photos.read(sha256) if photos.is_whole(sha256) else None
        except ServerLost:
            raise  # it is not missing: nobody could be asked
        except ShopTrouble:
            content = None
        if content is None and (away := photos.away()) is not None:
            raise away
        yield sha256, content

"""A copy of a server's record as a file on this computer: backups and checks are made of that."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.moved import copy_to_file
from desktop_app.shop_record.photos.photos_fetched import fetch_photos
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_shop import connected, photos_of
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble


def copy_from_server(folder: Path, to: Path) -> Iterator[Step]:
    """Copy the record of the server that a folder names into a new file, as it stood at one moment.

    The photos are brought into the folder too, also those that no row names any more: an undo would
    bring them back. Others go on working.
    """
    place = read_place(folder)
    engine = connected(place.address, None)
    try:
        to.unlink(missing_ok=True)
        with engine.connect() as connection, connection.begin():
            yield from copy_to_file(connection, to)
            said = "SELECT DISTINCT sha256 FROM photo"
            named = {str(row[0]) for row in connection.exec_driver_sql(said)}
        photos = photos_of(engine, folder, place)
        yield from fetch_photos(photos, sorted(named.union(photos.all_names())), folder)
    except DBAPIError as error:
        raise dialect_postgres.as_trouble(error) or ShopTrouble(
            tr("The record could not be copied: {error}.", error=error.orig)
        ) from error
    finally:
        engine.dispose()

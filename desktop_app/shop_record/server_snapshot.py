"""A copy of a server's record as a file on this computer: backups and checks are made of that."""

from __future__ import annotations

from pathlib import Path

from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record import dialect_postgres
from desktop_app.shop_record.moved import copy_to_file
from desktop_app.shop_record.photo_files import PhotoFiles
from desktop_app.shop_record.server_folder import read_place
from desktop_app.shop_record.server_shop import connected, photos_of
from desktop_app.shop_record.trouble import ShopTrouble


def copy_from_server(folder: Path, to: Path) -> None:
    """Copy the record of the server that a folder names into a new file, as it stood at one moment.

    The photos that it names are brought into the folder too. Others go on working.
    """
    place = read_place(folder)
    engine = connected(place.address, None)
    try:
        to.unlink(missing_ok=True)
        with engine.connect() as connection, connection.begin():
            copy_to_file(connection, to)
            said = "SELECT DISTINCT sha256 FROM photo ORDER BY sha256"
            named = [str(row[0]) for row in connection.exec_driver_sql(said)]
        _bring(named, photos_of(engine, folder, place), PhotoFiles(folder / "photos"))
    except DBAPIError as error:
        raise dialect_postgres.as_trouble(error) or ShopTrouble(
            f"The record could not be copied: {error.orig}."
        ) from error
    finally:
        engine.dispose()


def _bring(named: list[str], photos: PhotoFiles, here: PhotoFiles) -> None:
    for sha256 in named:
        if here.path(sha256).is_file():
            continue
        try:
            content = photos.read(sha256)
        except ShopTrouble:
            continue  # what is missing is said by the backup and by the check
        here.keep(content)

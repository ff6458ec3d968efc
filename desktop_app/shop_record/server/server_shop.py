"""A shop on a server: made, opened, and what it says of itself."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy import Connection, Engine, inspect
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.photos.photo_folder_mark import keep_mark, marked
from desktop_app.shop_record.photos.photos_in_shared_folder import photos_shared_in
from desktop_app.shop_record.photos.photos_on_server import PhotosOnServer
from desktop_app.shop_record.record import Clock, ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME as RECORD_FILE
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_database import make_where_missing, refuse_unfit
from desktop_app.shop_record.server.server_folder import ServerPlace, read_place, write_place
from desktop_app.shop_record.server.server_password import (
    password_for,
    remember_password,
)
from desktop_app.shop_record.server.server_refusal import as_refusal
from desktop_app.shop_record.server.server_roles import (
    give_rights,
    may_make_roles,
    refuse_to_update,
)
from desktop_app.shop_record.server.server_trouble import PhotosUnknown
from desktop_app.shop_record.trouble import ShopTrouble

IN_DATABASE, IN_FOLDER = "in the database", "in a folder"


def open_on_server(folder: Path, clock: Clock, password: str | None = None) -> ShopRecord:
    """Open the shop whose address lies in a folder, bringing an older record up to date.

    Raises ShopTrouble where the server is away or refuses, a PasswordWanted where it wants one.
    """
    place = read_place(folder)
    engine = connected(place.address, password)
    try:
        refuse_without_shop(engine, place.address)
        upgrade.bring_up_to_date(engine, folder / RECORD_FILE, clock(), refuse_to_update)
        return ShopRecord(folder, engine, clock, photos_of(engine, folder, place))
    except BaseException:
        engine.dispose()
        raise


def create_on_server(
    folder: Path, place: ServerPlace, clock: Clock, password: str | None = None
) -> ShopRecord:
    """Make a new shop in an empty database, with its folder on this computer, and open it.

    The database is made where there is none; one that holds anything is left alone. Roles for
    those who read and those who work are made where the user may do that.
    """
    make_where_missing(place.address, password or password_for(place.address))
    engine = connected(place.address, password)
    try:
        with in_empty_database(engine, place.address, place.photos):
            pass  # nobody has any rows yet
        write_place(folder, place)
        return ShopRecord(folder, engine, clock, photos_of(engine, folder, place))
    except BaseException:
        engine.dispose()
        raise


@contextmanager
def in_empty_database(
    engine: Engine, address: ServerAddress, photos: Path | None
) -> Iterator[Connection]:
    """Give a connection to a record that is empty yet; it is there when the block ends well.

    `photos` is a shared folder for them, None the database. Raises ShopTrouble where the database
    holds anything, or the folder is no place for them.
    """
    with marked(photos, address) as mark, engine.connect() as plain:
        connection = plain.execution_options(building=True, one_by_one=True)
        with connection.begin():
            refuse_unfit(connection, address)
            upgrade.build_on(connection)
            set_up(connection, address, photos)
            keep_mark(connection, mark)
            yield connection


def set_up(connection: Connection, address: ServerAddress, photos: Path | None) -> None:
    """Write down where the photos lie, and give their rights to those who read and who work."""
    where = IN_DATABASE if photos is None else IN_FOLDER
    connection.exec_driver_sql("INSERT INTO set_up VALUES ('photos', %s)", (where,))
    if may_make_roles(connection):
        give_rights(connection, address.database)


def refuse_without_shop(engine: Engine, address: ServerAddress) -> None:
    """Raise ShopTrouble where a database holds no shop."""
    with engine.connect() as connection, connection.begin():
        if inspect(connection).has_table("set_up"):
            return
    raise ShopTrouble(
        tr("There is no shop in the database {database}.", database=address.database),
        do=tr(
            "Make one with “benchwitness new-shop {address}”, or look at the address.",
            address=address.text(),
        ),
    )


def connected(address: ServerAddress, password: str | None) -> Engine:
    """Return an engine that has connected once; what the server refuses is said in words."""
    engine = dialect_postgres.open_server(address, password or password_for(address))
    try:
        engine.connect().close()
    except DBAPIError as error:
        engine.dispose()
        raise as_refusal(error, address, password) from error
    if password:
        remember_password(address, password)
    return engine


def photos_of(engine: Engine, folder: Path, place: ServerPlace) -> PhotoFiles:
    """Return where the photos lie, as it was chosen when the shop was made; they may be away.

    Raises PhotosUnknown where this computer knows no folder of them, or it is another shop's.
    """
    with engine.connect() as connection, connection.begin():
        said = connection.exec_driver_sql("SELECT value FROM set_up WHERE name = 'photos'")
        where = said.scalar()
        if where != IN_DATABASE and place.photos is not None:
            return photos_shared_in(connection, place.photos)
    if where == IN_DATABASE:
        return PhotosOnServer(folder / "photos", engine)
    raise PhotosUnknown(
        tr("The photos of this shop lie in a shared folder; this computer does not know where."),
        do=tr("Open the shop in the window and name that folder there, as it is seen from here."),
    )

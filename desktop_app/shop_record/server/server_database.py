"""The empty database that a shop on a server is made in: made where it is missing, else looked at.

Text must be sorted by its bytes, as the embedded database has it: days, numbers of jobs and names
then come in one order everywhere.
"""

from __future__ import annotations

from sqlalchemy import Connection, inspect
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_refusal import as_refusal, names_no_database
from desktop_app.shop_record.trouble import ShopTrouble

_BY_BYTES = ("C", "POSIX", "C.UTF-8", "C.utf8")
_MAKE = "CREATE DATABASE \"{}\" TEMPLATE template0 ENCODING 'UTF8' LC_COLLATE 'C' LC_CTYPE 'C'"


def make_where_missing(address: ServerAddress, password: str | None) -> None:
    """Make the database of an address where the server has none of that name."""
    engine = dialect_postgres.open_server(address, password)  # says so where no driver is there
    import psycopg

    try:
        engine.connect().close()
        return
    except DBAPIError as error:
        if not names_no_database(error, address, password):
            raise as_refusal(error, address, password) from error
    finally:
        engine.dispose()
    engine = dialect_postgres.open_server(address._replace(database="postgres"), password)
    try:
        with engine.connect() as connection:
            raw = connection.connection.driver_connection
            assert raw is not None
            raw.execute(_MAKE.format(address.database))
    except DBAPIError as error:
        raise as_refusal(error, address, password) from error
    except psycopg.Error as error:
        raise ShopTrouble(
            tr(
                "The database {database} could not be made: {error}.",
                database=address.database,
                error=error,
            ),
            do=tr(
                "Whoever looks after the server can: {make};", make=_MAKE.format(address.database)
            ),
        ) from error
    finally:
        engine.dispose()


def refuse_unfit(connection: Connection, address: ServerAddress) -> None:
    """Raise ShopTrouble where a database is not empty, or sorts otherwise than by bytes."""
    if inspect(connection).get_table_names():
        raise ShopTrouble(
            tr("The database {database} is not empty.", database=address.database),
            kept=tr("It was left as it is."),
            do=tr("Name another database, or open the shop that is in it with --shop."),
        )
    said = (
        "SELECT datcollate, pg_encoding_to_char(encoding) FROM pg_database "
        "WHERE datname = current_database()"
    )
    collation, encoding = connection.exec_driver_sql(said).one()
    if encoding != "UTF8" or collation not in _BY_BYTES:
        raise ShopTrouble(
            tr(
                "The database {database} sorts text by {collation} in {encoding}; it has "
                "to be by bytes in UTF8.",
                database=address.database,
                collation=collation,
                encoding=encoding,
            ),
            kept=tr("It was left as it is."),
            do=tr("Make it anew: {make};", make=_MAKE.format(address.database)),
        )

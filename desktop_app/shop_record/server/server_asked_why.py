"""Why a server lets nobody into a database, asked of the server itself: it speaks any language.

What it says of a connection that did not come about is for people to read. Its own database
`postgres` has the same people and passwords, and knows of all the others.
"""

from __future__ import annotations

import re
from enum import Enum

from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.server.server_address import ServerAddress

_QUOTE = "[\"'«»‹›‘’‚“”„「」『』]"
_KEEPS_ALL = "postgres"
_SAID = "SELECT has_database_privilege(datname, 'CONNECT') FROM pg_database WHERE datname = %s"


class Why(Enum):
    """What stands between a login and a database."""

    NO_DATABASE = "there is none of that name"
    NO_RIGHT = "the login may not go in"
    NO_PASSWORD = "another password is wanted"
    NO_LOGIN = "nobody is known by that name"
    UNKNOWN = "something else"


def why_refused(address: ServerAddress, password: str | None) -> Why:
    """Ask the server why it refused what it was asked for at an address."""
    engine = dialect_postgres.open_server(address._replace(database=_KEEPS_ALL), password)
    try:
        with engine.connect() as connection:
            may = connection.exec_driver_sql(_SAID, (address.database,)).scalar()
    except DBAPIError as error:
        return _of_login(error, address)
    finally:
        engine.dispose()
    if may is None:
        return Why.NO_DATABASE
    return Why.UNKNOWN if may else Why.NO_RIGHT


def _of_login(error: DBAPIError, address: ServerAddress) -> Why:
    at = getattr(error.orig, "pgconn", None)
    if getattr(at, "needs_password", False):
        return Why.NO_PASSWORD
    if not speaks_of(login(error, address), error):
        return Why.UNKNOWN
    return Why.NO_PASSWORD if getattr(at, "used_password", False) else Why.NO_LOGIN


def login(error: Exception, address: ServerAddress) -> str:
    """Return who wanted to go in; where no address says it the driver knows."""
    at = getattr(getattr(error, "orig", error), "pgconn", None)
    return address.user or (getattr(at, "user", None) or b"").decode("utf-8", "replace")


def speaks_of(name: str, error: Exception) -> bool:
    """Tell whether a refusal quotes a name, in whatever quotes: then the server itself spoke."""
    said = str(getattr(error, "orig", error))
    return bool(name) and re.search(rf"{_QUOTE}\s*{re.escape(name)}\s*{_QUOTE}", said) is not None

"""Which database answers: a function for SQLite gives way to its namesake for PostgreSQL.

`dialect.py` is SQLite's, `dialect_postgres.py` a server's; likewise the pair for searching. Who
calls knows neither.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import wraps
from importlib import import_module
from typing import Any, Concatenate, ParamSpec, TypeVar

from sqlalchemy import Connection

P = ParamSpec("P")
R = TypeVar("R")

SERVER = "postgresql"
PATIENCE = "patience"  # where the engine of a server keeps how long its answers are waited for


def on_server(connection: Connection) -> bool:
    """Tell whether a connection leads to a server."""
    return connection.dialect.name == SERVER


def by_database(
    sqlite: Callable[Concatenate[Connection, P], R],
) -> Callable[Concatenate[Connection, P], R]:
    """Let the function of the same name in the module for servers answer where there is a server.

    That module is loaded with the first connection that leads to one.
    """

    @wraps(sqlite)
    def answer(connection: Connection, /, *args: P.args, **more: P.kwargs) -> R:
        if not on_server(connection):
            return sqlite(connection, *args, **more)
        found: R = getattr(_server_module(sqlite.__module__), sqlite.__name__)(
            connection, *args, **more
        )
        return found

    return answer


def _server_module(sqlite: str) -> Any:
    if sqlite.endswith("dialect_search"):
        return import_module("desktop_app.shop_record.databases.dialect_search_postgres")
    return import_module("desktop_app.shop_record.databases.dialect_postgres")

"""What a server can say of its own tables; rows and history are looked at in a copy."""

from __future__ import annotations

from collections.abc import Iterator

from sqlalchemy import Connection

from desktop_app.language import tr
from desktop_app.shop_record.checks.problem import Problem
from desktop_app.shop_record.databases import dialect

_DO = tr("Whoever looks after the server should look at its disk and its log; make a backup first.")


def server_problems(connection: Connection) -> Iterator[Problem]:
    """Tell of rules of the tables that are not held, and of pages that were found damaged."""
    for words in dialect.integrity_problems(connection):
        yield Problem(tr("the server"), tr("Of its tables {words}.", words=words), True, _DO)
    for words in dialect.damage_seen_quickly(connection):
        yield Problem(tr("the server"), tr("It found that {words}.", words=words), True, _DO)

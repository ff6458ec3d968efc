"""Who works in the shop; asked by the first screen that is shown, so it loads little."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.repair_jobs.stored import Person


def people_here(connection: Connection) -> tuple[tuple[int, str], ...]:
    """Return (id, name) of the people who work in the shop now."""
    rows = connection.execute(
        select(Person.id, Person.name).where(Person.here == 1).order_by(Person.name)
    )
    return tuple((r[0], r[1]) for r in rows)

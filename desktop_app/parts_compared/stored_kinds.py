"""Reading the shop's own part kinds, and which jobs and pairs a kind has."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from sqlalchemy import Connection, func, select

from desktop_app.parts_compared.stored import OwnKind, Pair, Reading
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.databases.dialect import ask_ahead
from desktop_app.shop_record.deed import Deed


def own_bodies(connection: Connection) -> dict[str, str]:
    """Return the TOML text of each own kind, by the kind's id."""
    rows = connection.execute(select(OwnKind.kind, OwnKind.body).order_by(OwnKind.kind))
    return {row.kind: row.body for row in rows}


def own_bodies_ahead(connection: Connection) -> Callable[[], dict[str, str]]:
    """Ask for `own_bodies` with whatever is asked next, and return who gives them then."""
    rows = ask_ahead(connection, "SELECT kind, body FROM own_kind ORDER BY kind")
    return lambda: {str(kind): str(body) for kind, body in rows()}


def own_kind_row(deed: Deed, kind: str) -> tuple[int, str] | None:
    """Return the row and the text of an own kind, or None where the shop has none by that id."""
    row = deed.connection.execute(
        select(OwnKind.id, OwnKind.body).where(OwnKind.kind == kind)
    ).first()
    return None if row is None else (row.id, row.body)


def jobs_of_pairs(connection: Connection, pair_ids: Sequence[int]) -> tuple[str, ...]:
    """Return the numbers of the jobs that these pairs belong to, each once, newest first."""
    named = select(Pair.id, Job.number).join(Job, Job.id == Pair.job_id).order_by(Pair.id)
    rows = connection.execute(named)
    wanted = frozenset(pair_ids)
    numbers = [number for pair, number in rows if pair in wanted]
    return tuple(dict.fromkeys(reversed(numbers)))


def dimensions_read(connection: Connection, kind: str) -> frozenset[str]:
    """Return the dimensions that pairs of a kind have readings of, on its list or not."""
    rows = connection.execute(
        select(Reading.dimension)
        .join(Pair, Pair.id == Reading.pair_id)
        .where(Pair.part_kind == kind)
        .distinct()
    )
    return frozenset(rows.scalars())


def pairs_of_kind(connection: Connection, kind: str) -> int:
    """Return how many pairs of a kind the record has."""
    wanted = select(func.count()).select_from(Pair).where(Pair.part_kind == kind)
    return int(connection.execute(wanted).scalar_one())

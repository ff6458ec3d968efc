"""Where photos of a pair belong: its job, its job's number, what a side shows in one view."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.parts_compared.stored import Pair, PairPhoto
from desktop_app.repair_jobs.stored import Job


def job_of_pair(connection: Connection, pair_id: int) -> int | None:
    """Return the job of a pair; None where the pair is gone."""
    return connection.execute(select(Pair.job_id).where(Pair.id == pair_id)).scalar()


def job_number_of_pair(connection: Connection, pair_id: int) -> str | None:
    """Return the number of a pair's job as the shop speaks of it."""
    asked = select(Job.number).join(Pair, Pair.job_id == Job.id).where(Pair.id == pair_id)
    return connection.execute(asked).scalar()


def photos_shown(connection: Connection, pair_id: int, side: str, view: str) -> tuple[int, ...]:
    """Return the photos that stand for one side of a pair in one view."""
    asked = select(PairPhoto.photo_id).where(
        PairPhoto.pair_id == pair_id, PairPhoto.side == side, PairPhoto.view == view
    )
    return tuple(connection.execute(asked.order_by(PairPhoto.id)).scalars())

"""The photos read for an export, each with what it shows."""

from __future__ import annotations

from collections.abc import Generator
from dataclasses import dataclass

from sqlalchemy import Connection, func, select

from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared.stored import Pair, PairPhoto
from desktop_app.records_exchanged.export_names import photo_file
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.tables import aliased


@dataclass(frozen=True, slots=True)
class PhotoTold:
    """A photo's row, its job's number, the SHA-256 of its file, and what it will be called."""

    id: int
    job: str
    sha256: str
    file: str


def photos_told(connection: Connection) -> Generator[PhotoTold, None, None]:
    """Give all photos by their rows' numbers; one that shows several pairs is called by the first.

    A pair is counted among the pairs of its job.
    """
    shows, other, before = aliased(PairPhoto), aliased(PairPhoto), aliased(Pair)
    first = select(func.min(other.id)).where(other.photo_id == Photo.id).scalar_subquery()
    place = (
        select(func.count())
        .where(before.job_id == Pair.job_id, before.id <= Pair.id)
        .scalar_subquery()
    )
    wanted = (
        select(
            *(Photo.id, Photo.job_id, Photo.sha256, Photo.media_type, Job.number),
            *(Pair.id.label("pair"), place.label("place"), Pair.part_kind),
            *(shows.side, shows.view),
        )
        .join(Job, Job.id == Photo.job_id)
        .outerjoin(shows, shows.id == first)
        .outerjoin(Pair, Pair.id == shows.pair_id)
        .order_by(Photo.id)
    )
    with connection.execute(wanted.execution_options(yield_per=500)) as rows:
        for row in rows:
            pair = None if row.pair is None else row.place
            shown = row.part_kind or "", row.side or "", row.view or ""
            file = photo_file(row.number, row.job_id, pair, *shown, row.sha256, row.media_type)
            yield PhotoTold(row.id, row.number, row.sha256, file)

"""Reading photos back from the record."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from sqlalchemy import Connection, RowMapping, func, select
from sqlalchemy.exc import IntegrityError

from desktop_app.language import tr
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.stored import Photo
from desktop_app.part_photos.stored_marks import remove_drawn
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.databases.dialect import hear_refusals
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.trouble import ShopTrouble


def photos_of_job(connection: Connection, job_id: int) -> tuple[KeptPhoto, ...]:
    """Return the photos of a job in the order in which they were added."""
    asked = select(Photo.__table__).where(Photo.job_id == job_id).order_by(Photo.id)
    return tuple(_photo(row) for row in connection.execute(asked).mappings())


def photos_by_id(connection: Connection, ids: Collection[int]) -> dict[int, KeptPhoto]:
    """Return the photos with these ids, by id; those that are gone are left out."""
    asked = select(Photo.__table__).where(Photo.id.in_(list(ids)))
    return {row["id"]: _photo(row) for row in connection.execute(asked).mappings()}


def photo_ids_by_hash(connection: Connection, job_id: int) -> Mapping[str, int]:
    """Return the id of each photo of a job by its SHA-256."""
    asked = select(Photo.sha256, Photo.id).where(Photo.job_id == job_id).order_by(Photo.id.desc())
    return {row.sha256: row.id for row in connection.execute(asked)}


def photos_after(connection: Connection, photo_id: int, most: int) -> tuple[KeptPhoto, ...]:
    """Return the first so many photos whose rows are newer than that of another one."""
    asked = select(Photo.__table__).where(Photo.id > photo_id).order_by(Photo.id).limit(most)
    return tuple(_photo(row) for row in connection.execute(asked).mappings())


def newest_photo(connection: Connection) -> int:
    """Return the id of the newest photo of the shop, 0 where there is none."""
    return int(connection.execute(select(func.max(Photo.id))).scalar() or 0)


def job_is_there(connection: Connection, job_id: int) -> bool:
    """Tell whether a job with this id is in the record."""
    return connection.execute(select(Job.id).where(Job.id == job_id)).first() is not None


def remove_photo(deed: Deed, photo_id: int) -> None:
    """Take out a photo's row with all that is drawn on it; a ShopTrouble where it is in use."""
    remove_drawn(deed, photo_id)
    try:
        deed.remove(Photo, photo_id)
        hear_refusals(deed.connection)
    except IntegrityError as error:
        raise ShopTrouble(
            tr("A pair of parts shows this photo."),
            kept=tr("The photo stays."),
            do=tr("Take it out of the pair first, then off the job."),
        ) from error


def _photo(row: RowMapping) -> KeptPhoto:
    return KeptPhoto(**{name: row[name] for name in KeptPhoto.__slots__})

"""Which photo files the record names, for the check of a shop."""

from __future__ import annotations

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.part_photos.stored import Photo
from desktop_app.repair_jobs.stored import Job


def photos_named(connection: Connection) -> tuple[tuple[str, str], ...]:
    """Return (SHA-256, where it is named) of every photo in the record."""
    rows = connection.execute(
        select(Photo.sha256, Photo.name, Job.number)
        .join(Job, Job.id == Photo.job_id)
        .order_by(Photo.id)
    )
    return tuple(
        (sha, tr("photo “{name}” of job {number}", name=name, number=number))
        for sha, name, number in rows
    )


def media_types(connection: Connection) -> dict[str, str]:
    """Return the media type of every photo in the record, by its SHA-256."""
    rows = connection.execute(select(Photo.sha256, Photo.media_type)).all()
    return {row.sha256: row.media_type for row in rows}

"""How photos and what is drawn on them are kept: the tables."""

from __future__ import annotations

from sqlalchemy import ForeignKey
from sqlalchemy.orm import Mapped, mapped_column

from desktop_app.shop_record.tables import Kept


class Photo(Kept):
    """One photo of a job; the original lies in the photo folder under its SHA-256.

    `width` and `height` are those of the upright picture (EXIF orientation applied), in pixels.
    """

    __tablename__ = "photo"

    job_id: Mapped[int] = mapped_column(ForeignKey("job.id"), index=True)
    sha256: Mapped[str] = mapped_column(index=True)
    name: Mapped[str]
    media_type: Mapped[str]
    size_bytes: Mapped[int]
    width: Mapped[int]
    height: Mapped[int]
    taken_at: Mapped[str | None]
    note: Mapped[str] = mapped_column(default="")


class Mark(Kept):
    """Something drawn on a photo; `points` is a JSON list of [x, y] in upright pixels."""

    __tablename__ = "mark"

    photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), index=True)
    kind: Mapped[str]
    points: Mapped[str]
    words: Mapped[str] = mapped_column(default="")

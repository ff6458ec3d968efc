"""How photos and what is drawn on them are kept: the tables."""

from __future__ import annotations

from sqlalchemy import ForeignKey, Index

from desktop_app.shop_record.tables import KEPT, Kept, Mapped, mapped_column


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
    """Something drawn on a photo; `points` is a JSON list of [x, y] in upright pixels.

    `kind` is a mark's type, `words` its name or note; heights in mm above the card. `snapped` is a
    JSON list, true for each point on an edge that the program found. `value`, `expanded_u` and
    `budget` (JSON) are what it said when it was last drawn, in `unit`; a later program may fit
    the camera otherwise. `settings` (JSON) is what else its type needs.
    """

    __tablename__ = "mark"

    photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), index=True)
    kind: Mapped[str]
    points: Mapped[str]
    words: Mapped[str] = mapped_column(default="")
    height_mm: Mapped[float | None]
    height_u_mm: Mapped[float | None]
    snapped: Mapped[str | None]
    value: Mapped[float | None]
    unit: Mapped[str | None]
    expanded_u: Mapped[float | None]
    budget: Mapped[str | None]
    settings: Mapped[str | None]


class PrintedCard(Kept):
    """One bench card that the shop has printed; `layout` is its CARD.json as it was then.

    `measured_mm` is what a calliper read on its ruler; None until somebody measured it.
    """

    __tablename__ = "printed_card"

    name: Mapped[str]
    layout: Mapped[str]
    printed_at: Mapped[str]
    measured_mm: Mapped[float | None]
    measured_on: Mapped[str | None]
    in_use: Mapped[int] = mapped_column(default=1)


class PhotoScale(Kept):
    """What gives a photo its millimetres: a printed card, or two points of known length.

    `fit` (JSON) holds what was fitted, its covariance, tilt, distance and warnings, so that a mark
    moved later needs no second look for the card; `made_by` is the program's version. `points` is
    a JSON list of two [x, y] in upright pixels.
    """

    __tablename__ = "photo_scale"

    photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), unique=True)
    source: Mapped[str]
    card_id: Mapped[int | None] = mapped_column(ForeignKey("printed_card.id"), index=True)
    card_scale: Mapped[float | None]
    points: Mapped[str | None]
    length_mm: Mapped[float | None]
    length_u_mm: Mapped[float | None]
    fit: Mapped[str]
    made_by: Mapped[str]


class Overlay(Kept):
    """How the new part's photo lies on the old one's: a transform, never a changed photo.

    `transform` is JSON, 3 x 3, new pixels to old pixels. `clicks` (JSON) holds the common points
    where a person gave some; `on_sheet` is 1 where the comparison sheet shows it.
    """

    __tablename__ = "overlay"
    __table_args__ = (
        Index("uq_overlay", "old_photo_id", "new_photo_id", unique=True),
        KEPT,
    )

    old_photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), index=True)
    new_photo_id: Mapped[int] = mapped_column(ForeignKey("photo.id"), index=True)
    transform: Mapped[str]
    method: Mapped[str]
    why: Mapped[str]
    residual_px: Mapped[float | None]
    residual_mm: Mapped[float | None]
    height_mm: Mapped[float | None]
    clicks: Mapped[str | None]
    on_sheet: Mapped[int] = mapped_column(default=0)

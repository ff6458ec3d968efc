"""Readings that were taken from marks on photos: reading them back, and letting them go."""

from __future__ import annotations

import json
import math
from typing import NamedTuple

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.part_photos.marks.mark import LENGTHS
from desktop_app.part_photos.stored import Mark, PhotoScale
from desktop_app.parts_compared.mark_doubt import MarkRead
from desktop_app.parts_compared.photo_doubt import PhotoDoubt, doubt_from_json
from desktop_app.parts_compared.stored import Pair, PairPhoto, PhotoReading, Reading
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.trouble import ShopTrouble


def kept_doubt(text: str | None) -> PhotoDoubt | None:
    """Return the doubt of a reading from a mark; None for others, and where it can't be read.

    A reading whose doubt can't be read counts for nothing: no other doubt is known to cover it.
    """
    if text is None:
        return None
    try:
        return doubt_from_json(text)
    except ValueError:
        return None


def mark_read(deed: Deed, mark_id: int) -> MarkRead:
    """Return what a mark says now; a ShopTrouble where there is no such mark."""
    row = deed.connection.execute(
        select(
            Mark.photo_id,
            Mark.kind,
            Mark.value,
            Mark.unit,
            Mark.expanded_u,
            Mark.budget,
            Mark.height_mm,
            Mark.height_u_mm,
            PhotoScale.card_id,
            PhotoScale.source,
        )
        .outerjoin(PhotoScale, PhotoScale.photo_id == Mark.photo_id)
        .where(Mark.id == mark_id)
    ).first()
    if row is None:
        raise ShopTrouble(tr("That mark is not on the photo any more."), tr("It may be undone."))
    budget = _budget(row.budget)
    known = row.value is not None and (budget is not None or row.unit == "")
    return MarkRead(
        row.photo_id,
        row.value if known else None,
        row.unit or "",
        row.expanded_u,
        budget or {},
        row.height_mm or 0.0,
        row.height_u_mm or 0.0,
        row.card_id,
        height_missing=row.source == "card" and row.kind in LENGTHS and row.height_mm is None,
    )


def photo_reading_rows(deed: Deed, mark_id: int) -> list[tuple[int, int]]:
    """Return (the row that names the mark, the reading's row) of each reading from a mark."""
    rows = deed.connection.execute(
        select(PhotoReading.id, PhotoReading.reading_id)
        .where(PhotoReading.mark_id == mark_id)
        .order_by(PhotoReading.id)
    )
    return [(row.id, row.reading_id) for row in rows]


class ReadingOfMark(NamedTuple):
    """A reading that was taken from a mark; `as_before` where the mark says something else now."""

    dimension: str
    side: str
    as_before: bool


def readings_from_mark(connection: Connection, mark_id: int) -> list[ReadingOfMark]:
    """Return the readings that were taken from a mark."""
    rows = connection.execute(
        select(Reading.dimension, Reading.side, Reading.value, Mark.value)
        .join(PhotoReading, PhotoReading.reading_id == Reading.id)
        .join(Mark, Mark.id == PhotoReading.mark_id)
        .where(PhotoReading.mark_id == mark_id)
        .order_by(Reading.id)
    )
    return [ReadingOfMark(dimension, side, read != says) for dimension, side, read, says in rows]


def reading_of_mark(
    deed: Deed, mark_id: int, pair_id: int, dimension: str, side: str
) -> tuple[int, int] | None:
    """Return those two rows where the mark is a reading of just that already."""
    row = deed.connection.execute(
        select(PhotoReading.id, PhotoReading.reading_id)
        .join(Reading, Reading.id == PhotoReading.reading_id)
        .where(
            PhotoReading.mark_id == mark_id,
            Reading.pair_id == pair_id,
            Reading.dimension == dimension,
            Reading.side == side,
        )
    ).first()
    return None if row is None else (row.id, row.reading_id)


def marked_among(deed: Deed, readings: list[int]) -> dict[int, int]:
    """Return those of the readings that were taken from marks: reading -> the naming row."""
    rows = deed.connection.execute(
        select(PhotoReading.reading_id, PhotoReading.id).where(
            PhotoReading.reading_id.in_(readings)
        )
    )
    return {row.reading_id: row.id for row in rows}


def remove_reading(deed: Deed, reading: int) -> None:
    """Take a reading out, and before it what says from which mark it came."""
    for row in marked_among(deed, [reading]).values():
        deed.remove(PhotoReading, row)
    deed.remove(Reading, reading)


def shows_side(deed: Deed, pair_id: int, photo_id: int, side: str) -> bool:
    """Whether a photo stands for this side of the pair."""
    found = deed.connection.execute(
        select(PairPhoto.id).where(
            PairPhoto.pair_id == pair_id, PairPhoto.photo_id == photo_id, PairPhoto.side == side
        )
    )
    return found.first() is not None


def _budget(text: str | None) -> dict[str, float] | None:
    """Return a mark's budget, or None where there is none that can be read."""
    try:
        parts = {str(name): float(u) for name, u in json.loads(text or "null").items()}
    except (ValueError, TypeError, AttributeError):
        return None
    return parts if all(math.isfinite(u) and u >= 0 for u in parts.values()) else None


def job_with_marks(connection: Connection) -> int | None:
    """Return the newest job of a pair whose photos carry marks."""
    return connection.execute(
        select(Pair.job_id)
        .join(PairPhoto, PairPhoto.pair_id == Pair.id)
        .join(Mark, Mark.photo_id == PairPhoto.photo_id)
        .order_by(Pair.id.desc())
    ).scalar()

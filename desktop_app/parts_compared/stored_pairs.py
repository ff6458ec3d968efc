"""Reading pairs, their readings and the shop's instruments back from the record."""

from __future__ import annotations

from collections import defaultdict
from typing import Any

from sqlalchemy import Connection, func, select

from desktop_app.language import tr
from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared import reading as values
from desktop_app.parts_compared.instruments.instrument import Instrument as Tool
from desktop_app.parts_compared.pair_view import PairView, PhotoShown
from desktop_app.parts_compared.photo_doubt import PhotoDoubt
from desktop_app.parts_compared.reading import SIDES, Side
from desktop_app.parts_compared.stored import (
    Explanation,
    Instrument,
    MakerLimit,
    Pair,
    PairPhoto,
    PartCondition,
    PhotoReading,
    Reading,
)
from desktop_app.parts_compared.stored_gauge import studied_dofs
from desktop_app.parts_compared.stored_photo_readings import kept_doubt, marked_among
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_record.trouble import ShopTrouble


def pairs_of_job(connection: Connection, job_id: int) -> tuple[int, ...]:
    """Return the ids of a job's pairs, oldest first."""
    rows = connection.execute(select(Pair.id).where(Pair.job_id == job_id).order_by(Pair.id))
    return tuple(rows.scalars())


def open_origins(connection: Connection, job_id: int) -> tuple[tuple[int, str], ...]:
    """Return those pairs (id, part kind) whose replacement's origin was not said."""
    rows = connection.execute(
        select(Pair.id, Pair.part_kind)
        .where(Pair.job_id == job_id, Pair.origin.is_(None), Pair.fitted == 1)
        .order_by(Pair.id)
    )
    return tuple((pair, kind) for pair, kind in rows)


def job_of_newest_pair(connection: Connection) -> int | None:
    """Return the job of the pair that was laid out last; None where there is no pair yet."""
    return connection.execute(select(Pair.job_id).order_by(Pair.id.desc()).limit(1)).scalar()


def read_pair(connection: Connection, pair_id: int) -> PairView:
    """Return a whole pair; a ShopTrouble where there is none with this id."""
    row = connection.execute(select(Pair.__table__).where(Pair.id == pair_id)).mappings().first()
    if row is None:
        raise ShopTrouble(tr("That pair is not in the record any more."), tr("It may be undone."))
    return PairView(
        **{**dict(row), "fitted": bool(row["fitted"])},
        **_readings(connection, pair_id),
        conditions=_conditions(connection, pair_id),
        explained=_explained(connection, pair_id),
        limits=_limits(connection, pair_id),
        photos=_photos(connection, pair_id),
    )


def drawer(connection: Connection) -> dict[str, Tool]:
    """Return the shop's own instruments by name, each with what a gauge study said of it."""
    own = select(Instrument.__table__).where(Instrument.in_use == 1).order_by(Instrument.id)
    rows = connection.execute(own).all()
    dofs = studied_dofs(connection)
    return {
        row.name: Tool(
            row.name,
            row.unit,
            row.resolution,
            row.max_error,
            row.repeatability,
            dofs.get(row.id) if row.repeatability is not None else None,
            row.checked_on,
        )
        for row in rows
    }


def instrument_rows(
    connection: Connection,
) -> tuple[tuple[int, str, str, float, float, str | None, float | None], ...]:
    """Return (id, name, unit, step, permitted error, last check, own repeatability) of each."""
    rows = connection.execute(
        select(
            Instrument.id,
            Instrument.name,
            Instrument.unit,
            Instrument.resolution,
            Instrument.max_error,
            Instrument.checked_on,
            Instrument.repeatability,
        )
        .where(Instrument.in_use == 1)
        .order_by(Instrument.name)
    )
    return tuple((r[0], r[1], r[2], r[3], r[4], r[5], r[6]) for r in rows)


def _readings(connection: Connection, pair_id: int) -> dict[str, Any]:
    """Return what a PairView holds of its readings."""
    rows = connection.execute(
        select(
            Reading.dimension,
            Reading.side,
            Reading.instrument,
            Reading.value,
            Reading.word,
            Reading.typed,
            PhotoReading.mark_id,
            PhotoReading.doubt,
        )
        .outerjoin(PhotoReading, PhotoReading.reading_id == Reading.id)
        .where(Reading.pair_id == pair_id)
        .order_by(Reading.id)
    )
    grouped: dict[tuple[str, Side, str, bool], list[tuple[float | str, PhotoDoubt | None]]]
    grouped = defaultdict(list)
    typed: dict[tuple[str, Side], list[str]] = defaultdict(list)
    marks: dict[tuple[str, Side], list[int | None]] = defaultdict(list)
    used: dict[tuple[str, Side], str] = {}
    for dimension, side_text, instrument, value, word, text, mark, kept in rows:
        side: Side = SIDES[0] if side_text == SIDES[0] else SIDES[1]
        doubt = kept_doubt(kept)
        read = value if value is not None else word or ""
        if kept is None or doubt is not None:  # else nothing tells how far it may be off
            grouped[dimension, side, instrument, doubt is not None].append((read, doubt))
        typed[dimension, side].append(text)
        marks[dimension, side].append(mark)
        if mark is None or (dimension, side) not in used:
            used[dimension, side] = instrument
    return {
        "readings": tuple(
            values.Reading(
                side,
                dimension,
                tuple(one for one, _ in found),
                instrument or None,
                tuple(doubt for _, doubt in found if doubt is not None) or None,
            )
            for (dimension, side, instrument, _), found in grouped.items()
        ),
        "typed": {key: tuple(texts) for key, texts in typed.items()},
        "instruments_used": used,
        "marks": {key: tuple(ids) for key, ids in marks.items() if any(ids)},
    }


def _conditions(connection: Connection, pair_id: int) -> tuple[values.ConditionSeen, ...]:
    rows = connection.execute(
        select(PartCondition.side, PartCondition.term)
        .where(PartCondition.pair_id == pair_id)
        .order_by(PartCondition.id)
    ).all()
    return tuple(
        values.ConditionSeen(side, tuple(term for s, term in rows if s == side))
        for side in SIDES
        if any(s == side for s, _ in rows)
    )


def _explained(connection: Connection, pair_id: int) -> tuple[values.Explanation, ...]:
    rows = connection.execute(
        select(Explanation.dimension, Explanation.by_whom, Explanation.why)
        .where(Explanation.pair_id == pair_id)
        .order_by(Explanation.dimension)
    )
    return tuple(values.Explanation(*row) for row in rows)


def _limits(connection: Connection, pair_id: int) -> tuple[values.MakerLimit, ...]:
    rows = connection.execute(
        select(MakerLimit.dimension, MakerLimit.low, MakerLimit.high, MakerLimit.source)
        .where(MakerLimit.pair_id == pair_id)
        .order_by(MakerLimit.dimension)
    )
    return tuple(values.MakerLimit(*row) for row in rows)


def _photos(connection: Connection, pair_id: int) -> tuple[PhotoShown, ...]:
    rows = connection.execute(
        select(
            PairPhoto.id,
            Photo.id,
            Photo.sha256,
            PairPhoto.side,
            PairPhoto.view,
            Photo.name,
            Photo.note,
        )
        .join(Photo, Photo.id == PairPhoto.photo_id)
        .where(PairPhoto.pair_id == pair_id)
        .order_by(PairPhoto.id)
    )
    return tuple(
        PhotoShown(link, photo, sha, SIDES[0] if side == SIDES[0] else SIDES[1], view, name, note)
        for link, photo, sha, side, view, name, note in rows
    )


def reading_rows(deed: Deed, pair_id: int, dimension: str, side: str) -> dict[int, tuple[str, str]]:
    """Return the kept readings of one side: row id -> (as typed, instrument)."""
    rows = deed.connection.execute(
        select(Reading.id, Reading.typed, Reading.instrument)
        .where(Reading.pair_id == pair_id, Reading.dimension == dimension, Reading.side == side)
        .order_by(Reading.id)
    )
    return {row: (typed, instrument) for row, typed, instrument in rows}


def condition_row(deed: Deed, pair_id: int, side: str, term: str) -> int | None:
    """Return the row of a condition term on one side."""
    return deed.connection.execute(
        select(PartCondition.id).where(
            PartCondition.pair_id == pair_id,
            PartCondition.side == side,
            PartCondition.term == term,
        )
    ).scalar()


def explanation_row(deed: Deed, pair_id: int, dimension: str) -> int | None:
    """Return the row of a dimension's explanation."""
    return deed.connection.execute(
        select(Explanation.id).where(
            Explanation.pair_id == pair_id, Explanation.dimension == dimension
        )
    ).scalar()


def limit_row(deed: Deed, pair_id: int, dimension: str) -> int | None:
    """Return the row of a dimension's limits by the maker."""
    return deed.connection.execute(
        select(MakerLimit.id).where(
            MakerLimit.pair_id == pair_id, MakerLimit.dimension == dimension
        )
    ).scalar()


def instrument_row(deed: Deed, name: str) -> int | None:
    """Return the row of an instrument by its name."""
    return deed.connection.execute(select(Instrument.id).where(Instrument.name == name)).scalar()


def rows_of_pair(deed: Deed, pair_id: int) -> list[tuple[type[Kept], int]]:
    """Return every row that hangs on a pair, so that the pair can be taken out."""
    asked = select(Reading.id).where(Reading.pair_id == pair_id).order_by(Reading.id)
    marked = marked_among(deed, list(deed.connection.execute(asked).scalars()))
    found: list[tuple[type[Kept], int]] = [(PhotoReading, row) for row in marked.values()]
    for table in (Reading, PartCondition, Explanation, MakerLimit, PairPhoto):
        asked = select(table.id).where(table.pair_id == pair_id).order_by(table.id)
        rows = deed.connection.execute(asked)
        found.extend((table, row) for row in rows.scalars())
    return found


def job_to_show(connection: Connection) -> tuple[int, str]:
    """Return the newest job handed over with photos of both parts: its id and that day."""
    sides = (
        select(Pair.job_id)
        .join(PairPhoto, PairPhoto.pair_id == Pair.id)
        .group_by(Pair.job_id)
        .having(func.count(PairPhoto.side.distinct()) == 2)
    )
    row = connection.execute(
        select(Job.id, Job.left_at)
        .where(Job.id.in_(sides), Job.left_at.is_not(None))
        .order_by(Job.left_at.desc(), Job.id)
    ).first()
    if row is None:
        raise ShopTrouble(tr("No job of this shop has photos of both parts yet."))
    return row[0], str(row[1])[:10]

"""Reading gauge studies and the repeatability that came of them back from the record."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy import Connection, Row, select

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.gauge_study import GaugeReading, study
from desktop_app.parts_compared.stored import GaugeReading as ReadingRow
from desktop_app.parts_compared.stored import GaugeStudy, Instrument
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class StudyKept:
    """A gauge study as kept; its readings by their row, in the instrument's unit."""

    id: int
    instrument_id: int
    about: str
    begun_at: str
    taken_over: bool
    readings: dict[int, GaugeReading]


def latest_study(connection: Connection, instrument_id: int) -> StudyKept | None:
    """Return the study of an instrument that was begun last, or None."""
    row = connection.execute(
        select(GaugeStudy.__table__)
        .where(GaugeStudy.instrument_id == instrument_id)
        .order_by(GaugeStudy.id.desc())
        .limit(1)
    ).first()
    return None if row is None else _study(connection, row)


def read_study(connection: Connection, study_id: int) -> StudyKept:
    """Return a study; a ShopTrouble where there is none with this id."""
    row = connection.execute(select(GaugeStudy.__table__).where(GaugeStudy.id == study_id)).first()
    if row is None:
        raise ShopTrouble(
            tr("That gauge study is not in the record any more."), tr("It may be undone.")
        )
    return _study(connection, row)


def repeatability_of(connection: Connection, instrument_id: int) -> float | None:
    """Return the shop's own repeatability of an instrument in its unit; None: the usual one."""
    asked = select(Instrument.repeatability).where(Instrument.id == instrument_id)
    return connection.execute(asked).scalar_one_or_none()


def studies_in_use(connection: Connection, instrument_id: int) -> tuple[int, ...]:
    """Return the studies that an instrument's repeatability comes from: one, or none."""
    asked = (
        select(GaugeStudy.id)
        .where(GaugeStudy.instrument_id == instrument_id, GaugeStudy.taken_over == 1)
        .order_by(GaugeStudy.id)
    )
    return tuple(connection.execute(asked).scalars())


def studied_in_another_unit(connection: Connection, instrument_id: int, unit: str) -> bool:
    """Tell whether an instrument has gauge readings that were taken in another unit than this."""
    asked = (
        select(ReadingRow.id)
        .join(GaugeStudy, GaugeStudy.id == ReadingRow.study_id)
        .join(Instrument, Instrument.id == GaugeStudy.instrument_id)
        .where(Instrument.id == instrument_id, Instrument.unit != unit)
        .limit(1)
    )
    return connection.execute(asked).first() is not None


def studied_dofs(connection: Connection) -> dict[int, float]:
    """Return the degrees of freedom of each repeatability in use, by the instrument's row."""
    rows = connection.execute(select(GaugeStudy.__table__).where(GaugeStudy.taken_over == 1))
    return {row.instrument_id: _dof(connection, row.id) for row in rows.all()}


def _dof(connection: Connection, study_id: int) -> float:
    # What was changed from outside may leave nothing; a spread is then hardly known at all.
    return float(max(1, study(tuple(_readings(connection, study_id).values())).dof))


def _study(connection: Connection, row: Row[tuple[object, ...]]) -> StudyKept:
    return StudyKept(
        row.id,
        row.instrument_id,
        row.about,
        row.begun_at,
        bool(row.taken_over),
        _readings(connection, row.id),
    )


def _readings(connection: Connection, study_id: int) -> dict[int, GaugeReading]:
    rows = connection.execute(
        select(ReadingRow.__table__).where(ReadingRow.study_id == study_id).order_by(ReadingRow.id)
    )
    return {row.id: GaugeReading(row.person, row.part, row.trial, row.value) for row in rows}

"""What the words of a row are kept as: ids where the program knows them, else as written."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from datetime import date, datetime
from functools import lru_cache

from desktop_app.language import tr
from desktop_app.parts_compared.pair_view import ORIGINS
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.records_exchanged.date_order import still_to_come
from desktop_app.records_exchanged.import_told import RowTrouble
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.repair_jobs.distance import KM_PER_MILE
from desktop_app.repair_jobs.later_visit import DAY_ALONE
from desktop_app.repair_jobs.systems import system_id
from desktop_app.returns_watched.judgement import Judgement

# Given what the customer said: the ids of the symptom groups, or of the conditions, in it.
Read = Callable[[str], tuple[str, ...]]
# Where a replacement comes from, as it is kept and in English: a table is read alike everywhere.
_IN_ENGLISH = {
    "new, from the vehicle's maker": "new, vehicle maker's",
    "new, from another maker": "new, other maker's",
    "remanufactured": "reman",
    "rebuilt in this shop": "rebuilt here",
    "brought by the customer": "customer's own",
}
_ORIGINS = {id.casefold(): id for id, _ in ORIGINS} | _IN_ENGLISH


def kind_ids(kinds: Iterable[PartKind]) -> Mapping[str, str]:
    """Return the id of a kind by its id and each of its names, in small letters.

    The names are those in the program's own words: a table is read alike in every language.
    """
    listed = list(kinds)
    ids = {name.casefold(): kind.id for kind in listed for name in kind.plain_names}
    ids.update({kind.plain_names[0].casefold(): kind.id for kind in listed})
    return ids | {kind.id.casefold(): kind.id for kind in listed}


def part_of(row: JobRow, kinds: Mapping[str, str]) -> tuple[str, str, str, str] | None:
    """Return kind, number, supplier and origin of a row's part; None where it names no part."""
    kind = kinds.get(row.part_kind.casefold(), row.part_kind)
    origin = _ORIGINS.get(row.part_origin.casefold(), row.part_origin)
    said = (kind, row.part_number, row.supplier, origin)
    return said if any(said) else None


def same_part(kept: tuple[str, ...], said: tuple[str, ...]) -> bool:
    """Tell whether a line is about a kept part: its kind and number say nothing else."""
    return all(new in ("", old) for old, new in zip(kept[:2], said[:2], strict=True))


def system_of(row: JobRow) -> str:
    """Return the system's id, or what was written."""
    return _system_of(row.system)


@lru_cache(1_000)
def _system_of(written: str) -> str:
    return (system_id(written) or written) if written else ""


def judgement_of(row: JobRow) -> str | None:
    """Return what was decided. Raises RowTrouble where that is no judgement, or of no job."""
    if not row.judgement:
        return None
    said = " ".join(row.judgement.casefold().split())
    if not row.return_of:
        why = tr("It says what was decided, but return_of doesn't say about which earlier job.")
        raise RowTrouble("judgement", row.judgement, why)
    try:
        return Judgement(said).value
    except ValueError:
        accepted = ", ".join(one.value for one in Judgement)
        raise RowTrouble(
            "judgement", row.judgement, tr("Accepted: {accepted}.", accepted=accepted)
        ) from None


def reading_in(row: JobRow, unit: str) -> int | None:
    """Return the row's odometer in a vehicle's own unit, to the nearest whole one."""
    if row.odometer is None or not row.odometer_unit or row.odometer_unit == unit:
        return row.odometer
    return round(row.odometer * KM_PER_MILE if unit == "km" else row.odometer / KM_PER_MILE)


def wrong_alone(row: JobRow, today: date) -> list[RowTrouble]:
    """Return all that is wrong with a row whatever the record holds."""
    found = []
    for column, day in (("opened_on", row.opened_on), ("closed_on", row.closed_on)):
        if day is not None and (why := still_to_come(day, today)):
            found.append(RowTrouble(column, day, why))
    if row.return_of and row.return_of == row.job_number:
        found.append(RowTrouble("return_of", row.return_of, tr("A job can't be its own return.")))
    try:
        judgement_of(row)
    except RowTrouble as trouble:
        found.append(trouble)
    return found


def refuse_early_close(row: JobRow, came: str) -> None:
    """Raise RowTrouble where a job was closed before it came."""
    if row.closed_on is not None and row.closed_on.isoformat() < came:
        raise RowTrouble(
            "closed_on", row.closed_on, tr("It came on {day}; that is later.", day=came)
        )


class Moments:
    """Days alone as the record keeps them, in the shop's own offset; and today."""

    def __init__(self, now: datetime) -> None:
        self.today = now.date()
        self._zone = now.tzinfo
        self._kept: dict[date, str] = {}

    def at(self, day: date) -> str:
        """Return the moment of a day."""
        kept = self._kept.get(day)
        if kept is None:
            moment = datetime.combine(day, DAY_ALONE, tzinfo=self._zone)
            kept = self._kept[day] = moment.isoformat(timespec="seconds")
        return kept

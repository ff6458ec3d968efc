"""What the check of a shop looks at in jobs and returns: values that no deed has written."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from operator import itemgetter
from typing import Any, NamedTuple

from sqlalchemy import Connection, select

from desktop_app.language import tr
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.concern_conditions import CONDITION_IDS
from desktop_app.repair_jobs.entry_bounds import MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.kept_job import (
    kept_drive,
    kept_every,
    kept_kind_of_work,
    kept_level,
    kept_promise,
    kept_window,
    kept_work,
)
from desktop_app.repair_jobs.odometer import READING_SOURCES
from desktop_app.repair_jobs.proof_steps import STEP_IDS
from desktop_app.repair_jobs.self_tests import MONITOR_IDS, SelfTestState, read_bytes
from desktop_app.repair_jobs.stored import (
    CaughtHere,
    ConditionMet,
    Job,
    JobCondition,
    ProofStep,
    SelfTest,
    SelfTests,
    VehicleEvent,
    Visit,
)
from desktop_app.returns_watched.customer_answers import Answer, HeardBy
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.owed import State, What
from desktop_app.returns_watched.stored import CustomerAsked, KindWindow, MoneyOwed, ReturnLink
from desktop_app.returns_watched.stored_links import kept_cents, kept_danger, link_kept
from desktop_app.returns_watched.stored_windows import kept_kind_window
from desktop_app.shop_record.databases.sql_days import day_of
from desktop_app.shop_record.house_rules import read_rules
from desktop_app.shop_record.kept_value import (
    kept_day,
    kept_moment,
    kept_tick,
    kept_whole,
    kept_word,
    row_place,
)
from desktop_app.shop_record.tables import Kept, aliased
from desktop_app.shop_record.trouble import ShopTrouble


class Look(NamedTuple):
    """What is looked at in a row: its columns (none: all of them); a ShopTrouble where it is none.

    The same values are looked at once.
    """

    columns: tuple[str, ...]
    at: Callable[[Any], object]


ROWS_AT_ONCE = 2000


def record_problems(connection: Connection) -> Iterator[tuple[str, str]]:
    """Give where and what for each value that no deed has written, and each impossible return."""
    try:
        read_rules(connection)
    except ShopTrouble as trouble:
        yield tr("the house rules"), trouble.what
    for table, looks in _LOOKS.items():
        yield from _problems_of(connection, table, looks)
    yield from _left_before_it_came(connection)
    yield from _impossible_returns(connection)


def _problems_of(
    connection: Connection, table: type[Kept], looks: Mapping[str, Look]
) -> Iterator[tuple[str, str]]:
    good: dict[str, set[Any]] = {column: set() for column in looks}
    names = table.__table__.columns.keys()
    places = {column: map(names.index, look.columns or names) for column, look in looks.items()}
    takes = {column: itemgetter(*at) for column, at in places.items()}
    for rows in _in_pieces(connection, select(table.__table__).order_by(table.id)):
        for column, look in looks.items():
            values = list(map(takes[column], rows))
            if good[column].issuperset(values):
                continue  # most rows say what others have said: each value is looked at once
            for row, value in zip(rows, values, strict=True):
                if value in good[column]:
                    continue
                try:
                    look.at(row)
                    good[column].add(value)
                except ShopTrouble as trouble:
                    number = _number(connection, table, row)
                    place = row_place(table.__tablename__, row.id, number)
                    yield f"{place}, {column}", trouble.what


def _streamed(connection: Connection, wanted: Any) -> Iterator[Any]:
    for rows in _in_pieces(connection, wanted):
        yield from rows


def _in_pieces(connection: Connection, wanted: Any) -> Iterator[Any]:
    with connection.execute(wanted.execution_options(yield_per=ROWS_AT_ONCE)) as found:
        yield from found.partitions()


def _number(connection: Connection, table: type[Kept], row: Any) -> str | None:
    """Return the number of the job that a row belongs to, None where it belongs to none."""
    if table is Job:
        return str(row.number)
    if table is MoneyOwed:
        wanted = select(Job.number).join(Pair, Pair.job_id == Job.id).where(Pair.id == row.pair_id)
        return connection.execute(wanted).scalar()
    job = getattr(row, "job_id", None) or getattr(row, "later_job_id", None)
    return connection.execute(select(Job.number).where(Job.id == job)).scalar()


def _left_before_it_came(connection: Connection) -> Iterator[tuple[str, str]]:
    """Give the jobs that were handed over, and the visits that ended, before the car came."""
    wanted = select(Job.id, Job.number, Job.left_at, Visit.came_at).join(
        Visit, Visit.id == Job.visit_id
    )
    for row in _streamed(connection, wanted.where(_day_of(Job.left_at) < _day_of(Visit.came_at))):
        words = tr(
            "It was handed over on {left_at}, before its car came on {came_at}.",
            left_at=row.left_at[:10],
            came_at=row.came_at[:10],
        )
        yield row_place("job", row.id, row.number), words
    ended = select(Visit.id, Visit.left_at, Visit.came_at)
    for row in _streamed(connection, ended.where(_day_of(Visit.left_at) < _day_of(Visit.came_at))):
        words = tr(
            "It ended on {left_at}, before it began on {came_at}.",
            left_at=row.left_at[:10],
            came_at=row.came_at[:10],
        )
        yield row_place("visit", row.id), words


def _day_of(moment: Any) -> Any:
    return day_of(moment)


def _impossible_returns(connection: Connection) -> Iterator[tuple[str, str]]:
    """Give the returns of a job to itself, and those that came before the earlier job had left."""
    earlier, later = aliased(Job), aliased(Job)
    wanted = (
        select(
            *(ReturnLink.id, ReturnLink.earlier_job_id, ReturnLink.later_job_id),
            *(earlier.left_at, Visit.came_at),
            *(earlier.number.label("first"), later.number.label("second")),
        )
        .join(earlier, earlier.id == ReturnLink.earlier_job_id)
        .join(later, later.id == ReturnLink.later_job_id)
        .join(Visit, Visit.id == later.visit_id)
    )
    for row in _streamed(connection, wanted):
        place = row_place("return_link", row.id, row.second)
        if row.earlier_job_id == row.later_job_id:
            yield (
                place,
                tr("{second} is kept as a return of itself, and is left out.", second=row.second),
            )
        elif row.left_at is not None and row.left_at[:10] > row.came_at[:10]:
            words = tr(
                "{second} came before {first} had left, and can't be its return. It is left out.",
                second=row.second,
                first=row.first,
            )
            yield place, words


def _each(look: Callable[[Any], object], *columns: str) -> dict[str, Look]:
    """Look at columns that may be empty."""

    def at(column: str) -> Callable[[Any], object]:
        def look_at(row: Any) -> object:
            value = getattr(row, column)
            return None if value is None else look(value)

        return look_at

    return {column: Look((column,), at(column)) for column in columns}


def _word(column: str, allowed: Any, wanted: str) -> dict[str, Look]:
    return _each(lambda value: kept_word(value, allowed, wanted), column)


def _tick(*columns: str) -> dict[str, Look]:
    wanted = tr("0 or 1")
    return _each(lambda value: kept_tick(value, wanted), *columns)


def _odometer(*columns: str) -> dict[str, Look]:
    wanted = tr("an odometer reading")
    return _each(lambda value: kept_whole(value, 0, MOST_ON_AN_ODOMETER, wanted), *columns)


def _ended_after(row: Any) -> None:
    if row.ended_on is not None and row.ended_on < row.since:
        raise ShopTrouble(
            tr(
                "It ended on {ended_on}, before it began on {since}.",
                ended_on=row.ended_on,
                since=row.since,
            )
        )


_CAUSE_IDS = {one.id for one in RETURN_CAUSES}
_STAGES = ("found", "after repair")
_LOOKS: dict[type[Kept], dict[str, Look]] = {
    VehicleEvent: {
        **_each(kept_day, "happened_on"),
        **_word("kind", ("odometer replaced", "sold"), tr("“odometer replaced” or “sold”")),
        **_odometer("reading_before", "reading_after"),
    },
    Visit: {
        **_each(kept_moment, "came_at", "left_at"),
        **_odometer("odometer_in", "odometer_out"),
        **_word("odometer_source", READING_SOURCES, tr("“read”, “told” or “estimated”")),
    },
    Job: {
        **_each(kept_moment, "left_at"),
        **_odometer("odometer_out"),
        **_tick("says_same", "cause_found"),
        **_each(kept_level, "proof_level"),
        tr("window"): Look(
            ("window_days", "window_miles", "window_rule"),
            lambda row: kept_window(row.window_days, row.window_miles, row.window_rule),
        ),
        tr("hours or price"): Look(
            ("hours", "unbilled_hours", "price_cents"),
            lambda row: kept_work(row.hours, row.unbilled_hours, row.price_cents),
        ),
        "work": Look(
            ("work", "search_hours"), lambda row: kept_kind_of_work(row.work, row.search_hours)
        ),
        **_each(kept_drive, "proof_distance"),
        "window_from": Look(
            ("window_months", "window_from"),
            lambda row: kept_promise(row.window_months, row.window_from),
        ),
        "fault_every": Look(
            ("fault_every", "fault_every_unit"),
            lambda row: kept_every(row.fault_every, row.fault_every_unit),
        ),
    },
    JobCondition: {**_word("condition", CONDITION_IDS, tr("a condition")), **_tick("happens")},
    ConditionMet: {**_word("condition", CONDITION_IDS, tr("a condition")), **_tick("met")},
    SelfTests: {
        **_word("stage", _STAGES, tr("“found” or “after repair”")),
        **_each(read_bytes, "typed"),
        **_each(kept_moment, "read_at"),
    },
    SelfTest: {
        **_word("stage", _STAGES, tr("“found” or “after repair”")),
        **_word("monitor", MONITOR_IDS, tr("one of the car's own tests")),
        **_word("state", tuple(SelfTestState), tr("“complete”, “not run” or “not fitted”")),
    },
    ProofStep: {
        **_word("step", STEP_IDS, tr("a step of the proof")),
        **_each(kept_moment, "done_at"),
    },
    CaughtHere: _each(kept_moment, "caught_at"),
    ReturnLink: {
        tr("what was judged"): Look((), link_kept),
        **_word("cause_class", _CAUSE_IDS, tr("a cause of a return")),
    },
    KindWindow: {tr("the promise"): Look((), kept_kind_window)},
    CustomerAsked: {
        **_each(kept_day, "asked_on"),
        **_word("answer", tuple(Answer), tr("a customer's answer")),
        **_word("source", tuple(HeardBy), tr("“told” or “paper”")),
        **_word("judgement", tuple(Judgement), tr("a judgement")),
        **_word("cause_class", _CAUSE_IDS, tr("a cause of a return")),
        **_each(kept_moment, "judged_at"),
        **_each(kept_danger, "dangerous"),
        **_odometer("odometer_told"),
    },
    MoneyOwed: {
        **_word("what", tuple(What), tr("“core” or “claim”")),
        **_word("state", tuple(State), tr("“open”, “asked”, “paid” or “refused”")),
        **_each(kept_cents, "amount_cents"),
        **_each(kept_day, "since", "ended_on"),
        tr("ended_on and since"): Look(("ended_on", "since"), _ended_after),
    },
}

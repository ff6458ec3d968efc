"""Many visits judged at once are judged as one by one; and a changed job changes the list."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import astuple, replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from sqlalchemy import Connection

from desktop_app.commands.shop_place import new_place
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.actions import choose_system
from desktop_app.repair_jobs.stored import (
    Job,
    JobSymptom,
    TroubleCode,
    Vehicle,
    VehicleEvent,
    Visit,
)
from desktop_app.returns_watched import stored_returns
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.stored import CustomerAsked, ReturnLink
from desktop_app.returns_watched.stored_facts import read_facts
from desktop_app.returns_watched.stored_look import look_at
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.returns_watched.stored_recent import Period
from desktop_app.returns_watched.stored_returns import (
    read_promise,
    read_returns,
    read_returns_of_job,
    read_returns_of_vehicle,
    read_watch,
    returns_in,
)
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.figures import count_later_jobs
from desktop_app.weekly_report.stored_fates import read_fates
from tests.returns_watched.watch_one_by_one import since_then, watch_one_by_one
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle

START = date(2025, 1, 1)
VINS = (None, None, "1M8GDM9AXKP042788", "11111111111111111", "short")
# A day alone, and as imports keep it; two clocks of one moment; one that can't be held to another.
CLOCKS = (
    *("", "T12:00:00+00:00", "T16:30:00"),
    *("T08:00:00+00:00", "T10:00:00+00:00", "T15:00:00+00:00"),
    *("T16:30:00+00:00", "T16:30:00+01:00"),
)
ONE_DAY = (200, 201)  # on which several of the visits come

vehicles = st.tuples(st.sampled_from([None, "A", "B"]), st.sampled_from(VINS), st.booleans())
odometers = st.one_of(st.none(), st.integers(40_000, 46_000), st.sampled_from([5, 900_000]))
moments = st.sampled_from(CLOCKS)
jobs_made = st.fixed_dictionaries(
    {
        "car": st.integers(0, 4),
        "came": st.one_of(st.integers(0, 500), st.sampled_from(ONE_DAY)),
        "stays": st.one_of(st.none(), st.just(0), st.integers(0, 9)),
        "beside": st.sampled_from([False, False, False, True]),
        "clocks": st.tuples(moments, moments),
        "odometers": st.tuples(odometers, odometers, odometers),
        "source": st.sampled_from([None, None, "told"]),
        "system": st.sampled_from(["", "fuel", "brakes"]),
        "same": st.sampled_from([0, 0, 0, 1]),
        "symptom": st.sampled_from([None, "stalls", "surges"]),
        "code": st.sampled_from([None, None, "P0300", "P0302", "P0420"]),
        "kind": st.sampled_from([None, None, "", "alternator"]),
        "window": st.sampled_from(
            [(90, 3000, "first"), (30, 0, "first"), (0, 900, "first"), (60, 800, "both")]
        ),
    }
)
links = st.tuples(
    st.integers(0, 11),
    st.integers(0, 11),
    st.sampled_from(["same part", "same symptom", "unrelated", None]),
    st.sampled_from([0, 1]),
    st.sampled_from([None, "fitted-badly", "other-use"]),
)
events = st.tuples(
    st.integers(0, 4),
    st.sampled_from(["sold", "odometer replaced"]),
    st.integers(0, 500),
    st.sampled_from([None, 41_000]),
    st.sampled_from([None, 10]),
)
asked = st.tuples(
    st.integers(0, 11), st.integers(0, 520), st.sampled_from(["fine", "not reached", "car is gone"])
)
shops = st.fixed_dictionaries(
    {
        "vehicles": st.lists(vehicles, min_size=5, max_size=5),
        "jobs": st.lists(jobs_made, min_size=2, max_size=12),
        "links": st.lists(links, max_size=4, unique_by=lambda link: link[:2]),
        "events": st.lists(events, max_size=3),
        "asked": st.lists(asked, max_size=3),
    }
)


class _Undone(Exception):
    """Takes what one example has written back."""


@contextmanager
def _taken_back(record: ShopRecord) -> Iterator[Deed]:
    with suppress(_Undone), record.deed("Write an example") as deed:
        yield deed
        raise _Undone


@pytest.fixture(scope="module")
def sale_shop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[ShopRecord]:
    """A shop whose windows end with a sale; each example writes into it and is taken back."""
    folder: Path = tmp_path_factory.mktemp("many") / "shop"
    record = new_place(folder, lambda: datetime(2026, 11, 16, tzinfo=UTC))
    change_rule(record, "sale_ends_window", "yes")
    yield record
    record.close()


def _day(days: int) -> str:
    return (START + timedelta(days=days)).isoformat()


def _fill(deed: Deed, made: dict[str, Any]) -> None:
    cars = [
        deed.add(Vehicle, vin=vin, plate=plate, plate_key=plate, odometer_unit="km" if km else "mi")
        for plate, vin, km in made["vehicles"]
    ]
    jobs: list[int] = []
    visit = None
    for place, one in enumerate(made["jobs"]):
        visit = visit if visit and one["beside"] else _visit(deed, one, cars)
        jobs.append(_job(deed, place, one, visit))
    for earlier, later, said, same, cause in made["links"]:
        if max(earlier, later) < len(jobs) and earlier != later:
            pair = {"earlier_job_id": jobs[earlier], "later_job_id": jobs[later]}
            deed.add(ReturnLink, **pair, judgement=said, same_vehicle=same, cause_class=cause)
    for car, kind, on, before, after in made["events"]:
        readings = {"reading_before": before, "reading_after": after}
        deed.add(VehicleEvent, vehicle_id=cars[car], kind=kind, happened_on=_day(on), **readings)

    for place, on, answer in made["asked"]:
        if place < len(jobs):
            deed.add(CustomerAsked, job_id=jobs[place], asked_on=_day(on), answer=answer)


def _visit(deed: Deed, one: dict[str, Any], cars: list[int]) -> tuple[int, int]:
    """Write a visit; return its id and the day on which it began."""
    came, stays = one["came"], one["stays"]
    odometer_in, visit_out, _ = one["odometers"]
    visit = deed.add(
        Visit,
        vehicle_id=cars[one["car"]],
        came_at=_day(came) + one["clocks"][0],
        left_at=None if stays is None else _day(came + stays) + one["clocks"][1],
        odometer_in=odometer_in,
        odometer_out=visit_out,
        odometer_source=one["source"],
    )
    return visit, came


def _job(deed: Deed, place: int, one: dict[str, Any], visit: tuple[int, int]) -> int:
    stays, job_out = one["stays"], one["odometers"][2]
    left = None if stays is None else _day(visit[1] + stays) + one["clocks"][1]
    days, miles, rule = one["window"]
    made = deed.add(
        Job,
        number=f"J-{place * 7 % 12}",
        visit_id=visit[0],
        concern="told",
        cause="worn",
        correction="replaced",
        says_same=one["same"],
        system=one["system"],
        left_at=left,
        odometer_out=job_out,
        window_days=days,
        window_miles=miles,
        window_rule=rule,
    )
    if one["symptom"]:
        deed.add(JobSymptom, job_id=made, symptom=one["symptom"])
    if one["code"]:
        deed.add(TroubleCode, job_id=made, code=one["code"], kind="stored", stage="found")
    if one["kind"] is not None:
        deed.add(Pair, job_id=made, part_kind=one["kind"], position="left")
    return made


def _listed(rows: Iterable[ReturnRow]) -> list[tuple[str, int, str]]:
    """Return each row with the first one of the same visit, and as what it counts."""
    listed = sorted(rows, key=lambda row: row.key)
    visits = [row.visit for row in listed]
    first = [visits.index(visit) for visit in visits]
    return list(zip(map(repr, listed), first, count_later_jobs(listed), strict=True))


def _one_by_one(connection: Connection) -> tuple[ReturnRow, ...]:
    return read_returns_of_vehicle(connection, read_facts(connection, names=NAMES))


NAMES = {"stalls": "dies", "surges": "dies"}


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(shops, st.integers(0, 520))
def test_many_visits_are_judged_as_one_by_one(
    sale_shop: ShopRecord, made: dict[str, Any], today: int
) -> None:
    until = START + timedelta(days=today)
    with _taken_back(sale_shop) as deed:
        _fill(deed, made)
        connection = deed.connection
        assert _listed(read_returns(connection, names=NAMES)) == _listed(_one_by_one(connection))
        rows = read_returns_of_vehicle(connection, read_facts(connection, until=until, names=NAMES))
        counted = read_counted_jobs(connection, "system", until, names=NAMES)
        assert _ages(counted.back_after) == _soonest(rows, "is_comeback")
        assert _ages(counted.waits_after) == _soonest(rows, "waits")
        _same_watch(read_watch(connection, until), watch_one_by_one(connection, until))


@settings(max_examples=30, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(shops, st.integers(0, 500), st.integers(0, 120))
def test_a_period_is_judged_as_the_whole_record(
    sale_shop: ShopRecord, made: dict[str, Any], first: int, long: int
) -> None:
    since, until = START + timedelta(days=first), START + timedelta(days=first + long)
    with _taken_back(sale_shop) as deed:
        _fill(deed, made)
        connection = deed.connection
        facts = read_facts(connection, until=until, names=NAMES)
        rows = read_returns_of_vehicle(connection, facts)
        promise = read_promise(connection)
        look = look_at(connection, Period(since, until, promise.long.days), promise.long, NAMES)
        found = returns_in(connection, look.met, promise, (since, until), NAMES)
        assert _listed(found) == _listed(row for row in rows if row.came_on >= since)
        left = [j for j in facts.jobs if j.handed_over_on and j.handed_over_on >= since]
        ids = [facts.said[job.number].id for job in left]
        fates, met = read_fates(connection, look, ids), _met_by_job(found)
        became = fates.became(met)
        for row, job in enumerate(left):
            fate, known = fates.of(row), since_then(facts, job).known
            assert (fate.known_on, fate.miles_known) == (known or (None, None))
            assert became[row] == fate.became(met.get(ids[row], ()), until)


def _met_by_job(rows: Iterable[ReturnRow]) -> dict[int, tuple[ReturnRow, ...]]:
    met: dict[int, tuple[ReturnRow, ...]] = {}
    for row in rows:
        met[row.earlier_id] = (*met.get(row.earlier_id, ()), row)
    return met


def _same_watch(found: tuple[WatchedJob, ...], expected: tuple[WatchedJob, ...]) -> None:
    """Hold two watches against each other; sums of logarithms may differ in the last digits."""
    assert [replace(one, use=None) for one in found] == [replace(o, use=None) for o in expected]
    for one, other in zip(found, expected, strict=True):
        assert one.use is not None
        assert other.use is not None
        assert astuple(one.use) == pytest.approx(astuple(other.use))


def _ages(column: Any) -> list[int]:
    return sorted(int(age) for age in column if age >= 0)


def _soonest(rows: tuple[Any, ...], what: str) -> list[int]:
    first: dict[int, int] = {}
    for row in rows:
        if getattr(row, what):
            first[row.earlier_id] = min(row.candidate.days, first.get(row.earlier_id, 10**9))
    return sorted(first.values())


def test_a_period_with_many_vehicles_gives_what_few_give(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    a_week_of_returns(shop)
    period = date(2026, 10, 1), date(2026, 11, 11)
    with shop.reading() as connection:
        few = read_returns(connection, *period)
        monkeypatch.setattr(stored_returns, "FEW_VEHICLES", 0)
        many = read_returns(connection, *period)
    assert few == many
    assert [(row.later, row.earlier) for row in few] == [
        ("J-131", "J-104"),
        ("J-160", "J-104"),
        ("J-160", "J-131"),
    ]


def test_a_shop_without_jobs_has_no_returns(shop: ShopRecord) -> None:
    with shop.reading() as connection:
        assert read_returns(connection) == ()
        assert len(read_counted_jobs(connection, "system", START).systems) == 0


def test_a_job_that_is_changed_or_comes_late_changes_the_list_at_once(shop: ShopRecord) -> None:
    car = vehicle(shop)
    later = job(shop, car, "J-9", "2026-06-01", system="fuel")
    with shop.reading() as connection:
        assert read_returns(connection) == ()
    old = job(shop, car, "J-1", "2026-05-01", "2026-05-02", system="brakes")
    with shop.reading() as connection:
        assert read_returns(connection) == read_returns_of_job(connection, later) == ()
    choose_system(shop, old, "fuel")
    with shop.reading() as connection:
        [found] = read_returns(connection)
        assert (found.earlier, found.later) == ("J-1", "J-9")
        assert read_returns_of_job(connection, later) == (found,)
    between = job(shop, car, "J-5", "2026-05-10", "2026-05-11", system="fuel")
    judge_return(shop, old, between, "same part")
    judge_return(shop, between, later, "same part")
    with shop.reading() as connection:
        chain = [row.candidate for row in read_returns_of_job(connection, later)]
    assert [(one.root, one.in_chain, one.waits) for one in chain] == [
        ("J-1", True, False),
        ("J-1", True, False),
    ]
    choose_system(shop, old, "brakes")
    with shop.reading() as connection:
        left = {(row.earlier, row.later) for row in read_returns(connection)}
    assert left == {("J-1", "J-5"), ("J-5", "J-9")}  # what was judged stays listed


def test_a_return_of_a_return_counts_once_against_the_first_job(shop: ShopRecord) -> None:
    car = vehicle(shop)
    kept = [
        job(shop, car, f"J-{n}", f"2026-0{n}-01", f"2026-0{n}-02", system="fuel") for n in (3, 4, 5)
    ]
    judge_return(shop, kept[0], kept[1], "same part")
    judge_return(shop, kept[1], kept[2], "same part")
    with shop.reading() as connection:
        counted = read_counted_jobs(connection, "system", date(2026, 11, 1))
    assert counted.back_after.tolist() == [30, 29, -1]
    assert counted.waits_after.tolist() == [-1, -1, -1]

"""A year of jobs in a record, in which nearly every fate of a job is met, for tests of the book."""

from __future__ import annotations

from datetime import date, timedelta
from random import Random
from typing import Any

from desktop_app.repair_jobs.stored import VehicleEvent
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import job, judge_return, vehicle

MONDAY, SUNDAY = date(2026, 11, 9), date(2026, 11, 15)
FIRST = date(2025, 11, 17)  # 52 weeks end with the week


def a_year(record: ShopRecord) -> None:
    """Fill a year with 60 jobs, each of a car of its own; every third car comes once more.

    Windows end by days alone, so that a data frame can tell what lies in them. A sale ends them.
    """
    change_rule(record, "sale_ends_window", "yes")
    _further_fates(record)
    _fixed_at_once(record)
    chance = Random(46)
    judged = [*Judgement, None]
    plain: dict[str, Any] = {"window_miles": 0}
    for number in range(60):
        out = SUNDAY - timedelta(days=chance.randrange(300) if number > 4 else number)
        car = vehicle(record, plate=f"TH {number:03d}")
        hours = {"hours": number / 4, "unbilled_hours": number % 3 / 2, "price_cents": 9_950}
        caught = {"cause_found": 0} if number % 11 == 0 else {"proof_level": number % 5}
        first = job(record, car, f"J-{number}", *[out.isoformat()] * 2, **plain, **hours, **caught)
        again = out + timedelta(days=chance.randrange(1, 120))
        if number % 3 or again > SUNDAY:
            continue
        more = {"proof_level": 0, **plain}
        second = job(record, car, f"J-{number + 500}", *[again.isoformat()] * 2, **more)
        verdict = judged[number // 3 % len(judged)]
        if verdict is not None:
            causes = ("fitted-badly", "new", "part-died-early")
            cause = causes[number // 3 % 3]
            judge_return(record, first, second, verdict.value, cause_class=cause, cost_cents=4_210)
    for days, verdict in ((3, "same part"), (40, "same part"), (20, None)):
        out, came = SUNDAY - timedelta(days=days + 2), SUNDAY - timedelta(days=2)
        car = vehicle(record, plate=f"TW {days}")
        first = job(record, car, f"J-9{days}", *[out.isoformat()] * 2, **plain)
        second = job(record, car, f"J-8{days}", *[came.isoformat()] * 2, **plain)
        if verdict is not None:
            judge_return(record, first, second, verdict, cost_cents=10_001)


def _further_fates(record: ShopRecord) -> None:
    """Add cars that were sold, told of, gone, or came late, each told or seen early and late."""
    plain: dict[str, Any] = {"window_miles": 0, "proof_level": 0}
    for number in range(16):
        out = SUNDAY - timedelta(days=200 + number)
        car = vehicle(record, plate=f"TF {number}")
        first = job(record, car, f"F-{number}", *[out.isoformat()] * 2, **plain)
        on = out + timedelta(days=20 if number < 8 else 100)  # inside the window, or after it
        fate = number % 4
        if fate == 0:
            with record.deed("Sold") as deed:
                deed.add(VehicleEvent, vehicle_id=car, kind="sold", happened_on=on.isoformat())
        elif fate == 1:
            note_answer(record, first, "same trouble", on=on)
        elif fate == 2:
            note_answer(record, first, "car is gone", on=on)
        if fate == 3 or number in (4, 12):  # 4 and 12 come after their sale
            came = (on + timedelta(days=10)).isoformat()
            second = job(record, car, f"G-{number}", came, came, **plain)
            judge_return(record, first, second, "same symptom", cost_cents=500)


def _fixed_at_once(record: ShopRecord) -> None:
    """Add enough jobs of one symptom that the share fixed the first time can be told."""
    for number in range(30):
        out = (SUNDAY - timedelta(days=120 + number)).isoformat()
        car = vehicle(record, plate=f"TQ {number}")
        job(record, car, f"Q-{number}", out, out, symptoms=["misfire"], window_miles=0)

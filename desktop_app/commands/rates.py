"""`rates`: how often jobs came back, by what the jobs have in common."""

from __future__ import annotations

from desktop_app.commands.days_said import day_said, span_said
from desktop_app.commands.opened_shop import shop_of, symptom_names
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import kinds_of
from desktop_app.repair_jobs.systems import SYSTEMS


def rates(asked: Asked) -> Outcome:
    """Say the comeback rate of each group with its interval, and how the returns came in time."""
    from desktop_app.returns_watched.honest_numbers.rates import rates_of
    from desktop_app.returns_watched.kind_windows import promise_of
    from desktop_app.returns_watched.stored_promise import read_promise
    from desktop_app.returns_watched.stored_rates import read_counted_jobs
    from desktop_app.shop_record.house_rules import read_rules

    since, until = span_said(asked)
    said = day_said("--today", asked.today)
    with shop_of(asked) as record, record.reading() as connection:
        kinds = kinds_of(record, connection) if asked.by in ("verdict", "part-kind") else None
        today = said or record.clock().date()
        names = symptom_names()
        jobs = read_counted_jobs(connection, asked.by, today, since, until, names, kinds)
        window, rules = read_promise(connection).main, read_rules(connection)
    promise = promise_of(
        rules.window_days, rules.window_months, rules.window_miles, rules.window_rule
    )
    found = rates_of(jobs, asked.by, window, today, promise)
    words = {
        "part-kind": {kind.id: kind.name for kind in (kinds or {}).values()},
        "system": {system.id: system.name for system in SYSTEMS},
    }
    return Outcome(found.as_json(), found.lines(words.get(asked.by, {})))

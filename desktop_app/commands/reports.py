"""`week` and `sheet`: the weekly workbook and the comparison sheet, written to files."""

from __future__ import annotations

import sys
from pathlib import Path

from desktop_app.commands.opened_shop import shop_of, symptom_names
from desktop_app.commands.outcome import Asked, Outcome
from desktop_app.commands.shop_place import shelf_of
from desktop_app.language import tr


def week(asked: Asked) -> Outcome:
    """Write the workbook of a week and say its figures."""
    from desktop_app.weekly_report.actions import write_week
    from desktop_app.weekly_report.read_first import read_first
    from desktop_app.weekly_report.week import read_week

    wanted = read_week(asked.week)
    to = Path(asked.out)
    with shop_of(asked) as record:
        shelf = shelf_of(record)
        steps = write_week(record, wanted, to, symptom_names(), shelf.kinds)
        while True:
            try:
                step = next(steps)
                if sys.stderr.isatty():
                    print(step.words, file=sys.stderr)
            except StopIteration as end:
                figures = end.value
                break
    said = {"out": str(to), **figures.as_json()}
    return Outcome(said, (tr("Wrote {file}.", file=to), *read_first(figures)))


def sheet(asked: Asked) -> Outcome:
    """Write the comparison sheet of a job."""
    from desktop_app.parts_compared.sheet import write_sheet
    from desktop_app.repair_jobs.stored_reading import job_by_number

    to = Path(asked.out)
    with shop_of(asked) as record:
        with record.reading() as connection:
            job = job_by_number(connection, asked.job)
        shelf = shelf_of(record)
        write_sheet(record, job, shelf.kinds, to)
    left_out = tuple(trouble.sentence() for trouble in shelf.troubles)
    return Outcome({"out": str(to)}, (tr("Wrote {file}.", file=to), *left_out))

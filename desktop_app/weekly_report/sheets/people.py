"""Sheet 10, the owner's copy: who did the work, against what such work lets expect."""

from __future__ import annotations

from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, GroupRate
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.group_table import groups_of
from desktop_app.weekly_report.sheets.sheet_words import (
    FEW_JOBS,
    about,
    columns,
    plural,
    year_words,
)
from desktop_app.weekly_report.year_behind import JobDone

_FAIR = (
    "Who gets the hardest cars has the most comebacks. Read seen less expected, with its bounds, "
    "not the rate. 0 within the bounds means: no sign of a difference."
)
_OWNER = "For the owner alone: names do not belong on a wall."
_NAMELESS = "Names are left out. The house rule “names in book” puts them in, for the owner alone."


def people_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each person with enough settled jobs; the others are only counted."""
    jobs = figures.year.counted
    groups = groups_of(jobs, "technician", lambda job: (job.technician or NOT_SAID,))
    told = [group for group in groups if group.settled >= FEW_JOBS]
    hidden = len(groups) - len(told)
    notes = [_FAIR, _OWNER if figures.year.names_shown else _NAMELESS] if told else []
    if hidden:
        notes.append(
            f"{plural(hidden, 'person', 'people')} with fewer than {FEW_JOBS} settled jobs "
            f"{'is' if hidden == 1 else 'are'} not listed: nothing can be said of so few."
        )
    table = Table(
        "People",
        columns(
            ("Who", "words"),
            ("Jobs", "count"),
            ("Settled", "count"),
            ("Now and then", "share"),
            ("Seen", "count"),
            ("Expected", "number"),
            ("Seen less expected", "number"),
            ("Low", "number"),
            ("High", "number"),
            ("Note", "words"),
        ),
        tuple(
            (group.name if figures.year.names_shown else _letter(place), *_row(jobs, group))
            for place, group in enumerate(told)
        ),
        notes=tuple(notes),
        nothing=f"Nobody has {FEW_JOBS} settled jobs in this year yet.",
        behind=tuple(tuple(job.number for job in _of(jobs, group.name)) for group in told),
    )
    return Sheet("People", about(figures, len(table.rows), year_words(figures)), tables=(table,))


def _row(jobs: tuple[JobDone, ...], group: GroupRate) -> tuple[Cell, ...]:
    own = [job for job in _of(jobs, group.name) if job.settled]
    hard = sum(job.now_and_then for job in own) / len(own)
    expected, against = group.expected, group.against
    apart: tuple[Cell, ...] = (None, None, None)
    if expected is not None:
        apart = (round(group.comebacks - expected, 2), None, None)
        if against is not None:
            bounds = (round((end - 1) * expected, 2) for end in (against.low, against.high))
            apart = (apart[0], *bounds)
    return (
        group.jobs,
        group.settled,
        hard,
        group.comebacks,
        None if expected is None else round(expected, 2),
        *apart,
        "stands out" if group.stands_out else "",
    )


def _letter(place: int) -> str:
    return f"{chr(65 + place % 26)}{place // 26 or ''}"


def _of(jobs: tuple[JobDone, ...], name: str) -> tuple[JobDone, ...]:
    return tuple(job for job in jobs if (job.technician or NOT_SAID) == name)

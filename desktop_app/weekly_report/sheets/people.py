"""Sheet 10, the owner's copy: who did the work, against what such work lets expect."""

from __future__ import annotations

from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    GroupRate,
)
from desktop_app.returns_watched.honest_numbers.many_compared import caution
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheets.group_table import Groups, held_against
from desktop_app.weekly_report.sheets.sheet_words import (
    NAMELESS,
    about,
    columns,
    plural,
    year_words,
)

_FAIR = (
    "Who gets the hardest cars has the most comebacks: read Comebacks beside what such work lets "
    "expect, not beside the neighbour. Fewest and Most by luck: how many luck alone makes of that, "
    "19 times of 20; between the two nobody is better or worse. Above expected: below 0 is fewer. "
    "Likely rate: once all are weighed."
)
_INTERMITTENT = "Intermittent: the share of settled jobs whose fault did not come every time."
_WHO = (
    "Who: the technician of the job. Who wrote it up, searched, refitted or proved it is not kept "
    "apart."
)
_OWNER = "For the owner alone: names do not belong on a wall."


def people_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each person with enough settled jobs; the others are only counted."""
    groups = Groups(figures.year, "technician", lambda job: (job.technician,))
    told = [group for group in groups.rates if group.settled >= FEW_JOBS]
    hidden = len(groups.rates) - len(told)
    notes: list[str] = []
    if told:
        notes = [
            _FAIR,
            _WHO,
            *held_against(told),
            _INTERMITTENT,
            _OWNER if figures.year.names_shown else NAMELESS,
        ]
        warning = caution(groups.compared)
        notes += [] if warning is None else [f"{warning} “Read it as” allows for that."]
    if hidden:
        notes.append(
            f"{plural(hidden, 'person', 'people')} with fewer than {FEW_JOBS} settled jobs "
            f"{'is' if hidden == 1 else 'are'} not listed: nothing can be said of so few."
        )
    table = Table(
        "People",
        columns(
            ("Who", "words"),
            ("Read it as", "words"),
            ("Settled", "count"),
            ("Not settled", "count"),
            ("Intermittent", "share"),
            ("Comebacks", "count"),
            ("Expected", "number"),
            ("Above expected", "number"),
            ("Fewest by luck", "count"),
            ("Most by luck", "count"),
            ("Likely rate", "share"),
        ),
        tuple(
            (group.name if figures.year.names_shown else _letter(place), *_row(groups, group))
            for place, group in enumerate(told)
        ),
        notes=tuple(notes),
        nothing=f"Nobody has {FEW_JOBS} settled jobs in this year yet.",
        behind=tuple(groups.numbers(group.name) for group in told),
        behind_of=groups.behind_of(told),
    )
    return Sheet("People", about(figures, len(table.rows), year_words(figures)), tables=(table,))


def _row(groups: Groups, group: GroupRate) -> tuple[Cell, ...]:
    own = [job for job in groups.jobs(group.name) if job.settled]
    expected = None if group.luck is None else group.expected
    fewest, most = group.luck if group.luck is not None else (None, None)
    return (
        group.read_as,
        group.settled,
        group.jobs - group.settled,
        sum(job.now_and_then for job in own) / len(own),
        group.comebacks,
        None if expected is None else round(expected, 1),
        None if expected is None else round(group.comebacks - expected, 1),
        fewest,
        most,
        None if group.note or group.drawn_in is None else group.drawn_in.mean,
    )


def _letter(place: int) -> str:
    return f"{chr(65 + place % 26)}{place // 26 or ''}"

"""Sheet 10, the owner's copy: who did which part, against what such work lets expect."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.repair_jobs.who_did_what import TECHNICIANS
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    NOT_SAID,
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
from desktop_app.weekly_report.year_behind import JobDone

_FAIR = (
    "Who gets the hardest cars has the most comebacks: read Comebacks beside what such work lets "
    "expect, not beside the neighbour. Fewest and Most by luck: how many luck alone makes of that, "
    "19 times of 20; between the two nobody is better or worse. Above expected: below 0 is fewer. "
    "Likely rate: once all are weighed."
)
_INTERMITTENT = "Intermittent: the share of settled jobs whose fault did not come every time."
_WHO = (
    "A row is a person and a part that they played. Wrote up, searched, refitted and proved: the "
    "jobs of another technician that name them for it. Technician: their jobs in which nobody else "
    "is named for at least one of searched, refitted and proved. A job counts in every row that it "
    "names, so the rows share jobs: they don't add up."
)
_TECHNICIAN, _BETWEEN = "technician", " · "
_OWNER = "For the owner alone: names do not belong on a wall."


def people_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each person and part played with enough settled jobs.

    The others are only counted.
    """
    groups = Groups(figures.year, "technician", parts_played)
    told = [group for group in groups.rates if group.settled >= FEW_JOBS]
    hidden = len(groups.rates) - len(told)
    people = dict.fromkeys(_apart(group)[0] for group in told if group.name != NOT_SAID)
    letters = {person: _letter(place) for place, person in enumerate(people)}
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
            f"{plural(hidden, 'row')} with fewer than {FEW_JOBS} settled jobs "
            f"{'is' if hidden == 1 else 'are'} not listed: nothing can be said of so few."
        )
    table = Table(
        "People",
        columns(
            ("Who", "words"),
            ("Part played", "words"),
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
        tuple((*_who(figures, group, letters), *_row(groups, group)) for group in told),
        notes=tuple(notes),
        nothing=f"Nobody has {FEW_JOBS} settled jobs in one part played in this year yet.",
        behind=tuple(groups.numbers(group.name) for group in told),
        behind_of=groups.behind_of(told),
    )
    return Sheet("People", about(figures, len(table.rows), year_words(figures)), tables=(table,))


def parts_played(job: JobDone) -> tuple[str, ...]:
    """Name who did what in a job: each person named for a part, and the technician of the rest.

    A part that the technician did too makes no row beside the technician's own.
    """
    others = [(did, person) for did, person in job.named if person != job.technician]
    named = tuple(f"{person}{_BETWEEN}{did}" for did, person in others)
    if {did for did, _ in others}.issuperset(TECHNICIANS):
        return named
    return (*named, f"{job.technician}{_BETWEEN}{_TECHNICIAN}" if job.technician else "")


def _apart(group: GroupRate) -> tuple[str, str]:
    """Return the person and the part played of a row."""
    person, between, part = group.name.rpartition(_BETWEEN)
    return (person, part) if between else (group.name, _TECHNICIAN)


def _who(figures: WeekFigures, group: GroupRate, letters: Mapping[str, str]) -> tuple[str, str]:
    person, part = _apart(group)
    return (person if figures.year.names_shown else letters.get(person, person), part)


def _row(groups: Groups, group: GroupRate) -> tuple[Cell, ...]:
    own = [job for job in groups.jobs(group.name) if job.settled]
    expected = None if group.luck_told is None else group.expected
    fewest, most = group.luck_told or (None, None)
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

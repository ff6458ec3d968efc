"""Sheet 10, the owner's copy: who did which part, against what such work lets expect."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from desktop_app.language import marked, tr
from desktop_app.repair_jobs.who_did_what import TECHNICIANS
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    NOT_SAID,
    GroupRate,
)
from desktop_app.returns_watched.honest_numbers.many_compared import caution
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import COMEBACKS, NOT_SETTLED, SETTLED
from desktop_app.weekly_report.sheet_form import Cell, Sheet, Table
from desktop_app.weekly_report.sheet_names import PEOPLE
from desktop_app.weekly_report.sheets.group_table import Groups, held_against
from desktop_app.weekly_report.sheets.sheet_words import (
    NAMELESS,
    about,
    columns,
    year_words,
)
from desktop_app.weekly_report.year_behind import JobDone

_FAIR = tr(
    "Who gets the hardest cars has the most comebacks: read Comebacks beside what such "
    "work lets expect, not beside the neighbour. Fewest and Most by luck: how many "
    "luck alone makes of that, 19 times of 20; between the two nobody is better or "
    "worse. Above expected: below 0 is fewer. Likely rate: once all are weighed."
)
_INTERMITTENT = tr("Intermittent: the share of settled jobs whose fault did not come every time.")
_WHO = tr(
    "A row is a person and a part that they played. Wrote up, searched, refitted and "
    "proved: the jobs of another technician that name them for it. Technician: their "
    "jobs in which nobody else is named for at least one of searched, refitted and "
    "proved. A job counts in every row that it names, so the rows share jobs: they "
    "don't add up."
)
_TECHNICIAN, _BETWEEN = marked("technician"), " · "
_OWNER = tr("For the owner alone: names do not belong on a wall.")


def people_sheet(figures: WeekFigures) -> Sheet:
    """Return one row for each person and part played with enough settled jobs.

    The others are only counted.
    """
    groups = Groups(figures.year, "technician", parts_played)
    told = [group for group in groups.rates if group.settled >= FEW_JOBS]
    people = dict.fromkeys(_apart(group)[0] for group in told if group.name != NOT_SAID)
    letters = {person: _letter(place) for place, person in enumerate(people)}
    table = Table(
        "People",
        columns(
            (tr("Who"), "words"),
            (tr("Part played"), "words"),
            (tr("Read it as"), "words"),
            (SETTLED, "count"),
            (NOT_SETTLED, "count"),
            (tr("Intermittent"), "share"),
            (COMEBACKS, "count"),
            (tr("Expected"), "number"),
            (tr("Above expected"), "number"),
            (tr("Fewest by luck"), "count"),
            (tr("Most by luck"), "count"),
            (tr("Likely rate"), "share"),
        ),
        tuple((*_who(figures, group, letters), *_row(groups, group)) for group in told),
        notes=tuple(_notes(figures, groups, told)),
        nothing=tr(
            "Nobody has {few_jobs} settled jobs in one part played in this year yet.",
            few_jobs=FEW_JOBS,
        ),
        behind=tuple(groups.numbers(group.name) for group in told),
        behind_of=groups.behind_of(told),
    )
    return Sheet(PEOPLE, about(figures, len(table.rows), year_words(figures)), tables=(table,))


def _notes(figures: WeekFigures, groups: Groups, told: Sequence[GroupRate]) -> Iterator[str]:
    if told:
        yield from (_FAIR, _WHO, *held_against(told), _INTERMITTENT)
        yield _OWNER if figures.year.names_shown else NAMELESS
        warning = caution(groups.compared)
        if warning is not None:
            yield tr("{warning} “Read it as” allows for that.", warning=warning)
    hidden = len(groups.rates) - len(told)
    if hidden == 1:
        yield tr(
            "1 row with fewer than {few_jobs} settled jobs is not listed: "
            "nothing can be said of so few.",
            few_jobs=FEW_JOBS,
        )
    elif hidden:
        yield tr(
            "{rows:,} rows with fewer than {few_jobs} settled jobs are not listed: "
            "nothing can be said of so few.",
            rows=hidden,
            few_jobs=FEW_JOBS,
        )


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
    return (person if figures.year.names_shown else letters.get(person, person), tr(part))


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

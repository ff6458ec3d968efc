"""Sheet 4: the windows that are open, and how those of the year ended."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import COUNTED, DAYS_LEFT, JOB, STATE
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheet_names import WINDOWS
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    columns,
    distance,
    unit_words,
    year_words,
)
from desktop_app.weekly_report.year_behind import JobDone

_STATES = (
    ("open", tr("Its window is not over. Never counted as a success.")),
    (
        "maybe",
        tr(
            "A visit of its car, or the same trouble told, waits for a judgement: neither "
            "good nor bad."
        ),
    ),
    ("came back", tr("A person judged a visit of its car, or what was told, a comeback.")),
    ("came back, not ours", tr("It came back for a reason that is not ours; it is in no rate.")),
    (
        "came back, cannot tell",
        tr(
            "A person judged a visit of its car, or what was told, and nobody can tell "
            "what it was: neither good nor bad, and in no rate."
        ),
    ),
    (
        "came back after the window",
        tr(
            "The car came with a reason, or its customer told of the same trouble, after "
            "the window's end: no comeback in the rate, and not the same as all well."
        ),
    ),
    ("seen fine", tr("The car was seen, or its customer asked, after the window's end.")),
    ("nothing heard", tr("The window ended and nobody knows how the car is.")),
    ("lost sight", tr("The car was sold or is gone; nobody can say any more.")),
)


_JOBS = Column(tr("Jobs"), "count", f"=COUNTIFS(Raw[{STATE}],[@{STATE}],Raw[{COUNTED}],1)")
_RING = tr(
    "What probably ends first stands on top. “ask”: the call is due; the numbers of "
    "telephones are in the window, on Under Watch. Whom you ask must not depend on the "
    "answer you hope for."
)


def windows_sheet(figures: WeekFigures) -> Sheet:
    """Return the open windows, what ends soonest first, and what became of the year's jobs."""
    watch = _watch(figures)
    states = _states(figures)
    line = about(figures, len(watch.rows), year_words(figures))
    return Sheet(WINDOWS, line, tables=(states, watch))


def _states(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    rows: list[tuple[Cell, ...]] = []
    behind = []
    for state, means in _STATES:
        in_it = [job.number for job in jobs if job.state == state]
        rows.append((tr(state), len(in_it), means))
        behind.append(tuple(in_it))
    named = dict(zip((state for state, _ in _STATES), map(len, behind), strict=True))
    unheard = named["nothing heard"]
    quiet = named["seen fine"] + unheard
    said: tuple[str, ...] = ()
    if quiet:
        said = (
            tr(
                "Of {jobs} whose window ended quietly, nothing was heard of {unheard:,}: "
                "no news is not the same as good news.",
                jobs=jobs_counted(quiet),
                unheard=unheard,
            ),
        )
    return Table(
        "HowWindowsStand",
        columns((STATE, "words"), _JOBS, (tr("What it means"), "long words")),
        tuple(rows),
        title=tr("What became of the year's jobs"),
        notes=said,
        behind=tuple(behind),
    )


def _watch(figures: WeekFigures) -> Table:
    unit = unit_words(figures)
    done = {job.number: job for job in figures.year.jobs}
    rows: list[tuple[Cell, ...]] = []
    for job in figures.on_watch:
        days = job.days_left
        rows.append(
            (
                job.job,
                job.vehicle,
                job.concern,
                job.left_on,
                job.days_gone,
                tr("no limit in time") if days is None else days,
                _miles_left(figures, job),
                _read_on(job),
                job.share_used,
                tr("not known") if job.expected_close is None else job.expected_close,
                job.expected_close_by and tr(job.expected_close_by),
                _well(done.get(job.job)),
                figures.calls_due.get(job.job),
                _state(figures, job),
                _this_week(figures, job),
            )
        )
    return Table(
        "UnderWatch",
        columns(
            (JOB, "words"),
            (tr("Vehicle"), "long words"),
            (tr("Concern"), "long words"),
            (tr("Left on"), "day"),
            (tr("Days so far"), "count"),
            (DAYS_LEFT, "count"),
            (tr("{unit} left (last read)", unit=unit.capitalize()), "count"),
            (tr("Read on"), "day"),
            (tr("Window used"), "share"),
            (tr("Expected end"), "day"),
            (tr("Ends by"), "words"),
            (tr("Last known well"), "day"),
            (tr("Call due"), "day"),
            (STATE, "words"),
            (tr("This week"), "words"),
        ),
        tuple(rows),
        title=tr("Under watch"),
        notes=(_RING,) if rows else (),
        nothing=tr("No window was open."),
    )


def _state(figures: WeekFigures, job: WatchedJob) -> str:
    if job.came_back:
        return tr("came back")
    if job.waits:
        return tr("to be judged")
    if job.expected_close is None or job.expected_close >= figures.as_of:
        return tr("open")
    if job.expected_close_by == "time":
        return tr("may have ended by time")
    return tr("may have ended by distance")


def _miles_left(figures: WeekFigures, job: WatchedJob) -> Cell:
    """Return the distance that is left by the last reading since; words where there is none."""
    if not job.window.miles:
        return tr("no such limit")
    if job.not_read_since:
        return tr("not read")
    if job.miles_left is None:
        return tr("not known")
    return distance(figures, job.miles_left)


def _this_week(figures: WeekFigures, job: WatchedJob) -> str:
    """Say whether its window probably ends within a week, and whether its call is due."""
    end, due = job.expected_close, figures.calls_due.get(job.job)
    is_due = due is not None and due <= figures.as_of
    if end is None or (end - figures.as_of).days > ENDS_SOON:
        return tr("ask") if is_due else ""
    and_ask = tr(": ask") if is_due else ""
    if end < figures.as_of:
        return tr("may have ended{and_ask}", and_ask=and_ask)
    return tr("ends{and_ask}", and_ask=and_ask)


def _read_on(job: WatchedJob) -> Cell:
    """Return the day of the reading by which that distance is left."""
    return None if job.miles_left is None else job.read_on


def _well(job: JobDone | None) -> Cell:
    return None if job is None else job.well_until

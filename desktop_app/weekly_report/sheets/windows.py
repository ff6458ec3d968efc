"""Sheet 4: the windows that are open, and how those of the year ended."""

from __future__ import annotations

from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.watching import WatchedJob
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheets.sheet_words import (
    about,
    columns,
    distance,
    plural,
    unit_words,
    year_words,
)
from desktop_app.weekly_report.year_behind import JobDone

_STATES = (
    ("open", "Its window is not over. Never counted as a success."),
    (
        "maybe",
        "A visit of its car, or the same trouble told, waits for a judgement: "
        "neither good nor bad.",
    ),
    ("came back", "A person judged a visit of its car, or what was told, a comeback."),
    ("came back, not ours", "It came back for a reason that is not ours; it is in no rate."),
    (
        "came back, cannot tell",
        "A person judged a visit of its car, or what was told, and nobody can tell what it was: "
        "neither good nor bad, and in no rate.",
    ),
    (
        "came back after the window",
        "The car came with a reason, or its customer told of the same trouble, after the window's "
        "end: no comeback in the rate, and not the same as all well.",
    ),
    ("seen fine", "The car was seen, or its customer asked, after the window's end."),
    ("nothing heard", "The window ended and nobody knows how the car is."),
    ("lost sight", "The car was sold or is gone; nobody can say any more."),
)


_JOBS = Column("Jobs", "count", "=COUNTIFS(Raw[State],[@State],Raw[Counted],1)")
_RING = (
    "What probably ends first stands on top. “ask”: the call is due; the numbers of telephones are "
    "in the window, on Under Watch. Whom you ask must not depend on the answer you hope for."
)


def windows_sheet(figures: WeekFigures) -> Sheet:
    """Return the open windows, what ends soonest first, and what became of the year's jobs."""
    watch = _watch(figures)
    states = _states(figures)
    line = about(figures, len(watch.rows), year_words(figures))
    return Sheet("Windows", line, tables=(states, watch))


def _states(figures: WeekFigures) -> Table:
    jobs = figures.year.counted
    rows: list[tuple[Cell, ...]] = []
    behind = []
    for state, means in _STATES:
        in_it = [job.number for job in jobs if job.state == state]
        rows.append((state, len(in_it), means))
        behind.append(tuple(in_it))
    named = dict(zip((state for state, _ in _STATES), map(len, behind), strict=True))
    unheard = named["nothing heard"]
    quiet = named["seen fine"] + unheard
    said: tuple[str, ...] = ()
    if quiet:
        said = (
            f"Of {plural(quiet, 'job')} whose window ended quietly, nothing was heard of "
            f"{unheard:,}: no news is not the same as good news.",
        )
    return Table(
        "HowWindowsStand",
        columns(("State", "words"), _JOBS, ("What it means", "long words")),
        tuple(rows),
        title="What became of the year's jobs",
        notes=said,
        behind=tuple(behind),
    )


def _watch(figures: WeekFigures) -> Table:
    unit = unit_words(figures)
    done = {job.number: job for job in figures.year.jobs}
    rows: list[tuple[Cell, ...]] = []
    for job in figures.on_watch:
        days = job.days_left
        state = "came back" if job.came_back else "to be judged" if job.waits else "open"
        over = job.expected_close is not None and job.expected_close < figures.as_of
        if state == "open" and over:
            state = f"may have ended by {'time' if job.expected_close_by == 'time' else 'distance'}"
        rows.append(
            (
                job.job,
                job.vehicle,
                job.concern,
                job.left_on,
                job.days_gone,
                "no limit in time" if days is None else days,
                _miles_left(figures, job),
                _read_on(job),
                job.share_used,
                "not known" if job.expected_close is None else job.expected_close,
                job.expected_close_by,
                _well(done.get(job.job)),
                figures.calls_due.get(job.job),
                state,
                _this_week(figures, job),
            )
        )
    return Table(
        "UnderWatch",
        columns(
            ("Job", "words"),
            ("Vehicle", "long words"),
            ("Concern", "long words"),
            ("Left on", "day"),
            ("Days so far", "count"),
            ("Days left", "count"),
            (f"{unit.capitalize()} left (last read)", "count"),
            ("Read on", "day"),
            ("Window used", "share"),
            ("Expected end", "day"),
            ("Ends by", "words"),
            ("Last known well", "day"),
            ("Call due", "day"),
            ("State", "words"),
            ("This week", "words"),
        ),
        tuple(rows),
        title="Under watch",
        notes=(_RING,) if rows else (),
        nothing="No window was open.",
    )


def _miles_left(figures: WeekFigures, job: WatchedJob) -> Cell:
    """Return the distance that is left by the last reading since; words where there is none."""
    if not job.window.miles:
        return "no such limit"
    if job.not_read_since:
        return "not read"
    if job.miles_left is None:
        return "not known"
    return distance(figures, job.miles_left)


def _this_week(figures: WeekFigures, job: WatchedJob) -> str:
    """Say whether its window probably ends within a week, and whether its call is due."""
    end, due = job.expected_close, figures.calls_due.get(job.job)
    ends = ""
    if end is not None and (end - figures.as_of).days <= ENDS_SOON:
        ends = "ends" if end >= figures.as_of else "may have ended"
    ask = "ask" if due is not None and due <= figures.as_of else ""
    return ": ".join(filter(None, (ends, ask)))


def _read_on(job: WatchedJob) -> Cell:
    """Return the day of the reading by which that distance is left."""
    return None if job.miles_left is None else job.read_on


def _well(job: JobDone | None) -> Cell:
    return None if job is None else job.well_until

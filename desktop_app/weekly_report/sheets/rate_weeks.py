"""The weeks with their limits, and what they show."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.returns_watched.honest_numbers.few_a_week import TAIL
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.headers import (
    COMEBACKS,
    HIGH_LIMIT,
    LOW_LIMIT,
    OF_THOSE_UNDER_WATCH,
    UNDER_WATCH,
    WAITING,
    WEEK,
)
from desktop_app.weekly_report.sheet_form import Column, Table
from desktop_app.weekly_report.sheets.sheet_words import columns
from desktop_app.weekly_report.weekly_chart_of import weeks_charted


def noticed_table(figures: WeekFigures) -> Table:
    """Return a row for each week beyond luck and for a slow rise, with the jobs behind it."""
    noticed = weeks_charted(figures).noticed()
    return Table(
        "Noticed",
        columns(
            (tr("From week"), "words"),
            (tr("To week"), "words"),
            (COMEBACKS, "count"),
            (tr("What it shows"), "long words"),
        ),
        tuple((str(one.first), str(one.last), one.comebacks, one.words) for one in noticed),
        title=tr("What the weeks show"),
        nothing=tr("No week stands out, and no slow rise is seen."),
        behind=tuple(one.jobs for one in noticed),
    )


def so_far_table(figures: WeekFigures) -> Table | None:
    """Return the week that is not over, which no chart and no limit holds; None where all are."""
    charted = weeks_charted(figures)
    week = charted.so_far
    if week is None:
        return None
    return Table(
        "WeekSoFar",
        columns(
            (WEEK, "words"),
            (tr("Handed over"), "count"),
            (UNDER_WATCH, "count"),
            (COMEBACKS, "count"),
            (WAITING, "count"),
        ),
        ((str(week.week), week.left, charted.watched_so_far, week.comebacks, week.waiting),),
        title=tr("The week that is not over, so far"),
        notes=(tr("It is not in the chart: a part of a week cannot be held against whole ones."),),
        behind=(charted.back.get(week.week, ()),),
    )


def weeks_table(figures: WeekFigures) -> Table:
    """Return the comebacks of each week, with the limits that luck alone seldom passes."""
    charted = weeks_charted(figures)
    rows = tuple(
        (
            str(week.week),
            week.left,
            charted.watched[i],
            week.comebacks,
            week.waiting,
            charted.rate(i),
            *charted.bounds(i),
            round(charted.evidence(i), 1),
        )
        for i, week in enumerate(charted.weeks)
    )
    return Table(
        "Weeks",
        columns(
            (WEEK, "words"),
            (tr("Handed over"), "count"),
            (UNDER_WATCH, "count"),
            (COMEBACKS, "count"),
            (WAITING, "count"),
            Column(
                OF_THOSE_UNDER_WATCH,
                "share",
                f'=IF([@{UNDER_WATCH}]=0,"",[@{COMEBACKS}]/[@{UNDER_WATCH}])',
            ),
            (LOW_LIMIT, "share"),
            (HIGH_LIMIT, "share"),
            (tr("Slow rise"), "number"),
        ),
        rows,
        title=tr("By week in which the car came back"),
        notes=(
            tr(
                "Of those under watch: the week's comebacks per job under watch; it is "
                "small because most cars come in no given week, and it is not the rate of "
                "the year. Within the limits a week is like the others, however high or "
                "low it looks; luck alone passes either of them at most once in {weeks:.0f} "
                "weeks.",
                weeks=1 / TAIL,
            ),
            tr(
                "Counted jobs alone: under watch are here repairs with a cause and a "
                "correction; on Windows stands every job."
            ),
            tr(
                "Slow rise: the evidence that comebacks have doubled since some week "
                "before. Above {decision:.0f} it counts, and luck alone gets there about "
                "once in five years.",
                decision=charted.rise.decision,
            ),
        ),
        behind=tuple(charted.back.get(week.week, ()) for week in charted.weeks),
    )

"""Sheet 14: which causes grew, what the shop promised to do differently, and whether it helped."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from math import exp, lgamma, log, log1p

from desktop_app.language import tr
from desktop_app.returns_watched.judgement import return_cause
from desktop_app.weekly_report.before_the_year import Promised
from desktop_app.weekly_report.figures import WeekFigures, count_later_jobs
from desktop_app.weekly_report.headers import CAUSE, COUNTS, OF_JOB, RETURN, STATE, WEEKS_AGO
from desktop_app.weekly_report.sheet_form import Cell, Column, Sheet, Table
from desktop_app.weekly_report.sheet_names import CHANGES
from desktop_app.weekly_report.sheets.sheet_words import (
    NAMELESS,
    about,
    columns,
    plural,
    weeks_ago,
    year_words,
)
from desktop_app.weekly_report.year_behind import ReturnDone

SPAN_WEEKS = 13  # a quarter
NOT_SAID = tr("not said")
RARE = 0.01  # luck alone makes such a difference less often; common practice, no source
_SEVERAL = tr(
    "Clearly: luck alone makes such a difference less than once in a hundred times. "
    "Everything else may be luck. Two or three more or fewer never tell anything."
)
_GETS_BETTER = tr(
    "After a bad month things get better by themselves, and a car that comes back now "
    "may have left before the change. Fewer comebacks since are no proof that it "
    "helped."
)


def changes_sheet(figures: WeekFigures) -> Sheet:
    """Return the causes of two quarters, then one row for each promise, open ones first."""
    back = _comebacks(figures)
    causes, promises = _causes(figures, back), _promises(figures, back)
    line = about(figures, len(promises.rows), year_words(figures))
    return Sheet(CHANGES, line, tables=(causes, promises))


def _comebacks(figures: WeekFigures) -> tuple[ReturnDone, ...]:
    """Return the year's comebacks, each visit once."""
    returns = figures.year.returns
    counts = count_later_jobs([one.row for one in returns], figures.year.left_out)
    return tuple(one for one, what in zip(returns, counts, strict=True) if what == "comeback")


def _causes(figures: WeekFigures, back: Sequence[ReturnDone]) -> Table:
    now: dict[str, list[ReturnDone]] = {}
    before: dict[str, list[ReturnDone]] = {}
    for one in back:
        weeks = weeks_ago(figures, one.row.came_on)
        if weeks < 2 * SPAN_WEEKS:
            span = now if weeks < SPAN_WEEKS else before
            span.setdefault(one.row.cause_words or NOT_SAID, []).append(one)
    order = sorted(
        {*now, *before}, key=lambda cause: (-len(now.get(cause, ())), cause == NOT_SAID, cause)
    )
    rows = tuple(
        (cause, a := len(now.get(cause, ())), b := len(before.get(cause, ())), told_apart(b, a))
        for cause in order
    )
    said = _jobs_left(figures)
    return Table(
        "CausesThen",
        columns(
            (CAUSE, "long words"),
            _counted(tr("Last {span_weeks} weeks", span_weeks=SPAN_WEEKS), 0),
            _counted(tr("The {span_weeks} before", span_weeks=SPAN_WEEKS), SPAN_WEEKS),
            (tr("More or fewer"), "words"),
        ),
        rows,
        title=tr("Why cars came back, this quarter and the one before"),
        notes=(said, _SEVERAL) if rows else (said,),
        nothing=tr("No comeback in these {weeks} weeks.", weeks=2 * SPAN_WEEKS),
        behind=tuple(
            tuple(one.row.opens for one in (*now.get(cause, ()), *before.get(cause, ())))
            for cause in order
        ),
    )


def _counted(header: str, since: int) -> Column:
    """Return a column that counts a cause's comebacks among the returns on the sheet Raw."""
    of_it = f"Returns[{CAUSE}],[@{CAUSE}],Returns[{COUNTS}],1"
    ago = f"Returns[{WEEKS_AGO}]"
    weeks = f'{ago},">={since}",{ago},"<{since + SPAN_WEEKS}"'
    return Column(header, "count", f"=COUNTIFS({of_it},{weeks})")


def _jobs_left(figures: WeekFigures) -> str:
    middle = figures.week.moved(1 - SPAN_WEEKS).monday
    first = figures.week.moved(1 - 2 * SPAN_WEEKS).monday
    now = sum(job.left_on >= middle for job in figures.year.counted)
    before = sum(first <= job.left_on < middle for job in figures.year.counted)
    return tr(
        "{jobs} left in the last {span_weeks} weeks, {before:,} in the {span_weeks} "
        "before: with more work come more comebacks.",
        jobs=plural(now, tr("counted job"), tr("counted jobs")),
        span_weeks=SPAN_WEEKS,
        before=before,
    )


def told_apart(before: int, since: int, days: tuple[int, int] = (1, 1)) -> str:
    """Say whether two counts differ by more than luck makes over such times, before and since.

    The exact test of two Poisson counts: given their sum, each falls to either side as a coin does
    that is weighted by the times (J. Przyborowski and H. Wilenski, Biometrika 31 (1940) 313-323).
    """
    both, long = before + since, sum(days)
    chance = days[0] / long  # that one of them falls before
    fewer = sum(_just(k, both, chance) for k in range(before + 1))
    more = sum(_just(k, both, chance) for k in range(before, both + 1))
    if 2 * min(fewer, more) >= RARE:
        seldom = 2 * min(chance, 1 - chance) ** both
        return tr("too few to tell") if seldom >= RARE else tr("may be luck")
    return tr("clearly more") if since * days[0] > before * days[1] else tr("clearly fewer")


def _just(k: int, of: int, chance: float) -> float:
    """Return the probability of just k of a binomial count; the chance lies inside 0 and 1."""
    ways = lgamma(of + 1) - lgamma(k + 1) - lgamma(of - k + 1)
    return exp(ways + k * log(chance) + (of - k) * log1p(-chance))


def _promises(figures: WeekFigures, back: Sequence[ReturnDone]) -> Table:
    as_of, named = figures.as_of, figures.year.names_shown
    said = sorted(
        figures.year.promised(), key=lambda one: (not one.change.is_open(as_of), one.came_on)
    )
    rows = tuple(
        (
            one.change.words,
            *_before_and_since(figures, one, back),
            one.change.by if named else "",
            one.change.due,
            one.change.done_on,
            one.change.check_on,
            one.change.state(as_of),
            _cause_words(one) or NOT_SAID,
            one.later,
            one.earlier,
        )
        for one in said
    )
    return Table(
        "Changes",
        columns(
            (tr("What"), "long words"),
            (tr("Comebacks since"), "count"),
            (tr("Days since"), "count"),
            (tr("Comebacks before"), "count"),
            (tr("Days before"), "count"),
            (tr("More or fewer"), "words"),
            (tr("Who"), "words"),
            (tr("Due"), "day"),
            (tr("Done on"), "day"),
            (tr("Look again on"), "day"),
            (STATE, "long words"),
            (CAUSE, "words"),
            (RETURN, "words"),
            (OF_JOB, "words"),
        ),
        rows,
        title=tr("What was promised"),
        notes=(_BEFORE_SINCE, _GETS_BETTER, *(() if named else (NAMELESS,))) if rows else (),
        nothing=tr("No change was promised."),
    )


def _cause_words(one: Promised) -> str:
    cause = return_cause(one.cause_class or "")
    return "" if cause is None else cause.words


_BEFORE_SINCE = tr(
    "Comebacks since: those of the same cause in all the days since it was done. "
    "Before: those of as many days before it, or of fewer where the year of this book "
    "does not reach back so far; more or fewer is said for each day."
)


def _before_and_since(
    figures: WeekFigures, promise: Promised, back: Sequence[ReturnDone]
) -> tuple[Cell, ...]:
    """Count the comebacks of a promise's cause since it was done, and before, each with its days.

    The year behind does not reach back further than to its first day, so that the days before can
    be fewer than those since.
    """
    done, cause = promise.change.done_on, promise.cause_class
    if done is None or cause is None:
        return (None, None, None, None, tr("not done yet") if done is None else "")
    if done <= figures.year.first:
        return (None, None, None, None, tr("done before the year of this book"))
    days = (figures.as_of - done).days + 1
    days_before = min(days, (done - figures.year.first).days)
    same = [one.row.came_on for one in back if one.row.cause_class == cause]
    since = sum(done <= day for day in same)
    before = sum(done - timedelta(days=days_before) <= day < done for day in same)
    return (since, days, before, days_before, told_apart(before, since, (days_before, days)))

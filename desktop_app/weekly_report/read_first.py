"""The sentences at the front of the week's report: what it covers, the counts, how to read it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import timedelta
from typing import NamedTuple

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS
from desktop_app.returns_watched.promise_typed import promise_in_words
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.waiting import LONG_WAIT_DAYS
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.cost_once import costs_unwritten
from desktop_app.weekly_report.figures import CountsAs, WeekFigures, count_later_jobs
from desktop_app.weekly_report.sheets.definition_words import edition
from desktop_app.weekly_report.sheets.kept_out import why_kept_out
from desktop_app.weekly_report.sheets.sheet_words import joined
from desktop_app.weekly_report.to_act_on import (
    asked_about,
    danger_not_said,
    dangerous,
    is_to_come,
)
from desktop_app.weekly_report.year_first import year_first


def read_first(figures: WeekFigures) -> tuple[str, ...]:
    """Return the sentences in the order in which they are read; a week to come has no counts."""
    if is_to_come(figures):
        return (*_covers(figures), _under_watch(figures))
    return (
        *_danger(figures),
        *_covers(figures),
        *_counts(figures),
        *year_first(figures),
        *_warnings(figures),
    )


def _danger(figures: WeekFigures) -> Iterator[str]:
    """Say first which returns were dangerous: the week's, those judged in it, all that wait."""
    hurt, week = dangerous(figures), len(list(asked_about(figures)))
    number, unsaid = len({row.visit for row in hurt}), len(danger_not_said(figures))
    if hurt:
        named = joined(
            tr("{later} after {earlier}, to be judged", later=row.later, earlier=row.earlier)
            if row.waits
            else tr("{later} after {earlier}", later=row.later, earlier=row.earlier)
            for row in hurt
        )
        yield (
            tr("1 return was dangerous: {named}.", named=named)
            if number == 1
            else tr("{returns} returns were dangerous: {named}.", returns=number, named=named)
        )
    if unsaid:
        yield tr(
            "Of {returns_of_the_week} nobody said whether somebody could have been hurt: read "
            "what the customer says.",
            returns_of_the_week=_of_the_week(unsaid, week),
        )
    elif week and not hurt:
        yield tr(
            "Of {returns_of_the_week} none was dangerous, as was said of each.",
            returns_of_the_week=_of_the_week(week, week),
        )


def _of_the_week(some: int, every: int) -> str:
    if every == 1:
        return tr("the week's one return")
    return (
        tr("the week's {every} returns", every=every)
        if some == every
        else tr("{some} of the week's {every} returns", some=some, every=every)
    )


def _covers(figures: WeekFigures) -> Iterator[str]:
    week, shop = figures.week, figures.shop
    yield tr(
        "{shop}, week {week}: Monday {monday} to Sunday {sunday}.",
        shop=shop.name,
        week=week,
        monday=day_in_words(week.monday),
        sunday=day_in_words(week.sunday),
    )
    anchor = f" · {figures.anchor}" if figures.anchor else ""
    yield tr(
        "Made on {day} at {made_at:%H:%M}{anchor}.",
        day=day_in_words(figures.made_at.date()),
        made_at=figures.made_at,
        anchor=anchor,
    )
    if is_to_come(figures):
        yield tr("This week is still to come, so nothing stands in it yet.")
    elif figures.as_of < week.sunday:
        yield tr(
            "The week is not over; it was looked at on {day}.",
            day=day_in_words(figures.as_of),
        )
    promise = promise_in_words(shop.promise, shop.distance_unit)
    yield tr(
        "The shop's window after a hand-over: {promise}. A job can carry its own.", promise=promise
    )
    yield from figures.rules_changed
    yield tr(
        "What the words mean stands on the last sheet: edition {edition} of the definitions.",
        edition=edition(),
    )


def _counts(figures: WeekFigures) -> Iterator[str]:
    yield _left(figures)
    year = figures.year
    week = _Counted.of(figures.came_back, figures.counts_as)
    rows = [one.row for one in year.returns]
    every = _Counted.of(rows, count_later_jobs(rows, year.left_out))
    yield f"{_judged(week)}{_judged_aside(figures)} {_waits(every.waits, week.waits)}"
    if every.told_waits:
        yield (
            tr(
                "1 return that was only told waits for a judgement too: neither good nor "
                "bad. Judge what was told, or have the car in."
            )
            if every.told_waits == 1
            else tr(
                "{returns} returns that were only told wait for a judgement too: neither "
                "good nor bad. Judge what was told, or have the car in.",
                returns=every.told_waits,
            )
        )
    yield from _judged_since(figures)
    yield tr(
        "A comeback is a later visit inside the window that a person judged: same "
        "symptom, same system, same part, or from our hands, unless its main cause is "
        "not ours. Foretold, other hands, unrelated and cannot tell are listed beside "
        "them and not counted."
    )
    yield from _caught_here(figures)
    yield _under_watch(figures)


def _left(figures: WeekFigures) -> str:
    """Say how many jobs left and how many of them are counted; of the others, why not."""
    whys = Counter(why_kept_out(job) for job in figures.left if not job.counted)
    jobs, counted = jobs_counted(len(figures.left)), len(figures.left) - whys.total()
    if not whys:
        return tr("{jobs} left in the week, {counted} counted.", jobs=jobs, counted=counted)
    return tr(
        "{jobs} left in the week, {counted} counted; not counted: {others}.",
        jobs=jobs,
        counted=counted,
        others=", ".join(f"{figure(number, ',')} {why}" for why, number in whys.items()),
    )


def _under_watch(figures: WeekFigures) -> str:
    watched, day = len(figures.on_watch), day_in_words(figures.as_of)
    return (
        tr(
            "1 job was under watch on {day}, counted or not. An open window never counts as a "
            "success: its time is not over.",
            day=day,
        )
        if watched == 1
        else tr(
            "{jobs:,} jobs were under watch on {day}, counted or not. An open window never "
            "counts as a success: its time is not over.",
            jobs=watched,
            day=day,
        )
    )


class _Counted(NamedTuple):
    """How many visits, and tellings beside them, count as comebacks, and how many wait."""

    back: int
    told_back: int
    waits: int
    told_waits: int

    @classmethod
    def of(cls, rows: Sequence[ReturnRow], counts_as: Sequence[CountsAs]) -> _Counted:
        """Count rows of the list of returns."""
        found = Counter((what, row.is_told) for row, what in zip(rows, counts_as, strict=True))
        return cls(
            found["comeback", False],
            found["comeback", True],
            found["waiting", False],
            found["waiting", True],
        )


def _judged(week: _Counted) -> str:
    """Say how many visits of the week count as comebacks, and returns that were told."""
    told = ""
    if week.told_back:
        told = (
            tr(", and 1 return that was only told")
            if week.told_back == 1
            else tr(", and {returns} returns that were only told", returns=week.told_back)
        )
    if week.back == 1:
        return tr("1 visit of the week counts as a comeback{and_told}.", and_told=told)
    return tr(
        "{visits} visits of the week count as comebacks{and_told}.",
        visits=week.back,
        and_told=told,
    )


def _judged_aside(figures: WeekFigures) -> str:
    """Say how many visits were judged a comeback after a job that no rate counts; "" of none."""
    rows = [*zip(figures.came_back, figures.counts_as, strict=True)]
    counted = {row.visit for row, what in rows if what == "comeback"}
    aside = len({row.visit for row, _ in rows if row.is_comeback} - counted)
    if not aside:
        return ""
    return " " + (
        tr("1 was judged a comeback after a job that is not counted, and is not among them.")
        if aside == 1
        else tr(
            "{visits} were judged comebacks after jobs that are not counted, and are not among "
            "them.",
            visits=aside,
        )
    )


def _waits(every: int, of_the_week: int) -> str:
    if every == 1:
        return tr(
            "1 visit waits for a person to judge, {of_the_week} of the week among them.",
            of_the_week=of_the_week,
        )
    return tr(
        "{visits} visits wait for a person to judge, {of_the_week} of the week among them.",
        visits=every,
        of_the_week=of_the_week,
    )


def _caught_here(figures: WeekFigures) -> Iterator[str]:
    monday = figures.week.monday
    caught = sum(job.caught_here for job in figures.year.jobs if job.left_on >= monday)
    if caught:
        yield (
            tr(
                "1 fault was caught here in jobs of the week, before the car left: no "
                "comeback, and a good sign."
            )
            if caught == 1
            else tr(
                "{faults} faults were caught here in jobs of the week, before the car left: no "
                "comeback, and a good sign.",
                faults=caught,
            )
        )


def _judged_since(figures: WeekFigures) -> Iterator[str]:
    """Say what in a book of the past was only known later: a visit stands as it is judged now.

    What Monday's meeting and its week decide of the week before belongs to it.
    """
    until = figures.as_of + timedelta(days=7)
    later = sum(
        one.row.judged_at is not None and one.row.judged_at[:10] > until.isoformat()
        for one in figures.year.returns
    )
    if later:
        day = day_in_words(until)
        yield (
            tr(
                "1 return in this book was judged, or judged anew, after {day} and stands as "
                "judged now.",
                day=day,
            )
            if later == 1
            else tr(
                "{returns} returns in this book were judged, or judged anew, after {day} and "
                "stand as judged now.",
                returns=later,
                day=day,
            )
        )


def _warnings(figures: WeekFigures) -> Iterator[str]:
    counted = sum(job.counted for job in figures.left)
    if counted < FEW_JOBS:
        yield tr(
            "Small numbers: with {jobs} counted, one comeback more or less changes the "
            "picture. Read the counts, not a share.",
            jobs=jobs_counted(counted),
        )
    days_only = sum(row.candidate.distance_miles is None for row in figures.came_back)
    if days_only:
        yield (
            tr("1 return goes by days only: the odometer could not say how far.")
            if days_only == 1
            else tr(
                "{returns} returns go by days only: the odometer could not say how far.",
                returns=days_only,
            )
        )
    late = figures.waiting_long
    if late:
        yield _waited(late, len(figures.weeks))
    unproven = sum(job.proof_level == 0 for job in figures.left)
    if unproven:
        yield tr("{jobs} left unproven.", jobs=jobs_counted(unproven))
    yield from _costs_missing(figures)
    hands_on = len(figures.year.hands_on & figures.year.left_out)
    if hands_on:
        yield tr(
            "{jobs} of the year that were inspection or maintenance came back with new "
            "trouble from our hands: in no rate, and counted on the sheet Rate, “Kept "
            "out”.",
            jobs=jobs_counted(hands_on),
        )


def _waited(returns: int, weeks: int) -> str:
    if returns == 1:
        return tr(
            "1 return of the last {weeks} weeks has waited for a judgement for more than "
            "{days} days: neither return nor success.",
            weeks=weeks,
            days=LONG_WAIT_DAYS,
        )
    return tr(
        "{returns} returns of the last {weeks} weeks have waited for a judgement for more than "
        "{days} days: neither return nor success.",
        returns=returns,
        weeks=weeks,
        days=LONG_WAIT_DAYS,
    )


def _costs_missing(figures: WeekFigures) -> Iterator[str]:
    back = [
        one
        for one in figures.year.returns
        if one.row.is_comeback and one.row.came_on >= figures.week.monday
        if one.row.earlier not in figures.year.left_out
    ]
    unwritten, told = costs_unwritten(back), sum(one.row.is_told for one in back)
    if told:
        yield (
            tr("What the week's 1 comeback that was only told cost stands in no sum.")
            if told == 1
            else tr(
                "What the week's {comebacks} comebacks that were only told cost stands in no sum.",
                comebacks=told,
            )
        )
    if unwritten:
        yield (
            tr(
                "1 visit of the week judged a comeback has no cost written, so the sum of the "
                "costs is too low."
            )
            if unwritten == 1
            else tr(
                "{visits} visits of the week judged a comeback have no cost written, so the sum "
                "of the costs is too low.",
                visits=unwritten,
            )
        )

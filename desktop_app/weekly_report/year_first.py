"""What the year behind a week has to say first, one sentence a question that an owner asks."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import compress

from desktop_app.language import marked, tr
from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import anything_from, can_be_told
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.unheard import silence
from desktop_app.returns_watched.owed import still_owed_cents
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.sheets.sheet_words import plural
from desktop_app.weekly_report.to_act_on import calls_now, ending_soon, open_changes
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from desktop_app.weekly_report.year_columns import year_columns


def year_first(figures: WeekFigures) -> Iterator[str]:
    """Yield the sentences in the order in which they are read."""
    yield from _rate_of_year(figures)
    if any(week.comebacks for week in figures.weeks):
        yield from weeks_charted(figures).flags()
    yield from _unproven(figures)
    yield from _to_do(figures)


def _rate_of_year(figures: WeekFigures) -> Iterator[str]:
    columns = year_columns(figures.year)
    in_it = columns.settled
    settled, back = int(in_it.sum()), int((in_it & columns.came_back).sum())
    others = _not_settled(columns)
    if not settled:
        if others:
            yield tr("The year: no job is settled yet: {others}.", others=others)
        else:
            yield tr("The year: no job is settled yet.")
        yield from _early(int(columns.came_back.sum()))
        return
    low, high = wilson(back, settled)
    rate = tr("{back:.1%}, {low:.1%} to {high:.1%}", back=back / settled, low=low, high=high)
    if not can_be_told(settled, low, high):
        rate = tr("too few to tell; {known}", known=anything_from(low, high))
    said = tr(
        "The year: {back:,} of {jobs} came back. Rate {rate}.",
        back=back,
        jobs=settled_jobs(settled),
        rate=rate,
    )
    if others:
        said += " " + tr("Not in it: {others}.", others=others)
    yield said
    states = (job.state for job in compress(figures.year.counted, in_it.tolist()))
    yield from silence(settled, sum(state == "nothing heard" for state in states), back)
    yield from _early(int(columns.came_back.sum()) - back)


def _early(early: int) -> Iterator[str]:
    """Say how many came back and are not settled: they count in their week, in no rate yet."""
    if early == 1:
        yield tr(
            "1 job of the year came back already though its window is still open: the comeback "
            "counts in the week in which it came, and enters the rate when the window is over, "
            "with its quiet neighbours."
        )
    elif early:
        yield tr(
            "{jobs} of the year came back already though their windows are still open: the "
            "comebacks count in the weeks in which they came, and enter the rate when these "
            "windows are over, with their quiet neighbours.",
            jobs=jobs_counted(early),
        )


def _not_settled(columns: CountedJobs) -> str:
    """Say how many counted jobs are not settled, and why each is not."""
    why = {
        marked("{jobs:,} open"): columns.still_open & ~columns.came_back,
        marked("{jobs:,} open and came back already"): columns.still_open & columns.came_back,
        marked("{jobs:,} waiting"): columns.waiting,
        marked("{jobs:,} lost sight of"): columns.lost_sight,
        marked("{jobs:,} not ours"): columns.not_ours,
        marked("{jobs:,} of which nobody can tell"): columns.cannot_tell,
    }
    counts = {words: int(marks.sum()) for words, marks in why.items()}
    return ", ".join(tr(words, jobs=count) for words, count in counts.items() if count)


def _unproven(figures: WeekFigures) -> Iterator[str]:
    unproven = [job for job in figures.year.counted if job.proof_level == 0]
    settled = [job for job in unproven if job.settled]
    more = len(unproven) - len(settled)
    if settled:
        came = sum(job.came_back for job in settled)
        left, how_sure = settled_jobs(len(settled)), _how_sure(came, len(settled))
        if came:
            said = tr(
                "Of {jobs} of the year left unproven, {came} came back{how_sure}.",
                jobs=left,
                came=came,
                how_sure=how_sure,
            )
        else:
            said = tr(
                "Of {jobs} of the year left unproven, none came back{how_sure}.",
                jobs=left,
                how_sure=how_sure,
            )
        if more == 1:
            said += " " + tr("1 more is not settled.")
        elif more:
            said += " " + tr("{more:,} more are not settled.", more=more)
        yield said
    elif more:
        yield _unproven_open(more, sum(job.came_back for job in unproven))


def _unproven_open(jobs: int, back: int) -> str:
    """Say how many left unproven where none of them is settled, and how many came back already."""
    if jobs == back == 1:
        return tr(
            "1 job of the year left unproven and came back already; it is not settled yet, and in "
            "no rate."
        )
    if back:
        return tr(
            "{jobs} of the year left unproven, and {back} of them came back already; none of them "
            "is settled yet or in a rate.",
            jobs=jobs_counted(jobs),
            back=back,
        )
    return tr(
        "{jobs} of the year left unproven; none of them is settled yet.", jobs=jobs_counted(jobs)
    )


def _how_sure(came: int, settled: int) -> str:
    """Return the share with what luck leaves open, or that the jobs are too few for one."""
    low, high = wilson(came, settled)
    if can_be_told(settled, low, high):
        return tr(" ({came:.1%}, {low:.1%} to {high:.1%})", came=came / settled, low=low, high=high)
    return tr(", too few to tell: {known}", known=anything_from(low, high))


def _to_do(figures: WeekFigures) -> Iterator[str]:
    """Say what is promised, owed, and to be asked."""
    year = figures.year
    changes = open_changes(figures)
    if changes:
        late = sum(one.change.is_late(figures.as_of) for one in changes)
        yield (
            tr("1 promised change is open, {late} of them late.", late=late)
            if len(changes) == 1
            else tr(
                "{changes} promised changes are open, {late} of them late.",
                changes=len(changes),
                late=late,
            )
        )
    if year.owed:
        cents, unknown = still_owed_cents(year.owed)
        sign, amount = figures.shop.currency, cents / 100
        yield (
            tr(
                "Suppliers owe {currency}{amount:,.2f}, and {unknown} without an amount.",
                currency=sign,
                amount=amount,
                unknown=unknown,
            )
            if unknown
            else tr("Suppliers owe {currency}{amount:,.2f}.", currency=sign, amount=amount)
        )
    soon = ending_soon(figures)
    if soon:
        yield tr(
            "{jobs}: the window probably ends within {days} days.",
            jobs=jobs_counted(len(soon)),
            days=ENDS_SOON,
        )
    due = calls_now(figures)
    if due:
        yield tr(
            "{jobs}: ask the customer now how the car is (Windows, “Call due”); whom "
            "you ask must not depend on the answer you hope for.",
            jobs=jobs_counted(len(due)),
        )


def settled_jobs(number: int) -> str:
    """Return a count with its noun: "1 settled job", "1,204 settled jobs"."""
    return plural(number, tr("settled job"), tr("settled jobs"))

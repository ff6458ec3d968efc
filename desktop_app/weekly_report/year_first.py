"""What the year behind a week has to say first, one sentence a question that an owner asks."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import compress

from desktop_app.returns_watched.ask_list import ENDS_SOON
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.group_rates import anything_from, can_be_told
from desktop_app.returns_watched.honest_numbers.proportion import wilson
from desktop_app.returns_watched.honest_numbers.unheard import silence
from desktop_app.returns_watched.owed import still_owed_cents
from desktop_app.weekly_report.figures import WeekFigures
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
        yield f"The year: no job is settled yet{': ' if others else ''}{others}."
        return
    low, high = wilson(back, settled)
    rate = f"{back / settled:.1%}, {low:.1%} to {high:.1%}"
    if not can_be_told(settled, low, high):
        rate = f"too few to tell; {anything_from(low, high)}"
    yield (
        f"The year: {back:,} of {jobs(settled, 'settled ')} came back. Rate {rate}."
        f"{' Not in it: ' if others else ''}{others}{'.' if others else ''}"
    )
    states = (job.state for job in compress(figures.year.counted, in_it.tolist()))
    yield from silence(settled, sum(state == "nothing heard" for state in states), back)
    early = int(columns.came_back.sum()) - back
    if early:
        yield (
            f"{jobs(early)} of the year came back already though their windows are still "
            "open; they enter the rate when these are over, with their quiet neighbours."
        )


def _not_settled(columns: CountedJobs) -> str:
    """Say how many counted jobs are not settled, and why each is not."""
    why = {
        "open": columns.still_open,
        "waiting": columns.waiting,
        "lost sight of": columns.lost_sight,
        "not ours": columns.not_ours,
        "of which nobody can tell": columns.cannot_tell,
    }
    counts = {words: int(marks.sum()) for words, marks in why.items()}
    return ", ".join(f"{count:,} {words}" for words, count in counts.items() if count)


def _unproven(figures: WeekFigures) -> Iterator[str]:
    unproven = [job for job in figures.year.counted if job.proof_level == 0]
    settled = [job for job in unproven if job.settled]
    more = len(unproven) - len(settled)
    if settled:
        came = sum(job.came_back for job in settled)
        also = f" {more:,} more {'is' if more == 1 else 'are'} not settled." if more else ""
        yield (
            f"Of {jobs(len(settled), 'settled ')} of the year left unproven, {came or 'none'} came "
            f"back{_how_sure(came, len(settled))}.{also}"
        )
    elif more:
        yield f"{jobs(more)} of the year left unproven; none of them is settled yet."


def _how_sure(came: int, settled: int) -> str:
    """Return the share with what luck leaves open, or that the jobs are too few for one."""
    low, high = wilson(came, settled)
    if can_be_told(settled, low, high):
        return f" ({came / settled:.1%}, {low:.1%} to {high:.1%})"
    return f", too few to tell: {anything_from(low, high)}"


def _to_do(figures: WeekFigures) -> Iterator[str]:
    """Say what is promised, owed, and to be asked."""
    year = figures.year
    open_changes = [one for one in year.promised() if one.change.is_open(figures.as_of)]
    if open_changes:
        late = sum(one.change.is_late(figures.as_of) for one in open_changes)
        are = "change is" if len(open_changes) == 1 else "changes are"
        yield f"{len(open_changes)} promised {are} open, {late} of them late."
    if year.owed:
        cents, unknown = still_owed_cents(year.owed)
        more = f", and {unknown} without an amount" if unknown else ""
        yield f"Suppliers owe {figures.shop.currency}{cents / 100:,.2f}{more}."
    soon = [
        job
        for job in figures.on_watch
        if job.expected_close is not None
        and 0 <= (job.expected_close - figures.as_of).days <= ENDS_SOON
    ]
    if soon:
        yield f"{jobs(len(soon))}: the window probably ends within {ENDS_SOON} days."
    due = sum(day <= figures.as_of for day in figures.calls_due.values())
    if due:
        yield (
            f"{jobs(due)}: ask the customer now how the car is (Windows, “Call due”); whom you ask "
            "must not depend on the answer you hope for."
        )


def jobs(number: int, kind: str = "") -> str:
    """Return a count with its noun: "1 job", "1,204 settled jobs"."""
    return f"{number:,} {kind}{'job' if number == 1 else 'jobs'}"

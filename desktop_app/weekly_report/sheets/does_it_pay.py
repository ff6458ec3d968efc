"""Do jobs whose old and new parts were compared come back less often? In careful words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.repair_jobs.chance_words import of_cases
from desktop_app.returns_watched.honest_numbers.group_rates import FEW_JOBS, can_be_told
from desktop_app.returns_watched.honest_numbers.log_rank import log_rank
from desktop_app.returns_watched.honest_numbers.proportion import newcombe, wilson
from desktop_app.weekly_report.sheets.sheet_words import plural
from desktop_app.weekly_report.year_behind import JobDone, counted_jobs

_NO_EXPERIMENT = tr(
    "This is no experiment: nobody drew lots which parts to compare. Who compares may "
    "also work more carefully otherwise, hard jobs may be compared more often, and "
    "where no part was fitted nothing can be compared and little can come back. It "
    "shows what to look at, not what to do."
)


def does_it_pay(fits: Sequence[JobDone], none: Sequence[JobDone]) -> tuple[str, ...]:
    """Say how far jobs whose pairs fit and jobs without a comparison differ, and what that proves.

    The difference of the settled jobs has Newcombe's interval; with open windows as far as they
    are watched the two curves are compared by the log-rank test.
    """
    settled = [[job for job in some if job.settled] for some in (fits, none)]
    with_parts = sum(bool(job.parts) for job in settled[1])
    if min(map(len, settled)) < FEW_JOBS:
        return (
            tr(
                "Too few to tell: {jobs} with a comparison that fits and {settled:,} "
                "without one; {few_jobs} of each are the least.",
                jobs=plural(len(settled[0]), tr("settled job"), tr("settled jobs")),
                settled=len(settled[1]),
                few_jobs=FEW_JOBS,
            ),
            _NO_EXPERIMENT,
        )
    return (
        *_difference(*settled),
        *_curves(fits, none),
        tr(
            "{no_experiment} Of the {settled:,} jobs without a comparison {with_parts:,} "
            "had a part fitted.",
            no_experiment=_NO_EXPERIMENT,
            settled=len(settled[1]),
            with_parts=with_parts,
        ),
    )


def _difference(fits: Sequence[JobDone], none: Sequence[JobDone]) -> Iterator[str]:
    back, all_fits = sum(job.came_back for job in fits), len(fits)
    back_none, all_none = sum(job.came_back for job in none), len(none)
    low, high = newcombe(back, all_fits, back_none, all_none)
    yield tr(
        "Compared and fits: {back} of {all_fits:,} settled jobs came back{share}. "
        "Nothing compared: {back_none} of {all_none:,}{share_of_none}.",
        back=back,
        all_fits=all_fits,
        share=_share(back, all_fits),
        back_none=back_none,
        all_none=all_none,
        share_of_none=_share(back_none, all_none),
    )
    if low <= 0 <= high:
        yield tr(
            "That does not show a difference: among 100 such jobs the truth may lie "
            "anywhere from {least} to {most} where they were compared.",
            least=_in_a_hundred(low),
            most=_in_a_hundred(high),
        )
        return
    yield tr(
        "Among 100 such jobs that is {least} to {most} where they "
        "were compared; luck alone seldom makes such a difference.",
        least=_in_a_hundred(low),
        most=_in_a_hundred(high),
    )


def _share(back: int, settled: int) -> str:
    """Return the share in brackets; nothing where so few jobs have none in the table either."""
    return (
        f" ({figure(back / settled, '.1%')})"
        if can_be_told(settled, *wilson(back, settled))
        else ""
    )


def _in_a_hundred(difference: float) -> str:
    """Return a difference of shares as comebacks in a hundred jobs: "3 fewer", "12 more"."""
    jobs = abs(difference) * 100
    return tr("{jobs:.0f} fewer", jobs=jobs) if difference < 0 else tr("{jobs:.0f} more", jobs=jobs)


def _curves(fits: Sequence[JobDone], none: Sequence[JobDone]) -> Iterator[str]:
    found = log_rank([counted_jobs(some).watched() for some in (fits, none)])
    yield tr(
        "Day by day, with the open windows as far as they have been watched: if "
        "comparing made no difference, luck would part the two so far in {share_of_cases} "
        "(log-rank test).",
        share_of_cases=of_cases(found.p),
    )

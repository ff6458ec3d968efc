"""What the rates say beneath their figures, and what they do not leave unsaid."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import numpy as np
import pytest

from desktop_app.returns_watched.honest_numbers import elsewhere
from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.returns_watched.honest_numbers.few_a_week import doubled
from desktop_app.returns_watched.honest_numbers.funnel import chance_of_so_many
from desktop_app.returns_watched.honest_numbers.group_names import (
    NOT_COMPARED,
    as_first_written,
    compared_as,
)
from desktop_app.returns_watched.honest_numbers.group_rates import NOT_SAID, By, group_rates
from desktop_app.returns_watched.honest_numbers.rates import rates_of
from desktop_app.returns_watched.honest_numbers.unheard import silence
from desktop_app.returns_watched.window import MAIN_WINDOW
from tests.another_language import another_language
from tests.returns_watched.test_honest_numbers import (
    BACK,
    OPEN,
    SETTLED,
    TODAY,
    jobs,
    only,
    together,
)


def said(some: CountedJobs, by: By = "technician") -> tuple[str, ...]:
    return rates_of(some, by, MAIN_WINDOW, TODAY).lines()


def out_of_count(**after: int) -> CountedJobs:
    """Forty settled jobs; of the first one something takes it out of the count on a day."""
    some = jobs(*[SETTLED] * 40)
    columns = {name: getattr(some, name).copy() for name in after}
    for name, day in after.items():
        columns[name][0] = day
    return replace(some, **columns)


@pytest.mark.parametrize(
    ("column", "counted", "beneath"),
    [
        ("lost_after", ", 1 lost sight of", "Lost sight of: the car is gone"),
        ("aside_after", ", 1 not ours", "Not ours: it came back"),
        ("unsure_after", ", 1 nobody can tell", "Cannot tell: it came"),
    ],
)
def test_what_is_in_no_rate_is_counted_apart_and_explained(
    column: str, counted: str, beneath: str
) -> None:
    lines = said(out_of_count(**{column: 20}))
    assert lines[0].startswith(f"Ada: 40 jobs, 0 open, 0 waiting{counted}; of 39 settled none")
    assert any(line.startswith(beneath) for line in lines[1:])
    plain = said(jobs(*[SETTLED] * 40))
    assert counted not in plain[0]
    assert not any(line.startswith(beneath) for line in plain)


@pytest.mark.parametrize(("late", "words"), [(1, "1 job came back"), (2, "2 jobs came back")])
def test_what_came_after_its_window_is_no_comeback_and_not_all_well(late: int, words: str) -> None:
    some = jobs(*[SETTLED] * 40)
    came = replace(some, came_later=np.arange(40) < late)
    assert any(line.startswith(f"{words} with a reason after the window") for line in said(came))
    assert not any("after the window had ended" in line for line in said(some))


def test_no_window_is_over_of_a_job_that_is_open() -> None:
    assert said(jobs(OPEN))[0] == "Ada: 1 job, 1 open, 0 waiting; no window is over yet."


@pytest.mark.parametrize(("settled", "words"), [(1, "1 was watched"), (5, "5 were watched")])
def test_where_none_came_back_it_says_what_so_few_could_hide(settled: int, words: str) -> None:
    most = 1 - 0.025 ** (1 / settled)  # the exact upper limit for none of n
    assert said(jobs(*[SETTLED] * settled))[-1] == (
        f"None came back by day 90, to which {words}; "
        f"so few could hide a share of up to {most:.1%}."
    )


def test_a_curve_with_late_comebacks_alone_says_nothing_of_its_first_month() -> None:
    late = said(jobs((200, 60, 10**6), *[SETTLED] * 40))
    assert not any("by day 30" in line for line in late)
    assert late[-1].startswith("Came back in all, open windows watched as far as they go: 2.4%")


def test_jobs_that_count_under_several_names_are_called_shared() -> None:
    words = "A job counts under each name that it has, so the groups can share jobs."
    assert words in said(jobs(*[SETTLED] * 30, names=("North", "Mill")), "supplier")
    assert words not in said(jobs(*[SETTLED] * 30), "supplier")


def test_verdicts_are_called_no_experiment_and_said_in_the_language_spoken() -> None:
    compared = jobs(*[SETTLED] * 30, names=("fits",))
    assert any(line.startswith("Comparing is no experiment") for line in said(compared, "verdict"))
    assert not any("no experiment" in line for line in said(compared))
    with another_language():
        assert "«fits»" in said(compared, "verdict")[0]
        assert "«fits»" not in said(compared)[0]


def test_a_group_that_nothing_is_held_against_names_no_other_work() -> None:
    alone = only(group_rates(jobs(*[SETTLED] * 30), "technician"))
    assert (alone.luck, alone.held_against) == (None, "")


@pytest.mark.parametrize(
    ("asked", "says"),
    [
        ((10, 0, 1), ()),
        (
            (3, 3, 0),
            ("Nothing was heard of any of these 3 since: no news is not good news.",),
        ),
    ],
)
def test_silence_is_told_where_there_is_any(asked: tuple[int, int, int], says: tuple[str]) -> None:
    assert tuple(silence(*asked)) == says


def test_a_rate_of_those_heard_of_is_told_where_they_are_enough() -> None:
    [many] = silence(1200, 200, 50)
    assert many.startswith("Of 200 of these 1,200 nothing was heard since")
    assert "50 of 1,000 came back (5.0%, 3.8% to 6.5%)." in many  # Wilson's interval
    [few] = silence(12, 8, 0)
    assert "none of 4 came back (" in few
    assert "0.0%" not in few


def test_names_that_differ_by_case_or_spaces_are_one_group_as_first_written() -> None:
    shown: dict[str, str] = {}
    assert as_first_written(["North  Parts", "Mill"], shown) == ("North Parts", "Mill")
    assert as_first_written([" NORTH parts ", "north parts"], shown) == ("North Parts",)
    assert as_first_written(["", "  "], shown) == as_first_written((), shown) == (NOT_SAID,)


@pytest.mark.parametrize(
    ("verdicts", "counts_as"),
    [
        (("fits", "stop and look", "not enough measured"), "stop and look"),
        (("fits", "not enough measured"), "not enough measured"),
        (("fits", "fits"), "fits"),
        ((), NOT_COMPARED),
    ],
)
def test_the_worst_verdict_of_its_pairs_speaks_for_a_job(
    verdicts: tuple[str, ...], counts_as: str
) -> None:
    assert compared_as(verdicts) == counts_as


def test_weeks_before_any_job_are_no_measure_of_a_doubling() -> None:
    assert doubled([0, 3], [0, 40]).evidence == (0.0, 0.0)
    assert doubled([1, 9], [40, 40]).evidence[1] > 0


@pytest.mark.parametrize("nonsense", [(0, 0, 0.1, 5), (1, 9, 0.1, 0)])
def test_a_chance_rests_on_a_rate_that_was_seen_somewhere(nonsense: tuple[Any, ...]) -> None:
    with pytest.raises(ValueError, match="No chances"):
        chance_of_so_many(*nonsense)


def test_more_kinds_of_work_than_bins_are_counted_alike(monkeypatch: pytest.MonkeyPatch) -> None:
    some = [
        jobs(*[BACK] * n, *[SETTLED] * 20, names=(name,), system=system)
        for n, name in enumerate(("Ada", "Bo", "Cy"))
        for system in ("ignition", "brakes", "steering")
    ]
    in_bins = group_rates(together(*some), "technician")
    monkeypatch.setattr(elsewhere, "_MOST_BINS", 1)
    assert group_rates(together(*some), "technician") == in_bins

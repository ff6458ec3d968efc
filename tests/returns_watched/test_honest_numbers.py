"""What the program promises of its rates: whom they count, what they say, and what they keep."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from desktop_app.returns_watched.honest_numbers.counted_jobs import NEVER, CountedJobs
from desktop_app.returns_watched.honest_numbers.cumulative import mean_cumulative
from desktop_app.returns_watched.honest_numbers.expected import (
    poisson_interval,
    seen_against_expected,
)
from desktop_app.returns_watched.honest_numbers.funnel import (
    chance_of_so_many,
    funnel_limit,
    luck_gives,
)
from desktop_app.returns_watched.honest_numbers.group_rates import (
    FEW_JOBS,
    TOO_FEW,
    WIDEST_INTERVAL,
    GroupRate,
    group_rates,
)
from desktop_app.returns_watched.honest_numbers.log_rank import log_rank
from desktop_app.returns_watched.honest_numbers.many_compared import adjusted, caution
from desktop_app.returns_watched.honest_numbers.proportion import (
    clopper_pearson,
    newcombe,
    wilson,
)
from desktop_app.returns_watched.honest_numbers.rates import rates_of
from desktop_app.returns_watched.honest_numbers.shrunken import (
    shrunken,
    spread_by_moments,
    spread_of_groups,
)
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier
from desktop_app.returns_watched.window import MAIN_WINDOW

TODAY = date(2026, 11, 16)
# Days gone, days to the first comeback, days to the first visit that waits.
Job = tuple[int, int, int]
SETTLED, BACK, OPEN = (200, NEVER, NEVER), (200, 20, NEVER), (40, NEVER, NEVER)
EARLY_BACK, WAITING = (40, 20, NEVER), (200, NEVER, 20)


def jobs(*some: Job, names: tuple[str, ...] = ("Ada",), system: str = "ignition") -> CountedJobs:
    """Jobs of one technician and one kind of work, with a window of 90 days."""
    columns = np.array(some, dtype=np.int64).reshape(-1, 3).T
    n = len(some)
    return CountedJobs(
        columns[0],
        np.full(n, 90),
        columns[1],
        columns[2],
        (("distributor-rotor",),) * n,
        (system,) * n,
        (names,) * n,
        *(np.full(n, NEVER) for _ in range(3)),
        np.zeros(n, dtype=bool),
    )


def together(*some: CountedJobs) -> CountedJobs:
    """All of the jobs in one."""
    return CountedJobs(
        **{
            name: np.concatenate([getattr(one, name) for one in some])
            for name in (
                *("days_gone", "window_days", "back_after", "waits_after"),
                *("lost_after", "aside_after", "unsure_after", "came_later"),
            )
        },
        **{
            name: tuple(word for one in some for word in getattr(one, name))
            for name in ("part_kinds", "systems", "groups")
        },
    )


def only(found: tuple[GroupRate, ...]) -> GroupRate:
    (group,) = found
    return group


def test_each_job_is_settled_open_or_waiting() -> None:
    some = (*[SETTLED] * 5, *[BACK] * 2, *[OPEN] * 3, EARLY_BACK, WAITING)
    group = only(group_rates(jobs(*some), "technician"))
    assert (group.jobs, group.settled, group.still_open, group.waiting) == (12, 7, 4, 1)
    assert group.comebacks == 2
    assert group.rate == pytest.approx(2 / 7)
    assert (group.low, group.high) == wilson(2, 7)


def test_a_car_out_of_sight_is_neither_settled_nor_open() -> None:
    # Sold on the 40th day of 90: the job was watched so long, and says nothing of what came later.
    some = replace(jobs(SETTLED, SETTLED, BACK), lost_after=np.array([40, NEVER, 40]))
    group = only(group_rates(some, "technician"))
    assert (group.jobs, group.settled, group.still_open, group.lost_sight) == (3, 2, 0, 1)
    assert group.comebacks == 1
    assert some.watched()[0].tolist() == [40, 90, 20]
    said = rates_of(some, "technician", MAIN_WINDOW, TODAY)
    assert "1 lost sight of" in said.lines()[0]
    assert said.as_json()["groups"][0]["lost_sight"] == 1


def test_a_window_is_open_on_its_last_day() -> None:
    group = only(group_rates(jobs((90, NEVER, NEVER), (91, NEVER, NEVER)), "technician"))
    assert (group.still_open, group.settled) == (1, 1)


def test_an_early_comeback_waits_for_its_neighbours() -> None:
    # Counted at once it would stand beside none of the quiet jobs of its week.
    group = only(group_rates(jobs(EARLY_BACK, OPEN, OPEN), "technician"))
    assert (group.settled, group.comebacks, group.rate) == (0, 0, None)
    assert group.note == TOO_FEW


def test_a_comeback_beside_an_unjudged_visit_is_a_comeback() -> None:
    group = only(group_rates(jobs((200, 60, 20), SETTLED), "technician"))
    assert (group.settled, group.comebacks, group.waiting) == (2, 1, 0)


def test_few_jobs_say_that_they_are_few() -> None:
    none_of_20 = only(group_rates(jobs(*[SETTLED] * 20), "technician"))
    none_of_19 = only(group_rates(jobs(*[SETTLED] * 19), "technician"))
    one_of_20 = only(group_rates(jobs(*[SETTLED] * 19, BACK), "technician"))
    assert none_of_20.note is None
    assert (none_of_19.note, one_of_20.note) == (TOO_FEW, TOO_FEW)


def test_groups_too_few_to_tell_have_no_rank() -> None:
    found = group_rates(
        together(
            jobs(BACK, names=("Ada",)),
            jobs(*[SETTLED] * 90, *[BACK] * 10, names=("Bo",)),
            jobs(*[SETTLED] * 60, *[BACK] * 40, names=("Cy",)),
        ),
        "technician",
    )
    assert [group.name for group in found] == ["Cy", "Bo", "Ada"]
    assert [group.stands_out for group in found] == [True, True, False]


def test_who_takes_the_hard_cars_is_not_blamed() -> None:
    def some(name: str, system: str, back: int, quiet: int) -> CountedJobs:
        return jobs(*[BACK] * back, *[SETTLED] * quiet, names=(name,), system=system)

    found = group_rates(
        together(
            some("Ada", "electrical", 6, 34),
            some("Ada", "brakes", 0, 10),
            some("Bo", "electrical", 2, 8),
            some("Bo", "brakes", 1, 39),
        ),
        "technician",
    )
    # Of ten hard jobs by the one, and ten easy by the other, little can be said: none is blamed,
    # and the hard work of the one is expected to come back more often.
    ada, bo = sorted(found, key=lambda group: group.name)
    assert {group.beyond_luck for group in found} == {False}
    assert ada.expected is not None
    assert bo.expected is not None
    assert ada.expected > 1.5 * bo.expected
    found = group_rates(
        together(
            some("Ada", "electrical", 60, 340),
            some("Ada", "brakes", 0, 100),
            some("Bo", "electrical", 20, 80),
            some("Bo", "brakes", 10, 390),
        ),
        "technician",
    )
    ada, bo = sorted(found, key=lambda group: group.name)
    assert ada.rate is not None
    assert bo.rate is not None
    assert ada.rate == 2 * bo.rate
    assert ada.against is not None
    assert bo.against is not None
    # By hand: 400 * 0.2 + 100 * 0.025 of the other's shares, and 100 * 0.15 + 400 * 0.
    assert (ada.expected, bo.expected) == pytest.approx((82.5, 15))
    assert ada.against.ratio < 1 < bo.against.ratio


@pytest.mark.parametrize("by", ["system", "part-kind"])
def test_what_is_compared_is_no_excuse_for_itself(by: str) -> None:
    some = together(
        jobs(*[BACK] * 8, *[SETTLED] * 32, names=("one",)),
        jobs(*[BACK] * 2, *[SETTLED] * 38, names=("other",), system="brakes"),
    )
    if by == "part-kind":
        kinds = (("distributor-rotor",),) * 40 + (("brake-pads",),) * 40
        some = replace(some, systems=("ignition",) * 80, part_kinds=kinds)
    found = group_rates(some, by)  # type: ignore[arg-type]
    assert {group.name: group.expected for group in found} == pytest.approx({"one": 2, "other": 8})


def test_a_job_counts_under_each_of_its_names() -> None:
    found = group_rates(jobs(*[SETTLED] * 30, names=("North", "Mill")), "supplier")
    assert [(group.name, group.jobs) for group in found] == [("Mill", 30), ("North", 30)]


def test_the_curve_watches_open_windows_as_far_as_they_go() -> None:
    days, back = jobs(SETTLED, BACK, OPEN, EARLY_BACK, WAITING, (200, 95, NEVER)).watched()
    assert days.tolist() == [90, 20, 40, 20, 20, 90]
    assert back.tolist() == [False, True, False, True, False, False]


def test_nothing_counted_says_so() -> None:
    found = rates_of(jobs(), "technician", MAIN_WINDOW, TODAY)
    assert found.lines() == ("No job was handed over with a cause and a correction in that time.",)
    assert found.as_json()["groups"] == []
    assert found.as_json()["curve"]["days"] == []


def test_where_none_came_back_the_curve_is_flat_and_says_how_much_may_lie_behind_it() -> None:
    curve = rates_of(jobs(*[SETTLED] * 50), "technician", MAIN_WINDOW, TODAY).as_json()["curve"]
    assert (curve["days"], curve["at_risk"], curve["events"]) == ([90], [50], [0])
    assert (curve["came_back"], curve["low"]) == ([0.0], [0.0])
    # Exact upper limit for none of n: 1 - 0.025 ** (1 / n). C. J. Clopper and E. S. Pearson,
    # Biometrika 26 (1934) 404-413.
    assert curve["high"] == [pytest.approx(1 - 0.025 ** (1 / 50))]


def test_the_lines_say_what_the_figures_mean() -> None:
    some = together(jobs(*[BACK] * 50, *[SETTLED] * 50), jobs(*[SETTLED] * 60, names=("Bo",)))
    said = rates_of(some, "technician", MAIN_WINDOW, TODAY).lines()
    assert said[0].startswith("Ada: 100 jobs, 0 open, 0 waiting; of 100 settled 50 came back")
    assert said[0].endswith("More than luck explains.")
    assert "of 60 settled none came back: 0.0%" in said[1]
    assert said[1].endswith("Fewer than luck explains.")
    assert "where luck alone gives" in said[1]
    assert "A window still open is no success" in said[2]
    assert said[3].startswith("No news is not good news")
    assert said[4].startswith("2 are compared at once.")
    assert said[5].startswith("Came back by day 30")


JOBS = st.lists(
    st.tuples(
        st.integers(0, 200),
        st.integers(-1, 90),
        st.integers(-1, 90),
        st.sampled_from(["Ada", "Bo", "Cy"]),
        st.sampled_from(["ignition", "brakes"]),
    ),
    max_size=40,
)


def drawn(rows: list[tuple[int, int, int, str, str]]) -> CountedJobs:
    """Jobs as hypothesis draws them; nothing comes back before it could."""
    return together(
        jobs(),
        *(
            jobs(
                (gone, back if back <= gone else NEVER, waits if waits <= gone else NEVER),
                names=(name,),
                system=system,
            )
            for gone, back, waits, name, system in rows
        ),
    )


@given(JOBS)
def test_groups_add_up(rows: list[tuple[int, int, int, str, str]]) -> None:
    some = drawn(rows)
    found = group_rates(some, "technician")
    assert sum(group.jobs for group in found) == len(rows)
    for group in found:
        known = group.settled + group.still_open + group.waiting
        assert group.jobs == known + group.lost_sight + group.not_ours + group.cannot_tell
        assert 0 <= group.comebacks <= group.settled
        if group.rate is not None:
            assert group.low is not None
            assert group.high is not None
            assert group.low <= group.rate <= group.high
            narrow = group.high - group.low <= WIDEST_INTERVAL
            assert (group.note is None) == (narrow and group.settled >= FEW_JOBS)
            assert group.alike <= group.settled
            assert not group.stands_out or group.beyond_luck


@given(JOBS, st.randoms())
def test_the_order_of_jobs_never_matters(
    rows: list[tuple[int, int, int, str, str]], chance: object
) -> None:
    mixed = list(rows)
    chance.shuffle(mixed)  # type: ignore[attr-defined]

    def figures(some: CountedJobs) -> list[object]:
        found = sorted(group_rates(some, "technician"), key=lambda group: group.name)
        return [(g.name, g.settled, g.comebacks, pytest.approx(g.expected)) for g in found]

    assert figures(drawn(mixed)) == figures(drawn(rows))


@given(JOBS)
def test_the_curve_is_always_sayable(rows: list[tuple[int, int, int, str, str]]) -> None:
    curve = rates_of(drawn(rows), "technician", MAIN_WINDOW, TODAY).as_json()["curve"]
    for low, share, high in zip(curve["low"], curve["came_back"], curve["high"], strict=True):
        assert 0 <= low <= share + 1e-12
        assert share <= high + 1e-12 <= 1 + 2e-12
    assert curve["came_back"] == sorted(curve["came_back"])
    assert curve["at_risk"] == sorted(curve["at_risk"], reverse=True)


@given(st.integers(1, 500), st.data())
def test_shares_have_sober_intervals(n: int, data: st.DataObject) -> None:
    k = data.draw(st.integers(0, n))
    for interval in (wilson, clopper_pearson):
        low, high = interval(k, n)
        assert 0 <= low <= k / n <= high <= 1
        # Counting the other way round is the same doubt.
        assert interval(n - k, n) == pytest.approx((1 - high, 1 - low), abs=1e-9)
    low, high = newcombe(k, n, n - k, n)
    assert newcombe(n - k, n, k, n) == pytest.approx((-high, -low))


@settings(max_examples=25)
@given(st.lists(st.tuples(st.integers(0, 30), st.integers(0, 60)), max_size=8))
def test_a_rate_is_drawn_towards_the_groups_mean(pairs: list[tuple[int, int]]) -> None:
    counts = [(min(k, n), n) for k, n in pairs]
    spread = spread_of_groups([k for k, _ in counts], [n for _, n in counts])
    if spread is None:
        return
    assert spread.alpha + spread.beta <= sum(n for _, n in counts) * (1 + 1e-9)
    for k, n in counts:
        if n:
            low, high = sorted((k / n, spread.mean))
            found = shrunken(k, n, spread)
            assert low - 1e-9 <= found.mean <= high + 1e-9
            assert 0 <= found.low <= found.high <= 1


@given(st.integers(1, 300), st.floats(0.001, 0.999), st.floats(0.001, 0.999))
def test_luck_stays_inside_the_funnel(size: int, rate: float, p: float) -> None:
    lower, upper = (funnel_limit([size], rate, one)[0] for one in sorted((p, 1 - p)))
    assert lower <= upper + 1e-9
    assert -1 / size <= lower
    assert upper <= 1


def test_a_single_group_is_compared_with_nobody() -> None:
    assert caution(1) is None
    assert spread_of_groups([3], [20]) is None
    assert spread_of_groups([0, 0], [20, 30]) is None
    assert spread_of_groups([], []) is None
    assert spread_by_moments([0.1, 0.1]) is None
    assert spread_by_moments([0.1]) is None
    assert seen_against_expected(0, 0.0) is None
    assert adjusted([]) == ()


def test_curves_without_returns_do_not_differ() -> None:
    assert log_rank([([5, 6], [False, False]), ([7], [False])]).p == 1
    assert kaplan_meier([5, 6], [False, False]).ages.tolist() == []
    assert kaplan_meier([], []).ages.tolist() == []
    assert mean_cumulative([5, 6], [], []).ages.tolist() == []


def test_a_return_on_the_day_of_the_hand_over_counts() -> None:
    curve = kaplan_meier([0, 0, 30], [True, False, False])
    assert (curve.ages.tolist(), curve.at_risk.tolist()) == ([0], [3])


@pytest.mark.parametrize(
    "refused",
    [
        lambda: wilson(1, 0),
        lambda: wilson(3, 2),
        lambda: wilson(1, 2, coverage=1),
        lambda: clopper_pearson(-1, 2),
        lambda: clopper_pearson(1, 2, coverage=0),
        lambda: kaplan_meier([1, 2], [True]),
        lambda: kaplan_meier([-1], [True]),
        lambda: kaplan_meier([float("nan")], [True]),
        lambda: log_rank([([1], [True])]),
        lambda: mean_cumulative([10], [0], [11]),
        lambda: mean_cumulative([10], [1], [5]),
        lambda: poisson_interval(-1),
        lambda: funnel_limit([0], 0.1, 0.025),
        lambda: funnel_limit([10], 0.0, 0.025),
        lambda: adjusted([1.5]),
        lambda: spread_of_groups([5], [4]),
        lambda: luck_gives(10, 0.0),
        lambda: chance_of_so_many(5, 4, 0.1),
    ],
)
def test_what_is_no_count_is_refused(refused: object) -> None:
    with pytest.raises(ValueError, match=r"\w"):
        refused()  # type: ignore[operator]

"""Curves of returns against published data, lifelines and statsmodels.

"Read" beside a value: the data or a public reproduction was read. "Recalled": known from memory
and recomputed. "Computed": from the definition.
"""

from __future__ import annotations

import numpy as np
import pytest
from lifelines import KaplanMeierFitter
from lifelines.statistics import multivariate_logrank_test
from statsmodels.duration.survfunc import SurvfuncRight, survdiff

from desktop_app.returns_watched.honest_numbers.cumulative import MeanCumulative, mean_cumulative
from desktop_app.returns_watched.honest_numbers.log_rank import log_rank
from desktop_app.returns_watched.honest_numbers.survival import kaplan_meier


def weeks(words: str) -> tuple[list[int], list[bool]]:
    """Read times; a + says that nothing had happened when the watch ended."""
    said = words.split()
    return [int(word.rstrip("+")) for word in said], [not word.endswith("+") for word in said]


# E. J. Freireich and others, Blood 21 (1963) 699-716; E. A. Gehan, Biometrika 52 (1965) 203-223:
# weeks of remission (read in a public data file).
TREATED = weeks("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+")
PLACEBO = weeks("1 1 2 2 3 4 4 5 5 8 8 8 8 11 11 12 12 15 17 22 23")

# W. B. Nelson and N. Doganaksoy 1989; W. B. Nelson, Technometrics 37 (1995) 147-157: valve seats
# replaced in 41 engines; age at the end of watching, then the ages at replacement (read).
VALVE_SEATS = """
761: 759: 667:98 667:326,653,653 667:84 665: 663:87 653:646 653:92 651: 650:258,328,377,621
649:349,404,561 648:61,539 644:254,276,298,640 642:76,538 641:635 631: 614:120,479 613:344,497
611: 608: 606:165,408,604 603:367 601: 601:410,581 596: 595:265,586 594:249 593: 589:139,139
589:573 587: 587: 586: 585:202,563,570 585: 582:323,449 582: 578: 578: 389:166,206,348
"""
# N. Doganaksoy and W. B. Nelson, Lifetime Data Analysis 4 (1998) 63-85: braking grids, two batches
# (read in R's survival package, data set reliability).
BATCH_1 = """
730:462 724:364,391,548 730:302,444,500 730:250 724:500 724:88 719:272,421,552,625 710:481 710:431
710:367 708:635,650 700:402 687:33 687:287 657:317,498
"""
BATCH_2 = """
511:203,211,277,373 503:293 470:173 464:242 464:39 462:91 461:119,148,306 460:382 434:250 448:192
448:369 447:22 441:54 432:194 419:61 419:19,185 416:187 415:93,205,264
"""


def repeated(words: str) -> MeanCumulative:
    """Work out the mean cumulative function of units written as end:age,age."""
    units = [word.split(":") for word in words.split()]
    events = [(i, int(a)) for i, (_, ages) in enumerate(units) for a in ages.split(",") if a]
    return mean_cumulative([int(end) for end, _ in units], *zip(*events, strict=True))


def at(found: MeanCumulative, age: int) -> tuple[float, int, float]:
    """The mean, the number at risk and the standard error at an age."""
    place = found.ages.tolist().index(age)
    return (
        float(found.mean[place]),
        int(found.at_risk[place]),
        float(found.standard_error[place]),
    )


def test_a_curve_with_its_errors_and_interval() -> None:
    # Printed in textbooks (D. G. Kleinbaum and M. Klein, Survival Analysis; recalled), recomputed.
    curve = kaplan_meier(*TREATED)
    assert curve.ages.tolist() == [6, 7, 10, 13, 16, 22, 23]
    assert curve.at_risk.tolist() == [21, 17, 15, 12, 11, 7, 6]
    assert curve.events.tolist() == [3, 1, 1, 1, 1, 1, 1]
    assert curve.left == pytest.approx(
        [0.8571428571, 0.8067226891, 0.7529411765, 0.6901960784, 0.6274509804, 0.5378151261,
         0.4481792717], abs=1e-9,
    )  # fmt: skip
    assert curve.standard_error == pytest.approx(
        [0.0763603548, 0.0869352852, 0.0963496530, 0.1068147078, 0.1140538653, 0.1282337517,
         0.1345914568], abs=1e-9,
    )  # fmt: skip
    assert curve.low == pytest.approx(
        [0.6197179553, 0.5631465646, 0.5031995108, 0.4316102225, 0.3675108560, 0.2677789368,
         0.1880520060], abs=1e-9,
    )  # fmt: skip
    assert curve.high == pytest.approx(
        [0.9515517476, 0.9228090192, 0.8893618352, 0.8490659633, 0.8049121895, 0.7467907176,
         0.6801426285], abs=1e-9,
    )  # fmt: skip


def test_a_curve_that_ends_at_nothing() -> None:
    # The same source: none of the 21 is cut off, so the share left is a plain count (computed).
    curve = kaplan_meier(*PLACEBO)
    left = np.array([19, 17, 16, 14, 12, 8, 6, 4, 3, 2, 1, 0]) / 21
    assert curve.left == pytest.approx(left, abs=1e-12)
    assert curve.standard_error[[0, 5]] == pytest.approx([0.0640564485, 0.1059711696], abs=1e-9)
    assert curve.ages[curve.left <= 0.5][0] == 8  # the median, printed as 8 (recalled)
    assert (curve.low[-1], curve.high[-1]) == (0.0, curve.high[-2])


def test_two_curves_compared() -> None:
    # The same source: 16.79 is printed (recalled), recomputed to more digits.
    found = log_rank([TREATED, PLACEBO])
    assert found.chi_squared == pytest.approx(16.792940989216547, rel=1e-12)
    assert found.p == pytest.approx(4.168809109e-5, rel=1e-9)
    assert found.observed == (9, 21)
    assert found.expected == pytest.approx((19.2505009480, 10.7494990520), abs=1e-9)
    assert found.dof == 1


def test_valve_seats() -> None:
    # Means: data read, computed by two routes. Errors: computed by the robust formula; the printed
    # ones belong to another estimator.
    found = repeated(VALVE_SEATS)
    expected = {
        61: (0.0243902439, 41, 0.02409097),
        76: (0.0487804878, 41, None),
        84: (0.0731707317, 41, None),
        139: (0.2195121951, 41, 0.07326981),
        202: (0.2926829268, 41, None),
        328: (0.5365853659, 41, None),
        404: (0.6835365854, 40, 0.13593896),
        581: (0.9848523748, 38, 0.17120360),
        586: (1.0142641395, 34, None),
        604: (1.0597186850, 22, None),
        621: (1.1185422144, 17, None),
        635: (1.1810422144, 16, None),
        640: (1.2435422144, 16, 0.22632442),
        646: (1.3204652913, 13, None),
        653: (1.5426875136, 9, 0.31165607),
    }
    for age, (mean, at_risk, error) in expected.items():
        seen = at(found, age)
        assert seen[:2] == (pytest.approx(mean, abs=1e-9), at_risk)
        assert error is None or seen[2] == pytest.approx(error, abs=1e-8)


@pytest.mark.parametrize(
    ("batch", "means", "errors"),
    [
        (
            BATCH_1,
            {33: 0.0666667, 88: 0.1333333, 250: 0.2, 635: 1.5333333, 650: 1.6},
            (0.0644061, 0.0877707, 0.1032796, 0.2470567, 0.2458545),
        ),
        (
            BATCH_2,
            {19: 0.0555556, 250: 1.0555556, 373: 1.3888889, 382: 1.4444444},
            (0.0539903, 0.1464017, 0.2241429, 0.2111436),
        ),
    ],
)
def test_braking_grids(batch: str, means: dict[int, float], errors: tuple[float, ...]) -> None:
    # Data read, means and errors computed.
    found = repeated(batch)
    for (age, mean), error in zip(means.items(), errors, strict=True):
        assert at(found, age)[0] == pytest.approx(mean, abs=1e-6)
        assert at(found, age)[2] == pytest.approx(error, abs=1e-6)


@pytest.mark.parametrize("whole", [True, False])
def test_curves_against_lifelines_and_statsmodels(whole: bool) -> None:
    chance = np.random.default_rng(6)
    for size in (1, 2, 30, 800):
        ages = chance.integers(0, 90, size) if whole else chance.exponential(900, size)
        back = chance.random(size) < 0.3
        back[0] = True
        curve = kaplan_meier(ages, back)
        peer = KaplanMeierFitter().fit(ages, back)
        some = curve.left > 0  # at nothing left each program has its own way
        share = peer.survival_function_at_times(curve.ages).to_numpy()
        assert curve.left == pytest.approx(share, rel=1e-9, abs=1e-15)
        bounds = peer.confidence_interval_survival_function_.loc[curve.ages].to_numpy()
        assert curve.low[some] == pytest.approx(bounds[some, 0], rel=1e-9)
        assert curve.high[some] == pytest.approx(bounds[some, 1], rel=1e-9)
        other = SurvfuncRight(ages.astype(float), back.astype(int))
        assert curve.ages.tolist() == other.surv_times.tolist()
        assert curve.at_risk.tolist() == other.n_risk.tolist()
        assert curve.left == pytest.approx(other.surv_prob, rel=1e-9, abs=1e-15)
        assert curve.standard_error[some] == pytest.approx(other.surv_prob_se[some], rel=1e-9)


# The peer's own affair with pandas.
@pytest.mark.filterwarnings("ignore:Starting with pandas version 4.0")
def test_log_rank_against_lifelines_and_statsmodels() -> None:
    chance = np.random.default_rng(7)
    for groups in (2, 3, 5):
        ages = chance.integers(0, 60, 400)
        group = chance.integers(0, groups, 400)
        back = chance.random(400) < 0.2 + 0.1 * group
        found = log_rank([(ages[group == g], back[group == g]) for g in range(groups)])
        peer = multivariate_logrank_test(ages, group, back)
        assert found.chi_squared == pytest.approx(peer.test_statistic, rel=1e-9)
        assert found.p == pytest.approx(peer.p_value, rel=1e-9)
        assert found.chi_squared == pytest.approx(survdiff(ages, back, group)[0], rel=1e-9)


def test_the_robust_error_by_its_definition() -> None:
    # J. F. Lawless and C. Nadeau 1995: the sum over units, worked out one by one.
    chance = np.random.default_rng(8)
    ends = chance.integers(50, 400, 25)
    unit = np.repeat(np.arange(25), chance.poisson(1.5, 25))
    ages = np.array([chance.integers(1, ends[one] + 1) for one in unit])
    found = mean_cumulative(ends, unit, ages)
    steps = found.events / found.at_risk
    for place, age in enumerate(found.ages):
        seen = slice(0, place + 1)
        total = 0.0
        for one in range(25):
            mine = np.array([np.sum(ages[unit == one] == t) for t in found.ages[seen]])
            watched = ends[one] >= found.ages[seen]
            total += np.sum(watched * (mine - steps[seen]) / found.at_risk[seen]) ** 2
        assert found.standard_error[place] == pytest.approx(np.sqrt(total), rel=1e-9), age

"""Shares and counts, and groups compared by them, against published values and statsmodels.

"Recalled" beside a value: the printed result is known from memory and was recomputed, its page
not seen. "Read": the text or a public reproduction of it was read. "Computed": from the
definition.
"""

from __future__ import annotations

from statistics import NormalDist

import numpy as np
import pytest
from scipy import stats
from statsmodels.stats.multitest import multipletests
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

from desktop_app.repair_jobs.share_interval import normal_factor
from desktop_app.returns_watched.honest_numbers.expected import (
    poisson_interval,
)
from desktop_app.returns_watched.honest_numbers.funnel import (
    chance_of_so_many,
    funnel_limit,
    luck_gives,
)
from desktop_app.returns_watched.honest_numbers.many_compared import (
    adjusted,
    chance_of_false_alarm,
)
from desktop_app.returns_watched.honest_numbers.proportion import (
    clopper_pearson,
    newcombe,
    wilson,
)
from desktop_app.returns_watched.honest_numbers.shrunken import (
    Spread,
    shrunken,
    spread_by_moments,
    spread_of_groups,
)

# R. E. Tarone, Biometrics 38 (1982) 215-220: tumours in 70 groups of rats (list recalled; its
# moments are those printed in Gelman and others, Bayesian Data Analysis, 3rd ed., 5.1).
RATS = """
0/20*7 0/19*4 0/18*2 0/17 1/20*4 1/19*2 1/18*2 2/25 2/24 2/23 2/20*6 1/10 5/49 2/19 5/46 3/27
2/17 7/49 7/47 3/20*2 2/13 9/48 10/50 4/20*7 10/48 4/19*3 5/22 11/46 12/49 5/20*2 6/23 5/19 6/22
6/20*3 16/52 15/47 15/46 9/24
"""
RAT_GROUPS = [
    tuple(map(int, group.split("/")))
    for group, _, times in (word.partition("*") for word in RATS.split())
    for _ in range(int(times or 1))
]


@pytest.mark.parametrize(
    ("k", "n", "score", "exact"),
    [
        (81, 263, (0.2552885199, 0.3662095770), (0.2527367456, 0.3676219226)),
        (15, 148, (0.0623863995, 0.1604872417), (0.0578440101, 0.1616504903)),
        (0, 20, (0.0, 0.1611251581), (0.0, 0.1684334710)),
        (1, 29, (0.0061132143, 0.1717552188), (0.0008726469, 0.1776442955)),
        (7, 50, (0.0695083343, 0.2618619371), (0.0581917003, 0.2673960025)),
        (0, 10, (0.0, 0.2775327999), (0.0, 0.3084971078)),
        (50, 100, (0.4038315304, 0.5961684696), (0.3983211295, 0.6016788705)),
    ],
)
def test_a_share(k: int, n: int, score: tuple[float, float], exact: tuple[float, float]) -> None:
    # R. G. Newcombe, Statistics in Medicine 17 (1998) 857-872, table I (first four, recalled);
    # SciPy's documentation (7 of 50, exact, read); the rest computed.
    assert wilson(k, n) == pytest.approx(score, abs=1e-10)
    assert clopper_pearson(k, n) == pytest.approx(exact, abs=1e-10)


def test_the_rule_of_three() -> None:
    # 1 - 0.05^(1/10), the exact one-sided end for none of 10, computed from the binomial.
    assert clopper_pearson(0, 10, 0.90)[1] == pytest.approx(0.2588655509, abs=1e-10)


@pytest.mark.parametrize(
    ("counts", "interval"),
    [
        ((56, 70, 48, 80), (0.052431, 0.333873)),
        ((9, 10, 3, 10), (0.170523, 0.809018)),
        ((6, 7, 2, 7), (0.058228, 0.806250)),
        ((5, 56, 0, 29), (-0.038137, 0.192560)),
        ((0, 10, 0, 20), (-0.161125, 0.277533)),
        ((0, 10, 0, 10), (-0.277533, 0.277533)),
        ((10, 10, 0, 20), (0.679086, 1.0)),
        ((10, 10, 0, 10), (0.607509, 1.0)),
        # M. W. Fagerland and others, Statistical Methods in Medical Research 24 (2015) 224-254,
        # printed 0.019 to 0.34 (read).
        ((7, 34, 1, 34), (0.018921, 0.340369)),
    ],
)
def test_the_difference_of_two_shares(
    counts: tuple[int, int, int, int], interval: tuple[float, float]
) -> None:
    # R. G. Newcombe, Statistics in Medicine 17 (1998) 873-890, table II, method 10 (recalled).
    assert newcombe(*counts) == pytest.approx(interval, abs=1e-6)


@pytest.mark.parametrize(
    ("count", "interval"),
    [
        (0, (0.0, 3.6888794541)),
        (1, (0.0253178080, 5.5716433909)),
        (5, (1.6234863901, 11.6683320793)),
        (10, (4.7953886961, 18.3903560420)),
    ],
)
def test_a_poisson_count(count: int, interval: tuple[float, float]) -> None:
    # F. Garwood, Biometrika 28 (1936) 437-442 (computed).
    assert poisson_interval(count) == pytest.approx(interval, abs=1e-9)


def test_many_compared_at_once() -> None:
    # Y. Benjamini and Y. Hochberg, J. R. Statist. Soc. B 57 (1995) 289-300, 3.2 (read in SciPy's
    # documentation): four of fifteen stand out.
    p = [
        *(0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.3240),
        *(0.4262, 0.5719, 0.6528, 0.7590, 1.0),
    ]
    printed = [
        *(0.0015, 0.003, 0.0095, 0.035625, 0.0603, 0.0638571, 0.0638571, 0.0645, 0.0765, 0.486),
        *(0.581182, 0.714875, 0.753231, 0.813214, 1.0),
    ]
    assert adjusted(p) == pytest.approx(printed, abs=1e-6)
    assert adjusted(p[::-1]) == pytest.approx(printed[::-1], abs=1e-6)
    assert sum(one <= 0.05 for one in adjusted(p)) == 4


def test_the_chance_of_a_false_alarm() -> None:
    # 1 - 0.95^20, computed.
    assert chance_of_false_alarm(20) == pytest.approx(0.6415140776, abs=1e-10)


def test_the_spread_of_groups_by_moments() -> None:
    # Gelman and others, Bayesian Data Analysis, 3rd ed., 5.1 (recalled): printed 1.4 and 8.6;
    # the 71st group's mean 0.223, and 0.083 as its standard deviation with the rounded prior.
    assert len(RAT_GROUPS) == 70
    spread = spread_by_moments([k / n for k, n in RAT_GROUPS])
    assert spread is not None
    assert (spread.alpha, spread.beta) == pytest.approx((1.3561494, 8.6150579), abs=1e-6)
    assert shrunken(4, 14, spread).mean == pytest.approx(0.2234409528, abs=1e-8)
    rounded = shrunken(4, 14, Spread(1.4, 8.6))
    assert rounded.mean == pytest.approx(0.225)
    assert (rounded.low, rounded.high) == pytest.approx(stats.beta(5.4, 18.6).interval(0.95))


def test_the_spread_of_groups_by_likelihood() -> None:
    # BayesGOF's documentation (read): printed 2.3 and 14.1 for the same with the 71st group.
    spread = spread_of_groups(*zip(*[*RAT_GROUPS, (4, 14)], strict=True))
    assert spread is not None
    assert (spread.alpha, spread.beta) == pytest.approx((2.34161358, 14.11479989), abs=1e-4)


@pytest.mark.parametrize(
    ("size", "limits"),
    [
        (20, (-0.049589, -0.039718, 0.228468, 0.335172)),
        (50, (-0.016119, 0.013863, 0.179723, 0.240128)),
        (100, (0.014179, 0.040381, 0.157719, 0.198357)),
        (500, (0.059989, 0.073448, 0.126015, 0.142689)),
    ],
)
def test_funnel_limits(size: int, limits: tuple[float, ...]) -> None:
    # D. J. Spiegelhalter, Statistics in Medicine 24 (2005) 1185-1202, appendix (formula
    # recalled, values computed: no printed example was found).
    found = [funnel_limit([size], 0.1, p)[0] for p in (0.001, 0.025, 0.975, 0.999)]
    assert found == pytest.approx(limits, abs=1e-6)


def test_against_statsmodels() -> None:
    chance = np.random.default_rng(20)
    for _ in range(60):
        n1, n2 = (int(n) for n in chance.integers(1, 400, 2))
        k1, k2 = int(chance.integers(0, n1 + 1)), int(chance.integers(0, n2 + 1))
        assert wilson(k1, n1) == pytest.approx(
            proportion_confint(k1, n1, method="wilson"), rel=1e-9, abs=1e-12
        )
        assert clopper_pearson(k1, n1) == pytest.approx(
            proportion_confint(k1, n1, method="beta"), rel=1e-9, abs=1e-12
        )
        assert newcombe(k1, n1, k2, n2) == pytest.approx(
            confint_proportions_2indep(k1, n1, k2, n2, method="newcomb", compare="diff"),
            rel=1e-9,
            abs=1e-12,
        )
        p = chance.random(int(chance.integers(1, 30))) ** 3
        assert adjusted(p.tolist()) == pytest.approx(multipletests(p, method="fdr_bh")[1], rel=1e-9)


def test_the_two_sided_p_against_scipy() -> None:
    for seen, size, rate in [(0, 4, 0.1), (0, 60, 0.1), (3, 30, 0.1), (9, 25, 0.1), (40, 90, 0.68)]:
        few, many = stats.binom.cdf(seen, size, rate), stats.binom.sf(seen - 1, size, rate)
        wanted = min(1.0, 2 * min(few, many))
        assert chance_of_so_many(seen, size, rate) == pytest.approx(wanted, rel=1e-9)
        limits = (stats.binom.ppf(0.025, size, rate), stats.binom.ppf(0.975, size, rate))
        assert luck_gives(size, rate) == limits


def test_the_factor_of_the_usual_coverage() -> None:
    # "Recalled": NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1: 0.975 at 1.96.
    assert round(normal_factor(0.95), 2) == 1.96
    for coverage in (0.8, 0.9, 0.95, 0.99):
        assert normal_factor(coverage) == pytest.approx(stats.norm.ppf(0.5 + coverage / 2))
    assert normal_factor(0.95) == NormalDist().inv_cdf(0.5 + 0.95 / 2)

"""A gauge study against a published worked example, and its sums against other ways to them.

Data and results: AIAG, Measurement Systems Analysis, 4th ed. 2010, Ch. III, ten parts read three
times by each of three people; read in public reproductions, and recomputed to more digits.
"""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from desktop_app.parts_compared.instruments.gauge_study import (
    Anova,
    GaugeReading,
    GaugeRR,
    gauge_rr,
    study,
)

TEN_PARTS = """
  .29  .41  .64   .08  .25  .07   .04 -.11 -.15
 -.56 -.68 -.58  -.47 -1.22 -.68 -1.38 -1.13 -.96
 1.34 1.17 1.27  1.19  .94 1.34   .88 1.09  .67
  .47  .50  .64   .01 1.03  .20   .14  .20  .11
 -.80 -.92 -.84  -.56 -1.20 -1.28 -1.46 -1.07 -1.45
  .02 -.11 -.21  -.20  .22  .06  -.29 -.67 -.49
  .59  .75  .66   .47  .55  .83   .02  .01  .21
 -.31 -.20 -.17  -.63  .08 -.34  -.46 -.56 -.49
 2.26 1.99 2.01  1.80 2.12 2.19  1.77 1.45 1.87
-1.36 -1.25 -1.31 -1.68 -1.62 -1.50 -1.49 -1.77 -2.16
"""


def published() -> list[GaugeReading]:
    """The published readings."""
    return [
        GaugeReading("ABC"[place // 3], part, place % 3 + 1, float(word))
        for part, line in enumerate(TEN_PARTS.strip().splitlines(), 1)
        for place, word in enumerate(line.split())
    ]


@pytest.fixture
def found() -> GaugeRR:
    """What the program makes of them."""
    result = gauge_rr(published())
    assert result is not None
    return result


def sums(table: Anova) -> list[float]:
    """The sums of squares of parts, people, interaction, repeats and all."""
    every = (table.parts, table.people, table.interaction, table.repeats, table.total)
    return [one.total for one in every]


def test_the_sums_of_squares(found: GaugeRR) -> None:
    # Reproductions of the AIAG example (read), recomputed.
    assert sums(found.anova) == pytest.approx(
        [88.3619344444, 3.1672622222, 0.3589822222, 2.7589333333, 94.6471122222], abs=1e-9
    )
    table = found.anova
    every = (table.parts, table.people, table.interaction, table.repeats, table.total)
    assert [one.dof for one in every] == [9, 2, 18, 60, 89]


def test_the_interaction_is_pooled(found: GaugeRR) -> None:
    # Data read; F and p computed from them with the F distribution.
    assert found.anova.f == pytest.approx(0.4337210301, abs=1e-8)
    assert found.anova.p == pytest.approx(0.9741064043, abs=1e-8)
    assert found.anova.pooled
    assert found.interaction is None
    assert found.repeatability_dof == 78
    assert found.nought == ()


def test_the_standard_deviations(found: GaugeRR) -> None:
    # Printed in reproductions: .199933 .226838 .302373 1.042327 1.085 (read); the rest recomputed.
    spreads = (
        found.repeatability,
        found.between_people,
        found.rr,
        found.parts,
        found.total,
    )
    assert spreads == pytest.approx(
        (0.1999331797, 0.2268375215, 0.3023715223, 1.0423274938, 1.0852995632), abs=1e-9
    )
    assert spreads[:4] == pytest.approx((0.199933, 0.226838, 0.302373, 1.042327), abs=2e-6)
    assert round(found.total or 0, 3) == 1.085


def test_the_shares_of_the_study_variation(found: GaugeRR) -> None:
    # Recomputed from the published data.
    assert found.between_people is not None
    assert found.parts is not None
    spreads = (found.repeatability, found.between_people, found.rr, found.parts)
    shares = [found.share(one) for one in spreads]
    assert shares == pytest.approx([18.4219, 20.9009, 27.8607, 96.0405], abs=1e-4)
    contributions = [share**2 / 100 for share in shares if share is not None]
    assert contributions == pytest.approx([3.3937, 4.3685, 7.7622, 92.2378], abs=1e-4)


def test_the_groups_that_can_be_told_apart(found: GaugeRR) -> None:
    # 1.41 PV / GRR; recomputed. The range method gives 5 on the same data, so the method is named.
    assert found.groups == pytest.approx(4.8605, abs=1e-3)
    assert int(found.groups or 0) == 4


def test_people_on_one_part_against_one_way_anova() -> None:
    # SciPy's f_oneway, an independent library: its F is MS people / MS repeats.
    chance = np.random.default_rng(7)
    for _ in range(20):
        values = {who: chance.normal(10.0, 0.02, 6) for who in ("Ann", "Ben")}
        readings = [
            GaugeReading(who, 1, trial, float(value))
            for who, several in values.items()
            for trial, value in enumerate(several, 1)
        ]
        result = gauge_rr(readings)
        assert result is not None
        f = result.anova.people.mean / result.anova.repeats.mean
        assert f == pytest.approx(float(stats.f_oneway(*values.values()).statistic), rel=1e-6)
        assert ("people" in result.nought) == (f < 1)
        assert result.between_people is not None
        assert result.between_people**2 == pytest.approx(
            max(0.0, result.anova.people.mean - result.anova.repeats.mean) / 6
        )


def test_the_components_come_back_on_average() -> None:
    # Simulated with known components, seed fixed: mean squares are unbiased, and the spread of a
    # study's variance is that of its degrees of freedom.
    chance = np.random.default_rng(11)
    variances = []
    for _ in range(600):
        bias = dict(zip("AB", chance.normal(0.0, 0.03, 2), strict=True))
        readings = [
            GaugeReading(who, 1, trial, 5.0 + bias[who] + float(chance.normal(0.0, 0.02)))
            for who in "AB"
            for trial in range(1, 6)
        ]
        result = study(readings)
        assert result.dof == 8
        assert result.repeatability is not None
        variances.append(result.repeatability**2 / 0.02**2)
    assert float(np.mean(variances)) == pytest.approx(1.0, abs=0.06)
    assert float(np.var(variances)) == pytest.approx(2 / 8, abs=0.05)

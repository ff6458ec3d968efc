"""The spread between vehicles against another program's random-effects estimate."""

from __future__ import annotations

import numpy as np
import pytest

from desktop_app.repair_jobs.rate_of_use import between_vehicles


@pytest.mark.parametrize("seed", range(5))
def test_against_statsmodels(seed: int) -> None:
    """statsmodels' combine_effects, method "dl": DerSimonian and Laird (1986)."""
    from statsmodels.stats.meta_analysis import combine_effects

    chance = np.random.default_rng(seed)
    variances = chance.uniform(0.01, 0.3, 40)
    values = chance.normal(3.5, 0.6, 40) + chance.normal(0, np.sqrt(variances))
    mean, between = between_vehicles(values.tolist(), variances.tolist())
    other = combine_effects(values, variances, method_re="dl")
    assert between == pytest.approx(other.tau2, rel=1e-9)
    assert mean == pytest.approx(other.mean_effect_re, rel=1e-9)

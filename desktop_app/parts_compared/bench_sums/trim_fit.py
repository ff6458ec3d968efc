"""Total fuel trim over air flow, split into a share that stays and air that goes unmeasured."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from desktop_app.parts_compared.instruments.instrument import PRIOR_DOF
from desktop_app.parts_compared.student_t import t_factor
from desktop_app.parts_compared.uncertainty import COVERAGE


@dataclass(frozen=True, slots=True)
class TrimFit:
    """trim = share + air / flow: `air` in the flow's unit, `share` a plain share, each +-."""

    air: float
    air_doubt: float
    share: float
    share_doubt: float


def total_trim(short: float, long: float) -> float:
    """Return the whole correction from both trims, all as shares (0.10 is 10 %)."""
    return (1 + short) * (1 + long) - 1


def fit_trim(
    flows: Sequence[float], trims: Sequence[float], trim_off: float, flow_off: float = 0.0
) -> TrimFit:
    """Fit trim = share + air / flow by least squares over two or more different flows.

    `trim_off` (a share) and `flow_off` are the expanded uncertainties of one reading;
    a flow misread moves its point by air / flow squared. These are trusted to a quarter, and
    pooled with what the points scatter about the line (JCGM 100:2008, 4.2.4 and G.4.2). Both
    results are weighted sums of the trims: their doubt is the root of squares (5.1.2).
    """
    x = [1 / flow for flow in flows]
    count, middle = len(x), math.fsum(x) / len(x)
    width = math.fsum((one - middle) ** 2 for one in x)
    for_air = [(one - middle) / width for one in x]
    for_share = [1 / count - middle * weight for weight in for_air]
    air, share = _weighted(for_air, trims), _weighted(for_share, trims)
    usual = [
        math.hypot(trim_off, air * one**2 * flow_off) / t_factor(COVERAGE, math.inf) for one in x
    ]
    rest = [trim - share - air * one for one, trim in zip(x, trims, strict=True)]
    dof = PRIOR_DOF + count - 2
    each = [math.sqrt((PRIOR_DOF * u**2 + math.hypot(*rest) ** 2) / dof) for u in usual]
    factor = t_factor(COVERAGE, dof)
    return TrimFit(air, factor * _doubt(for_air, each), share, factor * _doubt(for_share, each))


def _weighted(weights: Sequence[float], values: Sequence[float]) -> float:
    return math.fsum(weight * value for weight, value in zip(weights, values, strict=True))


def _doubt(weights: Sequence[float], each: Sequence[float]) -> float:
    return math.hypot(*(weight * u for weight, u in zip(weights, each, strict=True)))

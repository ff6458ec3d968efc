"""Many measured values at once, with their uncertainty and the chances that follow from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, TypeAlias

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]

#: Beyond this the t and the normal distribution agree to more digits than anyone measures.
_LIKE_NORMAL = 1e7
#: An uncertainty below this share of the values drowns in what floating point rounds off.
_DROWNED = 1e-7


@dataclass(frozen=True, slots=True)
class Chances:
    """The probabilities of lying below the low end, between the ends and above the high end."""

    below: Column
    within: Column
    above: Column


@dataclass(frozen=True, slots=True)
class ManyEstimates:
    """Values with standard uncertainties and degrees of freedom, one a place, in one unit.

    `shaky` marks those where rounding in the sums could be as large as the uncertainty.
    """

    value: Column
    u: Column
    dof: Column
    shaky: Marks

    def below(self, limit: Column) -> Column:
        """Return the probabilities that the true values are below the limits (may be infinite)."""
        import numpy as np
        from scipy.special import ndtr, stdtr

        t = (limit - self.value) / np.where(self.u > 0, self.u, 1.0)
        chance = stdtr(self.dof, t)
        normal = self.dof >= _LIKE_NORMAL
        if normal.any():
            chance[normal] = ndtr(t[normal])
        return np.where(self.u > 0, chance, self.value < limit)

    def chances(self, low: Column, high: Column) -> Chances:
        """Return how probably the true values lie where (JCGM 106:2012, clause 7)."""
        import numpy as np

        below, not_above = self.below(low), self.below(high)
        between = (self.value >= low) & (self.value <= high)
        return Chances(
            below,
            np.where(self.u > 0, np.maximum(0.0, not_above - below), between),
            np.where(self.u > 0, 1.0 - not_above, self.value > high),
        )

    def mirrored(self) -> ManyEstimates:
        """Return the estimates with their values' signs turned."""
        return ManyEstimates(-self.value, self.u, self.dof, self.shaky)


def combined_columns(
    value: Column, scale: Column, doubts: Sequence[tuple[Column, Column | None]]
) -> ManyEstimates:
    """Combine independent doubts (standard uncertainty, degrees of freedom; None: unlimited).

    As in JCGM 100, 5.1.2, with the degrees of freedom of G.4.1. `scale` is how large the
    readings behind each value are.
    """
    import numpy as np

    u = np.sqrt(np.sum([part * part for part, _ in doubts], axis=0))
    exact = np.logical_and.reduce([part == 0 for part, _ in doubts])
    divisor = np.where(u > 0, u, 1.0)
    losses = [(part / divisor) ** 4 / dof for part, dof in doubts if dof is not None]
    loss = np.sum(losses, axis=0)
    dof = np.where(loss > 0, 1 / np.where(loss > 0, loss, 1.0), np.inf)
    shaky = ~exact & ~((u > _DROWNED * scale + 1e-100) & (u < 1e100))
    return ManyEstimates(value, u, dof, shaky)

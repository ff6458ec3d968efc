"""The two sides of one measured dimension, in columns, and the estimates that follow from them."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, TypeAlias

from desktop_app.parts_compared.many_pairs.many_estimates import ManyEstimates, combined_columns
from desktop_app.parts_compared.many_pairs.many_sides import ManySides
from desktop_app.parts_compared.many_pairs.many_tools import Tools

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Column: TypeAlias = NDArray[np.float64]
    Marks: TypeAlias = NDArray[np.bool_]
    Numbers: TypeAlias = NDArray[np.int64]
    #: a standard uncertainty and its degrees of freedom (None: unlimited)
    Doubt: TypeAlias = tuple[Column, Column | None]


class Measured:
    """One dimension; `old` and `new` mark the pairs that have readings to judge on that side."""

    def __init__(self, sides: ManySides, place: int, tools: Tools) -> None:
        """Take the dimension in that place of the kind."""
        self.old, self.new = (sides.count[place] > 0) & ~sides.unknown[place]
        self._sides, self._place, self._tools = sides, place, tools

    def estimates(self, side: int, chosen: Numbers) -> ManyEstimates:
        """Return the values of one side, for the chosen pairs, as side_estimate does."""
        one = _Side(self._sides, self._tools, (self._place, side, chosen))
        doubts = [one.own(), one.usual(), one.resolution(), one.error()]
        return combined_columns(one.middle, one.scale, doubts)

    def differences(self, chosen: Numbers) -> ManyEstimates:
        """Return replacement minus removed, for the chosen pairs, as difference_estimate does."""
        import numpy as np

        old, new = (_Side(self._sides, self._tools, (self._place, side, chosen)) for side in (0, 1))
        names = self._tools.names()
        alike = names[old.tool] == names[new.tool]
        errors: list[Doubt] = [(one.error()[0] * ~alike, None) for one in (old, new)]
        return combined_columns(
            new.middle - old.middle,
            np.maximum(old.scale, new.scale),
            [*_spreads(old, new, alike), old.resolution(), new.resolution(), *errors],
        )


class _Side:
    """One side of one dimension for chosen pairs; `middle` is the value, `scale` its size."""

    def __init__(self, sides: ManySides, tools: Tools, at: tuple[int, int, Numbers]) -> None:
        import numpy as np

        self.tool, self.count = sides.tool[at], sides.count[at]
        self.spread, self.dof, self.share = sides.spread[at], sides.dof[at], sides.share[at]
        self.middle = sides.mean[at] + tools.half_steps()[self.tool]
        self.scale = np.maximum(np.abs(sides.least[at]), np.abs(sides.most[at]))
        self.known = tools.figures("usual_dof")[self.tool]
        self.stands_alone = (self.count > 1) & (self.share == 0)
        self._tools = tools

    def own(self) -> Doubt:
        """Return the doubt of the mean from the side's own scatter."""
        import numpy as np

        dof = self.dof - np.where(self.share > 0, self.known, 0.0)
        has_own = (dof > 0) & (self.share < 1)
        variance = self.spread**2 / self.count * (1 - self.share)
        return np.where(has_own, np.sqrt(variance), 0.0), np.where(has_own, dof, 1.0)

    def usual(self) -> Doubt:
        """Return the doubt of the mean from what the instrument usually scatters."""
        import numpy as np

        return np.sqrt(self.spread**2 / self.count * self.share), self.known

    def resolution(self) -> Doubt:
        """Return the doubt from reading in steps."""
        return self._tools.figures("resolution")[self.tool] / 2 / math.sqrt(3), None

    def error(self) -> Doubt:
        """Return the doubt from what the maker lets the instrument be off."""
        return self._tools.figures("max_error")[self.tool] / math.sqrt(3), None


def _spreads(old: _Side, new: _Side, alike: Marks) -> list[Doubt]:
    """Return the doubts of both means from scatter; `alike` marks one instrument on both sides.

    Then its usual scatter is one figure; and a single reading follows where the other side's
    scatter has shown that the usual one doesn't hold.
    """
    import numpy as np

    follows = np.zeros(len(old.count), dtype=bool)
    doubts: list[Doubt] = []
    for single, repeated in ((old, new), (new, old)):
        here = alike & (single.count == 1) & repeated.stands_alone
        u = repeated.spread * np.sqrt(1 / single.count + 1 / repeated.count)
        doubts.append((np.where(here, u, 0.0), np.where(here, repeated.dof, 1.0)))
        follows |= here
    doubts += [(np.where(follows, 0.0, u), dof) for u, dof in (old.own(), new.own())]
    (before, known), (after, other_known) = old.usual(), new.usual()
    of_old = np.where(alike, np.hypot(before, after), before)
    of_new = np.where(alike, 0.0, after)
    return [
        *doubts,
        (np.where(follows, 0.0, of_old), known),
        (np.where(follows, 0.0, of_new), other_known),
    ]

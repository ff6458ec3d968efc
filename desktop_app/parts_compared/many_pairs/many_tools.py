"""The instruments behind many readings, and which of several is the finest."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from desktop_app.parts_compared.instruments.instrument import Instrument, instrument_for
from desktop_app.parts_compared.part_kinds.part_kind import PartKind

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

UNKNOWN = -1


@dataclass(frozen=True, slots=True)
class Tools:
    """The instruments of all readings, the finest first.

    `of_reading` leads from (dimension, instrument column) to a place in `instruments`, or
    UNKNOWN.
    """

    instruments: tuple[Instrument, ...]
    of_reading: NDArray[np.int64]

    def figures(self, name: str) -> NDArray[np.float64]:
        """Return one figure of each instrument, in its unit; a last 0 where there is none."""
        import numpy as np

        return np.array([getattr(one, name) for one in self.instruments] + [0.0])

    def half_steps(self) -> NDArray[np.float64]:
        """Return half a step of each that is read as the largest size that enters, 0 of others."""
        import numpy as np

        return np.array(
            [one.resolution / 2 if one.goes_in else 0.0 for one in self.instruments] + [0.0]
        )

    def names(self) -> NDArray[np.int64]:
        """Return a number for the name of each instrument, equal for equal names."""
        import numpy as np

        names = sorted({one.name for one in self.instruments})
        return np.array([names.index(one.name) for one in self.instruments] + [-1])


def tools_of(
    kind: PartKind, names: Sequence[str | None], drawer: Mapping[str, Instrument]
) -> Tools:
    """Find the instrument of each name for each dimension, and their order."""
    import numpy as np

    found = [[instrument_for(name, one, drawer) for name in names] for one in kind.dimensions]
    known = {tool for row in found for tool in row if tool is not None}
    ordered = sorted(known, key=_fineness)
    place = {tool: number for number, tool in enumerate(ordered)}
    table = [[UNKNOWN if tool is None else place[tool] for tool in row] for row in found]
    return Tools(
        tuple(ordered),
        np.array(table, dtype=np.int64).reshape(len(kind.dimensions), len(names)),
    )


def _fineness(tool: Instrument) -> tuple[float, float, str]:
    return tool.max_error, tool.resolution, tool.name

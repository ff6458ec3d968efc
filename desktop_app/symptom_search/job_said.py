"""What was said of a job, as far as it can be searched: what its words in the index are made of."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from typing import NamedTuple


class JobSaid(NamedTuple):
    """Texts as they were written. `conditions` are the ids of those under which it happens.

    Each of `parts` is its kind's id and whatever else was written of it; `vehicle` its
    description, plate, tag and VIN; `seen` the conditions of parts and what inspections found.
    """

    concern: str
    cause: str
    correction: str
    conditions: Collection[str]
    codes: Sequence[str]
    parts: Sequence[tuple[str, ...]]
    vehicle: tuple[str, str | None, str | None, str | None]
    person: str
    seen: Sequence[str] = ()

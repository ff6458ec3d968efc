"""Jobs as lines of jobs.csv: one for a job and its first part, one for each further part.

The job's own cells stand on its first line alone, so that sums over a column come out right. An
earlier job that it is a return of stands beside them, further ones on lines below; one that comes
later in the file has a line of its own, so that no part of the job waits for it in an import.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import Any

from desktop_app.records_exchanged.export_cells import guarded_texts
from desktop_app.repair_jobs.trouble_code import codes_in

# The columns of jobs.csv before the part, as a job's own row has them behind its id; the codes
# come in between. Then price and hours, which stand behind the part.
BEFORE_CODES = (
    *("number", "opened_on", "closed_on", "vin", "plate", "vehicle", "odometer", "odometer_unit"),
    *("technician", "concern", "cause", "correction"),
)
OWN = ("id", *BEFORE_CODES, "system", "price_cents", "hours")
_NAMES = frozenset({"number", "vin", "plate", "vehicle", "technician", "system"})
_TEXTS = frozenset({"concern", "cause", "correction"})
_NO_PART, _NO_RETURN = ("", "", "", ""), ("", "")
_THREE_DECIMALS = re.compile(r"[0-9]+\.[0-9]{3}")

Line = tuple[Any, ...]
Part = tuple[str, str, str, str]  # kind, number, supplier, origin
Return = tuple[str, str, bool]  # the earlier job, the judgement, whether it stands before


@dataclass(frozen=True, slots=True)
class JobsTold:
    """Some jobs in their order: each a row as OWN names it, and by its id what hangs on it."""

    own: Sequence[Sequence[Any]]
    codes: Mapping[int, Sequence[str]]
    parts: Mapping[int, Sequence[Part]]
    returns: Mapping[int, Sequence[Return]]


def job_lines(jobs: JobsTold) -> Iterator[Line]:
    """Give the lines of some jobs, each with a cell for every column of jobs.csv."""
    for job, *cells, system, price, hours in zip(*_columns(jobs.own), strict=True):
        parts = [_named(part) for part in jobs.parts.get(job, ())]
        returns = jobs.returns.get(job, ())
        before = [_decided(one) for one in returns if one[2]]
        own = (*cells, _codes(jobs.codes.get(job, ())), system)
        blank: Line = (own[0], *("" for _ in own[1:]))
        head, tail = own, (price, hours)
        for at in range(max(1, len(parts), len(before))):
            part = parts[at] if at < len(parts) else _NO_PART
            yield (*head, *part, *tail, *(before[at] if at < len(before) else _NO_RETURN))
            head, tail = blank, ("", "")
        for one in returns:
            if not one[2]:
                yield (*blank, *_NO_PART, "", "", *_decided(one))


def _columns(own: Sequence[Sequence[Any]]) -> Iterator[Iterable[Any]]:
    """Give the cells of the jobs' own rows, column by column: they are quicker so."""
    for name, values in zip(OWN, zip(*own, strict=True), strict=False):
        if name in _NAMES:
            yield guarded_texts([text.strip() for text in values])
        elif name in _TEXTS:
            yield guarded_texts(values)
        elif name == "price_cents":
            yield map(_money, values)
        else:
            yield map(_hours, values) if name == "hours" else values


def _named(part: Part) -> Line:
    return tuple(guarded_texts([text.strip() for text in part]))


def _decided(one: Return) -> Line:
    return (guarded_texts([one[0].strip()])[0], one[1])


def _codes(codes: Sequence[str]) -> str:
    return " ".join(dict.fromkeys(filter(_reads_back, codes))) if codes else ""


@lru_cache(10_000)
def _reads_back(code: str) -> bool:
    """Whether an import reads a code as what it is; one that it doesn't would cost the row."""
    return codes_in(code) == (code,)


def _money(cents: int | None) -> str:
    if cents is None:
        return ""
    whole, rest = divmod(abs(cents), 100)
    return f"{'-' if cents < 0 else ''}{whole}.{rest:02d}"


def _hours(hours: float | None) -> str:
    """Return hours in figures that can be read in one way: 1.125 might be a thousand and more."""
    if hours is None:
        return ""
    figures = repr(hours)
    if "e" in figures:
        figures = f"{Decimal(figures):f}"
    return f"{figures}0" if _THREE_DECIMALS.fullmatch(figures) else figures

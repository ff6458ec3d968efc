"""The counted jobs of the year as columns, for figures over many jobs at once."""

from __future__ import annotations

from typing import TYPE_CHECKING

from desktop_app.returns_watched.honest_numbers.counted_jobs import CountedJobs
from desktop_app.weekly_report.once import once
from desktop_app.weekly_report.year_behind import YearBehind, counted_jobs

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray


@once
def year_columns(year: YearBehind) -> CountedJobs:
    """Return the counted jobs of a year in their order; all count under one name."""
    return counted_jobs(year.counted)


@once
def year_numbers(year: YearBehind) -> NDArray[np.object_]:
    """Return the numbers of the counted jobs (n,), to take those of some places from."""
    import numpy as np

    return np.array([job.number for job in year.counted], dtype=object)


@once
def days_well(year: YearBehind) -> NDArray[np.int64]:
    """Return for the counted jobs (n,) until which day their cars were known to be well, or 0."""
    import numpy as np

    return np.fromiter(
        (
            0 if job.well_until is None else max(0, (job.well_until - job.left_on).days)
            for job in year.counted
        ),
        np.int64,
    )

"""All written jobs of the demo, those of one car always in the order of its visits."""

from __future__ import annotations

from demo_shop import (
    written_jobs_back,
    written_jobs_march,
    written_jobs_now,
    written_jobs_seen,
    written_jobs_spring,
    written_jobs_summer,
)

JOBS = (
    *written_jobs_march.JOBS,
    *written_jobs_spring.JOBS,
    *written_jobs_summer.JOBS,
    *written_jobs_back.JOBS,
    *written_jobs_seen.JOBS,
    *written_jobs_now.JOBS,
)

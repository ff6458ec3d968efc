"""What was promised for an earlier job of a car that stands at the counter again."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from desktop_app.language import tr
from desktop_app.repair_jobs.odometer_questions import day_in_words
from desktop_app.repair_jobs.proof_said import unit_of
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.returns_watched.signs import STANDING_SIGNS
from desktop_app.returns_watched.standing import Standing
from desktop_app.returns_watched.stored_standing import read_standing
from desktop_app.returns_watched.watch_words import window_in_words
from desktop_app.returns_watched.window import Window
from desktop_app.shop_record.kept_value import kept_day
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.signs import signed


def promise_line(desk: Desk, names: Mapping[str, str]) -> Callable[[int], str]:
    """Return what says, of a job by its id, where it stands and whether its promise still runs."""

    def said(job_id: int) -> str:
        job = desk.ask(read_job, job_id)
        found = desk.ask(read_standing, job_id, desk.today(), names)
        if job is None or found is None:
            return ""
        stands = signed(STANDING_SIGNS, found.standing.value)
        if job.left_on is None or found.standing is not Standing.UNDER_WATCH:
            return stands
        window = Window(
            job.window_days, job.window_miles, "both" if job.window_rule == "both" else "first"
        )
        promised = window_in_words(window, unit_of(job))
        left = day_in_words(kept_day(job.left_on))
        return tr(
            "{stands}. The promise still runs: {promised}, from {left} on.",
            stands=stands,
            promised=promised,
            left=left,
        )

    return said

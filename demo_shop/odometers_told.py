"""Odometers of the written jobs that nobody of the shop read, and one that was typed wrong."""

from __future__ import annotations

from demo_shop.people import COUNTER
from demo_shop.storyteller import Storyteller
from desktop_app.repair_jobs.actions import keep_as_typed
from desktop_app.repair_jobs.odometer_actions import say_how_read
from desktop_app.repair_jobs.stored_questions import odometer_still_asked
from desktop_app.repair_jobs.stored_reading import read_job

HOW_READ = {"3-seen": "estimated", "17-seen": "told"}
# The counter was asked about two swapped digits, and kept what it had typed.
KEPT_AS_TYPED = ("5-seen",)


def tell_odometer(teller: Storyteller, key: str) -> None:
    """Say how a job's odometer reading came, or keep an odd one as it was typed."""
    job = teller.jobs[key]
    with teller.record.reading() as connection:
        view = read_job(connection, job)
        asked = odometer_still_asked(connection, view, teller.clock().date())
    if key in HOW_READ:
        teller.do(COUNTER, say_how_read, view.visit_id, HOW_READ[key])
    elif key in KEPT_AS_TYPED:
        assert asked is not None
        teller.do(COUNTER, keep_as_typed, f"visit:{view.visit_id}:odometer", asked)

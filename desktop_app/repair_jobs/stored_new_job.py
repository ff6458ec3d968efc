"""A new job of a visit, with the promise that the shop gives on its day."""

from __future__ import annotations

from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.stored import Job, JobSymptom
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import read_rules


def add_new_job(deed: Deed, visit: int, concern: str, same: bool, symptoms: tuple[str, ...]) -> int:
    """Put the job of one concern in and return its row."""
    rules = read_rules(deed.connection)
    job = deed.add(
        Job,
        number=look.next_number(deed),
        visit_id=visit,
        concern=concern.strip(),
        says_same=int(same),
        window_days=rules.window_days,
        window_months=rules.window_months or None,
        window_miles=rules.window_miles,
        window_rule=rules.window_rule,
    )
    for symptom in dict.fromkeys(symptoms):
        deed.add(JobSymptom, job_id=job, symptom=symptom)
    return job

"""A new job of a visit: the promise that the shop gives on its day, and who wrote it up."""

from __future__ import annotations

from desktop_app.repair_jobs import stored_lookup as look
from desktop_app.repair_jobs.stored import Job, JobPerson, JobSymptom
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.house_rules import read_rules


def add_new_job(
    deed: Deed, visit: int, concern: str, same: bool, symptoms: tuple[str, ...], by: str
) -> int:
    """Put the job of one concern in and return its row.

    `by` is who is at the desk: that person wrote it up, until somebody says another.
    """
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
    person = look.person_id(deed, by) if by else None
    if person is not None:
        deed.add(JobPerson, job_id=job, did="wrote up", person_id=person)
    return job

"""A new job of a visit: its promise, who wrote it up, and whose job it is once it is begun."""

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


def technician_is(deed: Deed, job_id: int, here: str) -> None:
    """Take who is at the desk for the technician, with the first finding or cause of a job.

    Nobody is named in the place of another, nor where something was found before: whoever took the
    name out again meant that.
    """
    person = look.person_id(deed, here) if here else None
    if person is not None and look.is_not_begun(deed, job_id):
        deed.change(Job, job_id, technician_id=person)

"""What was looked at first, and the codes, are counted with the jobs behind each."""

from __future__ import annotations

from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.shop_record.deed import Deed
from desktop_app.symptom_search.find import jobs_as_hits, what_led_there
from desktop_app.symptom_search.led_there import Led, count_led
from tests.symptom_search.conftest import OldJobs


def look(jobs: OldJobs, job: int, *findings: str, kind: str = "inspection") -> None:
    """Write what was found on a job, in its order."""

    def work(deed: Deed) -> None:
        for words in findings:
            deed.add(JobCheck, job_id=job, kind=kind, words=words)

    jobs.record.do("Look", work)


def test_only_the_first_finding_of_each_job_counts() -> None:
    led = count_led({1: "Cap tracked.", 2: "cap  tracked", 3: "Plugs worn"}, {})
    assert led.first_looked == (Led("cap  tracked", (2, 1)), Led("Plugs worn", (3,)))
    assert (led.looked_at, led.coded) == (3, 0)


def test_a_code_counts_once_a_job_and_the_commonest_come_first() -> None:
    led = count_led({}, {4: ["P0300", "P0300"], 5: ["P0300", "P0171"], 6: ["P0420"]}, most=2)
    assert led.codes == (Led("P0300", (5, 4)), Led("P0171", (5,)))
    assert led.coded == 3


def test_what_led_there_is_read_from_the_jobs(old_jobs: OldJobs) -> None:
    one = old_jobs.job("misses", codes=("P0300",))
    other = old_jobs.job("misses", codes=("P0300", "P0171"))
    third = old_jobs.job("misses")
    look(old_jobs, one, "Carbon track in the cap", "Plugs worn")
    look(old_jobs, other, "carbon track in the cap.")
    look(old_jobs, third, "Drove it", kind="proof")
    led = what_led_there(old_jobs.record, [one, other, third])
    assert led.first_looked == (Led("carbon track in the cap.", (other, one)),)
    assert led.codes == (Led("P0300", (other, one)), Led("P0171", (other,)))


def test_the_jobs_behind_a_number_are_shown_in_their_order(old_jobs: OldJobs) -> None:
    first, second = old_jobs.job("misses"), old_jobs.job("stalls")
    hits = jobs_as_hits(old_jobs.record, [second, 99, first])
    assert [hit.concern for hit in hits] == ["stalls", "misses"]

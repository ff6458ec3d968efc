"""The search index says what the record says: after each deed, its undoing, and a rebuilding."""

from __future__ import annotations

from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.stored import Pair, PartCondition
from desktop_app.repair_jobs.stored import Job, JobCondition, Person, TroubleCode, Vehicle
from desktop_app.shop_record.databases.dialect_search import jobs_indexed, read_texts
from desktop_app.shop_record.deed import Deed
from desktop_app.symptom_search.find import open_page
from desktop_app.symptom_search.stored_index import JobIndex
from tests.symptom_search.conftest import OldJobs


def index_rows(jobs: OldJobs) -> list[tuple[object, ...]]:
    """Return the whole index, job by job."""
    with jobs.record.reading() as connection:
        texts = read_texts(connection, sorted(jobs_indexed(connection)))
    return [(job, *words) for job, words in sorted(texts.items())]


def rebuilt(jobs: OldJobs, kinds: dict[str, PartKind]) -> list[tuple[object, ...]]:
    """Return the index as it is after it was written anew."""
    with jobs.record.deed("Rebuild") as deed:
        JobIndex(kinds).rebuild(deed.connection)
    return index_rows(jobs)


def change(jobs: OldJobs, kept: type, row: int, **values: object) -> None:
    def work(deed: Deed) -> None:
        deed.change(kept, row, **values)

    jobs.record.do("Change something", work)


def test_a_changed_word_is_found_and_the_old_one_is_not(old_jobs: OldJobs) -> None:
    job = old_jobs.job("clunk over bumps")
    change(old_jobs, Job, job, cause="ball joint worn")
    assert old_jobs.numbers("joint") == ["J-001"]
    change(old_jobs, Job, job, cause="bush torn")
    assert old_jobs.numbers("joint") == []
    old_jobs.record.undo()
    assert old_jobs.numbers("joint") == ["J-001"]


def test_undoing_a_job_takes_it_out_and_redoing_brings_it_back(old_jobs: OldJobs) -> None:
    old_jobs.job("clunk over bumps")
    old_jobs.record.undo()
    assert index_rows(old_jobs) == []
    old_jobs.record.redo()
    assert old_jobs.numbers("clunk") == ["J-001"]


def test_what_hangs_on_a_job_is_followed(old_jobs: OldJobs, kinds: dict[str, PartKind]) -> None:
    car = old_jobs.car("AB12 CDE", description="saloon")
    person = old_jobs.person("Tuuli")
    job = old_jobs.job("misses", car=car, technician_id=person)

    def work(deed: Deed) -> None:
        deed.add(JobCondition, job_id=job, condition="damp", happens=1)
        deed.add(TroubleCode, job_id=job, code="P0302", kind="stored", stage="found")
        pair = deed.add(Pair, job_id=job, part_kind="spark-plug", number_on_box="X77")
        deed.add(PartCondition, pair_id=pair, side="removed", term="eroded")

    old_jobs.record.do("Look closer", work)
    for word in ("damp", "p0302", "plug", "x77", "eroded", "saloon", "tuuli"):
        assert old_jobs.numbers(word) == ["J-001"], word
    change(old_jobs, Vehicle, car, plate="ZZ 1", description="estate")
    change(old_jobs, Person, person, name="Sanne")
    change(old_jobs, Pair, 1, part_kind="oil-filter")
    change(old_jobs, PartCondition, 1, term="collapsed")
    for word in ("zz1", "estate", "sanne", "filter", "collapsed"):
        assert old_jobs.numbers(word) == ["J-001"], word
    for word in ("ab12cde", "saloon", "tuuli", "plug", "eroded"):
        assert old_jobs.numbers(word) == [], word
    assert index_rows(old_jobs) == rebuilt(old_jobs, kinds)


def test_removing_what_hangs_on_a_job_is_followed(
    old_jobs: OldJobs, kinds: dict[str, PartKind]
) -> None:
    old_jobs.job("misses", parts=("spark-plug",), seen=("eroded",), happens=("damp",))

    def work(deed: Deed) -> None:
        deed.remove(PartCondition, 1)
        deed.remove(Pair, 1)
        deed.remove(JobCondition, 1)

    old_jobs.record.do("Take it out again", work)
    assert old_jobs.numbers("eroded") == []
    assert old_jobs.numbers("damp ") == []
    assert index_rows(old_jobs) == rebuilt(old_jobs, kinds)
    old_jobs.record.undo()
    assert old_jobs.numbers("eroded") == ["J-001"]
    assert index_rows(old_jobs) == rebuilt(old_jobs, kinds)


def test_a_condition_that_never_happens_is_not_among_the_words(old_jobs: OldJobs) -> None:
    old_jobs.job("misses", never=("damp",))
    assert old_jobs.numbers("damp ") == []


def test_an_empty_field_shows_the_cars_that_are_here_and_the_latest_jobs(
    old_jobs: OldJobs,
) -> None:
    old_jobs.job("one")
    old_jobs.job("two", left=None, here=True)
    old_jobs.job("three")
    here, latest = open_page(old_jobs.record, 2)
    assert [hit.number for hit in here] == ["J-002"]
    assert [hit.number for hit in latest] == ["J-003"]

"""What a person would say finds the past jobs that were about it, the best first."""

from __future__ import annotations

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.symptom_search.find import open_page
from tests.symptom_search.conftest import OldJobs

# The check digit holds; the number itself is the usual sample of a VIN.
VIN = "1M8GDM9AXKP042788"
IN_ITS_WINDOW = "2026-04-20T16:00:00+00:00"


@pytest.fixture
def some_jobs(old_jobs: OldJobs) -> OldJobs:
    """J-001 to J-006, each about something else."""
    compact = old_jobs.car("AB12 CDE", VIN, "1.8-litre compact hatchback, 1990s")
    marek = old_jobs.person("Marek")
    old_jobs.job(
        "misses in the rain and uphill",
        car=compact,
        codes=("P0300",),
        happens=("damp", "pulling"),
        parts=("distributor-cap", "distributor-rotor"),
        seen=("carbon tracking",),
        cause="cap tracked from damp",
        correction="cap and rotor replaced",
        technician_id=marek,
    )
    old_jobs.job("misses when hot", codes=("P0301",), happens=("hot",), never=("damp",))
    old_jobs.job("engine overheats in traffic", cause="fan relay burned")
    old_jobs.job("brakes squeal in the morning", parts=("brake-pads",))
    old_jobs.job("wipers stop in rain", correction="wiper motor replaced")
    old_jobs.job("coolant on the floor", cause="hose split", correction="hose replaced")
    return old_jobs


@pytest.mark.parametrize(
    ("text", "number"),
    [
        ("misfire P0300 damp", "J-001"),
        ("it misses when it is hot", "J-002"),
        ("carbon tracking", "J-001"),
        ("marek", "J-001"),
        ("compact hatchback", "J-001"),
        ("overheating", "J-003"),
        ("overheated", "J-003"),
        ("relay", "J-003"),
        ("squealing brakes", "J-004"),
        ("brake pads", "J-004"),
        ("wiper", "J-005"),
        ("hose", "J-006"),
    ],
)
def test_the_right_job_comes_first(some_jobs: OldJobs, text: str, number: str) -> None:
    assert some_jobs.numbers(text)[0] == number


@pytest.mark.parametrize("day", ["2026-00-03", "since 2026-00-03", "03.00.2026", "until 3/00/2026"])
def test_the_middle_of_a_day_is_no_jobs_number(some_jobs: OldJobs, day: str) -> None:
    assert "J-003" in some_jobs.find("00-03").as_json()["read_as"]
    assert "J-003" not in some_jobs.find(day).as_json()["read_as"]


@pytest.mark.parametrize("word", ["overheating", "squealing", "replaced", "coolant", "tracking"])
def test_no_letter_typed_loses_what_the_word_finds(some_jobs: OldJobs, word: str) -> None:
    whole = set(some_jobs.numbers(word))
    assert whole
    for end in range(4, len(word)):
        assert whole <= set(some_jobs.numbers(word[:end])), word[:end]


@pytest.mark.parametrize(
    ("text", "shown"),
    [
        ("AB12 CDE", "plate"),
        ("ab12cde", "plate"),
        ("ab-12-cde", "plate"),
        (VIN, "VIN"),
        (VIN.lower(), "VIN"),
        ("42788", "VIN ends in"),
        ("kp042788", "VIN ends in"),
        ("J-001", "job"),
        ("j-001", "job"),
        ("001", "job"),
        ("1", "job"),
    ],
)
def test_a_name_finds_its_jobs_alone(some_jobs: OldJobs, text: str, shown: str) -> None:
    found = some_jobs.find(text)
    assert [hit.number for hit in found.hits] == ["J-001"]
    assert [piece.kind for piece in found.read_as] == [shown]


def test_a_car_without_a_plate_is_found_by_its_tag(some_jobs: OldJobs) -> None:
    some_jobs.job("hums", car=some_jobs.car(tag="BIKE 7"))
    found = some_jobs.find("bike 7")
    assert [hit.number for hit in found.hits] == ["J-007"]
    assert [piece.kind for piece in found.read_as] == ["tag"]


def test_o_i_and_q_of_a_vin_are_read_as_digits(some_jobs: OldJobs) -> None:
    assert some_jobs.numbers("KPO42788") == ["J-001"]


def test_a_plate_and_a_symptom_put_that_cars_jobs_first(some_jobs: OldJobs) -> None:
    car = some_jobs.car("ZZ99 XYZ")
    some_jobs.job("oil change", car=car)
    some_jobs.job("misses at idle", car=car)
    assert some_jobs.numbers("zz99xyz misses")[:2] == ["J-008", "J-007"]


def test_a_related_code_is_named_as_such(some_jobs: OldJobs) -> None:
    why = {hit.number: hit.why for hit in some_jobs.find("P0300").hits}
    assert "same code: P0300" in why["J-001"]
    assert any(reason.startswith("related code") for reason in why["J-002"])


def test_a_condition_that_never_brings_it_on_speaks_against_a_job(some_jobs: OldJobs) -> None:
    assert some_jobs.numbers("misses when damp")[:2] == ["J-001", "J-002"]
    why = next(hit.why for hit in some_jobs.find("misses damp").hits if hit.number == "J-002")
    assert "but never: damp" in why


def test_a_condition_is_no_word_of_the_job(some_jobs: OldJobs) -> None:
    """What was ticked, or found at an inspection, is named as that: nobody wrote it."""
    some_jobs.job("jerks on the hill", happens=("rain", "first-minute"))
    why = {hit.number: hit.why for hit in some_jobs.find("jerks in the rain").hits}
    assert "happens: rain" in why["J-007"]
    assert "words: jerks" in why["J-007"]
    assert not any("condition or finding" in reason for reason in why["J-007"])
    found = some_jobs.find("wipers minute carbon")
    why = {hit.number: hit.why for hit in (*found.hits, *found.weak)}
    assert "condition or finding: minute" in why["J-007"]
    assert "condition or finding: carbon" in why["J-001"]
    assert "words: wipers" in why["J-005"]


def test_matched_words_are_marked_where_they_stand(some_jobs: OldJobs) -> None:
    hit = some_jobs.find("overheating traffic").hits[0]
    marked = [hit.concern[a:b] for a, b in hit.marks["concern"]]
    assert marked == ["overheats", "traffic"]


@pytest.mark.parametrize(
    ("slip", "number"),
    [("colant", "J-006"), ("coolnat", "J-006"), ("hsoe", "J-006"), ("wipper", "J-005")],
)
def test_a_typing_mistake_still_finds(some_jobs: OldJobs, slip: str, number: str) -> None:
    found = some_jobs.find(slip + " ")
    assert found.hits[0].number == number
    assert any("near word" in why for why in found.hits[0].why)


@pytest.mark.parametrize(
    ("concern", "text"),
    [
        ("blew its head gasket", "headgasket "),
        ("blew its headgasket", "head gasket "),
        ("gets a flat spot", "flatspot "),
        ("smells of washer fluid", "washerfluid "),
    ],
)
def test_words_written_as_one_or_apart_are_near(
    some_jobs: OldJobs, concern: str, text: str
) -> None:
    some_jobs.job("gasket of the sump seeps")
    number = f"J-{some_jobs.job(concern):03}"
    assert some_jobs.numbers(text)[0] == number


def test_of_two_alike_the_one_that_did_not_come_back_comes_first(old_jobs: OldJobs) -> None:
    stayed = old_jobs.job("wipers judder", correction="arm bent back")
    back = old_jobs.job("wipers judder", correction="arm bent back")
    old_jobs.came_back(back, stayed, "same symptom")
    hits = old_jobs.find("wipers judder").hits
    assert [hit.job_id for hit in hits] == [stayed, back]
    assert hits[0].score - hits[1].score == pytest.approx(2)
    assert "nothing heard" in hits[0].why
    assert "came back" in hits[1].why


def test_what_became_of_a_job_outweighs_no_word(old_jobs: OldJobs) -> None:
    old_jobs.job("wipers park wrong")
    back = old_jobs.job("wipers judder")
    old_jobs.came_back(back, 1, "same symptom")
    assert old_jobs.numbers("wipers judder ") == ["J-002", "J-001"]


def test_one_word_too_many_does_not_hide_the_job(some_jobs: OldJobs) -> None:
    assert some_jobs.numbers("hose replaced zebra stripes")[0] == "J-006"


def test_every_hit_says_why_and_none_comes_without_a_reason(some_jobs: OldJobs) -> None:
    for text in ("misses", "P0300", "rain", "AB12CDE", "hose replaced"):
        hits = some_jobs.find(text).hits
        assert hits
        assert all(hit.why for hit in hits)
        assert [hit.score for hit in hits] == sorted((h.score for h in hits), reverse=True)


@pytest.mark.parametrize("text", ["", "   ", "the ", "?!", "zzzzqqq", "\x00", '"', "a"])
def test_what_means_nothing_finds_nothing(some_jobs: OldJobs, text: str) -> None:
    assert some_jobs.numbers(text) == []


SIGNS = (
    """won't A/C NOT OR NEAR( " * ^ : concern: - ( ) 50% 5w-30 O'Brien { } + \\ ;-- misses % _"""
)
HOSTILE = st.one_of(
    st.text(max_size=80), st.lists(st.sampled_from(SIGNS.split()), max_size=12).map(" ".join)
)


@settings(max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(HOSTILE)
def test_nothing_that_is_typed_is_an_error(some_jobs: OldJobs, text: str) -> None:
    found = some_jobs.find(text, 5)
    assert len(found.hits) <= 5
    for hit in found.hits:
        for name, spans in hit.marks.items():
            if name in ("concern", "cause", "correction"):
                line = getattr(hit, name)
                assert all(0 <= a < b <= len(line) for a, b in spans)


def test_the_answer_has_the_shape_of_the_contract(some_jobs: OldJobs) -> None:
    answer = json.loads(json.dumps(some_jobs.find("misfire P0300").as_json()))
    assert set(answer) == {"read_as", "jobs", "words_in_common", "fixes"}
    assert answer["read_as"] == ["misfire", "P0300"]
    assert set(answer["jobs"][0]) == {"number", "score", "concern", "why"}
    assert set(answer["fixes"][0]) >= {"fix", "jobs", "came_back", "rate", "low", "high"}


def test_what_fixed_it_counts_parts_fitted_and_what_came_back(some_jobs: OldJobs) -> None:
    later = some_jobs.job("misses again", parts=("distributor-cap",), left=IN_ITS_WINDOW)
    some_jobs.came_back(1, later, "same symptom")
    some_jobs.came_back(2, later, "unrelated")
    fixes = {fix.fix: fix for fix in some_jobs.find("misfire").fixes}
    cap = fixes["distributor-cap"]
    assert (len(cap.jobs), cap.settled, cap.came_back) == (2, 2, 1)
    assert cap.rate == 0.5
    assert fixes["distributor-rotor"].came_back == 1


def test_what_fixed_it_stands_in_the_same_order_in_every_language(some_jobs: OldJobs) -> None:
    order = [fix.fix for fix in some_jobs.find("misfire").fixes]
    assert order[:2] == ["distributor-cap", "distributor-rotor"]
    some_jobs.kinds = dict(some_jobs.kinds)
    for kind, name in (("distributor-cap", "tapa"), ("distributor-rotor", "dedo")):
        written = some_jobs.kinds[kind].plain_names
        some_jobs.kinds[kind] = some_jobs.kinds[kind]._replace(name=name, written=written)
    found = some_jobs.find("misfire, distributor cap")
    assert [fix.name for fix in found.fixes][:2] == ["tapa", "dedo"]
    assert found.as_json()["read_as"] == ["misfire", "distributor cap"]
    assert [piece.in_words() for piece in found.read_as] == ["misfire", "tapa"]


def test_where_no_part_was_fitted_the_correction_is_the_fix(some_jobs: OldJobs) -> None:
    fixes = some_jobs.find("hose").fixes
    assert [(fix.name, len(fix.jobs)) for fix in fixes] == [("hose replaced", 1)]


def test_a_part_whose_kind_nobody_said_leaves_the_correction_to_be_the_fix(
    old_jobs: OldJobs,
) -> None:
    old_jobs.job("brakes squeal", parts=[""], correction="new pads")
    old_jobs.job("brakes squeal", parts=["", "brake-pads"], correction="new pads and clips")
    fixes = old_jobs.find("brakes squeal").fixes
    assert sorted(fix.name for fix in fixes) == ["disc brake pads", "new pads"]


def test_a_job_still_in_the_shop_has_fixed_nothing_yet(some_jobs: OldJobs) -> None:
    some_jobs.job("gearbox howls", correction="oil filled up", left=None, here=True)
    assert some_jobs.find("howls").fixes == ()


def test_a_word_that_is_understood_is_not_taken_for_a_slip(old_jobs: OldJobs) -> None:
    old_jobs.job("steams from the heater")
    assert old_jobs.numbers("steering heavy") == []


def test_a_symptom_never_mended_here_has_no_fixes_made_up_for_it(some_jobs: OldJobs) -> None:
    found = some_jobs.find("clutch slips in the rain")
    assert found.hits == ()
    assert found.weak
    assert found.fixes == ()


@pytest.mark.parametrize("text", ["put it on over there", "im there every week", "need it"])
def test_little_words_find_no_job(some_jobs: OldJobs, text: str) -> None:
    some_jobs.job("put it on, im over there every week, they need it")
    found = some_jobs.find(f"{text} ")
    assert (found.hits, found.weak) == ((), ())


@pytest.mark.parametrize(
    "text", ["hood latch cold ", "radio crackles when cold ", "The alarm goes off in the cold "]
)
def test_a_condition_lets_no_job_stand_among_the_hits(old_jobs: OldJobs, text: str) -> None:
    old_jobs.job("splutters", happens=("cold",))
    old_jobs.job("misses", happens=("cold", "rain"))
    assert old_jobs.find(text).hits == ()  # the word "cold" alone is a weak sign of them


def test_jobs_with_one_word_of_many_stand_apart(some_jobs: OldJobs) -> None:
    found = some_jobs.find("odd trim around the relay cover rattles ")
    assert found.hits == ()
    assert [hit.number for hit in found.weak] == ["J-003"]


def test_a_word_that_is_known_is_no_slip_for_another(old_jobs: OldJobs) -> None:
    old_jobs.job("seeded the lawn")
    assert old_jobs.numbers("needle ") == []


def test_a_vin_that_is_not_here_is_said(some_jobs: OldJobs) -> None:
    found = some_jobs.find("1M8GDM9AXKP042799")
    assert found.hits == ()
    assert [piece.in_words() for piece in found.read_as] == [
        "no car with the VIN 1M8GDM9AXKP042799 here"
    ]


def test_a_guess_finds_jobs_as_a_near_symptom_does(old_jobs: OldJobs) -> None:
    old_jobs.job("clutch slips", correction="Clutch replaced.")
    found = old_jobs.find("Revs climb but the car doesn't go any quicker uphill.")
    (hit,) = (*found.hits, *found.weak)
    assert found.read_as[0].in_words() == "perhaps clutch slip"
    assert "near symptom: clutch slip" in hit.why


def test_what_the_fixes_are_counted_over_is_said(some_jobs: OldJobs) -> None:
    assert some_jobs.find("coolant ").counted_over() == "Counted over one repair handed over."
    assert some_jobs.find("misses ").counted_over() == (
        "Counted over all 2 repairs handed over that match."
    )


def test_part_kinds_are_called_by_their_names(some_jobs: OldJobs) -> None:
    hits = some_jobs.find("distributor cap").hits
    assert "same part kind: distributor cap" in hits[0].why


def test_an_empty_field_shows_the_jobs_of_cars_that_are_here_first(some_jobs: OldJobs) -> None:
    record = some_jobs.record
    here, latest = open_page(record)
    assert (here, latest[0].number) == ((), "J-006")
    first = actions.write_up(
        record, WriteUp(concern="misses when damp", plate="TH 1", odometer=1)
    ).made
    assert first is not None
    with record.reading() as connection:
        visit = read_job(connection, first).visit_id
    second = actions.add_job(record, visit, "sweet smell").made
    assert second is not None
    # A car is here until the last of its jobs is handed over, with all of its jobs.
    for job in (first, second):
        assert [hit.job_id for hit in open_page(record)[0]] == [second, first]
        actions.hand_over(record, job, 1)
    here, latest = open_page(record)
    assert (here, [hit.job_id for hit in latest][:2]) == ((), [second, first])

"""What two jobs share and how far apart they are, as a person reads it: by names, not by ids."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.part_kinds.part_kind_file import read_kind
from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.job_facts import CUSTOMER_SAYS_SAME, spoken
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.window import BY_TIME, TIME_ONLY
from desktop_app.shop_record.own_program.resource_folder import resource_path
from tests.another_language import another_language

KINDS = ("distributor-rotor", "brake-pads")
BACK = Candidate("J-1", "J-2", 41, 880.4, True, BY_TIME, (), 0.456, "J-1")
ROW = ReturnRow(BACK, 1, 2, "hatchback", date(2026, 10, 1), date(2026, 11, 11))


def two_kinds() -> dict[str, PartKind]:
    """A rotor has no sides, a pad has."""
    files = [resource_path("part_kinds") / f"{one}.toml" for one in KINDS]
    return {file.stem: read_kind(file.read_text(encoding="utf-8"), file.name, tr) for file in files}


@pytest.mark.parametrize(
    ("reason", "says"),
    [
        ("same symptom: misfire", "same symptom: misfire"),
        ("same system: intake", "same system: intake and boost"),
        ("same system: of our own", "same system: of our own"),
        ("same code: P0300", "same code: P0300"),
        ("related code: P0300 and P0301", "related code: P0300 and P0301"),
        ("same part kind: brake-pads", "same part kind: brake pads"),
        ("same position: front", "same position: front"),
        (CUSTOMER_SAYS_SAME, "customer says it's the same"),
    ],
)
def test_a_reason_is_said_by_names(reason: str, says: str) -> None:
    assert spoken(reason) == says


@pytest.mark.parametrize(
    ("reason", "says"),
    [
        ("same symptom: misfire", "«same symptom: «misfire»»"),
        ("same system: ignition", "«same system: «Ignition»»"),
        ("related code: P0300 and P0301", "«related code: P0300 and P0301»"),
        ("same position: inner left", "«same position: «inner» «left»»"),
        ("same position: by the tank", "«same position: by the tank»"),
        (CUSTOMER_SAYS_SAME, "«customer says it's the same»"),
    ],
)
def test_a_reason_is_said_in_the_language_spoken(reason: str, says: str) -> None:
    with another_language():
        kinds = two_kinds()
        assert spoken(reason, kinds) == says


def test_a_position_is_said_as_the_kind_says_it_that_both_jobs_replaced() -> None:
    back = replace(BACK, reasons=("same part kind: brake-pads", "same position: inner"))
    with another_language():
        kinds = two_kinds()
        said = back.why(kinds)
    assert said == "«same part kind: «disc brake pads»»; «same position: «inner»»"


def test_how_far_apart_two_jobs_are_is_said_in_the_shops_unit() -> None:
    assert (ROW.apart("mi"), ROW.apart("km")) == ("41 days, 880 mi", "41 days, 1,417 km")
    assert ROW.distance_words("km") == "1,417 km"
    unknown = replace(BACK, days=1, distance_miles=None, decided_by=TIME_ONLY)
    row = replace(ROW, candidate=unknown)
    assert row.apart("mi") == "1 day (no odometer to say how far)"
    assert row.distance_words("mi") == "no odometer to say how far"


def test_each_row_has_a_key_of_its_own_and_opens_a_job_that_there_is() -> None:
    told = replace(ROW, later_id=0, asked_id=5, heard_by=HeardBy.TOLD)
    assert (ROW.key, told.key) == ((1, 2, 0), (1, 0, 5))
    assert (ROW.opens, told.opens) == ("J-2", "J-1")


def test_a_row_says_how_far_its_judging_is_and_why_it_came_back() -> None:
    judged = replace(ROW, candidate=replace(BACK, judgement=Judgement.SAME_PART))
    assert [one.state_words for one in (ROW, judged)] == ["not judged", "same part"]
    assert [one.is_open for one in (ROW, judged)] == [True, False]
    assert (ROW.cause_words, replace(ROW, cause_class="fitted-badly").cause_words) == (
        "",
        "fitted badly",
    )


def test_a_row_is_what_the_command_prints_of_its_candidate() -> None:
    assert ROW.as_json() == BACK.as_json()

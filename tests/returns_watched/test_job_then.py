"""One job of a return beside the other: what nobody wrote says so, what was written is told."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from desktop_app.parts_compared.pair_view import PairView
from desktop_app.repair_jobs.job_view import CheckMade, CodeRead
from desktop_app.repair_jobs.proof import CODES_READ, ProofLevel
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.self_tests_compared import StageTests
from desktop_app.returns_watched.job_then import JobThen
from tests.job_shown import CAR, job_shown

LEFT = "2026-11-03T16:00:00+00:00"
READ_AT_FIRST = ProofKept(steps={"saved": "2026-11-02T08:05:00+00:00"})
READ_AFTER = (CheckMade(1, "proof", CODES_READ, "done"),)


def pair(**written: Any) -> PairView:
    """A rotor of which only the kind is known."""
    texts = ("supplier", "lot", "number_removed", "number_on_box", "number_on_part", "fate")
    empty: dict[str, Any] = {
        "id": 7,
        "job_id": 1,
        "part_kind": "distributor-rotor",
        "position": "",
        "origin": None,
        "price_cents": None,
        "note_removed": "",
        "note_replacement": "",
        "fitted": True,
        "typed": {},
        "instruments_used": {},
    }
    rows = ("readings", "conditions", "explained", "limits", "photos")
    blank = dict.fromkeys(texts, "") | dict.fromkeys(rows, ())
    return PairView(**(empty | blank | written))


def codes(*read: str) -> tuple[CodeRead, ...]:
    """Read "P0300 stored found" and the like."""
    split = [one.split(" ", 2) for one in read]
    return tuple(CodeRead(row, *words) for row, words in enumerate(split))


def told(name: str, *, proof: ProofKept | None = None, **written: Any) -> str:
    """Return what one line says of a job of which no more than this is written."""
    return dict(JobThen(job_shown(**written), (), {}, proof=proof or ProofKept()).lines())[name]


def test_what_nobody_wrote_says_so_in_the_order_of_the_work() -> None:
    then = JobThen(job_shown(concern=""), (), {})
    assert (then.job_id, then.number) == (1, "J-1")
    assert then.lines() == (
        ("In the shop", "2026-11-02 to now, odometer not read"),
        ("Concern", "not written"),
        ("Happens", "nobody asked"),
        ("Codes", "nobody said"),
        ("Cause", "not named"),
        ("Correction", "not written"),
        ("Parts", "none written down"),
        ("Proved", "nobody said"),
        ("Declined", "nobody said"),
    )


def test_the_stay_says_the_odometer_at_hand_over_and_before_that_the_one_at_coming() -> None:
    came = {"odometer_in": 119_300, "vehicle": replace(CAR, odometer_unit="km")}
    assert told("In the shop", **came) == "2026-11-02 to now, 119,300 km"
    left = came | {"left_at": LEFT, "odometer_out": 119_312}
    assert told("In the shop", **left) == "2026-11-02 to 2026-11-03, 119,312 km"


def test_the_concern_says_that_it_is_the_same_again() -> None:
    assert told("Concern") == "misses in the rain"
    same = told("Concern", says_same=True)
    assert same == "misses in the rain (the customer says: the same again)"


@pytest.mark.parametrize(
    ("conditions", "says"),
    [
        ({"cold": True, "idle": True}, "cold, at idle"),
        ({"hot": False}, "never: hot"),
        ({"cold": True, "hot": False}, "cold; never: hot"),
    ],
)
def test_it_says_when_it_happens_and_when_never(conditions: dict[str, bool], says: str) -> None:
    assert told("Happens", conditions=conditions) == says


@pytest.mark.parametrize(
    ("read", "left", "says"),
    [
        ("P0301 stored found|P0300 stored found", None, "P0300, P0301"),
        ("P0300 pending found", None, "P0300 (pending)"),
        ("P0300 stored found", LEFT, "P0300; after the repair: not read"),
        (
            "P0300 stored found|P0301 permanent after repair",
            LEFT,
            "P0300; after the repair: P0301 (permanent)",
        ),
        ("P0301 stored after repair", LEFT, "nobody said; after the repair: P0301"),
    ],
)
def test_codes_are_told_as_they_were_found_and_as_they_were_after(
    read: str, left: str | None, says: str
) -> None:
    assert told("Codes", codes=codes(*read.split("|")), left_at=left) == says


def test_codes_that_were_looked_for_and_not_there_are_not_called_unread() -> None:
    assert told("Codes", proof=READ_AT_FIRST) == "read, none"
    bytes_read = ProofKept(tests={"found": StageTests("00 07 65 04")})
    assert told("Codes", proof=bytes_read) == "read, none"
    after = told("Codes", checks=READ_AFTER, left_at=LEFT)
    assert after == "nobody said; after the repair: read, none"


def test_a_cause_that_was_not_caught_is_not_one_that_nobody_named() -> None:
    assert told("Cause", cause_found=False) == "not caught"
    assert told("Cause", cause_found=True, cause="cap tracked") == "cap tracked"


@pytest.mark.parametrize(
    ("correction", "by", "says"),
    [
        ("cap replaced", "", "cap replaced"),
        ("cap replaced", "Ana", "cap replaced. Done by Ana."),
        ("cap replaced. ", "Ana", "cap replaced. Done by Ana."),
        ("", "Ana", "not written. Done by Ana."),
    ],
)
def test_the_correction_says_who_did_it_with_one_full_stop(
    correction: str, by: str, says: str
) -> None:
    assert told("Correction", correction=correction, technician=by) == says


@pytest.mark.parametrize(
    ("written", "says"),
    [
        ({}, "distributor rotor: origin not said."),
        (
            {"origin": "reman", "position": "rear left"},
            "distributor rotor, rear left: remanufactured.",
        ),
        (
            {
                "number_removed": " R-1 ",
                "number_on_box": "R-2",
                "number_on_part": "R-3",
                "origin": "used",
                "supplier": "the yard",
                "lot": "5",
                "fitted": False,
            },
            "distributor rotor: off R-1, on R-3, used, from the yard, lot 5, not fitted.",
        ),
        ({"number_on_box": "R-2", "supplier": " "}, "distributor rotor: on R-2, origin not said."),
        ({"origin": "of a kind of its own"}, "distributor rotor: of a kind of its own."),
    ],
)
def test_a_part_is_told_in_one_sentence(written: dict[str, Any], says: str) -> None:
    then = JobThen(job_shown(), (pair(**written),), {})
    assert dict(then.lines())["Parts"] == says


def test_a_part_that_was_judged_says_so_behind_its_facts_and_each_has_a_line() -> None:
    pairs = (pair(), pair(id=8, part_kind="distributor-cap"))
    said = dict(JobThen(job_shown(), pairs, {7: "○ explained"}).lines())["Parts"]
    assert said == (
        "distributor rotor: origin not said. ○ explained.\ndistributor cap: origin not said."
    )


def test_the_proof_says_its_level_its_words_and_what_speaks_against_it() -> None:
    words = {"proof_words": " by the hill road ", "left_at": LEFT, "proof_distance": 12.0}
    driven = told("Proved", proof_level=2, **words)
    assert driven == "road (2 of 4). It was driven on the road. by the hill road"
    still = {"codes": codes("P0300 pending after repair")}
    assert told("Proved", proof_level=2, **words, **still).endswith(
        "P0300 is written down as read after the repair."
    )
    unproven = "unproven (0 of 4). This repair was not proved before the car left."
    assert told("Proved", proof_level=0).startswith(unproven)


def test_a_level_that_was_chosen_and_not_borne_out_claims_nothing() -> None:
    said = told("Proved", proof_level=4, left_at=LEFT, conditions={"rain": True})
    assert said.startswith("same conditions (4 of 4) was chosen. What is written down does not")
    assert ProofLevel.SAME_CONDITIONS.means not in said


def test_what_was_declined_is_told() -> None:
    assert told("Declined", declined="nothing") == "nothing"


def test_a_part_whose_kind_nobody_said_is_named_so() -> None:
    told = JobThen(job_shown(), (pair(part_kind="", supplier="S1"),), {})
    assert dict(told.lines())["Parts"] == "kind not said: origin not said, from S1."

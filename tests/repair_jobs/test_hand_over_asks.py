"""What is asked before a car leaves: the answers that lack, and what can hurt somebody."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.repair_jobs.hand_over import (
    hand_over_question,
    left_open,
    left_unanswered,
    listed,
    open_answers,
    refit_unanswered,
    still_to_say,
    unanswered_words,
    ways_to_points,
)
from desktop_app.repair_jobs.job_view import CheckMade
from desktop_app.repair_jobs.proof_checks import maker_first, never_left_out, proof_checks
from tests.another_language import another_language
from tests.job_shown import job_shown

DONE = {
    "cause_found": True,
    "cause": "cap tracked",
    "correction": "cap replaced",
    "proof_level": 0,
    "declined": "nothing",
}
POINTS = (("axle nut to the maker's torque", True), ("wheel arch liner clipped", False))


def made(kind: str, *words: str) -> tuple[CheckMade, ...]:
    """These checks of a list, ticked as done."""
    return tuple(CheckMade(row, kind, one, "done") for row, one in enumerate(words))


def test_a_job_with_every_answer_lacks_none() -> None:
    assert open_answers(job_shown(**DONE)) == ()


def test_what_lacks_is_named_in_the_order_of_the_work() -> None:
    lacks = open_answers(job_shown(concern=" "), [(7, "rotor"), (8, "cap")])
    assert [one.pair for one in lacks] == [None, None, None, 7, 8, None, None]
    assert tuple(one.words for one in lacks) == (
        "what the customer says",
        "the cause, or “not caught”",
        "what was done about it",
        "the origin of the new rotor",
        "the origin of the new cap",
        "how far it was proved (“unproven” is an answer)",
        "what was declined or left undone (“nothing” is an answer)",
    )


@pytest.mark.parametrize(
    ("without", "lacks"),
    [
        ({"cause_found": None}, ["the cause, or “not caught”"]),
        ({"cause_found": None, "work": "maintenance"}, []),
        ({"cause_found": None, "work": "inspection"}, []),
        ({"correction": " "}, ["what was done about it"]),
        ({"correction": "", "cause_found": False}, []),
        ({"correction": "", "work": "maintenance"}, ["what was done about it"]),
        ({"correction": "", "work": "inspection"}, []),
        ({"proof_level": None}, ["how far it was proved (“unproven” is an answer)"]),
        ({"proof_level": None, "work": "inspection"}, []),
    ],
)
def test_no_answer_is_asked_for_that_such_work_has_not(
    without: dict[str, Any], lacks: list[str]
) -> None:
    assert [one.words for one in open_answers(job_shown(**(DONE | without)))] == lacks


def test_what_lacks_is_said_in_one_sentence() -> None:
    assert listed(["the cause"]) == "the cause"
    assert listed(["the cause", "the proof"]) == "the cause and the proof"
    assert listed(["a", "b", "c"]) == "a, b and c"


def test_a_point_for_closing_up_is_answered_by_done_and_by_not_needed() -> None:
    assert refit_unanswered(job_shown(), POINTS) == POINTS
    not_needed = (CheckMade(1, "refit", POINTS[0][0], "not needed"),)
    assert refit_unanswered(job_shown(checks=not_needed), POINTS) == POINTS[1:]
    other_list = made("proof", POINTS[0][0])
    assert refit_unanswered(job_shown(checks=other_list), POINTS) == POINTS


@pytest.mark.parametrize(
    ("left", "hurts", "says"),
    [
        (1, 0, "⚠ 1 point has no answer under “Before it is closed up”."),
        (1, 1, "“Before it is closed up”, 1 of them where someone can get hurt."),
        (3, 0, "⚠ 3 points have no answer under “Before it is closed up”."),
        (3, 2, "“Before it is closed up”, 2 of them where someone can get hurt."),
    ],
)
def test_open_points_are_counted(left: int, hurts: int, says: str) -> None:
    said = unanswered_words(left, hurts)
    assert said.endswith(says)
    assert said.startswith("⚠ ")


def test_only_the_figures_that_lack_the_job_are_named() -> None:
    for here, lack in (
        ({"system": "ignition"}, "who the technician is. Figures by person lack"),
        ({"technician_id": 1}, "which system it is. Figures by system lack"),
        ({}, "who the technician is; which system it is. Figures by person and by system lack"),
    ):
        said = still_to_say((), (), left_open(job_shown(**here), anybody=True))
        assert said == f"Still to say, or to leave out: {lack} this job then."


def test_one_way_leads_to_the_points_for_closing_up_while_one_has_no_answer() -> None:
    assert unanswered_words(0, 0) == ""
    assert ways_to_points(()) == ()
    (way,) = ways_to_points(POINTS)
    assert (way.way, way.pair) == ("Before it is closed up", None)


def test_only_what_can_hurt_somebody_is_asked_once_more() -> None:
    brakes = never_left_out("brakes")
    assert brakes
    assert never_left_out("ignition") == ()
    assert left_unanswered(job_shown(system="brakes")) == brakes
    assert hand_over_question(job_shown(system="ignition"), POINTS[1:]) == ""
    asked = hand_over_question(job_shown(system="brakes"), POINTS)
    assert asked.startswith("Someone can get hurt where these are left out")
    for words in (*brakes, POINTS[0][0]):
        assert words.rstrip(".") in asked
    assert POINTS[1][0] not in asked
    ticked = job_shown(
        system="brakes", checks=(*made("proof", *brakes), *made("refit", POINTS[0][0]))
    )
    assert hand_over_question(ticked, POINTS) == ""


def test_a_check_that_stands_in_both_lists_is_asked_about_once() -> None:
    check = never_left_out("brakes")[0]
    asked = hand_over_question(job_shown(system="brakes"), [(check, True)])
    assert asked.count(check.rstrip(".")) == 1


def test_a_check_that_was_kept_as_it_was_spoken_is_answered_too() -> None:
    brakes = never_left_out("brakes")
    with another_language():
        spoken = made("proof", *(f"«{one}»" for one in brakes))
        assert left_unanswered(job_shown(system="brakes", checks=spoken)) == ()


def test_every_list_of_checks_defers_to_the_makers_procedure() -> None:
    assert "maker" in maker_first()
    assert proof_checks("brakes").bay != proof_checks("ignition").bay

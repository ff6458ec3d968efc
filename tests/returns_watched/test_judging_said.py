"""What is said of a return while it is judged: what was decided, and whether it counts."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.judged_before import JudgedOnce
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_cost import CostWritten
from desktop_app.returns_watched.written_meanwhile import check_as_shown
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile

BARE = Judging(1, 2, "J-1", "J-2", first_by="Ana")
BACK = Judgement.SAME_PART
JUDGED = replace(
    BARE,
    judgement=BACK,
    judged_by="Ben",
    decisions=(JudgedOnce("same part", "Ben", "2026-11-16"),),
)
SAID = "Judged “same part” by Ben on 2026-11-16."


def test_a_return_that_was_told_has_a_row_of_its_own_beside_one_that_was_seen() -> None:
    told = replace(BARE, heard_by=HeardBy.PAPER)
    assert (BARE.is_told, told.is_told) == (False, True)
    assert (BARE.key, told.key) == ((1, 2, 0), (1, 0, 2))


def test_it_is_each_kind_of_comeback_once_and_none_without_a_first_one() -> None:
    also = (Judgement.SAME_SYMPTOM, BACK)
    assert replace(BARE, judgement=BACK, also=also).kinds() == (BACK, Judgement.SAME_SYMPTOM)
    assert replace(BARE, judgement=Judgement.UNRELATED, also=also).kinds() == ()
    assert replace(BARE, also=also).kinds() == ()


def test_an_hour_costs_what_it_cost_when_it_was_judged() -> None:
    assert BARE.hour_cost(4500) == 4500
    assert replace(BARE, hour_cost_cents=0).hour_cost(4500) == 0


def test_who_judges_the_own_repair_alone_is_asked_for_a_second_look() -> None:
    own = replace(JUDGED, judged_by="Ana")
    asked = "Ana did the repair on J-1 and judged this return. Should someone else look at it too?"
    assert own.own_job_question() == asked
    looked = replace(own, second_look="Ben on 2026-11-16")
    nobody = replace(own, first_by="", judged_by="")
    for one in (looked, nobody, JUDGED, replace(own, judgement=None)):
        assert one.own_job_question() is None


def test_two_vehicles_are_asked_about_with_what_is_written_alone() -> None:
    end = (
        "As two vehicles it leaves the list, the rates and the costs; what is written stays kept. "
        "Are J-1 and J-2 two vehicles?"
    )
    assert BARE.apart_question("Total: $5.00.") is None
    assert JUDGED.apart_question("Total: $5.00.") == f"It is judged “same part”. {end}"
    costs = replace(BARE, cost=CostWritten(cost_cents=500))
    assert costs.apart_question(" Total: $5.00. ") == f"Total: $5.00. {end}"


def test_what_nobody_has_judged_asks_what_it_is() -> None:
    assert BARE.decided(in_window=True) == "Nobody has judged it yet. What is it?"
    back = (*JUDGED.decisions, JudgedOnce(None, "Ana", "2026-11-17"))
    taken = replace(BARE, decisions=back)
    assert taken.decided(in_window=True) == (
        f"{SAID[:-1]}, taken back by Ana on 2026-11-17. It waits for a judgement again. What is it?"
    )


def test_two_vehicles_are_no_return_whether_it_was_judged_or_not() -> None:
    no_return = "These are two vehicles: it is no return, and nothing counts."
    assert replace(BARE, same_vehicle=False).decided(in_window=True) == no_return
    assert replace(JUDGED, same_vehicle=False).decided(in_window=True) == f"{SAID} {no_return}"


@pytest.mark.parametrize(
    ("judgement", "cause", "inside", "says"),
    [
        (BACK, None, True, "It counts as a comeback."),
        (BACK, "fitted-badly", True, "It counts as a comeback."),
        (BACK, None, False, "It is not counted: it lies beyond the window."),
        (
            *(BACK, "other-use", True),
            "It stays written down and is not counted: its cause is not ours.",
        ),
        (Judgement.UNRELATED, None, True, "It is not counted as a comeback."),
    ],
)
def test_what_was_decided_says_whether_it_counts(
    judgement: Judgement, cause: str | None, inside: bool, says: str
) -> None:
    one = replace(JUDGED, judgement=judgement, cause_class=cause)
    assert one.decided(in_window=inside) == f"{SAID} {says}"
    looked = replace(one, second_look="Ana on 2026-11-17")
    assert looked.decided(in_window=inside) == f"{SAID} Second look: Ana on 2026-11-17. {says}"


@pytest.mark.parametrize(
    ("now", "name", "says"),
    [
        ({"why": "pinched"}, "why", "Why: “pinched”"),
        ({"judgement": None}, "judgement", "What it is: emptied (judged by Ben)"),
        ({"judged_by": ""}, "judged_by", "Judged by: emptied"),
        ({"same_vehicle": False}, "same_vehicle", "Same vehicle: no, two vehicles"),
        ({"dangerous": True}, "dangerous", "Dangerous: yes"),
        ({"dangerous": False}, "dangerous", "Dangerous: no"),
        (
            {"also": (Judgement.SAME_SYMPTOM, Judgement.SAME_SYSTEM)},
            *("also", "As well: “same symptom”, “same system”"),
        ),
        (
            {"helping": ("fitted-badly", "sublet")},
            *("helping", "What helped it along: “fitted badly”, “sublet work”"),
        ),
        ({"cost": CostWritten(parts_cents=5)}, "cost.parts_cents", "0.05"),
    ],
)
def test_what_another_desk_wrote_meanwhile_is_said_as_the_page_would(
    now: dict[str, Any], name: str, says: str
) -> None:
    with pytest.raises(WrittenMeanwhile) as refused:
        check_as_shown("Judge", JUDGED, replace(JUDGED, **now), [name])
    assert says in refused.value.what


def test_what_is_as_it_was_shown_may_be_written_over() -> None:
    check_as_shown("Judge", JUDGED, replace(JUDGED, why="pinched"), ["judgement", "cause_class"])

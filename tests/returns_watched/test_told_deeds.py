"""Judging what was told: who, why and when, revised, taken back, undone, and at two desks."""

from __future__ import annotations

from datetime import date

import pytest

from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched import told_actions
from desktop_app.returns_watched.customer_actions import (
    change_answer,
    note_answer,
    say_source,
    take_answer_out,
)
from desktop_app.returns_watched.judged_before import told as told_over_time
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.judging_actions import say_dangerous
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_returns import read_returns, read_waiting
from desktop_app.returns_watched.stored_told_judging import read_told_judging
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile
from tests.watched_shop import as_made, job, judge_return, vehicle

TODAY = date(2026, 11, 14)


@pytest.fixture
def told(shop: ShopRecord) -> tuple[int, int]:
    """A job, and the answer in which its customer tells of the same trouble."""
    first = job(shop, vehicle(shop), "J-1", "2026-10-20", "2026-10-20", 10_000)
    asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 3)))
    shop.who = "Ana"
    return first, asked


def now(shop: ShopRecord, told: tuple[int, int]) -> Judging:
    with shop.reading() as connection:
        found = read_told_judging(connection, *told)
    assert found is not None
    return found


def test_all_that_is_said_about_it_is_kept_and_undone(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    before = now(shop, told)
    assert (before.later, before.judgement) == ("told 2026-11-03", None)
    done = told_actions.judge_told(shop, *told, "same part", why="their bill", shown=before)
    told_actions.name_told_cause(shop, *told, "part-died-early")
    told_actions.say_told_dangerous(shop, *told, True)
    told_actions.say_why_told(shop, *told, "another rotor on their bill")
    kept = now(shop, told)
    assert (kept.judgement, kept.judged_by, kept.why, kept.cause_class, kept.dangerous) == (
        *(Judgement.SAME_PART, "Ana", "another rotor on their bill", "part-died-early"),
        True,
    )
    assert done.words == "Judge the return that was told “same part”"
    for _ in range(4):
        shop.undo()
    assert now(shop, told) == before


def test_it_is_revised_and_taken_back_and_the_history_keeps_all(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    told_actions.judge_told(shop, *told, "cannot tell")
    told_actions.judge_told(shop, *told, "same symptom", by="Jon")
    told_actions.take_told_judgement_back(shop, *told)
    one = now(shop, told)
    words = told_over_time(one.decisions)
    assert words.startswith("Judged “cannot tell” by Ana on ")
    assert "revised to “same symptom” by Jon on " in words
    assert "taken back by Ana on " in words
    assert one.decided(in_window=True).endswith("It waits for a judgement again. What is it?")
    with shop.reading() as connection:
        assert [row.waits for row in read_waiting(connection, TODAY)] == [True]


def test_whoever_did_the_first_repair_is_asked_whether_someone_else_should_look(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    with shop.deed("Who did it") as deed:
        person = deed.add(Person, name="Ana")
        deed.change(Job, told[0], technician_id=person)
    told_actions.judge_told(shop, *told, "unrelated")
    assert now(shop, told).own_job_question() == (
        "Ana did the repair on J-1 and judged this return. Should someone else look at it too?"
    )
    told_actions.judge_told(shop, *told, "unrelated", by="Jon")
    assert now(shop, told).own_job_question() is None


def test_nobody_is_no_judge_and_another_word_is_no_judgement(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    shop.who = ""
    with pytest.raises(ShopTrouble, match="Nobody is named"):
        told_actions.judge_told(shop, *told, "same part")
    with pytest.raises(ShopTrouble, match="is not a judgement"):
        told_actions.judge_told(shop, *told, "perhaps", by="Ana")
    with pytest.raises(ShopTrouble, match="not one of the causes"):
        told_actions.judge_told(shop, *told, "same part", by="Ana", cause_class="moon")
    take_answer_out(shop, told[1])
    with pytest.raises(ShopTrouble, match="tells of the same trouble no longer"):
        told_actions.judge_told(shop, *told, "same part", by="Ana")


def test_another_desk_is_not_written_over(shop: ShopRecord, told: tuple[int, int]) -> None:
    shown = now(shop, told)
    told_actions.judge_told(shop, *told, "same part", by="Jon")
    with pytest.raises(WrittenMeanwhile) as refused:
        told_actions.judge_told(shop, *told, "unrelated", shown=shown)
    assert refused.value.stands == "What it is: “same part” (judged by Jon)"
    told_actions.say_told_dangerous(shop, *told, False)
    with pytest.raises(WrittenMeanwhile, match="Dangerous: no"):
        told_actions.say_told_dangerous(shop, *told, True, shown=shown)


def test_the_judgement_is_kept_with_what_was_told_last(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    again = as_made(note_answer(shop, told[0], "same trouble", on=date(2026, 11, 9)))
    told_actions.judge_told(shop, *told, "same part")
    with shop.reading() as connection:
        [row] = read_waiting(connection, TODAY)
    assert (row.came_on, row.judgement, row.asked_id) == (
        *(date(2026, 11, 3), Judgement.SAME_PART),
        told[1],
    )
    for refused in (
        lambda: take_answer_out(shop, again),
        lambda: change_answer(shop, again, "fine"),
    ):
        with pytest.raises(ShopTrouble, match="judged “same part”") as trouble:
            refused()
        assert "Take the judgement back first" in str(trouble.value.do)
    told_actions.take_told_judgement_back(shop, *told)
    take_answer_out(shop, again)
    note_answer(shop, told[0], "same trouble", on=date(2026, 11, 12))
    with shop.reading() as connection:
        assert len(read_waiting(connection, TODAY)) == 1


def test_it_is_said_whether_it_was_told_or_seen_on_paper(
    shop: ShopRecord, told: tuple[int, int]
) -> None:
    say_source(shop, told[1], "paper", Shown("told"))
    assert now(shop, told).later == "on paper 2026-11-03"
    change = say_source(shop, told[1], "paper", Shown("told"))  # the same is written already
    assert change.touched == frozenset()
    with pytest.raises(ShopTrouble, match="no way to know"):
        say_source(shop, told[1], "seen")
    shop.undo()
    assert now(shop, told).later == "told 2026-11-03"


def test_a_visit_is_said_to_have_been_dangerous_too(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", symptoms=["misfire"])
    later = job(shop, car, "J-2", "2026-11-02", None, symptoms=["misfire"])
    with shop.reading() as connection:
        shown = read_judging(connection, first, later)
    say_dangerous(shop, first, later, True, shown)
    judge_return(shop, first, later, "same part")
    with pytest.raises(WrittenMeanwhile):
        say_dangerous(shop, first, later, False, shown)
    with shop.reading() as connection:
        [row] = read_returns(connection)
    assert row.dangerous is True
    say_dangerous(shop, first, later, None)
    with shop.reading() as connection:
        assert read_returns(connection)[0].dangerous is None


def test_a_danger_that_was_told_goes_with_the_visit_that_speaks_for_it(shop: ShopRecord) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", symptoms=["misfire"])
    asked = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 1)))
    job(shop, car, "J-2", "2026-11-02", None, symptoms=["misfire"])
    for told, seen in ((None, None), (True, True)):
        told_actions.say_told_dangerous(shop, first, asked, told)
        with shop.reading() as connection:
            [row] = read_waiting(connection, TODAY)
        assert (row.later, row.dangerous) == ("J-2", seen)


def test_a_job_that_is_not_there_is_judged_by_nobody(shop: ShopRecord) -> None:
    only = job(shop, vehicle(shop), "J-1", "2026-10-20", "2026-10-20")
    with shop.reading() as connection:
        assert read_judging(connection, only, 99) is read_judging(connection, 99, only) is None

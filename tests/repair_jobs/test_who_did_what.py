"""Who did what in a job, the hours of searching, and what kind of work it is: rules and deeds."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.repair_jobs import actions, who_actions
from desktop_app.repair_jobs.hand_over import open_answers
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.stored import Job
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.who_did_what import DIDS, Doer, check_search, work_words
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched.actions import take_judgement_back
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.told_actions import judge_told, take_told_judgement_back
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile
from tests.watched_shop import as_made, job, judge_return, vehicle

HOURS = st.none() | st.floats(0, 10_000)


@pytest.fixture
def one(shop: ShopRecord) -> int:
    """A job just written up, in a shop of Ada (1) and Bo (2)."""
    actions.add_person(shop, "Ada")
    actions.add_person(shop, "Bo")
    made = actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=1000)).made
    assert made is not None
    return made


def kept(shop: ShopRecord, job_id: int) -> JobView:
    with shop.reading() as connection:
        return read_job(connection, job_id)


def person(shop: ShopRecord, name: str) -> int:
    with shop.reading() as connection:
        return {named: row for row, named in people_here(connection)}[name]


def test_somebody_is_named_for_each_thing_and_taken_out_again(shop: ShopRecord, one: int) -> None:
    ada, bo = person(shop, "Ada"), person(shop, "Bo")
    assert kept(shop, one).named == {}
    for did, who in zip(DIDS, (ada, bo, bo, ada), strict=True):
        who_actions.say_who(shop, one, did, who)
    assert [kept(shop, one).named[did].name for did in DIDS] == ["Ada", "Bo", "Bo", "Ada"]
    who_actions.say_who(shop, one, "searched", ada)
    who_actions.say_who(shop, one, "proved", None)
    said = {"wrote up": Doer(ada, "Ada"), "searched": Doer(ada, "Ada"), "refitted": Doer(bo, "Bo")}
    assert kept(shop, one).named == said


def test_each_deed_is_taken_back_and_has_its_words(shop: ShopRecord, one: int) -> None:
    ada, bo = person(shop, "Ada"), person(shop, "Bo")
    named = who_actions.say_who(shop, one, "searched", ada)
    again = who_actions.say_who(shop, one, "searched", bo)
    assert (named.words, again.touched) == ("Say who searched", frozenset({"job_person"}))
    shop.undo()
    assert kept(shop, one).named == {"searched": Doer(ada, "Ada")}
    shop.undo()
    assert kept(shop, one).named == {}
    shop.redo()
    assert kept(shop, one).named == {"searched": Doer(ada, "Ada")}
    assert who_actions.write_search_hours(shop, one, 1.5).words == "Write down the search hours"
    assert who_actions.choose_work(shop, one, "maintenance").words == "Say what kind of work it is"
    assert (kept(shop, one).search_hours, kept(shop, one).work) == (1.5, "maintenance")
    shop.undo()
    shop.undo()
    assert (kept(shop, one).search_hours, kept(shop, one).work) == (None, None)


def test_what_another_desk_said_meanwhile_is_not_written_over(shop: ShopRecord, one: int) -> None:
    ada, bo = person(shop, "Ada"), person(shop, "Bo")
    who_actions.say_who(shop, one, "proved", bo)
    with pytest.raises(WrittenMeanwhile, match="at another desk meanwhile: “Bo”"):
        who_actions.say_who(shop, one, "proved", ada, shown=Shown(None))
    who_actions.say_who(shop, one, "proved", None)
    with pytest.raises(WrittenMeanwhile, match="nobody is named"):
        who_actions.say_who(shop, one, "proved", ada, shown=Shown(bo))
    who_actions.write_search_hours(shop, one, 2.0)
    with pytest.raises(WrittenMeanwhile, match=r"meanwhile: 2\."):
        who_actions.write_search_hours(shop, one, 1.0, shown=Shown(None))
    who_actions.choose_work(shop, one, "inspection")
    with pytest.raises(WrittenMeanwhile, match="meanwhile: inspection only"):
        who_actions.choose_work(shop, one, "maintenance", shown=Shown(None))
    assert (kept(shop, one).named, kept(shop, one).search_hours) == ({}, 2.0)
    assert kept(shop, one).work == "inspection"


def test_searching_is_a_part_of_the_hours(shop: ShopRecord, one: int) -> None:
    who_actions.write_search_hours(shop, one, 3.0)  # the hours themselves come later
    with pytest.raises(ShopTrouble, match="3 hours of searching are more than the 2 hours"):
        actions.write_hours(shop, one, 2.0, unbilled=False)
    actions.write_hours(shop, one, 2.0, unbilled=True)  # nobody pays those; no bound on searching
    actions.write_hours(shop, one, 4.0, unbilled=False)
    with pytest.raises(ShopTrouble, match="more than the 4 hours") as refused:
        who_actions.write_search_hours(shop, one, 4.5)
    assert "raise Hours on Back On" in refused.value.sentence()
    assert kept(shop, one).search_hours == 3.0
    who_actions.write_search_hours(shop, one, None)
    actions.write_hours(shop, one, 2.0, unbilled=False)
    assert (kept(shop, one).search_hours, kept(shop, one).hours) == (None, 2.0)


@pytest.mark.parametrize("hours", [-0.5, 10_001, float("nan"), float("inf")])
def test_no_such_search_hours(shop: ShopRecord, one: int, hours: float) -> None:
    with pytest.raises(ShopTrouble, match="not accepted"):
        who_actions.write_search_hours(shop, one, hours)


def test_words_that_the_record_does_not_know_are_refused(shop: ShopRecord, one: int) -> None:
    with pytest.raises(ShopTrouble, match="“looked on” is not accepted"):
        who_actions.say_who(shop, one, "looked on", 1)  # type: ignore[arg-type]
    with pytest.raises(ShopTrouble, match="“warranty” is not accepted for the kind of work"):
        who_actions.choose_work(shop, one, "warranty")  # type: ignore[arg-type]
    with pytest.raises(ShopTrouble, match="no longer there"):
        who_actions.say_who(shop, one, "searched", 99)


@given(HOURS, HOURS)
def test_only_more_than_the_whole_is_refused(search: float | None, hours: float | None) -> None:
    if search is not None and hours is not None and search > hours:
        with pytest.raises(ShopTrouble):
            check_search(search, hours)
    else:
        check_search(search, hours)


def test_each_kind_of_work_asks_for_what_it_has(shop: ShopRecord, one: int) -> None:
    cause, done = "the cause, or “not caught”", "what was done about it"
    proved = "how far it was proved (“unproven” is an answer)"
    declined = "what was declined or left undone (“nothing” is an answer)"
    asked = {None: (cause, done, proved, declined), "maintenance": (done, proved, declined)}
    for work, missing in {**asked, "inspection": (declined,)}.items():
        who_actions.choose_work(shop, one, work)  # type: ignore[arg-type]
        assert tuple(one.words for one in open_answers(kept(shop, one))) == missing


def test_a_kind_of_work_has_words_for_people() -> None:
    words = [work_words(work) for work in (None, "inspection", "maintenance", "odd")]
    assert words == ["repair", "inspection only", "maintenance", "odd"]


@pytest.mark.parametrize("damage", [{"work": "odd"}, {"search_hours": -1.0}])
def test_a_damaged_job_is_told_and_not_shown(
    shop: ShopRecord, one: int, damage: dict[str, object]
) -> None:
    with shop.deed("Damage it") as deed:
        deed.change(Job, one, **damage)
    with pytest.raises(ShopDamaged):
        kept(shop, one)


@pytest.mark.parametrize("told", [False, True], ids=["seen", "only told"])
def test_a_job_that_came_back_stays_a_repair_until_the_judgement_is_taken_back(
    shop: ShopRecord, told: bool
) -> None:
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20")
    if told:
        again = as_made(note_answer(shop, first, "same trouble"))
        judge_told(shop, first, again, "same part", by="Ana")
    else:
        again = job(shop, car, "J-2", "2026-11-03")
        judge_return(shop, first, again, "same part")
    with pytest.raises(ShopTrouble, match="as inspection only no rate would hold it"):
        who_actions.choose_work(shop, first, "inspection")
    who_actions.choose_work(shop, first, None)  # a repair it is
    (take_told_judgement_back if told else take_judgement_back)(shop, first, again)
    who_actions.choose_work(shop, first, "inspection")
    assert kept(shop, first).work == "inspection"

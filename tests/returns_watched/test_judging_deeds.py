"""What is written down beside a judgement: kept, read back, refused, and taken back by undo."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from sqlalchemy import text

from desktop_app.repair_jobs.actions import write_up
from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.judged_before import told
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_judging import open_changes, read_judging
from desktop_app.returns_watched.stored_returns import count_waiting, read_returns, read_waiting
from desktop_app.returns_watched.stored_then_now import read_chain
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from desktop_app.shop_record.written_meanwhile import WrittenMeanwhile
from tests.watched_shop import a_week_of_returns, job, vehicle

TODAY = date(2026, 11, 16)


@pytest.fixture(autouse=True)
def somebody(shop: ShopRecord) -> None:
    """Ana is at the desk, where a test names nobody else."""
    shop.who = "Ana"


@pytest.fixture
def pair(shop: ShopRecord) -> tuple[int, int]:
    ids = a_week_of_returns(shop)
    return ids["J-131"], ids["J-160"]


def _read(shop: ShopRecord, pair: tuple[int, int]) -> Judging:
    with shop.reading() as connection:
        found = read_judging(connection, *pair)
    assert found is not None
    return found


def test_all_that_is_said_is_kept_and_undone_one_by_one(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    before = _read(shop, pair)
    steps: list[Judging] = [before]
    for deed, *said in (
        (actions.judge_return, "same symptom"),
        (judging_actions.say_also, ["same part", "from our hands"]),
        (actions.name_cause_class, "fitted-badly"),
        (judging_actions.name_helping_causes, ["left-unproven", "fitted-badly"]),
        (judging_actions.write_evidence, " old part kept "),
        (judging_actions.write_first_view, "it clicked in"),
        (judging_actions.write_unpaid_hours, 1.25),
        (judging_actions.write_amount, "tow_cents", 8500),
        (judging_actions.name_who_changes, "Ben"),
        (judging_actions.set_change_day, "change_due", date(2026, 12, 1)),
    ):
        done = deed(shop, *pair, *said)
        assert done.touched == {"return_link"}
        steps.append(_read(shop, pair))
    now = steps[-1]
    assert now.kinds() == (
        Judgement.SAME_SYMPTOM,
        Judgement.SAME_PART,
        Judgement.FROM_OUR_HANDS,
    )
    assert (now.cause_class, now.helping) == ("fitted-badly", ("left-unproven",))
    assert (now.evidence, now.first_view) == ("old part kept", "it clicked in")
    assert (now.cost.unbilled_hours, now.cost.tow_cents) == (1.25, 8500)
    assert (now.change.by, now.change.due) == ("Ben", date(2026, 12, 1))
    for step in reversed(steps[:-1]):
        shop.undo()
        assert _read(shop, pair) == step


def test_another_judgement_drops_what_only_spoke_of_the_first(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    shop.who = "Ben"
    actions.judge_return(shop, *pair, "same symptom")
    judging_actions.say_also(shop, *pair, ["same part"])
    shop.who = "Ana"
    judging_actions.look_again(shop, *pair)
    assert _read(shop, pair).second_look == "Ana, 2026-11-16"
    actions.judge_return(shop, *pair, "same part")
    now = _read(shop, pair)
    assert (now.second_look, now.also) == ("", ())
    shop.undo()
    assert _read(shop, pair).second_look == "Ana, 2026-11-16"
    actions.take_judgement_back(shop, *pair)
    assert _read(shop, pair).second_look == ""


def test_another_main_cause_is_a_decision_of_who_named_it(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    shop.who = "Ann"
    actions.judge_return(shop, *pair, "same symptom")
    actions.name_cause_class(shop, *pair, "fitted-badly")
    shop.who = "Tom"
    actions.name_cause_class(shop, *pair, "new")
    actions.name_cause_class(shop, *pair, None)
    said = told(_read(shop, pair).decisions)
    new = next(one.words for one in RETURN_CAUSES if one.id == "new")
    assert said == (
        f"Judged “same symptom” by Ann on 2026-11-16, cause “{new}” by Tom on 2026-11-16, "
        "cause taken out by Tom on 2026-11-16."
    )


def test_two_cars_and_one_visit_are_no_return(shop: ShopRecord, pair: tuple[int, int]) -> None:
    other = write_up(shop, WriteUp(plate="OTHER 1", concern="misses too", odometer=50_000))
    assert other.made is not None
    with pytest.raises(ShopTrouble, match="cannot be a return"):
        actions.judge_return(shop, pair[0], other.made, "same symptom")
    with pytest.raises(ShopTrouble, match="cannot be a return"):
        actions.judge_return(shop, pair[1], pair[1], "same symptom")


def test_the_decisions_are_read_from_the_history(shop: ShopRecord, pair: tuple[int, int]) -> None:
    actions.say_why(shop, *pair, 'it said "row_id":1,"table":"return_link"} there')
    shop.who = "Ana"
    actions.judge_return(shop, *pair, "unrelated")
    shop.who = "Ben"
    actions.judge_return(shop, *pair, "same part")
    actions.judge_return(shop, pair[0] - 1, pair[1], "foretold")  # another return
    actions.judge_return(shop, *pair, "foretold")
    shop.undo()
    assert told(_read(shop, pair).decisions) == (
        "Judged “unrelated” by Ana on 2026-11-16, revised to “same part” by Ben on 2026-11-16."
    )


@pytest.mark.embedded
def test_reading_the_decisions_stops_where_the_return_began(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    actions.judge_return(shop, *pair, "unrelated")
    with shop.reading() as connection:  # an entry that could not be read is older
        seq = connection.execute(text("SELECT min(seq) FROM history")).scalar()
    with shop.deed("Spoil an old entry") as deed:
        named = '"row_id":1,"table":"return_link"}'
        deed.connection.execute(
            text("UPDATE history SET body = :body WHERE seq = :seq"), {"body": named, "seq": seq}
        )
    assert len(_read(shop, pair).decisions) == 1


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (lambda s, p: judging_actions.say_also(s, *p, ["same part"]), "beside a comeback only"),
        (lambda s, p: judging_actions.say_also(s, *p, ["foretold"]), "no kind of comeback"),
        (lambda s, p: judging_actions.name_helping_causes(s, *p, ["luck"]), "causes"),
        (lambda s, p: judging_actions.look_again(s, *p), "no judgement to confirm"),
        (lambda s, p: judging_actions.write_unpaid_hours(s, *p, -1.0), "0 to 10,000"),
        (lambda s, p: judging_actions.write_unpaid_hours(s, *p, float("nan")), "0 to 10,000"),
        (lambda s, p: judging_actions.write_amount(s, *p, "tow_cents", -1), "1,000,000.00"),
        (lambda s, p: judging_actions.write_amount(s, *p, "beer_cents", 1), "no part of the cost"),
        (lambda s, p: judging_actions.set_change_day(s, *p, "judged_at", None), "no day"),
        (
            lambda s, p: judging_actions.set_change_day(
                s, *p, "change_done_on", date(2026, 11, 17)
            ),
            "has not come yet",
        ),
        (lambda s, p: judging_actions.write_evidence(s, p[1], p[0], "x"), "cannot be a return"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_kept(
    shop: ShopRecord, pair: tuple[int, int], change: Any, says: str
) -> None:
    before = _read(shop, pair)
    with pytest.raises(ShopTrouble, match=says):
        change(shop, pair)
    assert _read(shop, pair) == before


def test_the_first_repairer_who_judges_is_asked_about(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    with shop.deed("Name") as deed:
        deed.change(Job, pair[0], technician_id=deed.add(Person, name="Ana"))
    assert _read(shop, pair).own_job_question() is None
    shop.who = "Ana"
    actions.judge_return(shop, *pair, "unrelated")
    assert "Ana did the repair on J-131" in str(_read(shop, pair).own_job_question())
    shop.who = "Ben"
    judging_actions.look_again(shop, *pair)
    assert _read(shop, pair).own_job_question() is None


def test_open_promises_are_listed_what_is_due_first(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    ids = (pair, (pair[0] - 1, pair[1]), (5, 6), (pair[0] - 1, pair[0]))
    for one, words in zip(ids, ("first", "second", "third", ""), strict=True):
        actions.promise_change(shop, *one, words)
    judging_actions.set_change_day(shop, *ids[0], "change_due", date(2026, 12, 24))
    judging_actions.set_change_day(shop, *ids[1], "change_due", date(2026, 11, 1))
    with shop.reading() as connection:
        found = open_changes(connection, TODAY)
    assert [one.change.words for one in found] == ["second", "first", "third"]
    assert (found[0].earlier, found[0].later) == ("J-104", "J-160")
    assert found[0].change.is_late(TODAY)
    judging_actions.set_change_day(shop, *ids[1], "change_done_on", TODAY)
    judging_actions.set_change_day(shop, *ids[0], "change_done_on", TODAY)
    judging_actions.set_change_day(shop, *ids[0], "change_check_on", date(2027, 1, 1))
    with shop.reading() as connection:
        assert [o.change.words for o in open_changes(connection, TODAY)] == ["third"]
        later = open_changes(connection, date(2027, 1, 1))
    assert [one.change.words for one in later] == ["first", "third"]


@pytest.mark.parametrize(
    "values",
    [
        {"also": "same part"},
        {"also": '["our fault"]'},
        {"helping_causes": '{"new": 1}'},
        {"helping_causes": '["luck"]'},
        {"also": "[" * 60_000},
        {"unbilled_hours": -2.0},
        {"change_due": "soon"},
        {"judgement": "bad"},
        {"cause_class": "NEW"},
        {"cost_cents": -1},
        {"tow_cents": 2**63 - 1},
        {"unbilled_hours": 1e308},
        {"judgement": "unrelated", "judged_at": "yesterday"},
    ],
)
def test_values_changed_from_outside_are_told_as_damage(
    shop: ShopRecord, pair: tuple[int, int], values: dict[str, Any]
) -> None:
    actions.say_why(shop, *pair, "x")
    with shop.deed("Damage") as deed:
        deed.change(ReturnLink, 1, **values)
    with pytest.raises(ShopDamaged):
        _read(shop, pair)
    with shop.reading() as connection, pytest.raises(ShopDamaged):
        read_returns(connection)


def _chain(shop: ShopRecord, earlier: int, later: int) -> list[str]:
    with shop.reading() as connection:
        return [one.number for one in read_chain(connection, earlier, later)]


def test_a_chain_runs_from_its_root_to_what_came_after(shop: ShopRecord) -> None:
    car = vehicle(shop)
    jobs = [
        job(shop, car, f"J-{n}", f"2026-0{n}-01", f"2026-0{n}-02" if n < 5 else None)
        for n in range(1, 6)
    ]
    assert _chain(shop, jobs[1], jobs[2]) == ["J-2", "J-3"]
    for one, other in ((0, 1), (1, 2), (2, 3)):
        actions.judge_return(shop, jobs[one], jobs[other], "same symptom")
    actions.judge_return(shop, jobs[3], jobs[4], "unrelated")
    assert _chain(shop, jobs[1], jobs[2]) == ["J-1", "J-2", "J-3", "J-4"]
    assert _chain(shop, jobs[3], jobs[4]) == ["J-1", "J-2", "J-3", "J-4", "J-5"]
    actions.name_cause_class(shop, jobs[0], jobs[1], "new")
    assert _chain(shop, jobs[1], jobs[2]) == ["J-2", "J-3", "J-4"]
    assert _chain(shop, jobs[1], 99) == []


@pytest.mark.parametrize(
    ("theirs", "mine", "says"),
    [
        (
            lambda s, p: actions.judge_return(s, *p, "same part", why="pinched"),
            lambda s, p, seen: actions.judge_return(s, *p, "unrelated", shown=seen),
            "What it is: “same part”; Why: “pinched” (judged by Ben).",
        ),
        (
            lambda s, p: actions.say_why(s, *p, "pinched"),
            lambda s, p, seen: actions.say_why(s, *p, "short", shown=seen),
            "Why: “pinched”.",
        ),
        (
            lambda s, p: actions.name_cause_class(s, *p, "fitted-badly"),
            lambda s, p, seen: actions.name_cause_class(s, *p, "sublet", shown=seen),
            "Main cause: “fitted badly”.",
        ),
        (
            lambda s, p: judging_actions.write_amount(s, *p, "tow_cents", 8500),
            lambda s, p, seen: judging_actions.write_amount(s, *p, "tow_cents", 1, shown=seen),
            "Towing: 85.00.",
        ),
        (
            lambda s, p: judging_actions.write_unpaid_hours(s, *p, 2.5),
            lambda s, p, seen: judging_actions.write_unpaid_hours(s, *p, 1.0, shown=seen),
            "Hours nobody pays: “2.5”.",
        ),
        (
            lambda s, p: judging_actions.set_change_day(s, *p, "change_due", TODAY),
            lambda s, p, seen: judging_actions.set_change_day(
                s, *p, "change_due", None, shown=seen
            ),
            "Due on: “2026-11-16”.",
        ),
        (
            lambda s, p: actions.promise_change(s, *p, "look twice"),
            lambda s, p, seen: actions.promise_change(s, *p, "hope", shown=seen),
            "What will be done differently: “look twice”.",
        ),
        (
            lambda s, p: actions.judge_return(s, *p, "same part"),
            lambda s, p, seen: actions.say_not_same_vehicle(s, *p, shown=seen),
            "What it is: “same part” (judged by Ben).",
        ),
    ],
)
def test_what_another_desk_wrote_meanwhile_is_not_written_over(
    shop: ShopRecord, pair: tuple[int, int], theirs: Any, mine: Any, says: str
) -> None:
    seen = _read(shop, pair)
    shop.who = "Ben"
    theirs(shop, pair)
    kept = _read(shop, pair)
    shop.who = "Ana"
    with pytest.raises(WrittenMeanwhile) as refused:
        mine(shop, pair, seen)
    assert says in refused.value.what
    assert _read(shop, pair) == kept
    mine(shop, pair, kept)  # seen by now
    assert _read(shop, pair) != kept


def test_one_rule_for_the_chain_where_a_cause_is_not_ours(shop: ShopRecord) -> None:
    car = vehicle(shop)
    one, two, three = (
        job(shop, car, f"J-{n}", f"2026-0{n}-01", f"2026-0{n}-02", system="ignition")
        for n in (1, 2, 3)
    )
    actions.judge_return(shop, one, two, "same symptom", cause_class="other-use")
    actions.judge_return(shop, two, three, "same symptom")
    assert _chain(shop, two, three) == ["J-2", "J-3"]
    with shop.reading() as connection:
        for rows in (read_returns(connection), read_returns(connection, date(2026, 1, 1))):
            found = {(row.earlier, row.later): row for row in rows}
            assert found["J-1", "J-3"].waits
            assert found["J-2", "J-3"].candidate.root == "J-2"
    actions.name_cause_class(shop, one, two, "fitted-badly")
    with shop.reading() as connection:
        for rows in (read_returns(connection), read_returns(connection, date(2026, 1, 1))):
            found = {(row.earlier, row.later): row for row in rows}
            assert not found["J-1", "J-3"].waits
            assert found["J-2", "J-3"].candidate.root == "J-1"
    actions.say_not_same_vehicle(shop, one, two)
    with shop.reading() as connection:
        found = {(row.earlier, row.later): row for row in read_returns(connection)}
    assert found["J-1", "J-3"].waits


def test_costs_at_another_return_of_the_same_visit_are_named(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    other = (pair[0] - 1, pair[1])
    judging_actions.write_amount(shop, *other, "tow_cents", 8500)
    assert _read(shop, pair).cost_elsewhere == ("J-104",)
    assert _read(shop, other).cost_elsewhere == ()
    actions.say_not_same_vehicle(shop, *other)
    assert _read(shop, pair).cost_elsewhere == ()
    actions.say_same_vehicle(shop, *other)
    assert _read(shop, pair).cost_elsewhere == ("J-104",)


def test_who_told_of_the_same_trouble_is_counted_with_what_waits(shop: ShopRecord) -> None:
    then = job(shop, vehicle(shop), "J-1", "2026-06-01", "2026-06-02")
    note_answer(shop, then, "same trouble", on=date(2026, 7, 1), words="goes elsewhere")
    with shop.reading() as connection:
        found = read_waiting(connection, TODAY)
        assert count_waiting(connection, TODAY) == 1
    [told] = found
    assert (told.earlier, told.later, told.concern_now) == (
        *("J-1", "told 2026-07-01", "goes elsewhere"),
    )
    note_answer(shop, then, "fine", on=date(2026, 7, 9))  # mended elsewhere: not by us
    with shop.reading() as connection:
        assert read_waiting(connection, TODAY) == (told,)

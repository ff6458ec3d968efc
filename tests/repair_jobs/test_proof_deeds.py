"""The deeds of a proof: each is kept, read back, undone, and refused where it cannot be."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from sqlalchemy import text

from desktop_app.repair_jobs import actions, proof_actions
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.repair_jobs.road_test import FaultEvery
from desktop_app.repair_jobs.self_tests import SelfTestState
from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble
from desktop_app.shop_record.written_meanwhile import Shown, WrittenMeanwhile


@pytest.fixture
def job(shop: ShopRecord) -> int:
    """A car that was taken in."""
    made = actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=1000)).made
    assert made is not None
    return made


def proof(shop: ShopRecord, job: int) -> ProofKept:
    """What is kept of the proof now."""
    with shop.reading() as connection:
        return read_proof(connection, job)


def test_all_of_a_proof_is_kept_and_read_back(shop: ShopRecord, job: int) -> None:
    proof_actions.meet_condition(shop, job, "damp", True)
    proof_actions.meet_condition(shop, job, "cold", True)
    proof_actions.meet_condition(shop, job, "cold", False)
    proof_actions.type_self_tests(shop, job, "found", " 41 01 00 07 65 04 ")
    proof_actions.enter_self_test(shop, job, "after repair", "misfire", SelfTestState.NOT_RUN)
    proof_actions.tick_step(shop, job, "saved", done=True)
    proof_actions.say_fault_every(shop, job, 40, "km")
    proof_actions.write_provoked(shop, job, Provoked(37, 10, 1, 10))
    proof_actions.write_provoked(shop, job, Provoked(37, 10, 0, 10))
    proof_actions.catch_here(shop, job, " lamp on again ")
    kept = proof(shop, job)
    assert kept.conditions == {"damp": True, "cold": False}
    assert kept.found.typed == "41 01 00 07 65 04"
    assert kept.after.states == {"misfire": SelfTestState.NOT_RUN}
    assert kept.steps == {"saved": "2026-11-16T12:00:00+00:00"}
    assert kept.every == FaultEvery(40, "km")
    assert kept.provoked == Provoked(37, 10, 0, 10)
    assert [one.words for one in kept.caught] == ["lamp on again"]


@pytest.mark.parametrize(
    "deed",
    [
        lambda shop, job: proof_actions.meet_condition(shop, job, "damp", True),
        lambda shop, job: proof_actions.type_self_tests(shop, job, "found", "00 07 65 00"),
        lambda shop, job: proof_actions.enter_self_test(
            shop, job, "found", "misfire", SelfTestState.COMPLETE
        ),
        lambda shop, job: proof_actions.tick_step(shop, job, "cleared", done=True),
        lambda shop, job: proof_actions.say_fault_every(shop, job, 2, "drives"),
        lambda shop, job: proof_actions.write_provoked(shop, job, Provoked(3, 1, 0, 1)),
        lambda shop, job: proof_actions.catch_here(shop, job, "lamp on again"),
    ],
)
def test_every_deed_can_be_undone_and_done_again(
    shop: ShopRecord, job: int, deed: Callable[[ShopRecord, int], Done]
) -> None:
    before = proof(shop, job)
    deed(shop, job)
    after = proof(shop, job)
    assert after != before
    shop.undo()
    assert proof(shop, job) == before
    shop.redo()
    assert proof(shop, job) == after


def test_what_is_taken_back_is_gone(shop: ShopRecord, job: int) -> None:
    proof_actions.meet_condition(shop, job, "damp", True)
    proof_actions.meet_condition(shop, job, "damp", None)
    proof_actions.type_self_tests(shop, job, "found", "00 07 65 00")
    proof_actions.type_self_tests(shop, job, "found", "  ")
    proof_actions.enter_self_test(shop, job, "found", "misfire", SelfTestState.COMPLETE)
    proof_actions.enter_self_test(shop, job, "found", "misfire", None)
    proof_actions.tick_step(shop, job, "saved", done=True)
    proof_actions.tick_step(shop, job, "saved", done=False)
    proof_actions.say_fault_every(shop, job, 40, "mi")
    proof_actions.say_fault_every(shop, job, None, "mi")
    proof_actions.write_provoked(shop, job, Provoked(3, 1, 0, 1))
    proof_actions.write_provoked(shop, job, None)
    proof_actions.catch_here(shop, job, "lamp on again")
    proof_actions.strike_caught(shop, 1)
    assert proof(shop, job) == ProofKept()


def test_the_same_again_changes_nothing(shop: ShopRecord, job: int) -> None:
    proof_actions.type_self_tests(shop, job, "found", "00 07 65 00")
    assert proof_actions.type_self_tests(shop, job, "found", "00 07 65 00").seq is None
    proof_actions.tick_step(shop, job, "saved", done=True)
    assert proof_actions.tick_step(shop, job, "saved", done=True).seq is None


def test_what_cannot_be_is_refused_and_nothing_is_kept(shop: ShopRecord, job: int) -> None:
    with pytest.raises(ShopTrouble, match="not four bytes"):
        proof_actions.type_self_tests(shop, job, "found", "00 07 65")
    with pytest.raises(ShopTrouble, match="no step"):
        proof_actions.tick_step(shop, job, "wished", done=True)
    with pytest.raises(ShopTrouble, match="above 0"):
        proof_actions.say_fault_every(shop, job, 0, "mi")
    with pytest.raises(ShopTrouble, match="What did the proof show"):
        proof_actions.catch_here(shop, job, "  ")
    assert proof(shop, job) == ProofKept()


def test_caught_here_opens_the_level_again_and_undo_brings_it_back(
    shop: ShopRecord, job: int
) -> None:
    def level() -> int | None:
        with shop.reading() as connection:
            return read_job(connection, job).proof_level

    actions.say_proof(shop, job, 2)
    proof_actions.catch_here(shop, job, "drones again in left bends")
    assert level() is None
    shop.undo()
    assert level() == 2
    assert proof(shop, job).caught == ()


def test_a_level_that_is_not_offered_is_refused(shop: ShopRecord, job: int) -> None:
    with pytest.raises(ShopTrouble, match="nobody has told us of a condition"):
        actions.say_proof(shop, job, 4)
    actions.tick_condition(shop, job, "damp", False)  # "never" is no condition to meet
    with pytest.raises(ShopTrouble, match="tick when it happens"):
        actions.say_proof(shop, job, 4)
    actions.tick_condition(shop, job, "damp", True)
    actions.say_proof(shop, job, 4)
    with shop.reading() as connection:
        assert read_job(connection, job).proof_level == 4


def test_the_moment_of_a_step_is_put_right_and_the_history_keeps_both(
    shop: ShopRecord, job: int
) -> None:
    proof_actions.tick_step(shop, job, "saved", done=True)
    proof_actions.time_step(shop, job, "saved", " 9:05 ")
    assert proof(shop, job).steps == {"saved": "2026-11-16T09:05:00+00:00"}
    proof_actions.time_step(shop, job, "saved", "2026-11-16 11:30")
    assert proof(shop, job).steps == {"saved": "2026-11-16T11:30:00+00:00"}
    shop.undo()
    assert proof(shop, job).steps == {"saved": "2026-11-16T09:05:00+00:00"}
    shop.undo()
    assert proof(shop, job).steps == {"saved": "2026-11-16T12:00:00+00:00"}


@pytest.mark.parametrize(
    ("step", "typed", "says"),
    [
        ("saved", "soon", "not a moment"),
        ("saved", "25:00", "not a moment"),
        ("saved", "2026-02-30 10:00", "not a moment"),
        ("saved", "2026-11-16 12:01", "still to come"),
        ("saved", "2026-11-15 12:00", "The car came on 16 November 2026"),
        ("driven", "11:00", "not ticked"),
    ],
)
def test_a_moment_that_cannot_be_is_refused(
    shop: ShopRecord, job: int, step: str, typed: str, says: str
) -> None:
    proof_actions.tick_step(shop, job, "saved", done=True)
    with pytest.raises(ShopTrouble, match=says):
        proof_actions.time_step(shop, job, step, typed)
    assert proof(shop, job).steps == {"saved": "2026-11-16T12:00:00+00:00"}


def test_a_moment_changed_from_outside_is_named(shop: ShopRecord, job: int) -> None:
    proof_actions.tick_step(shop, job, "saved", done=True)
    with shop.deed("Damage it") as deed:
        deed.connection.execute(text("UPDATE proof_step SET done_at = 'lately'"))
    with pytest.raises(ShopDamaged, match="lately"):
        proof(shop, job)


def test_nothing_is_caught_here_once_the_car_has_left(shop: ShopRecord, job: int) -> None:
    actions.say_proof(shop, job, 1)
    actions.hand_over(shop, job, 1000, ())
    with pytest.raises(ShopTrouble, match="The car has left"):
        proof_actions.catch_here(shop, job, "drones again")


def test_the_cars_own_use_is_read_only_where_it_is_asked_for(shop: ShopRecord, job: int) -> None:
    actions.hand_over(shop, job, 1000, (), "2026-11-16T12:00:00+00:00")
    later = WriteUp("misses", vehicle_id=1, odometer=4000, came_at="2027-02-14T12:00:00+00:00")
    second = actions.write_up(shop, later).made
    assert second is not None
    assert proof(shop, second).miles_a_day is None
    proof_actions.say_fault_every(shop, second, 7, "days")
    rate = proof(shop, second).miles_a_day
    assert rate == pytest.approx(3000 / 90, rel=0.2)


def test_bytes_changed_from_outside_are_told_as_damage(shop: ShopRecord, job: int) -> None:
    proof_actions.type_self_tests(shop, job, "found", "00 07 65 00")
    with shop.deed("From outside") as deed:
        deed.connection.execute(text("UPDATE self_tests SET typed = 'none'"))
    with pytest.raises(ShopDamaged, match="four bytes"):
        proof(shop, job)


def test_a_job_that_is_gone_has_no_proof(shop: ShopRecord) -> None:
    assert proof(shop, 99) == ProofKept()


AFTER_LEAVING: list[Callable[[ShopRecord, int], Done]] = [
    lambda shop, job: actions.say_proof(shop, job, 3),
    lambda shop, job: actions.tick_check(shop, job, "proof", "no leak", "done"),
    lambda shop, job: actions.write_code(shop, job, "P0300", "pending", "after repair"),
    lambda shop, job: actions.strike_code(shop, 1),
    lambda shop, job: proof_actions.write_tried(shop, job, "wet hill"),
    lambda shop, job: proof_actions.write_distance(shop, job, 31.0),
    lambda shop, job: proof_actions.meet_condition(shop, job, "damp", True),
    lambda shop, job: proof_actions.type_self_tests(shop, job, "after repair", "00 07 65 00"),
    lambda shop, job: proof_actions.enter_self_test(
        shop, job, "after repair", "misfire", SelfTestState.COMPLETE
    ),
    lambda shop, job: proof_actions.tick_step(shop, job, "driven", done=True),
    lambda shop, job: proof_actions.write_provoked(shop, job, Provoked(3, 1, 0, 1)),
]


@pytest.mark.parametrize("deed", AFTER_LEAVING)
def test_what_was_proved_stays_once_the_car_has_left(
    shop: ShopRecord, job: int, deed: Callable[[ShopRecord, int], Done]
) -> None:
    actions.write_code(shop, job, "P0302", "pending", "after repair")
    actions.say_proof(shop, job, 1)
    actions.hand_over(shop, job, 1000, ())
    with pytest.raises(ShopTrouble, match="what was proved at the hand-over stays"):
        deed(shop, job)
    shop.undo()  # the hand-over: the car is still here
    assert deed(shop, job).seq is not None


def test_words_and_distance_of_the_drive_are_kept_apart(shop: ShopRecord, job: int) -> None:
    proof_actions.write_distance(shop, job, 55.0)
    proof_actions.write_tried(shop, job, "tried hills", shown=Shown(""))
    with shop.reading() as connection:
        here = read_job(connection, job)
    assert (here.proof_words, here.proof_distance) == ("tried hills", 55.0)


def test_same_conditions_is_refused_where_one_was_not_met(shop: ShopRecord, job: int) -> None:
    actions.tick_condition(shop, job, "rain", True)
    proof_actions.meet_condition(shop, job, "rain", False)
    with pytest.raises(ShopTrouble, match="rain was not met"):
        actions.say_proof(shop, job, 4)
    proof_actions.meet_condition(shop, job, "rain", True)
    actions.say_proof(shop, job, 4)


@pytest.mark.parametrize(
    ("theirs", "mine", "stands"),
    [
        (
            lambda shop, job, **k: proof_actions.say_fault_every(shop, job, 3, "days", **k),
            lambda shop, job, **k: proof_actions.say_fault_every(shop, job, 40, "mi", **k),
            "once in 3 days",
        ),
        (
            lambda shop, job, **k: proof_actions.write_provoked(shop, job, Provoked(3, 1, 0, 1)),
            lambda shop, job, **k: proof_actions.write_provoked(
                shop, job, Provoked(9, 1, 0, 1), **k
            ),
            Provoked(3, 1, 0, 1).typed(),
        ),
    ],
    ids=["how often it came", "made to happen"],
)
def test_what_another_desk_said_of_the_fault_is_told_and_stays(
    shop: ShopRecord, job: int, theirs: Callable[..., Done], mine: Callable[..., Done], stands: str
) -> None:
    theirs(shop, job)
    kept = proof(shop, job)
    with pytest.raises(WrittenMeanwhile) as refused:
        mine(shop, job, shown=Shown(None))
    assert stands in refused.value.what
    assert proof(shop, job) == kept


def test_what_another_desk_emptied_is_told(shop: ShopRecord, job: int) -> None:
    with pytest.raises(WrittenMeanwhile, match="emptied"):
        proof_actions.say_fault_every(shop, job, 40, "mi", shown=Shown(FaultEvery(3, "days")))
    with pytest.raises(WrittenMeanwhile, match="emptied"):
        proof_actions.write_provoked(
            shop, job, Provoked(9, 1, 0, 1), shown=Shown(Provoked(3, 1, 0, 1))
        )


def test_bytes_are_put_right_and_nothing_is_taken_out_of_nothing(
    shop: ShopRecord, job: int
) -> None:
    assert proof_actions.type_self_tests(shop, job, "found", " ").seq is None
    assert proof_actions.meet_condition(shop, job, "damp", None).seq is None
    proof_actions.type_self_tests(shop, job, "found", "00 07 65 00")
    proof_actions.type_self_tests(shop, job, "found", "00 07 65 04")
    assert proof(shop, job).found.typed == "00 07 65 04"


def test_a_count_changed_from_outside_is_told_as_damage(shop: ShopRecord, job: int) -> None:
    proof_actions.write_provoked(shop, job, Provoked(3, 1, 0, 1))
    with shop.deed("Damage") as deed:
        deed.change(JobCheck, 1, outcome="often")
    with pytest.raises(ShopDamaged, match="“often” where a count before and after"):
        proof(shop, job)

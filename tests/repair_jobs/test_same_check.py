"""A check that a system and a part kind ask for in two wordings stands in the list once."""

from __future__ import annotations

from desktop_app.commands.shop_place import kinds_of
from desktop_app.repair_jobs import actions, proof_actions
from desktop_app.repair_jobs.proof_checks import check_sentence, proof_checks
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.repair_jobs.same_check import each_once, wordings
from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.repair_jobs.stored_reading import read_job
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord

ROTOR = "Cold start and fifteen minutes at idle with the misfire counters at zero."
CAP = "Cold start and idle, misfire counters at zero."
IGNITION = "misfire counters at zero for 15 min from cold"


def test_the_first_wording_stands_and_the_others_are_left_out() -> None:
    assert each_once((IGNITION, "Leads clear.", ROTOR, CAP)) == (IGNITION, "Leads clear.")
    assert each_once((CAP, ROTOR)) == (ROTOR,)
    assert each_once((CAP,)) == (CAP,)


def test_what_asks_for_less_stays_where_it_was_answered_and_is_not_taken_for_more(
    shop: ShopRecord,
) -> None:
    assert each_once((IGNITION, CAP), answered=[CAP]) == (IGNITION, CAP)
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=900))
    actions.tick_check(shop, 1, "proof", CAP, "done")
    with shop.reading() as connection:
        ticked = read_job(connection, 1).ticked("proof", (IGNITION, CAP))
    assert ticked == {IGNITION: "", CAP: "done"}


def test_the_list_of_an_ignition_job_with_a_cap_and_a_rotor_asks_nothing_twice() -> None:
    kinds, both = kinds_of(), ("distributor-rotor", "distributor-cap")
    parts = [check.say for one in both for check in kinds[one].proof]
    checks = proof_checks("ignition")
    asked = each_once((*checks.bay, *checks.road, *parts))
    assert [one for one in asked if "misfire counters" in one] == [IGNITION]
    assert sum("conditions of the concern" in one for one in asked) == 1


def test_all_begin_with_a_capital_and_end_with_a_stop() -> None:
    assert check_sentence(IGNITION) == "Misfire counters at zero for 15 min from cold."
    assert check_sentence(ROTOR) == ROTOR


def test_what_was_ticked_in_other_words_counts_and_can_be_taken_back(shop: ShopRecord) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=900))
    actions.tick_check(shop, 1, "proof", ROTOR, "done")

    def ticked() -> str:
        with shop.reading() as connection:
            return read_job(connection, 1).ticked("proof", (IGNITION,))[IGNITION]

    assert ticked() == "done"
    actions.tick_check(shop, 1, "proof", IGNITION, "")
    assert ticked() == ""


def test_what_was_answered_stays_in_the_list_whatever_system_is_chosen_then(
    shop: ShopRecord,
) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=900))
    general, ignition = proof_checks(""), proof_checks("ignition")
    for words, outcome in ((*general.bay, "done"), (*general.road, "not needed"), (ROTOR, "done")):
        actions.tick_check(shop, 1, "proof", words, outcome)
    proof_actions.write_provoked(shop, 1, Provoked(37, 10, 0, 10))
    actions.choose_system(shop, 1, "ignition")
    with shop.reading() as connection:
        job = read_job(connection, 1)
    asked = (*ignition.bay, *ignition.road)
    points = job.proof_points(asked)
    assert points == (*asked, *general.bay, *general.road)
    assert [outcome for outcome in job.ticked("proof", points).values() if outcome] == [
        *("done", "done", "not needed"),
    ]
    actions.tick_check(shop, 1, "proof", general.bay[0], "")
    with shop.reading() as connection:
        assert read_job(connection, 1).proof_points(asked) == (*asked, *general.road)


def test_every_wording_that_is_left_out_is_one_of_the_kinds() -> None:
    said = {check.say for kind in kinds_of().values() for check in kind.proof}
    left_out = {other for words in said for other in wordings(words)[1:]}
    assert ROTOR in left_out
    assert left_out <= said


def test_what_was_ticked_in_both_wordings_is_one_answer_from_then_on(shop: ShopRecord) -> None:
    actions.write_up(shop, WriteUp("misses", plate="TH 1", odometer=900))
    with shop.deed("As an older program kept it") as deed:
        for words in (ROTOR, IGNITION):
            deed.add(JobCheck, job_id=1, kind="proof", words=words, outcome="done")
    actions.tick_check(shop, 1, "proof", IGNITION, "")
    with shop.reading() as connection:
        assert read_job(connection, 1).ticked("proof", (IGNITION,)) == {IGNITION: ""}
    shop.undo()
    with shop.reading() as connection:
        assert read_job(connection, 1).ticked("proof", (IGNITION,)) == {IGNITION: "done"}

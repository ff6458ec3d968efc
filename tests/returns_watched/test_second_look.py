"""A second look takes a second person and holds for what it saw; no return brings a gain."""

from __future__ import annotations

from typing import Any

import pytest

from desktop_app.repair_jobs.stored import Job, Person
from desktop_app.returns_watched import actions, judging_actions
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.watched_shop import a_week_of_returns


@pytest.fixture
def pair(shop: ShopRecord) -> tuple[int, int]:
    shop.who = "Ana"
    ids = a_week_of_returns(shop)
    return ids["J-131"], ids["J-160"]


def _read(shop: ShopRecord, pair: tuple[int, int]) -> Judging:
    with shop.reading() as connection:
        found = read_judging(connection, *pair)
    assert found is not None
    return found


@pytest.mark.parametrize(
    "change",
    [
        lambda s, p: actions.name_cause_class(s, *p, "new"),
        lambda s, p: actions.say_why(s, *p, "it was another fault"),
        lambda s, p: actions.judge_return(s, *p, "same symptom", by="Cy"),
        lambda s, p: actions.judge_return(s, *p, "same symptom"),  # who confirmed judges now
    ],
)
def test_a_second_look_holds_for_what_it_saw_alone(
    shop: ShopRecord, pair: tuple[int, int], change: Any
) -> None:
    shop.who = "Ben"
    actions.judge_return(shop, *pair, "same symptom", cause_class="fitted-badly")
    shop.who = "Ana"
    judging_actions.look_again(shop, *pair)
    judging_actions.write_evidence(shop, *pair, "the old part is kept")
    assert _read(shop, pair).second_look == "Ana, 2026-11-16"
    change(shop, pair)
    assert _read(shop, pair).second_look == ""
    shop.undo()
    assert _read(shop, pair).second_look == "Ana, 2026-11-16"


def test_a_second_look_takes_a_second_person_with_a_name(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    shop.who = "Ben"
    actions.judge_return(shop, *pair, "unrelated")
    with pytest.raises(ShopTrouble, match="Ben judged this return"):
        judging_actions.look_again(shop, *pair)
    shop.who = ""
    with pytest.raises(ShopTrouble, match="Nobody is named"):
        judging_actions.look_again(shop, *pair)


def test_who_did_the_first_repair_is_no_second_person(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    with shop.deed("Name") as deed:
        deed.change(Job, pair[0], technician_id=deed.add(Person, name="Ben"))
    actions.judge_return(shop, *pair, "unrelated")
    shop.who = "Ben"
    with pytest.raises(ShopTrouble, match="Ben did the repair on J-131"):
        judging_actions.look_again(shop, *pair)
    assert _read(shop, pair).second_look == ""
    shop.who = "Cy"
    judging_actions.look_again(shop, *pair)


def test_no_more_comes_back_than_a_return_cost(shop: ShopRecord, pair: tuple[int, int]) -> None:
    write = judging_actions.write_amount
    change_rule(shop, "hour_cost_cents", 6_000)
    with pytest.raises(ShopTrouble, match=r"Got back \$5.00 is more than the \$0.00"):
        write(shop, *pair, "recovered_cents", 500)
    judging_actions.write_unpaid_hours(shop, *pair, 1.5)
    write(shop, *pair, "parts_cents", 3_850)
    with pytest.raises(ShopTrouble, match=r"Got back \$500.00 is more than the \$128.50"):
        write(shop, *pair, "recovered_cents", 50_000)
    assert _read(shop, pair).cost.recovered_cents is None
    write(shop, *pair, "recovered_cents", 12_850)
    for less in (
        lambda: judging_actions.write_unpaid_hours(shop, *pair, None),
        lambda: write(shop, *pair, "parts_cents", 3_849),
    ):
        with pytest.raises(ShopTrouble, match="more than the"):
            less()
    actions.judge_return(shop, *pair, "same part", cost_cents=1_000)
    write(shop, *pair, "recovered_cents", 13_850)
    with pytest.raises(ShopTrouble, match="more than the"):
        actions.judge_return(shop, *pair, "same part", cost_cents=0)
    with pytest.raises(ShopTrouble, match="more than the"):
        actions.judge_return(shop, *pair, "same part", cost_cents=999)
    actions.judge_return(shop, *pair, "same part", cost_cents=1_000)
    with shop.deed("As an older program let it be") as deed:
        deed.change(ReturnLink, 1, recovered_cents=99_999)
    write(shop, *pair, "recovered_cents", 90_000)  # nearer to what can be


def test_a_second_look_is_taken_back_and_the_judgement_stays(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    shop.who = "Ben"
    actions.judge_return(shop, *pair, "same symptom", why="the rotor")
    shop.who = "Ana"
    judging_actions.look_again(shop, *pair)
    done = judging_actions.take_second_look_back(shop, *pair)
    now = _read(shop, pair)
    assert (now.second_look, now.judgement, now.judged_by) == ("", "same symptom", "Ben")
    assert done.words == "Take the second look back"


def test_what_helped_is_not_named_once_more_as_the_main_cause(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    judging_actions.name_helping_causes(shop, *pair, ["fitted-badly", "left-unproven"])
    actions.judge_return(shop, *pair, "same symptom", cause_class="fitted-badly")
    now = _read(shop, pair)
    assert (now.cause_class, now.helping) == ("fitted-badly", ("left-unproven",))

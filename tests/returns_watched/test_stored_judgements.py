"""Judging returns: what is kept, what is refused, and that each deed can be taken back."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest
from sqlalchemy import select

from desktop_app.repair_jobs.stored import Job
from desktop_app.returns_watched import actions, judging_actions, window_actions
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.stored import ReturnLink
from desktop_app.returns_watched.stored_returns import read_returns_of_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.watched_shop import a_week_of_returns, job, vehicle


def _links(shop: ShopRecord) -> list[Any]:
    with shop.reading() as connection:
        return list(connection.execute(select(ReturnLink)))


@pytest.fixture(autouse=True)
def somebody(shop: ShopRecord) -> None:
    """Ana is at the desk, where a test names nobody else."""
    shop.who = "Ana"


@pytest.fixture
def pair(shop: ShopRecord) -> tuple[int, int]:
    ids = a_week_of_returns(shop)
    return ids["J-131"], ids["J-160"]


@pytest.mark.parametrize("judgement", list(Judgement))
def test_each_judgement_is_kept_with_who_when_and_why(
    shop: ShopRecord, pair: tuple[int, int], judgement: Judgement
) -> None:
    shop.who = "Odile"
    done = actions.judge_return(
        shop, *pair, judgement, why=" tip loose ", cause_class="fitted-badly", cost_cents=12_050
    )
    [link] = _links(shop)
    assert (link.judgement, link.judged_by, link.judged_at) == (
        judgement.value,
        "Odile",
        "2026-11-16T12:00:00+00:00",
    )
    assert (link.why, link.cause_class, link.cost_cents) == ("tip loose", "fitted-badly", 12_050)
    assert done.touched == {"return_link"}
    assert judgement.value in done.words


@pytest.mark.parametrize("day", [date.min, date(1899, 12, 31), date(3000, 1, 1), date.max])
def test_a_change_is_due_on_a_day_that_can_be(
    shop: ShopRecord, pair: tuple[int, int], day: date
) -> None:
    with pytest.raises(ShopTrouble, match="Accepted: 1900-01-01 to 2999-12-31"):
        judging_actions.set_change_day(shop, *pair, "change_due", day)
    assert _links(shop) == []


def test_a_second_judgement_replaces_the_first_and_keeps_what_was_said(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    actions.judge_return(shop, *pair, "same symptom", why="it misses again")
    actions.judge_return(shop, *pair, "cannot tell")
    [link] = _links(shop)
    assert (link.judgement, link.why) == ("cannot tell", "it misses again")


def test_pressing_the_same_judgement_twice_changes_nothing(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    actions.judge_return(shop, *pair, "same symptom")
    assert actions.judge_return(shop, *pair, "same symptom").seq is None


def test_a_judgement_taken_back_waits_again_and_undo_brings_it_back(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    actions.judge_return(shop, *pair, "unrelated", why="a wiper")
    actions.take_judgement_back(shop, *pair)
    with shop.reading() as connection:
        row = read_returns_of_job(connection, pair[1])[-1]
    assert (row.judgement, row.why, row.judged_at) == (None, "a wiper", None)
    shop.undo()
    with shop.reading() as connection:
        assert read_returns_of_job(connection, pair[1])[-1].judgement == "unrelated"


def test_what_goes_with_a_judgement_is_written_one_by_one(
    shop: ShopRecord, pair: tuple[int, int]
) -> None:
    actions.say_why(shop, *pair, "clamp off the bead")
    actions.name_cause_class(shop, *pair, "fitted-badly")
    actions.promise_change(shop, *pair, "pull at every clamp")
    with shop.reading() as connection:
        row = read_returns_of_job(connection, pair[1])[-1]
    assert row.waits
    assert (row.why, row.cause_words, row.change_promised) == (
        "clamp off the bead",
        "fitted badly",
        "pull at every clamp",
    )
    actions.name_cause_class(shop, *pair, None)
    with shop.reading() as connection:
        row = read_returns_of_job(connection, pair[1])[-1]
    assert row.cause_class is None


def test_undoing_the_first_judgement_leaves_no_row(shop: ShopRecord, pair: tuple[int, int]) -> None:
    actions.judge_return(shop, *pair, "same part")
    shop.undo()
    assert _links(shop) == []
    shop.redo()
    assert [link.judgement for link in _links(shop)] == ["same part"]


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (lambda s, p: actions.judge_return(s, *p, "our fault"), "same symptom, same system"),
        (lambda s, p: actions.judge_return(s, *p, "same part", cause_class="bad luck"), "causes"),
        (lambda s, p: actions.judge_return(s, *p, "same part", cost_cents=-1), "Accepted"),
        (lambda s, p: actions.judge_return(s, p[1], p[0], "same part"), "cannot be a return"),
        (lambda s, p: actions.judge_return(s, p[0], p[0], "same part"), "cannot be a return"),
        (lambda s, p: actions.judge_return(s, p[0], 999, "same part"), "no longer there"),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_kept(
    shop: ShopRecord, pair: tuple[int, int], change: Any, says: str
) -> None:
    with pytest.raises(ShopTrouble, match=says):
        change(shop, pair)
    assert _links(shop) == []


def test_a_window_can_be_changed_until_the_car_leaves(shop: ShopRecord) -> None:
    on_bench = job(shop, vehicle(shop), "J-1", "2026-11-10")
    window_actions.change_window(shop, on_bench, "180", 6000, "both")
    with shop.reading() as connection:
        row = connection.execute(
            select(Job.window_days, Job.window_miles, Job.window_rule).where(Job.id == on_bench)
        ).one()
    assert tuple(row) == (180, 6000, "both")
    shop.undo()
    with shop.reading() as connection:
        assert connection.execute(select(Job.window_days)).scalar() == 90


@pytest.mark.parametrize("odd", [("0", 3000, "first"), (90, "many", "first"), (90, 3000, "either")])
def test_a_window_that_cannot_be_is_refused_with_what_is_accepted(
    shop: ShopRecord, odd: tuple[Any, Any, str]
) -> None:
    on_bench = job(shop, vehicle(shop), "J-1", "2026-11-10")
    with pytest.raises(ShopTrouble, match="Accepted"):
        window_actions.change_window(shop, on_bench, *odd)


def test_a_promise_that_was_given_stays_as_it_was_given(shop: ShopRecord) -> None:
    gone = job(shop, vehicle(shop), "J-1", "2026-11-10", "2026-11-11")
    with pytest.raises(ShopTrouble, match="handed over on 2026-11-11"):
        window_actions.change_window(shop, gone, 180, 6000, "first")


def test_a_car_handed_over_at_another_desk_meanwhile_keeps_its_window(
    shop: ShopRecord, monkeypatch: pytest.MonkeyPatch
) -> None:
    here = job(shop, vehicle(shop), "J-1", "2026-11-10", None, window_days=90)
    do = shop.do

    def after_the_other_desk(words: str, work: Any) -> Any:
        with shop.deed("Hand over") as deed:
            deed.change(Job, here, left_at="2026-11-16T10:00:00+00:00")
        return do(words, work)

    monkeypatch.setattr(shop, "do", after_the_other_desk)
    with pytest.raises(ShopTrouble, match="was handed over on 2026-11-16 with its window"):
        window_actions.change_window(shop, here, 1, 0, "first")
    with shop.reading() as connection:
        assert connection.execute(select(Job.window_days)).scalar() == 90


@pytest.mark.parametrize("by", [None, "", "  "])
def test_a_judgement_that_nobody_gave_is_refused(
    shop: ShopRecord, pair: tuple[int, int], by: str | None
) -> None:
    shop.who = ""
    with pytest.raises(ShopTrouble, match="Nobody is named who judges it"):
        actions.judge_return(shop, *pair, "same part", by=by)
    assert _links(shop) == []
    actions.judge_return(shop, *pair, "same part", by="Odile")
    assert [link.judged_by for link in _links(shop)] == ["Odile"]

"""The rules of judging: what was decided over time, the cost, the promise, what waits."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.returns_watched.candidate import Candidate
from desktop_app.returns_watched.change_promised import ChangePromised, read_day
from desktop_app.returns_watched.customer_answers import HeardBy
from desktop_app.returns_watched.judged_before import (
    JudgedOnce,
    LinkChanged,
    judged_over_time,
    told,
)
from desktop_app.returns_watched.judgement import RETURN_CAUSES, Judgement, counts_against
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_cost import (
    CASH_OUT,
    CostWritten,
    cost_in_words,
    cost_of_all,
    money,
    return_cost,
)
from desktop_app.returns_watched.returns_list import ReturnRow
from desktop_app.returns_watched.said_beside import also_kept, helping_kept
from desktop_app.returns_watched.waiting import (
    days_waiting,
    oldest_waiting_first,
    still_waiting_beside,
    visits_waiting,
    waiting_in_words,
    waits_too_long,
)
from desktop_app.shop_record.trouble import ShopTrouble

TODAY = date(2026, 11, 16)


@pytest.mark.parametrize("judgement", [None, *Judgement])
def test_two_causes_take_a_return_out_of_the_count(judgement: Judgement | None) -> None:
    comeback = judgement is not None and judgement.is_comeback
    assert counts_against(judgement, None) is comeback
    for cause in RETURN_CAUSES:
        ours = cause.id not in ("other-use", "new")
        assert counts_against(judgement, cause.id) is (comeback and ours)


def _change(seq: int, before: Any, after: Any, reverses: int | None = None) -> LinkChanged:
    return LinkChanged(seq, f"2026-11-{seq:02d}T09:00:00+00:00", "Ben", reverses, before, after)


def _judged(word: str | None, by: str, day: int) -> dict[str, Any]:
    at = None if word is None else f"2026-11-{day:02d}T09:00:00+00:00"
    return {"judgement": word, "judged_by": by, "judged_at": at, "cause_class": None}


def test_every_decision_that_stood_is_told_with_who_and_when() -> None:
    first, second = _judged("unrelated", "Ana", 3), _judged("same part", "Ben", 5)
    decisions = judged_over_time(second, [_change(5, first, second), _change(3, None, first)])
    assert told(decisions) == (
        "Judged “unrelated” by Ana on 2026-11-03, revised to “same part” by Ben on 2026-11-05."
    )


def test_what_was_taken_back_is_told_and_what_was_undone_is_not() -> None:
    one, none, other = (
        _judged("unrelated", "Ana", 3),
        _judged(None, "", 4),
        _judged("foretold", "Ana", 9),
    )
    changes = [
        _change(9, none, other),
        _change(8, _judged("same part", "Ana", 7), none, reverses=7),
        _change(7, none, _judged("same part", "Ana", 7)),
        _change(4, one, none),
        _change(3, None, one),
    ]
    assert told(judged_over_time(other, changes)) == (
        "Judged “unrelated” by Ana on 2026-11-03, taken back by Ben on 2026-11-04, "
        "judged “foretold” by Ana on 2026-11-09."
    )


def test_what_was_done_again_after_an_undo_stands() -> None:
    one = _judged("unrelated", "Ana", 3)
    changes = [
        _change(5, None, one, reverses=4),
        _change(4, one, None, reverses=3),
        _change(3, None, one),
        _change(2, None, _judged("foretold", "Ana", 2)),  # beyond the row's beginning
    ]
    assert told(judged_over_time(one, changes)) == "Judged “unrelated” by Ana on 2026-11-03."


def test_words_beside_the_judgement_are_no_decision() -> None:
    nothing = _judged(None, "", 1)
    assert judged_over_time(nothing, [_change(3, {"why": ""}, {"why": "a plug"})]) == ()
    assert judged_over_time(nothing, [_change(2, None, {**nothing, "why": "a"})]) == ()
    assert told(()) == ""


def test_what_nobody_had_judged_is_not_told_to_be_taken_back() -> None:
    assert told([JudgedOnce(None, "Ana", "2026-11-03")]) == ""
    judged = JudgedOnce("unrelated", "Ben", "2026-11-04")
    assert told([JudgedOnce(None, "Ana", "2026-11-03"), judged]).startswith("Judged “unrelated”")


def test_a_judgement_older_than_the_history_is_still_told() -> None:
    now = _judged("same part", "Ben", 5)
    decisions = judged_over_time(now, [_change(5, {"judgement": "unrelated"}, now)])
    assert [one.judgement for one in decisions] == ["unrelated", "same part"]
    assert [one.judgement for one in judged_over_time(now, [])] == ["same part"]


def test_a_second_person_who_judges_the_same_is_told() -> None:
    one, two = _judged("unrelated", "Ana", 3), _judged("unrelated", "Ben", 5)
    assert told(judged_over_time(two, [_change(5, one, two), _change(3, None, one)])) == (
        "Judged “unrelated” by Ana on 2026-11-03, judged the same by Ben on 2026-11-05."
    )


def test_the_cost_is_worked_out_with_its_kinds_apart() -> None:
    written = CostWritten(1.25, 4010, 0, 8500, None, None, 1000, 3000)
    cost = return_cost(written, 6010)
    assert cost is not None
    assert (cost.hours, cost.work_cents) == (Decimal("1.25"), 7513)  # 75.125 rounds up
    assert (cost.cash_out_cents, cost.not_split_cents, cost.recovered_cents) == (12510, 1000, 3000)
    assert cost.total_cents == 7513 + 12510 + 1000 - 3000
    assert cost_in_words(cost, 6010, "€") == (
        "Hours: 1.25 h at €60.10, €75.13. Cash out: €125.10. In one sum: €10.00. "
        "Got back: €30.00. Total: €180.23."
    )


def test_nothing_written_is_no_cost_and_a_nought_is_one() -> None:
    assert return_cost(CostWritten(), 6000) is None
    assert return_cost(CostWritten(cost_cents=0), 6000) is not None
    assert "Total: $0.00." in cost_in_words(return_cost(CostWritten(0.0), 6000), 6000, "$")
    assert cost_in_words(None, 6000, "$") == "Nobody has written what it cost."


cents = st.none() | st.integers(0, 10_000_000)
costs = st.builds(
    CostWritten,
    st.none() | st.integers(0, 100_000).map(lambda hundredths: hundredths / 100),
    *[cents] * 7,
)


@given(st.lists(costs, max_size=6), st.integers(0, 100_000))
def test_sums_drift_by_no_cent(written: list[CostWritten], hour: int) -> None:
    each = [return_cost(one, hour) for one in written]
    known = [one for one in each if one is not None]
    together = cost_of_all(each)
    assert together.total_cents == sum(one.total_cents for one in known)
    assert together.cash_out_cents == sum(
        getattr(one, name) or 0 for one in written for name in CASH_OUT
    )
    for one, cost in zip(written, each, strict=True):
        if cost is not None:  # to half a cent of the exact product
            hundredths = round((one.unbilled_hours or 0) * 100)
            assert abs(100 * cost.work_cents - hundredths * hour) <= 50


@pytest.mark.parametrize(
    ("amount", "words"), [(0, "$0.00"), (120_450, "$1,204.50"), (-305, "−\u2060$3.05")]
)
def test_money_is_said_with_its_sign(amount: int, words: str) -> None:
    assert money(amount, "$") == words


@pytest.mark.parametrize(
    ("change", "is_open", "says"),
    [
        (ChangePromised(), False, ""),
        (ChangePromised("look twice"), True, "no day was named"),
        (ChangePromised("look", due=date(2026, 11, 16)), True, "due on 2026-11-16"),
        (ChangePromised("look", due=date(2026, 11, 15)), True, "1 day late"),
        (ChangePromised("look", done_on=date(2026, 11, 1)), False, "Done on 2026-11-01."),
        (
            ChangePromised("look", done_on=date(2026, 11, 1), check_on=date(2026, 11, 17)),
            False,
            "to be looked at on 2026-11-17",
        ),
        (
            ChangePromised("look", done_on=date(2026, 11, 1), check_on=date(2026, 11, 16)),
            True,
            "Look now whether it helped",
        ),
        (ChangePromised(by="Ben"), True, "Not done yet"),
    ],
)
def test_a_promise_is_open_until_done_and_when_to_be_looked_at(
    change: ChangePromised, is_open: bool, says: str
) -> None:
    assert change.is_open(TODAY) is is_open
    assert says in change.state(TODAY)


def test_a_day_is_read_or_refused_with_what_is_accepted() -> None:
    assert read_day("  ") is None
    assert read_day(" 2026-11-16 ") == TODAY
    with pytest.raises(ShopTrouble, match="Type it like 2026-11-16"):
        read_day("16 November")


def test_further_kinds_never_repeat_the_main_one_or_stand_alone() -> None:
    both = (Judgement.SAME_PART, Judgement.SAME_SYMPTOM, Judgement.UNRELATED)
    assert also_kept(both, Judgement.SAME_SYMPTOM) == '["same part"]'
    assert also_kept(both, Judgement.UNRELATED) is None
    assert also_kept(both, None) is None
    assert helping_kept(("new", "unknown", "new"), "unknown") == '["new"]'
    assert helping_kept(("new",), "new") is None


def _row(
    later: str,
    came: date,
    judgement: Judgement | None,
    inside: bool = True,
    earlier: str = "J-1",
    in_chain: bool = False,
) -> ReturnRow:
    met = Candidate(earlier, later, 5, None, inside, "time", (), 0.5, "J-1", judgement)
    met = replace(met, in_chain=in_chain)
    return ReturnRow(met, int(earlier[2:]), int(later[2:]), "car", date(2026, 1, 1), came)


def test_what_waits_comes_first_the_oldest_at_the_top() -> None:
    rows = [
        _row("J-9", date(2026, 11, 9), Judgement.UNRELATED),
        _row("J-8", date(2026, 11, 8), None),
        _row("J-7", date(2026, 11, 1), None),
        _row("J-6", date(2026, 10, 1), None, inside=False),
        _row("J-5", date(2026, 11, 10), Judgement.SAME_PART),
    ]
    ordered = [row.later for row in oldest_waiting_first(rows)]
    assert ordered == ["J-7", "J-8", "J-6", "J-5", "J-9"]
    assert waiting_in_words(rows, TODAY).startswith(
        "2 visits wait for a judgement, the oldest since 2026-11-01; 1 for more than 14 days."
    )
    assert waiting_in_words([rows[0]], TODAY) == "Nothing waits for a judgement."
    assert waiting_in_words([rows[1]], TODAY).startswith(
        "1 visit waits for a judgement, since 2026-11-08. Until then it is neither"
    )


def test_what_waits_and_was_only_told_is_counted_apart() -> None:
    seen = _row("J-9", date(2026, 11, 8), None)
    told = replace(seen, later_id=0, asked_id=5, heard_by=HeardBy.TOLD, came_on=date(2026, 11, 9))
    assert waiting_in_words([told], TODAY).startswith(
        "1 return that was only told waits for a judgement, since 2026-11-09."
    )
    assert waiting_in_words([seen, told], TODAY).startswith(
        "1 visit and 1 return that was only told wait for a judgement, the oldest since 2026-11-08."
    )


def test_a_visit_that_may_be_a_return_of_two_jobs_waits_once() -> None:
    came = date(2026, 11, 8)
    rows = [_row("J-9", came, None), _row("J-9", came, None, earlier="J-2")]
    rows.append(_row("J-10", came, None))  # another job of the same visit
    assert visits_waiting(rows) == 1
    assert waiting_in_words(rows, TODAY).startswith("1 visit waits for a judgement")


def test_what_hangs_in_a_judged_chain_waits_nowhere_and_stands_behind_what_waits() -> None:
    chained = _row("J-9", date(2026, 11, 1), None, in_chain=True)
    beyond = _row("J-8", date(2026, 10, 1), None, inside=False)
    waiting = _row("J-7", date(2026, 11, 9), None)
    assert not chained.waits
    assert chained.state_words == "judged in its chain"
    ordered = oldest_waiting_first([chained, beyond, waiting])
    assert list(ordered) == [waiting, beyond, chained]


def test_two_vehicles_are_asked_about_where_a_judgement_or_a_cost_hangs_on_it() -> None:
    bare = Judging(1, 2, "J-1", "J-2")
    assert bare.apart_question() is None
    judged = replace(bare, judgement=Judgement.SAME_PART, cost=CostWritten(cost_cents=132_050))
    asked = str(judged.apart_question("Total: $1,320.50."))
    assert asked.startswith("It is judged “same part”. Total: $1,320.50. As two vehicles it leaves")
    apart = replace(judged, same_vehicle=False)
    assert apart.decided(in_window=True).endswith("it is no return, and nothing counts.")


def test_fourteen_days_are_no_long_wait_and_fifteen_are() -> None:
    assert not waits_too_long(_row("J-2", date(2026, 11, 2), None), TODAY)
    assert waits_too_long(_row("J-2", date(2026, 11, 1), None), TODAY)
    assert days_waiting(_row("J-2", date(2026, 12, 1), None), TODAY) == 0
    assert days_waiting(_row("J-2", date(2026, 1, 1), Judgement.FORETOLD), TODAY) == 0


def test_all_of_one_visit_stands_together_and_says_what_it_still_waits_for() -> None:
    came = date(2026, 11, 8)
    rows = [
        _row("J-9", came, None),
        _row("J-9", came, Judgement.SAME_PART, earlier="J-2"),
        _row("J-9", came, None, earlier="J-3", inside=False),
        _row("J-8", date(2026, 11, 9), None),
    ]
    rows[3] = replace(rows[3], vehicle="another car")
    ordered = [(row.later, row.earlier) for row in oldest_waiting_first(rows)]
    assert ordered == [("J-9", "J-1"), ("J-9", "J-3"), ("J-9", "J-2"), ("J-8", "J-1")]
    beside = still_waiting_beside(rows)
    assert [beside[row.key] for row in rows] == [(), ("J-1",), ("J-1",), ()]

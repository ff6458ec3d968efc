"""What was told of a return stands beside the earlier job: by whom, when, and whether it came."""

from __future__ import annotations

from datetime import date
from typing import Any

import pytest

from desktop_app.returns_watched.customer_answers import Answer, CustomerSaid, HeardBy
from desktop_app.returns_watched.told_now import ToldNow, ended
from desktop_app.returns_watched.told_return import ToldReturn

TOLD = date(2026, 11, 3)


def said(day: int = 3, **more: Any) -> CustomerSaid:
    return CustomerSaid(day, 1, date(2026, 11, day), Answer.SAME_TROUBLE, **more)


def concern(*answers: CustomerSaid) -> str:
    """The lines about the trouble."""
    return dict(ToldNow(ToldReturn(answers), "km").lines())["Concern"]


@pytest.mark.parametrize(
    ("seen_on", "says"),
    [
        (None, "not here: the car was not seen yet"),
        (date(2026, 11, 2), "not here: the car was not seen yet"),
        (TOLD, "not here: the car was seen on 3 November 2026, not judged against this job"),
    ],
)
def test_it_says_whether_the_car_was_here_since(seen_on: date | None, says: str) -> None:
    now = ToldNow(ToldReturn((said(),)), "mi", seen_on)
    assert now.lines()[0] == ("In the shop", says)


def test_the_day_and_how_it_was_heard_stand_in_the_place_of_a_number() -> None:
    assert ToldNow(ToldReturn((said(),)), "mi").number == "told 2026-11-03"
    bill = said(9, source=HeardBy.PAPER)
    assert ToldNow(ToldReturn((said(), bill)), "mi").number == "on paper 2026-11-03"


def test_all_that_was_told_stands_in_one_sentence() -> None:
    assert concern(said()) == "The same trouble, told on 3 November 2026."
    everything = said(by="Ana", odometer_told=12_000, words="it stalls")
    assert concern(everything) == (
        "The same trouble, told to Ana on 3 November 2026 at 12,000 km: “it stalls”."
    )


def test_a_bill_was_told_to_nobody() -> None:
    bill = said(source=HeardBy.PAPER, by="Ana", odometer_told=0)
    assert concern(bill) == (
        "The same trouble, seen on another shop's bill on 3 November 2026 at 0 km."
    )


def test_what_is_told_again_has_a_line_each() -> None:
    assert concern(said(), said(9, words="Again!")) == (
        "The same trouble, told on 3 November 2026.\nAgain, told on 9 November 2026: “Again!”"
    )


@pytest.mark.parametrize("words", ["“It stalls.”", "“Again!”", "“Why?”"])
def test_a_full_stop_of_the_customer_is_enough(words: str) -> None:
    assert ended(words) == words
    assert ended("“it stalls”") == "“it stalls”."

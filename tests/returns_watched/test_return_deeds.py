"""A return that was seen and one that was only told are judged alike, each by its own deeds."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date

import pytest

from desktop_app.returns_watched.customer_actions import note_answer
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.return_actions import deeds_of
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_told_judging import read_told_judging
from desktop_app.shop_record.record import ShopRecord
from tests.watched_shop import as_made, job, vehicle

Now = Callable[[], Judging]


@pytest.fixture(params=["seen", "told"])
def now(request: pytest.FixtureRequest, shop: ShopRecord) -> Now:
    """A return as it is judged, read anew each time."""
    car = vehicle(shop)
    first = job(shop, car, "J-1", "2026-10-20", "2026-10-20", 10_000)
    if request.param == "seen":
        read, other = read_judging, job(shop, car, "J-2", "2026-11-03")
    else:
        read = read_told_judging
        other = as_made(note_answer(shop, first, "same trouble", on=date(2026, 11, 3)))
    shop.who = "Ana"

    def again() -> Judging:
        with shop.reading() as connection:
            found = read(connection, first, other)
        assert found is not None
        return found

    return again


def test_all_that_is_said_of_a_return_is_kept_and_a_judgement_is_taken_back(
    shop: ShopRecord, now: Now
) -> None:
    one = now()
    deeds, both = deeds_of(one), (one.earlier_id, one.later_id)
    deeds.judge(shop, *both, "same part", by="Ana")
    deeds.say_why(shop, *both, "the same rotor")
    deeds.name_cause(shop, *both, "fitted-badly")
    deeds.say_dangerous(shop, *both, True)
    kept = now()
    assert (kept.judgement, kept.judged_by) == (Judgement.SAME_PART, "Ana")
    assert (kept.why, kept.cause_class, kept.dangerous) == ("the same rotor", "fitted-badly", True)
    deeds.take_back(shop, *both)
    waits = now()
    assert (waits.judgement, waits.why, waits.dangerous) == (None, "the same rotor", True)

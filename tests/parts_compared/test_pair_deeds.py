"""What the shop does at a pair: each deed keeps what was said, takes it back, or is refused."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import select

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.stored import (
    Explanation,
    Instrument,
    MakerLimit,
    Pair,
    PairPhoto,
    PartCondition,
    Reading,
)
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.tables import Base
from desktop_app.shop_record.trouble import ShopTrouble
from tests.parts_compared.sheet_story import RotorStory, a_rotor, phone_photo


@pytest.fixture
def rotor(shop: ShopRecord) -> RotorStory:
    return a_rotor(shop)


def rows(record: ShopRecord, table: type[Base], *columns: str) -> list[tuple[Any, ...]]:
    """What a table holds in these columns."""
    wanted = [getattr(table, column) for column in columns]
    with record.reading() as connection:
        return [tuple(row) for row in connection.execute(select(*wanted).order_by(table.id))]


def of_bore(record: ShopRecord) -> list[tuple[Any, ...]]:
    kept = rows(record, Reading, "id", "dimension", "side", "typed")
    return [(row, typed) for row, name, side, typed in kept if (name, side) == ("bore", "removed")]


def test_readings_that_stay_as_they_were_keep_their_rows(rotor: RotorStory) -> None:
    rotor.read("bore", "14.02; 14.03; 14.04")
    before = of_bore(rotor.record)
    rotor.read("bore", "14.02; 14.03; 14.09; 14.10")
    after = of_bore(rotor.record)
    assert after[:2] == before[:2]
    assert [typed for _, typed in after] == ["14.02", "14.03", "14.09", "14.10"]
    assert {row for row, _ in after[2:]}.isdisjoint(row for row, _ in before)


def test_a_condition_is_noted_once_and_taken_back_once(rotor: RotorStory) -> None:
    for seen, terms in ((True, ["burned tip"]), (False, []), (False, [])):
        actions.see_condition(rotor.record, rotor.pair, "removed", "burned tip", seen=seen)
        assert [term for (term,) in rows(rotor.record, PartCondition, "term")] == terms


def test_an_explanation_is_changed_taken_back_and_never_without_a_name(rotor: RotorStory) -> None:
    record, kept = rotor.record, ("dimension", "why", "by_whom")

    def explain(why: str, by_whom: str) -> None:
        actions.explain_difference(record, rotor.pair, "bore", why, by_whom)

    with pytest.raises(ShopTrouble, match="By whose word"):
        explain("new number", " ")
    explain("", "")
    assert rows(record, Explanation, *kept) == []
    explain(" new number ", " the supplier ")
    explain("another number", "a letter")
    assert rows(record, Explanation, *kept) == [("bore", "another number", "a letter")]
    explain(" ", "a letter")
    assert rows(record, Explanation, *kept) == []


def test_limits_are_changed_taken_back_and_refused_where_they_are_none(rotor: RotorStory) -> None:
    record, kept = rotor.record, ("dimension", "low", "high", "source")

    def enter(low: float | None, high: float | None) -> None:
        actions.enter_limits(record, rotor.pair, "resistance", low, high, "the maker's page")

    for low, high, says in (
        (6.0, 4.0, "The lower limit 6 is above the upper one 4"),
        (float("nan"), None, "A limit is a number"),
        (None, 1e300, "A limit is a number"),
    ):
        with pytest.raises(ShopTrouble, match=says):
            enter(low, high)
    enter(None, None)
    assert rows(record, MakerLimit, *kept) == []
    enter(4.0, None)
    enter(4.0, 6.0)
    assert rows(record, MakerLimit, *kept) == [("resistance", 4.0, 6.0, "the maker's page")]
    enter(None, None)
    assert rows(record, MakerLimit, *kept) == []


def test_a_pair_has_its_own_texts_and_no_others(rotor: RotorStory) -> None:
    with pytest.raises(ValueError, match="a pair has no text called part_kind"):
        actions.write_about_pair(rotor.record, rotor.pair, "part_kind", "spark-plug")
    assert rows(rotor.record, Pair, "part_kind") == [("distributor-rotor",)]


def test_a_replacement_that_is_stopped_and_fitted_is_told_by_its_deed(rotor: RotorStory) -> None:
    for fitted, words in ((False, "Stop before fitting"), (True, "Fit the replacement")):
        actions.say_fitted(rotor.record, rotor.pair, fitted=fitted)
        assert rows(rotor.record, Pair, "fitted") == [(int(fitted),)]
        assert rotor.record.can_undo() == words


def test_a_photo_taken_from_a_part_stays_with_the_job(rotor: RotorStory) -> None:
    rotor.photograph("underside", phone_photo(3), None)
    ((link, photo),) = rows(rotor.record, PairPhoto, "id", "photo_id")
    actions.take_from_pair(rotor.record, link)
    assert rows(rotor.record, PairPhoto, "id") == []
    rotor.record.undo()
    assert rows(rotor.record, PairPhoto, "id", "photo_id") == [(link, photo)]


def test_an_instrument_is_kept_changed_put_away_and_brought_back(shop: ShopRecord) -> None:
    facts = ("name", "unit", "resolution", "max_error", "checked_on", "in_use")
    with pytest.raises(ShopTrouble, match="Which instrument is it"):
        actions.keep_instrument(shop, " ", "mm", 0.01, 0.03)
    for resolution, error in ((-0.01, 0.03), (0.01, float("nan"))):
        with pytest.raises(ShopTrouble, match="numbers, zero or more"):
            actions.keep_instrument(shop, "calliper 2", "mm", resolution, error)
    assert rows(shop, Instrument, *facts) == []
    actions.keep_instrument(shop, " calliper 2 ", "mm", 0.01, 0.03)
    (row,) = rows(shop, Instrument, "id")
    actions.put_instrument_away(shop, row[0])
    assert rows(shop, Instrument, "in_use") == [(0,)]
    actions.keep_instrument(shop, "calliper 2", "mm", 0.02, 0.04, "2026-10-01")
    assert rows(shop, Instrument, *facts) == [("calliper 2", "mm", 0.02, 0.04, "2026-10-01", 1)]

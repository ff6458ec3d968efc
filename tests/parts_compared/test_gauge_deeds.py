"""What the shop does in a gauge study, and what a study in use takes no more."""

from __future__ import annotations

import pytest
from sqlalchemy import select

from desktop_app.parts_compared import actions, gauge_actions
from desktop_app.parts_compared.stored import GaugeStudy, Instrument
from desktop_app.parts_compared.stored_gauge import StudyKept, read_study
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

ENOUGH = [12.01, 12.02, 12.00, 12.01, 12.03, 12.01, 12.02, 12.00, 12.01, 12.01]


@pytest.fixture
def calliper(shop: ShopRecord) -> int:
    """The row of an instrument in the drawer."""
    actions.keep_instrument(shop, "calliper 2", "mm", 0.01, 0.03)
    with shop.reading() as connection:
        row = connection.execute(select(Instrument.id)).scalar_one()
    return int(row)


def begun(shop: ShopRecord, calliper: int, *values: float, person: str = "Ann") -> int:
    """A study of one part with these readings by one person."""
    first, *more = values
    gauge_actions.begin_study(shop, calliper, " a spare rotor ", (person, 1, 1), first)
    with shop.reading() as connection:
        study = int(connection.execute(select(GaugeStudy.id)).scalars().all()[-1])
    for trial, value in enumerate(more, 2):
        gauge_actions.add_reading(shop, study, (person, 1, trial), value)
    return study


def kept(shop: ShopRecord, study: int) -> StudyKept:
    with shop.reading() as connection:
        return read_study(connection, study)


def repeatability(shop: ShopRecord) -> float | None:
    with shop.reading() as connection:
        found = connection.execute(select(Instrument.repeatability)).scalar_one()
    return None if found is None else float(found)


def test_a_study_begins_with_its_first_reading_and_goes_on(shop: ShopRecord, calliper: int) -> None:
    study = begun(shop, calliper, 12.01, 12.02, person="  Ann   B. ")
    read = [
        (one.person, one.part, one.trial, one.value) for one in kept(shop, study).readings.values()
    ]
    assert read == [("Ann B.", 1, 1, 12.01), ("Ann B.", 1, 2, 12.02)]
    assert kept(shop, study).about == "a spare rotor"
    gauge_actions.say_what_is_read(shop, study, " a new one ")
    assert kept(shop, study).about == "a new one"


def test_the_same_reading_twice_is_refused(shop: ShopRecord, calliper: int) -> None:
    study = begun(shop, calliper, 12.01)
    with pytest.raises(ShopTrouble, match="Reading 1 of part 1 by Ann is there already") as refused:
        gauge_actions.add_reading(shop, study, ("Ann", 1, 1), 12.02)
    assert "another desk" in refused.value.do
    assert len(kept(shop, study).readings) == 1


@pytest.mark.parametrize(
    ("person", "value", "says"),
    [
        ("  ", 12.0, "Who reads"),
        ("x" * 81, 12.0, "more than 80 letters"),
        ("Ann", float("inf"), "A reading is a number"),
    ],
)
def test_what_is_no_reading_begins_no_study(
    shop: ShopRecord, calliper: int, person: str, value: float, says: str
) -> None:
    with pytest.raises(ShopTrouble, match=says):
        gauge_actions.begin_study(shop, calliper, "", (person, 1, 1), value)
    with shop.reading() as connection:
        assert connection.execute(select(GaugeStudy.id)).scalars().all() == []


def test_a_person_is_renamed_and_never_into_the_other_one(shop: ShopRecord, calliper: int) -> None:
    study = begun(shop, calliper, 12.01, 12.02)
    gauge_actions.add_reading(shop, study, ("Ben", 1, 1), 12.04)
    with pytest.raises(ShopTrouble, match="Ben is the other one"):
        gauge_actions.name_person(shop, study, "Ann", "Ben")
    gauge_actions.name_person(shop, study, "Ann", "Ann")
    gauge_actions.name_person(shop, study, "Ann", " Anna ")
    people = [one.person for one in kept(shop, study).readings.values()]
    assert people == ["Anna", "Anna", "Ben"]


def test_a_study_with_too_few_repeats_changes_nothing(shop: ShopRecord, calliper: int) -> None:
    study = begun(shop, calliper, 12.01, 12.02, 12.03)
    with pytest.raises(ShopTrouble, match="2 repeats so far and needs") as refused:
        gauge_actions.use_from_now_on(shop, study)
    assert refused.value.kept == "The usual figure goes on counting."
    assert repeatability(shop) is None


def test_one_study_counts_at_a_time_and_its_readings_stay_as_they_were(
    shop: ShopRecord, calliper: int
) -> None:
    first, second = begun(shop, calliper, *ENOUGH), begun(shop, calliper, *ENOUGH[:-1], 12.30)
    gauge_actions.use_from_now_on(shop, first)
    gauge_actions.use_from_now_on(shop, first)  # a second press changes nothing
    fine = repeatability(shop)
    gauge_actions.use_from_now_on(shop, second)
    rough = repeatability(shop)
    assert fine is not None
    assert rough is not None
    assert fine < 0.01 < rough
    assert (kept(shop, first).taken_over, kept(shop, second).taken_over) == (0, 1)
    row = next(iter(kept(shop, second).readings))
    for deed in (
        lambda: gauge_actions.take_reading_out(shop, second, row),
        lambda: gauge_actions.add_reading(shop, second, ("Ann", 1, 99), 12.0),
    ):
        with pytest.raises(ShopTrouble, match="This study is in use"):
            deed()
    gauge_actions.take_reading_out(shop, first, next(iter(kept(shop, first).readings)))
    assert len(kept(shop, first).readings) == len(ENOUGH) - 1


def test_the_usual_figure_counts_again_and_the_study_is_open_again(
    shop: ShopRecord, calliper: int
) -> None:
    study = begun(shop, calliper, *ENOUGH)
    gauge_actions.use_from_now_on(shop, study)
    gauge_actions.back_to_usual(shop, calliper)
    assert repeatability(shop) is None
    assert not kept(shop, study).taken_over
    gauge_actions.add_reading(shop, study, ("Ann", 1, 99), 12.0)


def test_an_instrument_with_studies_keeps_its_unit(shop: ShopRecord, calliper: int) -> None:
    begun(shop, calliper, 12.01)
    with pytest.raises(ShopTrouble, match="were read in another unit") as refused:
        actions.keep_instrument(shop, "calliper 2", "kohm", 0.1, 0.1)
    assert refused.value.kept == "Nothing was changed."
    actions.keep_instrument(shop, "calliper 2", "mm", 0.02, 0.04)

"""The sets of a job: which pairs meet, what is entered for them, and what the sheet says."""

from __future__ import annotations

import pytest

from desktop_app.parts_compared import actions
from desktop_app.parts_compared.set_actions import enter_for_set, figure_text
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.stored import Pair
from desktop_app.parts_compared.stored_sets import JobSet, part_sets, sets_of_job
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.parts_compared.sheet_story import a_job, kinds, words_in

ROTOR_AND_CAP = next(one for one in part_sets() if one.id == "rotor-and-cap")


def lay(record: ShopRecord, job: int, kind: str, position: str = "", **read: str) -> int:
    """Lay a pair and read "old, new" of each dimension; hyphens written as underscores."""
    pair = actions.lay_side_by_side(record, job, kind, position).made
    assert pair is not None
    for name, texts in read.items():
        dimension = kinds()[kind].dimension(name.replace("_", "-"))
        assert dimension is not None
        old, new = texts.split(", ")
        actions.write_readings(record, pair, dimension, "removed", old)
        actions.write_readings(record, pair, dimension, "replacement", new)
    return pair


def sets(record: ShopRecord, job: int) -> tuple[JobSet, ...]:
    """Return the sets of a job as the record has them."""
    with record.reading() as connection:
        return sets_of_job(connection, job, kinds())


@pytest.fixture
def ignition(shop: ShopRecord) -> tuple[ShopRecord, int]:
    """A job with a rotor and a cap whose tip came back by 0.55 mm."""
    job = a_job(shop)
    lay(shop, job, "distributor-rotor", tip_radius="26.90, 27.45")
    lay(shop, job, "distributor-cap", terminal_radius="28.40, 28.40")
    return shop, job


def test_a_rotor_alone_meets_nothing(shop: ShopRecord) -> None:
    job = a_job(shop)
    lay(shop, job, "distributor-rotor", tip_radius="26.90, 27.45")
    assert sets(shop, job) == ()


def test_rotor_and_cap_of_one_job_meet(ignition: tuple[ShopRecord, int]) -> None:
    (one,) = sets(*ignition)
    assert one.judged.part_set.id == "rotor-and-cap"
    assert one.judged.verdict == "room enough"
    assert len(one.pair_ids) == 2


def test_parts_of_two_sides_of_the_car_do_not_meet(shop: ShopRecord) -> None:
    job = a_job(shop)
    for side in ("front left", "front right"):
        lay(shop, job, "brake-disc", side, thickness="20.2, 22.0")
    lay(shop, job, "brake-pads", "front left", lining_thickness="4.0, 11.0")
    (one,) = sets(shop, job)
    assert one.position == "front left"


def test_pads_of_an_axle_meet_the_discs_of_both_sides(shop: ShopRecord) -> None:
    job = a_job(shop)
    for side in ("front left", "front right"):
        lay(shop, job, "brake-disc", side, thickness="20.2, 22.0")
    lay(shop, job, "brake-pads", "front", lining_thickness="4.0, 11.0")
    assert len(sets(shop, job)) == 2
    assert len({one.key for one in sets(shop, job)}) == 2


def test_a_figure_is_entered_changed_taken_back_and_undone(
    ignition: tuple[ShopRecord, int],
) -> None:
    record, job = ignition
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "1.2")
    (one,) = sets(record, job)
    assert one.entered == {"wobble": 1.2}
    assert one.judged.verdict == "may touch"
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "0.05")
    assert sets(record, job)[0].judged.verdict == "room enough"
    record.undo()
    assert sets(record, job)[0].entered == {"wobble": 1.2}
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "")
    assert sets(record, job)[0].entered == {}


def test_a_figure_in_inches_is_kept_in_millimetres(ignition: tuple[ShopRecord, int]) -> None:
    record, job = ignition
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "0.010", "inch")
    (one,) = sets(record, job)
    assert one.entered["wobble"] == pytest.approx(0.254)
    wobble = ROTOR_AND_CAP.given_term("wobble")
    assert wobble is not None
    assert figure_text(one.entered["wobble"], wobble, "mm", "inch") == "0.01 in"


@pytest.mark.parametrize("text", ["much", "1; 2", "-0.1"])
def test_what_is_no_figure_is_refused(ignition: tuple[ShopRecord, int], text: str) -> None:
    record, job = ignition
    with pytest.raises(ShopTrouble):
        enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", text)
    assert sets(record, job)[0].entered == {}


def test_entered_figures_are_no_bench_sum_of_the_job(ignition: tuple[ShopRecord, int]) -> None:
    record, job = ignition
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "0.05")
    with record.reading() as connection:
        assert sums_of_job(connection, job) == ()
    assert sets(record, job)[0].entered == {"wobble": 0.05}


def test_the_sheet_says_what_the_two_leave_each_other(ignition: tuple[ShopRecord, int]) -> None:
    words = words_in(sheet_bytes(read_sheet(*ignition, kinds())))
    for said in (
        "Rotor and cap together",
        "room enough",
        "The tip clears the terminals.",
        "became 0.55 mm smaller",
        "Never file or bend a part to open a gap.",
        "Wobble of the tip from play in the shaft bushing",
    ):
        assert said in words


def test_the_sheet_stops_both_parts_where_they_may_touch(shop: ShopRecord) -> None:
    job = a_job(shop)
    lay(shop, job, "distributor-rotor", tip_radius="27.60, 28.38")
    lay(shop, job, "distributor-cap", terminal_radius="28.40, 28.40")
    sheet = read_sheet(shop, job, kinds())
    for printed in sheet.pairs:
        assert printed.compared is not None
        assert printed.compared.verdict == "stop and look"
    words = words_in(sheet_bytes(sheet))
    assert "may touch" in words
    assert "Measure the play first" in words
    assert "one of the two parts is the wrong one" not in words


def test_a_part_that_was_not_fitted_meets_nothing(shop: ShopRecord) -> None:
    job = a_job(shop)
    stopped = lay(shop, job, "distributor-rotor", tip_radius="26.90, 28.60")
    lay(shop, job, "distributor-rotor", tip_radius="26.90, 27.45")
    lay(shop, job, "distributor-cap", terminal_radius="28.40, 28.40")
    actions.say_fitted(shop, stopped, fitted=False)
    (one,) = sets(shop, job)
    assert stopped not in one.pair_ids
    assert one.judged.verdict == "room enough"
    assert one.position == ""


def test_two_meetings_in_one_position_keep_their_figures_apart(
    ignition: tuple[ShopRecord, int],
) -> None:
    record, job = ignition
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "0.05")
    lay(record, job, "distributor-rotor", tip_radius="26.90, 27.40")
    first, second = sets(record, job)
    assert first.key != second.key
    assert (first.position, second.position) == ("pairs 1 and 2", "pairs 2 and 3")
    assert (first.entered, second.entered) == ({"wobble": 0.05}, {})
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "0.3", "mm", second.kept_as)
    first, second = sets(record, job)
    assert (first.entered, second.entered) == ({"wobble": 0.05}, {"wobble": 0.3})
    actions.say_fitted(record, first.pair_ids[1], fitted=False)
    (left,) = sets(record, job)
    assert left.entered == {"wobble": 0.3}


def test_a_copied_kind_meets_as_what_it_was_copied_from(shop: ShopRecord) -> None:
    job = a_job(shop)
    pair = lay(shop, job, "distributor-rotor", tip_radius="26.90, 27.45")
    lay(shop, job, "distributor-cap", terminal_radius="28.40, 28.40")
    copy = kinds()["distributor-rotor"]._replace(id="our-rotor", like="distributor-rotor")
    with shop.deed("Call it ours") as deed:
        deed.change(Pair, pair, part_kind="our-rotor")
    with shop.reading() as connection:
        (one,) = sets_of_job(connection, job, {**kinds(), "our-rotor": copy})
    assert pair in one.pair_ids
    assert one.judged.verdict == "room enough"


def test_a_figure_that_the_set_has_not_is_refused_and_none_entered_keeps_nothing(
    ignition: tuple[ShopRecord, int],
) -> None:
    record, job = ignition
    with pytest.raises(ShopTrouble, match="has no figure called tip-width"):
        enter_for_set(record, job, ROTOR_AND_CAP, "", "tip-width", "0.1", "mm")
    enter_for_set(record, job, ROTOR_AND_CAP, "", "wobble", "", "mm")
    with record.reading() as connection:
        assert sums_of_job(connection, job) == ()
    assert sets(record, job)[0].entered == {}

"""Bench sums that are kept with their job: as they were said, printed or not, and undone."""

from __future__ import annotations

import pytest
from sqlalchemy import text

from desktop_app.parts_compared.bench_sums.bench_sum import SumKept
from desktop_app.parts_compared.bench_sums.read_already import read_already
from desktop_app.parts_compared.bench_sums.spark_voltage import ratio_kept
from desktop_app.parts_compared.bench_sums.sums_offered import sums_for, work_out
from desktop_app.parts_compared.part_kinds.part_kind import PartKind
from desktop_app.parts_compared.reading import SIDES, Reading
from desktop_app.parts_compared.sheet_blocks import Words
from desktop_app.parts_compared.sheet_job import sheet_blocks
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.parts_compared.sum_actions import keep_sum, print_sum, take_sum_out
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
from tests.parts_compared.invented_kinds import both
from tests.parts_compared.sheet_story import a_job, kinds

ROAD = {"once_in": "40", "driven": "120"}


def printed(record: ShopRecord, job: int) -> str:
    """Return the words of the sheet."""
    blocks = sheet_blocks(read_sheet(record, job, kinds()))
    return "\n".join(f"{b.name} {b.words}" for b in blocks if isinstance(b, Words))


def test_a_sum_is_kept_printed_left_off_and_taken_out(shop: ShopRecord) -> None:
    job = a_job(shop)
    result = work_out("road-test-worth", ROAD)
    made = keep_sum(shop, job, "road-test-worth", result).made
    assert made is not None
    with shop.reading() as connection:
        (kept,) = sums_of_job(connection, job)
    assert (kept.sentence, kept.limit, kept.inputs) == (
        result.sentence,
        result.limit_sentence,
        result.inputs,
    )
    assert result.sentence in printed(shop, job)
    assert "driven without it 120" in printed(shop, job)
    print_sum(shop, made, on_sheet=False)
    assert result.sentence not in printed(shop, job)
    take_sum_out(shop, made)
    with shop.reading() as connection:
        assert sums_of_job(connection, job) == ()
    shop.undo()
    with shop.reading() as connection:
        assert len(sums_of_job(connection, job)) == 1


def test_inputs_changed_from_outside_are_told(shop: ShopRecord) -> None:
    job = a_job(shop)
    keep_sum(shop, job, "road-test-worth", work_out("road-test-worth", ROAD))
    with shop.deed("Damage it") as deed:
        deed.connection.execute(text("UPDATE kept_sum SET inputs = '[]'"))
    with shop.reading() as connection, pytest.raises(ShopDamaged, match="bench sum"):
        sums_of_job(connection, job)


def test_what_the_pairs_hold_is_not_asked_again() -> None:
    rotor, cap, pads = (kinds()[k] for k in ("distributor-rotor", "distributor-cap", "brake-pads"))
    pairs = [
        (
            rotor,
            [
                Reading("removed", "tip-radius", (26.9, 26.92)),
                Reading("replacement", "tip-radius", (27.45,)),
                Reading("removed", "tip-angle", (35.0,)),
                Reading("replacement", "tip-angle", (35.0,)),
            ],
        ),
        (cap, [Reading("replacement", "terminal-radius", (28.4,))]),
        (pads, [Reading("removed", "lining-thickness", (4.1, 4.0))]),
    ]
    assert read_already("rotor-gap", pairs) == {
        "terminal_radius": "28.4",
        "old_tip_radius": "26.91",
        "new_tip_radius": "27.45",
    }
    assert read_already("pad-life", pairs) == {"now": "4.1; 4"}
    assert read_already("turned-or-mirrored", pairs) == {"old": "35", "new": "35"}
    assert read_already("rotor-gap", []) == {}
    assert read_already("turned-or-mirrored", []) == {}
    belts = (kinds()["serpentine-belt"], both("marking", "6PK1230", "6PK1215"))
    assert read_already("belt-identity", [belts]) == {
        **{"old_marking": "6PK1230", "new_marking": "6PK1215"},
    }
    assert read_already("turned-or-mirrored", [belts]) == {}


def pads(old: tuple[float, ...], new: tuple[float, ...]) -> tuple[PartKind, list[Reading]]:
    """A pair of brake pads as it was read."""
    sides = zip(SIDES, (old, new), strict=True)
    readings = [Reading(side, "lining-thickness", values) for side, values in sides if values]
    return kinds()["brake-pads"], readings


def test_of_several_pairs_one_fills_a_sum() -> None:
    def rotor(old: float, *new: float) -> tuple[PartKind, list[Reading]]:
        readings = [Reading("removed", "tip-radius", (old,))]
        readings += [Reading("replacement", "tip-radius", new)] if new else []
        return kinds()["distributor-rotor"], readings

    two = [rotor(26.9, 27.45), rotor(26.5, 27.4)]
    assert read_already("rotor-gap", two) == {"old_tip_radius": "26.5", "new_tip_radius": "27.4"}
    begun = [rotor(26.9, 27.45), rotor(26.5)]
    assert read_already("rotor-gap", begun) == {
        "old_tip_radius": "26.9",
        "new_tip_radius": "27.45",
    }


def test_the_pads_that_wore_the_most_decide_how_long_they_last() -> None:
    pairs = [pads((4.0,), (11.0,)), pads((2.5, 2.6), (10.5,)), pads((3.0,), (11.2,))]
    pairs.append(pads((), (9.0,)))
    assert read_already("pad-life", pairs) == {"first": "10.5", "now": "2.5; 2.6"}


def test_a_copied_kind_fills_the_sums_of_what_it_was_copied_from() -> None:
    kind, readings = pads((4.0,), (11.0,))
    copy = kind._replace(id="our-pads", like="brake-pads")
    assert read_already("pad-life", [(copy, readings)]) == {"first": "11", "now": "4"}
    assert "pad-life" in [one.id for one in sums_for(copy.sort)]


def test_a_charged_intake_asks_more_of_the_plug_gap_alone() -> None:
    typed = {"rotor_old": "1.5", "rotor_new": "0.95", "plug_old": "1.1", "plug_new": "0.8"}
    plain = work_out("spark-voltage", typed)
    charged = work_out("spark-voltage", {**typed, "pressure": "200"})
    warm_cap = work_out("spark-voltage", {**typed, "cap_temperature": "70"})
    rotor = "The rotor gap asks for about 6.3 kV"
    assert rotor in plain.sentence
    assert rotor in charged.sentence
    assert rotor not in warm_cap.sentence
    assert warm_cap.value < plain.value < charged.value


def test_the_ratio_of_a_kept_sum_serves_the_spark_path() -> None:
    typed = {"rotor_old": "1.5", "rotor_new": "0.95", "plug_old": "1.1", "plug_new": "0.8"}
    nine, eleven = (work_out("spark-voltage", {**typed, "ratio": r}) for r in ("9", "11.5"))
    kept = [
        SumKept(n, "spark-voltage", one.name, one.sentence, one.limit_sentence, one.inputs, True)
        for n, one in enumerate((nine, eleven))
    ]
    assert ratio_kept(kept) == 11.5
    assert ratio_kept([]) is None
    assert eleven.value > nine.value
    assert "The old parts asked the coil for about" in nine.sentence

"""Bench sums that are kept with their job: as they were said, printed or not, and undone."""

from __future__ import annotations

import pytest
from sqlalchemy import text

from desktop_app.parts_compared.bench_sums.bench_sum import SumKept
from desktop_app.parts_compared.bench_sums.read_already import read_already
from desktop_app.parts_compared.bench_sums.spark_voltage import ratio_kept
from desktop_app.parts_compared.bench_sums.sums_offered import work_out
from desktop_app.parts_compared.reading import Reading
from desktop_app.parts_compared.sheet_blocks import Words
from desktop_app.parts_compared.sheet_job import sheet_blocks
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.parts_compared.stored_sums import sums_of_job
from desktop_app.parts_compared.sum_actions import keep_sum, print_sum, take_sum_out
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopDamaged
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

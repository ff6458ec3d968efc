"""All bench sums: which are offered with a part kind, and one worked out from typed texts."""

from __future__ import annotations

from collections.abc import Mapping

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums import (
    belt_identity,
    belt_run,
    bolt_circle,
    crossed_leads,
    fuel_trim_split,
    misfire_counters,
    pad_life,
    road_test_worth,
    rotor_gap,
    rotor_phase,
    spark_voltage,
    turned_or_mirrored,
)
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import SumOffered
from desktop_app.parts_compared.instruments.instrument import Instrument
from desktop_app.shop_record.trouble import ShopTrouble

SUMS: dict[str, SumOffered] = {
    module.OFFERED.id: module.OFFERED
    for module in (
        rotor_gap, rotor_phase, spark_voltage, misfire_counters, crossed_leads, fuel_trim_split,
        pad_life, belt_identity, belt_run, bolt_circle, turned_or_mirrored, road_test_worth,
    )
}  # fmt: skip


def sums_for(kind: str) -> tuple[SumOffered, ...]:
    """Return the sums offered with a part kind: those of the kind first, then the general ones.

    `kind` is the kind's `sort`, so that a copied kind gets the sums of what it was copied from.
    """
    own = [one for one in SUMS.values() if kind in one.kinds]
    return tuple(own + [one for one in SUMS.values() if not one.kinds])


def work_out(
    sum_id: str, typed: Mapping[str, str], drawer: Mapping[str, Instrument] | None = None
) -> BenchSum:
    """Return the sum worked out from texts by field name; a field left out is left empty.

    `drawer` are the shop's own instruments by name; without one its usual figures count.
    Raises ShopTrouble that says which field, what is wrong there and what is accepted.
    """
    offered = SUMS.get(sum_id)
    if offered is None:
        raise ShopTrouble(
            tr("There is no bench sum '{sum_id}'.", sum_id=sum_id[:40]),
            do=tr("There are: {sums}.", sums=", ".join(SUMS)),
        )
    names = [field.name for field in offered.fields]
    for name in typed:
        if name not in names:
            raise ShopTrouble(
                tr("{sum}: there is no field '{field}'.", sum=offered.name, field=name[:40]),
                do=tr("Its fields are: {names}.", names=", ".join(names)),
            )
    return offered.work(Filled(offered.name, offered.fields, typed, drawer or {}))

"""What the spark asks of the coil with the old parts and with the new ones."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum, SumKept
from desktop_app.parts_compared.bench_sums.sum_field import SumField
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import IGNITION_CAUTION, SumOffered
from desktop_app.parts_compared.compressed_air import Air
from desktop_app.parts_compared.spark import (
    ESTIMATE,
    EVEN_FIELD,
    FULL_CYLINDER,
    SERIES,
    Gap,
    SparkPath,
    change_sentence,
    spark_path,
)
from desktop_app.shop_record.trouble import ShopTrouble

SPARK_SUM = "spark-voltage"
NAME = "Voltage of the spark"
RATIO = "compression ratio"
COVERED = "Accepted: gaps of the new parts that the formula covers; measure them again."
LIMIT = f"{ESTIMATE} {SERIES} {EVEN_FIELD} {FULL_CYLINDER}"


def ratio_kept(sums: Iterable[SumKept]) -> float | None:
    """Return the compression ratio that was entered for a job's last kept sum of this sort."""
    found = [
        text for one in sums if one.sum == SPARK_SUM for label, text in one.inputs if label == RATIO
    ]
    return float(found[-1].split()[0].replace(",", ".")) if found else None


def _worked(filled: Filled) -> BenchSum:
    ratio, off = filled.number("ratio"), filled.number("gap_doubt")
    under_cap = Air(temperature_c=filled.number("cap_temperature"))
    intake = Air(filled.number("pressure"), filled.number("temperature"))
    before, after = (
        spark_path(
            Gap(filled.number(f"rotor_{side}"), off),
            Gap(filled.number(f"plug_{side}"), off),
            ratio,
            under_cap,
            intake,
        )
        for side in ("old", "new")
    )
    told = f"With the old parts: {_said(before)} With the new ones: {_said(after)}"
    sentence = " ".join(one for one in (change_sentence(before, after), told) if one)
    if after.sum is None:
        raise ShopTrouble(f"{NAME}, new parts: {' '.join(after.outside)}", do=COVERED)
    return BenchSum(NAME, after.sum.kv, "kV", None, sentence, LIMIT, filled.inputs())


def _said(path: SparkPath) -> str:
    return " ".join(path.sentences())


def _gap(name: str, label: str, help_text: str) -> SumField:
    return SumField(name, label, "mm", above=0.0, most=25.0, help=help_text)


OFFERED = SumOffered(
    id=SPARK_SUM,
    name=NAME,
    about="What rotor gap and plug gap together ask of the coil, old parts against new.",
    kinds=("distributor-rotor", "distributor-cap", "spark-plug", "ignition-coil"),
    fields=(
        _gap("rotor_old", "rotor gap, old parts", "From the sum of the rotor gap, for example."),
        _gap("rotor_new", "rotor gap, new parts", "From the sum of the rotor gap, for example."),
        _gap("plug_old", "plug gap, old plug", "With a wire gauge."),
        _gap("plug_new", "plug gap, new plug", "With a wire gauge; the old one if it stays."),
        SumField("ratio", RATIO, "", default="10", least=1.0, most=30.0,
                 help="From the vehicle maker's data; 10 is common practice, no source."),
        SumField("gap_doubt", "one gap may be off by, ±", "mm", default="0.10", least=0.0,
                 help="A rotor gap is vague: shaft play and the cap's seat are in it."),
        SumField("pressure", "pressure in the intake", "kPa", default="101.325", least=50.0,
                 most=300.0, help="Absolute: open air is about 101, a charged engine has more."),
        SumField("temperature", "temperature in the intake", "C", default="20", least=-40.0,
                 most=150.0, help="Of the air that the cylinder draws."),
        SumField("cap_temperature", "temperature under the cap", "C", default="20", least=-40.0,
                 most=150.0, help="Warm when the engine is. The cap stands in open air: 101 kPa."),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip

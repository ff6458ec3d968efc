"""What the spark asks of the coil with the old parts and with the new ones."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.language import tr
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
NAME = tr("Voltage of the spark")
COVERED = tr("Accepted: gaps of the new parts that the formula covers; measure them again.")
LIMIT = f"{ESTIMATE} {SERIES} {EVEN_FIELD} {FULL_CYLINDER}"


def ratio_kept(sums: Iterable[SumKept]) -> float | None:
    """Return the compression ratio that was entered for a job's last kept sum of this sort.

    It is found by its place: what it is called was kept in the language spoken then.
    """
    place = [field.name for field in OFFERED.fields].index("ratio")
    found = [one.inputs[place][1] for one in sums if one.sum == SPARK_SUM and one.inputs[place:]]
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
    told = tr(
        "With the old parts: {old} With the new ones: {new}",
        old=_said(before),
        new=_said(after),
    )
    sentence = " ".join(one for one in (change_sentence(before, after), told) if one)
    if after.sum is None:
        raise ShopTrouble(
            tr("{sum}, new parts: {trouble}", sum=NAME, trouble=" ".join(after.outside)),
            do=COVERED,
        )
    return BenchSum(NAME, after.sum.kv, "kV", None, sentence, LIMIT, filled.inputs())


def _said(path: SparkPath) -> str:
    return " ".join(path.sentences())


def _gap(name: str, label: str, help_text: str) -> SumField:
    return SumField(name, label, "mm", above=0.0, most=25.0, help=help_text)


OFFERED = SumOffered(
    id=SPARK_SUM,
    name=NAME,
    about=tr("What rotor gap and plug gap together ask of the coil, old parts against new."),
    kinds=("distributor-rotor", "distributor-cap", "spark-plug", "ignition-coil"),
    fields=(
        _gap("rotor_old", tr("rotor gap, old parts"),
             tr("From the sum of the rotor gap, for example.")),
        _gap("rotor_new", tr("rotor gap, new parts"),
             tr("From the sum of the rotor gap, for example.")),
        _gap("plug_old", tr("plug gap, old plug"), tr("With a wire gauge.")),
        _gap("plug_new", tr("plug gap, new plug"),
             tr("With a wire gauge; the old one if it stays.")),
        SumField("ratio", tr("compression ratio"), "", default="10", least=1.0, most=30.0,
                 help=tr("From the vehicle maker's data; 10 is common practice, no source.")),
        SumField("gap_doubt", tr("one gap may be off by, ±"), "mm", default="0.10", least=0.0,
                 help=tr("A rotor gap is vague: shaft play and the cap's seat are in it.")),
        SumField("pressure", tr("pressure in the intake"), "kPa", default="101.325", least=50.0,
                 most=300.0,
                 help=tr("Absolute: open air is about 101, a charged engine has more.")),
        SumField("temperature", tr("temperature in the intake"), "C", default="20", least=-40.0,
                 most=150.0, help=tr("Of the air that the cylinder draws.")),
        SumField("cap_temperature", tr("temperature under the cap"), "C", default="20", least=-40.0,
                 most=150.0,
                 help=tr("Warm when the engine is. The cap stands in open air: 101 kPa.")),
    ),
    work=_worked,
    caution=IGNITION_CAUTION,
)  # fmt: skip

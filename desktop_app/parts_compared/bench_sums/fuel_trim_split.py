"""The bench sum over fuel trims: a leak behind the sensor, or fuel and sensor falling short."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared.bench_sums.bench_sum import BenchSum
from desktop_app.parts_compared.bench_sums.sum_field import SumField, doubt_field
from desktop_app.parts_compared.bench_sums.sum_filled import Filled
from desktop_app.parts_compared.bench_sums.sum_offered import HOT_CAUTION, SumOffered
from desktop_app.parts_compared.bench_sums.trim_fit import TrimFit, fit_trim, total_trim
from desktop_app.parts_compared.shown_value import amount, doubt, number

NAME = tr("Fuel-trim split")
LIMIT = tr(
    "Holds warm, in closed loop, on one fuel, with a mass-flow sensor, the leak the "
    "same at each flow. It says where to look, not which part is bad."
)


def _worked(filled: Filled) -> BenchSum:
    flows, short, long = (filled.numbers(name) for name in ("flow", "short", "long"))
    for name, values in (("short", short), ("long", long)):
        if len(values) != len(flows):
            raise filled.trouble(
                name,
                tr(
                    "{trims} trims stand against {flows} flows.",
                    trims=len(values),
                    flows=len(flows),
                ),
                tr("Accepted: one for each flow, in the same order."),
            )
    if len(flows) < 2 or max(flows) < 1.5 * min(flows):
        raise filled.trouble(
            "flow",
            tr("one flow alone can't be split."),
            tr(
                "Accepted: two or better three flows, the largest half as much again as "
                "the smallest, from idle to load."
            ),
        )
    trims = [total_trim(s / 100, t / 100) for s, t in zip(short, long, strict=True)]
    off = filled.number("trim_doubt") / 100
    fit = fit_trim(flows, trims, off, filled.doubt("flow_doubt"))
    at_load = trims[flows.index(max(flows))]
    sentence = f"{_points(flows, trims)}: {_pointing(fit, at_load, off)}"
    if len(flows) == 2:
        sentence += tr(" Two points fit any line: take a third.")
    return BenchSum(NAME, fit.air, "g/s", fit.air_doubt, sentence, LIMIT, filled.inputs())


def _points(flows: tuple[float, ...], trims: list[float]) -> str:
    points = (
        tr("{trim:.3g} % at {flow:g} g/s", trim=100 * trim, flow=flow)
        for flow, trim in zip(flows, trims, strict=True)
    )
    return tr("Together the trims are {points}", points=", ".join(points))


def _pointing(fit: TrimFit, at_load: float, off: float) -> str:
    air = f"{amount(abs(fit.air), 'g/s', fit.air_doubt)}{doubt(fit.air_doubt)}"
    if fit.air > fit.air_doubt:
        return tr(
            "they fall with the flow, like {air} of air that the sensor doesn't see. "
            "Look for a leak behind the sensor.{same_share}",
            air=air,
            same_share=_same_share(fit),
        )
    if fit.air < -fit.air_doubt and at_load > off:
        return tr(
            "they grow with the flow. Look at fuel delivery under load and at a sensor "
            "that reads too little; an air leak would do the opposite."
        )
    if fit.air < -fit.air_doubt:
        return tr(
            "fuel is taken away most where little air flows. Look for fuel that comes "
            "in beside the injection: purge, a dripping injector, fuel in the oil."
        )
    return tr(
        "no air beside the sensor can be told from the readings{doubt}.{same_share}",
        doubt=doubt(fit.air_doubt),
        same_share=_same_share(fit),
    )


def _same_share(fit: TrimFit) -> str:
    if abs(fit.share) <= fit.share_doubt:
        return ""
    size, off = 100 * fit.share, 100 * fit.share_doubt
    return tr(
        " Besides, {share} %{doubt} stay at every flow: sensor, fuel pressure or the fuel itself.",
        share=number(size, off),
        doubt=doubt(off),
    )


OFFERED = SumOffered(
    id="fuel-trim-split",
    name=NAME,
    about=tr("From trims at idle, at a steady speed and under load to where the error enters."),
    kinds=("maf-sensor", "injector", "fuel-pump"),
    fields=(
        SumField("flow", tr("air flow"), "g/s", "list", above=0.0,
                 help=tr("Idle, steady and load, parted by a semicolon: 3.5; 12; 30.")),
        SumField("short", tr("short-term trim"), "%", "list", least=-60.0, most=100.0,
                 help=tr("At the same moments, in the same order.")),
        SumField("long", tr("long-term trim"), "%", "list", least=-60.0, most=100.0,
                 help=tr("At the same moments, in the same order.")),
        SumField("trim_doubt",
                 tr("one trim may be off by, ±"), "%", default="2", least=0.0, most=50.0,
                 help=tr("How much the reading wanders (2 is common practice, no source).")),
        doubt_field("flow_doubt", tr("one flow may be off by, ±"), "g/s", "scan reading"),
    ),
    work=_worked,
    caution=HOT_CAUTION,
)  # fmt: skip

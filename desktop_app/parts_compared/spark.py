"""The spark path: what the rotor gap and the plug gap together ask of the coil."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.parts_compared.air_breakdown import (
    LEAST_BAR_CM,
    air_breakdown_kv,
    gap_times_pressure,
)
from desktop_app.parts_compared.compressed_air import Air

METHOD = (
    "uniform field in air, V = 24.36 pd + 6.72 sqrt(pd) kV (p in bar at 20 C by density, d in cm); "
    "the plug's air is that of the intake, denser by the compression ratio; "
    "how warm the squeezing makes it does not change its density"
)
ESTIMATE = tr("This is an estimate that explains, not a specification.")
SERIES = tr(
    "Gaps in a row may break one after the other: with a full cylinder the coil must "
    "reach something from the larger of the two alone to their sum."
)
EVEN_FIELD = tr(
    "The formula is for an even field in clean air. Sharp or crusted edges, ozone, "
    "damp and the pulse's polarity change it."
)
FULL_CYLINDER = tr(
    "The plug's figure is an upper one: the cylinder is taken as full and the spark as "
    "coming at top dead centre. An earlier spark or less load asks for less."
)
HIGH_VOLTAGE = (
    tr("Ignition voltage can injure or kill. People with a pacemaker keep away."),
    tr(
        "Never open a spark gap by hand and never hold a live lead. The vehicle maker's "
        "procedure, local rules and licensed practice come first."
    ),
)


@dataclass(frozen=True, slots=True)
class Gap:
    """A gap in mm with its expanded uncertainty; a negative gap means that the parts touch."""

    mm: float
    doubt_mm: float = 0.0


@dataclass(frozen=True, slots=True)
class Volts:
    """A voltage in kV, and the range that the gap's uncertainty leaves open."""

    kv: float
    low_kv: float
    high_kv: float

    def words(self) -> str:
        """Return it as it is said: "4.6 kV (4.4 to 4.8)"."""
        if self.high_kv - self.low_kv < 0.05:
            return f"{figure(self.kv, '.1f')} kV"
        return tr(
            "{kv:.1f} kV ({low:.1f} to {high:.1f})",
            kv=self.kv,
            low=self.low_kv,
            high=self.high_kv,
        )


@dataclass(frozen=True, slots=True)
class SparkPath:
    """Both gaps in volts; a gap outside the formula's validity is None and `outside` says why.

    `notes` are what else must be said, for example of the air.
    """

    rotor: Volts | None
    plug: Volts | None
    outside: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()

    @property
    def valid(self) -> bool:
        """Whether both gaps lie where the formula holds."""
        return self.rotor is not None and self.plug is not None

    @property
    def larger(self) -> Volts | None:
        """The larger of the two: enough with a full cylinder if the gaps break one by one."""
        if self.rotor is None or self.plug is None:
            return None
        one, other = self.rotor, self.plug
        return Volts(
            max(one.kv, other.kv),
            max(one.low_kv, other.low_kv),
            max(one.high_kv, other.high_kv),
        )

    @property
    def sum(self) -> Volts | None:
        """Both together: needed if the gaps break at once. Its range is the worst case."""
        if self.rotor is None or self.plug is None:
            return None
        one, other = self.rotor, self.plug
        return Volts(one.kv + other.kv, one.low_kv + other.low_kv, one.high_kv + other.high_kv)

    @property
    def warnings(self) -> tuple[str, ...]:
        """What must be said with the numbers."""
        return (*self.outside, *self.notes, ESTIMATE, EVEN_FIELD, FULL_CYLINDER, *HIGH_VOLTAGE)

    def as_json(self) -> dict[str, Any]:
        """Return the JSON object, in full precision; a number that can't be given is null."""
        larger, both = self.larger, self.sum
        return {
            "rotor_gap_kv": self.rotor and self.rotor.kv,
            "plug_gap_kv": self.plug and self.plug.kv,
            "sum_kv": both and both.kv,
            "larger_kv": larger and larger.kv,
            "method": METHOD,
            "valid": self.valid,
            "warnings": list(self.warnings),
        }

    def sentences(self) -> tuple[str, ...]:
        """Return the same in plain words."""
        said = []
        if self.rotor is not None:
            said.append(
                tr("The rotor gap asks for about {kilovolts}.", kilovolts=self.rotor.words())
            )
        if self.plug is not None:
            said.append(tr("The plug gap asks for about {kilovolts}.", kilovolts=self.plug.words()))
        if self.larger is not None and self.sum is not None:
            low, high = self.larger.words(), self.sum.words()
            said.append(
                tr(
                    "With a full cylinder the coil must reach about {low}, the larger "
                    "alone, to {high}, the sum; less load asks for less.",
                    low=low,
                    high=high,
                )
            )
        return (*said, *self.outside)


def spark_path(
    rotor_gap: Gap,
    plug_gap: Gap,
    compression_ratio: float,
    air: Air | None = None,
    intake: Air | None = None,
) -> SparkPath:
    """Return what a rotor gap and a plug gap ask of the coil.

    `air` stands under the cap; `intake` is what the cylinder draws and squeezes, the same air
    where it is not given.
    """
    under_cap = air or Air()
    rotor, rotor_outside = gap_volts(tr("rotor gap"), rotor_gap, under_cap)
    squeezed = (intake or under_cap).compressed(compression_ratio)
    plug, plug_outside = gap_volts(tr("plug gap"), plug_gap, squeezed)
    return SparkPath(rotor, plug, (*rotor_outside, *plug_outside))


def gap_volts(name: str, gap: Gap, air: Air) -> tuple[Volts | None, tuple[str, ...]]:
    """Return what one gap asks for, or None and the sentence that says why there is no number.

    More gap always asks for more voltage, so the ends of the gap's interval give the ends of the
    voltage's. An end below the formula's validity is counted as nothing.
    """
    middle = air_breakdown_kv(gap.mm, air.pressure_kpa, air.temperature_c)
    high = air_breakdown_kv(gap.mm + gap.doubt_mm, air.pressure_kpa, air.temperature_c)
    if middle is None or high is None:
        return None, (_why_outside(name, gap, air),)
    low = air_breakdown_kv(gap.mm - gap.doubt_mm, air.pressure_kpa, air.temperature_c)
    if low is not None:
        return Volts(middle, low, high), ()
    said = tr(
        "The {name} is known too roughly for a lower end: it may be almost closed.", name=name
    )
    return Volts(middle, 0.0, high), (said,)


def change_sentence(before: SparkPath, after: SparkPath) -> str:
    """Return old against new in one sentence; empty where there is nothing to set side by side.

    Where one gap is unknown on both sides, the sentence is about the other one alone.
    """
    if before.sum and after.sum and before.larger and after.larger:
        old = tr("{low:.1f} to {high:.1f} kV", low=before.larger.kv, high=before.sum.kv)
        new = tr("{low:.1f} to {high:.1f} kV", low=after.larger.kv, high=after.sum.kv)
        return tr(
            "The old parts asked the coil for about {old}; the new ones ask for about {new}.",
            old=old,
            new=new,
        )
    if before.rotor and after.rotor:
        return tr(
            "The rotor gap asked for about {old:.1f} kV with the old parts and asks for about "
            "{new:.1f} kV with the new.",
            old=before.rotor.kv,
            new=after.rotor.kv,
        )
    if before.plug and after.plug:
        return tr(
            "The plug gap asked for about {old:.1f} kV with the old parts and asks for about "
            "{new:.1f} kV with the new.",
            old=before.plug.kv,
            new=after.plug.kv,
        )
    return ""


def _why_outside(name: str, gap: Gap, air: Air) -> str:
    if gap.mm <= 0:
        return tr(
            "The {name} is closed: the parts touch, so there is no spark to reckon with.", name=name
        )
    if gap_times_pressure(gap.mm, air.pressure_kpa, air.temperature_c) < LEAST_BAR_CM:
        return tr(
            "The {name} of {mm:.3g} mm in this air is too small for the formula, so no voltage is "
            "given.",
            name=name,
            mm=gap.mm,
        )
    return tr(
        "The {name} of {mm:.3g} mm in this air is too large for the formula, so no voltage is "
        "given.",
        name=name,
        mm=gap.mm,
    )

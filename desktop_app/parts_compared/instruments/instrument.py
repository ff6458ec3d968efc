"""Instruments: how finely each is read, and how far off its maker lets it be."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from desktop_app.language import as_shown, marked
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.photo_doubt import PhotoDoubt

#: A usual spread is trusted to a quarter of itself: half of 0.25**-2 (JCGM 100, G.4.2, eq. G.3).
PRIOR_DOF = 8.0


@dataclass(frozen=True, slots=True)
class Instrument:
    """What is known of one instrument; all figures in `unit`.

    `repeatability` is the standard deviation that the shop gets with it, known with
    `repeatability_dof` degrees of freedom; None takes the larger of half a step and a third of
    the permitted error (common practice, no source), trusted to a quarter of itself.
    `checked_on` is the ISO day of its last check, where that was noted. `photo` is what a photo
    leaves open of marks on it; only marks have it.
    """

    name: str
    unit: str
    resolution: float
    max_error: float
    repeatability: float | None = None
    repeatability_dof: float | None = None
    checked_on: str | None = None
    photo: PhotoDoubt | None = None

    @property
    def usual_spread(self) -> float:
        """The spread of single readings to expect before anything was repeated."""
        if self.repeatability is not None:
            return self.repeatability
        steps = 0.0 if self.goes_in else self.resolution / 2
        return max(steps, self.max_error / 3)

    @property
    def usual_dof(self) -> float:
        """The degrees of freedom with which that spread is known."""
        known = self.repeatability is not None and self.repeatability_dof is not None
        return self.repeatability_dof or PRIOR_DOF if known else PRIOR_DOF

    @property
    def goes_in(self) -> bool:
        """Whether it is read as the largest size that enters: the true size is up to a step more.

        So are leaves and pins. The same leaf enters again and again, whatever lies above it.
        """
        return any(sort in self.name for sort in ("feeler", "pin gauge"))

    def is_one_with(self, other: Instrument) -> bool:
        """Whether both are one instrument; marks are not what is read off a photo by eye."""
        return self.name == other.name and (self.photo is None) == (other.photo is None)


#: name -> unit -> (resolution, permitted error), and where it is neither: what readings scatter.
#: Common practice, no source; a photo's scatter is that of clicks on rendered photos.
_USUAL: dict[str, dict[str, tuple[float, float] | tuple[float, float, float]]] = {
    marked("calliper"): {"mm": (0.01, 0.03)},
    marked("depth rod"): {"mm": (0.01, 0.04)},
    marked("micrometer"): {"mm": (0.01, 0.004)},
    marked("feeler gauge"): {"mm": (0.05, 0.005)},
    marked("pin gauge"): {"mm": (0.02, 0.005)},
    marked("bore gauge"): {"mm": (0.01, 0.02)},
    marked("dial indicator"): {"mm": (0.01, 0.015)},
    marked("rib gauge"): {"mm": (0.1, 0.1)},
    marked("steel rule"): {"mm": (0.5, 0.3)},
    marked("tape"): {"mm": (1.0, 1.0)},
    marked("photo"): {"mm": (0.05, 0.15, 0.15), "deg": (0.5, 0.5, 0.5)},
    marked("protractor"): {"deg": (1.0, 0.5)},
    marked("ohmmeter"): {"ohm": (0.1, 0.3), "kohm": (0.01, 0.05)},
    marked("voltmeter"): {"V": (0.01, 0.02)},
    marked("ammeter"): {"A": (0.1, 0.3)},
    marked("oscilloscope"): {"V": (0.02, 0.05)},
    marked("pressure gauge"): {"kPa": (5.0, 10.0)},
    marked("spring balance"): {"N": (0.1, 0.1)},
    marked("battery tester"): {"A": (5.0, 25.0)},
    marked("measuring cylinder"): {"ml": (1.0, 2.0)},
    marked("thermometer"): {"C": (0.5, 1.0)},
    marked("scan reading"): {"g/s": (0.1, 0.2), "V": (0.02, 0.05), "C": (1.0, 2.0)},
}
#: What is read off or looked at has no doubt of its own.
_EXACT = (marked("label"), marked("eye"), marked("magnet card"), marked("thread gauge"))

USUAL_INSTRUMENTS: tuple[str, ...] = tuple(sorted((*_USUAL, *_EXACT)))


def tool_words(name: str) -> str:
    """Return what an instrument is called: the shop's own by its name, the usual ones translated.

    What is kept, typed into pair files and compared is the name itself.
    """
    return as_shown(name, USUAL_INSTRUMENTS)


def usual_instrument(name: str, unit: str) -> Instrument | None:
    """Return the usual figures of an instrument in that unit, or None where it has none."""
    if name in _EXACT:
        return Instrument(name, unit, 0.0, 0.0, 0.0)
    figures = _USUAL.get(name, {}).get(unit)
    return Instrument(name, unit, *figures) if figures else None


def instrument_for(
    name: str | None, dimension: Dimension, drawer: Mapping[str, Instrument]
) -> Instrument | None:
    """Return the instrument of a reading: the shop's own, else the usual one, else None.

    `name` None takes what the kind suggests. An instrument in another unit doesn't serve.
    """
    wanted = name or dimension.instrument
    own = drawer.get(wanted)
    if own is not None and own.unit == dimension.unit:
        return own
    return usual_instrument(wanted, dimension.unit)

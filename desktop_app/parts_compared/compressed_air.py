"""Air after compression: pressure and temperature by a polytropic change of state."""

from __future__ import annotations

from dataclasses import dataclass

from desktop_app.parts_compared.air_breakdown import ZERO_CELSIUS_K

# Between 1.0 (all heat lost) and 1.4 (none lost). Common practice, no source.
USUAL_EXPONENT = 1.3


@dataclass(frozen=True, slots=True)
class Air:
    """Air at rest: absolute pressure in kPa, temperature in degrees Celsius."""

    pressure_kpa: float = 101.325
    temperature_c: float = 20.0

    def compressed(self, ratio: float, exponent: float = USUAL_EXPONENT) -> Air:
        """Return the air after compression by volume `ratio`, 1 or more.

        p2/p1 = r**n and T2/T1 = r**(n - 1), temperatures in kelvin: the definition of a
        polytropic change of an ideal gas. The density p/T becomes r times as much whatever the
        exponent, so a voltage that goes by density does not depend on it.
        """
        kelvin = (self.temperature_c + ZERO_CELSIUS_K) * ratio ** (exponent - 1)
        return Air(self.pressure_kpa * ratio**exponent, kelvin - ZERO_CELSIUS_K)

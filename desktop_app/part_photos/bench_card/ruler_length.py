"""A card's ruler as a calliper read it: typed, judged, shown, and what it says of the scale."""

from __future__ import annotations

from datetime import date

from desktop_app.part_photos.typed_length import MM_PER_INCH, typed_length
from desktop_app.shop_record.trouble import ShopTrouble

FARTHEST = 0.03  # share of the nominal length; a print further off was fitted to its page
CALLIPER_U_MM = 0.05  # standard uncertainty, over two printed lines (common practice, no source)
UNMEASURED_U = 0.003  # share; of a print that nobody measured (common practice, no source)

_ACCEPTED = "Accepted: millimetres like 150.2 or 150,2, inches like 5.913 in."


def ruler_length(text: str, length_unit: str = "mm") -> float | None:
    """Return the typed length in mm; None where nothing is typed.

    A figure without a unit is in `length_unit`, "mm" or "inch". Raises ShopTrouble.
    """
    return typed_length(text, length_unit, _ACCEPTED)


def is_near(measured_mm: float, nominal_mm: float) -> bool:
    """Tell whether a printed ruler can be as long as that."""
    return abs(measured_mm - nominal_mm) <= FARTHEST * nominal_mm


def check_ruler(measured_mm: float, nominal_mm: float) -> None:
    """Raise a ShopTrouble where the printed ruler can't be as long as it was read."""

    if is_near(measured_mm, nominal_mm):
        return
    if is_near(measured_mm * MM_PER_INCH, nominal_mm):
        do = f"Is that in inches? Then write {measured_mm:.6g} in."
    elif is_near(measured_mm / MM_PER_INCH, nominal_mm):
        do = f"Is that in millimetres? Then write {measured_mm / MM_PER_INCH:.6g} mm."
    else:
        do = (
            f"Accepted: {nominal_mm * (1 - FARTHEST):g} to {nominal_mm * (1 + FARTHEST):g} mm. "
            "Measure again, or print the card anew at 100 %, not fitted to the page."
        )
    raise ShopTrouble(
        f"The ruler should be {nominal_mm:g} mm; {measured_mm:.6g} mm is too far off.", do=do
    )


def shown_length(measured_mm: float | None, length_unit: str) -> str:
    """Return a kept length as its field shows it, with its unit."""
    if measured_mm is None:
        return ""
    if length_unit == "inch":
        return f"{round(measured_mm / MM_PER_INCH, 4):g} in"
    return f"{round(measured_mm, 3):.10g} mm"


def said_of_ruler(measured_mm: float | None, nominal_mm: float, measured_on: date | None) -> str:
    """Return what a ruler's length means for what is measured on that card."""
    if measured_mm is None:
        return (
            "✎ Never measured. Lengths from photos on this card may be off by about half a "
            "percent, and their uncertainty says so (common practice, no source)."
        )
    percent = 100 * (measured_mm / nominal_mm - 1)
    when = f" on {measured_on.isoformat()}" if measured_on else ""
    if abs(percent) < 0.005:
        return f"✓ Measured{when}: the print is true."
    off = "larger" if percent > 0 else "smaller"
    printed = f"printed {abs(percent):.2f} % {off} than drawn"
    return f"✓ Measured{when}: {printed}; every length is corrected."

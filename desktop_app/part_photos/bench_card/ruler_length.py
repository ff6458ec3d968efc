"""A card's ruler as a calliper read it: typed, judged, shown, and what it says of the scale."""

from __future__ import annotations

from datetime import date

from desktop_app.figures_shown import figure
from desktop_app.language import tr
from desktop_app.part_photos.typed_length import MM_PER_INCH, typed_length
from desktop_app.shop_record.trouble import ShopTrouble

FARTHEST = 0.03  # share of the nominal length; a print further off was fitted to its page
CALLIPER_U_MM = 0.05  # standard uncertainty, over two printed lines (common practice, no source)
UNMEASURED_U = 0.003  # share; of a print that nobody measured (common practice, no source)

_ACCEPTED = tr("Accepted: millimetres like 150.2 or 150,2, inches like 5.913 in.")


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
        do = tr("Is that in inches? Then write {measured_mm:.6g} in.", measured_mm=measured_mm)
    elif is_near(measured_mm / MM_PER_INCH, nominal_mm):
        do = tr(
            "Is that in millimetres? Then write {measured_mm:.6g} mm.",
            measured_mm=measured_mm / MM_PER_INCH,
        )
    else:
        do = tr(
            "Accepted: {low:g} to {high:g} mm. Measure again, or print "
            "the card anew at 100 %, not fitted to the page.",
            low=nominal_mm * (1 - FARTHEST),
            high=nominal_mm * (1 + FARTHEST),
        )
    raise ShopTrouble(
        tr(
            "The ruler should be {nominal_mm:g} mm; {measured_mm:.6g} mm is too far off.",
            nominal_mm=nominal_mm,
            measured_mm=measured_mm,
        ),
        do=do,
    )


def shown_length(measured_mm: float | None, length_unit: str) -> str:
    """Return a kept length as its field shows it, with its unit."""
    if measured_mm is None:
        return ""
    if length_unit == "inch":
        return f"{figure(round(measured_mm / MM_PER_INCH, 4), 'g')} in"
    return f"{figure(round(measured_mm, 3), '.10g')} mm"


def said_of_ruler(measured_mm: float | None, nominal_mm: float, measured_on: date | None) -> str:
    """Return what a ruler's length means for what is measured on that card."""
    if measured_mm is None:
        return tr(
            "✎ Never measured. Lengths from photos on this card may be off by about "
            "half a percent, and their uncertainty says so (common practice, no "
            "source)."
        )
    percent = 100 * (measured_mm / nominal_mm - 1)
    done = tr("Measured on {day}", day=measured_on.isoformat()) if measured_on else tr("Measured")
    if abs(percent) < 0.005:
        return "✓ " + tr("{done}: the print is true.", done=done)
    printed = (
        tr("printed {percent:.2f} % larger than drawn", percent=percent)
        if percent > 0
        else tr("printed {percent:.2f} % smaller than drawn", percent=-percent)
    )
    return "✓ " + tr("{done}: {printed}; every length is corrected.", done=done, printed=printed)

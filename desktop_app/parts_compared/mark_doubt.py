"""The doubt of a reading, from the budget of the mark that it is taken from."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass, field

from desktop_app.language import tr
from desktop_app.part_photos.camera.card_scale import FLAT_U_MM
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.photo_doubt import PhotoDoubt
from desktop_app.parts_compared.typed_value import accepted_value
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class MarkRead:
    """What a mark says of a part: value, expanded and standard uncertainties (`budget`) in `unit`.

    The unit of a count is "". `card_id` is the printed card that gave the scale, if one did.
    `height_missing`: the size rests on a height above the card that nobody said.
    """

    photo_id: int
    value: float | None
    unit: str
    expanded_u: float | None = None
    budget: Mapping[str, float] = field(default_factory=dict)
    height_mm: float = 0.0
    height_u_mm: float = 0.0
    card_id: int | None = None
    height_missing: bool = False

    def typed(self) -> str:
        """Return the value as a person would type it, without a unit.

        It has the decimals of an uncertainty with two digits (JCGM 100, 7.2.6).
        """
        value, u = self.value or 0.0, self.expanded_u or 0.0
        if not (0 < u < math.inf):
            return f"{value:.6g}"
        decimals = min(6, max(0, 1 - math.floor(math.log10(u))))
        return f"{value:.{decimals}f}"


def doubt_of_mark(mark: MarkRead) -> PhotoDoubt:
    """Return what a reading from the mark leaves open.

    What the budget has beside pointing, height and print belongs to the photo: so does how flat the
    paper lay, which is another in every photo. A budget that doesn't name the flatness has it in
    its height.
    """
    pointing, height, printed = (
        mark.budget.get(name, 0.0) for name in ("pointing", "height", "print")
    )
    entered = mark.height_u_mm / math.sqrt(3)  # lies anywhere in its range (JCGM 100, 4.3.7)
    rest = [u for name, u in mark.budget.items() if name not in ("pointing", "height", "print")]
    if "flatness" not in mark.budget:
        per_mm = height / math.hypot(entered, FLAT_U_MM)
        height = per_mm * entered
        rest.append(per_mm * FLAT_U_MM)
    camera = math.hypot(*rest)
    shared = ""
    if mark.card_id is not None:
        shared = f"card {mark.card_id}, {mark.height_mm:g} ± {mark.height_u_mm:g} mm up"
    return PhotoDoubt(pointing, camera, height, printed, shared)


def check_fits(mark: MarkRead, dimension: Dimension) -> None:
    """Raise a ShopTrouble where the mark can't be a reading of the dimension."""
    if mark.unit == "%":
        raise ShopTrouble(
            tr("The share of a surface is a help to the eye, no reading of a dimension."),
            kept=tr("The mark stays as it is."),
            do=tr("Note what was seen on the part under its condition."),
        )
    if mark.value is None:
        raise ShopTrouble(
            tr("This mark says no size yet, so it can't be a reading."),
            kept=tr("The mark stays as it is."),
            do=tr("Give the photo its scale, or choose another mark."),
        )
    wanted = "" if dimension.role == "count" else dimension.unit
    if dimension.role == "word" or mark.unit != wanted:
        raise ShopTrouble(
            tr(
                "The {label} is {wanted}, and this mark gives {given}.",
                label=dimension.label,
                wanted=_sort(wanted),
                given=_sort(mark.unit),
            ),
            kept=tr("The mark stays as it is."),
            do=tr("Choose another mark, or another dimension."),
        )
    if mark.height_missing:
        raise ShopTrouble(
            tr("Nobody said how high above the card this mark lies, so its size is not sure."),
            kept=tr("The mark stays as it is."),
            do=tr("Give the mark its height first. Type 0 for what lies on the card itself."),
        )
    accepted_value(mark.value, dimension.unit)


def _sort(unit: str) -> str:
    return _SAID.get(unit) or tr("a value in {unit}", unit=unit)


_SAID = {"": tr("a count"), "mm": tr("a length"), "deg": tr("an angle"), "word": tr("a word")}

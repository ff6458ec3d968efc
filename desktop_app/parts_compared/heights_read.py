"""Which dimensions of a part can be how high something stands above the card it lies on."""

from __future__ import annotations

import re

from desktop_app.parts_compared.part_kinds.part_kind import Dimension

#: A part lies on the card with one of its extents upright; radii, gaps, play and the places of
#: holes are no such extent.
_EXTENTS = re.compile(r"\b(height|thickness|width|length)\b", re.IGNORECASE)
_SOFT = re.compile(r"\b(lead|curve|free|effective)\b", re.IGNORECASE)  # hoses, leads and belts


def may_be_height(dimension: Dimension) -> bool:
    """Tell whether what was read of a dimension may be a mark's height above the card."""
    if dimension.unit != "mm" or dimension.role in ("limit", "word", "count"):
        return False
    return bool(_EXTENTS.search(dimension.plain)) and not _SOFT.search(dimension.plain)

"""Which surfaces of the old and the new part belong together: those of one name."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from desktop_app.part_photos.marks.mark import Mark


def other_surface(mark: Mark, others: Mapping[int, Mark]) -> int | None:
    """Return the surface among the other part's marks that has the name of this one, or None."""
    name = mark.name.strip().casefold()
    if mark.type != "surface" or not name:
        return None
    same = (
        one
        for one, other in others.items()
        if other.type == "surface" and other.name.strip().casefold() == name
    )
    return next(same, None)


def listed(old: Mapping[int, Mark], new: Mapping[int, Mark]) -> Sequence[int]:
    """Return all marks by id, the old part's first, each surface followed by its like."""
    order: list[int] = []
    for mark_id, mark in old.items():
        order.append(mark_id)
        like = other_surface(mark, new)
        if like is not None and like not in order:
            order.append(like)
    return [*order, *(one for one in new if one not in order)]

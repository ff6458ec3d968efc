"""What to look after when parts go back on, by their kinds."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.parts_compared.part_kinds.part_kind import PartKind


def refit_points(kinds: Iterable[PartKind]) -> tuple[tuple[str, bool], ...]:
    """Return (words as they are kept, hurts) of each refit check of some kinds, each once."""
    found: dict[str, bool] = {}
    for kind in kinds:
        for check in kind.refit:
            found[check.say] = found.get(check.say, False) or check.hurt
    return tuple(found.items())

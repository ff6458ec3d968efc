"""A part kind as one JSON document, for the shell."""

from __future__ import annotations

from typing import Any

from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind


def kind_as_json(kind: PartKind) -> dict[str, Any]:
    """Return the kind as plain JSON values; an open end of `allowed` is null."""
    return {
        "kind": kind.id,
        "name": kind.name,
        "also": list(kind.also),
        "system": kind.system,
        "sides": list(kind.sides),
        "pieces": kind.pieces,
        "views": list(kind.views),
        "cautions": list(kind.cautions),
        "dimensions": [_dimension(one) for one in kind.dimensions],
        "conditions": [
            {
                "term": one.term,
                "also": list(one.also),
                "means": one.means,
                "moves": dict(one.moves),
                "allowed_when_new": one.allowed_when_new,
            }
            for one in kind.conditions
        ],
        "wrongs": [{"say": one.say, "shows_on": list(one.shows_on)} for one in kind.wrongs],
        "refit": [{"say": one.say, "hurt": one.hurt} for one in kind.refit],
        "proof": [{"say": one.say, "level": one.level} for one in kind.proof],
    }


def _dimension(one: Dimension) -> dict[str, Any]:
    return {
        "name": one.name,
        "label": one.label,
        "unit": one.unit,
        "role": one.role,
        "allowed": list(one.allowed) if one.allowed else None,
        "direction": one.direction,
        "instrument": one.instrument,
        "essential": one.essential,
        "basis": one.basis,
        "how": one.how,
        "wear": one.wear,
        "choices": list(one.choices),
    }

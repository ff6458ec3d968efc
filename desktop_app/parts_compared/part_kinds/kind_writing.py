"""A part kind written as the TOML text that `part_kind_file` reads: the one form kinds have."""

from __future__ import annotations

from typing import Any

from desktop_app.parts_compared.part_kinds.kind_table import Say, as_written
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind


def kind_as_toml(kind: PartKind, keep: Say = as_written) -> str:
    """Return the kind's file; reading it back gives an equal kind.

    `keep` gives back the words of the file for those that `say` gave when it was read.
    """
    import tomli_w

    name, *also = kind.plain_names
    return tomli_w.dumps(
        {
            "schema": 1,
            **_filled(
                id=kind.id,
                like=kind.like,
                name=name,
                also=also,
                system=kind.system,
                sides=kind.sides,
                pieces=kind.pieces,
                views=kind.views,
                cautions=[keep(one) for one in kind.cautions],
                dimensions=[_dimension(one, keep) for one in kind.dimensions],
                conditions=[
                    _filled(
                        term=one.term,
                        also=one.also,
                        means=keep(one.means),
                        moves=dict(one.moves),
                        allowed_when_new=one.allowed_when_new,
                    )
                    for one in kind.conditions
                ],
                wrongs=[_filled(say=keep(one.say), shows_on=one.shows_on) for one in kind.wrongs],
                refit=[_filled(say=one.say, hurt=one.hurt) for one in kind.refit],
                proof=[_filled(say=one.say, level=one.level) for one in kind.proof],
            ),
        }
    )


def _dimension(one: Dimension, keep: Say) -> dict[str, Any]:
    low, high = one.allowed or (None, None)
    allowed: dict[str, Any] = {}
    if one.role == "limit":
        allowed = _filled(at_least=low, at_most=high)
    elif one.role == "restored" and low is not None and high is not None:
        ends = (low, high) if one.direction == "bigger" else (0.0 - high, 0.0 - low)
        allowed = {"restored_by": list(ends), "direction": one.direction}
    elif one.role in ("same", "orientation"):
        allowed = {"allowed": high}
    return _filled(
        name=one.name,
        label=one.plain,
        unit=one.unit,
        role=one.role,
        **allowed,
        instrument=one.instrument,
        essential=one.essential,
        basis=keep(one.basis),
        how=keep(one.how),
        wear=keep(one.wear),
        choices=one.choices,
        typical=one.typical if one.typical and None not in one.typical else None,
    )


def _filled(**values: Any) -> dict[str, Any]:
    """Return what says something: an absent key means empty, false or none."""
    return {
        key: list(value) if isinstance(value, tuple) else value
        for key, value in values.items()
        if value is not None and value is not False and value not in ("", (), [], {})
    }

"""Changes a shop makes to a part kind of its own: each gives a new kind, or says what is wrong."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Collection
from typing import Any

from desktop_app.language import marked, tr
from desktop_app.parts_compared.in_shop_unit import MM_PER_INCH
from desktop_app.parts_compared.part_kinds.figure_words import BETWEEN, ONE_END
from desktop_app.parts_compared.part_kinds.part_kind import (
    Dimension,
    Direction,
    PartKind,
    Role,
    Span,
)
from desktop_app.parts_compared.typed_value import typed_value
from desktop_app.shop_record.trouble import ShopTrouble

SHOPS_FIGURE = marked("the shop's own figure")  # kept in the kind
_LONGEST = 120


def own_id(name: str, taken: Collection[str]) -> str:
    """Return an id for a new kind or dimension of that name, in whatever letters it is written.

    An id that is taken already gets a number. Refused where there is no name.
    """
    latin = unicodedata.normalize("NFKD", name.casefold()).encode("ascii", "ignore").decode()
    bare = re.sub(r"[^a-z0-9]+", "-", latin).strip("-")[:60].strip("-")
    if not bare and any(letter.isalnum() for letter in name):
        bare = "own"
    if not bare or any(unicodedata.category(letter)[0] == "C" for letter in name.strip()):
        raise ShopTrouble(
            tr("It needs a name."), do=tr("Accepted: a few words, such as “wiper motor”.")
        )
    if bare not in taken:
        return bare
    return next(f"{bare}-{n}" for n in range(2, len(taken) + 3) if f"{bare}-{n}" not in taken)


def read_allowed(text: str, dimension: Dimension, length_unit: str = "mm") -> Span | None:
    """Return the allowed span that a person typed for a dimension.

    Same and orientation take one figure (either way), restored takes two (from and to), a limit
    takes "10 to 20", "at least 10", "at most 20" or nothing. Raises a ShopTrouble.
    """
    if dimension.role in ("count", "word"):
        return dimension.allowed
    words = text.strip()
    if dimension.role == "limit":
        return _limits(words, dimension, length_unit)
    if dimension.role == "restored":
        low, high = _two(words, dimension, length_unit)
        return (low, high) if dimension.direction == "bigger" else (0.0 - high, 0.0 - low)
    allowed = abs(_figure(words, dimension, length_unit))
    return (-allowed, allowed)


def with_dimension(kind: PartKind, changed: Dimension) -> PartKind:
    """Return the kind with the dimension of that name changed, or added at the end."""
    if not changed.label.strip() or len(changed.label) > _LONGEST:
        raise ShopTrouble(
            tr("A dimension needs a name of 1 to {longest} letters.", longest=_LONGEST)
        )
    if kind.dimension(changed.name) is None:
        return kind._replace(dimensions=(*kind.dimensions, changed))
    return kind._replace(
        dimensions=tuple(changed if d.name == changed.name else d for d in kind.dimensions),
    )


def with_change(kind: PartKind, shown: Dimension, **change: Any) -> PartKind:
    """Return the kind with only these values of one dimension changed.

    Refused where the kind has the dimension that was shown no more, or asks something else of it.
    """
    kept = kind.dimension(shown.name)
    if kept is None or _asked(kept) != _asked(shown):
        raise ShopTrouble(
            tr(
                "“{label}” is not measured in this way on {name} any more.",
                label=shown.label,
                name=kind.name,
            ),
            kept=tr("Nothing was changed."),
            do=tr("Look at what the kind measures now."),
        )
    return with_dimension(kind, kept._replace(**change))


def without_dimension(kind: PartKind, name: str) -> PartKind:
    """Return the kind without a dimension; the last one stays, and so does what needs it."""
    if kind.dimension(name) is None:
        raise ShopTrouble(
            tr("The part kind {name} has this dimension no more.", name=kind.name),
            kept=tr("Nothing changed."),
        )
    left = tuple(one for one in kind.dimensions if one.name != name)
    if not left:
        raise ShopTrouble(tr("A part kind needs one dimension at least."), kept=tr("It was left."))
    conditions = tuple(
        one._replace(moves={d: way for d, way in one.moves.items() if d != name})
        for one in kind.conditions
    )
    wrongs = tuple(
        one._replace(shows_on=tuple(d for d in one.shows_on if d != name)) for one in kind.wrongs
    )
    return kind._replace(dimensions=left, conditions=conditions, wrongs=wrongs)


def new_dimension(
    kind: PartKind,
    label: str,
    role: Role,
    unit: str,
    instrument: str,
    allowed: str,
    direction: Direction = "bigger",
    length_unit: str = "mm",
    read: Collection[str] = (),
) -> Dimension:
    """Return a dimension of the shop's own for a kind, with the allowed figure as typed.

    `read` names dimensions that have readings in the record: theirs mean something else.
    """
    if any(one.label.casefold() == label.strip().casefold() for one in kind.dimensions):
        raise ShopTrouble(
            tr("“{label}” is there already.", label=label.strip()), do=tr("Give it another name.")
        )
    name = own_id(label, {*(one.name for one in kind.dimensions), *read})
    bare = Dimension(
        name=name,
        label=label.strip(),
        unit={"count": "n", "word": "word", "orientation": "deg"}.get(role, unit),
        role=role,
        allowed=(0.0, 0.0) if role == "count" else None,
        direction=direction if role == "restored" else None,
        instrument=instrument,
        essential=True,
        basis=SHOPS_FIGURE,
    )
    return bare._replace(allowed=read_allowed(allowed, bare, length_unit))


def _asked(one: Dimension) -> tuple[Role, str, Direction | None]:
    return one.role, one.unit, one.direction


def _limits(words: str, dimension: Dimension, length_unit: str) -> Span | None:
    if not words:
        return None
    for start, low in ONE_END:
        if words.casefold().startswith(start):
            figure = _figure(words[len(start) :], dimension, length_unit)
            return (figure, None) if low else (None, figure)
    return _two(words, dimension, length_unit)


def _two(words: str, dimension: Dimension, length_unit: str) -> tuple[float, float]:
    parts = BETWEEN.split(words.casefold().removeprefix("from "))
    if len(parts) != 2:
        raise ShopTrouble(
            tr("“{words}” is not two figures.", words=words),
            do=tr("Accepted: the smaller and the larger: 0.1 to 1.5."),
        )
    unit = re.search(r"[^\d\s.,/+-]+\s*$", parts[1])
    if unit is not None and not re.search(r"[^\d\s.,/+-]", parts[0]):
        parts[0] = f"{parts[0]} {unit[0]}"  # "0.1 to 0.5 in": the unit is that of both
    low, high = (_figure(part, dimension, length_unit) for part in parts)
    if dimension.role == "restored" and high <= 0:
        raise ShopTrouble(
            tr("“{words}” allows nothing.", words=words),
            do=tr("Accepted: 0.1 to 1.5, for example."),
        )
    if low > high:
        raise ShopTrouble(
            tr("“{words}”: the first is above the second.", words=words), do=tr("Exchange the two.")
        )
    return low, high


def _figure(words: str, dimension: Dimension, length_unit: str) -> float:
    bare = not any(letter.isalpha() or letter in "\"″'" for letter in words)
    factor = MM_PER_INCH if bare and dimension.unit == "mm" and length_unit == "inch" else 1.0
    return typed_value(words, dimension.unit) * factor

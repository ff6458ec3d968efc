"""A part-kind file: its TOML text read into a PartKind, or refused with the line to mend."""

from __future__ import annotations

from functools import lru_cache

from desktop_app.language import tr
from desktop_app.parts_compared.part_kinds.kind_table import KindTable, Say, as_written, toml_table
from desktop_app.parts_compared.part_kinds.part_kind import (
    COMMON_PRACTICE,
    DIRECTIONS,
    ROLES,
    ConditionTerm,
    Dimension,
    Direction,
    KindNames,
    PartKind,
    ProofCheck,
    RefitCheck,
    Role,
    Span,
    TypicalWrong,
)


@lru_cache(maxsize=512)
def read_kind(text: str, file: str, say: Say = as_written) -> PartKind:
    """Return the kind written in `text`; `file` is only named in messages.

    `say` gives the words for what is meant for people: tr() for what comes with the program.
    Keys that are not known are left alone. Raises KindTrouble. The shelf is read again after each
    change of one kind, so that an unchanged text is not taken apart twice.
    """
    table = toml_table(text, file, say)
    names = _names(table)
    return PartKind(
        id=names.id,
        name=names.name,
        also=names.also,
        system=table.word("system"),
        sides=table.words("sides"),
        pieces=table.word("pieces", "1"),
        views=table.words("views"),
        cautions=table.said_words("cautions"),
        dimensions=_dimensions(table),
        conditions=tuple(_condition(one) for one in table.tables("conditions")),
        wrongs=tuple(
            TypicalWrong(one.said("say"), one.words("shows_on")) for one in table.tables("wrongs")
        ),
        refit=tuple(RefitCheck(one.word("say"), one.flag("hurt")) for one in table.tables("refit")),
        proof=tuple(
            ProofCheck(one.word("say"), one.word("level", "bay")) for one in table.tables("proof")
        ),
        like=table.identifier("like", "tip-radius") if table.word("like", "") else "",
        written=names.written,
    )


def read_names(text: str, file: str, say: Say = as_written) -> KindNames:
    """Return what the kind written in `text` is called, and look at nothing else of it."""
    return _names(toml_table(text, file, say))


def _names(table: KindTable) -> KindNames:
    name, also = table.said("name"), table.names("also")
    plain = (table.word("name"), *table.words("also"))
    written = plain if plain != (name, *also) else ()
    return KindNames(table.identifier("id", "tip-radius"), name, also, written)


def _dimensions(table: KindTable) -> tuple[Dimension, ...]:
    dimensions: dict[str, Dimension] = {}
    for one in table.tables("dimensions"):
        dimension = _dimension(one)
        if dimension.name in dimensions:
            raise one.trouble(
                "name",
                tr("'{name}' is used twice", name=dimension.name),
                tr("Give each dimension its own name."),
            )
        dimensions[dimension.name] = dimension
    if not dimensions:
        raise table.trouble(
            "dimensions", tr("is missing"), tr("Add at least one [[dimensions]] table.")
        )
    return tuple(dimensions.values())


def _dimension(table: KindTable) -> Dimension:
    name = table.identifier("name", "tip-radius")
    role = table.choice("role", ROLES)
    direction = table.choice("direction", DIRECTIONS) if role == "restored" else None
    unit = {"count": "n", "word": "word", "orientation": "deg"}.get(role) or table.word("unit")
    written = table.word("label", name.replace("-", " "))
    label = table.say(written)
    return Dimension(
        name=name,
        label=label,
        unit=unit,
        role=role,
        allowed=_allowed(table, role, direction),
        direction=direction,
        instrument=table.word("instrument", "eye" if role in ("count", "word") else None),
        essential=table.flag("essential"),
        basis=table.said("basis", COMMON_PRACTICE),
        how=table.said("how", ""),
        wear=table.said("wear", ""),
        choices=table.words("choices"),
        typical=table.span("typical"),
        written=written if written != label else "",
    )


def _allowed(table: KindTable, role: Role, direction: Direction | None) -> Span | None:
    if role == "count":
        return (0.0, 0.0)
    if role == "word":
        return None
    if role == "limit":
        return _limits(table)
    if role == "restored":
        return _restoration(table, direction)
    allowed = table.number("allowed")
    if allowed is None or allowed < 0:
        raise table.trouble(
            "allowed",
            tr("must say how far the new part may differ either way"),
            tr("Write allowed = 0.20, for example."),
        )
    return (-allowed, allowed)


def _restoration(table: KindTable, direction: Direction | None) -> Span:
    span = table.span("restored_by")
    if span is None or span[0] < 0:
        raise table.trouble(
            "restored_by",
            tr("must say how much a fresh part brings back, from and to"),
            tr("Write restored_by = [0.10, 1.50], for example; the direction is a key of its own."),
        )
    low, high = span
    return (low, high) if direction == "bigger" else (0.0 - high, 0.0 - low)


def _limits(table: KindTable) -> Span | None:
    low, high = table.number("at_least"), table.number("at_most")
    if low is None and high is None:
        return None
    if low is not None and high is not None and low > high:
        raise table.trouble("at_least", tr("is above at_most"), tr("Exchange the two."))
    return (low, high)


def _condition(table: KindTable) -> ConditionTerm:
    moves = table.values.get("moves", {})
    if not isinstance(moves, dict) or not all(one in DIRECTIONS for one in moves.values()):
        raise table.trouble(
            "moves",
            tr("must say which dimension becomes bigger or smaller"),
            tr('Write moves = { tip-radius = "smaller" }, for example.'),
        )
    return ConditionTerm(
        term=table.word("term"),
        also=table.words("also"),
        means=table.said("means", ""),
        moves=moves,
        allowed_when_new=table.flag("allowed_when_new"),
    )

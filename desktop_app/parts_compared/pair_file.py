"""A pair file: the TOML text of one comparison, read into what `compare` takes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.parts_compared.instruments.instrument import (
    USUAL_INSTRUMENTS,
    Instrument,
    instrument_for,
    usual_instrument,
)
from desktop_app.parts_compared.pair_table import PairTable, PairTrouble, shown
from desktop_app.parts_compared.part_kinds.part_kind import Dimension, PartKind
from desktop_app.parts_compared.reading import (
    SIDES,
    ConditionSeen,
    Explanation,
    MakerLimit,
    Reading,
    Side,
)
from desktop_app.parts_compared.typed_value import (
    ValueRefused,
    accepted_value,
    typed_value,
    what_is_accepted,
)
from desktop_app.shop_record.toml_text import toml_values


@dataclass(frozen=True, slots=True)
class PairInput:
    """Everything a pair file says, ready for `compare`."""

    kind: PartKind
    readings: tuple[Reading, ...]
    conditions: tuple[ConditionSeen, ...]
    instruments: dict[str, Instrument]
    explained: tuple[Explanation, ...]
    limits: tuple[MakerLimit, ...]


NO_DRAWER: Mapping[str, Instrument] = {}
PARTS_OF_A_PAIR = ("kind", "instruments", "readings", "conditions", "explained", "limits")


def read_pair(
    text: str,
    file: str,
    kinds: Mapping[str, PartKind],
    drawer: Mapping[str, Instrument] = NO_DRAWER,
) -> PairInput:
    """Read the text of a pair file; `file` is only named in messages. Raises PairTrouble.

    `drawer` holds the instruments of a shop; one that the file tells of goes before its namesake.
    """
    try:
        values = toml_values(text)
    except (ValueError, RecursionError) as error:
        raise PairTrouble(
            tr("{file}: this can't be read as TOML ({error}).", file=file, error=error),
            do=tr("Accepted: a pair in TOML."),
        ) from error
    table = PairTable(file, values)
    kind = kinds[table.one_of("kind", kinds)]
    told = {name: _instrument(name, one, kind) for name, one in table.named("instruments").items()}
    instruments = {**drawer, **told}
    for name in values:
        if name not in PARTS_OF_A_PAIR:
            raise table.trouble(name, tr("a pair has no such part"), ", ".join(PARTS_OF_A_PAIR))
    return PairInput(
        kind=kind,
        readings=tuple(_reading(one, kind, instruments) for one in table.rows("readings")),
        conditions=tuple(_condition(one) for one in table.rows("conditions")),
        instruments=instruments,
        explained=tuple(_explanation(one, kind) for one in table.rows("explained")),
        limits=tuple(_limit(one, kind) for one in table.rows("limits")),
    )


def _explanation(table: PairTable, kind: PartKind) -> Explanation:
    table.only("dimension", "by", "why")
    return Explanation(
        _dimension(table, kind).name,
        table.word("by", tr("who explains it")),
        table.word("why", tr("why it is in order"), ""),
    )


def _side(table: PairTable) -> Side:
    side = table.one_of("side", SIDES)
    return "removed" if side == "removed" else "replacement"


def _dimension(table: PairTable, kind: PartKind) -> Dimension:
    name = table.one_of("dimension", (one.name for one in kind.dimensions))
    return next(one for one in kind.dimensions if one.name == name)


def _reading(table: PairTable, kind: PartKind, instruments: Mapping[str, Instrument]) -> Reading:
    table.only("side", "dimension", "instrument", "values")
    side, dimension = _side(table), _dimension(table, kind)
    name = table.word("instrument", tr("the name of an instrument"), dimension.instrument)
    if dimension.role not in ("count", "word"):
        _check_instrument(table, name, dimension, instruments)
    values = table.values.get("values")
    if not isinstance(values, list) or not values:
        raise table.trouble(
            "values",
            tr("there are none"),
            tr("a list like [{example}]", example=_example(dimension)),
        )
    return Reading(side, dimension.name, tuple(_value(table, dimension, v) for v in values), name)


def _check_instrument(
    table: PairTable, name: str, dimension: Dimension, instruments: Mapping[str, Instrument]
) -> None:
    if instrument_for(name, dimension, instruments) is not None:
        return
    known = sorted(
        {one for one in USUAL_INSTRUMENTS if usual_instrument(one, dimension.unit)}
        | {one.name for one in instruments.values() if one.unit == dimension.unit}
    )
    raise table.trouble(
        "instrument",
        tr("'{name}' is not known as one that reads {unit}", name=name, unit=dimension.unit),
        tr("{known}, or your own in a table [instruments.NAME]", known=", ".join(known)),
    )


def _value(table: PairTable, dimension: Dimension, value: object) -> float | str:
    if dimension.role == "word":
        if not isinstance(value, str) or not value.strip():
            raise table.trouble(
                "values", tr("{shown} is not a word", shown=shown(value)), _words(dimension)
            )
        return value.strip()
    accepted = what_is_accepted(dimension.unit)
    if isinstance(value, bool) or not isinstance(value, int | float | str):
        raise table.trouble("values", tr("{shown} is not a number", shown=shown(value)), accepted)
    try:
        if isinstance(value, str):
            return typed_value(value, dimension.unit)
        return accepted_value(float(value), dimension.unit)
    except (ValueRefused, OverflowError) as refused:
        raise table.trouble(
            "values",
            tr("{shown} is not possible for '{name}'", shown=shown(value), name=dimension.name),
            accepted,
        ) from refused


def _words(dimension: Dimension) -> str:
    return (
        tr("a word like {choices}", choices=", ".join(dimension.choices))
        if dimension.choices
        else tr("a word")
    )


def _example(dimension: Dimension) -> str:
    if dimension.role == "word":
        return f'"{dimension.choices[0] if dimension.choices else "male"}"'
    return "4" if dimension.role == "count" else "4.10, 4.12, 4.11"


def _condition(table: PairTable) -> ConditionSeen:
    table.only("side", "terms")
    terms = table.values.get("terms")
    if not isinstance(terms, list) or not all(
        isinstance(one, str) and one.strip() for one in terms
    ):
        raise table.trouble(
            "terms", tr("this is not a list of words"), tr('a list like ["burned tip"]')
        )
    return ConditionSeen(_side(table), tuple(terms))


def _instrument(name: str, table: PairTable, kind: PartKind) -> Instrument:
    unit = next(
        (key.partition("_")[2] for key in table.values if key.startswith("resolution_")),
        None,
    ) or next(
        (key.removeprefix("max_error_") for key in table.values if key.startswith("max_error_")),
        "mm",
    )
    units = dict.fromkeys(one.unit for one in kind.dimensions if one.unit not in ("n", "word"))
    if unit not in units:
        raise table.trouble(
            f"resolution_{unit}", tr("no dimension is in {unit}", unit=unit), ", ".join(units)
        )
    table.only(f"resolution_{unit}", f"max_error_{unit}", f"repeatability_{unit}")
    usual = usual_instrument(name, unit)
    resolution = table.number(f"resolution_{unit}", 0.0)
    max_error = table.number(f"max_error_{unit}", 0.0)
    if resolution is None:
        resolution = usual.resolution if usual else None
    if max_error is None:
        max_error = usual.max_error if usual else None
    for field, value in (("resolution", resolution), ("max_error", max_error)):
        if value is None:
            raise table.trouble(
                f"{field}_{unit}",
                tr("it is missing"),
                tr("a number in {unit}, 0 or more", unit=unit),
            )
    if resolution == 0.0 and usual is not None and usual.resolution > 0.0:
        raise table.trouble(
            f"resolution_{unit}",
            tr("no instrument is read without end"),
            tr("a number in {unit} above 0", unit=unit),
        )
    spread = table.number(f"repeatability_{unit}", 0.0)
    return Instrument(name, unit, resolution or 0.0, max_error or 0.0, spread)


def _limit(table: PairTable, kind: PartKind) -> MakerLimit:
    table.only("dimension", "at_least", "at_most", "source")
    dimension = _dimension(table, kind)
    low, high = table.number("at_least"), table.number("at_most")
    if dimension.role != "limit":
        limited = ", ".join(one.name for one in kind.dimensions if one.role == "limit")
        raise table.trouble(
            "dimension",
            tr("'{name}' takes no limits", name=dimension.name),
            limited or tr("none of this kind"),
        )
    if low is None and high is None:
        raise table.trouble("at_least", tr("no limit is given"), tr("at_least, at_most or both"))
    if low is not None and high is not None and low > high:
        raise table.trouble("at_least", tr("it is above at_most"), tr("the smaller number"))
    return MakerLimit(dimension.name, low, high, table.word("source", tr("where it is from"), ""))

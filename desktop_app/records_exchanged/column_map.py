"""A map: which column of a file is which of ours, and how the file writes days and numbers.

It is kept as TOML that a person can write as well:

    date_order = "day first"
    left_out = ["Total"]
    [columns]
    job_number = "RO #"
    vehicle = ["Year", "Make", "Model"]

Columns that it doesn't name are understood by their headers as without a map.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any, Literal, get_args

from desktop_app.language import tr
from desktop_app.records_exchanged.date_words import DateOrder
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.number_words import DecimalSign
from desktop_app.shop_record.toml_text import toml_values
from desktop_app.shop_record.trouble import ShopTrouble

# These may be gathered from several columns; all others are one cell.
GATHERED = frozenset({"vehicle", "concern", "cause", "correction", "codes"})
_CHOICES: dict[str, tuple[str, ...]] = {
    "date_order": get_args(DateOrder),
    "decimal_sign": get_args(DecimalSign),
    "odometer_unit": ("mi", "km"),
}
_TEXTS = ("encoding", "delimiter", "sheet")
ALL_OTHERS: Literal["all others"] = "all others"


@dataclass(frozen=True, slots=True)
class ColumnMap:
    """What is laid down about a file; None and nothing in `columns` leave it to the guess.

    `columns` names for each field the headers that it is read from, as they stand in the file;
    `left_out` the headers of columns that are not read: these, or all that `columns` doesn't name.
    `header_row` is the row of the headers, the file's first being 1.
    """

    columns: Mapping[str, tuple[str, ...]] = field(default_factory=lambda: MappingProxyType({}))
    left_out: tuple[str, ...] | Literal["all others"] = ()
    date_order: DateOrder | None = None
    decimal_sign: DecimalSign | None = None
    odometer_unit: str | None = None
    encoding: str | None = None
    delimiter: str | None = None
    sheet: str | None = None
    header_row: int | None = None


def read_map(text: str, file: str) -> ColumnMap:
    """Read a map from TOML; a ShopTrouble names the file, the key and what may stand there."""
    try:
        data = toml_values(text)
    except (ValueError, RecursionError) as error:
        raise ShopTrouble(
            tr("{file} can't be read as TOML: {reason}.", file=file, reason=str(error)[:200])
        ) from error
    known = {"columns", "left_out", "header_row", *_CHOICES, *_TEXTS}
    for key in data:
        if key not in known:
            raise _refused(
                file, key, tr("is not known. Known are {known}.", known=", ".join(sorted(known)))
            )
    for key, choices in _CHOICES.items():
        if key in data and data[key] not in choices:
            raise _refused(file, key, tr("is one of {choices}.", choices=", ".join(choices)))
    for key in _TEXTS:
        if key in data and not (isinstance(data[key], str) and data[key]):
            raise _refused(file, key, tr("is a text."))
    _check_reading(data, file)
    return ColumnMap(
        columns=MappingProxyType(_columns(data.get("columns", {}), file)),
        left_out=_left_out(data.get("left_out", []), file),
        **{key: data.get(key) for key in (*_CHOICES, *_TEXTS, "header_row")},
    )


def _check_reading(data: dict[str, Any], file: str) -> None:
    """Refuse what no file can be read with."""
    row = data.get("header_row", 1)
    if type(row) is not int or not 1 <= row <= 1000:
        raise _refused(file, "header_row", tr("is a row from 1 to 1000."))
    if len(data.get("delimiter", ",")) != 1 or data.get("delimiter") in ("\n", "\r", '"'):
        raise _refused(file, "delimiter", tr("is one sign, such as ; or a tab."))
    try:
        b"a".decode(data.get("encoding", "utf-8"))
    except (LookupError, ValueError):
        says = tr("is the name of one, such as utf-8 or cp1252.")
        raise _refused(file, "encoding", says) from None


def _columns(data: object, file: str) -> dict[str, tuple[str, ...]]:
    if not isinstance(data, dict):
        raise _refused(
            file, "columns", tr('is a table: [columns], then lines such as plate = "Reg".')
        )
    columns: dict[str, tuple[str, ...]] = {}
    for name, said in data.items():
        if name not in FIELDS:
            raise _refused(
                file,
                f"columns.{name}",
                tr("is not known. Known are {known}.", known=", ".join(FIELDS)),
            )
        headers = said if isinstance(said, list) else [said]
        if not headers or not all(isinstance(h, str) and h.strip() for h in headers):
            raise _refused(file, f"columns.{name}", tr("is the header of a column of your file."))
        if len(headers) > 1 and name not in GATHERED:
            raise _refused(file, f"columns.{name}", tr("is read from one column only."))
        columns[name] = tuple(headers)
    return columns


def _left_out(said: object, file: str) -> tuple[str, ...] | Literal["all others"]:
    if said == ALL_OTHERS:
        return ALL_OTHERS
    if not isinstance(said, list) or not all(isinstance(h, str) and h.strip() for h in said):
        says = tr(
            'is a list of headers of your file, such as ["Total"], or "{all_others}". '
            "It stands above [columns].",
            all_others=ALL_OTHERS,
        )
        raise _refused(file, "left_out", says)
    return tuple(said)


def _refused(file: str, key: str, says: str) -> ShopTrouble:
    return ShopTrouble(f"{file}: {key[:80]} {says}")


def map_toml(column_map: ColumnMap) -> str:
    """Return the map as TOML; `read_map` gives the same map again."""
    lines = []
    for key in (*_CHOICES, *_TEXTS):
        if (said := getattr(column_map, key)) is not None:
            lines.append(f"{key} = {_quoted(said)}")
    if column_map.header_row is not None:
        lines.append(f"header_row = {column_map.header_row}")
    if column_map.left_out == ALL_OTHERS:
        lines.append(f"left_out = {_quoted(ALL_OTHERS)}")
    elif column_map.left_out:
        lines.append(f"left_out = [{', '.join(map(_quoted, column_map.left_out))}]")
    lines.append("[columns]")
    for name, headers in column_map.columns.items():
        said = ", ".join(map(_quoted, headers))
        lines.append(f"{name} = [{said}]" if len(headers) > 1 else f"{name} = {said}")
    return "\n".join(lines) + "\n"


def _quoted(text: str) -> str:
    """Return a TOML basic string (TOML 1.0, section String)."""
    plain = text.replace("\\", "\\\\").replace('"', '\\"')
    return '"' + "".join(c if c.isprintable() else f"\\U{ord(c):08x}" for c in plain) + '"'

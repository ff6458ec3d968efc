"""Which column a person chose for which field, and how sure a guess of it is."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from desktop_app.language import marked, tr
from desktop_app.records_exchanged.column_guess import Columns
from desktop_app.records_exchanged.column_map import GATHERED
from desktop_app.records_exchanged.everyday_headers import FIELDS, HEADERS, header_words

# The fields of everyday_headers, as they are said.
FIELD_WORDS = (
    *(marked("job number"), marked("opened on"), marked("closed on"), marked("plate")),
    *(marked("vehicle"), marked("odometer"), marked("odometer unit"), marked("technician")),
    *(marked("concern"), marked("cause"), marked("correction"), marked("codes")),
    *(marked("system"), marked("part kind"), marked("part number"), marked("supplier")),
    *(marked("part origin"), marked("price"), marked("hours"), marked("return of")),
    marked("judgement"),
)
Chosen = Mapping[str, tuple[int, ...]]


def field_words(field: str) -> str:
    """Return a field as it is said: "job number", "VIN"."""
    return "VIN" if field == "vin" else tr(field.replace("_", " "))


def fields_of(columns: Chosen, column: int) -> tuple[str, ...]:
    """Return the fields that a column is read into."""
    return tuple(field for field, at in columns.items() if column in at)


def with_column(columns: Chosen, column: int, field: str | None) -> Columns:
    """Return the columns with one of them read as `field` and nothing else; None leaves it out.

    A field that is one cell leaves the column that it had; one that may be gathered from several
    takes this column in as well, in the order of the file.
    """
    chosen = {each: tuple(i for i in at if i != column) for each, at in columns.items()}
    if field is not None:
        before = chosen.get(field, ()) if field in GATHERED else ()
        chosen[field] = tuple(sorted({*before, column}))
    return {each: chosen[each] for each in FIELDS if chosen.get(each)}


def how_sure(headers: Sequence[str], columns: Chosen, column: int) -> str:
    """Return "sure", "likely" or "a guess" for a column that was told by the program.

    Sure is a field's own name. A guess is what was told by the cells, or where another column has
    a name of the same field as well.
    """
    field = fields_of(columns, column)[0]
    name = header_words(headers[column])
    if name == HEADERS[field][0]:
        return tr("sure")
    rivals = (i for i in range(len(headers)) if i not in columns[field])
    if any(header_words(headers[i]) in HEADERS[field] for i in rivals):
        return tr("a guess")
    return tr("likely") if name in HEADERS[field] or field in GATHERED else tr("a guess")

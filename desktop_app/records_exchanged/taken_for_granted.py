"""What was taken for granted about a file, in sentences: whoever imports it can object."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.records_exchanged.date_words import FIRST_YEAR
from desktop_app.records_exchanged.letters_of import is_mixed
from desktop_app.records_exchanged.number_words import read_odometer
from desktop_app.records_exchanged.survey import Survey
from desktop_app.shop_record.counted_words import rows_counted

# What parts the cells of a file, and how it is said.
SIGNS = {",": tr("commas"), ";": tr("semicolons"), "\t": tr("tabs"), "|": tr("bars")}


def taken_for_granted(found: Survey) -> tuple[str, ...]:
    """Return how the file is read: its letters, columns, days, numbers, and what is left out."""
    said = _of_letters(found)
    said += _of_columns(found)
    if found.date_order:
        said.append(tr("Days are read {order}.", order=tr(found.date_order)))
    if found.short_years:
        said.append(
            tr(
                "Years of two figures are {first} to {last}.",
                first=FIRST_YEAR,
                last=FIRST_YEAR + 99,
            )
        )
    if found.decimal_sign:
        said.append(tr("Numbers have a decimal {sign}.", sign=tr(found.decimal_sign)))
    if found.odometer_in_doubt and found.odometer_sign:
        number = read_odometer(found.odometer_in_doubt, found.odometer_sign)[0]
        said.append(
            tr(
                "An odometer of “{written}” is read as {number}.",
                written=found.odometer_in_doubt,
                number=number,
            )
        )
    if found.odometer_unit:
        said.append(
            tr(
                "Odometers are in {unit} where nothing else is said.",
                unit=found.odometer_unit,
            )
        )
    fed = {column for at in found.columns.values() for column in at}
    left = [name for index, name in enumerate(found.headers) if index not in fed]
    if left:
        said.append(tr("Left out: {headers}.", headers=", ".join(left)))
    return tuple(said)


def _of_letters(found: Survey) -> list[str]:
    rows = tr("{rows} below the headers", rows=rows_counted(found.rows))
    if found.from_workbook:
        return [f"{rows}."]
    parted = SIGNS.get(found.shape.delimiter, f"“{found.shape.delimiter}”")
    said = [
        tr(
            "{rows}, parted by {parted}, read as {encoding}.",
            rows=rows,
            parted=parted,
            encoding=found.encoding,
        )
    ]
    if is_mixed(found.encoding):
        said.append(tr("Its letters are partly UTF-8, partly not: each is read as what it is."))
    elif found.is_guessed:
        said.append(tr("That is a guess by its letters: look whether names are right."))
    return said


def _of_columns(found: Survey) -> list[str]:
    """Say which column is read as what, where its header says it otherwise."""
    said = []
    for field, at in found.columns.items():
        words = field.replace("_", " ")
        headers = [found.headers[column] for column in at]
        if [header.casefold().replace("_", " ") for header in headers] != [words]:
            said.append(
                tr(
                    "{headers} as {field}",
                    headers=" + ".join(f"“{header}”" for header in headers),
                    field=tr(words),
                )
            )
    return [tr("Read: {columns}.", columns=", ".join(said))] if said else []

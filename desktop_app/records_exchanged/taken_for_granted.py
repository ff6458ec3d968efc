"""What was taken for granted about a file, in sentences: whoever imports it can object."""

from __future__ import annotations

from desktop_app.records_exchanged.date_words import FIRST_YEAR
from desktop_app.records_exchanged.import_told import rows_said
from desktop_app.records_exchanged.letters_of import is_mixed
from desktop_app.records_exchanged.number_words import read_odometer
from desktop_app.records_exchanged.survey import Survey

_SIGNS = {",": "commas", ";": "semicolons", "\t": "tabs", "|": "bars"}


def taken_for_granted(found: Survey) -> tuple[str, ...]:
    """Return how the file is read: its letters, columns, days, numbers, and what is left out."""
    said = _of_letters(found)
    said += _of_columns(found)
    if found.date_order:
        said.append(f"Days are read {found.date_order}.")
    if found.short_years:
        said.append(f"Years of two figures are {FIRST_YEAR} to {FIRST_YEAR + 99}.")
    if found.decimal_sign:
        said.append(f"Numbers have a decimal {found.decimal_sign}.")
    if found.odometer_in_doubt and found.odometer_sign:
        number = read_odometer(found.odometer_in_doubt, found.odometer_sign)[0]
        said.append(f"An odometer of “{found.odometer_in_doubt}” is read as {number}.")
    if found.odometer_unit:
        said.append(f"Odometers are in {found.odometer_unit} where nothing else is said.")
    fed = {column for at in found.columns.values() for column in at}
    left = [name for index, name in enumerate(found.headers) if index not in fed]
    if left:
        said.append(f"Left out: {', '.join(left)}.")
    return tuple(said)


def _of_letters(found: Survey) -> list[str]:
    rows = f"{rows_said(found.rows)} below the headers"
    if found.from_workbook:
        return [f"{rows}."]
    parted = _SIGNS.get(found.shape.delimiter, f"“{found.shape.delimiter}”")
    said = [f"{rows}, parted by {parted}, read as {found.encoding}."]
    if is_mixed(found.encoding):
        said.append("Its letters are partly UTF-8, partly not: each is read as what it is.")
    elif found.is_guessed:
        said.append("That is a guess by its letters: look whether names are right.")
    return said


def _of_columns(found: Survey) -> list[str]:
    """Say which column is read as what, where its header says it otherwise."""
    said = []
    for field, at in found.columns.items():
        words = field.replace("_", " ")
        headers = [found.headers[column] for column in at]
        if [header.casefold().replace("_", " ") for header in headers] != [words]:
            said.append(f"{' + '.join(f'“{header}”' for header in headers)} as {words}")
    return [f"Read: {', '.join(said)}."] if said else []

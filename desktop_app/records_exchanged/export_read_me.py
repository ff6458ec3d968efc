"""README.txt of an export: what is what, for who opens the folder without this program."""

from __future__ import annotations

from collections.abc import Iterable

from desktop_app.records_exchanged.export_names import (
    CHECKSUMS,
    HISTORY,
    IDS_GIVEN,
    JOBS,
    PART_KINDS,
    PHOTO_FILES,
    PHOTOS,
    TABLE_FILES,
    table_file,
)

_BEGIN = f"""This folder holds everything of a repair shop's record, readable without the program
that wrote it.

The tables are CSV files (RFC 4180): UTF-8 with a byte order mark, parted by commas, the first row
names the columns. Days are ISO 8601, money is in cents unless the column says otherwise, lengths
are millimetres, an odometer stands in its vehicle's own unit.

{JOBS}
    One line for each job and its first part, a line more for each further part (only job_number
    and the part's cells are filled) and for each further earlier job that it is a return of.
    price is in the shop's currency. Parts that were compared but not fitted, codes that were read
    after the repair, times of day, proof, readings and photos are not in it, nor are returns of a
    job that came on the same day, which times of day alone tell, nor kinds of work (inspection,
    maintenance), causes of returns, promises of a job's own, sold cars and what customers said:
    comebacks that are counted from {JOBS} alone differ from this shop's. The program's import
    reads it as any other table of jobs; in an empty shop it then gives the same {JOBS} again,
    except that vehicles without a whole VIN that share a plate become one, as do visits of one
    vehicle on one day where the odometer of one was not read.
{PHOTOS}/
    The photos as they came, in a folder for each job: pair, kind of part, side, view, and the
    beginning of the file's SHA-256.
{PHOTO_FILES}
    Which file is which row of {table_file("photo")}, with its whole SHA-256; no file is named
    where the photo was missing or damaged when this was written.
{PART_KINDS}/
    The shop's own files of part kinds (TOML), where it has any.
{HISTORY}
    Who did what and when, with the rows before and after (body, JSON). Each entry's hash is
    SHA-256(1, hash before, number, SHA-256(0, body)); the numbers 1 and 0 are single bytes, the
    first hash before is 32 zero bytes, seq is written in figures.
{IDS_GIVEN}
    The highest id that each table ever gave to a row, so that none is given twice.
{CHECKSUMS}
    The SHA-256 of every other file: sha256sum -c {CHECKSUMS}

Cells. An empty cell holds nothing. A text that begins with = + - @, a tab or a carriage return (or
with apostrophes and then one of these) has one more apostrophe in front, so that no spreadsheet
works it out; take one away to have the text. In the tables a lone apostrophe is a text without
letters where there might also be nothing; texts of apostrophes alone have one more there.

"""
_END = f"""
Bringing it back. "import FOLDER" into a new shop brings all of this back in one step, after each
file was held against {CHECKSUMS}: the tables with their ids, the photos, and the history with the
hashes that it had, which are worked out again. One entry of the shop's own then says that it was
brought back, and by whom; nothing else is added to the history, and an export made before anything
else is done is the same as this one byte for byte (that last entry is left out of it). Where the
hashes don't hold, or anything contradicts the rest, nothing is brought back. Into a shop that has
something written in it only {JOBS} is taken. The whole folder is read by programs whose record
has the form {{form}}; {JOBS} by all of them.

A part that fits, a figure or a proof in here says nothing about whether a car may be driven.
"""


def read_me(tables: Iterable[str], form: str) -> str:
    """Return the text; `tables` are those of the record, `form` the number of its form."""
    lines = ["Each table's file, and what a row of it is (a column x_id is the id of a row of x):"]
    for table in tables:
        what = TABLE_FILES.get(table, ("", ""))[1]
        lines.append(f"    {table_file(table)}" + (f" - {what}" if what else ""))
    return _BEGIN + "\n".join(lines) + "\n" + _END.format(form=form)

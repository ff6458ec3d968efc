"""The book of a week in a language: written by a process of its own, and held against another.

The words are spoken before the program is loaded, as where somebody starts it.
"""

from __future__ import annotations

import re
import subprocess
import sys
import zipfile
from collections import Counter
from collections.abc import Iterator
from datetime import datetime
from pathlib import Path
from typing import Any

from tests.spoken.spoken_files import ROOT, SPOKEN, said_in

FORBIDDEN = set("[]:*?/\\")
LONGEST_NAME = 31  # what spreadsheet programs state as the most
_REACH = re.compile(r"([A-Za-z]\w*)\[([^\]]+)\]")
_CELL = re.compile(r"\b([A-Z]+)\d+\b")
_TEXT = re.compile(r'"[^"]*"')


def write_book(language: str, shop: Path, now: datetime, week: str, to: Path) -> Path:
    """Write the book of a shop's week, and return the file."""
    words = [language, str(shop), now.isoformat(), week, str(to)]
    command = [sys.executable, "-m", "tests.weekly_report.book_spoken", *words]
    done = subprocess.run(command, cwd=ROOT, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return to


def main(language: str, shop: str, now: str, week: str, to: str) -> None:
    """Speak the language, and only then load what writes a book."""
    from desktop_app.language import speak

    said: dict[str, str] = {}
    for file in sorted((SPOKEN / language).glob("*.ts")):
        said.update(said_in(file))
    speak(lambda text: said.get(text, ""), language)

    from desktop_app.commands.shop_place import shelf_of
    from desktop_app.shop_record.record import open_shop
    from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
    from desktop_app.weekly_report.actions import write_week
    from desktop_app.weekly_report.week import read_week

    record = open_shop(Path(shop), lambda: datetime.fromisoformat(now))
    names = {group.id: group.shown for group in shop_vocabulary().groups}
    kinds = shelf_of(record).kinds
    for _ in write_week(record, read_week(week), Path(to), names, kinds):
        pass
    record.close()


class Book:
    """A written book: its sheets, tables and formulas, as openpyxl reads them."""

    def __init__(self, path: Path) -> None:
        import openpyxl

        self.path = path
        self.formulas = openpyxl.load_workbook(path)
        self.results = openpyxl.load_workbook(path, data_only=True)
        self.sheets: list[str] = self.formulas.sheetnames

    def headers(self) -> dict[str, list[str]]:
        """Return the headers of each table by its name."""
        return {
            table.name: [str(cell.value) for cell in page[table.ref][0]]
            for page in self.formulas
            for table in page.tables.values()
        }

    def explained(self) -> set[str]:
        """Return the words that the table of the definitions explains."""
        [page] = [page for page in self.formulas if "Definitions" in page.tables]
        rows = page[page.tables["Definitions"].ref][1:]
        return {word for row in rows for word in str(row[0].value).split(", ")}

    def formulas_said(self) -> Iterator[tuple[int, str, str]]:
        """Yield each formula with its sheet, counted from 0, and its cell."""
        for number, page in enumerate(self.formulas):
            for cell in (cell for row in page.iter_rows() for cell in row):
                if cell.data_type == "f":
                    yield number, cell.coordinate, str(cell.value)

    def figures(self) -> dict[str, Counter[tuple[Any, ...]]]:
        """Return the rows of each table as figures and days alone, however they are sorted.

        Where rows are alike in all that is counted they stand in the order of their names.
        """
        return {
            table.name: Counter(
                tuple(None if isinstance(cell.value, str) else cell.value for cell in row)
                for row in page[table.ref][1:]
            )
            for page in self.results
            for table in page.tables.values()
        }

    def outside_tables(self) -> list[list[Any]]:
        """Return the figures of each sheet that stand in none of its tables."""
        return [
            [
                cell.value
                for row in page.iter_rows()
                for cell in row
                if isinstance(cell.value, (int, float))
                and not any(_inside(cell, table.ref) for table in page.tables.values())
            ]
            for page in self.results
        ]

    def charted(self) -> list[list[str]]:
        """Return what each chart draws: the number of a sheet, columns, and how many rows.

        Where they stand is not the same: wider words leave room for more rows on a page.
        """
        spoken = {name.replace("'", "''"): str(at) for at, name in enumerate(self.sheets)}
        with zipfile.ZipFile(self.path) as file:
            charts = sorted(n for n in file.namelist() if n.startswith("xl/charts/chart"))
            drawn = [re.findall(r"<c:f>(.*?)</c:f>", file.read(n).decode()) for n in charts]
        return [
            [f"{spoken[sheet.strip(chr(39))]}!{_reach(cells)}" for sheet, _, cells in parted]
            for parted in ([reach.rpartition("!") for reach in some] for some in drawn)
        ]

    def reckoned(self) -> list[tuple[int, str, str]]:
        """Return each formula with its column, without texts and rows, the headers as numbers."""
        headers = self.headers()

        def place(found: re.Match[str]) -> str:
            return f"{found[1]}[{headers[found[1]].index(found[2])}]"

        return [
            (sheet, cell.strip("0123456789"), _CELL.sub(r"\1", _bare(_REACH.sub(place, formula))))
            for sheet, cell, formula in self.formulas_said()
        ]


def _bare(formula: str) -> str:
    return _TEXT.sub('""', formula)


def _reach(cells: str) -> str:
    """Return a range as its columns and the number of its rows: "$A$4:$B$6" is "A B 3"."""
    columns, rows = re.findall(r"[A-Z]+", cells), [int(row) for row in re.findall(r"\d+", cells)]
    return f"{' '.join(columns)} {rows[-1] - rows[0] + 1}"


def _inside(cell: Any, ref: str) -> bool:
    from openpyxl.utils import range_boundaries

    left, top, right, bottom = range_boundaries(ref)
    return bool(left <= cell.column <= right and top <= cell.row <= bottom)


def check_book(english: Path, spoken: Path) -> None:
    """Assert that a book in another language is sound, and counts what the English one does."""
    one, other = Book(english), Book(spoken)
    assert len(one.sheets) == len(other.sheets) == len({name.casefold() for name in other.sheets})
    for name in other.sheets:
        assert 0 < len(name) <= LONGEST_NAME, name
        assert not FORBIDDEN & set(name), name
        assert name.strip("'") == name
        assert name not in one.sheets
    assert one.headers().keys() == other.headers().keys()
    explained = one.explained(), other.explained()
    for table, headers in one.headers().items():
        spoken_headers = other.headers()[table]
        assert len({header.casefold() for header in spoken_headers}) == len(headers), table
        for header, spoken_header in zip(headers, spoken_headers, strict=True):
            if header in explained[0]:
                assert spoken_header in explained[1], (table, spoken_header)
    for _, _, formula in other.formulas_said():
        # Signs that part the words of a formula would have to be escaped in a header.
        assert all(re.fullmatch(r"[\w ]+", header) for _, header in _REACH.findall(formula))
    assert one.reckoned() == other.reckoned()
    assert one.charted() == other.charted()
    assert one.outside_tables() == other.outside_tables()
    for table, rows in one.figures().items():
        assert rows == other.figures()[table], table


if __name__ == "__main__":
    main(*sys.argv[1:])

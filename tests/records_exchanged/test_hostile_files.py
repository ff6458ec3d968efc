"""Files that were made to do harm: each is refused or made harmless, in little memory."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from tests.records_exchanged.workbooks import HEAD, MAIN, by_hand

SHEET = "xl/worksheets/sheet1.xml"
MOST_MEMORY = 400 << 20  # bytes of address space, the interpreter and its libraries among them
READ = """
import json, resource, sys
from pathlib import Path
from desktop_app.records_exchanged.job_row import RowRejected
from desktop_app.records_exchanged.table_files import open_table
from desktop_app.shop_record.trouble import ShopTrouble

most = resource.getrlimit(resource.RLIMIT_AS)[1]  # a workbook's own process sets its own limit
resource.setrlimit(resource.RLIMIT_AS, (int(sys.argv[1]), most))
for name in sys.argv[2:]:
    try:
        with open_table(Path(name)) as table:
            said = [
                [row.row, f"{row.column}: {row.why}"]
                if isinstance(row, RowRejected)
                else [row.row, row.concern]
                for row in table
            ]
    except ShopTrouble as trouble:
        said = trouble.sentence()
    print(json.dumps(said))
"""


def cell(text: str, inside: str = "") -> str:
    return f'<c t="str">{inside}<v>{text}</v></c>'


def book(*rows: str) -> bytes:
    """A workbook with the columns job_number and concern, and these cells below."""
    head = cell("job_number") + cell("concern")
    return by_hand("".join(f"<row>{cells}</row>" for cells in (head, *rows)))


LAUGHS = "".join(f"<!ENTITY a{n} '{f'&a{n - 1};' * 10}'>" for n in range(1, 10))
OPEN = f"{HEAD}<worksheet xmlns='{MAIN}'><sheetData>"
# The file, and what is said: of the whole, or (row, why it was refused or what it was read as).
HOSTILE: dict[str, tuple[bytes, str | list[tuple[int, str]]]] = {
    "swells.xlsx": (by_hand("", others={SHEET: b" " * 60_000_000}), "The workbook swells"),
    "laughs.xlsx": (
        by_hand("", others={SHEET: f"<!DOCTYPE w [<!ENTITY a0 'ha'>{LAUGHS}]><w>&a9;</w>"}),
        "document type",
    ),
    "deep.xlsx": (by_hand("", others={SHEET: OPEN + "<a>" * 300_000}), "damaged inside"),
    "wide.xlsx": (
        by_hand(f"<row>{'<c/>' * 1_000_000}</row>"),
        "Row 1 has a cell beyond column IV. At most 256",
    ),
    "far.xlsx": (by_hand(f'<row r="{"9" * 5_000}">{cell("x")}</row>'), "out of order"),
    "nul.xlsx": (book(cell("J-1") + cell("_x0000_=HELLO_xD800_")), [(2, "_x0000_=HELLO_xD800_")]),
    "formula.xlsx": (
        book(cell("J-1") + '<c><f>WEBSERVICE("x")</f></c>', cell("J-2") + cell("=1+1")),
        [(2, "concern: A formula has no result"), (3, "=1+1")],
    ),
    "wide.csv": (b"a," * 1_000_000 + b"\n1\n", "The line is too long"),
    "long.csv": (b"job_number,concern\nJ-1," + b"x" * 20_000_000, [(2, "The line is too long")]),
    "nul.csv": (
        b"job_number,concern\nJ-1,a\0b\nJ-2,ok\n",
        [(2, "concern: A cell holds a NUL byte"), (3, "ok")],
    ),
    "nuls.csv": (bytes(5_000_000), "NUL byte"),
    "open.csv": (b"job_number,concern\n" + b'J-1,"x\n' * 10_000, [(2, "quotation mark")]),
    "formula.csv": (b"job_number,concern\nJ-1,=cmd|' /C x'!A0\n", [(2, "=cmd|' /C x'!A0")]),
}


@pytest.fixture(scope="module")
def told(tmp_path_factory: pytest.TempPathFactory) -> dict[str, Any]:
    """What is said of each file by a process that may take little memory."""
    folder: Path = tmp_path_factory.mktemp("hostile")
    for name, (content, _) in HOSTILE.items():
        (folder / name).write_bytes(content)
    files = [str(folder / name) for name in HOSTILE]
    ran = subprocess.run(
        [sys.executable, "-c", READ, str(MOST_MEMORY), *files],
        capture_output=True,
        text=True,
        check=False,
        timeout=300,
    )
    assert ran.returncode == 0, ran.stderr[-2000:]
    return dict(zip(HOSTILE, map(json.loads, ran.stdout.splitlines()), strict=True))


@pytest.mark.skipif(sys.platform != "linux", reason="memory is limited as Linux does it")
@pytest.mark.parametrize("name", HOSTILE)
def test_it_is_refused_or_made_harmless(told: dict[str, Any], name: str) -> None:
    said, expected = told[name], HOSTILE[name][1]
    if isinstance(expected, str):
        assert isinstance(said, str)
        assert expected in said
        return
    assert [row for row, _ in said[: len(expected)]] == [row for row, _ in expected]
    for (_, words), (_, wanted) in zip(said, expected, strict=name != "open.csv"):
        assert wanted in words

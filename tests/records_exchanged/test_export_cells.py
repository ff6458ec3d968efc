"""Values as cells of a CSV file: whatever they are, they come back as they were."""

from __future__ import annotations

import csv
import io
import re
import string
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.blank_words import names_no_car, names_nobody
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.export_cells import CellRule, cells_of, read_cell
from desktop_app.records_exchanged.export_job_lines import JobsTold, job_lines
from desktop_app.records_exchanged.export_names import kind_file, photo_file
from tests.records_exchanged.tables import jobs_of

RULES = (
    CellRule("id", "whole"),
    CellRule("text", "text"),
    CellRule("text or nothing", "text", may_be_nothing=True),
    CellRule("whole or nothing", "whole", may_be_nothing=True),
    CellRule("number or nothing", "number", may_be_nothing=True),
)
# Mostly what a spreadsheet program or the csv module might take for something else.
SIGNS = "='+-@\t\r\n\", ;\u202e\u05d0\U0001f697e\u0301\u2028\ufeff1"
TEXT = st.text(st.sampled_from(SIGNS) | st.characters(exclude_categories=["Cs"]), max_size=12)
WRITTEN = TEXT.filter(lambda text: "\0" not in text)
WHOLE = st.integers(-(2**63) + 1, 2**63 - 1)
NUMBER = st.floats(allow_nan=False, allow_infinity=False)


def through_a_file(rows: list[tuple[Any, ...]]) -> list[list[str]]:
    """The rows written as CSV and read again."""
    file = io.StringIO(newline="")
    csv.writer(file).writerows(rows)
    file.seek(0)
    return list(csv.reader(file, strict=True))


@given(
    st.lists(
        st.tuples(WHOLE, TEXT, st.none() | TEXT, st.none() | WHOLE, st.none() | NUMBER), max_size=6
    )
)
def test_every_value_comes_back_as_it_was(rows: list[tuple[Any, ...]]) -> None:
    cells = through_a_file([tuple(row) for row in cells_of(rows, RULES)])
    back = [tuple(map(read_cell, row, RULES)) for row in cells]
    assert [list(map(repr, row)) for row in back] == [list(map(repr, row)) for row in rows]


@given(st.lists(st.tuples(WHOLE, TEXT, st.none() | TEXT, st.none(), st.none()), max_size=6))
def test_no_text_is_a_formula_to_a_spreadsheet(rows: list[tuple[Any, ...]]) -> None:
    for _, *texts in cells_of(rows, RULES):
        assert not [text for text in texts if text and text[0] in "=+-@\t\r"]


@pytest.mark.parametrize(
    ("cell", "rule"),
    [
        *(
            (cell, RULES[0])
            for cell in ("", "1.0", "1e3", "0x1", "٣", "01", " 1", "1_000", "9" * 19)
        ),
        *((cell, RULES[4]) for cell in ("nan", "inf", "1,5", "1_0", "٣", "much", "1e999")),
    ],
)
def test_what_is_no_number_is_refused(cell: str, rule: CellRule) -> None:
    with pytest.raises(ValueError, match="Accepted"):
        read_cell(cell, rule)


@given(
    concern=WRITTEN,
    name=WRITTEN,
    codes=st.lists(st.sampled_from(["P0300", "P0301", "B1234", "no code"]), max_size=4),
    cents=st.none() | st.integers(0, 10_000_000),
    hours=st.none() | st.integers(0, 9_999_999).map(lambda n: n / 1000) | st.floats(0, 9_999),
    odometer=st.none() | st.integers(0, 999_999),
)
def test_an_import_reads_a_job_as_it_was(
    concern: str,
    name: str,
    codes: list[str],
    cents: int | None,
    hours: float | None,
    odometer: int | None,
) -> None:
    texts = (concern, concern * 2, concern)
    row = (1, "J-1", "2024-01-05", "", "", name, name, odometer, "km", name, *texts, name)
    told = JobsTold([(*row, cents, hours)], {1: codes}, {1: [(name, name, "North", "used")]}, {})
    lines = [FIELDS, *job_lines(told)]
    file = io.StringIO(newline="")
    csv.writer(file).writerows(lines)
    [job] = jobs_of(file.getvalue())
    bare = name.strip()
    assert (job.concern, job.cause, job.correction) == texts
    assert {job.vehicle, job.system, job.part_kind} == {bare}
    assert job.plate == ("" if names_no_car(bare) else bare)
    assert job.technician == ("" if names_nobody(bare) else bare)
    assert job.codes == tuple(dict.fromkeys(code for code in codes if code != "no code"))
    assert (job.price_cents, job.odometer, job.odometer_unit) == (cents, odometer, "km")
    assert job.hours == hours


@given(TEXT, TEXT, TEXT)
def test_any_system_takes_the_name_of_a_photo(number: str, kind: str, view: str) -> None:
    name = photo_file(number, 7, 2, kind, "removed", view, "0f" * 32, "image/heic")
    top, folder, file = name.split("/")
    assert (top, file.endswith("_0f0f0f0f0f0f.heic")) == ("photos", True)
    for part in (folder, file, kind_file(f"{kind}.toml").split("/")[1]):
        assert re.fullmatch(r"\w[\w .-]*", part)
        assert part[-1] not in ". "
        assert len(part) < 160


def test_names_that_are_devices_or_nothing_are_not_used() -> None:
    for number in ("con", "AUX", "lpt1.x", "..", "///", ""):
        name = photo_file(number, 7, None, "", "", "", "0f" * 32, "image/png")
        assert name == "photos/job-7/photo_0f0f0f0f0f0f.png"
    assert set(string.printable) >= set(name)

"""XLSX: values as they are shown, formulas by their stored result, and traps that do no harm."""

from __future__ import annotations

import io
import struct
import zipfile
from contextlib import suppress
from datetime import UTC, date, datetime
from pathlib import Path

import openpyxl
import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged import workbook_files
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.table_files import open_table, write_rejected
from desktop_app.records_exchanged.workbook_read.book import read_book
from desktop_app.records_exchanged.workbook_read.number_forms import Form, form_of, number_text
from desktop_app.records_exchanged.workbook_read.parts import Parts, WorkbookCannot
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.workbooks import HEAD, LINK, MAIN, by_hand, by_library, cells_of


def cell(place: str, value: str, kind: str = "str", style: str = "0", formula: str = "") -> str:
    f = f"<f>{formula}</f>" if formula else ""
    v = f"<v>{value}</v>" if value else ""
    return f'<c r="{place}" t="{kind}" s="{style}">{f}{v}</c>'


def test_values_come_as_they_are_meant() -> None:
    noon = datetime(2025, 3, 4, 12, 15, tzinfo=UTC).replace(tzinfo=None)
    late = datetime(1999, 12, 31, 23, 59, 59, tzinfo=UTC).replace(tzinfo=None)
    rows = [
        ["text", 5, 1.5, 0.1 + 0.2, True, date(2025, 3, 4), noon, "ä\nb"],
        ["", None, 1e20, -2, False, date(1904, 1, 2), late, "_x0041_"],
    ]
    assert cells_of(by_library(rows)) == [
        ["text", "5", "1.5", "0.3", "TRUE", "2025-03-04", "2025-03-04 12:15:00", "ä\nb"],
        ["", "", "1E+20", "-2", "FALSE", "1904-01-02", "1999-12-31 23:59:59", "_x0041_"],
    ]


def test_days_counted_from_1904() -> None:
    book = by_library([["a"], [date(2025, 3, 4)]], date_1904=True)
    assert cells_of(book)[1] == ["2025-03-04"]


def test_what_a_second_library_writes_is_read_alike() -> None:
    out = io.BytesIO()
    book = openpyxl.Workbook()
    assert book.active is not None
    book.active.append(["RO", "In", 7, "x"])
    book.active.append([None, date(2025, 3, 4), 7.5, "ä"])
    book.create_sheet("Other").append(["b", "c"])
    book.save(out)
    assert cells_of(out.getvalue()) == [["RO", "In", "7", "x"], ["", "2025-03-04", "7.5", "ä"]]
    assert cells_of(out.getvalue(), "Other") == [["b", "c"]]
    with pytest.raises(WorkbookCannot, match=r"no sheet “Third”.*It has: Sheet, Other"):
        cells_of(out.getvalue(), "Third")


# Number formats with their kind: examples of ECMA-376 part 1, 18.8.31 (from memory).
@pytest.mark.parametrize(
    ("code", "form", "zeros"),
    [
        ("General", Form.NUMBER, 0),
        ("0.00", Form.NUMBER, 0),
        ('#,##0.00 "days"', Form.NUMBER, 0),
        ("[$-409]d mmm yyyy", Form.DAY, 0),
        ("yyyy\\-mm\\-dd hh:mm", Form.DAY, 0),
        ("mmm", Form.DAY, 0),
        ("h:mm AM/PM", Form.CLOCK, 0),
        ("[h]:mm", Form.CLOCK, 0),
        ("mm:ss", Form.CLOCK, 0),
        ("00000", Form.NUMBER, 5),
        ("[Red]0.0;yyyy", Form.NUMBER, 0),
    ],
)
def test_number_formats(code: str, form: Form, zeros: int) -> None:
    assert form_of(code) == (form, zeros)


STYLES = (
    '<numFmts><numFmt numFmtId="170" formatCode="[h]:mm"/>'
    '<numFmt numFmtId="171" formatCode="00000"/></numFmts><cellXfs><xf numFmtId="0"/>'
    '<xf numFmtId="14"/><xf numFmtId="170"/><xf numFmtId="171"/></cellXfs>'
)


def test_spans_and_leading_zeros_are_what_was_shown() -> None:
    row = cell("A1", "1.0625", "n", "2") + cell("B1", "42", "n", "3") + cell("C1", "60", "n", "1")
    assert cells_of(by_hand(f'<row r="1">{row}</row>', styles=STYLES)) == [
        ["25:30:00", "00042", "1900-02-28"]
    ]


def test_gaps_keep_rows_and_columns_in_their_places() -> None:
    rows = (
        f'<row r="2">{cell("A2", "a")}{cell("C2", "c")}</row>'
        f'<row r="4">{cell("B4", "b")}</row>'
        '<row><c t="str"><v>x</v></c></row>'
    )
    assert cells_of(by_hand(rows)) == [[], ["a", "", "c"], [], ["", "b", ""], ["x", "", ""]]


def test_rich_text_and_reading_aids() -> None:
    texts = "<si><r><t>rough </t></r><r><t>idle</t></r><rPh><t>zzz</t></rPh></si>"
    aside = "<rPh><t>zzz</t></rPh>"
    inline = f'<c r="B1" t="inlineStr"><is><r><t>a</t></r>{aside}<r><t> b</t></r></is></c>'
    row = f'<row r="1">{cell("A1", "0", "s")}{inline}</row>'
    assert cells_of(by_hand(row, texts)) == [["rough idle", "a b"]]


def test_elements_that_belong_elsewhere_are_passed_over() -> None:
    row = f'<row r="1"><si/>{cell("A1", "0", "s")}</row><xf/>'
    assert cells_of(by_hand(row, "<si><c/><t>idle</t></si><xf/>")) == [["idle"]]


def test_cells_that_say_nothing_at_the_end_make_no_row_wider() -> None:
    row = f'<row r="1">{cell("A1", "a", "str")}{cell("B1", "b")}{cell("C1", "0", "s")}</row>'
    blank = f'<row r="2">{cell("A2", "0", "s")}</row>'
    assert cells_of(by_hand(row + blank, "<si><t></t></si>")) == [["a", "b"]]


@pytest.mark.parametrize(
    ("written", "form", "day_zero", "text"),
    [
        ("1", Form.DAY, date(1899, 12, 30), "1900-01-01"),
        ("59.5", Form.DAY, date(1899, 12, 30), "1900-02-28 12:00:00"),
        ("61", Form.DAY, date(1899, 12, 30), "1900-03-01"),
        ("1", Form.DAY, date(1904, 1, 1), "1904-01-02"),
        ("2958465", Form.DAY, date(1904, 1, 1), "2958465.0"),  # in the year 10003
        ("1e", Form.NUMBER, date(1904, 1, 1), "1e"),
        ("12½", Form.DAY, date(1904, 1, 1), "12½"),
        ("-inf", Form.CLOCK, date(1904, 1, 1), "-inf"),
    ],
)
def test_a_number_is_shown_as_meant_or_stays_as_it_is_written(
    written: str, form: Form, day_zero: date, text: str
) -> None:
    assert number_text(written, form, 0, day_zero) == text


def jobs_sheet(*rows: str) -> bytes:
    """A workbook with two columns, job_number and odometer, and these rows."""
    head = f'<row r="1">{cell("A1", "job_number")}{cell("B1", "odometer")}</row>'
    return by_hand(head + "".join(rows))


def read(folder: Path, workbook: bytes, sheet: str | None = None) -> list[JobRow | RowRejected]:
    file = folder / "jobs.xlsx"
    file.write_bytes(workbook)
    with open_table(file, ColumnMap(sheet=sheet)) as table:
        return list(table)


def test_formulas_and_errors_through_the_process_of_its_own(tmp_path: Path) -> None:
    rows = [
        f'<row r="2">{cell("A2", "J-1")}{cell("B2", "150", "n", formula="100+50")}</row>',
        f'<row r="3">{cell("A3", "J-2")}{cell("B3", "", "n", formula="100+50")}</row>',
        f'<row r="4">{cell("A4", "J-3")}{cell("B4", "#REF!", "e")}</row>',
    ]
    first, second, third = read(tmp_path, jobs_sheet(*rows))
    assert isinstance(first, JobRow)
    assert (first.row, first.odometer) == (2, 150)
    assert isinstance(second, RowRejected)
    assert (second.row, second.why) == (
        3,
        "A formula has no result stored with it; it is not worked out here.",
    )
    assert isinstance(third, RowRejected)
    assert (third.row, third.why) == (4, "The spreadsheet shows an error here (#REF!).")


def test_another_sheet_may_be_named(tmp_path: Path) -> None:
    book = openpyxl.Workbook()
    book.create_sheet("Jobs").append(["RO", "Complaint"])
    book["Jobs"].append([7, "stalls"])
    file = tmp_path / "jobs.xlsx"
    book.save(file)
    with open_table(file, ColumnMap(sheet="Jobs")) as table:
        assert table.source.sheets == ("Sheet", "Jobs")
        assert [getattr(row, "concern", "") for row in table] == ["stalls"]


def test_numbers_of_a_workbook_have_a_point_whatever_else_is_there(tmp_path: Path) -> None:
    rows = [["job_number", "Price", "Hours", "Date in"], [7, 1.234, 1.5, date(2025, 3, 4)]]
    (job,) = read(tmp_path, by_library(rows))
    assert isinstance(job, JobRow)
    assert (job.job_number, job.price_cents, job.hours) == ("7", 123, 1.5)
    assert job.opened_on == date(2025, 3, 4)


def test_a_text_that_may_be_two_odometers_is_refused_in_its_row(tmp_path: Path) -> None:
    rows = [["job_number", "odometer"], [1, "120.000"], [2, 5], [3, "118,420"]]
    first, *others = read(tmp_path, by_library(rows))
    assert isinstance(first, RowRejected)
    assert first.why == "This may be 120 or 120,000. Write 120 or 120000."
    assert [one.odometer for one in others if isinstance(one, JobRow)] == [5, 118420]


def in_directory(at: int, value: int) -> bytes:
    """A workbook with another value in the central directory (APPNOTE 4.3.12) of its first part."""
    data = bytearray(by_hand(""))
    struct.pack_into("<H", data, data.index(b"PK\x01\x02") + at, value)
    return bytes(data)


BOMB = "<!DOCTYPE w [<!ENTITY a 'xx'><!ENTITY b '&a;&a;&a;&a;'>]>"
FAR_CELL = f'<row r="1048576">{cell("XFD1048576", "x")}</row>'
MANY = {f"x/{n}": b"" for n in range(1_001)}
SHEET = "xl/worksheets/sheet1.xml"


@pytest.mark.parametrize(
    ("workbook", "says"),
    [
        (by_hand("", others={SHEET: f"{HEAD}{BOMB}<worksheet xmlns='{MAIN}'/>"}), "document type"),
        (by_hand("", others={"xl/texts.xml": f"{BOMB}<sst xmlns='{MAIN}'/>"}), "document type"),
        (by_hand("", others={SHEET: "<worksheet><sheetData>"}), "damaged inside"),
        (by_hand("", others={SHEET: b"\xff\xfe\x00"}), "damaged inside"),
        (by_hand("", others=MANY), "1,000 parts"),
        (by_hand("", others={"xl/workbook.xml": f"<workbook xmlns='{MAIN}'/>"}), "no sheet"),
        (by_hand(FAR_CELL), "Row 1048576 has a cell in column XFD"),
        (by_hand('<row r="5"/><row r="4"/>'), "out of order"),
        (by_hand('<row r="9999999"/>'), "out of order"),
        (by_hand(f'<row r="1">{cell("B1", "x")}{cell("A1", "y")}</row>'), "out of order"),
        (by_hand(f'<row r="1">{cell("A1", "9", "s")}</row>'), "a text that it doesn't have"),
        (by_hand(f'<row r="1">{cell("A1", "x" * 300_000)}</row>'), "more text than a cell holds"),
        (by_hand("", others={"xl/_rels/workbook.xml.rels": ""}), "sheet is missing inside"),
        (in_directory(8, 1), "locked by a password"),
        (in_directory(10, 99), "packed in an unusual way"),
        (by_hand("")[:-30], "damaged or cut short"),
        (b"PK\x03\x04 and no more", "damaged or cut short"),
    ],
)
def test_a_hostile_workbook_is_refused_in_words(workbook: bytes, says: str) -> None:
    with pytest.raises(WorkbookCannot) as refused:
        cells_of(workbook)
    assert says in str(refused.value)


@pytest.mark.parametrize(
    ("limit", "says"),
    [
        ("as_csv.MOST_BYTES_OUT", "holds more text than is read"),
        ("texts.MOST_TEXT_BYTES", "has more text than is read"),
        ("book.MOST_IN_SMALL_PART", "unpacks to far more than is read"),
    ],
)
def test_what_is_more_than_a_shop_ever_has_is_refused(
    limit: str, says: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(f"desktop_app.records_exchanged.workbook_read.{limit}", 10)
    row = f'<row r="1">{cell("A1", "0", "s")}</row>'
    with pytest.raises(WorkbookCannot, match=says):
        cells_of(by_hand(row, "<si><t>rough when idling</t></si>"))


def test_of_sheets_without_number_the_first_ones_are_known() -> None:
    named = "".join(f'<sheet name="S{n}"/>' for n in range(10_005))
    first = '<sheet name="Jobs" r:id="r1"/>'
    book = f'<workbook xmlns="{MAIN}" xmlns:r="{LINK}"><sheets>{first}{named}</sheets></workbook>'
    parts = Parts(io.BytesIO(by_hand("", others={"xl/workbook.xml": book})))
    assert len(read_book(parts).sheets) == 10_000
    with pytest.raises(WorkbookCannot, match="no sheet “S10004”"):
        read_book(parts, "S10004")


def test_a_part_that_lies_about_its_size_is_refused() -> None:
    honest = by_hand(f'<row r="1">{cell("A1", "x" * 5_000)}</row>')
    at = (
        honest.rindex(SHEET.encode()) - 46 + 24
    )  # the size in the central directory (APPNOTE 4.3.12)
    lying = honest[:at] + struct.pack("<I", 100) + honest[at + 4 :]
    with pytest.raises(WorkbookCannot, match="damaged"):
        cells_of(lying)


GOOD = by_library([["RO", "In", 1.5, date(2025, 3, 4)], ["a", "b", 2, True]])


@given(st.lists(st.tuples(st.integers(0, len(GOOD) - 1), st.binary(max_size=3)), max_size=4))
def test_a_damaged_workbook_is_read_or_refused_in_words(
    damage: list[tuple[int, bytes]],
) -> None:
    data = bytearray(GOOD)
    for at, bytes_there in damage:
        data[at : at + 3] = bytes_there
    with suppress(WorkbookCannot):
        assert all(isinstance(row, list) for row in cells_of(bytes(data)))


@given(st.sampled_from([SHEET, "xl/workbook.xml", "xl/styles.xml"]), st.data())
def test_a_part_with_anything_inside_is_read_or_refused_in_words(
    part: str, data: st.DataObject
) -> None:
    words = ["<c r='A1' t='s'>", "</c>", "<v>", "</v>", "5", "<row r='3'>", "</row>", "&#65;"]
    words += [f"<worksheet xmlns='{MAIN}'>", "</worksheet>", "<?xml version='1' encoding='q'?>"]
    inside = "".join(data.draw(st.lists(st.sampled_from(words), max_size=12)))
    with suppress(WorkbookCannot):
        assert isinstance(cells_of(by_hand("", others={part: inside})), list)


def test_not_a_number_harms_its_own_cell_only(tmp_path: Path) -> None:
    rows = [
        f'<row r="2">{cell("A2", "J-1")}{cell("B2", "NaN", "n")}</row>',
        f'<row r="3">{cell("A3", "J-2")}{cell("B3", "5", "n")}</row>',
    ]
    first, second = read(tmp_path, jobs_sheet(*rows))
    assert isinstance(first, RowRejected)
    assert (first.column, first.value) == ("odometer", "NaN")
    assert isinstance(second, JobRow)


def test_a_trap_is_refused_through_the_process_with_the_file_s_name(tmp_path: Path) -> None:
    bomb = by_hand("", others={SHEET: b" " * 40_000_000})
    with pytest.raises(ShopTrouble, match=r"^jobs.xlsx: The workbook swells"):
        read(tmp_path, bomb)


def test_other_packages_and_old_workbooks_are_refused(tmp_path: Path) -> None:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as package:
        package.writestr("content.xml", "<x/>")
    with pytest.raises(ShopTrouble, match="no XLSX workbook"):
        read(tmp_path, out.getvalue())
    with pytest.raises(ShopTrouble, match="old workbook"):
        read(tmp_path, b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(600))


def test_a_formula_comes_back_among_the_rows_to_be_mended(tmp_path: Path) -> None:
    file, mend = tmp_path / "jobs.xlsx", tmp_path / "mend.csv"
    row = f'<row r="2">{cell("A2", "J-1")}{cell("B2", "", "n", formula="B9*2")}</row>'
    file.write_bytes(jobs_sheet(row))
    with open_table(file) as table:
        write_rejected(table, {2: "why not"}, mend)
    assert mend.read_text(encoding="utf-8-sig").splitlines()[1] == "J-1,'=B9*2,why not"


def test_a_process_that_dies_is_told_in_words(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(workbook_files, "_TURNING", "desktop_app.no_such_module")
    with pytest.raises(ShopTrouble, match="more time or memory than any sheet"):
        read(tmp_path, jobs_sheet())


class Stopped(Exception):
    """Somebody wanted it to end."""


def test_the_turning_can_be_ended(tmp_path: Path) -> None:
    def stop(_: float) -> None:
        raise Stopped

    file = tmp_path / "jobs.xlsx"
    file.write_bytes(by_library([["job_number"], *([n] for n in range(10))]))
    with pytest.raises(Stopped), open_table(file, progress=stop):
        raise AssertionError

"""A file of jobs from the disk: refused in words, previewed, its rejected rows handed back."""

from __future__ import annotations

import csv
import io
import os
from datetime import date
from pathlib import Path

import pytest

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.map_files import keep_map, kept_map, read_map_file
from desktop_app.records_exchanged.preview import preview
from desktop_app.records_exchanged.remembered import Remembered
from desktop_app.records_exchanged.survey import survey
from desktop_app.records_exchanged.table_files import open_source, open_table, write_rejected
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import column, jobs_of

TEXT = """Jobs;;;
RO #;Date in;Mileage;Complaint
J-1;25/03/2025;75k;"stalls
when warm"
J-2;04/03/2025;118.420 km;idles rough
J-3;04/03/2025;5;"opened
J-4;yesterday;6;Ölverlust
"""
MAP = ColumnMap(header_row=2)


@pytest.fixture
def jobs_file(tmp_path: Path) -> Path:
    file = tmp_path / "jobs.csv"
    file.write_bytes(TEXT.encode("cp1252"))
    return file


def reasons_of(file: Path, column_map: ColumnMap) -> dict[int, str]:
    with open_table(file, column_map) as table:
        return {row.row: row.why for row in table if isinstance(row, RowRejected)}


def test_what_was_not_taken_comes_back_with_the_reason(jobs_file: Path, tmp_path: Path) -> None:
    with open_table(jobs_file, MAP) as table:
        refused = {row.row: row.why for row in table if isinstance(row, RowRejected)}
        assert list(refused) == [3, 5, 6]
        write_rejected(table, refused, tmp_path / "mend.csv")
        settled = table.settled_map()
    lines = (tmp_path / "mend.csv").read_bytes().decode("cp1252").split("\r\n")
    assert lines[:3] == [
        "Jobs;;;",
        "RO #;Date in;Mileage;Complaint;why",
        'J-1;25/03/2025;75k;"stalls\nwhen warm";Write the odometer out in full: 75,000 for 75k.',
    ]
    assert lines[3].startswith('J-3;04/03/2025;5;"""opened";A quotation mark')
    assert settled.date_order == "day first"


def test_the_mended_file_is_read_by_the_same_map(jobs_file: Path, tmp_path: Path) -> None:
    mend = tmp_path / "mend.csv"
    with open_table(jobs_file, MAP) as table:
        settled = table.settled_map()
        write_rejected(table, reasons_of(jobs_file, MAP), mend)
    text = mend.read_text(encoding="cp1252")
    mend.write_text(
        text.replace("75k", "75000").replace("yesterday", "4/3/2025"), encoding="cp1252"
    )
    with open_table(mend, settled) as table:
        rows = list(table)
        assert [getattr(row, "job_number", "") for row in rows] == ["J-1", "J-3", "J-4"]
        assert table.found.headers[-1] == "why"
        write_rejected(table, {5: "again"}, tmp_path / "again.csv")
    again = (tmp_path / "again.csv").read_text(encoding="cp1252").splitlines()
    assert again[1] == "RO #;Date in;Mileage;Complaint;why"
    assert again[2] == "J-4;4/3/2025;6;Ölverlust;again"


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16"])
def test_a_long_file_to_be_mended_is_still_one_text(tmp_path: Path, encoding: str) -> None:
    file, mend = tmp_path / "jobs.csv", tmp_path / "mend.csv"
    rows = "".join(f"{n},{'stalls ' * 20},12k\n" for n in range(2_000))
    file.write_bytes(f"RO,Complaint,Miles\n{rows}".encode(encoding))
    with open_table(file) as table:
        write_rejected(table, reasons_of(file, ColumnMap()), mend)
    text = mend.read_bytes().decode(encoding)
    assert "\ufeff" not in text
    assert len(text.splitlines()) == 2_001


def test_a_place_that_cannot_be_written_is_told(jobs_file: Path, tmp_path: Path) -> None:
    with open_table(jobs_file, MAP) as table, pytest.raises(ShopTrouble, match="not written"):
        write_rejected(table, {}, tmp_path / "no folder" / "mend.csv")


def test_the_preview_shows_what_each_cell_would_become(jobs_file: Path) -> None:
    with open_source(jobs_file) as source:
        shown = preview(survey(source, MAP))
    assert shown.feeds == (("job_number",), ("opened_on",), ("odometer",), ("concern",))
    first, second = shown.rows[0], shown.rows[1]
    assert [cell.becomes for cell in second.fields] == [
        *("J-2", "2025-03-04", "118,420 km", "idles rough"),
    ]
    assert (first.row, first.cells[2]) == (3, "75k")
    assert first.fields[2].why == first.why == "Write the odometer out in full: 75,000 for 75k."
    assert shown.questions == ()
    assert shown.said[0].endswith("parted by semicolons, read as cp1252.")
    assert "Days are read day first." in shown.said


def test_a_question_is_shown_and_answered_by_the_map(tmp_path: Path) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text("RO,Date in,colour\n1,03/04/2025,red\n")
    with open_source(file) as source:
        asked = preview(survey(source, ColumnMap()))
        answered = preview(survey(source, ColumnMap(date_order="month first")))
    (question,) = asked.questions
    assert question.choices == ("day first", "month first")
    assert asked.rows[0].fields[1].why == "This day can be read in several ways."
    assert answered.questions == ()
    assert answered.rows[0].fields[1].becomes == "2025-03-04"
    assert "Left out: colour." in answered.said


def test_a_map_is_kept_for_the_next_file_with_these_headers(
    jobs_file: Path, tmp_path: Path
) -> None:
    folder = tmp_path / "maps"
    with open_table(jobs_file, MAP) as table:
        assert kept_map(folder, table.found.key) is None
        keep_map(folder, table.found.key, table.settled_map())
        assert kept_map(folder, table.found.key) == table.settled_map()


def test_a_map_that_is_none_is_refused(tmp_path: Path) -> None:
    (tmp_path / "map.toml").write_bytes(b"\xff\xff")
    for name, says in (("map.toml", "not a UTF-8 text"), ("none.toml", "can't be read")):
        with pytest.raises(ShopTrouble, match=says):
            read_map_file(tmp_path / name)


@pytest.mark.parametrize(
    ("name", "says"),
    [("none.csv", "There is no file"), ("folder", "is a folder"), ("empty.csv", "is empty")],
)
def test_what_is_no_file_of_jobs_is_refused(tmp_path: Path, name: str, says: str) -> None:
    (tmp_path / "folder").mkdir()
    (tmp_path / "empty.csv").touch()
    with pytest.raises(ShopTrouble, match=says), open_table(tmp_path / name):
        raise AssertionError


def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe.csv")
    with pytest.raises(ShopTrouble, match="a device or a pipe"), open_table(tmp_path / "pipe.csv"):
        raise AssertionError


def test_a_file_that_changes_meanwhile_is_not_read_on(jobs_file: Path) -> None:
    with open_table(jobs_file, MAP) as table:
        jobs_file.write_text("RO\n1\n")
        with pytest.raises(ShopTrouble, match="was changed while it was read"):
            list(table)


def test_how_far_it_is_and_the_end_on_demand(tmp_path: Path) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text("RO,Complaint\n" + "".join(f"{n},stalls\n" for n in range(20_000)))
    shares: list[float] = []
    with open_table(file, progress=shares.append) as table:
        assert shares == sorted(shares)
        assert 0 < shares[0] < shares[-1] <= 1
        rows = table.rows(shares.append)
        first = next(rows)
        assert isinstance(first, JobRow)
        assert first.job_number == "0"


def test_headers_further_down_than_the_file_goes_are_told(jobs_file: Path) -> None:
    with (
        pytest.raises(ShopTrouble, match="has 6 rows; the headers can't stand in row 99"),
        open_table(jobs_file, ColumnMap(header_row=99)),
    ):
        raise AssertionError


def test_a_damaged_workbook_is_not_read_as_a_text(tmp_path: Path) -> None:
    file = tmp_path / "jobs.xlsx"
    file.write_text("not a zip")
    with pytest.raises(ShopTrouble, match="is no workbook, or a damaged one"), open_table(file):
        raise AssertionError


@pytest.mark.parametrize(
    ("content", "what"),
    [
        (b'[{"job_number":"1"}]', "JSON"),
        (b'\xef\xbb\xbf {\n "jobs": []}', "JSON"),
        (b"%PDF-1.4\n%\xe2\xe3\xcf\xd3\n", "a PDF document"),
        (b"\x89PNG\r\n\x1a\n\0\0", "a picture"),
        (b"\xff\xd8\xff\xe0\0\x10JFIF", "a picture"),
        (b"\x1f\x8b\x08\0", "a packed file"),
        (b"\n<!DOCTYPE HTML><table>", "a web page"),
        (b'<?xml version="1.0"?><Workbook>', "XML"),
    ],
)
@pytest.mark.parametrize("name", ["jobs.csv", "jobs.xlsx", "jobs.json"])
def test_what_is_no_table_is_called_by_what_it_is(
    tmp_path: Path, content: bytes, what: str, name: str
) -> None:
    (tmp_path / name).write_bytes(content)
    with pytest.raises(ShopTrouble) as refused, open_table(tmp_path / name):
        raise AssertionError
    assert refused.value.what.endswith(f"{name} is {what}.")
    assert refused.value.do == "Accepted: a table with headers as CSV or XLSX."


@pytest.mark.parametrize("header", ["[RO]", "{RO}", "<RO>", "BMW no.", "PDF", "% PDF"])
def test_a_header_with_signs_is_no_other_file(tmp_path: Path, header: str) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(f"{header},Complaint\n1,stalls\n")
    with open_table(file, ColumnMap({"job_number": (header,)})) as table:
        assert [job.job_number for job in table if isinstance(job, JobRow)] == ["1"]


LIKE_FORMULAS = ("=HYPERLINK(1)", "@x", "+49 x", "-", "'=x", "plain", "it's")


def test_a_row_turned_away_is_harmless_to_open_and_read_again_as_it_stood(tmp_path: Path) -> None:
    file, mend, again = (tmp_path / f"{name}.csv" for name in ("jobs", "mend", "again"))
    head = "=job_number,concern,hours,technician,codes,opened_on,odometer,=Remark\n"
    rows = [f"J-{n},{text},-,-,-,-,75k,{text}\n" for n, text in enumerate(LIKE_FORMULAS)]
    file.write_text(head + "".join(rows), "utf-8")
    with open_table(file) as table:
        write_rejected(table, reasons_of(file, ColumnMap()), mend)
        columns = table.found.columns
    text = mend.read_text("utf-8")
    cells = [cell for line in csv.reader(io.StringIO(text)) for cell in line]
    assert not [cell for cell in cells if cell.startswith(("=", "@", "+", "-"))]
    with open_table(mend) as table:
        assert table.found.columns == columns
        assert table.found.headers[7:] == ("=Remark", "why")
        write_rejected(table, reasons_of(mend, ColumnMap()), again)
    assert again.read_text("utf-8") == text  # no sign is added a second time
    mend.write_text(text.replace("75k", "75000"), "utf-8")
    with open_table(mend) as table:
        jobs = [row for row in table if isinstance(row, JobRow)]
    assert [job.concern for job in jobs] == [text.removeprefix("'") for text in LIKE_FORMULAS]
    assert {(job.hours, job.technician, job.codes, job.opened_on) for job in jobs} == {
        (None, "", (), None)
    }


def test_a_file_of_more_than_is_read_is_refused_before_it_is(tmp_path: Path) -> None:
    for name, head, most in (("jobs.csv", b"RO\n", 4_000), ("jobs.xlsx", b"PK\x03\x04", 500)):
        with (tmp_path / name).open("wb") as file:
            file.write(head)
            file.truncate(most * 1_000_000 + 1)  # a hole, which takes no room
        says = f"{name} has more than {most:,} MB"
        with pytest.raises(ShopTrouble, match=says), open_table(tmp_path / name):
            raise AssertionError
        (tmp_path / name).unlink()


def test_a_file_that_goes_while_it_is_read_is_told(jobs_file: Path) -> None:
    with open_table(jobs_file, MAP) as table:
        jobs_file.unlink()
        with pytest.raises(ShopTrouble, match=r"jobs\.csv can't be read: No such file"):
            list(table)


PREVIEWED = """job_number,Make,Model,price,hours,codes,odometer,closed_on
J-1,Tin,Heron,1234.5,1.25,P0300 P0301,,
J-2
"""


def test_the_preview_shows_money_hours_codes_and_what_is_gathered(tmp_path: Path) -> None:
    file = tmp_path / "jobs.csv"
    file.write_text(PREVIEWED)
    with open_source(file) as source:
        whole, short = preview(survey(source, ColumnMap())).rows
    assert {cell.field: cell.becomes for cell in whole.fields} == {
        "job_number": "J-1",
        "vehicle": "Tin Heron",
        "price": "1,234.50",
        "hours": "1.25",
        "codes": "P0300, P0301",
        "odometer": "",
        "closed_on": "",
    }
    assert (short.cells, short.fields) == (("J-2",), ())
    assert "1 cells where the headers are 8" in short.why


def test_in_a_long_column_a_cell_that_was_forgotten_is_looked_at_again(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr("desktop_app.records_exchanged.survey._MOST_REMEMBERED", 2)
    days = ["03/04/2025", "01/02/2025", "02/02/2025", "05/02/2025", "03/04/2025", "25/12/2024"]
    assert [job.opened_on for job in jobs_of(column("opened_on", *days))][-2:] == [
        date(2025, 4, 3),
        date(2024, 12, 25),
    ]


def test_what_is_remembered_stays_within_bounds() -> None:
    read: list[int] = []

    def asked(cell: int) -> int:
        read.append(cell)
        return -cell

    remembered = Remembered(asked)
    for cell in (*range(50_001), 50_000, 0):
        assert remembered[cell] == -cell
    assert len(remembered) == 2
    assert read[50_000:] == [50_000, 0]  # the last one was kept, the first had to be read again

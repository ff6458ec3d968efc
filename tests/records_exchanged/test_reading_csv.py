"""CSV as programs and people write it: any delimiter, quoting and encoding, and what is broken."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.formula_text import guarded, unguarded
from desktop_app.records_exchanged.job_row import JobRow, RowRejected
from desktop_app.records_exchanged.letters_of import decoding, guessed_encoding
from desktop_app.records_exchanged.rejected_rows import rejected_rows
from desktop_app.records_exchanged.taken_for_granted import taken_for_granted
from desktop_app.records_exchanged.text_lines import CUT, LONGEST_LINE, TextLines
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import all_rows, jobs_of, refused_of, table_of, written

# SQLite and XML alike have no NUL; a lone surrogate is no text at all.
texts = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=60)


@given(
    cells=st.lists(st.tuples(texts, texts), min_size=1, max_size=8),
    delimiter=st.sampled_from(",;\t|~"),
    quoting=st.sampled_from([csv.QUOTE_MINIMAL, csv.QUOTE_ALL]),
    encoding=st.sampled_from(["utf-8", "utf-8-sig", "utf-16"]),
)
def test_any_text_survives_being_written_and_read(
    cells: list[tuple[str, str]], delimiter: str, quoting: int, encoding: str
) -> None:
    out = io.StringIO()
    writer = csv.writer(out, delimiter=delimiter, quoting=quoting)
    writer.writerow(["job_number", "concern", "cause", "plate", "vin", "codes", "system"])
    for number, (concern, cause) in enumerate(cells):
        writer.writerow([f"J-{number}", guarded(concern), guarded(cause), "", "", "", ""])
    jobs = jobs_of(out.getvalue().encode(encoding))
    assert [(job.concern, job.cause) for job in jobs] == cells


@given(texts)
def test_a_guarded_text_comes_back_and_is_no_formula(text: str) -> None:
    assert unguarded(guarded(text)) == text
    assert not guarded(text).startswith(("=", "+", "-", "@", "\t", "\r"))


WORDS = {
    "de": ("Kühler dröhnt; Öl läuft, Schläuche spröde, Größe ß", "cp1252"),
    "fr": ("bruit à l'arrière, tête de delco brûlée, où ça", "cp1252"),
    "es": ("ruido en el año; bujía quemada, tirón", "cp1252"),
    "nordic": ("tändning på kall motor, bråk, ødelagt", "cp1252"),
    "pl": ("świece zużyte, łożysko hałasuje, żółty, gaśnie", "cp1250"),
    "cs": ("motor při studeném startu škube, ložisko hlučí, řemen", "cp1250"),
    "hu": ("fűtőmotor zörög, bőven, gyújtógyertya, ütődik", "cp1250"),
}


@pytest.mark.parametrize("tongue", WORDS)
def test_an_old_encoding_is_told_by_its_letters(tongue: str) -> None:
    words, encoding = WORDS[tongue]
    text = written([["job_number", "concern"], ["J-1", words]])
    found = table_of(text.encode(encoding))
    assert found.found.encoding == encoding
    assert jobs_of(text.encode(encoding))[0].concern == words


@pytest.mark.parametrize(
    ("content", "encoding"),
    [
        (b"a,b", "utf-8"),
        ("ä".encode(), "utf-8"),
        ("ä".encode("utf-8-sig"), "utf-8-sig"),
        ("aä".encode("utf-16"), "utf-16"),
        ("job,number".encode("utf-16-le"), "utf-16-le"),
        ("job,number".encode("utf-16-be"), "utf-16-be"),
        ("aä".encode("utf-32"), "utf-32"),
        (b"\xe4\xf6\xfc", "cp1252"),
        (b"\x81\x83\xe4", "latin-1"),
        (b"", "utf-8"),
    ],
)
def test_encodings(content: bytes, encoding: str) -> None:
    assert guessed_encoding([content] if content else []) == encoding


def test_a_letter_cut_in_two_by_a_piece_is_still_one() -> None:
    data = "aä".encode()
    assert guessed_encoding([data[:2], data[2:]]) == "utf-8"
    assert guessed_encoding([data[:2]]) != "utf-8"


def test_letters_are_told_by_all_pieces_also_behind_one_that_is_no_utf8() -> None:
    polish = "świece zużyte, łożysko, żółty, gaśnie".encode("cp1250")
    assert guessed_encoding([b"\xe4", *(bytes([byte]) for byte in polish)]) == "cp1250"


def test_what_no_encoding_can_write_is_not_passed_over() -> None:
    codec, errors = decoding("utf-8, else cp1252")
    assert b"\xe4 \xc3\xa4".decode(codec, errors) == "ä ä"
    with pytest.raises(UnicodeEncodeError):
        "\ud800".encode(codec, errors)


def two_in_one(tongue: str) -> bytes:
    """A file joined from one in UTF-8 and one in an old encoding."""
    words, encoding = WORDS[tongue]
    one, other = "J-1,café “Kühler”\n".encode(), f'J-2,"{words}"\n'.encode(encoding)
    return b"job_number,concern\n" + one + other


@pytest.mark.parametrize("tongue", WORDS)
def test_a_file_in_two_encodings_is_read_letter_by_letter_and_says_so(tongue: str) -> None:
    data = two_in_one(tongue)
    jobs = jobs_of(data)
    assert [job.concern for job in jobs] == ["café “Kühler”", WORDS[tongue][0]]
    found = table_of(data).found
    assert found.encoding == f"utf-8, else {WORDS[tongue][1]}"
    assert "Its letters are partly UTF-8, partly not" in taken_for_granted(found)[1]


def test_rows_of_a_file_in_two_encodings_come_back_to_be_mended() -> None:
    table = table_of(two_in_one("de"))
    text = b"".join(rejected_rows(table, {3: "why not"})).decode("utf-8")
    assert WORDS["de"][0] in text


def test_a_guess_says_that_it_is_one_unless_it_was_laid_down() -> None:
    data = written([["job_number", "concern"], ["J-1", "dröhnt"]]).encode("cp1252")
    assert "That is a guess" in taken_for_granted(table_of(data).found)[1]
    laid_down = taken_for_granted(table_of(data, ColumnMap(encoding="cp1252")).found)
    assert laid_down == ("1 row below the headers, parted by commas, read as cp1252.",)


def test_what_was_taken_for_granted_is_said() -> None:
    head = "RO #,opened_on,opened_on,Mileage,Comment"
    said = taken_for_granted(table_of(f"{head}\nJ-1,13/02/68,x,999.000,y\nJ-2,,,1.0,\n").found)
    assert said == (
        "2 rows below the headers, parted by commas, read as utf-8.",
        "Read: “RO #” as job number, “Mileage” as odometer.",
        "Days are read day first.",
        "Years of two figures are 1950 to 2049.",
        "An odometer of “999.000” is read as 999.",
        "Left out: opened_on (2), Comment.",
    )
    kilometres = table_of("RO,Odometer (km)\nJ-1,5\n").found
    assert "Odometers are in km where nothing else is said." in taken_for_granted(kilometres)
    of_a_workbook = replace(kilometres, from_workbook=True)
    assert taken_for_granted(of_a_workbook)[0] == "1 row below the headers."


def test_a_byte_order_mark_is_no_part_of_the_first_header() -> None:
    data = "job_number,concern\nJ-1,x\n".encode("utf-8-sig")
    for laid_down in (ColumnMap(), ColumnMap(encoding="utf-8")):
        assert table_of(data, laid_down).found.headers[0] == "job_number"


def test_an_encoding_that_is_laid_down_and_wrong_is_refused_with_the_row() -> None:
    text = written([["job_number", "concern"], ["J-1", "stalls"], ["J-2", "dröhnt"]])
    with pytest.raises(ShopTrouble, match="not written in utf-8"):
        table_of(text.encode("cp1252"), ColumnMap(encoding="utf-8"))


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
@pytest.mark.parametrize("delimiter", [",", ";", "\t", "|", ":", "^"])
def test_delimiters_and_ends_of_lines(delimiter: str, end: str) -> None:
    lines = [["RO", "Date in", "Complaint"], ["7", "2025-03-04", "stalls, then dies; often"]]
    out = io.StringIO()
    csv.writer(out, delimiter=delimiter, lineterminator=end).writerows(lines)
    (job,) = jobs_of(out.getvalue())
    assert (job.row, job.job_number, job.concern) == (2, "7", "stalls, then dies; often")


def test_a_first_line_that_names_the_delimiter() -> None:
    (job,) = jobs_of("sep=;\nRO;Reg\n7;AB 1\n")
    assert (job.row, job.plate) == (3, "AB 1")


def test_a_space_behind_each_delimiter_is_no_part_of_the_cells() -> None:
    (job,) = jobs_of('RO, Complaint, Reg\n7, "stalls, dies", AB 1\n')
    assert (job.concern, job.plate) == ("stalls, dies", "AB 1")


def test_single_quotation_marks() -> None:
    assert jobs_of("'RO','Complaint'\n'7','stalls, dies'\n")[0].concern == "stalls, dies"


def test_rows_are_counted_as_a_spreadsheet_counts_them() -> None:
    jobs = jobs_of('job_number,concern\n\nJ-1,"two\nlines"\n,\nJ-2,x\n')
    assert [(job.row, job.job_number) for job in jobs] == [(3, "J-1"), (5, "J-2")]


def test_the_headers_may_stand_further_down() -> None:
    text = 'Jobs of 2024\n\nRO,Complaint\n7,"stalls\ndies"\n'
    (job,) = jobs_of(text, ColumnMap(header_row=3))
    assert (job.row, job.concern) == (4, "stalls\ndies")


def test_a_row_of_another_width_is_refused_and_shifts_nothing() -> None:
    rows = all_rows("job_number,plate,concern\nJ-1,AB 1\nJ-2,AB 2,x,y\nJ-3,AB 3,x,,\n")
    assert [type(row).__name__ for row in rows] == ["RowRejected", "RowRejected", "JobRow"]
    assert isinstance(rows[0], RowRejected)
    assert "2 cells where the headers are 3" in rows[0].why


def test_a_row_without_a_number_is_refused() -> None:
    (refused,) = refused_of("job_number,concern\n,stalls\n")
    assert (refused.row, refused.column) == (2, "job_number")


def test_an_open_quotation_mark_costs_its_own_row_only() -> None:
    lines = ["job_number,concern,plate", 'J-1,"opened and never closed,AB 1']
    lines += [f'J-{n},"said ""so"" twice",AB {n}' for n in range(2, 3000)]
    rows = all_rows("\n".join(lines))
    refused = [row for row in rows if isinstance(row, RowRejected)]
    assert [row.row for row in refused] == [2]
    assert "quotation mark" in refused[0].why
    assert len(rows) == 2999


def test_an_open_quotation_mark_in_the_last_column_swallows_no_row() -> None:
    head = "job_number,plate,vin,system,cause,concern"
    rows = [f"J-{n},AB {n},,fuel,x,stalls" for n in range(1, 6)]
    rows[1] = 'J-2,AB 2,,fuel,x,"stalls'
    rows[3] = 'J-4,AB 4,,fuel,x,stalls"'
    found = all_rows("\n".join([head, *rows]) + "\n")
    assert [row.job_number for row in found] == ["J-1", "", "J-3", "J-4", "J-5"]


def test_an_open_quotation_mark_that_the_next_row_closes_is_told_by_the_width() -> None:
    found = all_rows('job_number,plate,concern\nJ-1,"AB 1,stalls\nJ-2,AB 2"\nJ-3,AB 3,x\n')
    assert isinstance(found[0], RowRejected)
    assert (found[0].row, "quotation mark" in found[0].why) == (2, True)
    assert [row.row for row in found] == [2, 3, 4]


def test_rows_that_open_a_mark_for_the_next_one_end_somewhere() -> None:
    lines = ["job_number,concern,plate", *['a",b,"c'] * 3_000, "J-1,stalls,AB 1"]
    rows = all_rows("\n".join(lines))
    assert [row.row for row in rows] == list(range(2, 3_003))
    assert getattr(rows[-1], "job_number", "") == "J-1"


def test_a_nul_byte_is_refused_with_its_row() -> None:
    (refused,) = refused_of("job_number,concern\nJ-1,a\0b\n")
    assert (refused.row, refused.why) == (2, "A cell holds a NUL byte.")


def test_a_cell_without_measure_is_refused_and_the_rest_is_read() -> None:
    text = f"job_number,concern\nJ-1,{'x' * 40_000}\nJ-2,{'y' * 200_000}\nJ-3,z\n"
    first, second, third = all_rows(text)
    assert isinstance(first, RowRejected)
    assert isinstance(second, RowRejected)
    assert "more than 32,767 letters" in first.why
    assert "more than 32,767 letters" in second.why
    assert getattr(third, "job_number", "") == "J-3"


def test_a_line_without_end_is_refused_and_the_rest_is_read() -> None:
    text = f"job_number,concern\nJ-1,{'x,' * LONGEST_LINE}\nJ-2,z\n"
    first, second = all_rows(text)
    assert isinstance(first, RowRejected)
    assert len(first.value) <= 200
    assert getattr(second, "job_number", "") == "J-2"


def test_the_rest_of_a_line_without_end_is_passed_over_though_it_goes_beyond_the_batch() -> None:
    lines = TextLines(io.BytesIO(b"x" * (2 * LONGEST_LINE + 7) + b"\nJ-2\n"), "utf-8")
    (cut,) = lines.batch(1)
    assert cut.startswith(CUT)
    assert lines.batch(1) == ["J-2\n"]
    assert lines.batch(1) == []
    lines.close()


def test_of_a_line_without_end_only_what_stands_in_it_is_said() -> None:
    endless = "b" * 2 * LONGEST_LINE
    alone, *in_a_cell = all_rows(f'job_number,concern\n{endless}\nJ-1,"b\n{endless}"\n')
    assert isinstance(alone, RowRejected)
    assert (set(alone.value), alone.why) == ({"b"}, "The line is too long to be a row.")
    for refused in in_a_cell:
        assert isinstance(refused, RowRejected)
        assert "NUL" not in refused.why
        assert set(refused.value) <= set('J-1 | "b')  # as its cells are told apart


@pytest.mark.parametrize("line", ["a" * 2_000_000, '"' * 1_000_001])
def test_a_file_of_one_line_without_end_is_not_said_to_hold_what_it_does_not(line: str) -> None:
    with pytest.raises(ShopTrouble, match="row 1, the headers: The line is too long to be a row"):
        table_of(line)


def test_a_million_columns_are_refused() -> None:
    with pytest.raises(ShopTrouble, match="row 1, the headers: The line is too long"):
        table_of(",".join(["a"] * 1_000_000) + "\n1\n")
    with pytest.raises(ShopTrouble, match=r"1,000 columns. At most 256"):
        table_of(",".join(["a"] * 1_000) + "\n1\n")


def test_names_without_measure_are_refused() -> None:
    (refused,) = refused_of(f"job_number,technician\nJ-1,{'x' * 201}\n")
    assert (refused.column, refused.why) == ("technician", "This has more than 200 letters.")


@pytest.mark.parametrize("content", ["", "\n\n\n", ",,,\n,,\n"])
def test_a_file_without_a_table_is_refused(content: str) -> None:
    with pytest.raises(ShopTrouble, match="holds no table"):
        table_of(content)


@given(st.binary(max_size=400))
def test_any_bytes_are_read_or_refused_in_words(data: bytes) -> None:
    said: list[str] = []
    try:
        rows = all_rows(b"job_number,opened_on,price,codes,odometer,hours\n" + data)
        said += [row.why for row in rows if isinstance(row, RowRejected)]
    except ShopTrouble as trouble:
        said.append(str(trouble))
    assert all(why and "\n" not in why for why in said)


def test_formula_like_text_stays_text() -> None:
    (job,) = jobs_of("job_number,concern\nJ-1,=HYPERLINK(1)\n")
    assert job.concern == "=HYPERLINK(1)"


def test_a_cell_that_is_no_value_is_named_alone() -> None:
    long = "x" * 32_768
    text = f"job_number,plate,concern,price,Remark\nJ-1,A\0B,{long},abc,ok\nJ-2,AB 2,x,5,a\0b\n"
    refused, job = all_rows(text)[:-1], all_rows(text)[-1]
    assert [
        (one.row, one.column, one.value[:5]) for one in refused if isinstance(one, RowRejected)
    ] == [
        *((2, "plate", "A␀B"), (2, "concern", "xxxxx"), (2, "price", "abc")),
    ]
    assert isinstance(job, JobRow)  # what is not read does no harm
    assert (job.job_number, job.plate) == ("J-2", "AB 2")

"""What a person settles about a file: its columns, its questions, the map from the last one."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.asked_once import answered, answers_to, open_questions
from desktop_app.records_exchanged.column_choice import fields_of, how_sure, with_column
from desktop_app.records_exchanged.column_map import GATHERED, ColumnMap
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.job_row import JobRow
from desktop_app.records_exchanged.looked_through_files import OpenedFile, look
from desktop_app.records_exchanged.map_files import (
    forget_map,
    keep_map,
    kept_map,
    read_map_file,
)
from desktop_app.records_exchanged.question import Question
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.survey import Survey, survey
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import source_of, written
from tests.records_exchanged.workbooks import with_sheets

MONEY_AND_ODO = [["RO #", "Odo", "Total"], ["1", "118,420", "1.234"], ["2", "90,100", "2.345"]]


def found_in(rows: list[list[str]]) -> Survey:
    return survey(source_of(written(rows)), ColumnMap())


def test_the_unit_of_odometers_is_asked_where_nothing_says_it() -> None:
    found = found_in([["RO #", "Odo"], ["1", "90100"]])
    [question] = open_questions(found)
    assert (question.option, question.row, question.text) == ("odometer_unit", 2, "90100")
    assert [answer.words for answer in answers_to(question)] == ["miles", "kilometres"]
    settled = answered(found, {"odometer_unit": "km"})
    assert open_questions(settled) == ()
    [job] = list(Table(source_of("RO #,Odo\n1,90100\n"), ColumnMap(), settled))
    assert isinstance(job, JobRow)
    assert job.odometer_unit == "km"


@pytest.mark.parametrize(
    "rows",
    [
        [["RO #", "Odometer (km)"], ["1", "90100"]],
        [["RO #", "Odo", "Unit"], ["1", "90100", "km"]],
        [["RO #", "Odo"], ["1", "90100 km"], ["2", ""]],
        [["RO #", "Reg"], ["1", "TH 1"]],
    ],
)
def test_a_unit_that_is_said_is_not_asked(rows: list[list[str]]) -> None:
    assert open_questions(found_in(rows)) == ()


def test_the_unit_is_asked_where_the_first_rows_have_no_odometer() -> None:
    [question] = open_questions(found_in([["RO #", "Odo"], ["1", ""]]))
    assert "the first rows have no odometer" in question.says


def test_an_answer_about_money_leaves_what_the_odometers_tell() -> None:
    found = found_in(MONEY_AND_ODO)
    asked = {question.option: question for question in open_questions(found)}
    assert [answer.words for answer in answers_to(asked["decimal_sign"])] == [
        "a decimal point: 1.234",
        "a decimal comma: 1234",
    ]
    settled = answered(found, {"decimal_sign": "comma", "odometer_unit": "mi"})
    jobs = list(Table(source_of(written(MONEY_AND_ODO)), ColumnMap(), settled))
    assert [(job.odometer, job.price_cents) for job in jobs if isinstance(job, JobRow)] == [
        (118420, 123400),
        (90100, 234500),
    ]


def test_what_was_not_asked_or_cannot_be_changes_nothing() -> None:
    found = found_in([["RO #", "Date"], ["1", "28/02/2025"]])
    assert answered(found, {"date_order": "month first", "decimal_sign": "comma"}) == found
    unclear = found_in([["RO #", "Date"], ["1", "03/04/2025"]])
    assert answered(unclear, {"date_order": "backwards"}) == unclear


@given(st.lists(st.tuples(st.integers(0, 5), st.sampled_from([*FIELDS, None])), max_size=12))
def test_the_last_choice_of_a_column_holds(choices: list[tuple[int, str | None]]) -> None:
    columns: dict[str, tuple[int, ...]] = {}
    for column, field in choices:
        columns = with_column(columns, column, field)
        assert fields_of(columns, column) == ((field,) if field else ())
        assert all(at == tuple(sorted(set(at))) for at in columns.values())
        assert all(len(at) == 1 for each, at in columns.items() if each not in GATHERED)
        every = [one for at in columns.values() for one in at]
        assert len(every) == len(set(every))


def test_how_sure_a_guess_is() -> None:
    headers = ("job_number", "Date In", "Date Opened", "Serial", "Make", "Model")
    columns = {"job_number": (0,), "opened_on": (2,), "vin": (3,), "vehicle": (4, 5)}
    sure = [how_sure(headers, columns, column) for column in (0, 2, 3, 4)]
    assert sure == ["sure", "a guess", "a guess", "likely"]


def test_a_kept_map_is_taken_and_one_that_does_not_fit_is_said(tmp_path: Path) -> None:
    file, maps = tmp_path / "old.csv", tmp_path / "maps"
    file.write_text("Our jobs,\nRO #,Note\n1,rattles\n", "utf-8")
    opened = OpenedFile(file)
    first = look(file, ColumnMap(), maps, opened)
    assert first.kept is None
    keep_map(maps, first.key, ColumnMap({"job_number": ("RO #",)}, header_row=2))
    again = look(file, ColumnMap(), maps, opened)
    assert again.kept is not None
    assert (again.found.header_row, dict(again.found.columns)) == (2, {"job_number": (0,)})
    assert again.opened is opened
    keep_map(maps, first.key, ColumnMap({"job_number": ("Order",)}, header_row=2))
    misfit = look(file, ColumnMap(), maps, opened)
    assert misfit.kept is None
    assert "The map kept from before was not taken" in misfit.said
    forget_map(maps, first.key)
    assert kept_map(maps, first.key) is None
    forget_map(maps, first.key)  # twice is no trouble
    opened.close()


def test_an_answer_about_days_shows_the_file_s_own_day_in_each_order() -> None:
    [question] = open_questions(found_in([["RO #", "Date"], ["1", "31/04/05"]]))
    assert (
        question.says == "“31/04/05” may be no day at all or 2031-04-05; no other day of it tells."
    )
    assert [answer.words for answer in answers_to(question)] == [
        "day first: no day at all",
        "year first: 5 April 2031",
    ]


def test_an_answer_that_the_figures_do_not_allow_says_so() -> None:
    question = Question("decimal_sign", ("point", "comma"), 2, "1.5", "")
    assert [answer.words for answer in answers_to(question)] == [
        "a decimal point: 1.5",
        "a decimal comma: no number at all",
    ]


def test_another_file_is_opened_for_itself_and_closed_where_it_can_not_be_read(
    tmp_path: Path,
) -> None:
    one, other = tmp_path / "one.csv", tmp_path / "other.csv"
    one.write_text("RO #\n1\n", "utf-8")
    other.write_text("RO #\n2\n3\n", "utf-8")
    opened = OpenedFile(one)
    looked = look(other, ColumnMap(), tmp_path, opened)
    assert looked.opened is not opened
    assert (looked.opened.path, looked.found.rows) == (other, 2)
    looked.opened.close()
    with pytest.raises(ShopTrouble, match="can't stand in row 9"):
        look(other, ColumnMap(header_row=9), tmp_path, opened)
    opened.close()


def test_a_kept_map_that_names_another_sheet_opens_that_one_and_lets_the_first_go(
    tmp_path: Path,
) -> None:
    sheets = ("Notes", "Jobs")
    book = with_sheets(*((name, [["RO #", "Concern"], [name, "x"]]) for name in sheets))
    file, maps = tmp_path / "jobs.xlsx", tmp_path / "maps"
    file.write_bytes(book)
    first = look(file, ColumnMap(), maps)
    assert first.found.first_rows[0][1][0] == "Notes"
    keep_map(maps, first.key, ColumnMap({"job_number": ("RO #",)}, sheet="Jobs"))
    first.opened.close()
    again = look(file, ColumnMap(), maps)
    assert again.opened.sheet == "Jobs"
    assert again.found.first_rows[0][1][0] == "Jobs"
    assert list(Table(again.opened.source, again.laid_down, again.found))  # it is still open
    again.opened.close()


def test_maps_that_can_not_be_kept_or_are_none_are_told(tmp_path: Path) -> None:
    (tmp_path / "maps").write_text("a file where the folder would be")
    with pytest.raises(ShopTrouble, match="can't be made") as refused:
        keep_map(tmp_path / "maps", "key", ColumnMap())
    assert "is not remembered" in refused.value.kept
    large = tmp_path / "large.toml"
    large.write_bytes(b"#" * 1_000_001)
    with pytest.raises(ShopTrouble, match=r"large\.toml is too large for a map"):
        read_map_file(large)

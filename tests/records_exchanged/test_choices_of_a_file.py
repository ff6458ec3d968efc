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
from desktop_app.records_exchanged.looking_actions import OpenedFile, look
from desktop_app.records_exchanged.map_actions import forget_map, keep_map, kept_map
from desktop_app.records_exchanged.read_table import Table
from desktop_app.records_exchanged.survey import Survey, survey
from tests.records_exchanged.tables import source_of, written

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
        [["RO #", "Odo km"], ["1", "90100"]],
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

"""What a person chose about a file stays chosen, also where the file is looked at anew."""

from __future__ import annotations

import pytest

from desktop_app.records_exchanged.column_choice import field_words
from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.everyday_headers import FIELDS
from desktop_app.records_exchanged.file_choices import FileChoices
from desktop_app.records_exchanged.survey import Survey, survey
from tests.another_language import another_language
from tests.records_exchanged.tables import source_of, written

ROWS = [["RO #", "Date In", "Comment", "Total"], ["1", "03/04/2025", "stalls", "1.234"]]
LAST_TIME = ColumnMap({"job_number": ("RO #",)}, date_order="day first", odometer_unit="km")


@pytest.fixture
def found() -> Survey:
    return survey(source_of(written(ROWS)), ColumnMap())


def test_nothing_chosen_leaves_the_file_as_it_was_found(found: Survey) -> None:
    laid, asked = FileChoices().over(found)
    assert laid == found
    assert [question.option for question in asked] == ["date_order", "decimal_sign"]


def test_a_column_given_to_a_field_is_read_so_and_called_chosen(found: Survey) -> None:
    choices = FileChoices()
    assert choices.sureness(found, 2) == ""
    assert choices.give(found, 2, "concern")
    laid, _ = choices.over(found)
    assert laid.columns["concern"] == (2,)
    assert choices.sureness(laid, 2) == "chosen"
    assert choices.sureness(laid, 1) == "likely"
    assert choices.named(found)["concern"] == ("Comment",)
    assert not choices.give(laid, 2, "concern")  # it is so already
    assert choices.give(laid, 2, None)
    assert "concern" not in choices.over(found)[0].columns
    assert not choices.give(choices.over(found)[0], 2, None)


def test_an_answer_is_laid_down_and_stays_open_to_another(found: Survey) -> None:
    choices = FileChoices()
    choices.answers["date_order"] = "month first"
    laid, asked = choices.over(found)
    assert laid.date_order == "month first"
    assert [question.option for question in laid.questions] == ["decimal_sign"]
    assert len(asked) == 2


def test_a_kept_map_answers_what_is_asked_and_nothing_else(found: Survey) -> None:
    choices = FileChoices()
    assert not choices.as_last_time("date_order")
    choices.take_kept(LAST_TIME, found)
    assert choices.answers == {"date_order": "day first"}
    assert choices.as_last_time("date_order")
    assert choices.sureness(found, 0) == "as last time"
    choices.answers["date_order"] = "month first"
    assert not choices.as_last_time("date_order")


def test_an_answer_that_was_given_before_is_not_overwritten_by_a_kept_map(found: Survey) -> None:
    choices = FileChoices()
    choices.answers["date_order"] = "month first"
    choices.take_kept(LAST_TIME, found)
    assert choices.answers == {"date_order": "month first"}


def test_another_table_begins_without_columns_but_keeps_the_answers(found: Survey) -> None:
    choices = FileChoices()
    choices.take_kept(LAST_TIME, found)
    choices.give(found, 2, "concern")
    choices.start_again()
    laid, _ = choices.over(found)
    assert laid.columns == found.columns
    assert choices.named(found) == {}
    assert choices.sureness(found, 0) not in ("as last time", "chosen")
    assert choices.answers == {"date_order": "day first"}


def test_a_field_is_said_in_words_of_the_language_spoken() -> None:
    assert [field_words(field) for field in ("part_origin", "vin")] == ["part origin", "VIN"]
    with another_language():
        said = [field_words(field) for field in FIELDS if field != "vin"]
        assert all(words.startswith("«") and "_" not in words for words in said)
        assert field_words("vin") == "VIN"

"""Every table and column that can stand in the history of a job has words of its own."""

from __future__ import annotations

from typing import Any

import pytest
from sqlalchemy import Integer
from sqlalchemy.types import TypeEngine

from desktop_app.job_history.change_words import TABLES, change_in_words
from desktop_app.job_history.stored_job_rows import hangs_on, job_tables
from desktop_app.job_history.table_words import ColumnWords
from desktop_app.job_history.value_words import ShopSpeech, value_in_words
from desktop_app.returns_watched.judgement import RETURN_CAUSES
from desktop_app.shop_record.deed import RowChange
from desktop_app.shop_record.tables import Base
from tests.another_language import another_language
from tests.parts_compared.sheet_story import kinds

# What belongs to the shop and to no job of it.
SHOP_WIDE = {
    *("history", "setting", "person", "own_kind", "own_phrase", "kind_window"),
    *("instrument", "gauge_study", "gauge_reading", "printed_card"),
}
EACH_COLUMN = [
    (table, column.name)
    for table in sorted(TABLES)
    for column in Base.metadata.tables[table].columns
    if column.name != "id"
]
SPEECH = ShopSpeech(
    currency="€",
    odometer_unit="km",
    distance_unit="mi",
    kinds=kinds(),
    symptoms={"misfire": "misfires"},
    names={("person", 1): "Tuuli", ("customer", 1): "Ms Hesper", ("job", 1): "J-1"},
    rows={("pair", 1): {"id": 1, "job_id": 1, "part_kind": "distributor-rotor", "position": ""}},
)


def a_value(kind: TypeEngine[Any], other: bool) -> Any:
    return int(other) if isinstance(kind, Integer) else ("1" if not other else "2")


def test_every_table_is_the_shops_or_has_words() -> None:
    assert set(TABLES) == set(job_tables())
    assert set(Base.metadata.tables) - set(TABLES) == SHOP_WIDE


def test_a_row_of_any_table_with_words_hangs_on_the_job_or_is_one_of_its_own() -> None:
    hanging = {table for table, on in hangs_on().items() if on}
    assert set(TABLES) - hanging == {"job", "visit", "vehicle", "customer", "answered"}


@pytest.mark.parametrize(("table", "column"), EACH_COLUMN)
def test_a_change_of_any_column_is_told_by_its_name(table: str, column: str) -> None:
    kept = Base.metadata.tables[table].columns[column]
    before, after = a_value(kept.type, False), a_value(kept.type, True)
    (line,) = change_in_words(RowChange(table, 1, {column: before}, {column: after}), SPEECH)
    assert f"{TABLES[table].columns[column].name}: " in line
    assert " → " in line
    assert "_" not in line  # as the names of columns have them


@pytest.mark.parametrize("table", sorted(TABLES))
def test_a_row_that_came_or_went_is_told_with_what_stood_in_it(table: str) -> None:
    columns = Base.metadata.tables[table].columns
    values = {column.name: a_value(column.type, True) for column in columns}
    (added,) = change_in_words(RowChange(table, 1, None, values), SPEECH)
    (gone,) = change_in_words(RowChange(table, 1, values, None), SPEECH)
    assert added.startswith(f"Added: {TABLES[table].noun}")
    assert gone == added.replace("Added", "Taken out", 1)


@pytest.mark.parametrize("table", sorted(TABLES))
def test_no_two_columns_of_a_table_are_called_alike(table: str) -> None:
    names = [column.name for column in TABLES[table].columns.values()]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize(
    ("table", "column", "value", "words"),
    [
        ("job", "cause", "cap cracked", "“cap cracked”"),
        ("job", "cause", "", "nothing"),
        ("job", "technician_id", 1, "Tuuli"),
        ("job", "system", "engine-control", "Engine control and sensors"),
        ("job", "price_cents", 123_456, "€1,234.56"),
        ("job", "proof_level", 4, "same conditions"),
        ("job", "cause_found", 0, "not caught"),
        ("job", "work", "inspection", "inspection only"),
        ("job", "window_miles", 3000, "3,000 mi"),
        ("job", "window_rule", "both", "when both have ended"),
        ("job", "odometer_out", 131_050, "131,050 km"),
        ("job", "left_at", "2026-10-12T16:35:00+00:00", "12 October 2026, 16:35"),
        ("customer_asked", "asked_on", "2026-10-12", "12 October 2026"),
        ("visit", "customer_id", 1, "Ms Hesper"),
        ("pair", "part_kind", "distributor-rotor", "distributor rotor"),
        ("pair", "origin", "reman", "remanufactured"),
        ("job_symptom", "symptom", "misfire", "misfires"),
        ("job_condition", "condition", "restart-hot", "started again hot"),
        ("self_test", "monitor", "egr-vvt", "exhaust gas recirculation or valve timing"),
        ("proof_step", "step", "cold-read", "Read again cold"),
        ("return_link", "judgement", "from our hands", "“from our hands”"),
        (
            "return_link",
            "helping_causes",
            '["wrong-part","new"]',
            "wrong part fitted, new and unrelated",
        ),
        ("return_link", "earlier_job_id", 1, "J-1"),
        ("mark", "height_mm", 10.5, "10.5 mm"),
        ("mark", "budget", "[1,2]", "5 letters of figures, whole in the sealed copy"),
    ],
)
def test_values_are_told_by_name_and_unit(table: str, column: str, value: Any, words: str) -> None:
    assert value_in_words(value, TABLES[table].columns[column], {}, SPEECH) == words


@pytest.mark.parametrize(
    ("table", "values", "column", "words"),
    [
        ("return_link", {"judgement": "from our hands"}, "judgement", "“«from our hands»”"),
        ("trouble_code", {"kind": "pending"}, "kind", "“«pending»”"),
        ("job", {"cause": "pending"}, "cause", "“pending”"),
        ("job_check", {"kind": "proof", "outcome": "done"}, "outcome", "“«done»”"),
        ("job_check", {"kind": "inspection", "outcome": "done"}, "outcome", "“done”"),
        ("job_check", {"kind": "refit", "words": "Clean."}, "words", "“«Clean.»”"),
        ("job_check", {"kind": "inspection", "words": "Clean."}, "words", "“Clean.”"),
        ("job", {"declined": "nothing"}, "declined", "“«nothing»”"),
        ("job", {"declined": "new brake pads"}, "declined", "“new brake pads”"),
        ("visit", {"odometer_source": "estimated"}, "odometer_source", "“«estimated»”"),
        ("reading", {"instrument": "calliper"}, "instrument", "“«calliper»”"),
        ("reading", {"instrument": "Ana's own"}, "instrument", "“Ana's own”"),
        ("visit", {"odometer_unread": "display dead"}, "odometer_unread", "“«display dead»”"),
        ("visit", {"odometer_unread": "it was wet"}, "odometer_unread", "“it was wet”"),
        ("pair", {"part_kind": "brake-pads", "position": "left"}, "position", "“«left»”"),
        ("pair", {"part_kind": "fuse", "position": "left"}, "position", "“left”"),
    ],
)
def test_words_of_the_program_are_spoken_and_typed_ones_stay(
    table: str, values: dict[str, Any], column: str, words: str
) -> None:
    with another_language():
        told = value_in_words(values[column], TABLES[table].columns[column], values, SPEECH)
    assert told == words


@pytest.mark.parametrize("cause", RETURN_CAUSES)
def test_every_cause_of_a_return_is_told_in_its_words(cause: Any) -> None:
    told = value_in_words(cause.id, TABLES["return_link"].columns["cause_class"], {}, SPEECH)
    assert told == cause.words


def test_a_reading_is_told_with_its_dimension_and_unit() -> None:
    values = {"pair_id": 1, "side": "removed", "dimension": "tip-radius", "value": 33.4}
    *_, line = change_in_words(RowChange("reading", 5, {}, values), SPEECH)
    assert line == (
        "Reading, removed part, tip radius from the shaft axis, distributor rotor, "
        "Value: nothing → 33.4 mm"
    )


@pytest.mark.parametrize("how", ["money", "level", "moment", "causes", "yes", "mm"])
def test_what_was_changed_from_outside_is_shown_as_it_is(how: Any) -> None:
    assert value_in_words("no such", ColumnWords("Odd", how), {}, SPEECH) == "no such"


@pytest.mark.parametrize("how", ["words", "term", "ours", "seen", "instrument", "place", "kind"])
def test_a_number_that_came_from_outside_where_words_stand_is_shown_too(how: Any) -> None:
    values = {"part_kind": "brake-pads", "pair_id": 1, "dimension": "bore"}
    assert value_in_words(7, ColumnWords("Odd", how), values, SPEECH) == "7"


def test_a_long_text_is_cut_and_says_so() -> None:
    told = value_in_words("x" * 5000, TABLES["job"].columns["cause"], {}, SPEECH)
    assert len(told) < 320
    assert told.endswith("…")

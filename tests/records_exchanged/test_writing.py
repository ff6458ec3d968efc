"""What an import brings into the record, what it leaves as it is, and what it refuses."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import text

from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.house_rules import change_rules
from desktop_app.shop_record.record import ShopRecord
from tests.records_exchanged.importing import (
    a_shop,
    backed_up_before,
    bring_in,
    counts,
    everything,
    found_by,
    lines,
)

FIRST: dict[str, Any] = {
    "job_number": "A1",
    "opened_on": "2024-01-05",
    "closed_on": "2024-01-06",
    "plate": "AB 12",
    "vehicle": "small car",
    "odometer": "50000",
    "odometer_unit": "mi",
    "technician": "Sam",
    "concern": "misfires when cold",
    "cause": "coil cracked",
    "correction": "new coil",
    "codes": "P0300 P0301",
    "system": "Ignition",
    "price": "120.00",
    "hours": "1.5",
}
COIL = {"part_kind": "ignition coil", "part_number": "C-1", "supplier": "Northside"}
PLUG = {"part_kind": "something of ours", "part_number": "S-1", "part_origin": "used"}
BACK = {
    **{"job_number": "A2", "opened_on": "2024-01-15", "closed_on": "2024-01-16", "plate": "ab12"},
    **{"concern": "misfires again", "return_of": "A1", "judgement": "same symptom"},
}


@pytest.fixture
def shop(tmp_path: Path) -> Iterator[ShopRecord]:
    yield from a_shop(tmp_path)


def rows(shop: ShopRecord, query: str) -> list[tuple[Any, ...]]:
    with shop.reading() as connection:
        return [tuple(row) for row in connection.execute(text(query))]


def why(shop: ShopRecord, *said: dict[str, Any]) -> list[tuple[int, str, str]]:
    told = bring_in(shop, lines(*said))
    return [(one.row, one.column, one.value) for one in told.rejected]


def test_rows_of_one_number_are_the_part_lines_of_one_job(shop: ShopRecord) -> None:
    told = bring_in(shop, lines({**FIRST, **COIL}, {**FIRST, **PLUG}, {**FIRST, **PLUG}))
    assert counts(told) == (3, 0, 0, 0)
    assert rows(shop, "SELECT number, system, price_cents, hours, cause_found FROM job") == [
        ("A1", "ignition", 12000, 1.5, 1)
    ]
    parts = rows(shop, "SELECT part_kind, number_on_box, supplier, origin FROM pair")
    assert [part[1:] for part in parts] == [
        ("C-1", "Northside", None),
        ("S-1", "", "used"),
        ("S-1", "", "used"),
    ]
    assert parts[1][0] == "something of ours"
    assert rows(shop, "SELECT code FROM trouble_code") == [("P0300",), ("P0301",)]
    assert rows(shop, "SELECT name FROM person") == [("Sam",)]


def test_an_imported_job_is_found_by_its_words_and_its_symptoms_are_read(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST))
    assert found_by(shop, "misfires") == [1]
    assert rows(shop, "SELECT symptom, chosen FROM job_symptom") == [("misfire-random", 0)]
    assert rows(shop, "SELECT condition, happens FROM job_condition") == [("cold", 1)]


def test_importing_again_adds_nothing(shop: ShopRecord) -> None:
    content = lines({**FIRST, **COIL}, {**FIRST, **PLUG}, BACK)
    bring_in(shop, content)
    before = everything(shop)
    assert counts(bring_in(shop, content)) == (0, 0, 3, 0)
    assert everything(shop) == before
    assert rows(shop, "SELECT count(*) FROM history") == [(1,)]
    assert backed_up_before(shop) == []  # nothing was written


def test_a_changed_row_changes_the_job_with_what_was_before(shop: ShopRecord) -> None:
    bring_in(shop, lines({**FIRST, **COIL}))
    told = bring_in(shop, lines({**FIRST, **COIL, "cause": "coil burnt", "supplier": "Eastside"}))
    assert counts(told) == (0, 1, 0, 0)
    assert rows(shop, "SELECT cause FROM job") == [("coil burnt",)]
    assert rows(shop, "SELECT supplier FROM pair") == [("Eastside",)]
    [(body,)] = rows(shop, "SELECT body FROM history ORDER BY seq DESC LIMIT 1")
    assert '"before":{"cause":"coil cracked"}' in body
    assert backed_up_before(shop) == [one for one in (told.backup,) if one is not None]
    assert found_by(shop, "burnt") == [1]


def test_an_empty_cell_wipes_nothing_out(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST))
    before = everything(shop)
    told = bring_in(shop, lines({"job_number": "A1"}))
    assert counts(told) == (0, 0, 1, 0)
    assert everything(shop) == before


def test_a_row_whose_job_is_known_can_bring_a_new_part_and_a_code(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST))
    content = lines({**FIRST, **COIL, "codes": "P0300 P0302"}, {**FIRST, **PLUG})
    assert counts(bring_in(shop, content)) == (1, 1, 0, 0)
    assert rows(shop, "SELECT number_on_box FROM pair") == [("C-1",), ("S-1",)]
    assert counts(bring_in(shop, content)) == (0, 0, 2, 0)


def test_a_vehicle_is_known_by_its_plate_however_it_is_written(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST, BACK))
    assert rows(shop, "SELECT plate, description FROM vehicle") == [("AB 12", "small car")]
    assert rows(shop, "SELECT vehicle_id FROM visit") == [(1,), (1,)]


def test_two_vins_are_two_vehicles_though_they_share_a_plate(shop: ShopRecord) -> None:
    one, other = "1M8GDM9AXKP042788", "1M8GDM9AXKP042789"
    bring_in(shop, lines({**FIRST, "vin": one}, {**FIRST, "job_number": "A2", "vin": other}))
    assert rows(shop, "SELECT vin FROM vehicle") == [(one,), (other,)]


def test_jobs_of_one_vehicle_and_day_are_one_visit_that_ends_with_the_last(
    shop: ShopRecord,
) -> None:
    bring_in(shop, lines(FIRST, {**FIRST, "job_number": "A2", "closed_on": "2024-01-09"}))
    assert rows(shop, "SELECT substr(left_at, 1, 10), odometer_in FROM visit") == [
        ("2024-01-09", 50000)
    ]
    bring_in(shop, lines({**FIRST, "job_number": "A3", "closed_on": ""}))
    assert rows(shop, "SELECT left_at FROM visit") == [(None,)]
    bring_in(shop, lines({**FIRST, "job_number": "A3", "closed_on": "2024-01-11"}))
    assert rows(shop, "SELECT substr(left_at, 1, 10) FROM visit") == [("2024-01-11",)]


def test_a_window_is_the_shops_promise_counted_out_from_the_closing_day(shop: ShopRecord) -> None:
    # 31 January and one month is 29 February 2024: 29 days.
    change_rules(shop, "Promise", {"window_days": 31, "window_months": 1, "window_miles": 500})
    bring_in(shop, lines({**FIRST, "closed_on": "2024-01-31"}))
    assert rows(shop, "SELECT window_days, window_months, window_miles, window_from FROM job") == [
        (29, 1, 500, "shop")
    ]


def test_kilometres_are_kept_in_the_vehicles_own_unit(shop: ShopRecord) -> None:
    bring_in(shop, lines(FIRST, {**BACK, "odometer": "82077", "odometer_unit": "km"}))
    # 82,077 km are 51,000.28 miles.
    assert rows(shop, "SELECT odometer_in FROM visit") == [(50000,), (51000,)]


def test_a_return_is_kept_whatever_order_the_rows_stand_in(shop: ShopRecord) -> None:
    assert counts(bring_in(shop, lines(BACK, FIRST))) == (2, 0, 0, 0)
    assert rows(
        shop,
        "SELECT e.number, l.number, judgement, judged_by FROM return_link "
        "JOIN job e ON e.id = earlier_job_id JOIN job l ON l.id = later_job_id",
    ) == [("A1", "A2", "same symptom", "import")]


@pytest.mark.parametrize(
    ("said", "column", "value"),
    [
        ({"closed_on": "2024-01-04"}, "closed_on", "2024-01-04"),
        ({"opened_on": "", "closed_on": ""}, "opened_on", ""),
        ({"return_of": "B9"}, "return_of", "B9"),
        ({"return_of": "X1"}, "return_of", "X1"),
        ({"return_of": "A0", "judgement": "perhaps"}, "judgement", "perhaps"),
        ({"judgement": "same part"}, "judgement", "same part"),
        ({"job_number": "A0", "plate": "ZZ 99"}, "plate", "ZZ 99"),
        ({"job_number": "A0", "closed_on": "", "opened_on": "2024-02-01"}, "opened_on", None),
    ],
)
def test_what_cannot_be_is_refused_with_its_cell(
    shop: ShopRecord, said: dict[str, Any], column: str, value: str | None
) -> None:
    known = {**FIRST, "job_number": "A0", "opened_on": "2023-01-05", "closed_on": "2023-01-06"}
    bring_in(shop, lines(known, {**known, "job_number": "X1", "closed_on": "2025-01-01"}))
    before = everything(shop)
    expected = said.get(column) if value is None else value
    assert why(shop, {**FIRST, **said}) == [(2, column, expected)]
    assert everything(shop) == before


def test_two_rows_that_contradict_each_other_are_not_both_taken(shop: ShopRecord) -> None:
    assert why(shop, FIRST, {**FIRST, "cause": "something else"}) == [
        (3, "cause", "something else")
    ]


def test_a_job_of_the_program_is_known_too(shop: ShopRecord) -> None:
    said = WriteUp("It stalls", plate="QQ 1", odometer=100, came_at="2024-03-01T09:00:00+00:00")
    actions.write_up(shop, said)
    [(number,)] = rows(shop, "SELECT number FROM job")
    same = {"job_number": number, "opened_on": "2024-03-01", "plate": "QQ1", "concern": "It stalls"}
    assert counts(bring_in(shop, lines(same))) == (0, 0, 1, 0)


def test_a_dry_run_tells_the_same_and_writes_nothing(shop: ShopRecord) -> None:
    content = lines({**FIRST, **COIL}, BACK, {**FIRST, "cause": "else"})
    before = everything(shop)
    tried = bring_in(shop, content, dry_run=True)
    assert everything(shop) == before
    assert shop.can_undo() is None
    assert tried.as_json() == bring_in(shop, content).as_json()


def test_who_stops_an_import_leaves_nothing_behind(shop: ShopRecord) -> None:
    class Stopped(Exception):
        pass

    def stop(rows_read: int) -> None:
        raise Stopped

    bring_in(shop, lines({**FIRST, "job_number": "A0"}))
    before = everything(shop)
    with pytest.raises(Stopped):
        bring_in(shop, lines(FIRST), told=stop)
    assert everything(shop) == before
    assert backed_up_before(shop) == []

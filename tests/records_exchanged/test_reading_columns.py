"""Columns found by their everyday headers, by what stands below, or by a map."""

from __future__ import annotations

import random
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.column_guess import guessed_columns
from desktop_app.records_exchanged.column_map import ALL_OTHERS, ColumnMap, map_toml, read_map
from desktop_app.records_exchanged.everyday_headers import FIELDS, HEADERS, header_words
from desktop_app.records_exchanged.header_row import header_key, named_headers
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import jobs_of, table_of, written


def guessed(*headers: str) -> dict[str, str]:
    found = guessed_columns(headers, [])
    return {field: " + ".join(headers[index] for index in at) for field, at in found.items()}


def test_the_names_of_the_contract_are_understood() -> None:
    assert guessed(*FIELDS) == {field: field for field in FIELDS}


@pytest.mark.parametrize(
    ("header", "field"),
    [
        ("RO #", "job_number"),
        ("Work Order No.", "job_number"),
        ("Reg", "plate"),
        ("License Plate", "plate"),
        ("Date in", "opened_on"),
        ("DATE OUT", "closed_on"),
        ("Mileage", "odometer"),
        ("Odometer (km)", "odometer"),
        ("Tech", "technician"),
        ("Customer states", "concern"),
        ("Complaint", "concern"),
        ("Diagnosis", "cause"),
        ("Work performed", "correction"),
        ("DTCs", "codes"),
        ("Part #", "part_number"),
        ("Labour hours", "hours"),
        ("Total ($)", "price"),
        ("Vendor", "supplier"),
    ],
)
def test_everyday_headers(header: str, field: str) -> None:
    assert guessed(header, "zzz") == {field: header}


def test_the_better_name_wins_wherever_it_stands() -> None:
    assert guessed("Date", "Date in", "Job")["opened_on"] == "Date in"
    assert guessed("Description", "Complaint")["concern"] == "Complaint"


def test_a_vehicle_over_several_columns_is_put_together() -> None:
    text = "RO,Model,Year,Make\nJ-1,Estate,2011,Northwind\n"
    assert jobs_of(text)[0].vehicle == "2011 Northwind Estate"


def test_several_columns_of_codes_are_put_together() -> None:
    text = "RO,DTC 1,DTC 2,DTC 3\nJ-1,P0300,,P0301\n"
    assert jobs_of(text)[0].codes == ("P0300", "P0301")


def test_what_stands_below_tells_where_the_header_does_not() -> None:
    text = "RO,a,b,c\nJ-1,1HGCM82633A004352,P0300,5 km\nJ-2,1M8GDM9AXKP042788,P0301,6 km\n"
    (job, _) = jobs_of(text)
    assert (job.vin, job.codes, job.odometer) == ("1HGCM82633A004352", ("P0300",), 5)


def test_no_header_stands_for_two_fields() -> None:
    pairs = [(name, field) for field, names in HEADERS.items() for name in names]
    assert [name for name, _ in pairs if name != header_words(name)] == []
    twice = {name for name, field in pairs if any(n == name and f != field for n, f in pairs)}
    assert twice == set()


def test_a_column_that_the_file_lacks_is_not_given() -> None:
    (job,) = jobs_of("job_number,concern\nJ-1,stalls\n")
    assert job.given == {"job_number", "concern"}
    assert (job.opened_on, job.codes, job.price_cents) == (None, (), None)


def test_a_file_without_job_numbers_is_refused_with_what_it_has() -> None:
    with pytest.raises(ShopTrouble, match=r"it has: colour, shape.*job_number"):
        table_of("colour,shape\nred,round\n")


@given(st.randoms(use_true_random=False))
def test_the_order_of_the_columns_never_matters(chance: random.Random) -> None:
    rows = [
        [*FIELDS],
        *(
            [
                *(f"J-{n}", "2025-03-04", "2025-03-05", "", f"AB {n}", "van", "5", "km", "Ann"),
                *("a, b", "c\nd", "e", "P0300 P0301", "fuel", "pump", "x-1", "Depot", "new"),
                *("9.50", "1.5", "", ""),
            ]
            for n in range(3)
        ),
    ]
    places = list(range(len(FIELDS)))
    chance.shuffle(places)
    assert jobs_of(written([[row[p] for p in places] for row in rows])) == jobs_of(written(rows))


def test_headers_that_are_empty_or_the_same_get_names_of_their_own() -> None:
    assert named_headers(["a", "", "a", "a (2)"]) == ("a", "column B", "a (2)", "a (2) (2)")


def test_a_file_is_known_again_whatever_the_order_of_its_columns() -> None:
    assert header_key(["RO", "Reg"]) == header_key(["reg", "ro"])
    assert header_key(["RO", "Reg"]) != header_key(["RO", "Tech"])


MAP = """
date_order = "day first"
[columns]
job_number = "Nummer"
vehicle = ["Marke", "Typ"]
concern = "Klage"
"""


def test_a_map_says_which_column_is_which() -> None:
    text = "Nummer;Typ;Marke;Klage;Plate\n7;Kombi;Nordwind;ruckelt;AB 1\n"
    (job,) = jobs_of(text, read_map(MAP, "map.toml"))
    assert (job.job_number, job.vehicle, job.concern) == ("7", "Nordwind Kombi", "ruckelt")
    assert job.plate == "AB 1"
    assert job.given == {"job_number", "vehicle", "concern", "plate"}


def test_a_column_of_the_map_wins_over_one_that_is_known() -> None:
    laid_down = read_map('[columns]\nplate = "Tag"\nconcern = ["Cause", "Notes"]\n', "map.toml")
    text = "job_number,Plate,Tag,Cause,Notes,Fix\n7,old,new,worn,loud,renewed\n"
    (job,) = jobs_of(text, laid_down)
    assert (job.plate, job.concern, job.cause, job.correction) == (
        "new",
        "worn\nloud",
        "",
        "renewed",
    )


@pytest.mark.parametrize("left_out", ['["Plate", "fix"]', '"all others"'])
def test_a_known_column_can_be_left_out(left_out: str) -> None:
    laid_down = read_map(f'left_out = {left_out}\n[columns]\njob_number = "job_number"\n', "m.toml")
    (job,) = jobs_of("job_number,Plate,Fix\n7,AB 1,renewed\n", laid_down)
    assert job.given == {"job_number"}


@pytest.mark.parametrize(
    ("said", "wanted"),
    [("left_out = 7", "is a list of headers"), ('left_out = ["Nowhere"]', "no column “Nowhere”")],
)
def test_what_cannot_be_left_out_is_told(said: str, wanted: str) -> None:
    with pytest.raises(ShopTrouble, match=wanted):
        jobs_of("job_number\n7\n", read_map(said, "map.toml"))


def test_a_map_without_columns_leaves_them_to_the_guess() -> None:
    laid_down = read_map('date_order = "month first"', "map.toml")
    (job,) = jobs_of("RO,Date in\nJ-1,03/04/2025\n", laid_down)
    assert job.opened_on is not None
    assert job.opened_on.isoformat() == "2025-03-04"


def test_a_header_that_the_file_lacks_is_refused() -> None:
    with pytest.raises(ShopTrouble, match=r"no column “Nummer” for job_number.*It has: RO, Reg"):
        table_of("RO,Reg\n1,2\n", read_map(MAP, "map.toml"))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("columns = 5", "columns is a table"),
        ('[columns]\nplates = "Reg"', "columns.plates is not known"),
        ("[columns]\nplate = 5", "columns.plate is the header"),
        ("[columns]\nplate = []", "columns.plate is the header"),
        ('[columns]\nplate = ["a", "b"]', "one column only"),
        ('date_order = "DMY"', "date_order is one of day first, month first, year first"),
        ('decimal_sign = ","', "decimal_sign is one of"),
        ('delimiter = ";;"', "delimiter is one sign"),
        ('encoding = "rot13"', "encoding is the name"),
        ('encoding = "klingon"', "encoding is the name"),
        ("header_row = 0", "header_row is a row"),
        ("header_row = true", "header_row is a row"),
        ("sheet = 5", "sheet is a text"),
        ("dates = 1", "dates is not known"),
        ("a = ", "can't be read as TOML"),
    ],
)
def test_a_wrong_map_is_refused_in_one_line_that_names_the_key(text: str, says: str) -> None:
    with pytest.raises(ShopTrouble) as refused:
        read_map(text, "map.toml")
    assert says in str(refused.value)
    assert "map.toml" in str(refused.value)
    assert "\n" not in str(refused.value)


headers = st.text(st.characters(exclude_categories=["Cs"]), min_size=1).filter(str.strip)


@given(
    columns=st.dictionaries(
        st.sampled_from(["concern", "codes", "vehicle"]),
        st.lists(headers, min_size=1, max_size=3).map(tuple),
    ),
    sheet=st.none() | headers,
    row=st.none() | st.integers(1, 1000),
    left_out=st.just(ALL_OTHERS) | st.lists(headers, max_size=3).map(tuple),
)
def test_a_map_is_read_as_it_was_written(
    columns: dict[str, tuple[str, ...]], sheet: str | None, row: int | None, left_out: Any
) -> None:
    laid_down = ColumnMap(columns, left_out, decimal_sign="comma", sheet=sheet, header_row=row)
    assert read_map(map_toml(laid_down), "map.toml") == laid_down


def test_what_was_found_out_is_a_map_for_the_next_file() -> None:
    found = table_of("RO;Reg;Date in;Price\n1;AB 1;25/03/2025;9,50\n").settled_map()
    assert found.columns["plate"] == ("Reg",)
    assert (found.date_order, found.decimal_sign) == ("day first", "comma")
    (job,) = jobs_of("RO;Reg;Date in;Price\n2;AB 1;04/03/2025;1.234\n", found)
    assert (str(job.opened_on), job.price_cents) == ("2025-03-04", 123400)

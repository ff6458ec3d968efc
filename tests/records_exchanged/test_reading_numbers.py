"""Odometers, money, hours and codes as people write them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.records_exchanged.column_map import ColumnMap
from desktop_app.records_exchanged.number_words import (
    DecimalSign,
    read_cents,
    read_hours,
    read_unit,
)
from desktop_app.shop_record.trouble import ShopTrouble
from tests.records_exchanged.tables import column, jobs_of, refused_of, table_of


def only_why(header: str, cell: str) -> str:
    """Why the one row with this cell is refused."""
    (refused,) = refused_of(column(header, cell))
    assert (refused.row, refused.column, refused.value) == (2, header, cell)
    return refused.why


@pytest.mark.parametrize(
    ("cell", "number", "unit"),
    [
        ("118420", 118420, ""),
        ("118,420", 118420, ""),
        ("118.420 km", 118420, "km"),
        ("118 420 mi", 118420, "mi"),
        ("120,000.0 km", 120000, "km"),
        ("018,420", 18420, ""),
        ("98.0000", 98, ""),
        ("1234.000", 1234, ""),
        ("118420,000", 118420, ""),
        ("1,234.000", 1234, ""),
        ("1.234.000", 1234000, ""),
        ("120000.0", 120000, ""),
        ("12,345,678", None, ""),
        ("98 miles", 98, "mi"),
        ("007", 7, ""),
        ("", None, ""),
        ("n/a", None, ""),
    ],
)
def test_odometers(cell: str, number: int | None, unit: str) -> None:
    if cell == "12,345,678":
        assert "too many figures" in only_why("odometer", cell)
        return
    (job,) = jobs_of(column("odometer", cell))
    assert (job.odometer, job.odometer_unit) == (number, unit)


def odometers(*cells: str, laid_down: ColumnMap | None = None) -> list[int | None]:
    return [job.odometer for job in jobs_of(column("odometer", *cells), laid_down)]


@pytest.mark.parametrize(
    ("cells", "read"),
    [
        (["999.000"], [999000]),
        (["120,000 km"], [120000]),
        (["120,000", "118,420"], [120000, 118420]),
        (["120.000", "118.420", "7"], [120000, 118420, 7]),
        (["120.000", "98.0000", "118420.0"], [120, 98, 118420]),
        (["120,000", "120.000", "118420.0"], [120000, 120, 118420]),
        (["249.000", "118420,0"], [249000, 118420]),
    ],
)
@pytest.mark.parametrize("sign", ["point", "comma"])
def test_a_sign_before_three_noughts_parts_thousands_unless_the_column_has_decimals(
    cells: list[str], read: list[int], sign: DecimalSign
) -> None:
    assert odometers(*cells) == read
    assert odometers(*cells, laid_down=ColumnMap(decimal_sign=sign)) == read
    price = {"point": "9.50", "comma": '"9,50"'}[sign]
    rows = "".join(f'J-{row},"{cell}",{price}\n' for row, cell in enumerate(cells))
    assert [job.odometer for job in jobs_of(f"job,odometer,price\n{rows}")] == read


@pytest.mark.parametrize(
    "others", [["123,456"], ["120,000"], ["118.420", "999.0"], ["999.0", "98,0"]]
)
@pytest.mark.parametrize("laid_down", [None, ColumnMap(decimal_sign="comma")])
def test_where_a_column_has_it_both_ways_such_a_row_is_refused(
    others: list[str], laid_down: ColumnMap | None
) -> None:
    refused = refused_of(column("odometer", *others, "249.000"), laid_down)[-1]
    assert (refused.row, refused.value) == (len(others) + 2, "249.000")
    assert refused.why == "This may be 249 or 249,000. Write 249 or 249000."


@given(st.integers(0, 9_999_999), st.sampled_from(".,"), st.sampled_from([1, 2, 4, 5]))
def test_noughts_behind_a_sign_never_change_a_reading(number: int, sign: str, noughts: int) -> None:
    assert odometers(f'"{number}{sign}{"0" * noughts}"'.strip('"')) == [number]


@pytest.mark.parametrize(
    "cell", ["75k", "12k?", "1_000", "١٢", "²", "-5", "12.5", "1e5", "0x10", "nan", "118,42"]
)
def test_what_is_no_odometer_is_refused_with_the_reason(cell: str) -> None:
    assert only_why("odometer", cell)


def test_75k_is_told_how_to_be_written() -> None:
    assert "75,000 for 75k" in only_why("odometer", "75k")


def test_the_unit_stands_beside_in_its_column_in_the_header_or_in_the_map() -> None:
    assert jobs_of("job,odometer,unit\nJ-1,5,KM\n")[0].odometer_unit == "km"
    assert jobs_of("job,Odometer (km)\nJ-1,5\n")[0].odometer_unit == "km"
    assert jobs_of("job,Miles\nJ-1,5\n")[0].odometer_unit == "mi"
    laid_down = ColumnMap(odometer_unit="mi")
    assert jobs_of("job,odometer\nJ-1,5\n", laid_down)[0].odometer_unit == "mi"
    assert jobs_of("job,odometer\nJ-1,5 km\n", laid_down)[0].odometer_unit == "km"


def test_two_units_for_one_odometer_are_refused() -> None:
    (refused,) = refused_of("job,odometer,unit\nJ-1,5 km,mi\n")
    assert (refused.column, refused.value) == ("odometer", "5 km")
    assert "says km and its unit mi" in refused.why


def test_a_unit_found_beside_the_number_is_given() -> None:
    first, second = jobs_of("job,odometer\nJ-1,5 km\nJ-2,5\n")
    assert "odometer_unit" in first.given
    assert "odometer_unit" not in second.given


@pytest.mark.parametrize(
    ("cell", "cents"),
    [
        ("120", 12000),
        ("120.50", 12050),
        ("120,5", 12050),
        ("$1,234.50", 123450),
        ("1.234,50 €", 123450),
        ("EUR 1 234,50", 123450),
        ("£95", 9500),
        ("1'234.50 Fr.", 123450),
        ("12.345", None),
        ("12.3456", 1235),
        ("0,125", 13),
        ("120,-", 12000),
        ("", None),
        ("n/a", None),
    ],
)
def test_money(cell: str, cents: int | None) -> None:
    if cell == "12.345":
        with pytest.raises(ShopTrouble, match=r"may be 12\.345 or 12345"):
            table_of(column("price", cell))
        return
    assert jobs_of(column("price", cell))[0].price_cents == cents


@pytest.mark.parametrize("cell", ["-5", "(5)", "free", "1_0", "5 5", "1.2.3", "٥", "NaN", "1e3"])
def test_what_is_no_money_is_refused(cell: str) -> None:
    assert only_why("price", cell)


def test_the_decimal_sign_is_told_by_the_other_numbers_of_the_file() -> None:
    assert [j.price_cents for j in jobs_of(column("price", "1.234", "9,50"))] == [123400, 950]
    assert [j.price_cents for j in jobs_of(column("price", "1.234", "9.50"))] == [123, 950]
    assert jobs_of('job,price,hours\nJ-1,"1,234",1.5\n')[0].price_cents == 123400


def test_a_file_with_both_signs_reads_only_what_is_clear() -> None:
    assert [j.price_cents for j in jobs_of(column("price", "1,50", "9.50"))] == [150, 950]
    with pytest.raises(ShopTrouble, match='decimal_sign = "point" or decimal_sign = "comma"'):
        table_of(column("price", "1,50", "9.50", "1,234"))


def test_the_sign_that_is_laid_down_counts() -> None:
    text = column("price", "1.234", "9.50")
    (refused,) = refused_of(text, ColumnMap(decimal_sign="comma"))
    assert (refused.row, refused.value) == (3, "9.50")


def test_a_second_currency_is_refused() -> None:
    (refused,) = refused_of(column("price", "$5", "USD 6", "7 €", "8"))
    assert (refused.row, refused.value) == (4, "7 €")
    assert "in $" in refused.why


@pytest.mark.parametrize(
    ("cell", "hours"),
    [
        ("1.5", 1.5),
        ("1,5", 1.5),
        ("1:30", 1.5),
        ("1h30", 1.5),
        ("1 h 30 min", 1.5),
        ("90 min", 1.5),
        ("1.5 hrs", 1.5),
        ("0", 0.0),
        ("", None),
    ],
)
def test_hours(cell: str, hours: float | None) -> None:
    assert jobs_of(column("hours", cell))[0].hours == hours


@pytest.mark.parametrize("cell", ["1:75", "long", "99999", "-1", "1½"])
def test_what_is_no_number_of_hours_is_refused(cell: str) -> None:
    assert only_why("hours", cell)


@pytest.mark.parametrize(
    ("cell", "codes"),
    [
        ("P0300", ("P0300",)),
        ("p0300 P0301;P0302, P0303/P0304", ("P0300", "P0301", "P0302", "P0303", "P0304")),
        ("P0300\nP0300", ("P0300",)),
        ("PO3O1", ("P0301",)),
        ("P0300-00 | U0100:87", ("P0300", "U0100")),
        ("(P0420)", ("P0420",)),
        ("none", ()),
        ("no codes", ()),
        ("", ()),
    ],
)
def test_several_codes_in_one_cell(cell: str, codes: tuple[str, ...]) -> None:
    assert jobs_of(column("codes", cell))[0].codes == codes


@pytest.mark.parametrize("cell", ["P030", "P0300 misfire", "X1234", "check"])
def test_words_among_the_codes_are_refused_and_never_lost(cell: str) -> None:
    assert "trouble code" in only_why("codes", cell)


def test_words_among_the_codes_may_stay_where_the_column_is_kept_as_words() -> None:
    both = ColumnMap(columns={"job_number": ("job_number",), "codes": ("dtc",), "cause": ("dtc",)})
    (job,) = jobs_of(column("dtc", "P0300 misfire"), both)
    assert (job.codes, job.cause) == (("P0300",), "P0300 misfire")


@given(st.integers(0, 10**9), st.sampled_from([".", ","]))
def test_each_price_with_two_decimals_comes_back(cents: int, sign: str) -> None:
    cell = f"{cents // 100}{sign}{cents % 100:02}"
    assert jobs_of(column("price", cell))[0].price_cents == cents


def test_a_number_that_no_sign_was_told_for_is_not_guessed() -> None:
    assert read_cents("1.234,5", None) == 123450
    with pytest.raises(ValueError, match="can be read in two ways"):
        read_cents("1.234", None)
    with pytest.raises(ValueError, match="can be read in two ways"):
        read_hours("1,234", None)


@pytest.mark.parametrize(
    ("header", "cell", "says"),
    [
        ("price", "100000000.01", "The amount is too large."),
        ("odometer_unit", "furlongs", "The unit of an odometer is mi or km."),
    ],
)
def test_what_can_not_be_says_what_may_stand_there(header: str, cell: str, says: str) -> None:
    assert only_why(header, cell) == says


@pytest.mark.parametrize("cell", ["km", "KMs.", "Kilometres", "kilometer", "kilometers"])
def test_kilometres_have_many_names(cell: str) -> None:
    assert read_unit(cell) == "km"

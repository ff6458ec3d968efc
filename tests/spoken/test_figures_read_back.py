"""What a field shows is read back as the same number, with a decimal point and with a comma."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.figures_shown import DecimalSign, figure, shown
from desktop_app.part_photos.bench_card.ruler_length import ruler_length, shown_length
from desktop_app.part_photos.mark_words import height_mm, shown_height
from desktop_app.parts_compared.bench_sums.typed_list import list_parts, typed_wholes
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.readings_typed import read_readings
from desktop_app.parts_compared.shown_value import number
from desktop_app.parts_compared.typed_limit import limit_text, read_limit
from desktop_app.parts_compared.typed_value import typed_value
from desktop_app.repair_jobs.entry_bounds import MOST_CENTS, MOST_DISTANCE, MOST_ON_AN_ODOMETER
from desktop_app.repair_jobs.provocation import Provoked, read_provoked
from desktop_app.repair_jobs.road_test_words import read_every
from desktop_app.repair_jobs.typed_entry import (
    read_distance,
    read_hours,
    read_money,
    read_odometer,
)
from desktop_app.returns_watched.promise_typed import promise_typed
from desktop_app.returns_watched.screen.typed_field import amount_text
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.sort_key import sort_key
from tests.figures_said import figures_with

SIGNS: tuple[DecimalSign, ...] = (".", ",")
SPACES = ("\u202f", "\u00a0", " ")
BY_SIGN = pytest.mark.parametrize("sign", SIGNS)
LENGTH = Dimension(
    name="length",
    label="length",
    unit="mm",
    role="limit",
    allowed=None,
    direction=None,
    instrument="calliper",
    essential=False,
    basis="",
)


def spaced(said: str) -> list[str]:
    """The text as it is shown, and with other spaces between the groups."""
    return [said.replace("\u202f", space) for space in SPACES]


@BY_SIGN
@given(st.integers(0, MOST_ON_AN_ODOMETER))
def test_an_odometer(sign: DecimalSign, reading: int) -> None:
    with figures_with(sign):
        said = figure(reading, ",")
        for typed in spaced(said):
            assert read_odometer(typed) == reading
            assert read_odometer(f"{typed} km", "km") == reading


@BY_SIGN
@given(st.integers(0, MOST_CENTS))
def test_money(sign: DecimalSign, cents: int) -> None:
    with figures_with(sign):
        for said in (figure(cents / 100, ",.2f"), amount_text(cents)):
            assert {read_money(typed) for typed in spaced(said)} == {cents}


@BY_SIGN
@given(st.integers(0, MOST_DISTANCE * 100))
def test_distances_and_how_often(sign: DecimalSign, parts: int) -> None:
    with figures_with(sign):
        said = shown(f"{parts / 100:,.2f}".rstrip("0").rstrip("."))
        assert {read_distance(typed) for typed in spaced(said)} == {parts / 100}
        if parts and parts / 100 == float(f"{parts / 100:g}"):
            assert read_every(figure(parts / 100, "g")) == parts / 100


@BY_SIGN
@given(st.integers(0, 99_999))
def test_hours(sign: DecimalSign, parts: int) -> None:
    with figures_with(sign):
        assert read_hours(shown(f"{parts / 100:,.2f}".rstrip("0").rstrip("."))) == parts / 100


@BY_SIGN
@given(st.integers(1, 200_000))
def test_a_promise(sign: DecimalSign, miles: int) -> None:
    with figures_with(sign):
        for typed in spaced(figure(miles, ",")):
            assert promise_typed("", "", typed, "first", "mi").miles == miles


@BY_SIGN
@given(st.floats(0, 999_999))
def test_lengths_and_heights(sign: DecimalSign, length: float) -> None:
    with figures_with(sign):
        height = round(min(length, 300.0), 6)
        for unit in ("mm", "inch"):
            assert height_mm(shown_height(height, unit), unit) == pytest.approx(height, abs=2e-5)
        assert ruler_length(shown_length(height, "mm")) == round(height, 3)
        grouped = figure(round(length, 3), ",.3f") if sign == "," else f"{length:.3f}"
        for typed in spaced(grouped):
            assert ruler_length(typed) == round(length, 3)


@BY_SIGN
@given(st.floats(0.001, 999_999))
def test_limits_readings_and_values(sign: DecimalSign, length: float) -> None:
    kept = float(f"{length:.6g}")
    with figures_with(sign):
        assert read_limit(limit_text(kept, LENGTH, "mm"), LENGTH, "mm") == kept
        assert typed_value(number(kept), "mm") == kept
        readings = read_readings("; ".join((number(kept), number(kept))), LENGTH, "mm")
        assert [value for value, *_ in readings] == [kept, kept]
        grouped = figure(round(length, 3), ",.3f") if sign == "," else number(kept)
        wanted = round(length, 3) if sign == "," else kept
        assert {typed_value(typed, "mm") for typed in spaced(grouped)} == {wanted}
        for typed in spaced(grouped)[:2]:  # a plain space parts one reading from the next
            assert [value for value, *_ in read_readings(typed, LENGTH, "mm")] == [wanted]
            assert [typed_value(one, "mm") for one in list_parts(typed)] == [wanted]


@BY_SIGN
@given(st.lists(st.integers(0, 9_999_999), min_size=1, max_size=5))
def test_counts(sign: DecimalSign, counts: list[int]) -> None:
    with figures_with(sign):
        assert typed_wholes(" ".join(map(str, counts))) == tuple(counts)
        if sign == ",":
            assert typed_wholes("; ".join(figure(one, ",") for one in counts)) == tuple(counts)


@BY_SIGN
@given(st.integers(0, 9999), st.integers(1, 9999_99), st.integers(0, 9999))
def test_what_was_provoked(sign: DecimalSign, before: int, minutes: int, after: int) -> None:
    provoked = Provoked(before, float(f"{minutes / 100:g}"), after, 12.5)
    with figures_with(sign):
        assert read_provoked(provoked.shown()) == provoked
        assert read_provoked(provoked.typed()) == provoked
        assert "." not in provoked.shown() or sign == "."


@BY_SIGN
def test_what_is_typed_means_what_it_meant(sign: DecimalSign) -> None:
    with figures_with(sign):
        assert read_odometer("41.250") == read_odometer("41,250") == 41250
        assert typed_value("41.250", "mm") == typed_value("41,250", "mm") == 41.25
        assert [value for value, *_ in read_readings("4.1 4,2", LENGTH, "mm")] == [4.1, 4.2]
        assert [value for value, *_ in read_readings("10 200", LENGTH, "mm")] == [10, 200]
        assert typed_value("1 1/2 in", "mm") == 38.1
        for read in (read_money, read_distance, read_hours):
            with pytest.raises(ShopTrouble, match=r"1\.234"):
                read("1.234")
        with pytest.raises(ShopTrouble):
            read_readings("10 200 mm", LENGTH, "mm")


@BY_SIGN
@given(st.lists(st.integers(0, 10**9), min_size=2, max_size=6))
def test_columns_are_in_order_of_size(sign: DecimalSign, cents: list[int]) -> None:
    with figures_with(sign):
        for form in ("${} ", "{} mi", "{} %"):
            cells = [form.format(figure(one / 100, ",.2f")) for one in cents]
            order = sorted(range(len(cells)), key=lambda at: sort_key(cells[at])[:2])
            assert [cents[at] for at in order] == sorted(cents)

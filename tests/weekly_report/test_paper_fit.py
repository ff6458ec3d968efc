"""Columns and rows of the workbook: what is written has room, and prints large enough to read."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.paper_fit import (
    LEAST_SIZE,
    SIZE,
    Asked,
    asked_widths,
    fitted_widths,
    lines_needed,
    pixels,
    room_on_paper,
    text_pixels,
)
from desktop_app.weekly_report.sheet_form import Column, Sheet, Table
from desktop_app.weekly_report.workbook import workbook_bytes
from tests.watched_shop import a_week_of_returns, job, vehicle
from tests.weekly_report.week_written import opened, written

LONG = (
    "Takes three tries to start with the tank low, and my daughter says that it smells of petrol "
    "on the way to school when it has rained the night before."
)
ASKED = st.builds(
    lambda least, more, share: Asked(least, least + more, share),
    st.integers(1, 20),
    st.integers(0, 60),
    st.integers(1, 2),
)


@pytest.mark.parametrize(
    "words", [LONG, "J-1042", "2026-11-16", "WOMM 1.8-LITRE", "illicit", "1,234.50", "not said"]
)
def test_letters_are_as_wide_as_the_fonts_own_measures_say(words: str) -> None:
    # The measures of Helvetica as Adobe published them, which reportlab carries along.
    from reportlab.pdfbase.pdfmetrics import stringWidth

    points = stringWidth(words, "Helvetica", SIZE)
    assert text_pixels(words) == pytest.approx(points / 72 * 96, rel=0.03)


@given(st.lists(ASKED, min_size=1, max_size=22), st.integers(100, 2000))
def test_widths_lie_between_what_was_asked_and_fit_where_they_can(
    asked: list[Asked], room: int
) -> None:
    widths = fitted_widths(asked, room)
    for one, width in zip(asked, widths, strict=True):
        assert one.least <= width <= one.wide
    if sum(pixels(one.least) for one in asked) <= room:
        assert sum(map(pixels, widths)) <= room
    if sum(pixels(one.wide) for one in asked) <= room:
        assert widths == [one.wide for one in asked]


@given(st.floats(-1e9, 1e9), st.sampled_from(["count", "number", "hours", "share", "money"]))
def test_a_figure_has_room_however_narrow_the_paper_is(value: float, kind: str) -> None:
    least = asked_widths(Column("x", kind), [value], "CHF ").least  # type: ignore[arg-type]
    shown = f"{value:.1%}" if kind == "share" else f"{value:,.0f}" if kind == "count" else ""
    shown = shown or f"{'CHF ' if kind == 'money' else ''}{value:,.2f}"
    assert pixels(least) >= text_pixels(shown) + 5


@given(st.text(st.sampled_from("aim W-\n"), max_size=200), st.integers(5, 60))
def test_a_wider_column_never_needs_more_lines(words: str, width: int) -> None:
    assert 1 <= lines_needed(words, width + 20) <= lines_needed(words, width)


def test_the_widest_gives_way_first() -> None:
    asked = [Asked(5, 8), Asked(5, 40), Asked(5, 30)]
    assert fitted_widths(asked, sum(map(pixels, (8, 20, 20)))) == [8, 20, 20]


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_what_is_meant_to_be_read_prints_at_a_size_that_can_be_read(
    shop: ShopRecord, tmp_path: Path, paper: str
) -> None:
    from desktop_app.shop_record.house_rules import change_rule

    change_rule(shop, "paper", paper)
    a_week_of_returns(shop)
    car = vehicle(shop, plate="TIN 09", description="1.6-litre direct-injection saloon, 2010s")
    for number, left in ((170, "2026-10-28"), (171, "2026-11-12")):
        job(
            shop,
            car,
            f"J-{number}",
            left,
            left,
            concern=LONG,
            cause=LONG,
            correction=LONG,
            declined=LONG,
            kinds=["distributor-rotor", "distributor-cap", "spark-plug"],
            symptoms=["misfire", "hard-start"],
        )
    written(shop, "2026-W46", tmp_path / "week.xlsx")
    for page in opened(tmp_path / "week.xlsx"):
        last = max(page[table.ref][0][-1].column for table in page.tables.values())
        # Neighbours of one width are written once: from the first of them to the last.
        wide = sum(
            pixels(int(group.width)) * (min(group.max, last) - group.min + 1)
            for group in page.column_dimensions.values()
            if group.min <= last
        )
        assert sum(one.max - one.min + 1 for one in page.column_dimensions.values()) >= last
        across = page.page_setup.fitToWidth or 1
        assert wide <= room_on_paper(paper, across) * LEAST_SIZE / 7, page.title


def test_a_sentence_stands_above_a_table_however_wide_its_first_column_is(tmp_path: Path) -> None:
    wide = Table("Few", (Column("N", "count"), Column("M", "count")), (("m" * 150, 1),), "Few")
    sheet = Sheet("Few", "about", sentences=("Read the counts.",), tables=(wide,))
    *_, content = workbook_bytes([sheet], "A4", "$")
    (tmp_path / "few.xlsx").write_bytes(content)
    [page] = opened(tmp_path / "few.xlsx")
    [cell] = [row[0] for row in page if row[0].value == "Read the counts."]
    assert cell.alignment.wrap_text
    assert any(cell.coordinate in merged for merged in page.merged_cells.ranges)

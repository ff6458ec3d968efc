"""The week's workbook: what any program that opens it finds in it."""

from __future__ import annotations

import os
import re
import zipfile
from pathlib import Path
from typing import Any

import pytest

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.weekly_report.actions import file_name, write_week
from desktop_app.weekly_report.opens_on import to_do_table
from desktop_app.weekly_report.sheet_form import LONGEST_TEXT, ToDo, fitting_text
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle
from tests.weekly_report.week_written import opened, table_rows, written

SHEETS = [
    *("Read first", "Left this week", "Came back", "Windows", "Rate", "Kinds of part"),
    *("Where from", "Symptoms", "Proof", "People", "Costs", "Money owed", "Chains", "Changes"),
    *("Raw", "Definitions"),
]
ONE_TABLE = ("Left this week", "People", "Money owed", "Chains")


@pytest.fixture
def week(shop: ShopRecord, tmp_path: Path) -> Path:
    ids = a_week_of_returns(shop)
    judge_return(
        shop,
        ids["J-131"],
        ids["J-160"],
        "same part",
        why="the new tip was loose",
        cause_class="part-died-early",
        cost_cents=8_750,
    )
    path = tmp_path / "week.xlsx"
    written(shop, "2026-W46", path)
    return path


def test_the_sheets_stand_in_their_order_as_real_tables(week: Path) -> None:
    book = opened(week)
    assert book.sheetnames == SHEETS
    for page in book:
        assert page.tables, page.title


def test_rows_carry_what_the_record_says(week: Path) -> None:
    book = opened(week)
    left = table_rows(book, "Left this week")
    assert [row["Job"] for row in left] == ["J-160", "J-161", "J-162"]
    assert (left[1]["Price"], left[1]["Hours"], left[1]["Proof"]) == (184.5, 1.5, "2 road")
    back = {(row["Earlier job"], row["Later job"]): row for row in _came_back(book)}
    comeback = back["J-131", "J-160"]
    assert comeback["Days"] == 27
    assert comeback["Miles"] == 600
    assert comeback["Judgement"] == "same part"
    assert comeback["Counts as"] == "comeback"
    assert (comeback["Cause"], comeback["Cost"]) == ("part died early", 87.5)
    assert back["J-140", "J-162"]["Miles"] == "days only"
    assert back["J-140", "J-162"]["Judgement"] == "not judged"


def _came_back(book: Any) -> list[dict[str, Any]]:
    return table_rows(book, "Came back", "CameBack")


def test_each_formula_carries_its_result(week: Path) -> None:
    totals = ("Read first", "ReadFirstTotals")
    results = {row["What"]: row["Figure"] for row in table_rows(opened(week), *totals)}
    formulas = [row["Figure"] for row in table_rows(opened(week, results=False), *totals)]
    assert all(isinstance(formula, str) and formula.startswith("=") for formula in formulas)
    assert results["Jobs handed over"] == 3
    assert results["of these counted"] == 2
    assert results["Hours worked"] == 1.5
    assert results["Price of the jobs"] == 184.5
    assert results["Comebacks"] == 1
    assert results["Returns that wait for judgement"] == 1
    assert results["Cost of the week's returns"] == 87.5
    assert results["Jobs under watch"] == 6
    assert results["Cost of the year's comebacks"] == 87.5


def test_the_first_sheet_opens_on_the_figures_and_what_is_to_be_done(week: Path) -> None:
    page = opened(week)["Read first"]
    column = [str(row[0].value) for row in page.iter_rows() if row[0].value is not None]
    wanted = (
        "The week",
        "Handed over",
        "To act on",
        "To be judged, of any week",
        "Jobs handed over",
    )
    places = [column.index(one) for one in wanted]
    (sentence,) = [at for at, one in enumerate(column) if one.startswith("3 jobs left in the week")]
    assert [*places[:4], sentence, places[4]] == sorted((*places, sentence))
    week_figures = table_rows(opened(week), "Read first", "ReadFirstTotalsFirst")
    assert {row["What"]: row["Figure"] for row in week_figures} == {
        **{"Handed over": 3, "Left unproven": 1, "Comebacks": 1, "Wait for judgement": 1},
        **{"Under watch": 6, "Rate of the year": None},
    }
    to_do = table_rows(opened(week), "Read first", "ReadFirstToActOn")
    assert {row["What"]: (row["Jobs"], row["Which"]) for row in to_do} == {
        "Nobody said whether somebody could have been hurt": (2, "J-160, J-162"),
        "To be judged, of any week": (3, "J-131, J-160, J-162"),
    }


def test_where_nothing_waits_the_first_sheet_says_so(shop: ShopRecord, tmp_path: Path) -> None:
    written(shop, "2026-W46", tmp_path / "week.xlsx")
    page = opened(tmp_path / "week.xlsx")["Read first"]
    assert "Nothing waits for anybody." in [row[0].value for row in page.iter_rows()]


def test_of_many_jobs_to_act_on_the_first_are_named_and_the_sheet_of_the_rest() -> None:
    jobs = tuple(f"J-{number}" for number in range(1, 10))
    few, many = (ToDo("To be judged, of any week", some, "Raw") for some in (jobs[:8], jobs))
    assert to_do_table([few, many]).column("Which") == (
        "J-1, J-2, J-3, J-4, J-5, J-6, J-7, J-8",
        "J-1, J-2, J-3, J-4, J-5, J-6, J-7, J-8 and more: the sheet Raw",
    )


def test_the_file_is_proposed_under_the_name_of_its_week() -> None:
    assert file_name(read_week("2026-W07")) == "week-2026-W07.xlsx"


def test_nothing_typed_becomes_a_formula_or_a_link(week: Path) -> None:
    book = opened(week, results=False)
    parts = ("Unbilled hours", "Work", "Cash out", "In one sum", "Got back")  # summed by cause
    made = (
        "Figure",
        "Rate",
        "Of those under watch",
        "First-time fixed",
        "Total",
        "Jobs",
        "Last 13 weeks",
        "The 13 before",
        "52 weeks to then",
        *parts,
    )
    for page in book:
        for table in page.tables.values():
            header, *rows = page[table.ref]
            for cells in rows:
                for name, cell in zip(header, cells, strict=True):
                    assert cell.hyperlink is None
                    assert (cell.data_type == "f") <= (name.value in made), cell.coordinate
    concerns = [row["Concern"] for row in table_rows(book, "Left this week")]
    assert '=HYPERLINK("x") brake pedal is soft' in concerns


@pytest.mark.parametrize(
    "typed", ["=1+1", "+1", "-1", "@SUM(1)", "\t=1", "#REF!", "http://x", "_x0041_"]
)
def test_odd_words_read_back_as_they_were_typed(
    shop: ShopRecord, tmp_path: Path, typed: str
) -> None:
    job(shop, vehicle(shop), "J-1", "2026-11-10", "2026-11-10", concern=typed)
    written(shop, "2026-W46", tmp_path / "week.xlsx")
    [row] = table_rows(opened(tmp_path / "week.xlsx", results=False), "Left this week")
    assert row["Concern"] == typed


def test_text_longer_than_a_cell_is_cut_with_a_note(shop: ShopRecord, tmp_path: Path) -> None:
    job(shop, vehicle(shop), "J-1", "2026-11-10", "2026-11-10", concern="ab" * 20_000)
    written(shop, "2026-W46", tmp_path / "week.xlsx")
    [row] = table_rows(opened(tmp_path / "week.xlsx"), "Left this week")
    assert len(row["Concern"]) == LONGEST_TEXT
    assert row["Concern"].endswith("(cut here; the whole text of 40,000 characters is in the job)")


@pytest.mark.parametrize(
    ("typed", "kept"),
    [
        ("a\x00b\x07c", "a b c"),
        ("a\r\nb\tc", "a\nb\tc"),
        ("half \ud800 sign", "half   sign"),
        ("x\ufffey", "x y"),
        ("🔧 plug", "🔧 plug"),
    ],
)
def test_characters_that_a_file_cannot_hold_become_blanks(typed: str, kept: str) -> None:
    assert fitting_text(typed) == kept


def test_a_cut_never_splits_a_sign_of_two_units() -> None:
    cut = fitting_text("🔧" * 20_000)
    assert len(cut.encode("utf-16-le")) // 2 <= LONGEST_TEXT
    assert cut.startswith("🔧🔧")


def test_headers_are_frozen_and_repeat_on_paper(week: Path) -> None:
    for page in opened(week):
        # One page wide is the format's own default and need not be written.
        assert (page.page_setup.fitToWidth or 1) == (2 if page.title == "Raw" else 1)
        assert page.page_setup.fitToHeight == 0
        assert page.sheet_properties.pageSetUpPr.fitToPage
        alone = page.title in ONE_TABLE
        assert page.freeze_panes == ("B5" if alone else None)
        assert page.print_title_rows == ("$1:$4" if alone else "$1:$2")


def test_columns_fit_what_stands_in_them(week: Path) -> None:
    page = opened(week)["Left this week"]
    [table] = page.tables.values()
    for column in page[table.ref]:
        for cell in column:
            shown = str(cell.value or "").split("\n")
            width = page.column_dimensions[cell.column_letter].width
            wraps = cell.alignment.wrap_text
            assert wraps or width >= min(max(map(len, shown)), 12), cell.coordinate


def test_charts_are_drawn_over_their_tables(week: Path) -> None:
    with zipfile.ZipFile(week) as file:
        names = sorted(n for n in file.namelist() if n.startswith("xl/charts/chart"))
        drawn = [file.read(name).decode() for name in names]
    titles = [re.findall(r"<a:t>(.*?)</a:t>", one)[0] for one in drawn]
    assert titles == [
        "Comebacks per job under watch, week by week",
        "Share of jobs that came back, by days since they left",
        "Returns per 100 jobs, by days since they left",
        "Cost of the year's comebacks by cause",
    ]
    [weeks] = [t for t in opened(week)["Rate"].tables.values() if t.name == "Weeks"]
    first, last = (int(cell.strip("ABCDEFGHI")) for cell in weeks.ref.split(":"))
    assert last - first == 26
    for column in "FGH":
        assert f"Rate!${column}${first + 1}:${column}${last}" in drawn[0]


def test_people_are_named_on_the_owners_copy_alone(shop: ShopRecord, tmp_path: Path) -> None:
    from desktop_app.repair_jobs.stored import Person
    from desktop_app.shop_record.house_rules import change_rule

    with shop.deed("Add a person") as deed:
        person = deed.add(Person, name="Tuuli")
    for number in range(20):
        car = vehicle(shop, plate=f"TH {number}")
        job(shop, car, f"J-{number}", "2026-06-01", "2026-06-01", technician_id=person)
    for answer, named in (("no", False), ("yes", True)):
        change_rule(shop, "names_in_book", answer)
        written(shop, "2026-W46", tmp_path / "week.xlsx")
        with zipfile.ZipFile(tmp_path / "week.xlsx") as file:
            found = any(b"Tuuli" in file.read(name) for name in file.namelist())
        assert found == named
        [row] = table_rows(opened(tmp_path / "week.xlsx"), "People")
        assert row["Who"] == ("Tuuli" if named else "A")


def test_stopping_in_the_middle_leaves_nothing_behind(shop: ShopRecord, tmp_path: Path) -> None:
    a_week_of_returns(shop)
    of = 0
    for stop_after in range(1, 20):
        steps = write_week(shop, read_week("2026-W46"), tmp_path / "week.xlsx")
        for _ in range(stop_after):
            of = next(steps).of
        steps.close()
        assert [path.name for path in tmp_path.iterdir()] == ["shop"]
    assert of == 18


def test_a_stopped_report_leaves_the_older_file_whole(week: Path, shop: ShopRecord) -> None:
    before = week.read_bytes()
    steps = write_week(shop, read_week("2026-W47"), week)
    for _ in range(9):
        next(steps)
    steps.close()
    assert week.read_bytes() == before
    written(shop, "2026-W47", week)
    assert week.read_bytes() != before


@pytest.mark.parametrize(
    ("place", "says"),
    [
        ("nowhere/week.xlsx", "no folder"),
        ("week.pdf", r"does not end in \.xlsx"),
        ("folder.xlsx", "is a folder"),
    ],
)
def test_a_place_that_cannot_be_is_refused_before_the_work(
    shop: ShopRecord, tmp_path: Path, place: str, says: str
) -> None:
    (tmp_path / "folder.xlsx").mkdir()
    with pytest.raises(ShopTrouble, match=says):
        next(write_week(shop, read_week("2026-W46"), tmp_path / place))


def test_a_file_that_cannot_be_written_is_told_in_words(
    shop: ShopRecord, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(self: Path, target: Path) -> Path:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "replace", refuse)
    with pytest.raises(ShopTrouble, match=r"Permission denied.*Close it where it is open"):
        written(shop, "2026-W46", tmp_path / "week.xlsx")
    assert not list(tmp_path.glob("*week*"))
    assert not list(tmp_path.glob(".*"))


def test_a_link_stays_a_link_and_a_pipe_a_pipe(shop: ShopRecord, tmp_path: Path) -> None:
    real, link, pipe = (tmp_path / name for name in ("real.xlsx", "link.xlsx", "pipe.xlsx"))
    link.symlink_to(real)
    list(write_week(shop, read_week("2026-W46"), link))
    assert link.is_symlink()
    assert real.read_bytes()[:2] == b"PK"
    os.mkfifo(pipe)
    with pytest.raises(ShopTrouble, match="a device or a pipe"):
        next(write_week(shop, read_week("2026-W46"), pipe))
    assert pipe.is_fifo()

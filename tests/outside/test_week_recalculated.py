"""The week's workbook worked out again: by an office program, and by pandas from the record."""

from __future__ import annotations

from datetime import date, timedelta
from pathlib import Path

import pytest

from desktop_app.returns_watched.judgement import Judgement
from desktop_app.shop_record.record import ShopRecord
from tests.outside.recalculated import as_number, recalculated
from tests.weekly_report.week_written import opened, table_rows, written
from tests.weekly_report.year_written import FIRST, MONDAY, SUNDAY, a_year

WEEK = "2026-W46"
COMEBACKS = ("same symptom", "same system", "same part", "from our hands")


def _from_the_record(record: ShopRecord) -> dict[str, float | None]:
    """Return each total of the sheet Read first, worked out from the tables themselves."""
    import pandas
    from statsmodels.stats.proportion import proportion_confint

    asked = (
        "select j.*, v.vehicle_id, date(j.left_at) as left_on, date(v.came_at) as came_on "
        "from job j join visit v on v.id = j.visit_id"
    )
    with record.reading() as connection:
        rows = connection.exec_driver_sql(asked)
        jobs = pandas.DataFrame(rows.fetchall(), columns=list(rows.keys()))
        rows = connection.exec_driver_sql("select * from return_link")
        links = pandas.DataFrame(rows.fetchall(), columns=list(rows.keys()))
        asked = "select vehicle_id, date(happened_on) from vehicle_event where kind = 'sold'"
        sold = {of: date.fromisoformat(on) for of, on in connection.exec_driver_sql(asked)}
        asked = "select job_id, answer, date(asked_on) from customer_asked"
        told = {
            of: (said, date.fromisoformat(on)) for of, said, on in connection.exec_driver_sql(asked)
        }
    for column in ("left_on", "came_on"):
        jobs[column] = pandas.to_datetime(jobs[column]).dt.date
    jobs["counts"] = jobs.cause_found.ne(0) & jobs.cause.ne("") & jobs.correction.ne("")
    pairs = jobs.merge(jobs, on="vehicle_id", suffixes=("", "_later"))
    pairs = pairs[(pairs.id != pairs.id_later) & (pairs.came_on_later > pairs.left_on)]
    pairs = pairs.merge(
        links, "left", left_on=["id", "id_later"], right_on=["earlier_job_id", "later_job_id"],
        suffixes=("", "_link"),
    )  # fmt: skip
    pairs["days"] = [(a - b).days for a, b in zip(pairs.came_on_later, pairs.left_on, strict=True)]
    inside = pairs.days <= pairs.window_days
    inside &= pairs.came_on_later <= pairs.vehicle_id.map(sold).fillna(date.max)
    ours = ~pairs.cause_class.isin(["new", "other-use"])
    pairs["back"] = inside & pairs.judgement.isin(COMEBACKS) & ours
    pairs["aside"] = inside & pairs.judgement.notna() & (~ours | pairs.judgement.eq("cannot tell"))
    pairs["waits"] = inside & pairs.judgement.isna()
    week = jobs[(jobs.left_on >= MONDAY) & (jobs.left_on <= SUNDAY)]
    met = pairs[(pairs.came_on_later >= MONDAY) & (pairs.came_on_later <= SUNDAY)]
    left = [
        window - (SUNDAY - day).days
        for window, day in zip(jobs.window_days, jobs.left_on, strict=True)
    ]
    jobs["days_left"] = left
    year = jobs[(jobs.left_on >= FIRST) & jobs.counts]
    ends = {row.id: row.left_on + timedelta(days=row.window_days) for row in jobs.itertuples()}
    inside_told = {of: said for of, (said, on) in told.items() if on <= ends[of]}
    back = set(pairs[pairs.back].id)
    same = {of for of, said in inside_told.items() if said == "same trouble"}
    waits = (set(pairs[pairs.waits].id) | same) - back
    gone = {of for of, said in inside_told.items() if said == "car is gone"}
    for row in jobs.itertuples():
        if row.left_on <= sold.get(row.vehicle_id, date.min) < ends[row.id]:
            gone.add(row.id)
    aside = (set(pairs[pairs.aside].id) | gone) - back - waits
    settled = year[(year.days_left < 0) & ~year.id.isin(waits | aside)]
    returned = int(settled.id.isin(back).sum())
    low, high = proportion_confint(returned, len(settled), method="wilson")
    watch = jobs[jobs.days_left >= 0]
    return {
        "Jobs handed over": len(week),
        "of these counted": int(week.counts.sum()),
        "of these left unproven": int((week.proof_level == 0).sum()),
        "Hours worked": week.hours.sum(),
        "Hours not billed": week.unbilled_hours.sum(),
        "Price of the jobs": week.price_cents.sum() / 100,
        "Comebacks": met[met.back].vehicle_id.nunique(),
        "Returns that wait for judgement": met[met.waits].vehicle_id.nunique(),
        **{f"pairs judged {each}": int((met.judgement == each).sum()) for each in Judgement},
        "Cost of the week's returns": met.cost_cents.sum() / 100,
        "Jobs under watch": len(watch),
        "of these ending by time within 7 days": int((watch.days_left <= 7).sum()),
        "Jobs of the year that are counted": len(year),
        "of these settled": len(settled),
        "of the settled that came back": returned,
        "Rate of the year": returned / len(settled),
        "lies between": low,
        "and": high,
        "Jobs that wait": int(year.id.isin(waits).sum()),
        "Cost of the year's comebacks": pairs[pairs.back].cost_cents.sum() / 100,
    }


def test_each_total_is_what_pandas_finds_in_the_record(shop: ShopRecord, tmp_path: Path) -> None:
    a_year(shop)
    written(shop, WEEK, tmp_path / "week.xlsx")
    book = opened(tmp_path / "week.xlsx")
    found = {
        row["What"]: row["Figure"] for row in table_rows(book, "Read first", "ReadFirstTotals")
    }
    expected = _from_the_record(shop)
    assert set(found) == set(expected)  # a new total is to be worked out here as well
    for words, figure in expected.items():
        assert found[words] == pytest.approx(figure), words
    assert found["Comebacks"] == 2
    assert found["Returns that wait for judgement"] == 1
    assert found["of the settled that came back"] > 2
    assert found["Jobs that wait"] > 2
    costs = {row["What"]: row["Figure"] for row in table_rows(book, "Costs")}
    assert costs["In one sum"] == pytest.approx(expected["Cost of the year's comebacks"])
    stands = {row["State"]: row["Jobs"] for row in table_rows(book, "Windows")}
    assert sum(stands.values()) == expected["Jobs of the year that are counted"]
    assert stands["maybe"] == expected["Jobs that wait"]


@pytest.mark.parametrize("name", [WEEK, "2026-W48"])
@pytest.mark.needs_tool("soffice")
def test_an_office_program_works_out_the_same_figures(
    shop: ShopRecord, tmp_path: Path, name: str
) -> None:
    if name == WEEK:
        a_year(shop)
    written(shop, name, tmp_path / "week.xlsx")
    shown = recalculated(tmp_path)
    kept = opened(tmp_path / "week.xlsx")
    formulas = opened(tmp_path / "week.xlsx", results=False)
    checked: dict[str, int] = {}
    for page in formulas:
        for cells in page.iter_rows():
            for cell in cells:
                if cell.data_type == "f":
                    found = shown[page.title][cell.row - 1][cell.column - 1]
                    result = kept[page.title][cell.coordinate].value
                    assert as_number(found) == as_number(result), (page.title, cell.coordinate)
                    checked[page.title] = checked.get(page.title, 0) + 1
    assert {"Windows", "Costs"} <= set(checked)
    if name == WEEK:  # of the other one, which is still to come, nothing is counted yet
        assert {"Read first", "Rate", "Changes", "Proof", "Symptoms"} <= set(checked)
        [fixed] = [row for row in shown["Symptoms"] if row[:2] == ["misfire", "30"]]
        # Wilson's low bound of 30 in 30 is 0.8865 (statsmodels, proportion_confint).
        assert [as_number(cell) for cell in fixed[2:6]] == [0, 0, 1, 0.8865]
        jobs = [row[0] for row in shown["Left this week"][4:] if row[0].startswith("J-")]
        assert jobs == [row["Job"] for row in table_rows(kept, "Left this week")]

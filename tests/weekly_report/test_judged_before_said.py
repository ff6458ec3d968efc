"""Sheet “Came back”: a judgement that was changed says from what, when and by whom."""

from __future__ import annotations

from sqlalchemy import event

from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.stored import read_week_figures
from desktop_app.weekly_report.week import read_week
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle


def test_a_changed_judgement_says_from_what_when_and_by_whom(shop: ShopRecord) -> None:
    change_rule(shop, "names_in_book", "yes")
    ids = a_week_of_returns(shop)
    shop.who = "Odile"
    judge_return(shop, ids["J-131"], ids["J-160"], "unrelated")
    shop.who = "Marek"
    judge_return(shop, ids["J-131"], ids["J-160"], "same part")
    sheet = week_sheet(look_at_week(shop, read_week("2026-W46")), "Came back")
    table = sheet.table("HowJudged")
    said = dict(zip(table.column("Earlier job"), table.column("Who judged, and when"), strict=True))
    assert said["J-131"] == (
        "Judged “unrelated” by Odile on 2026-11-16, revised to “same part” by Marek on 2026-11-16."
    )
    assert said["J-140"] == "nobody yet"


def test_without_names_it_says_what_and_when(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    shop.who = "Odile"
    judge_return(shop, ids["J-131"], ids["J-160"], "unrelated")
    judge_return(shop, ids["J-131"], ids["J-160"], "same part")
    sheet = week_sheet(look_at_week(shop, read_week("2026-W46")), "Came back")
    said = sheet.table("HowJudged").column("Who judged, and when")
    assert "Judged “unrelated” on 2026-11-16, revised to “same part” on 2026-11-16." in said
    assert not any(
        "Odile" in str(cell) for table in sheet.tables for row in table.rows for cell in row
    )
    assert any("Names are left out" in note for note in sheet.table("HowJudged").notes)


def test_the_history_is_read_once_however_many_cars_came_back(shop: ShopRecord) -> None:
    for n in range(3):
        car = vehicle(shop, plate=f"T {n}")
        a = job(shop, car, f"J-{n}", "2026-10-01", "2026-10-02", symptoms=["misfire"])
        b = job(shop, car, f"K-{n}", "2026-11-10", None, symptoms=["misfire"])
        judge_return(shop, a, b, "same symptom")
    asked: list[str] = []

    def hear(_c: object, _cursor: object, statement: str, *_more: object) -> None:
        asked.append(statement)

    with shop.reading() as connection:
        event.listen(connection, "before_cursor_execute", hear)
        figures = read_week_figures(connection, read_week("2026-W46"), shop.clock())
        event.remove(connection, "before_cursor_execute", hear)
    assert len(figures.came_back) == 3
    # Once for what was judged, and once for what the house rules were.
    assert sum("history.body" in statement for statement in asked) == 2

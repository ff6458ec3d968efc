"""What a week's book counts: counted jobs alone, each visit once, nothing from after its Sunday."""

from __future__ import annotations

from datetime import UTC, date, datetime
from itertools import pairwise
from pathlib import Path

from desktop_app.parts_compared.stored import Pair
from desktop_app.returns_watched.actions import promise_change
from desktop_app.returns_watched.stored import MoneyOwed
from desktop_app.shop_record.record import ShopRecord, create_shop
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.read_first import read_first
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.rate_months import OWN
from desktop_app.weekly_report.week import read_week
from desktop_app.weekly_report.weekly_chart_of import weeks_charted
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle

MISFIRE = {"symptoms": ["misfire"]}


def book(shop: ShopRecord, week: str = "2026-W46") -> WeekFigures:
    return look_at_week(shop, read_week(week))


def table(figures: WeekFigures, sheet: str, name: str) -> Table:
    return week_sheet(figures, sheet).table(name)


def totals(figures: WeekFigures) -> dict[str, float | None]:
    return {total.words: total.value for total in week_sheet(figures, "Read first").totals}


def test_a_return_of_a_job_that_no_rate_counts_is_no_comeback_of_a_week(shop: ShopRecord) -> None:
    car = vehicle(shop)
    nothing = {"cause": "", "correction": "", "cause_found": 0}
    a = job(shop, car, "J-1", "2026-10-01", "2026-10-02", 10_000, **MISFIRE, **nothing)
    b = job(shop, car, "J-2", "2026-11-10", "2026-11-11", 10_100, **MISFIRE)
    judge_return(shop, a, b, "same symptom", cost_cents=5_000)
    found = book(shop)
    assert found.counts_as == ("not counted",)
    assert found.weeks[-1].comebacks == totals(found)["Comebacks"] == 0
    assert table(found, "Chains", "Chains").rows == ()
    costs = table(found, "Costs", "Costs")
    assert costs.rows == ()
    assert any("nothing was put right; $50.00 were written there" in note for note in costs.notes)


def test_windows_longer_than_the_year_are_under_watch_in_the_weeks_too(shop: ShopRecord) -> None:
    two_years = {"window_days": 730, "window_miles": 24_000}
    car = vehicle(shop)
    a = job(shop, car, "J-1", "2025-10-01", "2025-10-02", 10_000, **MISFIRE, **two_years)
    b = job(shop, car, "J-2", "2026-11-10", "2026-11-11", 15_000, **MISFIRE)
    judge_return(shop, a, b, "same symptom")
    for n in range(5):
        job(shop, vehicle(shop, plate=f"T {n}"), f"K-{n}", "2025-09-01", "2025-09-02", **two_years)
    charted = weeks_charted(book(shop))
    assert charted.watched[-1] == 7  # J-2 among them
    assert charted.weeks[-1].comebacks == 1


def test_a_chain_that_began_before_the_year_is_whole(shop: ShopRecord) -> None:
    car = vehicle(shop)
    came = ("2025-09-01", "2025-10-01", "2025-11-20", "2025-12-20")
    ids = [
        job(shop, car, f"J-{n}", day, day, 10_000 + 100 * n, **MISFIRE)
        for n, day in enumerate(came, 1)
    ]
    for first, later in pairwise(ids):
        judge_return(shop, first, later, "same symptom")
    chains = table(book(shop), "Chains", "Chains")
    [row] = [
        dict(zip((c.header for c in chains.columns), cells, strict=True)) for cells in chains.rows
    ]
    assert row["Jobs in turn"] == "J-1 → J-2 → J-3 → J-4"
    assert (row["Return visits"], row["Days in all"]) == (3, 110)
    assert row["Miles in all"] == "not known"  # of the first return no pair is in the year
    assert "in 2 return visits." in chains.notes[0]
    assert any("began before the year" in note for note in chains.notes)


def test_two_cars_called_alike_are_two_comebacks(shop: ShopRecord) -> None:
    for n, vin in enumerate(("1M8GDM9AXKP042788", "1M8GDM9A0KP042789")):
        car = vehicle(shop, plate="DEALER 1", vin=vin)
        a = job(shop, car, f"A-{n}", "2026-09-01", "2026-09-02", 10_000, **MISFIRE)
        b = job(shop, car, f"B-{n}", "2026-11-10", "2026-11-11", 10_100, **MISFIRE)
        judge_return(shop, a, b, "same symptom")
    assert book(shop).counted_as("comeback") == 2


def test_one_visit_against_two_jobs_is_one_return_visit(shop: ShopRecord) -> None:
    car = vehicle(shop)
    a = job(shop, car, "J-1a", "2026-09-01", "2026-09-02", 10_000, **MISFIRE)
    b = job(shop, car, "J-1b", "2026-09-10", "2026-09-11", 10_050, **MISFIRE)
    c = job(shop, car, "J-2", "2026-11-10", "2026-11-11", 10_100, **MISFIRE)
    judge_return(shop, a, c, "same symptom")
    judge_return(shop, b, c, "same symptom")
    found = book(shop)
    assert "in 1 return visit." in table(found, "Chains", "Chains").notes[0]
    assert (totals(found)["Comebacks"], totals(found)["pairs judged same symptom"]) == (1, 2)


def test_parts_that_were_not_fitted_did_not_leave(shop: ShopRecord) -> None:
    left = job(shop, vehicle(shop), "J-1", "2026-11-10", "2026-11-11", kinds=["distributor-cap"])
    with shop.deed("Send one back") as deed:
        deed.add(Pair, job_id=left, part_kind="distributor-rotor", fitted=0)
    left = table(book(shop), "Left this week", "LeftThisWeek")
    assert left.column("Part kinds") == ("distributor cap",)


def test_money_stands_as_it_was_owed_on_the_sunday(shop: ShopRecord) -> None:
    done = job(shop, vehicle(shop), "J-1", "2026-02-01", "2026-02-02")
    with shop.deed("Owed") as deed:
        pair = deed.add(Pair, job_id=done, part_kind="alternator")
        core = {"pair_id": pair, "what": "core", "amount_cents": 6_000}
        deed.add(MoneyOwed, **core, since="2026-10-01", state="open")
        deed.add(MoneyOwed, **core, since="2026-02-05", state="paid", ended_on="2026-04-01")
    for week, since in (("2026-W10", "2026-02-05"), ("2026-W46", "2026-10-01")):
        owed = table(book(shop, week), "Money owed", "MoneyOwed")
        assert owed.column("Since") == (date.fromisoformat(since),)
        assert owed.column("State") == ("open",)
    assert table(book(shop, "2026-W20"), "Money owed", "MoneyOwed").rows == ()


def test_an_open_promise_does_not_vanish_with_its_year(shop: ShopRecord) -> None:
    car = vehicle(shop)
    a = job(shop, car, "J-1", "2025-08-01", "2025-08-02", 10_000, **MISFIRE)
    b = job(shop, car, "J-2", "2025-10-10", "2025-10-11", 10_100, **MISFIRE)
    judge_return(shop, a, b, "same symptom", cause_class="fitted-badly")
    promise_change(shop, a, b, "Torque is read aloud.")
    found = book(shop)
    assert table(found, "Changes", "Changes").column("What") == ("Torque is read aloud.",)
    assert "1 promised change is open, 0 of them late." in read_first(found)
    # Before the car came back nobody can have promised it.
    assert table(book(shop, "2025-W40"), "Changes", "Changes").rows == ()


def test_all_that_waits_is_said_and_what_was_judged_later(shop: ShopRecord) -> None:
    ids = a_week_of_returns(shop)
    words = " ".join(read_first(book(shop)))
    assert "3 visits wait for a person to judge, 2 of the week among them." in words
    assert "as judged now" not in words
    judge_return(shop, ids["J-104"], ids["J-131"], "same part")
    assert "as judged now" not in " ".join(read_first(book(shop)))
    words = " ".join(read_first(book(shop, "2026-W45")))
    assert (
        "1 return in this book was judged, or judged anew, after 15 November 2026 and stands as "
        "judged now." in words
    )


def test_a_window_that_is_over_does_not_end_soon(shop: ShopRecord) -> None:
    # Both limits of J-1 must end: its days are over, its miles are not.
    both = {"window_days": 30, "window_miles": 3_000, "window_rule": "both"}
    car = vehicle(shop)
    job(shop, car, "J-0", "2025-05-01", "2025-05-02", 9_000)
    job(shop, car, "J-1", "2026-03-01", "2026-03-02", 10_000, **both)
    job(shop, car, "J-3", "2026-11-01", "2026-11-02", 10_500, system="brakes")
    job(shop, vehicle(shop, plate="T 2"), "J-2", "2026-08-19", "2026-08-20")
    found = book(shop)
    assert totals(found)["Jobs under watch"] == 3
    assert totals(found)["of these ending by time within 7 days"] == 1


def test_a_week_that_is_not_over_is_held_against_no_limit(tmp_path: Path) -> None:
    wednesday = datetime(2026, 11, 18, 9, tzinfo=UTC)
    shop = create_shop(tmp_path / "shop", lambda: wednesday)
    car = vehicle(shop)
    a = job(shop, car, "J-1", "2026-10-01", "2026-10-02", 10_000, **MISFIRE)
    b = job(shop, car, "J-2", "2026-11-17", "2026-11-18", 10_100, **MISFIRE)
    judge_return(shop, a, b, "same symptom")
    found = book(shop, "2026-W47")
    weeks = table(found, "Rate", "Weeks")
    assert weeks.column("Week")[-1] == "2026-W46"
    assert sum(n for n in weeks.column("Comebacks") if isinstance(n, int)) == 0
    so_far = table(found, "Rate", "WeekSoFar")
    assert so_far.rows == (("2026-W47", 1, 2, 1, 0),)
    assert so_far.behind == (("J-2",),)
    assert weeks_charted(found).noticed() == ()


def test_a_window_that_no_job_has_passed_is_named_as_left_out(shop: ShopRecord) -> None:
    for n in range(3):
        job(shop, vehicle(shop, plate=f"T {n}"), f"J-{n}", "2025-11-17", "2025-11-18")
    months = table(book(shop), "Rate", "RateByMonth")
    assert set(months.column("Window")) == {"early", OWN}
    assert any(note.startswith("The long window") and "has no row" in note for note in months.notes)
    assert not any("; long" in note for note in months.notes)


def test_a_column_opens_to_the_jobs_that_it_counts(shop: ShopRecord) -> None:
    for n in range(4):
        car = vehicle(shop, plate=f"T {n}")
        a = job(shop, car, f"J-{n}", "2026-05-01", "2026-05-02", 10_000, **MISFIRE)
        if n == 0:
            b = job(shop, car, "K-0", "2026-06-01", None, 10_100, **MISFIRE)
            judge_return(shop, a, b, "same symptom")
    months = table(book(shop), "Rate", "RateByMonth")
    assert len(months.behind[0]) == 4
    assert months.behind_of["Comebacks"](0) == ("J-0",)
    proof = table(book(shop), "Proof", "ProofLevels")
    assert proof.behind_of["Comebacks"](0) == ("J-0",)
    [total] = [
        one
        for one in week_sheet(book(shop), "Read first").totals
        if one.words == "of the settled that came back"
    ]
    assert total.value == 1
    assert total.jobs is not None
    assert total.jobs() == ("J-0",)

"""Tables of rates by group: read in words, the numbers of the command, opened to their jobs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, date, datetime

import numpy as np
import pytest

from desktop_app.commands.shop_place import kinds_of, new_place
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Person
from desktop_app.returns_watched.honest_numbers.group_rates import By, GroupRate, group_rates
from desktop_app.returns_watched.stored_rates import read_counted_jobs
from desktop_app.shop_record.record import ShopRecord
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import week_sheet
from desktop_app.weekly_report.sheet_form import Table
from desktop_app.weekly_report.sheets.does_it_pay import does_it_pay
from desktop_app.weekly_report.week import Week
from desktop_app.weekly_report.year_behind import JobDone, PartFitted
from tests.parts_compared.sheet_story import kinds
from tests.watched_shop import job, judge_return, vehicle
from tests.weekly_report.year_made import SHOP, came, done, figures

AS_OF = date(2026, 11, 15)
# How each grouping is called in the book: its sheet, its table, and how many columns name a row.
TABLES: dict[By, tuple[str, str, int]] = {
    "supplier": ("Where from", "Suppliers", 3),
    "part-kind": ("Kinds of part", "KindsOfPart", 2),
    "part-origin": ("Kinds of part", "Origins", 1),
    "system": ("Symptoms", "Systems", 1),
    "symptom": ("Symptoms", "Symptoms", 4),
    "verdict": ("Proof", "Compared", 1),
}


@pytest.fixture(scope="module")
def record(tmp_path_factory: pytest.TempPathFactory) -> ShopRecord:
    """A year of 70 jobs of all sorts, a third of them back, half of these judged."""
    folder = tmp_path_factory.mktemp("groups") / "shop"
    record = new_place(folder, lambda: datetime(2026, 11, 16, 12, tzinfo=UTC))
    chance = np.random.default_rng(5)

    def one_of(*words: str) -> str:
        return words[int(chance.integers(len(words)))]

    with record.deed("People") as deed:
        people = [deed.add(Person, name=name) for name in ("Ada", "Bo")]
    for n in range(35):
        car = vehicle(record, plate=f"TIN {n}")
        left = date.fromordinal(date(2026, 1, 5).toordinal() + 8 * n).isoformat()
        more = {"symptoms": [one_of("misfire", "no-crank")], "kinds": []}
        first = job(
            record, car, f"J-{n}", left, left,
            technician_id=people[n % 2], system=one_of("ignition", "brakes", ""), **more,
        )  # fmt: skip
        later = date.fromordinal(date.fromisoformat(left).toordinal() + 30).isoformat()
        second = job(
            record, car, f"K-{n}", later, later,
            technician_id=people[0], system=one_of("ignition", "brakes"), **more,
        )  # fmt: skip
        if n % 3 == 0:
            judge_return(record, first, second, one_of("same part", "unrelated"))
        _fit(record, first, one_of)
    yield record  # type: ignore[misc]
    record.close()


def _fit(record: ShopRecord, job_id: int, one_of: Callable[..., str]) -> None:
    rotor = kinds_of(record)["distributor-rotor"].dimension("bore")
    assert rotor is not None
    for _ in range(1 + (job_id % 4 == 0)):
        with record.deed("A pair") as deed:
            pair = deed.add(
                Pair,
                job_id=job_id,
                part_kind="distributor-rotor",
                supplier=one_of("North", " north ", "Mill", ""),
                origin=one_of("used", "reman", "new, other maker's"),
            )
        new = one_of("14.02", "15.30", "")
        if new:
            actions.write_readings(record, pair, rotor, "removed", "14.02")
            actions.write_readings(record, pair, rotor, "replacement", new)


@pytest.fixture(scope="module")
def week(record: ShopRecord) -> WeekFigures:
    return look_at_week(record, Week(2026, 46), kinds=kinds_of(record))


def _asked(record: ShopRecord, week: WeekFigures, by: By) -> tuple[GroupRate, ...]:
    kinds = kinds_of(record)
    with record.reading() as connection:
        some = read_counted_jobs(connection, by, AS_OF, since=week.year.first, part_kinds=kinds)
    return group_rates(some, by)


@pytest.mark.parametrize("by", TABLES)
def test_the_book_and_the_command_say_the_same(
    record: ShopRecord, week: WeekFigures, by: By
) -> None:
    sheet, name, named = TABLES[by]
    table = week_sheet(week, sheet).table(name)
    headers = [column.header for column in table.columns[named:]]
    rows = [dict(zip(headers, row[named:], strict=True)) for row in table.rows]
    asked = _asked(record, week, by)
    assert len(asked) >= 2

    def figures_of(row: dict[str, object]) -> tuple[object, ...]:
        wanted = ("Settled", "Comebacks", "Low", "Fewest by luck", "Read it as")
        return tuple(row[header] for header in wanted)

    said = sorted(map(repr, map(figures_of, rows)))
    assert said == sorted(
        repr(
            (
                *(g.settled, g.comebacks, g.low if g.note is None else None),
                *(None if g.luck_told is None else g.luck_told[0], g.read_as),
            )
        )
        for g in asked
    )


def test_by_people_the_same_too(record: ShopRecord, week: WeekFigures) -> None:
    table = week_sheet(week, "People").table("People")
    asked = [group for group in _asked(record, week, "technician") if group.settled >= 20]
    assert {row[1] for row in table.rows} == {"technician"}  # nobody is named for anything
    assert [(row[3], row[6], row[2]) for row in table.rows] == [
        (group.settled, group.comebacks, group.read_as) for group in asked
    ]


def test_every_row_opens_to_the_jobs_it_counts(week: WeekFigures) -> None:
    for sheet in ("Kinds of part", "Where from", "Symptoms", "Proof", "People"):
        for table in week_sheet(week, sheet).tables:
            assert len(table.behind) == len(table.rows)
            if "Settled" in [column.header for column in table.columns]:
                _counts_its_jobs(table)


def _counts_its_jobs(table: Table) -> None:
    for row, behind in zip(table.rows, table.behind, strict=True):
        by_header = dict(zip((column.header for column in table.columns), row, strict=True))
        settled, other = by_header["Settled"], by_header["Not settled"]
        assert isinstance(settled, int)
        assert isinstance(other, int)
        assert len(behind) == settled + other


def test_the_caution_stands_once_beneath_each_table_that_compares(week: WeekFigures) -> None:
    for sheet in ("Kinds of part", "Where from", "Symptoms", "Proof"):
        for table in week_sheet(week, sheet).tables:
            cautions = sum("compared at once" in note for note in table.notes)
            headers = [column.header for column in table.columns]
            limits = table.column("Fewest by luck") if "Fewest by luck" in headers else ()
            assert cautions <= 1  # rows too few to have limits are compared too
            assert cautions or sum(limit is not None for limit in limits) <= 1


def jobs(name: str, settled: int, back: int, **more: object) -> list[JobDone]:
    """Settled jobs, so many of which came back."""
    return [
        done(f"{name}-{n}", back_after=20 if n < back else None, **more) for n in range(settled)
    ]


def test_a_row_of_few_jobs_has_words_and_no_figure_that_looks_like_a_rate() -> None:
    some = [*jobs("A", 5, 2, system="brakes"), *jobs("B", 60, 3, system="ignition")]
    table = week_sheet(figures(some), "Symptoms").table("Systems")
    rows = {
        row[0]: dict(zip((c.header for c in table.columns), row, strict=True)) for row in table.rows
    }
    shares = ("Rate", "Low", "High", "Likely rate")
    assert [rows["Brakes"][header] for header in shares] == [None] * 4
    # Wilson's interval of 2 of 5: 11.8 % to 76.9 %.
    assert rows["Brakes"]["Read it as"] == "too few jobs to tell: anything from 12% to 77%"
    assert rows["Ignition"]["Rate"] == pytest.approx(0.05)


def test_what_an_alternator_came_back_as_agrees_with_its_comebacks() -> None:
    fitted = {"parts": (PartFitted("alternator"),)}
    settled, early = (
        done("A-1", 200, back_after=20, **fitted),
        done("A-2", 30, back_after=9, **fitted),
    )
    later = came(settled, "A-3", 20), came(early, "A-4", 9)
    alternator = kinds()["alternator"]._replace(name="alternator of the shelf")
    shop = replace(SHOP, kinds={"alternator": alternator})
    table = week_sheet(figures([settled, early], later, shop), "Kinds of part").table("KindsOfPart")
    [row] = table.rows
    named = dict(zip((column.header for column in table.columns), row, strict=True))
    assert (named["Comebacks"], named["Came back as"]) == (1, "1 same part; 1 too early for a rate")
    assert named["Kind of part"] == "alternator of the shelf"


def test_which_wider_work_stood_in_is_said_beneath() -> None:
    some = [
        *(done(f"A-{n}", system=f"system {n % 8}", technician="Ada") for n in range(80)),
        *(done(f"B-{n}", system=f"system {n % 8}", technician="Bo") for n in range(80)),
    ]
    notes = week_sheet(figures(some), "People").table("People").notes
    [held] = [note for note in notes if note.startswith("Held against:")]
    assert "0 of 160 jobs against the same work alone" in held
    assert "with all other work too (160)" in held


FITS = (PartFitted("distributor-rotor", verdict="fits"),)


def test_whether_comparing_pays_is_said_with_its_doubt() -> None:
    compared, others = jobs("A", 60, 2, parts=FITS), jobs("B", 60, 15)
    said = " ".join(does_it_pay(compared, others))
    # 15 of 60 lie between 15.8 % and 37.2 % (Wilson): as in the table, too far apart for a share.
    assert "2 of 60 settled jobs came back (3.3%). Nothing compared: 15 of 60." in said
    # Newcombe's interval of 2/60 - 15/60, statsmodels: -0.3418 to -0.0915.
    assert "34 fewer to 9 fewer" in said
    assert "log-rank" in said
    assert "no experiment" in said
    assert "Of the 60 jobs without a comparison 0 had a part fitted" in said


def test_a_difference_that_luck_makes_is_called_none() -> None:
    said = " ".join(does_it_pay(jobs("A", 45, 8, parts=FITS), jobs("B", 80, 6)))
    assert "does not show a difference" in said


def test_no_difference_is_called_impossible() -> None:
    said = " ".join(does_it_pay(jobs("A", 400, 0, parts=FITS), jobs("B", 400, 20)))
    assert "luck would part the two so far in fewer than 1 of 1,000 cases" in said


def test_a_symptom_that_was_never_caught_has_its_row() -> None:
    stall = {"symptoms": ("stall",), "counted": False, "cause_found": False, "correction": ""}
    some = [*jobs("N", 3, 0, **stall), *jobs("A", 2, 0, symptoms=("misfire",))]
    table = week_sheet(figures(some), "Symptoms").table("Symptoms")
    rows = {
        row[0]: dict(zip((c.header for c in table.columns), row, strict=True)) for row in table.rows
    }
    assert (rows["stall"]["Not caught"], rows["misfire"]["Not caught"]) == (3, 0)
    assert (rows["stall"]["Settled"], rows["stall"]["Read it as"]) == (0, "no job counted")
    place = list(rows).index("stall")
    assert table.behind_of["Not caught"](place) == ("N-0", "N-1", "N-2")


def test_a_lot_is_one_however_it_is_written() -> None:
    written = [("Harbour", "R-0316"), ("harbour ", " r-0316"), ("Mill", "R-0316"), ("", "R-0316")]
    some = [done(f"J-{n}", parts=(PartFitted("coil", "", *one),)) for n, one in enumerate(written)]
    lots = week_sheet(figures(some), "Where from").table("Lots")
    assert [row[:3] for row in lots.rows] == [
        ("Harbour", "R-0316", 2),
        ("Mill", "R-0316", 1),
        ("not said", "R-0316", 1),
    ]


def test_too_few_compared_say_nothing_of_comparing() -> None:
    said = does_it_pay(jobs("A", 19, 0, parts=FITS), jobs("B", 80, 30))
    assert said[0].startswith("Too few to tell: 19 settled jobs with a comparison")
    assert not any("fewer" in words for words in said)

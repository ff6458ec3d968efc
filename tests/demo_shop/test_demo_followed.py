"""The built demo tells how repairs were proved and what followed: read back from its record."""

from __future__ import annotations

from collections import Counter
from datetime import date

import pytest

from desktop_app.commands.opened_shop import symptom_names
from desktop_app.parts_compared.pair_view import judge
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.parts_compared.stored_pairs import drawer
from desktop_app.repair_jobs.proof_kept import ProofKept
from desktop_app.repair_jobs.proof_steps import STEPS
from desktop_app.repair_jobs.self_tests_compared import not_run, readings_at_odds
from desktop_app.repair_jobs.stored_proof import read_proof
from desktop_app.repair_jobs.stored_questions import odometer_still_asked
from desktop_app.repair_jobs.stored_reading import was_answered
from desktop_app.returns_watched.judging import Judging
from desktop_app.returns_watched.stored_customers_asked import read_answers
from desktop_app.returns_watched.stored_judging import read_judging
from desktop_app.returns_watched.stored_money_owed import money_still_owed, owed_for_job
from desktop_app.returns_watched.stored_told import read_told_rows
from desktop_app.returns_watched.stored_windows import read_kind_windows
from desktop_app.returns_watched.waiting import waits_too_long
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.weekly_report.actions import look_at_week
from desktop_app.weekly_report.figures import WeekFigures
from desktop_app.weekly_report.pages import SHEET_NAMES, week_sheet
from desktop_app.weekly_report.week import week_of
from tests.demo_shop.built_demo import NOW, Built

KINDS = load_kinds([resource_path("part_kinds")]).kinds


@pytest.fixture(scope="module")
def figures(built: Built) -> WeekFigures:
    """The week before, as the owner looks at it on Monday."""
    names = symptom_names()
    return look_at_week(built.record, week_of(NOW.date()).moved(-1), names, KINDS)


def proof(built: Built, key: str) -> ProofKept:
    with built.record.reading() as connection:
        return read_proof(connection, built.jobs[key].id)


def judging(built: Built, then: str, now: str) -> Judging:
    with built.record.reading() as connection:
        found = read_judging(connection, built.jobs[then].id, built.jobs[now].id)
    assert found is not None
    return found


def test_it_is_told_how_often_the_fault_came(built: Built) -> None:
    every = proof(built, "9a").every
    assert every is not None
    assert (every.number, every.unit) == (40, "mi")
    plain = [key for key, view in built.jobs.items() if key == view.number]
    units = Counter(one.unit for key in plain if (one := proof(built, key).every))
    assert set(units) == {"mi", "days", "drives"}


def test_conditions_are_met_or_not_and_the_steps_ticked(built: Built) -> None:
    assert proof(built, "1").conditions == {"damp": True, "rain": True, "pulling": True}
    assert proof(built, "13").conditions == {"pulling": True, "passengers": False}
    assert set(proof(built, "17").steps) == {"saved", "repaired", "cleared", "noted"}
    steps = proof(built, "17-back").steps
    assert len(steps) == 7
    moments = [steps[step.id] for step in STEPS if step.id in steps]
    assert moments == sorted(moments)
    for key, view in built.jobs.items():
        if view.proof_level == 4:
            assert proof(built, key).conditions, key


def test_the_cars_own_tests_are_read_before_and_after(built: Built) -> None:
    leak = proof(built, "17")
    assert "evaporative" in not_run(leak.after)
    assert "evaporative" not in not_run(proof(built, "17-back").after)
    assert "misfire" not in not_run(proof(built, "19").after)
    assert "catalyst" in not_run(proof(built, "9a").after)
    for key, view in built.jobs.items():
        kept = proof(built, key)
        stored = Counter(code.stage for code in view.codes if code.kind == "stored")
        assert readings_at_odds(kept.found, kept.after, stored) == (), key


def test_a_proof_that_failed_here_is_no_return(built: Built) -> None:
    (caught,) = proof(built, "6").caught
    assert caught.caught_at < (built.jobs["6"].left_at or "")
    assert "bearing" in caught.words
    assert built.jobs["6"].proof_level == 3
    assert not any(row.earlier == built.number("6") and row.is_comeback for row in built.returns)
    provoked = proof(built, "15").provoked
    assert provoked is not None
    assert (provoked.before, provoked.after) == (14, 0)


def test_odometers_are_told_estimated_and_one_kept_as_typed(built: Built) -> None:
    assert built.jobs["17-seen"].odometer_source == "told"
    assert built.jobs["3-seen"].odometer_source == "estimated"
    swapped = built.jobs["5-seen"]
    assert swapped.odometer_in == 38_400
    with built.record.reading() as connection:
        about = f"visit:{swapped.visit_id}:odometer"
        asked = connection.exec_driver_sql(
            "SELECT question FROM answered WHERE about = ?", (about,)
        ).scalar_one()
        assert was_answered(connection, about, asked)
        assert odometer_still_asked(connection, swapped, NOW.date()) is None
    assert "83,400 mi would fit (two digits swapped)" in asked


def test_some_kinds_and_two_jobs_have_a_window_of_their_own(built: Built) -> None:
    with built.record.reading() as connection:
        promises = read_kind_windows(connection)
        rows = connection.exec_driver_sql(
            "SELECT window_from, count(*) FROM job WHERE left_at IS NOT NULL GROUP BY window_from"
        )
        whose = dict(tuple(row) for row in rows)
        rebuilt = connection.exec_driver_sql(
            "SELECT window_days, window_miles, window_months FROM job WHERE number = ?",
            (built.number("12"),),
        ).one()
        battery = connection.exec_driver_sql(
            "SELECT window_months FROM job WHERE number = ?", (built.number("battery"),)
        ).scalar()
    assert promises["battery"].months == 24
    assert promises["alternator"].in_words() == (
        "12 calendar months or 12,000 miles, whichever ends first"
    )
    assert tuple(rebuilt) == (365, 12_000, 12)
    assert battery == 24
    assert whose["job"] == 2
    assert whose["part kind battery"] > 1
    assert whose["part kind alternator"] > 1
    assert None not in whose


def test_a_judgement_has_its_kinds_evidence_views_and_a_second_look(built: Built) -> None:
    hose = judging(built, "9b", "9b-back")
    assert [kind.value for kind in hose.kinds()] == ["same symptom", "same part", "from our hands"]
    assert hose.helping == ("left-unproven",)
    assert hose.evidence
    assert hose.first_view
    assert (hose.first_by, hose.judged_by) == ("Sanne", "Tuuli")
    assert hose.second_look.startswith("Odile, ")
    revised = judging(built, "13", "13-back")
    assert [one.judgement for one in revised.decisions] == ["same part", "same symptom"]


def test_nobody_judges_his_own_work_alone(built: Built) -> None:
    with built.record.reading() as connection:
        for row in built.returns:
            if row.judgement is not None:
                found = read_judging(connection, row.earlier_id, row.later_id)
                assert found is not None
                assert not (found.own_job_question() and row.is_comeback), row.later


def test_costs_are_split_and_some_money_came_back(built: Built) -> None:
    cost = judging(built, "12", "12-back").cost
    assert (cost.unbilled_hours, cost.tow_cents, cost.loan_car_cents) == (1.5, 12_000, 27_000)
    assert cost.sublet_cents == cost.recovered_cents == 64_000
    assert judging(built, "10-back", "10-again").cost.goodwill_cents == 4_000
    assert judging(built, "14", "14-back").cost.cost_cents == 5_400


def test_one_change_is_late_and_others_are_done(built: Built, figures: WeekFigures) -> None:
    changes = [one.change for one in figures.year.returns if one.change.is_said]
    assert len(changes) >= 8
    assert [one.words for one in changes if one.is_late(figures.as_of)] == [
        "Plugs are measured whenever a coil is renewed."
    ]
    assert all(one.by and one.due for one in changes)
    assert any(one.check_on and one.check_on <= figures.as_of for one in changes)
    assert sum(one.done_on is not None for one in changes) >= 5


def test_some_returns_wait_and_one_waits_too_long(built: Built) -> None:
    waiting = [row for row in built.returns if row.waits]
    assert 2 <= len(waiting) <= 6
    assert any(waits_too_long(row, NOW.date()) for row in waiting)


def test_a_cause_that_is_not_ours_leaves_the_rate(built: Built) -> None:
    outside = [row for row in built.returns if row.judgement and row.judgement.is_comeback]
    outside = [row for row in outside if row.cause_class == "other-use"]
    assert outside
    assert not any(row.is_comeback for row in outside)


def test_customers_were_asked_and_answered_in_every_way(built: Built) -> None:
    with built.record.reading() as connection:
        answers = read_answers(connection, None)
    said = Counter(one.answer.value for some in answers.values() for one in some)
    assert set(said) == {"fine", "same trouble", "other trouble", "not reached", "car is gone"}
    assert said.total() >= 30
    days = [one.on for some in answers.values() for one in some]
    assert max(days) <= NOW.date()
    shakes = answers[built.jobs["10-back"].id][0]
    assert shakes.on < date.fromisoformat(built.jobs["10-again"].came_on)


def test_one_return_that_was_only_told_is_judged_and_one_waits(
    built: Built, figures: WeekFigures
) -> None:
    with built.record.reading() as connection:
        told = read_told_rows(connection, None, NOW.date())
    assert {(row.earlier, row.heard_by, row.state_words, row.dangerous) for row in told} == {
        (built.number("19-back"), "paper", "same symptom", True),
        (built.number("20"), "told", "not judged", None),
    }
    assert {row.is_comeback for row in told} == {True, False}
    chains = week_sheet(figures, "Chains").table("Chains").column("Jobs in turn")
    turn = f"{built.number('19')} → {built.number('19-back')} → on paper "
    assert any(str(one).startswith(turn) for one in chains)


def test_suppliers_owe_cores_and_claims_and_paid_some(built: Built) -> None:
    with built.record.reading() as connection:
        still = money_still_owed(connection)
        alternator = owed_for_job(connection, built.jobs["5"].id)
    assert {(one.what.value, one.state.value) for one in still} == {
        ("core", "open"),
        ("core", "asked"),
        ("claim", "asked"),
    }
    assert any(one.amount_cents is None for one in still)
    assert [one.state.value for one in alternator] == ["paid", "paid", "refused"]


def test_plain_parts_are_measured_whole_by_half_or_not_at_all(built: Built) -> None:
    with built.record.reading() as connection:
        tools = drawer(connection)
    plain = [
        pair
        for key, pairs in built.pairs.items()
        if key == built.jobs[key].number
        for pair in pairs
    ]
    found = Counter(
        judge(pair, KINDS[pair.part_kind], tools).verdict if pair.typed else "not measured"
        for pair in plain
    )
    assert set(found) == {"fits", "not enough measured", "not measured"}
    assert found["fits"] > 40
    lots = Counter(pair.lot for pair in plain if pair.lot)
    assert max(lots.values()) > 1


def test_plain_jobs_are_proved_to_every_level(built: Built) -> None:
    levels = Counter(
        view.proof_level
        for key, view in built.jobs.items()
        if key == view.number and view.cause_found
    )
    assert set(levels) == {0, 1, 2, 3, 4}
    assert min(levels.values()) > 5


@pytest.mark.parametrize("name", SHEET_NAMES)
def test_every_sheet_of_last_week_has_rows(figures: WeekFigures, name: str) -> None:
    sheet = week_sheet(figures, name)
    assert sheet.tables or sheet.totals
    for table in sheet.tables:
        assert table.rows or table.name == "Noticed", table.name  # nothing need stand out


def test_last_week_has_a_comeback_with_its_cost(figures: WeekFigures) -> None:
    came = [one for one in figures.year.returns if one.row.came_on >= figures.week.monday]
    counted = [one for one in came if one.row.is_comeback]
    assert counted
    assert all(one.cost is not None for one in counted)

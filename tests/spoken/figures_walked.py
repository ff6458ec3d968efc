"""Every place with a decimal comma, in another language; run by test_figures_walked.py.

No figure keeps the point, and each field reads what it shows as what is kept: nothing changes.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from pytestqt.qtbot import QtBot
from sqlalchemy import text as sql

from desktop_app.figures_shown import GROUP
from desktop_app.parts_compared import actions as part_actions
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.odometer_actions import change_odometer
from desktop_app.repair_jobs.proof_actions import say_fault_every, write_distance, write_provoked
from desktop_app.repair_jobs.provocation import Provoked
from desktop_app.returns_watched.window_actions import change_window
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.place_names import JOB
from tests.parts_compared.sheet_story import READINGS, kinds
from tests.shop_stories.counter import Counter
from tests.shop_stories.full_shop import fill
from tests.shop_stories.one_job import one_job
from tests.spoken.walked_through import PLACES, go, texts

POINT = re.compile(r"\d\.\d")
# What is no figure of ours: an engine and a thread as they are called, a version.
NO_FIGURE = re.compile(r"\d\.\d(?: litros|-litre)|M\d+x\d\.\d+|\d+\.\d+\.\d+")
LONG = 41250


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop") as counter:
        fill(counter)
        figures_everywhere(counter)
        yield counter


def figures_everywhere(at: Counter) -> None:
    """Write a figure with a part, or with more than three digits, wherever the job takes one."""
    desk, rotor = at.program.desk, kinds()["distributor-rotor"]
    assert desk is not None
    for name, typed in READINGS.items():
        dimension = rotor.dimension(name)
        assert dimension is not None
        for side, text in zip(("removed", "replacement"), typed, strict=True):
            desk.do(part_actions.write_readings, 1, dimension, side, text)
    desk.do(part_actions.enter_limits, 1, "resistance", 1.5, 5000.25, "letter")
    desk.do(change_odometer, 1, LONG, "")
    desk.do(actions.write_hours, 1, 2.75, unbilled=False)
    desk.do(actions.write_hours, 1, 0.5, unbilled=True)
    desk.do(actions.write_price, 1, 123450)
    desk.do(write_distance, 1, 1031.5)
    desk.do(say_fault_every, 1, 0.5, "mi")
    desk.do(write_provoked, 1, Provoked(37, 10.5, 0, 12.25))
    desk.do(change_window, 1, days=90, months=None, miles=12000, rule="first")
    desk.do(change_rule, "hour_cost_cents", 1234_56)


@pytest.mark.parametrize("place", PLACES)
def test_figures_have_a_comma_and_are_read_again(at: Counter, place: str) -> None:
    go(at, place)
    assert "\n".join(sorted(set(points(at)))) == ""
    desk, shown = at.program.desk, figures_in_fields(at)
    assert desk is not None
    rules, before = desk.rules, entries(at)
    for field in fields(at):
        field._save(field.text())
    at.quiet()
    assert figures_in_fields(at) == shown
    assert desk.rules == rules
    if not any(field.property("rule") for field in fields(at)):
        assert entries(at) == before
    if place == JOB:
        kept = {
            f"41{GROUP}250",
            f"12{GROUP}000",
            f"1{GROUP}234,50",
            f"1{GROUP}031,5",
            "2,75",
            "0,5",
        }
        assert kept <= {*shown.values()}


def points(at: Counter) -> Iterator[str]:
    """The texts in which a figure has a point, but for what was typed."""
    typed = {field.text() for field in at.window.findChildren(LineField)}
    for sort, text in texts(at.window):
        if text not in typed and POINT.search(NO_FIGURE.sub("", text)):
            yield f"{sort}: {text}"


def fields(at: Counter) -> list[LineField]:
    """The fields with a figure that is kept."""
    every = at.window.findChildren(LineField)
    return [one for one in every if re.search(r"\d", one.text()) and not one.makes_rows]


def figures_in_fields(at: Counter) -> dict[str, str]:
    """What the fields with a figure show, by their names."""
    return {field.accessibleName(): field.text() for field in fields(at)}


def entries(at: Counter) -> int:
    """How many entries the history has."""
    desk = at.program.desk
    assert desk is not None
    counted: int = desk.ask(
        lambda connection: connection.execute(sql("select count(*) from history")).scalar_one()
    )
    return counted

"""What makes places full: returns, open windows, instruments, readings, ticked steps of a proof."""

from __future__ import annotations

from datetime import UTC, datetime

from desktop_app.parts_compared import actions
from desktop_app.repair_jobs.actions import write_code
from desktop_app.repair_jobs.proof_actions import tick_step
from tests.parts_compared.sheet_story import kinds
from tests.shop_stories.counter import Counter
from tests.watched_shop import a_week_of_returns

TODAY = datetime(2026, 11, 16, 8, 0, tzinfo=UTC)  # the Monday after the week of returns
INSTRUMENTS = ("calliper", "depth rod", "pressure gauge")
THREE = "26.90; 26.91; 26.90"


def fill(at: Counter) -> None:
    """Fill the shop of `one_job` with what stands in one that has worked for a while."""
    desk = at.program.desk
    assert desk is not None
    for name in INSTRUMENTS:
        desk.do(actions.keep_instrument, name, "mm", 0.01, 0.03, "2025-01-14")
    rotor = kinds()["distributor-rotor"]
    measured = [one for one in rotor.dimensions if one.unit == "mm"]
    for side in ("removed", "replacement"):
        desk.do(actions.write_readings, 1, measured[0], side, THREE, "calliper")
    desk.do(write_code, 1, "P0011", "stored", "found")  # its meaning is a long one
    for step in ("saved", "pending-read"):
        desk.do(tick_step, 1, step, done=True)
    a_week_of_returns(desk.record)

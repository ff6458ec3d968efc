"""A shop changes a part kind meanwhile: an open job follows, and so does the search."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton

from desktop_app.commands.shop_place import kinds_of
from desktop_app.parts_compared.actions import lay_side_by_side, write_readings
from desktop_app.parts_compared.kind_actions import change_own_kind, copy_kind, keep_own_kind
from desktop_app.parts_compared.part_kinds.own_kind import with_change
from desktop_app.shop_window.place_names import ASK
from tests.screens.bench_desk import new_job
from tests.shop_stories.counter import sitting

NOW = datetime(2026, 11, 18, 10, 30, tzinfo=UTC)


def test_an_open_job_follows_a_changed_kind(tmp_path: Path, qtbot: Any) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        desk = counter.program.desk
        job = new_job(desk.record)
        rotor = kinds_of()["distributor-rotor"]
        pair = lay_side_by_side(desk.record, job, rotor.id).made
        bore = rotor.dimension("bore")
        assert pair is not None
        assert bore is not None
        for side in ("removed", "replacement"):
            write_readings(desk.record, pair, bore, side, "12.70; 12.70")
        places, window = desk.parent(), counter.program.window
        places.open_job(job)
        assert "verdict on bore diameter: same" in _names(window)
        window.go_to("Part Kinds")
        desk.do(keep_own_kind, rotor)
        desk.do(change_own_kind, rotor, lambda kept: with_change(kept, bore, allowed=(-0.01, 0.01)))
        window.go_to("Job")
        assert "verdict on bore diameter: too close to tell" in _names(window)


def test_a_search_knows_a_kind_that_was_named_just_now(tmp_path: Path, qtbot: Any) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        desk = counter.program.desk
        new_job(desk.record)
        counter.window.go_to(ASK)

        def read_as() -> set[str]:
            buttons = counter.page.findChildren(QPushButton)
            return {one.accessibleName() for one in buttons if one.isVisible()}

        counter.type_into(QLineEdit, "Ask the old jobs", "swirl arm bent")
        qtbot.waitUntil(lambda: "Take out bent" in read_as())
        assert "Take out part: Swirl arm" not in read_as()
        desk.do(copy_kind, kinds_of()["distributor-rotor"], "Swirl arm", frozenset())
        counter.type_into(QLineEdit, "Ask the old jobs", "swirl arm, bent")
        qtbot.waitUntil(lambda: "Take out part: Swirl arm" in read_as(), timeout=5000)


def _names(window: Any) -> set[str]:
    labels = window.findChildren(QLabel)
    return {one.accessibleName() for one in labels if one.isVisibleTo(window)}

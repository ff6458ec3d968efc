"""A rotor on the bench card: measured in two photos, compared, laid over each other, printed."""

from __future__ import annotations

import re
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton

from desktop_app.commands.shop_place import kinds_of
from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.screen.bench_stage import BenchStage
from desktop_app.parts_compared.actions import lay_side_by_side, show_in_pair
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.stored_pairs import read_pair
from desktop_app.parts_compared.stored_sheet import read_sheet
from tests.part_photos.rendered_bench import Floats, Solid, Taken, by_chance, render
from tests.parts_compared.sheet_story import words_in
from tests.screens.bench_desk import new_job
from tests.screens.marking import plate
from tests.shop_stories.counter import Counter, sitting
from tests.shop_stories.names_told import nameless

NOW = datetime(2026, 11, 18, 10, 30, tzinfo=UTC)
HEIGHT = 5.0
PROTRUSION = {"removed": 3.9, "replacement": 4.9}  # mm
SEED = {"removed": 7, "replacement": 2}


def outline(protrusion: float) -> Floats:
    """A rotor's arm from above: the tip stands out of the body at x = 120 mm."""
    end = 120 + protrusion
    arm = [(80, 125), (120, 125), (120, 136), (end, 136), (end, 144), (120, 144), (120, 155)]
    return np.array([*arm, (95, 155), (80, 148)], float)


def taken(side: str) -> Taken:
    """Each part was photographed from somewhere else."""
    return by_chance(SEED[side], (105, 140), 2000)


@cache
def photo(side: str) -> bytes:
    """The photo of one part on the card."""
    solid = Solid(outline(PROTRUSION[side]), HEIGHT, 0.10, 0.06)
    return render(bench_card("a4"), [solid], taken(side), SEED[side])


def pixel(side: str, x: float, y: float) -> tuple[float, float]:
    """Where a point of the rotor's top is in its photo."""
    seen = taken(side).pixels(np.array([[x, y, HEIGHT]]))[0]
    return float(seen[0]), float(seen[1])


def test_the_protrusion_of_both_rotors_by_photo(tmp_path: Path, qtbot: Any) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        job, pair = photographed_pair(counter)
        counter.program.desk.parent().open_job(job)
        counter.press("Photo bench: measure in these photos")
        counter.quiet()
        bench = counter.page
        assert isinstance(bench, PhotoBench)
        assert nameless(counter.window) == []
        assert counter.reads("Card seen: 20 markers") or counter.reads("Card seen: 19 markers")
        for _ in range(5):
            counter.press("Enlarge (+)")
        for side in ("removed", "replacement"):
            measure_protrusion(counter, bench, side)
        counter.picture(tmp_path, "marks")
        counter.press("Differences")
        counter.quiet()
        counter.picture(tmp_path, "differences")
        said = " ".join(one.text() for one in bench.findChildren(QLabel) if one.isVisible())
        more = re.search(r"the new part reaches ([0-9.]+) mm \(± ([0-9.]+)\) further", said)
        assert more is not None, said
        assert abs(float(more[1]) - 1.0) < float(more[2])
        counter.press("Show on the sheet")
        counter.press("← Back to the pair")
        assert counter.window.here() == "Job"
        record = counter.program.desk.record
        with record.reading() as connection:
            readings = read_pair(connection, pair).readings
        values = {one.side: float(one.values[0]) for one in readings}
        for side, true in PROTRUSION.items():
            assert abs(values[side] - true) < 0.30
        sheet = read_sheet(record, job, kinds_of(record))
        said = words_in(sheet_bytes(sheet))
        assert "Tip protrusion past the body" in said
        assert "the new part reaches" in said


def test_what_the_bench_did_not_accept_is_not_lost_with_another_pair(
    tmp_path: Path, qtbot: Any
) -> None:
    with sitting(qtbot, tmp_path / "shop", NOW) as counter:
        desk = counter.program.desk
        assert desk is not None
        job = new_job(desk.record)
        for kind in ("distributor-rotor", "distributor-cap"):
            plain_photo(counter, job, kind)
        desk.parent().open_job(job)
        to_bench(counter, "distributor rotor")
        bench = counter.page
        assert isinstance(bench, PhotoBench)
        counter.press("Draw: Length")
        for at in ((100.0, 150.0), (299.0, 150.0)):
            click(counter, bench.stages()["removed"], at)
        counter.type_into(QLineEdit, "Height above the card", "12 mmm", enter=True)
        counter.press("Draw: Length")
        click(counter, bench.stages()["removed"], (20.0, 20.0))  # no mark is chosen any more
        counter.press("← Back to the pair")
        to_bench(counter, "distributor cap")
        assert counter.page is bench
        assert counter.reads("“Height above the card” on the bench is not accepted.")
        assert counter.find(QLineEdit, "Height above the card").text() == "12 mmm"
        counter.press("← Back to the pair")
        to_bench(counter, "distributor rotor")
        assert counter.find(QLineEdit, "Height above the card").text() == "12 mmm"
        counter.type_into(QLineEdit, "Height above the card", "12", enter=True)
        counter.press("← Back to the pair")
        to_bench(counter, "distributor cap")
        assert counter.page is not bench
        assert counter.reads("No mark yet.")


def to_bench(counter: Counter, kind: str) -> None:
    counter.press(f"Photo bench: measure in these photos, {kind}")
    counter.quiet()


def plain_photo(counter: Counter, job: int, kind: str) -> None:
    """Lay a pair side by side and put a plain photo to its removed part."""
    desk = counter.program.desk
    assert desk is not None
    pair = lay_side_by_side(desk.record, job, kind).made
    assert pair is not None
    shift = 0 if kind == "distributor-rotor" else 9
    came = take_in(desk.record, Arrival(f"{kind}.png", content=plate(shift)))
    made = add_photos(desk.record, job, [came]).made
    assert made is not None
    show_in_pair(desk.record, pair, [made], "removed", kinds_of()[kind].views[0])


def photographed_pair(counter: Counter) -> tuple[int, int]:
    """Write up a car, lay old and new side by side and put a photo to each."""
    desk = counter.program.desk
    assert desk is not None
    job = new_job(desk.record)
    pair = lay_side_by_side(desk.record, job, "distributor-rotor").made
    assert pair is not None
    for side in ("removed", "replacement"):
        came = take_in(desk.record, Arrival(f"{side}.jpg", content=photo(side)))
        made = add_photos(desk.record, job, [came]).made
        assert made is not None
        view = kinds_of()["distributor-rotor"].views[0]
        show_in_pair(desk.record, pair, [made], side, view)
    return job, pair


def measure_protrusion(counter: Counter, bench: PhotoBench, side: str) -> None:
    """Point to line: the tip's end, then the edge of the body; its height; take it as reading."""
    stage = bench.stages()[side]
    if not counter.find(QPushButton, "Draw: Point to line").isChecked():
        counter.press("Draw: Point to line")  # a tool stays in hand until it is put down
    end = 120 + PROTRUSION[side]
    for x, y in ((end, 140), (120, 129), (120, 151)):
        click(counter, stage, pixel(side, x, y))
    counter.quiet()
    counter.type_into(QLineEdit, "Height above the card", "5", enter=True)
    counter.type_into(QLineEdit, "Height plus or minus", "0.5", enter=True)
    shown = (one for one in bench.findChildren(QPushButton) if one.isVisible())
    use = next(one for one in shown if one.text().startswith("Use as the reading of"))
    use.menu().aboutToShow.emit()
    action = next(one for one in use.menu().actions() if "protrusion" in one.text())
    action.trigger()
    counter.quiet()


def click(counter: Counter, stage: BenchStage, at: tuple[float, float]) -> None:
    spot = stage.seen_at(at).toPoint()
    counter.bot.mouseClick(stage.viewport(), Qt.MouseButton.LeftButton, pos=spot)

"""Two photos on a card, laid on each other: what is shown is what is kept, also after undo."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.mark_actions import keep_scale
from desktop_app.part_photos.screen.bench_overlay_stage import OverlayStage
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.part_photos.stored_scales import scale_of_photo
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos
from tests.part_photos.overlay_scenes import Pinhole, Prism, photo, rotor
from tests.screens.bench_desk import words_of
from tests.screens.marking import open_bench, press
from tests.screens.photo_desk import named

EYES = (
    Pinhole((95.0, 150.0, 330.0), focal_px=1050.0, size=(1400, 1050)),
    Pinhole((125.0, 100.0, 340.0), roll=0.5, focal_px=1050.0, size=(1400, 1050)),
)
PARTS = (Prism(rotor(4.0), 3.0, 20.0), Prism(rotor(6.0), 3.0, 60.0, (110.0, 125.0)))
HEIGHT = "Height of the outline above the card"


@cache
def pictures() -> tuple[bytes, bytes]:
    """A worn rotor, and a new one whose tip is 2 mm longer, each on the card."""
    seen = [photo(eye, part, card=bench_card("a4")) for eye, part in zip(EYES, PARTS, strict=True)]
    old, new = (encoded(Image.fromarray(one.rgb), "PNG") for one in seen)
    return old, new


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench in its differences, the outline 3 mm above the card."""
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *pictures())
    settled(qtbot, desk)
    press(qtbot, bench, "Differences")
    settled(qtbot, desk)
    say_height(qtbot, desk, bench, "3")
    return bench


def settled(qtbot: QtBot, desk: Desk) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=30_000)


def say_height(qtbot: QtBot, desk: Desk, bench: PhotoBench, text: str) -> None:
    """Type how high the outline lies, and wait for what comes of it."""
    field = named(bench, QLineEdit, HEIGHT)
    field.clear()
    qtbot.keyClicks(field, text)
    qtbot.keyClick(field, Qt.Key.Key_Return)
    settled(qtbot, desk)


def kept(desk: Desk, bench: PhotoBench) -> KeptOverlay | None:
    """How the photos lie on each other, as the record has it."""
    ids = [one.photo().id for one in bench.stages().values()]  # type: ignore[union-attr]
    found = desk.ask(overlay_of, *ids)
    assert found is None or isinstance(found, KeptOverlay)
    return found


def left_out(bench: PhotoBench) -> list[str]:
    """What of the outline was not compared, as the panel tells it."""
    return [line for line in words_of(bench).split("\n") if "of the outline was" in line]


def said(bench: PhotoBench) -> list[str]:
    """The differences that the panel tells in words."""
    return [line for line in words_of(bench).split("\n") if "the new part reaches" in line]


def test_after_undo_the_differences_are_those_of_what_is_kept_again(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    at_three = said(bench)
    assert at_three
    say_height(qtbot, desk, bench, "30")
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == 30.0
    assert said(bench) != at_three
    desk.undo()
    settled(qtbot, desk)
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == 3.0
    assert named(bench, QLineEdit, HEIGHT).text() == "3"
    assert said(bench) == at_three
    desk.redo()
    settled(qtbot, desk)
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == 30.0


def test_another_scale_takes_the_sizes_away_that_rested_on_the_old_one(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    before = said(bench)
    assert before
    shown = bench.stages()["removed"].photo()
    assert shown is not None
    there = desk.ask(scale_of_photo, shown.id)
    assert isinstance(there.scale, CardScale)
    larger = there.scale.theta + np.array([0.05, *[0.0] * 10])
    assert desk.do(keep_scale, shown.id, replace(there.scale, theta=larger), None, 1.0, None)
    settled(qtbot, desk)
    assert not said(bench)
    assert "Lay them on each other again" in words_of(bench)
    press(qtbot, bench, "Show on the sheet: not said")
    settled(qtbot, desk)
    bench.came_here()
    assert "Where the parts differ is not shown" in words_of(bench)
    assert "seen alone: removed part" in words_of(bench)
    assert "hatched" not in words_of(bench)
    desk.undo()
    desk.undo()
    settled(qtbot, desk)
    assert said(bench) == before
    for words in ("solid line: removed part", "dashed line: replacement", "hatched: they differ"):
        assert words in words_of(bench)
    assert "Say the height" not in words_of(bench)
    desk.undo()  # the height
    settled(qtbot, desk)
    assert "Say the height" in words_of(bench)
    assert left_out(bench)
    desk.undo()  # the first laying
    settled(qtbot, desk)
    assert kept(desk, bench) is None
    assert not said(bench)
    assert "The photos don't lie on each other any more." in words_of(bench)


def test_the_part_fills_the_view_and_its_height_follows_the_shops_unit(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    stage = bench.findChild(OverlayStage)
    assert stage is not None
    assert stage.loupe().zoom > 2
    middle = EYES[0].to_pixels(PARTS[0].laid(np.zeros((1, 2))), 3.0)[0]
    width, height = EYES[0].size
    assert (stage.loupe().x, stage.loupe().y) == pytest.approx(
        (middle[0] / width, middle[1] / height), abs=0.08
    )
    field = named(bench, QLineEdit, HEIGHT)
    assert field.text() == "3"
    desk.do(change_rule, "length_unit", "inch")
    assert float(field.text()) == pytest.approx(3 / 25.4, abs=1e-5)
    assert "in" in words_of(bench).split("\n")
    say_height(qtbot, desk, bench, "0.2")
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == pytest.approx(5.08)


def test_a_height_that_is_half_typed_keeps_its_unit_and_nought_is_refused(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    field = named(bench, QLineEdit, HEIGHT)
    for typed, stays in (("12 m", "12 m"), ("12", "12 mm")):
        field.clear()
        qtbot.keyClicks(field, typed)
        desk.do(change_rule, "length_unit", "inch")
        assert field.text() == stays
        desk.do(change_rule, "length_unit", "mm")
    say_height(qtbot, desk, bench, "3")
    said_before = said(bench)
    say_height(qtbot, desk, bench, "0")
    assert field.text() == "0"
    bench.came_here()
    assert "no part is 0 high" in words_of(bench)
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == 3.0
    assert said(bench) == said_before
    press(qtbot, bench, "Lay them on each other again")
    settled(qtbot, desk)
    there = kept(desk, bench)
    assert there is not None
    assert there.height_mm == 3.0


def test_a_shop_of_inches_reads_how_far_the_outlines_lie_apart_in_inches(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    assert "mm apart" in words_of(bench)
    desk.do(change_rule, "length_unit", "inch")
    assert "mm apart" not in words_of(bench)
    assert "in apart" in words_of(bench)
    field = named(bench, QLineEdit, HEIGHT)
    assert field.fontMetrics().horizontalAdvance(field.text()) < field.width() - 12

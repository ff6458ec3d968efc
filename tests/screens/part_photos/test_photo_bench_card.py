"""The whole errand of the bench: a card in the photo, a size with its doubt, what is different."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import cache, partial
from typing import Any

import numpy as np
import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.card_actions import note_printed_card, note_ruler
from desktop_app.part_photos.mark_actions import draw_mark
from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.overlay.align import align
from desktop_app.part_photos.screen import bench_laying
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import PhotoScale
from desktop_app.part_photos.stored_marks import KeptOverlay, overlay_of
from desktop_app.part_photos.stored_scales import scale_of_photo
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.tables import Kept
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos
from tests.part_photos.overlay_scenes import Pinhole, Prism, photo, rotor
from tests.screens.bench_desk import words_of
from tests.screens.marking import click, give_scale, marks_kept, old_stage, open_bench, press
from tests.screens.photo_desk import named

EYES = (
    Pinhole((95.0, 150.0, 330.0), focal_px=1050.0, size=(1400, 1050)),
    Pinhole((125.0, 100.0, 340.0), roll=0.5, focal_px=1050.0, size=(1400, 1050)),
)
FLAT = "Say the height"
PARTS = (Prism(rotor(4.0), 3.0, 20.0), Prism(rotor(6.0), 3.0, 60.0, (110.0, 125.0)))


@cache
def pictures() -> tuple[bytes, bytes]:
    """A worn rotor, and a new one whose tip is 2 mm longer, each on the card."""
    seen = [photo(eye, part, card=bench_card("a4")) for eye, part in zip(EYES, PARTS, strict=True)]
    old, new = (encoded(Image.fromarray(one.rgb), "PNG") for one in seen)
    return old, new


def settled(qtbot: QtBot, desk: Desk) -> None:
    """Wait until nothing runs beside the window."""
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=30_000)


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench with both photos; the shop has noted its card."""
    assert desk.do(note_printed_card, bench_card("a4"))
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *pictures())
    settled(qtbot, desk)
    return bench


def test_the_card_gives_a_size_whose_doubt_holds_the_truth_and_the_overlay_shows_the_wear(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    assert words_of(bench).count("Card seen: ") == 2
    tip, back = PARTS[0].laid(np.array([[rotor(4.0)[:, 0].max(), 0.0], [-8.0, 0.0]]))
    press(qtbot, bench, "Snap to the edge: not said")
    press(qtbot, bench, "Draw: Length")
    ends = EYES[0].to_pixels(np.array([tip, back]), 3.0)
    click(qtbot, old_stage(bench), *((float(x), float(y)) for x, y in ends))
    settled(qtbot, desk)
    height = named(bench, QLineEdit, "Height above the card")
    qtbot.keyClicks(height, "3")
    qtbot.keyClick(height, Qt.Key.Key_Return)
    mark = marks_kept(desk, bench)[0]
    assert mark.value is not None
    assert mark.expanded_u is not None
    assert abs(mark.value - float(np.hypot(*(tip - back)))) < mark.expanded_u
    press(qtbot, bench, "Differences")
    assert named(bench, QLineEdit, "Height of the outline above the card").text() == "3"
    settled(qtbot, desk)
    found = re.search(r"reaches (\d\.\d\d) mm \(± (\d\.\d\d)\) further", words_of(bench))
    assert found is not None
    assert abs(float(found[1]) - 2.0) < float(found[2])


def test_the_overlay_asks_for_the_height_and_says_what_comes_of_none(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    height = named(bench, QLineEdit, "Height of the outline above the card")
    assert not height.isVisible()
    press(qtbot, bench, "Differences")
    settled(qtbot, desk)
    assert height.isVisible()
    assert FLAT in words_of(bench)
    assert kept_height(desk, bench) is None
    qtbot.keyClicks(height, "0.3 cm")
    qtbot.keyClick(height, Qt.Key.Key_Return)
    assert "can't be understood" in words_of(bench)
    height.clear()
    qtbot.keyClicks(height, "3")
    qtbot.keyClick(height, Qt.Key.Key_Return)
    settled(qtbot, desk)
    assert kept_height(desk, bench) == 3.0
    assert FLAT not in words_of(bench)


def kept_height(desk: Desk, bench: PhotoBench) -> float | None:
    """How high the outline lies, as it is kept with the overlay."""
    ids = [one.photo().id for one in bench.stages().values()]  # type: ignore[union-attr]
    found = desk.ask(overlay_of, *ids)
    assert isinstance(found, KeptOverlay)
    return found.height_mm


def test_the_part_is_looked_for_where_the_printed_card_has_its_field(
    qtbot: QtBot, desk: Desk
) -> None:
    corner = replace(bench_card("a4"), free_field_mm=(30.0, 200.0, 70.0, 240.0))
    assert desk.do(note_printed_card, replace(corner, name="a card from elsewhere"))
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *pictures())
    settled(qtbot, desk)
    assert words_of(bench).count("Card seen: ") == 2
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    assert "These can't be aligned" in words_of(bench)  # there is no part in that field


def test_the_part_is_looked_for_on_the_card_as_large_as_it_was_printed(
    qtbot: QtBot, desk: Desk, bench: PhotoBench, monkeypatch: pytest.MonkeyPatch
) -> None:
    given: list[tuple[object, ...]] = []

    def seen(*those: Any) -> Any:
        given.append(those)
        return align(*those)

    monkeypatch.setattr(bench_laying, "align", seen)
    desk.do(note_ruler, 1, 147.0)
    press(qtbot, bench, "Wipe")
    settled(qtbot, desk)
    assert given[0][-2:] == (bench_card("a4").printed(0.98),) * 2


def test_the_scale_is_kept_with_its_printed_card_and_found_again_after_undo(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    shown = old_stage(bench).photo()
    assert shown is not None
    there = desk.ask(scale_of_photo, shown.id)
    assert there is not None
    assert there.card_id is not None
    desk.undo()
    desk.undo()
    assert desk.ask(scale_of_photo, shown.id) is None
    assert "No scale yet." in words_of(bench)
    press(qtbot, bench, "Look for the card, removed part")
    assert not named(bench, QPushButton, "Look for the card, removed part").isEnabled()
    settled(qtbot, desk)
    again = desk.ask(scale_of_photo, shown.id)
    assert again is not None
    assert again.scale.theta == pytest.approx(there.scale.theta)


def test_the_scale_says_on_which_print_it_rests(desk: Desk, bench: PhotoBench) -> None:
    assert words_of(bench).count("Card 1, print not measured.") == 2
    assert not named(bench, QComboBox, "Printed card, removed part").isVisible()
    desk.do(note_ruler, 1, 149.7)
    assert words_of(bench).count("Card 1, ruler 149.7 mm measured 2026-11-16.") == 2
    desk.undo()
    assert words_of(bench).count("Card 1, print not measured.") == 2


def test_of_several_prints_one_can_be_chosen_and_till_then_all_are_covered(
    qtbot: QtBot, desk: Desk
) -> None:
    for ruler in (149.7, 150.3):
        done = desk.do(note_printed_card, bench_card("a4"))
        assert done is not None
        assert done.made is not None
        desk.do(note_ruler, done.made, ruler)
    bench = open_bench(qtbot, desk, job_with_no_photos(desk.record), *pictures())
    settled(qtbot, desk)
    assert "Which printed card it was is not said: ± covers all 2" in words_of(bench)
    shown = old_stage(bench).photo()
    assert shown is not None
    unsure = desk.ask(scale_of_photo, shown.id)
    assert (unsure.card_id, set(unsure.prints)) == (None, {1, 2})
    box = named(bench, QComboBox, "Printed card, removed part")
    assert box.currentText() == "Not known"
    box.setFocus()
    qtbot.keyClick(box, Qt.Key.Key_Down)
    qtbot.keyClick(box, Qt.Key.Key_Return)
    sure = desk.ask(scale_of_photo, shown.id)
    assert sure.card_id == 2
    assert sure.scale.print_u < unsure.scale.print_u
    assert "Card 2, ruler 150.3 mm measured" in words_of(bench)
    desk.undo()
    assert desk.ask(scale_of_photo, shown.id).card_id is None
    assert box.currentText() == "Not known"


def test_a_scale_is_taken_out_and_comes_back_with_undo(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Take the scale out, removed part")
    assert "No scale: it was taken out. Find the card, or give two points." in words_of(bench)
    assert not named(bench, QPushButton, "Take the scale out, removed part").isEnabled()
    desk.undo()
    assert words_of(bench).count("Card seen: ") == 2


def test_two_points_given_while_the_card_is_looked_for_count_and_are_shown_again(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    press(qtbot, bench, "Look for the card, removed part")
    give_scale(qtbot, bench, (200.0, 200.0), (900.0, 200.0), "99.5")
    settled(qtbot, desk)
    shown = old_stage(bench).photo()
    assert shown is not None
    assert desk.ask(scale_of_photo, shown.id).length_mm == 99.5
    again = PhotoBench(desk, shown, None)
    qtbot.addWidget(again)
    again.show()
    settled(qtbot, desk)
    assert named(again, QLineEdit, "Known length, removed part").text() == "99.5"
    assert named(again, QLineEdit, "Known length plus or minus, removed part").text() == "0.05"


def test_what_is_damaged_in_the_record_is_named_beside_the_photo(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    shown = old_stage(bench).photo()
    assert shown is not None
    mark = desk.do(draw_mark, shown.id, Mark("length", ((200.0, 200.0), (400.0, 200.0)), "tip"))
    assert mark is not None
    assert mark.made is not None
    row = desk.ask(scale_of_photo, shown.id).id
    broken = {MarkRow: (mark.made, {"points": "[]"}), PhotoScale: (row, {"fit": "{}"})}
    for kept, (number, damage) in broken.items():
        desk.record.do("x", partial(_scribble, kept, number, damage))
    again = PhotoBench(desk, shown, None)
    qtbot.addWidget(again)
    again.show()
    settled(qtbot, desk)
    words = words_of(again)
    assert f"Damaged in the record, and so not shown: mark {mark.made} “tip”." in words
    assert f"where the scale of photo {shown.id} should be" in words
    press(qtbot, again, "Look for the card, removed part")
    settled(qtbot, desk)
    assert "Card seen: " in words_of(again)


def _scribble(kept: type[Kept], row: int, damage: dict[str, str], deed: Deed) -> None:
    deed.change(kept, row, **damage)

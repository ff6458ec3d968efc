"""Surfaces on the bench: drawn, counted beside the window, old and new side by side in the list."""

from __future__ import annotations

from functools import cache

import pytest
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit, QPushButton
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.screen.bench_mark_details import MarkDetails
from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.stored_marks import KeptMark
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, job_with_no_photos
from tests.part_photos.painted_metal import BARE, PART, painted
from tests.screens.bench_desk import words_of
from tests.screens.marking import click, lines, marks_kept, open_bench, press, type_keys
from tests.screens.part_photos.test_photo_bench_edges import Readings

SHARES = (0.3, 0.05)


@cache
def pictures() -> tuple[bytes, ...]:
    """A rusty old part under a warm light, and a new one that has hardly any rust."""
    lights = ((1.1, 0.95, 0.8), (1.0, 1.0, 1.0))
    photos = [
        painted(share, seed, cast=cast)
        for seed, (share, cast) in enumerate(zip(SHARES, lights, strict=True))
    ]
    return tuple(encoded(Image.fromarray(one.pixels.rgb), "PNG") for one in photos)


@pytest.fixture
def bench(qtbot: QtBot, desk: Desk) -> PhotoBench:
    """The bench with both photos."""
    job_id = job_with_no_photos(desk.record)
    return open_bench(qtbot, desk, job_id, *pictures(), readings=Readings())


def outline(
    qtbot: QtBot, desk: Desk, bench: PhotoBench, side: str, tool: str, corners: tuple[Pixel, ...]
) -> None:
    """Draw round something on the photo of a side, close it with Enter, put the tool down."""
    stage = bench.stages()[side]
    press(qtbot, bench, f"Draw: {tool}")
    click(qtbot, stage, *corners)
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_Return)
    if tool == "Surface":
        press(qtbot, bench, "Draw: Surface")
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)


def call_it(qtbot: QtBot, bench: PhotoBench, name: str) -> None:
    """Name the chosen mark."""
    field = shown(bench).findChild(QLineEdit, "")
    assert isinstance(field, QLineEdit)
    qtbot.keyClicks(field, name)
    qtbot.keyClick(field, Qt.Key.Key_Return)


def shown(bench: PhotoBench) -> MarkDetails:
    """The fields of the chosen mark."""
    return next(one for one in bench.findChildren(MarkDetails) if one.isVisibleTo(bench))


def surface(desk: Desk, bench: PhotoBench) -> KeptMark:
    """The first surface, as the record has it."""
    return next(one for one in marks_kept(desk, bench) if one.mark.type == "surface")


def holds(kept: KeptMark, share: float) -> bool:
    """Tell whether a surface's interval holds a share."""
    assert kept.value is not None
    assert kept.expanded_u is not None
    return abs(kept.value - 100 * share) <= kept.expanded_u


def test_a_surface_says_its_share_its_method_and_that_no_white_was_seen(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    stage = bench.stages()["removed"]
    stage.setFocus()
    type_keys(qtbot, stage, Qt.Key.Key_9)
    click(qtbot, stage, *PART[:2])
    type_keys(qtbot, stage, Qt.Key.Key_Backspace)
    click(qtbot, stage, *PART[1:])
    assert marks_kept(desk, bench) == ()
    type_keys(qtbot, stage, Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    kept = surface(desk, bench)
    assert holds(kept, SHARES[0])
    words = words_of(shown(bench))
    assert f"{kept.value:.0f} ± " in words
    assert "% of this surface has another colour than grey (no bare metal was drawn)." in words
    assert "How: counted are pixels more than 10 units" in words
    assert "⚠  No white was given" in words
    assert lines(bench)[0].startswith(f"◆  Surface: {kept.value:.0f} ± ")
    buttons = [one.text() for one in shown(bench).findChildren(QPushButton) if one.isVisible()]
    assert buttons == ["Count again", "Take out"]  # no edge to snap to, no reading to be


def test_bare_metal_counts_for_all_surfaces_of_its_photo_and_only_for_them(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    outline(qtbot, desk, bench, "removed", "Surface", PART)
    outline(qtbot, desk, bench, "replacement", "Surface", PART)
    before, new_before = (one.value for one in marks_kept(desk, bench))
    outline(qtbot, desk, bench, "removed", "Bare metal", BARE)
    assert "counted against the colour in here" in words_of(shown(bench))
    old, new, bare = marks_kept(desk, bench)
    assert holds(old, SHARES[0])
    assert old.expanded_u is not None
    assert old.expanded_u < 10  # against a neutral grey the warm light left twice as much open
    assert old.value != before
    assert new.value == new_before
    assert "the bare metal drawn" in old.method
    assert (bare.mark.type, bare.value) == ("bare-metal", None)
    onto_rust = ((60.0, 250.0), (110.0, 250.0), (110.0, 300.0), (60.0, 300.0))
    outline(qtbot, desk, bench, "removed", "Bare metal", onto_rust)
    assert [one.mark.type for one in marks_kept(desk, bench)].count("bare-metal") == 1
    moved = surface(desk, bench)
    assert moved.value not in (None, old.value)
    assert any("more than one colour" in one for one in moved.warnings)
    stage = bench.stages()["removed"]
    type_keys(qtbot, stage, Qt.Key.Key_Delete)
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    assert surface(desk, bench).value == before


def test_moving_a_corner_counts_again_and_undo_goes_all_the_way_back(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    outline(qtbot, desk, bench, "removed", "Surface", PART)
    before = surface(desk, bench)
    stage = bench.stages()["removed"]
    stage.setFocus()
    type_keys(qtbot, stage, *[Qt.Key.Key_Right] * 9, held=Qt.KeyboardModifier.ControlModifier)
    assert lines(bench) == ["◆  Surface: not counted"]
    bench.keep_draft()
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    after = surface(desk, bench)
    assert after.value is not None
    assert after.value != before.value
    desk.undo()
    assert lines(bench) == ["◆  Surface: not counted"]
    press(qtbot, bench, "Count again")
    qtbot.waitUntil(lambda: not desk.errands.busy(), timeout=20_000)
    assert surface(desk, bench).value == after.value
    desk.undo()
    desk.undo()
    assert surface(desk, bench) == before


def test_old_and_new_of_one_name_stand_side_by_side(
    qtbot: QtBot, desk: Desk, bench: PhotoBench
) -> None:
    outline(qtbot, desk, bench, "removed", "Surface", PART)
    assert "Name it alike on both photos" in words_of(shown(bench))
    call_it(qtbot, bench, "face")
    outline(qtbot, desk, bench, "removed", "Bare metal", BARE)
    outline(qtbot, desk, bench, "replacement", "Surface", PART)
    call_it(qtbot, bench, "Face")
    first, second, _bare = (line.replace("\u00a0", " ") for line in lines(bench))
    olds, news = first.split("  |  "), second.split("  |  ")
    assert olds[0].startswith("◆  Surface: face ")
    assert news[0].startswith("●  Surface: Face ")
    assert news[0].endswith(olds[1].removeprefix("● "))
    assert olds[0].endswith(news[1].removeprefix("◆ "))


def test_an_outline_too_small_to_count_says_so(qtbot: QtBot, desk: Desk, bench: PhotoBench) -> None:
    outline(qtbot, desk, bench, "removed", "Surface", ((50, 150), (58, 150), (58, 158)))
    assert surface(desk, bench).value is None
    assert lines(bench) == ["◆  Surface: not counted"]
    assert "⚠  The surface is too small to count" in words_of(shown(bench))

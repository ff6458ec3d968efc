"""What stands on the places that are full at 24 points is read whole, and nothing lies over it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from functools import partial
from itertools import combinations
from pathlib import Path
from typing import get_args

import pytest
from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import (
    QApplication,
    QFrame,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QWidget,
)
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.bench_page import PhotoBench
from desktop_app.part_photos.screen.bench_stage import BenchStage
from desktop_app.parts_compared.comparison import DimensionVerdict
from desktop_app.parts_compared.pair_verdict import compare
from desktop_app.parts_compared.screen.dimension_verdict_label import VerdictLabel
from desktop_app.parts_compared.screen.sheet_preview import SheetPreview
from desktop_app.repair_jobs import actions
from desktop_app.repair_jobs.screen.folded_buttons import FoldedButtons
from desktop_app.repair_jobs.screen.job_head import JobHead
from desktop_app.repair_jobs.write_up import WriteUp
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.keys import press_by
from desktop_app.shop_window.look import dress
from tests.part_photos.bench_pictures import job_with_no_photos
from tests.parts_compared.invented_kinds import both, kind, worn
from tests.parts_compared.sheet_story import a_rotor, kinds
from tests.screens.marking import open_bench
from tests.shop_stories.counter import sitting

MONDAY = datetime(2026, 3, 2, 8, 0, tzinfo=UTC)


@pytest.fixture
def desk(app: QApplication, shop: ShopRecord) -> Iterator[Desk]:
    desk = Desk(shop)
    yield desk
    desk.errands.finish()


def place(widget: QWidget, page: QWidget) -> QRect:
    """Return where a widget lies on its page."""
    return QRect(widget.mapTo(page, QPoint()), widget.size())


def shown(page: QWidget, sort: type[QWidget]) -> list[QWidget]:
    return [one for one in page.findChildren(sort) if one.isVisible()]


def is_whole(label: QLabel) -> bool:
    """Tell whether all words of a label have their room."""
    hint = label.sizeHint()
    if label.wordWrap():
        return label.height() >= label.heightForWidth(label.width())
    return label.height() >= hint.height() and label.width() >= hint.width()


@pytest.mark.parametrize("points", [12, 24])
def test_on_the_photo_bench_nothing_lies_over_the_photos(
    qtbot: QtBot, app: QApplication, desk: Desk, points: int
) -> None:
    dress(app, "light", points)
    bench: PhotoBench = open_bench(qtbot, desk, job_with_no_photos(desk.record))
    bench.resize(1000, 690)  # beside the rail, in a window of 1366 by 768
    qtbot.wait(50)
    stages, words = shown(bench, BenchStage), shown(bench, QLabel)
    pressed = [one for one in shown(bench, QPushButton) if one.parentWidget() is not None]
    assert len(stages) == 2
    outside = [one for one in words if not any(stage.isAncestorOf(one) for stage in stages)]
    for stage, other in ((s, o) for s in stages for o in (*outside, *pressed)):
        if other.visibleRegion().isEmpty() or stage.isAncestorOf(other):
            continue
        assert not place(stage, bench).intersects(place(other, bench)), other.accessibleName()
    (says,) = (one for one in words if one.text().startswith("Choose a tool"))  # type: ignore[attr-defined]
    assert is_whole(says)  # type: ignore[arg-type]
    assert bench.rect().contains(place(says, bench))


def test_the_previews_row_fits_a_small_screen_when_the_sheet_is_old_too(
    qtbot: QtBot, app: QApplication, desk: Desk
) -> None:
    dress(app, "light", 24)
    preview = SheetPreview(desk, kinds(), a_rotor(desk.record).job)
    qtbot.addWidget(preview)
    preview.show()
    qtbot.waitUntil(lambda: preview.page_count() > 0, timeout=20_000)
    desk.do(actions.write_correction, 1, "rotor replaced")
    qtbot.wait(50)
    assert preview.height() <= preview.screen().availableSize().height()
    assert preview.width() <= 1366
    row = shown(preview, QPushButton)
    assert "Make it again" in [one.text() for one in row]  # type: ignore[attr-defined]
    for one, other in combinations(row, 2):
        assert not place(one, preview).intersects(place(other, preview))


def test_no_word_of_a_verdict_is_cut(qtbot: QtBot, app: QApplication) -> None:
    measured = compare(kind(worn()), both("tip", [27.45, 27.46], [26.90, 26.91])).dimensions[0]
    page, label = QFrame(), VerdictLabel()
    QHBoxLayout(page).addWidget(label)
    qtbot.addWidget(page)
    page.show()
    for points in (12, 18, 24):
        dress(app, "light", points)
        qtbot.wait(20)
        for verdict in get_args(DimensionVerdict):
            label.show_verdict(replace(measured, verdict=verdict))
            page.resize(page.minimumSizeHint().width(), 400)
            qtbot.wait(20)
            pieces = label.text().replace("  ", "\u00a0\u00a0").split(" ")  # a sign has its word
            for word in pieces:
                assert label.fontMetrics().horizontalAdvance(word) <= label.width()
            assert is_whole(label)


@pytest.mark.parametrize(
    ("points", "wide", "most"),
    [(12, 1366, 80), (12, 1280, 80), (18, 1366, 192), (24, 1366, 192)],  # 192 is a fourth
)
def test_the_head_of_a_job_leaves_the_page_its_room_and_says_all(
    qtbot: QtBot, app: QApplication, tmp_path: Path, points: int, wide: int, most: int
) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        dress(app, "light", points)
        at.window.resize(wide, 768)
        desk = at.program.desk
        assert desk is not None
        car = WriteUp("misses", plate="TH 1", description="1.8-litre hatchback", odometer=1000)
        desk.do(actions.write_up, car)
        desk.do(actions.add_job, 1, "squeals too")
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        qtbot.wait(50)
        (head,) = at.page.findChildren(JobHead)
        assert head.height() <= most
        assert len({place(one, head).center().y() for one in shown(head, QPushButton)}) == 1
        names = [one.text() for one in shown(head, QPushButton)]  # type: ignore[attr-defined]
        for folded in shown(head, FoldedButtons):
            menu = folded.menu()  # type: ignore[attr-defined]
            menu.aboutToShow.emit()
            names += [entry.text() for entry in menu.actions()]
        assert {"Heard", "Under watch", "J-102", "Comparison sheet…", "History…"} <= set(names)
        assert len(names) == len(set(names))
        for one in (*shown(head, QLabel), *shown(head, QPushButton)):
            assert head.rect().contains(place(one, head))
            assert not isinstance(one, QLabel) or is_whole(one)
        for one, other in combinations(shown(head, QPushButton), 2):
            assert not place(one, head).intersects(place(other, head))


def test_keys_press_what_stands_behind_more_and_so_does_its_menu(
    qtbot: QtBot, app: QApplication
) -> None:
    pressed: list[str] = []
    jumps, history = [QPushButton(f"Section {number}") for number in range(8)], QPushButton("Past")
    for one in (*jumps, history):
        one.clicked.connect(partial(pressed.append, one.text()))
    press_by(history, "Ctrl+H")
    head = JobHead(jumps)
    head.name("J-101   TH 1")
    head.show_leads((history,))
    qtbot.addWidget(head)
    head.resize(900, 150)
    head.show()
    head.activateWindow()
    qtbot.waitUntil(head.isActiveWindow)
    assert history.isVisible()
    assert shown(head, FoldedButtons) == []
    dress(app, "light", 24)
    qtbot.waitUntil(history.isHidden)
    (more,) = shown(head, FoldedButtons)
    qtbot.keyClick(head, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    assert pressed == ["Past"]
    menu = more.menu()  # type: ignore[attr-defined]
    menu.aboutToShow.emit()
    entries = menu.actions()
    assert entries[-1].text() == "Past"
    entries[0].trigger()
    hidden = [one.text() for one in jumps if one.isHidden()]
    assert pressed[1:] == hidden[:1]
    dress(app, "light", 12)
    qtbot.waitUntil(history.isVisible)
    qtbot.keyClick(head, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    assert pressed[2:] == ["Past"]


def test_keys_still_press_what_stands_behind_more_when_the_job_is_shown_anew(
    qtbot: QtBot, app: QApplication, tmp_path: Path
) -> None:
    with sitting(qtbot, tmp_path / "shop", MONDAY) as at:
        dress(app, "light", 24)
        at.window.resize(1366, 768)
        desk = at.program.desk
        assert desk is not None
        desk.do(actions.write_up, WriteUp("misses", plate="TH 1", odometer=1000))
        at.type_into(QLineEdit, "Ask the old jobs", "J-101", enter=True)
        qtbot.waitUntil(lambda: at.window.here() == "Job")
        for _ in range(2):
            (head,) = at.page.findChildren(JobHead)
            (more,) = shown(head, FoldedButtons)
            menu = more.menu()  # type: ignore[attr-defined]
            menu.aboutToShow.emit()
            row = {one.text() for one in shown(head, QPushButton)}  # type: ignore[attr-defined]
            assert "History…" in {entry.text() for entry in menu.actions()} - row
            qtbot.keyClick(at.window, Qt.Key.Key_P, Qt.KeyboardModifier.ControlModifier)
            assert "heet" in at.close_what_lies_over()
            qtbot.keyClick(at.window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
            assert "istory" in at.close_what_lies_over()
            qtbot.keyClick(at.window, Qt.Key.Key_F1)
            qtbot.keyClick(at.window, Qt.Key.Key_F1)
            assert at.window.here() == "Job"


@pytest.mark.parametrize("points", [12, 18, 24])
def test_the_menu_behind_more_cuts_no_words_and_its_arrow_is_seen(
    qtbot: QtBot, app: QApplication, points: int
) -> None:
    dress(app, "light", points)
    more, folded = FoldedButtons(), [QPushButton("Comparison sheet of a job…")]
    more.fold(folded, folded)
    qtbot.addWidget(more)
    more.show()
    menu = more.menu()
    menu.aboutToShow.emit()
    menu.adjustSize()
    alone = menu.grab().toImage()
    menu.addAction(f"{folded[0].text()} {folded[0].text()}")  # whatever room it has then
    menu.adjustSize()
    one = QRect(1, 1, alone.width() - 2, alone.height() - 2)
    assert menu.grab().toImage().copy(one) == alone.copy(one)
    picture, dark = more.grab().toImage(), more.palette().buttonText().color().lightness()
    drawn = [
        any(picture.pixelColor(x, y).lightness() < dark + 30 for y in range(3, more.height() - 3))
        for x in range(more.width() - 4, 3, -1)
    ]
    arrow = drawn[drawn.index(True) :]
    assert arrow.index(False) >= points // 2


def test_what_is_next_to_be_done_never_stands_behind_more(qtbot: QtBot, app: QApplication) -> None:
    dress(app, "light", 24)
    head, back = JobHead([QPushButton(f"Section {n}") for n in range(8)]), QPushButton("↩  Again?")
    back.setObjectName("next")
    head.show_leads((back,))
    qtbot.addWidget(head)
    head.resize(900, 150)
    head.show()
    qtbot.waitUntil(lambda: shown(head, FoldedButtons) != [])
    assert back.isVisible()
    assert head.rect().contains(place(back, head))

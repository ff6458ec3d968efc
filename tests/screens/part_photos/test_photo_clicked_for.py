"""An empty pane for a photo of a pair is clicked: files are asked for, for that side."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFileDialog, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.photo_stage import PhotoStage
from desktop_app.parts_compared.stored_pairs import read_pair
from tests.part_photos.bench_pictures import encoded, noisy
from tests.shop_stories.counter import Counter
from tests.shop_stories.one_job import one_job, open_job

OLD, NEW = (f"photos of the {one}, distributor rotor" for one in ("removed part", "replacement"))


@pytest.fixture
def at(qtbot: QtBot, tmp_path: Path) -> Iterator[Counter]:
    with one_job(qtbot, tmp_path / "shop") as counter:
        open_job(counter)
        counter.bot.waitUntil(lambda: bool(counter.find(QWidget, OLD)))
        yield counter


def sides(at: Counter) -> list[str]:
    desk = at.program.desk
    assert desk is not None
    return [one.side for one in desk.ask(read_pair, 1).photos]


def pane(at: Counter, name: str) -> PhotoStage:
    at.bot.waitUntil(lambda: bool(at.find(PhotoStage, name)))
    return at.find(PhotoStage, name)


@pytest.mark.parametrize("way", ["click", "enter"])
def test_the_empty_pane_asks_for_the_file(
    at: Counter, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, way: str
) -> None:
    asked: list[str] = []

    def choose(*_: object) -> tuple[list[str], str]:
        asked.append("asked")
        return [str(tmp_path / f"{len(asked)}.jpg")], ""

    for number in (1, 2):
        (tmp_path / f"{number}.jpg").write_bytes(encoded(noisy(300, 200, number)))
    monkeypatch.setattr(QFileDialog, "getOpenFileNames", choose)
    at.press(f"Choose photo files: {OLD}")
    at.bot.waitUntil(lambda: sides(at) == ["removed"])
    empty = pane(at, "Replacement: No photo of the replacement here yet. Click to choose one")
    if way == "click":
        at.bot.mouseClick(empty.viewport(), Qt.MouseButton.LeftButton)
    else:
        at.bot.keyClick(empty, Qt.Key.Key_Return)
    at.bot.waitUntil(lambda: sides(at) == ["removed", "replacement"])
    at.bot.mouseClick(pane(at, "Replacement").viewport(), Qt.MouseButton.LeftButton)
    assert asked == ["asked", "asked"]  # a photo that is there is not clicked away

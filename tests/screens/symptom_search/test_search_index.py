"""The search's index is made beside the window, quietly, and the answer is then over all jobs."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import kinds_of, open_place
from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.screen.search_place import SearchPlace
from desktop_app.symptom_search.stored_ask_file import FOLDER
from desktop_app.symptom_search.stored_ask_index import AT_ONCE
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.conftest import NOON
from tests.large_history import large_history
from tests.screens.searching import Sought


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """A shop with more jobs than are read each time, and no index yet."""
    large_history(tmp_path / "shop", AT_ONCE + 200)
    return tmp_path / "shop"


@pytest.mark.embedded  # so many jobs are written straight into the file
def test_an_answer_before_the_index_says_so_and_is_given_again_after(
    place: Path, qtbot: QtBot
) -> None:
    kinds = kinds_of()
    record = open_place(place, lambda: NOON)
    desk = Desk(record)
    search = SearchPlace(desk, shop_vocabulary, lambda: kinds, lambda _job: None, QWidget)
    page = search.page()
    qtbot.addWidget(page)
    page.show()
    page.came_here()
    at = Sought(qtbot, desk, page)
    said: list[bool] = []
    desk.errands.started.connect(lambda _errand: said.append(at.says("not yet over all")))
    with qtbot.waitSignal(search.index.looked) as looked:
        page.ask("renewed")
    assert looked.args == [True]
    assert said[0]  # the answer was there before anything ran beside the window
    qtbot.waitUntil(lambda: at.says("Counted over all") and not desk.errands.busy())
    assert list((place / FOLDER).iterdir())
    with qtbot.waitSignal(search.index.looked) as looked:
        page.came_here()
    assert looked.args == [False]
    qtbot.waitUntil(lambda: not desk.errands.busy())
    record.close()

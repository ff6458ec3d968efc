"""What is over leaves nothing behind, so that a day's work takes no more memory than an hour's."""

from __future__ import annotations

import gc
import threading
import weakref
from functools import partial

import pytest
from PySide6.QtWidgets import QHBoxLayout, QLayout, QPushButton, QWidget, QWidgetItem
from pytestqt.qtbot import QtBot
from shiboken6 import isValid

from desktop_app.shop_window.errands import Errands
from desktop_app.shop_window.flow_row import FlowRow, empty

MANY = 40


class Tool:
    """Something that an errand works with."""

    def name(self) -> str:
        return "feeler gauge"


def test_an_errand_that_is_over_keeps_nothing_of_what_it_worked_with(qtbot: QtBot) -> None:
    errands = Errands()
    told: list[str] = []
    kept = []
    ended_on = set()
    for _ in range(MANY):
        tool = Tool()
        kept.append(weakref.ref(tool))
        weakref.finalize(tool, lambda: ended_on.add(threading.get_ident()))
        errands.run("Reading", partial(Tool.name, tool), told.append)
        del tool
        qtbot.waitUntil(lambda: not errands.busy())
    gc.collect()
    assert told == ["feeler gauge"] * MANY
    assert [one() for one in kept] == [None] * MANY
    assert ended_on == {threading.get_ident()}  # what belongs to a window must end on its thread


@pytest.mark.parametrize("kind", [FlowRow, QHBoxLayout])
def test_a_layout_that_is_emptied_ends_the_places_it_kept(
    qtbot: QtBot, kind: type[QLayout]
) -> None:
    box = QWidget()
    qtbot.addWidget(box)
    layout = kind(box)
    places = [QWidgetItem(QPushButton(f"TH {number}", box)) for number in range(3)]
    for place in places:
        layout.addItem(place)
    empty(layout)
    assert [isValid(place) for place in places] == [False] * 3

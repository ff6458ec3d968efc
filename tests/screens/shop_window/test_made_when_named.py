"""What a start and its first search leave alone, since PySide6 makes a class when it is named.

To know what to call a widget that Qt made by itself, it makes its class of every kind of widget,
with all their enums: 25 ms. The class of styles alone takes 10 for its 600 names, and is named
where something is painted.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place, now
from tests.benchmarks.started_window import OURS, said
from tests.screens.searching import write_old_jobs

# By an enum of theirs: wizards, which are not used here, come with all kinds of widgets.
_TOLD = """
import enum, os, sys
end = os._exit
def named(sort):
    return {{sort.__name__}}.union(*map(named, sort.__subclasses__()))
def told(status):
    {before}
    print(sorted(named(enum.Enum) & {{"WizardStyle", "PixelMetric"}}), flush=True)
    end(status)
os._exit = told
"""
_QT = "import PySide6.QtWidgets as of; "
_MET, _STYLE = _QT + "area = of.QScrollArea(); area.viewport()", _QT + "of.QStyle"


@pytest.mark.parametrize(
    ("before", "made"),
    [
        ("pass", "[]"),
        (_MET, "['WizardStyle']"),
        (_STYLE, "['PixelMetric']"),
    ],
)
def test_what_is_not_needed_is_not_made_before_the_first_search_is_answered(
    before: str, made: str, tmp_path: Path
) -> None:
    record = new_place(tmp_path / "shop", now)
    write_old_jobs(record)
    record.close()
    code = _TOLD.format(before=before) + OURS
    printed = said(code, str(tmp_path / "shop"), "search", own=tmp_path / "own")
    assert printed.endswith(f"{made}\n")

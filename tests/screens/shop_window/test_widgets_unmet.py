"""A start meets no widget that Qt made by itself.

To know what to call one, PySide6 makes its class of every kind of widget, with all their enums: 25
ms, once, which neither a start nor its first search pays.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from desktop_app.commands.shop_place import new_place, now
from tests.benchmarks.started_window import OURS, said
from tests.screens.searching import write_old_jobs

# Wizards are not used here: their class is made with all the others or not at all.
_TOLD = """
import enum, os, sys
end = os._exit
def told(status):
    {before}
    print(any(one.__name__ == "WizardStyle" for one in enum.Enum.__subclasses__()), flush=True)
    end(status)
os._exit = told
"""
_MET = "import PySide6.QtWidgets as of; area = of.QScrollArea(); area.viewport()"


@pytest.mark.parametrize(("before", "met"), [("pass", "False"), (_MET, "True")])
def test_no_widget_of_qts_own_is_met_before_the_first_search_is_answered(
    before: str, met: str, tmp_path: Path
) -> None:
    record = new_place(tmp_path / "shop", now)
    write_old_jobs(record)
    record.close()
    code = _TOLD.format(before=before) + OURS
    printed = said(code, str(tmp_path / "shop"), "search", own=tmp_path / "own")
    assert printed.split()[-1] == met

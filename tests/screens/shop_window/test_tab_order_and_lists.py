"""Tab goes its round while parts of a page come and go: no list that is filled then breaks.

A layout's item ends with its widget, and Python is not told; a line of a list that is made at its
address is then taken for it. That ended the program, so the round is gone in a process of its own.
"""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[3]
ROUND = """
import sys
from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import QApplication, QGridLayout, QLabel, QLineEdit, QListWidget
from PySide6.QtWidgets import QListWidgetItem, QVBoxLayout, QWidget
from desktop_app.shop_window.flow_row import FlowRow
from desktop_app.shop_window.tab_order import stops

app = QApplication([])
page, lines = QWidget(), QListWidget()
column = {"column": QVBoxLayout, "grid": QGridLayout, "row": FlowRow}[sys.argv[1]](page)
page.show()
fields = []
for turn in range(400):
    for field in fields:
        field.deleteLater()
    fields = [QLineEdit() for _ in range(6)]
    for field in fields:
        column.addWidget(field)
    app.processEvents()
    assert stops(page)[-6:] == fields
    QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    lines.clear()
    for line in range(44):
        lines.addItem(QListWidgetItem(str(line)))
print("all turns gone")
"""


@pytest.mark.parametrize("layout", ["column", "grid", "row"])
def test_a_list_is_filled_anew_after_each_round(layout: str) -> None:
    done = subprocess.run(
        [sys.executable, "-c", ROUND, layout],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
        timeout=120,
    )
    assert (done.returncode, done.stdout.strip()) == (0, "all turns gone"), done.stderr[-2000:]


def asks_for_items(source: str) -> list[int]:
    """The lines that ask a layout for one of its items."""
    return [
        node.lineno
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Attribute) and node.attr == "itemAt"
    ]


def test_no_layout_is_asked_for_its_items() -> None:
    assert asks_for_items("item = page.layout().itemAt(0)") == [1]
    found = [
        f"{file.relative_to(ROOT)}:{line}"
        for file in sorted((ROOT / "desktop_app").rglob("*.py"))
        for line in asks_for_items(file.read_text("utf-8"))
    ]
    assert found == []

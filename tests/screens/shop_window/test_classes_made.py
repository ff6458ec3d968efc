"""Once Qt's classes are made, no thread and nothing that is met makes another one."""

from __future__ import annotations

import subprocess
import sys

_COUNTED = """
import enum, sys, threading
from PySide6.QtWidgets import QApplication, QScrollArea
from desktop_app.shop_window.classes_made import ClassesMade
def made():
    return len(enum.Enum.__subclasses__())
app = QApplication([])
classes, area = ClassesMade(app), QScrollArea()
begun = made()
if "stopped" in sys.argv:
    classes.stop()
    app.processEvents()
    print(made() == begun)
    raise SystemExit
classes.whole.connect(app.quit)
app.exec()
whole = made()
def beside():
    from PySide6.QtGui import QPdfWriter, QTextDocument
    from PySide6.QtWidgets import QFileDialog, QGraphicsView, QTableView
thread = threading.Thread(target=beside)
thread.start(); thread.join()
area.viewport()
print(begun < whole == made())
"""


def _said(*words: str) -> str:
    done = subprocess.run(
        [sys.executable, "-c", _COUNTED, *words], capture_output=True, text=True, check=True
    )
    return done.stdout.strip()


def test_all_are_there_before_a_thread_or_the_window_names_one() -> None:
    assert _said() == "True"


def test_none_is_made_for_a_window_that_goes() -> None:
    assert _said("stopped") == "True"

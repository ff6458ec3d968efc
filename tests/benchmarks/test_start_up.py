"""Start-up and memory, each against a bare Qt window started in the same run."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from statistics import median

BARE = """
import sys, time; start = time.perf_counter()
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QWidget
class Window(QWidget):
    def paintEvent(self, event):
        print(time.perf_counter() - start, end=" "); {more}; done()
def done():
    # What the kernel's record says; getrusage would inherit the peak of the test itself.
    kept = next(line for line in open("/proc/self/status") if line.startswith("VmRSS"))
    print(time.perf_counter() - start, kept.split()[1])
    sys.stdout.flush(); import os; os._exit(0)
app = QApplication(sys.argv); window = Window(); window.resize(1280, 820); window.show(); app.exec()
"""
OURS = """
import sys, time; start = time.perf_counter()
from pathlib import Path
from PySide6.QtCore import QObject, QEvent, QTimer
from PySide6.QtWidgets import QApplication
from desktop_app.program import Program, _application
app = _application(); program = Program(Path(sys.argv[1]))
class Eye(QObject):
    seen = False
    def eventFilter(self, what, event):
        if event.type() == QEvent.Type.Paint and not self.seen:
            self.seen = True; print(time.perf_counter() - start, end=" ")
            if sys.argv[2] == "frame": done()
        return False
def done():
    # What the kernel's record says; getrusage would inherit the peak of the test itself.
    kept = next(line for line in open("/proc/self/status") if line.startswith("VmRSS"))
    print(time.perf_counter() - start, kept.split()[1])
    sys.stdout.flush(); import os; os._exit(0)
def answered():
    if program.desk is None: return
    timer.stop()
    page = program.window.page("Ask the Old Jobs")
    page.ask("misses when damp"); page._search()
    if sys.argv[2] == "memory":
        for place in ("Heard", "Under Watch"): program.window.go_to(place)
    done()
eye = Eye(); program.window.installEventFilter(eye)
timer = QTimer(); timer.timeout.connect(answered); timer.start(1)
program.start(); app.exec()
"""
ROUNDS = 7


def run(code: str, *words: str) -> list[float]:
    """Run a program of its own and return the figures that it prints."""
    said = subprocess.run(
        [sys.executable, "-c", code, *words],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=True,
    )
    return [float(word) for word in said.stdout.split()]


def ratios(peer: str, goal: str, figure: int, shop: Path) -> float:
    """Alternate our program and its peer and return the median ratio of one figure."""
    found = []
    for _ in range(ROUNDS):
        theirs = run(peer)[figure]
        found.append(run(OURS, str(shop), goal)[figure] / theirs)
    return median(found)


def test_the_frame_is_painted_as_soon_as_a_bare_window(middling_shop: Path) -> None:
    ratio = ratios(BARE.format(more="pass"), "frame", 0, middling_shop)
    print(f"\nframe painted: {ratio:.2f} times a bare window (goal 1.5)")
    assert ratio < 1.5 * 1.3


def test_the_first_search_is_answered_soon(middling_shop: Path) -> None:
    ratio = ratios(BARE.format(more="import sqlalchemy.orm"), "search", 1, middling_shop)
    print(f"\nfirst search: {ratio:.2f} times a bare window and SQLAlchemy (goal 1.3)")
    assert ratio < 3.0


def test_memory_of_the_window_on_a_large_shop(large_shop: Path) -> None:
    bare = run(BARE.format(more="pass"))[2]
    ours = run(OURS, str(large_shop), "memory")[2]
    megabytes = (ours - bare) / 1024
    print(f"\nmemory: {megabytes:.0f} MB above a bare window (goal 250)")
    assert megabytes < 250

"""Works in the window for so long as a busy person would, and prints what memory it holds.

Its words are the shop's folder and how many minutes; a line each minute has the megabytes that the
process holds. Places are shown, boxes ticked, choices turned, words typed, jobs opened, by a hand
that is random and always the same.
"""

from __future__ import annotations

import gc
import os
import random
import sys
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QLineEdit,
    QPlainTextEdit,
    QWidget,
)

from desktop_app.places import Places
from desktop_app.program import Program
from desktop_app.shop_window.fields import LineField
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.place_names import (
    ASK,
    BACK,
    DRAWER,
    HEARD,
    JOB,
    KINDS,
    MONDAY,
    RULES,
    WATCH,
)

PLACES = (ASK, HEARD, WATCH, BACK, MONDAY, KINDS, DRAWER, RULES)
TURN_MS = 60
WORDS = ("wet", "misses", "12", "4.5", "cold ")
PAGE = os.sysconf("SC_PAGESIZE")


def held() -> float:
    """Return the megabytes that this process holds."""
    return int(Path("/proc/self/statm").read_text().split()[1]) * PAGE / 1e6


class Hand:
    """Does one thing a turn."""

    def __init__(self, program: Program, jobs: int, minutes: float) -> None:
        self.program, self.jobs = program, jobs
        self.chance = random.Random(7)
        self.begun = self.said = time.monotonic()
        self.until = self.begun + 60 * minutes

    def turn(self) -> None:
        """Do the next thing, or say what is held, or end."""
        now = time.monotonic()
        if now > self.until:
            QApplication.quit()
            return
        if now - self.said > 60:
            self.said = now
            print(f"{(now - self.begun) / 60:.0f} {held():.1f}", flush=True)
        window = self.program.window
        for over in QApplication.topLevelWidgets():
            if over is not window and over.isVisible():
                over.close()
        if self.program.desk is None:
            return
        if self.chance.random() < 0.2:
            self.go()
            return
        page = window.page(window.here())
        able = [w for w in page.findChildren(QWidget) if w.isVisible() and w.isEnabled()]
        self.act([w for w in able if isinstance(w, QCheckBox | QComboBox | QLineEdit)])

    def go(self) -> None:
        """Show a place, or open a job."""
        assert self.program.desk is not None
        places = self.program.desk.parent()
        assert isinstance(places, Places)
        if self.chance.random() < 0.3:
            self.leave_nothing_refused()
            places.open_job(self.chance.randint(1, self.jobs))
        else:
            self.program.window.go_to(self.chance.choice(PLACES))

    def leave_nothing_refused(self) -> None:
        """Empty what is not accepted: the job that is open would stay, with a new row each time."""
        page = self.program.window.page(JOB)
        for field in page.findChildren(LineField):
            if field.isVisible() and field.unsaved():
                field.setFocus()
                field.selectAll()
                QTest.keyClick(field, Qt.Key.Key_Delete)

    def act(self, controls: list[QWidget]) -> None:
        """Tick, turn or type."""
        if not controls:
            return
        one = self.chance.choice(controls)
        if isinstance(one, QCheckBox):
            QTest.mouseClick(one, Qt.MouseButton.LeftButton)
        elif isinstance(one, QComboBox):
            one.setFocus()
            QTest.keyClick(one, self.chance.choice((Qt.Key.Key_Down, Qt.Key.Key_Up)))
        elif isinstance(one, QLineEdit | QPlainTextEdit) and not one.isReadOnly():
            one.setFocus()
            one.selectAll()  # else the fields grow, and what they hold with them
            QTest.keyClicks(one, self.chance.choice(WORDS))


def main() -> int:
    folder, jobs, minutes = Path(sys.argv[1]), int(sys.argv[2]), float(sys.argv[3])
    app = QApplication([])
    dress(app)
    gc.disable()  # as the program starts; its window looks for garbage itself
    program = Program(folder, ahead=True)
    program.window.resize(1366, 768)
    program.start()
    hand = Hand(program, jobs, minutes)
    timer = QTimer()
    timer.timeout.connect(hand.turn)
    timer.start(TURN_MS)
    app.exec()
    program.close()
    return 0


if __name__ == "__main__":
    sys.exit(main())

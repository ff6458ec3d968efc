"""Shows each place of a shop's window, and prints how long it held the window each time.

Its word is the shop's folder. A line for each place has its name, the milliseconds until it was
painted, the first time and later ones, and the longest that anything held the window meanwhile.
The first line is of the seconds after the start, in which the pages are made.
"""

from __future__ import annotations

import gc
import os
import sys
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from statistics import median

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QEventLoop
from PySide6.QtWidgets import QApplication

from desktop_app.places import Places
from desktop_app.program import Program
from desktop_app.shop_window.look import dress
from desktop_app.shop_window.place_names import JOB, ON_RAIL
from desktop_app.shop_window.sources_unread import leave_sources_unread

LATER = 5  # times that a place is shown again
REST_SECONDS = 0.5  # without anything running beside the window, and a place is at rest
START_SECONDS = 8  # in which the window lays its tools out, and makes its pages
NO_BACKUP_MS = 3_600_000


def _timed(work: Callable[[], object]) -> float:
    begun = time.perf_counter()
    work()
    return (time.perf_counter() - begun) * 1000


class Watch:
    """Times what is done in the window until it is at rest."""

    def __init__(self, program: Program) -> None:
        self._program = program

    def show(self, go: Callable[[], object]) -> tuple[float, float]:
        """Return the milliseconds until a place was painted, and the longest hold until rest."""

        def shown() -> None:
            go()
            QApplication.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
            self._program.window.repaint()

        painted = _timed(shown)
        return painted, max(painted, self._rest())

    def _rest(self) -> float:
        assert self._program.desk is not None
        longest, idle = 0.0, time.perf_counter()
        while time.perf_counter() - idle < REST_SECONDS:
            held = _timed(QApplication.processEvents)
            longest = max(longest, held)
            if self._program.desk.errands.busy() or held > 5:
                idle = time.perf_counter()
            time.sleep(0.001)
        return longest


def main() -> int:
    gc.disable()  # as the program does when it is started: it looks for garbage itself
    leave_sources_unread()
    app = QApplication([])
    dress(app)
    program = Program(Path(sys.argv[1]), backup_after_ms=NO_BACKUP_MS, ahead=True)
    program.window.resize(1366, 768)
    program.start()
    while program.desk is None:
        app.processEvents()
    watch = Watch(program)
    begun = time.perf_counter()
    longest = 0.0
    while time.perf_counter() - begun < START_SECONDS:
        longest = max(longest, watch.show(lambda: None)[1])
    print("Start", *(f"{one:.1f}" for one in (0.0, longest, 0.0, 0.0)), flush=True)
    places = program.desk.parent()
    assert isinstance(places, Places)
    ways: dict[str, Callable[[], object]] = {JOB: lambda: places.open_job(1)}
    ways |= {place: partial(program.window.go_to, place) for place in ON_RAIL}
    first = {place: watch.show(go) for place, go in ways.items()}
    again: dict[str, list[tuple[float, float]]] = {place: [] for place in ways}
    for _ in range(LATER):
        for place, go in ways.items():
            again[place].append(watch.show(go))
    for place in ways:
        later, held = (median(one) for one in zip(*again[place], strict=True))
        numbers = (*first[place], later, held)
        print(place.replace(" ", "_"), *(f"{one:.1f}" for one in numbers), flush=True)
    program.close()
    return 0


if __name__ == "__main__":
    sys.exit(main())

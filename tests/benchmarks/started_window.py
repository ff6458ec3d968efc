"""A bare Qt window and our own, each started as a process of its own that prints its figures."""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

# Prints: seconds to the first paint, seconds to the end, kilobytes in memory at the end.
_DONE = """
def done():
    # What the kernel's record says; getrusage would inherit the peak of the test itself.
    kept = next(line for line in open("/proc/self/status") if line.startswith("VmRSS"))
    print(time.perf_counter() - start, kept.split()[1], flush=True)
    os._exit(0)
"""

BARE = (
    "import os, sys, time; start = time.perf_counter()"
    + _DONE
    + """
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QWidget
os.environ["QT_QPA_PLATFORM"] = "offscreen"
class Window(QWidget):
    def paintEvent(self, event):
        print(time.perf_counter() - start, end=" ")
        for name in sys.argv[1:]: __import__(name)
        done()
app = QApplication(sys.argv[:1]); window = Window(); window.resize(1280, 820); window.show()
app.exec()
"""
)

# The goal "ready" is a window left open until all that it does beside the person is done: what it
# keeps for the next start (the word index, the tables read) is there afterwards, as on any day.
# The window as a person starts it, by the command line. That asks whether there is a screen, so
# one is named; what draws is put off screen only when the application is made.
OURS = (
    "import os, sys, time; start = time.perf_counter()"
    + _DONE
    + """
from desktop_app.__main__ import main
folder, goal = sys.argv[1:]
class Watched:
    def __init__(self, program):
        from PySide6.QtCore import QEvent, QObject, QTimer
        class Eye(QObject):
            seen = False
            def eventFilter(eye, what, event):
                if event.type() == QEvent.Type.Paint and not eye.seen:
                    eye.seen = True; print(time.perf_counter() - start, end=" ")
                    if goal == "frame": done()
                return False
        self.program, self.eye, self.timer = program, Eye(), QTimer()
        self.idle = time.perf_counter()
        program.window.installEventFilter(self.eye)
        self.timer.timeout.connect(self.look); self.timer.start(1)
    def look(self):
        if self.program.desk is None: return
        if goal == "ready":
            if self.program.desk.errands.busy(): self.idle = time.perf_counter()
            if time.perf_counter() - self.idle > 3: done()
            return
        self.timer.stop()
        from desktop_app.shop_window.place_names import ASK, BACK, HEARD, WATCH
        page = self.program.window.page(ASK)
        page.ask("misses when damp"); page._search()
        if goal == "memory":
            for place in (HEARD, WATCH, BACK): self.program.window.go_to(place)
        done()
class Hook:
    # Takes hold of the program's module when it is first imported, and not before.
    def find_spec(self, name, path=None, target=None):
        if name != "desktop_app.program_started": return None
        sys.meta_path.remove(self)
        import importlib.util
        spec = importlib.util.find_spec(name)
        load = spec.loader.exec_module
        def exec_module(module):
            load(module)
            program_of = module.Program
            begin, own = program_of.start, module._application
            def application():
                os.environ["QT_QPA_PLATFORM"] = "offscreen"
                return own()
            def started(program):
                program.watched = Watched(program); begin(program)
            module._application, program_of.start = application, started
        spec.loader.exec_module = exec_module
        return spec
sys.meta_path.insert(0, Hook())
main(["--shop", folder])
"""
)


@dataclass(frozen=True, slots=True)
class Figures:
    """Seconds to the first paint and to the end, kilobytes in memory at the end."""

    painted: float
    over: float
    kept: float


def as_installed(own: Path) -> dict[str, str]:
    """Return an environment in which `own` holds compiled modules and what a program remembers.

    Python keeps compiled modules as an installed program has them: without them every module
    of ours would be compiled anew at each start, and none of the peer's.
    """
    places = {f"XDG_{kind}_HOME": str(own / kind.lower()) for kind in ("DATA", "CONFIG", "CACHE")}
    environ = {**os.environ, **places, "PYTHONPYCACHEPREFIX": str(own / "compiled")}
    environ.pop("PYTHONDONTWRITEBYTECODE", None)
    return environ


def said(code: str, *words: str, own: Path) -> str:
    """Run BARE or OURS in a process, and return what it prints."""
    environ = as_installed(own) | {"DISPLAY": ":none"}
    environ.pop("QT_QPA_PLATFORM", None)
    return subprocess.run(
        [sys.executable, "-c", code, *words],
        env=environ,
        capture_output=True,
        text=True,
        check=True,
    ).stdout


def started(code: str, *words: str, own: Path) -> Figures:
    """Run BARE or OURS in a process, and return its figures."""
    return Figures(*(float(word) for word in said(code, *words, own=own).split()))

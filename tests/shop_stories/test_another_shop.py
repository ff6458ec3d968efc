"""From one shop to another: the demo is no trap, and a shop of one's own is one press away."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtWidgets import QAbstractButton, QPlainTextEdit
from pytestqt.qtbot import QtBot

from desktop_app.commands.demo import MARKER
from desktop_app.commands.shop_place import new_place, remember
from desktop_app.program import WELCOME, Program
from desktop_app.shop_window.place_names import RULES
from tests.conftest import NOON
from tests.shop_stories.counter import Counter, sitting

pytestmark = pytest.mark.embedded  # a folder is chosen
ROOT = Path(__file__).resolve().parents[2]
# Opens a shop, goes on with another where that is not the same, and is started anew from there.
STARTED_ANEW = """
import sys
import os
import subprocess
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from desktop_app import program_started
from desktop_app.shop_record.own_program import own_start
from desktop_app.shop_window import started_anew
own_start.start_anew = lambda folder: print(folder) or 0
named, wanted = Path(sys.argv[1]), Path(sys.argv[2]) if len(sys.argv) > 2 else None
def ask(program):
    program.window.shop_wanted.emit(None)
    (there,) = program.findChildren(own)
    look = QTimer(there, interval=20)
    look.timeout.connect(lambda: there.window.here() and started_anew.start_anew(there.window))
    look.start()
def opened(program, folder):
    if wanted is None:
        QTimer.singleShot(0, lambda: ask(program))
    elif folder == wanted:
        shown = program.findChildren(own) or [program]
        QTimer.singleShot(0, lambda: started_anew.start_anew(shown[0].window))
    else:
        QTimer.singleShot(0, lambda: program.window.shop_wanted.emit(wanted))
def made(*said, **more):
    program = own(*said, **more)
    program.opened.connect(lambda folder: opened(program, folder))
    return program
own, program_started.Program = program_started.Program, made
sys.exit(program_started.open_window(named))
"""


@pytest.fixture
def demo(tmp_path: Path) -> Path:
    folder = tmp_path / "demo-shop"
    new_place(folder, lambda: NOON).close()
    (folder / MARKER).write_text("", "utf-8")
    return folder


def plainly(qtbot: QtBot, started: list[Program]) -> Counter:
    """Start the program without saying which shop."""
    program = Program(None, lambda: NOON)
    started.append(program)
    program.start()
    there = Counter(qtbot, program)
    qtbot.waitUntil(lambda: bool(there.window.here()), timeout=10_000)
    return there


def buttons(at: Counter) -> list[str]:
    return [one.text() for one in at.window.findChildren(QAbstractButton) if one.isVisible()]


def the_other(at: Counter) -> Counter:
    """Return the counter of the window that took this one's place."""
    at.bot.waitUntil(lambda: not at.window.isVisible())
    there = at.beside()
    there.window.activateWindow()
    at.bot.waitUntil(there.window.isActiveWindow, timeout=5_000)
    return there


def started_anew(*folders: Path) -> str:
    """What the program would open when it is started anew, as STARTED_ANEW does it."""
    said = subprocess.run(
        [sys.executable, "-c", STARTED_ANEW, *map(str, folders)],
        env={**os.environ, "QT_QPA_PLATFORM": "offscreen", "PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
        timeout=120,
    )
    return said.stdout.strip()


def test_house_rules_lead_to_another_shop_and_back(qtbot: QtBot, tmp_path: Path) -> None:
    other_folder = tmp_path / "lane"
    new_place(other_folder, lambda: NOON).close()
    remember(other_folder)
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        at.go(RULES)
        at.press("Another shop…")
        there = the_other(at)
        assert there.window.here() == WELCOME
        there.press(f"Open {other_folder}")
        qtbot.waitUntil(lambda: there.program.desk is not None, timeout=10_000)
        assert there.program.desk is not None
        assert there.program.desk.record.folder == other_folder
        there.quiet()
        widgets = len(at.window.findChildren(QAbstractButton))
        assert widgets < 30  # the pages of the window that was closed are gone


def test_what_was_only_typed_is_there_when_one_comes_back(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        at.go("Heard")
        at.type_into(QPlainTextEdit, "What the customer says", "misses when damp")
        at.go(RULES)
        at.press("Another shop…")
        the_other(at)
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        at.go("Heard")
        said = at.find(QPlainTextEdit, "What the customer says")
        assert said.toPlainText() == "misses when damp"  # a draft outlives the window


def test_in_the_demo_ones_own_shop_is_one_press_away(qtbot: QtBot, demo: Path) -> None:
    with sitting(qtbot, demo, NOON) as at:
        at.press("Your own shop…")
        there = the_other(at)
        assert there.window.here() == WELCOME
        assert "Make a new shop" in buttons(there)


@pytest.mark.parametrize("goes_on", [False, True], ids=["from_the_start", "another_shop"])
def test_started_anew_it_opens_the_shop_that_was_open(
    tmp_path: Path, demo: Path, goes_on: bool
) -> None:
    mine = tmp_path / "mine"
    new_place(mine, lambda: NOON).close()
    remember(mine)  # a plain start would open this one
    named = mine if goes_on else demo
    assert started_anew(named, demo) == str(demo)


def test_started_anew_where_it_is_asked_which_shop_it_is_a_plain_start(demo: Path) -> None:
    assert started_anew(demo) == "None"


def test_only_the_demo_says_so(qtbot: QtBot, tmp_path: Path) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON) as at:
        assert "Your own shop…" not in buttons(at)
        assert "A car is here" in buttons(at)


def test_a_plain_start_after_the_demo_asks_which_shop(
    qtbot: QtBot, demo: Path, started: list[Program]
) -> None:
    with sitting(qtbot, demo, NOON):
        pass
    at = plainly(qtbot, started)
    assert at.window.here() == WELCOME
    assert at.find(QAbstractButton, f"Open {demo}").isEnabled()


def test_a_plain_start_opens_ones_own_shop_whatever_was_looked_at_last(
    qtbot: QtBot, demo: Path, tmp_path: Path, started: list[Program]
) -> None:
    with sitting(qtbot, tmp_path / "shop", NOON):
        pass
    with sitting(qtbot, demo, NOON):
        pass
    at = plainly(qtbot, started)
    qtbot.waitUntil(lambda: at.program.desk is not None, timeout=10_000)
    assert at.program.desk is not None
    assert at.program.desk.record.folder == tmp_path / "shop"
    assert at.window.here() != WELCOME
    at.quiet()

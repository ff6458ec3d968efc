"""A shop that has no program yet: set up in a minute, and found again at the next start."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from functools import partial
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit
from pytestqt.qtbot import QtBot

from demo_shop import build
from desktop_app.commands import shop_place
from desktop_app.commands.demo import take_away
from desktop_app.commands.shop_place import new_place, remember, shops_opened
from desktop_app.program import WELCOME, Program
from desktop_app.repair_jobs.stored_people import people_here
from desktop_app.shop_record.step import Step
from desktop_app.shop_window.place_names import ASK, FIRST_RULES
from desktop_app.shop_window.welcome_page import WelcomePage
from tests.conftest import NOON
from tests.shop_stories.counter import Counter

pytestmark = pytest.mark.embedded  # a folder is chosen


@pytest.fixture
def new_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path / "Cobble Lane"
    folder.mkdir()
    monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *_: str(folder))
    return folder


@pytest.fixture
def at(qtbot: QtBot) -> Iterator[Counter]:
    """The window as it is started for the first time."""
    program = Program(None, lambda: NOON)
    qtbot.addWidget(program.window)
    program.start()
    counter = Counter(qtbot, program)
    qtbot.waitUntil(lambda: counter.window.here() == WELCOME)
    yield counter
    program.close()


def test_a_new_shop_is_set_up_on_one_page(at: Counter, new_folder: Path) -> None:
    at.press("Another folder…")
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    at.type_into(QLineEdit, "Shop name", "Cobble Lane", enter=True)
    at.choose("Distance unit", "km")
    at.type_into(QLineEdit, "Name of a new person", "Odile", enter=True)
    assert at.program.desk is not None
    rules = at.program.desk.rules
    assert (rules.shop_name, rules.distance_unit) == ("Cobble Lane", "km")
    assert "Cobble Lane" in at.window.windowTitle()
    at.press("Begin: a car is here")
    assert at.window.here() == "Heard"
    at.window.setFocus()
    at.bot.waitUntil(lambda: at.button(ASK).isVisible())
    at.bot.keyClick(at.window, Qt.Key.Key_1, Qt.KeyboardModifier.AltModifier)
    assert at.window.here() == ASK  # the first place, as at every later start
    people = at.program.desk.ask(people_here)
    assert people is not None
    assert [name for _, name in people] == ["Odile"]


def test_a_name_is_typed_at_once_over_the_one_that_stands_there(
    at: Counter, new_folder: Path
) -> None:
    at.press("Another folder…")
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    at.bot.waitUntil(lambda: at.find(QLineEdit, "Shop name").hasFocus())
    at.bot.keyClicks(QApplication.focusWidget(), "Rusty Bolt")
    assert at.find(QLineEdit, "Shop name").text() == "Rusty Bolt"


def _stands_at(at: Counter, place: str) -> bool:
    return at.window.here() == place


def test_a_shop_that_a_command_made_is_set_up_at_its_first_start(
    qtbot: QtBot, tmp_path: Path
) -> None:
    new_place(tmp_path / "shop").close()
    for begun, here in (("Cobble Lane", FIRST_RULES), ("", ASK)):
        program = Program(tmp_path / "shop", lambda: NOON)
        qtbot.addWidget(program.window)
        program.start()
        at = Counter(qtbot, program)
        qtbot.waitUntil(partial(_stands_at, at, here))
        if begun:
            at.type_into(QLineEdit, "Shop name", begun, enter=True)
        program.close()


def test_a_promise_that_was_typed_is_kept_without_a_button(at: Counter, new_folder: Path) -> None:
    at.press("Another folder…")
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    days = at.find(QLineEdit, "Days")
    days.setFocus()
    days.selectAll()
    at.bot.keyClicks(days, "60")
    at.press("Begin: a car is here")
    assert at.window.here() == "Heard"
    assert at.program.desk is not None
    assert at.program.desk.rules.window_days == 60


def test_a_name_that_was_typed_and_not_added_is_added_when_the_page_is_left(
    at: Counter, new_folder: Path
) -> None:
    at.press("Another folder…")
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    at.type_into(QLineEdit, "Name of a new person", "Odile")
    at.press("Begin: a car is here")
    assert at.program.desk is not None
    assert [name for _, name in at.program.desk.ask(people_here)] == ["Odile"]


def test_every_rule_of_that_page_can_stay_as_it_is(at: Counter, new_folder: Path) -> None:
    at.press("Another folder…")
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    at.press("Begin: a car is here")
    assert at.window.here() == "Heard"


def test_a_folder_that_holds_something_is_refused_and_left_alone(
    at: Counter, new_folder: Path
) -> None:
    (new_folder / "notes.txt").write_text("mine")
    at.press("Another folder…")
    at.press("Make a new shop")
    at.wait_for("is not empty")
    assert at.window.here() == WELCOME
    assert [path.name for path in new_folder.iterdir()] == ["notes.txt"]


def test_a_folder_is_proposed_that_nothing_has_and_can_be_typed_over(
    at: Counter, tmp_path: Path
) -> None:
    field = at.find(QLineEdit, "Folder of a new shop")
    proposed = Path(field.text())
    assert proposed.name == "Benchwitness"
    assert proposed.is_absolute()
    assert not proposed.exists()
    for part in ("my shop", "~nobody-here/shop"):  # nobody has that home folder
        at.type_into(QLineEdit, "Folder of a new shop", part, enter=True)
        at.wait_for("Type the whole path of the folder.")
        assert at.window.here() == WELCOME
    at.type_into(QLineEdit, "Folder of a new shop", str(tmp_path / "Lane" / "shop"), enter=True)
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    assert at.program.desk is not None
    assert at.program.desk.record.folder == tmp_path / "Lane" / "shop"


def test_the_proposed_folder_is_one_press_away_and_the_next_is_another(
    at: Counter, qtbot: QtBot
) -> None:
    proposed = Path(at.find(QLineEdit, "Folder of a new shop").text())
    at.press("Make a new shop")
    at.bot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    assert at.program.desk is not None
    assert at.program.desk.record.folder == proposed
    page = WelcomePage([proposed])
    qtbot.addWidget(page)
    lines = [one for one in page.findChildren(QLineEdit) if one.text()]
    assert [Path(one.text()).name for one in lines] == ["Benchwitness 2"]


@pytest.mark.qt_log_ignore("does not support raise", extend=True)  # off screen there is no front
def test_a_window_that_was_put_away_comes_forward_when_the_program_is_started_again(
    at: Counter,
) -> None:
    at.window.showMinimized()
    assert at.window.isMinimized()
    at.program.come_forward()  # as the second start asks for; it ends itself then
    at.bot.waitUntil(lambda: at.window.isVisible() and not at.window.isMinimized())


def test_the_demo_shop_is_made_beside_the_window_and_opened(
    at: Counter, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def small(folder: Path, _now: datetime) -> Iterator[Step]:
        new_place(folder, lambda: NOON).close()
        (folder / "demo-shop.toml").write_text("")
        yield Step(1, 1, "Made")

    monkeypatch.setattr(build, "build_demo", small)
    monkeypatch.setattr(shop_place, "own_folder", lambda: tmp_path)
    at.press("Look at the demo shop")
    at.bot.waitUntil(lambda: at.window.here() == ASK)
    assert at.program.desk is not None
    assert at.program.desk.record.folder == tmp_path / "demo-shop"


def test_the_demo_shop_is_taken_away_by_two_presses_and_no_other_shop_is(
    qtbot: QtBot, tmp_path: Path
) -> None:
    demo, own = tmp_path / "demo", tmp_path / "own"
    for folder in (own, demo):
        new_place(folder, lambda: NOON).close()
        remember(folder)
    (demo / "demo-shop.toml").write_text("")
    program = Program(None, lambda: NOON, ask=True)
    qtbot.addWidget(program.window)
    program.start()
    at = Counter(qtbot, program)
    qtbot.waitUntil(lambda: at.window.here() == WELCOME)
    assert at.button(f"Open {own}")
    at.press("Take the demo shop away")
    assert demo.is_dir()
    at.press("Delete it: press once more")
    qtbot.waitUntil(lambda: not demo.exists(), timeout=5000)
    qtbot.waitUntil(lambda: not at.reads(str(demo)), timeout=5000)
    assert at.window.here() == WELCOME
    assert at.button(f"Open {own}")
    take_away(own)
    assert own.is_dir()
    program.close()


def test_a_folder_that_was_named_and_is_not_there_yet_is_proposed(
    qtbot: QtBot, tmp_path: Path
) -> None:
    program = Program(tmp_path / "lane", lambda: NOON)
    qtbot.addWidget(program.window)
    program.start()
    at = Counter(qtbot, program)
    qtbot.waitUntil(lambda: at.window.here() == WELCOME)
    assert at.find(QLineEdit, "Folder of a new shop").text() == str(tmp_path / "lane")
    at.press("Make a new shop")
    qtbot.waitUntil(lambda: at.window.here() == FIRST_RULES)
    assert not at.reads("There is no shop")
    program.close()


def test_shops_that_were_open_before_are_one_press_away(
    qtbot: QtBot, tmp_path: Path, new_folder: Path
) -> None:
    for name in ("north", "south"):
        new_place(tmp_path / name, lambda: NOON).close()
        remember(tmp_path / name)
    assert shops_opened() == [tmp_path / "south", tmp_path / "north"]
    (tmp_path / "south").rename(tmp_path / "put away")
    program = Program(tmp_path / "south", lambda: NOON)
    qtbot.addWidget(program.window)
    program.start()
    at = Counter(qtbot, program)
    qtbot.waitUntil(lambda: at.window.here() == WELCOME)
    # It is somewhere else now: none is to be made where it was.
    assert at.find(QLineEdit, "Folder of a new shop").text() != str(tmp_path / "south")
    at.press(f"Open {tmp_path / 'north'}")
    assert program.desk is not None
    assert program.desk.record.folder == tmp_path / "north"
    program.close()

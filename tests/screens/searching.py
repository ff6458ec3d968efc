"""A shop with old jobs, and the search's window on it, found by what a person sees."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TypeVar

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QListView, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from desktop_app.commands.shop_place import follow
from desktop_app.parts_compared.part_kinds.kind_shelf import load_kinds
from desktop_app.repair_jobs.stored import JobCheck
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.own_program.resource_folder import resource_path
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.symptom_search.screen.search_place import SearchPlace
from desktop_app.symptom_search.vocabulary import Vocabulary
from desktop_app.symptom_search.vocabulary_file import shop_vocabulary
from tests.symptom_search.conftest import OldJobs

W = TypeVar("W", bound=QWidget)
SOME_TIME_AGO = "2019-03-04T16:00:00+00:00"
SOON_AFTER = "2019-05-06"


def write_old_jobs(shop: ShopRecord) -> OldJobs:
    """Write six jobs: three rotors for misfires, one of which came back, and three of brakes."""
    kinds = load_kinds([resource_path("part_kinds")]).kinds
    follow(shop)
    jobs = OldJobs(shop, shop_vocabulary(), kinds)
    estate = jobs.car(description="2.0-litre diesel estate, 2010s")
    coupe = jobs.car(description="1.8-litre coupé, 2000s")
    rotor = {"parts": ("distributor-rotor",), "codes": ("P0300",), "system": "ignition"}
    first = jobs.job("misses in the rain", car=estate, left=SOME_TIME_AGO, **rotor)
    second = jobs.job("misses badly in the rain", car=coupe, **rotor)
    jobs.job("misses when damp", car=coupe, **rotor)
    for _ in range(3):
        jobs.job("brakes squeal", car=coupe, system="brakes", correction="cleaned and greased")
    jobs.told(first, "same trouble", SOON_AFTER, "same symptom")

    def look(deed: Deed) -> None:
        deed.add(JobCheck, job_id=first, kind="inspection", words="Looked into the cap")
        deed.add(JobCheck, job_id=second, kind="inspection", words="Looked into the cap.")

    shop.do("Look", look)
    return jobs


class Sought:
    """The window of the search, or one beside it, as a person sees and uses it."""

    def __init__(self, bot: QtBot, desk: Desk, shown: QWidget) -> None:
        self.bot, self.desk, self.shown = bot, desk, shown

    def named(self, kind: type[W], name: str) -> W:
        """Return the visible control with this accessible name."""
        seen = [w for w in self.shown.findChildren(kind) if w.isVisible()]
        found = [w for w in seen if w.accessibleName() == name]
        assert found, f"nothing is called “{name}”; there are {[w.accessibleName() for w in seen]}"
        return found[0]

    @property
    def field(self) -> QLineEdit:
        """The field of the question."""
        return self.named(QLineEdit, "Ask the old jobs")

    def rows(self, of: str = "Jobs found") -> list[str]:
        """Return what a list says, row by row; nothing while it is hidden."""
        views = [v for v in self.shown.findChildren(QListView) if v.accessibleName() == of]
        model = views[0].model()
        seen = range(model.rowCount()) if views[0].isVisible() else ()
        return [str(model.index(i, 0).data()) for i in seen]

    def says(self, words: str) -> bool:
        """Tell whether a visible label says this."""
        labels = self.shown.findChildren(QLabel)
        return any(words in label.text() for label in labels if label.isVisible())

    def ask(self, text: str, found: int, each: str = "") -> None:
        """Type a question and wait until so many jobs are shown for it, each with these words."""
        self.field.setFocus()
        self.field.selectAll()
        self.bot.keyClicks(self.field, text)

        def shown() -> bool:
            return len(self.rows()) == found and all(each in row for row in self.rows())

        self.bot.waitUntil(lambda: self.says("the best first") and shown())

    def press(self, name: str) -> None:
        """Click the button of this name, once it is there."""
        self.offers(name)
        self.bot.mouseClick(self.named(QPushButton, name), Qt.MouseButton.LeftButton)

    def open(self, name: str) -> None:
        """Press a number and wait for the list that stands behind it."""
        self.press(name)
        self.bot.waitUntil(lambda: "Back to the jobs found" in self.buttons())
        self.bot.waitUntil(lambda: self.says(f"{name}."))

    def offers(self, name: str) -> None:
        """Wait until a button of this name is seen."""
        self.bot.waitUntil(lambda: name in self.buttons())

    def buttons(self) -> list[str]:
        """Return the names of the buttons that are seen."""
        return [b.accessibleName() for b in self.shown.findChildren(QPushButton) if b.isVisible()]

    def choose(self, name: str, words: str) -> None:
        """Go down a choice by its arrow key until it says this."""
        choice = self.named(QComboBox, name)
        choice.setFocus()
        for _ in range(choice.count()):
            if choice.currentText() == words:
                return
            self.bot.keyClick(choice, Qt.Key.Key_Down)
        assert choice.currentText() == words


@contextmanager
def search_page(
    qtbot: QtBot, shop: ShopRecord, words: Callable[[], Vocabulary] = shop_vocabulary
) -> Iterator[Sought]:
    """Show the search's page on a shop, its index looked after."""
    desk = Desk(shop)
    kinds = load_kinds([resource_path("part_kinds")]).kinds
    place = SearchPlace(desk, words, lambda: kinds, lambda _job: None, QWidget)
    page = place.page()
    qtbot.addWidget(page)
    page.resize(1100, 900)
    page.show()
    page.came_here()
    with qtbot.waitSignal(place.index.looked):
        place.index.look()
    qtbot.waitUntil(lambda: not desk.errands.busy())
    yield Sought(qtbot, desk, page)
    desk.errands.finish()

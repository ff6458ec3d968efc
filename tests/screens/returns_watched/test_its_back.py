"""It's Back: what waits, the return then and now, and its chain."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtWidgets import QApplication, QLabel, QListView
from pytestqt.qtbot import QtBot

from desktop_app.part_photos.screen.photo_strip import PhotoStrip
from desktop_app.part_photos.stored import Photo
from desktop_app.parts_compared.stored import Pair, PairPhoto
from desktop_app.repair_jobs.stored import Job, JobCondition, Person
from desktop_app.returns_watched.judgement import Judgement
from desktop_app.returns_watched.screen.its_back_page import ItsBackPage
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.page import Section
from tests.screens.judging_page import (
    button,
    choose,
    kept,
    listed,
    opened,
    press,
    says,
    settle,
    write,
)
from tests.watched_shop import a_week_of_returns, job, judge_return, vehicle


@pytest.fixture
def page(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> ItsBackPage:
    a_week_of_returns(shop)
    shop.who = "Odile"
    return opened(desk, qtbot)


class Squashed(QObject):
    """Sees every box that is painted with less height than what stands in it takes."""

    def __init__(self) -> None:
        super().__init__()
        self.painted = 0
        self.boxes: list[str] = []

    def eventFilter(self, seen: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint and isinstance(seen, Section):
            self.painted += 1
            if seen.height() < seen.layout().heightForWidth(seen.width()):
                self.boxes.append(seen.accessibleName())
        return False


def test_no_box_is_ever_seen_squashed(
    shop: ShopRecord, desk: Desk, qtbot: QtBot, qapp: QApplication
) -> None:
    a_week_of_returns(shop)
    squashed = Squashed()
    qapp.installEventFilter(squashed)
    page = opened(desk, qtbot)
    qtbot.waitUntil(lambda: squashed.painted > 0)
    choose(page, "J-162 after J-140")
    settle(desk, qtbot)
    assert button(page, "Now: J-162")
    qapp.removeEventFilter(squashed)
    assert squashed.boxes == []


def test_what_waits_stands_first_the_oldest_at_the_top(page: ItsBackPage) -> None:
    rows = listed(page)
    assert len(rows) == 4
    assert "J-131 after J-104" in rows[0]
    assert rows[0].endswith("41 days, 880 mi\n◇ waits 34 days, more than 14")
    assert rows[0].splitlines()[1] == "TIN 01 · 1.8-litre compact hatchback"  # which car it is
    assert "J-162 after J-140" in rows[-1]
    assert rows[-1].endswith("22 days (no odometer to say how far)\n◇ waits 4 days")
    assert says(page, "3 visits wait for a judgement, the oldest since 2026-10-13; 1 for more")
    assert says(page, "Until then it is neither a comeback nor fine.")
    assert says(page, "41 days, 880 mi after hand-over, inside the window, 45.6% of it used")
    assert button(page, "Then: J-104").isEnabled()


def test_choosing_a_return_by_keyboard_shows_it(page: ItsBackPage, qtbot: QtBot) -> None:
    view = page.findChild(QListView)
    view.setFocus()
    qtbot.keyClick(view, Qt.Key.Key_End)
    assert says(page, "Why it is here: same system: charging and battery.")
    assert says(page, "2026-11-12 to 2026-11-15, odometer not read")
    with qtbot.waitSignal(page.job_chosen) as asked:
        press(page, qtbot, "Now: J-162")
    assert asked.args == [6]


def test_while_a_key_is_held_the_list_moves_and_the_return_follows_at_rest(
    page: ItsBackPage, qapp: QApplication, qtbot: QtBot
) -> None:
    qapp.setDoubleClickInterval(2000)  # on a busy machine a row takes as long as a slow key
    view = page.findChild(QListView)
    view.setFocus()
    for _ in range(3):
        qtbot.keyClick(view, Qt.Key.Key_Down)
    assert view.currentIndex().row() == 3
    assert not says(page, "Why it is here: same system: charging and battery.")
    qtbot.waitUntil(lambda: says(page, "Why it is here: same system: charging and battery."))


def test_both_jobs_are_told_side_by_side(shop: ShopRecord, desk: Desk, qtbot: QtBot) -> None:
    ids = a_week_of_returns(shop)
    with shop.deed("Tell more of J-104") as deed:
        ana = deed.add(Person, name="Ana")
        deed.change(
            Job,
            ids["J-104"],
            technician_id=ana,
            proof_level=2,
            proof_words="a short drive",
            declined="spark leads",
        )
        deed.add(JobCondition, job_id=ids["J-104"], condition="cold", happens=1)
        deed.change(
            Pair,
            1,
            origin="new, other maker's",
            supplier="Tin Supply",
            number_removed="DR-22",
            number_on_part="DR-23",
            position="top",
        )
    page = opened(desk, qtbot)
    for words in (
        "cold",
        "cap and rotor replaced. Done by Ana.",
        "distributor rotor, top: off DR-22, on DR-23, new, from another maker, from Tin Supply.",
        "road (2 of 4). It was driven on the road. a short drive",
        "spark leads",
        "P0300",
        "nobody asked",
        "nobody said",
    ):
        assert says(page, words), words


def test_the_verdict_of_the_pair_is_that_of_its_kind(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    from desktop_app.commands.shop_place import kinds_of

    a_week_of_returns(shop)
    page = opened(desk, qtbot, lambda: kinds_of(shop))
    assert says(page, "origin not said. ◌ not enough measured.")


def test_the_photos_of_the_parts_stand_under_their_job(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    ids = a_week_of_returns(shop)
    sha = "5" * 64
    with shop.deed("Photograph the rotor") as deed:
        photo = deed.add(
            Photo,
            job_id=ids["J-104"],
            sha256=sha,
            name="rotor.jpg",
            media_type="image/jpeg",
            size_bytes=1,
            width=4,
            height=3,
            taken_at=None,
            note="",
        )
        deed.add(PairPhoto, pair_id=1, photo_id=photo, side="removed", view="top")
    page = opened(desk, qtbot)
    strips = [one for one in page.findChildren(PhotoStrip) if one.isVisibleTo(page)]
    assert [strip.accessibleName() for strip in strips] == ["Photos of the parts, then"]
    assert [photo.name for photo in strips[0].photos()] == ["rotor.jpg"]
    choose(page, "J-162 after J-140")
    assert not any(one.isVisibleTo(page) for one in page.findChildren(PhotoStrip))
    settle(desk, qtbot)


def test_a_chain_is_shown_from_its_first_job(page: ItsBackPage, desk: Desk, qtbot: QtBot) -> None:
    assert not says(page, "A chain of")
    desk.do(judge_return, 1, 2, "same symptom")
    settle(desk, qtbot)
    choose(page, "J-160 after J-131")
    assert says(page, "A chain of 3 jobs. It counts once, against the first: J-104.")
    with qtbot.waitSignal(page.job_chosen) as asked:
        press(page, qtbot, "Open J-104, 1 of 3 in the chain")
    assert asked.args == [1]
    assert button(page, "J-160, 2026-11-10")


def test_two_vehicles_are_not_proposed_again(page: ItsBackPage, desk: Desk, qtbot: QtBot) -> None:
    choose(page, "J-162 after J-140")
    press(page, qtbot, "These are two vehicles")
    settle(desk, qtbot)
    assert not any("J-162" in row for row in listed(page))
    desk.undo()
    settle(desk, qtbot)
    assert any("J-162" in row for row in listed(page))


def test_next_goes_to_the_oldest_other_one_that_waits(
    page: ItsBackPage, desk: Desk, qtbot: QtBot
) -> None:
    with qtbot.waitSignal(page.waiting) as told:
        press(page, qtbot, "Unrelated")
        settle(desk, qtbot)
    assert told.args == [2]
    view = page.findChild(QListView)
    press(page, qtbot, "Next one to judge")
    assert view.currentIndex().row() == 0
    press(page, qtbot, "Next one to judge")
    assert view.currentIndex().row() == 1


def test_a_pair_asked_for_is_shown_even_if_it_is_older_than_the_list(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    car = vehicle(shop)
    then = job(shop, car, "J-1", "2024-05-01", "2024-05-01")
    now = job(shop, car, "J-2", "2024-06-01", "2024-06-01")
    shop.who = "Odile"
    page = opened(desk, qtbot)
    assert listed(page) == []
    assert says(page, "No car has come back within a year")
    page.show_pair(then, now)
    assert button(page, "Then: J-1")
    press(page, qtbot, "Same symptom")
    assert kept(shop, "J-1", "J-2").judgement is Judgement.SAME_SYMPTOM
    settle(desk, qtbot)


def test_a_concern_that_looks_like_markup_stays_words(
    shop: ShopRecord, desk: Desk, qtbot: QtBot
) -> None:
    car = vehicle(shop)
    job(shop, car, "J-1", "2026-05-01", "2026-05-01", concern="<b>shakes</b>")
    job(shop, car, "J-2", "2026-06-01", None, concern="<img src='x.png'> again")
    page = opened(desk, qtbot)
    assert says(page, "<b>shakes</b>")
    for label in page.findChildren(QLabel):
        assert label.textFormat() == Qt.TextFormat.PlainText


def test_what_is_not_accepted_holds_the_return_on_the_page(
    page: ItsBackPage, desk: Desk, qtbot: QtBot
) -> None:
    told: list[object] = []
    desk.told.connect(told.append)
    write(page, qtbot, "Parts", "a lot")
    choose(page, "J-162 after J-140")
    qtbot.waitUntil(lambda: page.findChild(QListView).currentIndex().row() == 0)
    assert button(page, "Then: J-104")
    assert "“Parts” under “What did it cost?” of J-104 and J-131 is not accepted" in str(told[0])
    page.show_pair(5, 6)
    assert button(page, "Then: J-104")
    write(page, qtbot, "Parts", "12")
    choose(page, "J-162 after J-140")
    assert button(page, "Then: J-140")
    settle(desk, qtbot)


def test_every_control_of_the_page_has_a_name(page: ItsBackPage) -> None:
    from PySide6.QtWidgets import QComboBox, QLineEdit, QPlainTextEdit, QPushButton

    for kind in (QComboBox, QLineEdit, QPlainTextEdit, QPushButton, QListView):
        for control in page.findChildren(kind):
            if control.isVisibleTo(page):
                assert control.accessibleName() or control.text(), control

"""Readings from photos on the bench, and the way from a pair to the photo bench."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton

from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.stored import Mark
from desktop_app.parts_compared.screen.bench_readings_of_pair import BenchReadingsOfPair
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.parts_compared.photo_story import PhotoStory, a_photographed_rotor
from tests.screens.bench_desk import Bench, all_kinds, named, retype

BENCH = "Photo bench: measure in these photos, distributor rotor"
FIELD = "tip width, removed"
SIGN = "1 of {} readings taken from marks on the photo"


@pytest.fixture
def story(shop: ShopRecord) -> PhotoStory:
    """The rotor with photos of both sides."""
    return a_photographed_rotor(shop)


@pytest.fixture
def bench(story: PhotoStory, qtbot: Any) -> Iterator[Bench]:
    """Its job's page, shown."""
    page = Bench(Desk(story.record), story.rotor.job)
    qtbot.addWidget(page)
    page.resize(1100, 760)
    page.show()
    qtbot.waitExposed(page)
    page.activateWindow()
    yield page
    page.desk.errands.finish()


def signs(bench: Bench) -> list[str]:
    """What is said beside the fields of readings that came from marks."""
    return [
        one.accessibleName()
        for one in bench.findChildren(QLabel)
        if one.text() == "◎ photo" and one.isVisibleTo(bench)
    ]


def press_bench(bench: Bench, qtbot: Any) -> list[Any]:
    """Press the button and return what was asked for."""
    with qtbot.waitSignal(bench.section.bench_wanted) as wanted:
        qtbot.mouseClick(named(bench, QPushButton, BENCH), Qt.MouseButton.LeftButton)
    return list(wanted.args)


def test_the_photo_bench_is_asked_for_with_the_photos_that_are_shown(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    photos = [story.photos["removed"], story.photos["replacement"]]
    assert press_bench(bench, qtbot) == [story.rotor.pair, *photos]
    out = "Take the chosen photo out of this view, removed, distributor rotor"
    button = named(bench, QPushButton, out)
    qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    assert press_bench(bench, qtbot) == [story.rotor.pair, None, photos[1]]


def test_without_a_photo_the_button_says_why_it_waits(bench: Bench, qtbot: Any) -> None:
    qtbot.mouseClick(
        named(bench, QPushButton, "view underside, distributor rotor"), Qt.MouseButton.LeftButton
    )
    button = named(bench, QPushButton, BENCH)
    assert not button.isEnabled()
    assert "Put a photo to one of the parts first." in button.toolTip()


def test_a_reading_from_a_mark_is_signed_as_one(story: PhotoStory, bench: Bench) -> None:
    assert signs(bench) == []
    story.take("tip-width", "removed", story.mark("removed", 8.1234))
    bench.reread()
    assert named(bench, QLineEdit, FIELD).text() == "8.12"
    assert signs(bench) == [SIGN.format(1)]
    tool = named(bench, QComboBox, "instrument, tip width")
    assert tool.currentData() == "photo"


def test_a_calliper_reading_beside_it_leaves_it_there(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    story.take("tip-width", "removed", story.mark("removed", 8.1234))
    bench.reread()
    tool = named(bench, QComboBox, "instrument, tip width")
    tool.setFocus()
    qtbot.keyClicks(tool, "calliper")
    retype(bench, qtbot, FIELD, "8.12; 8.14")
    assert signs(bench) == [SIGN.format(2)]
    assert story.pair().instruments_used["tip-width", "removed"] == "calliper"
    retype(bench, qtbot, FIELD, "8.14")
    assert signs(bench) == []
    assert story.pair().marks == {}


def test_the_photo_bench_takes_readings_through_the_pair(story: PhotoStory, bench: Bench) -> None:
    told: list[Any] = []
    bench.desk.told.connect(told.append)
    kind = all_kinds()["distributor-rotor"]
    pair: BenchReadings = BenchReadingsOfPair(bench.desk, story.rotor.pair, kind)
    offered = {one.name: one for one in pair.dimensions("removed")}
    assert offered["tip-width"] == ("tip-width", "tip width", "mm", "length")
    assert (offered["bore"].mark_type, offered["tip-angle"].mark_type) == ("circle", "angle")
    assert (offered["fixing-holes"].mark_type, offered["tip-angle"].unit) == ("count", "°")
    assert "resistance" not in offered
    mark = story.mark("removed", 8.1234)
    assert pair.taken(mark) is None
    pair.take(mark, "removed", "tip-width")
    assert pair.taken(mark) == "tip width, removed"
    assert signs(bench) == [SIGN.format(1)]
    pair.take(mark, "replacement", "tip-width")
    assert "doesn't stand for the replacement" in str(told[-1])
    with story.record.deed("Move the mark") as deed:
        deed.change(Mark, mark, value=8.4)
        pair.follow(deed, mark)
    bench.reread()
    assert named(bench, QLineEdit, FIELD).text() == "8.40"


def test_heights_for_marks_are_what_was_read_of_that_part(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    pair = BenchReadingsOfPair(bench.desk, story.rotor.pair, all_kinds()["distributor-rotor"])
    retype(bench, qtbot, FIELD, "8.12; 8.16")
    height = next(one for one in pair.heights("removed") if one.label == "tip width")
    assert height.value_mm == pytest.approx(8.14)
    assert 0.02 < height.half_width_mm < 0.3
    assert "tip width" not in {one.label for one in pair.heights("replacement")}

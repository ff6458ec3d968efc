"""Readings from photos on the bench, and the way from a pair to the photo bench."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import Any

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QComboBox, QLabel, QLineEdit, QPushButton

from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.stored import Mark
from desktop_app.part_photos.stored_marks import remove_mark_row
from desktop_app.parts_compared import actions
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.screen.bench_readings_of_pair import BenchReadingsOfPair
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_window.desk import Desk
from tests.parts_compared.photo_story import PhotoStory, a_photographed_rotor, known
from tests.screens.bench_desk import Bench, all_kinds, named, retype, words_of

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


def of_pair(story: PhotoStory, bench: Bench) -> BenchReadingsOfPair:
    """What the photo bench asks about this pair."""
    return BenchReadingsOfPair(bench.desk, story.rotor.pair, all_kinds)


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
    assert (tool.currentText(), tool.currentData()) == ("from marks", None)


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


def test_what_is_typed_beside_a_mark_asks_with_what_it_was_read(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    story.take("tip-width", "removed", story.mark("removed", 8.1234))
    bench.reread()
    field = retype(bench, qtbot, FIELD, "8.12; 8.14")
    assert "On the removed part: With what was 8.14 read?" in words_of(bench)
    assert story.pair().typed["tip-width", "removed"] == ("8.12",)
    assert field.text() == "8.12; 8.14"
    choose(bench, qtbot, "micrometer")
    assert "With what was" not in words_of(bench)
    pair = story.pair()
    assert pair.typed["tip-width", "removed"] == ("8.12", "8.14")
    tools = [(one.values, one.instrument, bool(one.photo)) for one in pair.readings]
    assert ((8.1234,), "photo", True) in tools
    assert ((8.14,), "micrometer", False) in tools
    # The other part follows the row's instrument, and a change takes both along.
    retype(bench, qtbot, "tip width, replacement", "8.60")
    choose(bench, qtbot, "calliper")
    pair = story.pair()
    assert {pair.tool_of_typed("tip-width", side) for side in SIDES} == {"calliper"}
    assert [one.values for one in pair.readings if one.photo] == [(8.1234,)]


def test_a_count_beside_a_mark_is_counted_by_eye(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    actions.write_readings(story.record, story.rotor.pair, known("fixing-holes"), "replacement", "")
    mark = story.mark("replacement", 2.0, unit="", budget=None, expanded_u=None, kind="count")
    story.take("fixing-holes", "replacement", mark)
    bench.reread()
    retype(bench, qtbot, "fixing holes, replacement", "2; 2")
    assert story.pair().tool_of_typed("fixing-holes", "replacement") == "eye"


def test_the_sheet_names_marks_and_the_instrument_of_what_was_typed(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    story.take("tip-width", "removed", story.mark("removed", 8.1234))
    bench.reread()
    choose(bench, qtbot, "micrometer")
    retype(bench, qtbot, FIELD, "8.12; 8.14")
    (printed,) = read_sheet(story.record, story.rotor.job, all_kinds()).pairs
    said = "; ".join(printed.instruments)
    assert "marks on the photos" in said
    assert "micrometer (reads to 0.01 mm" in said
    assert "photo" not in said.replace("marks on the photos", "")


def choose(bench: Bench, qtbot: Any, tool: str) -> None:
    """Choose the instrument of the tip width, up or down from the one that is shown."""
    tools = named(bench, QComboBox, "instrument, tip width")
    tools.setFocus()
    steps = tools.findData(tool) - tools.currentIndex()
    for _ in range(abs(steps)):
        qtbot.keyClick(tools, Qt.Key.Key_Down if steps > 0 else Qt.Key.Key_Up)
    assert tools.currentData() == tool


def test_the_photo_bench_takes_readings_through_the_pair(story: PhotoStory, bench: Bench) -> None:
    told: list[Any] = []
    bench.desk.told.connect(told.append)
    pair: BenchReadings = of_pair(story, bench)
    offered = {one.name: one for one in pair.dimensions("removed")}
    assert offered["tip-width"] == ("tip-width", "tip width", "mm", "length", "")
    assert (offered["bore"].mark_type, offered["tip-angle"].mark_type) == ("circle", "angle")
    assert (offered["fixing-holes"].mark_type, offered["tip-angle"].unit) == ("count", "°")
    assert "resistance" not in offered
    mark = story.mark("removed", 8.1234)
    assert pair.taken(mark) is None
    pair.take(mark, "removed", "tip-width")
    assert pair.taken(mark) == "tip width, removed"
    with story.record.deed("Clear the height") as deed:
        deed.change(Mark, mark, value=8.31, height_mm=None, height_u_mm=None)
        pair.follow(deed, mark)
    assert pair.taken(mark) == "tip width, removed (as it was read before)"
    story.record.undo()
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
    pair = of_pair(story, bench)
    retype(bench, qtbot, FIELD, "8.12; 8.16")
    height = next(one for one in pair.heights("removed") if one.label == "tip width")
    assert height.value_mm == pytest.approx(8.14)
    assert 0.02 < height.half_width_mm < 0.3
    story.take("tip-width", "replacement", story.mark("replacement", 8.1))
    others = {one.label for one in pair.heights("replacement")}
    assert "tip width" not in others  # a length from a photo rests on a height itself
    assert "bore diameter" not in others
    assert "tip height above the seat" in others


def test_what_the_pair_has_read_already_is_said_beside_a_dimension(
    story: PhotoStory, bench: Bench, qtbot: Any
) -> None:
    pair = of_pair(story, bench)

    def there() -> str:
        return next(one.there for one in pair.dimensions("removed") if one.name == "tip-width")

    assert there() == ""
    retype(bench, qtbot, FIELD, "8.12; 8.16")
    assert re.fullmatch(r"8\.14\d* ± 0\.\d+ mm by calliper", there())
    bench.desk.do(change_rule, "length_unit", "inch")
    assert re.fullmatch(r"0\.320\d* ± 0\.\d+ in by calliper", there())


def test_a_mark_is_no_reading_any_more(story: PhotoStory, bench: Bench) -> None:
    pair = of_pair(story, bench)
    mark = story.mark("removed", 8.1234)
    pair.take(mark, "removed", "tip-width")
    pair.let_go(mark)
    assert pair.taken(mark) is None
    assert named(bench, QLineEdit, FIELD).text() == ""
    bench.desk.undo()
    assert pair.taken(mark) == "tip width, removed"
    pair.let_go(mark)
    with story.record.deed("Take the mark out") as deed:
        remove_mark_row(deed, mark)  # nothing holds it any more


def test_readings_follow_their_marks_where_the_kind_is_gone(
    story: PhotoStory, bench: Bench
) -> None:
    mark = story.mark("removed", 8.1234)
    of_pair(story, bench).take(mark, "removed", "tip-width")
    pair = BenchReadingsOfPair(bench.desk, story.rotor.pair, dict)
    assert (pair.dimensions("removed"), list(pair.heights("removed"))) == ((), [])
    pair.take(mark, "removed", "tip-width")
    assert pair.taken(mark) == "tip width, removed"
    with story.record.deed("Move the mark") as deed:
        deed.change(Mark, mark, value=8.4)
        pair.follow(deed, mark)
    bench.reread()
    assert named(bench, QLineEdit, FIELD).text() == "8.40"

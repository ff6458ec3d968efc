"""Marks printed over a photo: where their lines and words come to stand."""

from __future__ import annotations

import json
import subprocess
from dataclasses import replace
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.stored import Overlay, PhotoScale
from desktop_app.parts_compared.sheet import sheet_bytes
from desktop_app.parts_compared.sheet_facts import (
    MarkPrinted,
    OverlayPrinted,
    SheetFacts,
)
from desktop_app.parts_compared.sheet_labels import crosses, free_place, overlap, rim_place
from desktop_app.parts_compared.sheet_marks import labels, strokes
from desktop_app.parts_compared.sheet_overlay import BLENDED
from desktop_app.parts_compared.stored_sheet import read_sheet
from desktop_app.parts_compared.stored_sheet_photos import UNREADABLE_OVERLAY, drawn_photos
from desktop_app.shop_record.house_rules import change_rule
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.bench_pictures import encoded, picture
from tests.parts_compared.photo_story import STRAIGHT_DOWN, a_photographed_rotor
from tests.parts_compared.sheet_story import (
    TOP,
    a_rotor,
    jpegs_in,
    kinds,
    page_count,
    saved,
    words_in,
)

LENGTH = MarkPrinted((), (((0.2, 0.3), (0.7, 0.3)),), (), (0.45, 0.3), "tip width 8.12 ± 0.17 mm")
NOTE = MarkPrinted((), (), (((0.9, 0.9), (0.5, 0.5)),), (0.9, 0.9), "burned here")
HOW = "bench card, camera 12° off straight down, 312 mm away"
BARE = "bare metal"
share = st.floats(0, 1)


def facts(shop: ShopRecord, *marks: MarkPrinted) -> SheetFacts:
    """The sheet of the rotor with both photos, the old one with these marks."""
    story = a_rotor(shop)
    story.photograph(TOP, encoded(picture(640, 480)), encoded(picture(480, 640)))
    return with_view(read_sheet(shop, story.job, kinds()), marks)


def with_view(
    sheet: SheetFacts, marks: tuple[MarkPrinted, ...], overlay: OverlayPrinted | None = None
) -> SheetFacts:
    """The same sheet with marks on the old photo, and an overlay."""
    (pair,) = sheet.pairs
    (view,) = pair.views
    assert view.removed is not None
    old = replace(view.removed, marks=marks, scaled_by=HOW)
    seen = replace(view, removed=old, overlay=overlay)
    return replace(sheet, pairs=(replace(pair, views=(seen,)),))


def test_marks_stand_with_their_words_and_how_they_were_measured(shop: ShopRecord) -> None:
    sheet = facts(shop, LENGTH, NOTE)
    words = words_in(sheet_bytes(sheet))
    assert "tip width 8.12 ± 0.17 mm" in words
    assert "burned here" in words
    assert f"Marks on the photos: ◆ {HOW}." in words
    assert "± is what the photo leaves open at 95 % coverage" in words
    assert page_count(sheet_bytes(sheet)) == 2
    plain = words_in(sheet_bytes(with_view(sheet, ())))
    assert "Marks on the photos" not in plain
    assert page_count(sheet_bytes(with_view(sheet, ()))) == 2


def test_the_photo_below_the_marks_is_whole_and_the_sheet_is_always_the_same(
    shop: ShopRecord,
) -> None:
    sheet = facts(shop, LENGTH, NOTE)
    assert sheet_bytes(sheet) == sheet_bytes(sheet)
    marked, bare = (jpegs_in(sheet_bytes(one)) for one in (sheet, with_view(sheet, ())))
    assert [one.tobytes() for one in marked] == [one.tobytes() for one in bare]


def test_the_overlay_is_printed_below_the_photos_on_the_same_two_pages(shop: ShopRecord) -> None:
    sheet = facts(shop, LENGTH)
    laid = OverlayPrinted(encoded(picture(600, 400)), "The largest difference is 0.5 mm.")
    printed = sheet_bytes(with_view(sheet, (LENGTH,), laid))
    said = "The new part laid over the old one ◆ solid line: removed part; ● dashed line:"
    assert f"{said} replacement. The largest difference is 0.5 mm." in words_in(printed)
    halves = with_view(sheet, (), replace(laid, words=BLENDED))
    assert "dashed line" not in words_in(sheet_bytes(halves))  # there are no lines
    assert len(jpegs_in(printed)) == 3
    assert page_count(printed) == 2
    missing = OverlayPrinted(None, "A photo in the shop's folder can't be read any more.")
    words = words_in(sheet_bytes(with_view(sheet, (), missing)))
    assert "The new part laid over the old one: A photo in the shop's folder" in words


@pytest.mark.needs_tool("pdfimages")
def test_pieces_that_show_as_much_of_the_part_are_printed_equally_large(
    shop: ShopRecord, tmp_path: Path
) -> None:
    sheet = facts(shop, LENGTH)
    (view,) = sheet.pairs[0].views
    assert view.removed is not None
    assert view.replacement is not None
    fine = replace(view.removed, jpeg=encoded(picture(600, 350)), mm_wide=60.0, marks=())
    coarse = replace(view.replacement, jpeg=encoded(picture(300, 175)), mm_wide=60.0)
    for other, ratio in ((coarse, 2.0), (replace(coarse, mm_wide=None), 1.14)):
        views = (replace(view, removed=fine, replacement=other),)
        pairs = (replace(sheet.pairs[0], views=views),)
        file = saved(sheet_bytes(replace(sheet, pairs=pairs)), tmp_path)
        order = ["pdfimages", "-list", str(file)]
        said = subprocess.run(order, capture_output=True, text=True, check=True).stdout
        dots = [int(line.split()[12]) for line in said.splitlines()[2:]]
        assert max(dots) / min(dots) == pytest.approx(ratio, abs=0.05)


def test_lines_stand_where_they_were_drawn(shop: ShopRecord) -> None:
    line, *ticks = strokes(LENGTH, 100.0, 50.0)
    assert line == ((20.0, 35.0), (70.0, 35.0))
    assert [sorted(one) for one in ticks] == [
        [(20.0, 32.0), (20.0, 38.0)],
        [(70.0, 32.0), (70.0, 38.0)],
    ]
    shaft, head = strokes(NOTE, 100.0, 50.0)
    assert shaft[1] == head[1] == (50.0, 25.0)
    assert strokes(replace(LENGTH, sizes=(((0.5, 0.5), (0.5, 0.5)),)), 10, 10)[1]


@given(st.lists(st.tuples(share, share), max_size=8))
def test_words_stay_inside_the_picture_and_off_each_other(spots: list[tuple[float, float]]) -> None:
    taken: list[tuple[float, float, float, float]] = []
    for x, y in spots:
        box = free_place((x * 200, y * 150), (80.0, 9.5), (200.0, 150.0), taken)
        assert box[0] >= 0
        assert box[1] >= 0
        assert box[2] <= 200.001
        assert box[3] <= 150.001
        assert not any(
            box[0] < one[2] and one[0] < box[2] and box[1] < one[3] and one[1] < box[3]
            for one in taken
        )
        taken.append(box)


@given(st.lists(st.tuples(share, share), min_size=1, max_size=6))
def test_words_at_the_rim_are_off_the_marks_and_off_each_other(
    spots: list[tuple[float, float]],
) -> None:
    taken: list[tuple[float, float, float, float]] = [(0.0, 0.0, 40.0, 15.0)]
    off = (90.0, 50.0, 140.0, 80.0)
    for x, y in spots:
        box = rim_place((90 + x * 50, 50 + y * 30), (60.0, 9.5), (240.0, 140.0), taken, off)
        assert box is not None
        assert min(box[0], box[1], 240.001 - box[2], 140.001 - box[3]) >= 0
        assert not any(overlap(box, one) for one in (*taken, off))
        taken.append(box)


def test_lines_to_the_marks_cross_each_other_where_there_is_no_other_way() -> None:
    ends = [(0.3, 0.5), (0.4, 0.45), (0.5, 0.5), (0.6, 0.45), (0.7, 0.5)]
    marks = [MarkPrinted((), ((spot, (spot[0], 0.55)),), (), spot, "width") for spot in ends]
    boxes, leaders = labels(marks, [(60.0, 9.5)] * 5, (240.0, 140.0), [])
    assert len(leaders) == 5
    pairs = [(one, other) for n, one in enumerate(leaders) for other in leaders[n + 1 :]]
    assert not any(crosses(one, other) for one, other in pairs)
    assert not any(overlap(box, (72.0, 63.0, 168.0, 77.0)) for box in boxes)


def test_words_wider_than_the_picture_stand_over_it_without_a_line() -> None:
    boxes, leaders = labels([LENGTH], [(300.0, 9.5)], (200.0, 100.0), [])
    assert not leaders
    assert boxes[0][:2] == (0.0, 72.0)


@pytest.mark.parametrize(
    ("size", "corner"), [((300.0, 9.5), (0.0, 52.0)), ((80.0, 200.0), (10.0, 0.0))]
)
def test_words_larger_than_the_picture_begin_in_it(
    size: tuple[float, float], corner: tuple[float, float]
) -> None:
    assert free_place((50.0, 50.0), size, (200.0, 150.0), [])[:2] == corner


def test_what_is_kept_of_marks_and_overlay_comes_onto_the_sheet(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    story.mark("removed", 8.1234, words="tip width")
    story.mark("removed", None, kind="note", points="[[10, 10], [50, 50]]", words="burned here")
    circle = "[[100, 100], [200, 100], [150, 150], [150, 50]]"
    story.mark("removed", 20.9, kind="circle", points=circle, words="hub")
    story.take("tip-width", "replacement", story.mark("replacement", 8.64))
    story.lay_over(10.0)
    sheet = read_sheet(shop, story.rotor.job, kinds())
    (view,) = sheet.pairs[0].views
    assert view.removed is not None
    length, note, hub = view.removed.marks
    # Both pieces are 480 by 480 pixels from the top left: as much as both photos have at one scale.
    assert length.sizes == (
        (
            (pytest.approx(100.5 / 480), pytest.approx(100.5 / 480)),
            (pytest.approx(300.5 / 480), pytest.approx(100.5 / 480)),
        ),
    )
    sizes = [one.size for one in jpegs_in(sheet_bytes(sheet))]
    assert sizes.count((480, 480)) == 2
    assert view.replacement is not None
    for one in (view.removed.bar, view.replacement.bar):
        assert one is not None
        # 100 mm at 302 mm from a camera of 500 pixels, in a piece of 480 pixels.
        assert one.share == pytest.approx(100 * 500 / 302 / 480)
        assert one.words == "100 mm"
    assert length.words == "tip width 8.12 ± 0.18 mm"
    assert note.words == "burned here"
    assert len(hub.lines[0]) > 30
    assert view.overlay is not None
    words = words_in(sheet_bytes(sheet))
    assert "Marks on the photos: ◆ bench card, camera 0° off straight down, 312 mm away" in words
    assert "hub 20.90 ± 0.18 mm" in words
    assert "marks on the photos (each with the uncertainty of its own budget)" in words
    assert "Both photos lie over each other, half and half." in words
    change_rule(shop, "length_unit", "inch")
    words = words_in(sheet_bytes(read_sheet(shop, story.rotor.job, kinds())))
    assert "tip width 0.3198 ± 0.0071 in" in words
    assert "12.3 in away" in words
    assert "2 in" in words


def test_a_size_without_a_height_says_so_and_bars_say_where_they_hold(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    story.mark("removed", 8.1234, words="tip width")
    words = words_in(sheet_bytes(read_sheet(shop, story.rotor.job, kinds())))
    assert "Bars: at marks' height." in words
    assert "height not said" not in words
    story.mark("removed", 5.0, words="hub", height_mm=None, height_u_mm=None)
    words = words_in(sheet_bytes(read_sheet(shop, story.rotor.job, kinds())))
    assert "hub 5.00 ± 0.18 mm (height not said)" in words
    assert "Where no height was said, a size holds only for what lies on the card" in words


def test_a_surface_is_printed_as_a_number_with_its_method(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    corners = "[[100, 100], [200, 100], [200, 200]]"
    how = {"method": "counted are dots.", "warnings": ["No white was given."]}
    share = {"kind": "surface", "points": corners, "unit": "%", "budget": None}
    share |= {"settings": json.dumps(how), "expanded_u": 4.0}
    story.mark("removed", 12.0, words="Tip", **share)
    story.mark("removed", 40.0, words="hub", **share)
    story.mark("replacement", 3.0, words="tip", **share)
    story.mark("removed", None, kind="bare-metal", points=corners, unit=None)
    sheet = read_sheet(shop, story.rotor.job, kinds())
    (view,) = sheet.pairs[0].views
    assert view.removed is not None
    assert [one.words for one in view.removed.marks] == ["Tip 12 ± 4 %", "hub 40 ± 4 %", BARE]
    assert len(view.removed.marks[0].lines[0]) == 4  # three corners, and closed
    words = words_in(sheet_bytes(sheet))
    said = "of this surface has another colour than bare metal. How: counted are dots. No white"
    places = [
        words.index(f"{start} ± 4 % {said}")
        for start in ("◆ Tip: 12", "● tip: 3", "◆ hub: 40")  # old and new of one name together
    ]
    assert places == sorted(places)
    assert "Marks on the photos" not in words  # no size rests on the card


def test_a_surface_is_no_reading_of_a_dimension(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    share = story.mark("removed", 12.0, kind="surface", unit="%", budget=None)
    with pytest.raises(ShopTrouble, match="no reading of a dimension"):
        story.take("tip-width", "removed", share)


def test_a_damaged_overlay_is_named_on_the_sheet_and_stops_nothing(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    story.lay_over(10.0)
    with shop.deed("Damage it") as deed:
        deed.change(Overlay, 1, transform="[[NaN]]")
    sheet = read_sheet(shop, story.rotor.job, kinds())
    (view,) = sheet.pairs[0].views
    assert view.overlay == OverlayPrinted(None, UNREADABLE_OVERLAY)
    assert "is damaged in the record, and so not shown" in words_in(sheet_bytes(sheet))


def test_the_card_of_a_photo_is_as_large_as_it_was_printed(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    card = bench_card("a4")
    fit = replace(STRAIGHT_DOWN, card=card.name).as_json()
    with shop.deed("A small print") as deed:
        deed.change(PhotoScale, 1, card_scale=0.97, card_id=None, fit=fit)
    with shop.reading() as connection:
        photos = drawn_photos(connection, list(story.photos.values())).photos
    assert photos[story.photos["removed"]].card == card.printed(0.97)


def test_an_overlay_that_is_not_for_the_sheet_stays_off_it(shop: ShopRecord) -> None:
    story = a_photographed_rotor(shop)
    story.lay_over(10.0, on_sheet=0)
    (view,) = read_sheet(shop, story.rotor.job, kinds()).pairs[0].views
    assert view.overlay is None


def test_a_mark_without_words_is_drawn_and_written_nowhere(shop: ShopRecord) -> None:
    plain = facts(shop, LENGTH)
    bare = with_view(plain, (replace(LENGTH, words=""),))
    assert "tip width 8.12" in words_in(sheet_bytes(plain))
    assert "tip width 8.12" not in words_in(sheet_bytes(bare))

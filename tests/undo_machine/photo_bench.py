"""The deeds of the photo bench: photos, marks, scales, cards, overlays, readings from marks."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import numpy as np

from desktop_app.part_photos import (
    actions,
    card_actions,
    mark_actions,
    overlay_actions,
    print_actions,
)
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import bench_card
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.marks.mark import Mark, MarkType, Measured, Pixel
from desktop_app.part_photos.overlay.alignment import Alignment, cannot
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import Photo, PrintedCard
from desktop_app.part_photos.stored_marks import mark_by_id
from desktop_app.parts_compared import mark_let_go_actions, photo_reading_actions
from desktop_app.parts_compared.phone_photo_actions import put_dropped, put_to_part
from desktop_app.parts_compared.reading import SIDES
from desktop_app.parts_compared.stored import Pair
from desktop_app.repair_jobs.stored import Job
from desktop_app.shop_record.trouble import ShopTrouble
from tests.part_photos.bench_pictures import encoded, picture
from tests.part_photos.marked_photos import scale_over_card
from tests.undo_machine.deeds_to_do import Deeds, Given, Seen, using
from tests.undo_machine.old_and_new import dimension_of

POINTS: dict[MarkType, int] = {
    **{"length": 2, "point-to-line": 3, "circle": 3, "angle": 3, "parallel-distance": 4},
    **{"round-bar": 4, "count": 2, "note": 2, "surface": 3, "bare-metal": 4},
}
SPOTS = ((1800.0, 1500.0), (2200.0, 1500.0), (2000.0, 1700.0), (2200.0, 1750.0), (1900.0, 1400.0))
SHADES = (40, 90, 140, 190)
HEIGHTS = (None, 0.0, 20.0, 499.0, 501.0, -1.0, float("nan"))
FOLLOWS = (photo_reading_actions.follow, None)
RULERS = (None, 150.3, 149.7, 170.0, float("nan"))
ALIGNED = (
    Alignment(True, "By clicks.", "clicks", np.eye(3)),
    Alignment(True, "By outline.", "card and outline", 2 * np.eye(3), 0.4, 0.02, highest_mm=33.0),
    Alignment(True, "By clicks.", "clicks", np.full((3, 3), np.nan)),
    cannot("nothing is the same in them"),
)


@cache
def layout(name: str) -> CardLayout:
    """A bench card as it is printed."""
    return bench_card(name)


@cache
def scale() -> CardScale:
    """A camera over the card."""
    return replace(scale_over_card(), card=layout("a4").name)


@cache
def content(shade: int) -> bytes:
    """A small picture as a file."""
    return encoded(picture(shade=shade), "PNG")


def taken(seen: Seen) -> PhotoTaken:
    """A photo that lies in the shop's folder, but is no job's yet."""
    shade = seen.of(SHADES)
    return actions.take_in(seen.record, Arrival(f"{shade}.png", content=content(shade)))


def from_phone(seen: Seen) -> Given:
    """Put photos from a phone, or dropped, to a side of a pair."""
    photos = [taken(seen) for _ in range(seen.of((1, 2)))]
    return using(seen.one(Pair), photos, seen.of(SIDES), seen.of(("top", "side")))


def spots(seen: Seen, count: int) -> tuple[Pixel, ...]:
    """So many points in a photo; some may be the same."""
    return tuple(seen.of(SPOTS) for _ in range(count))


def mark(seen: Seen) -> Given:
    """Draw a mark."""
    kind = seen.of(tuple(POINTS))
    height = seen.of((0.0, 20.0))
    drawn = Mark(kind, spots(seen, POINTS[kind]), seen.words(), height, height / 20)
    return using(seen.one(Photo), drawn, height_known=seen.yes())


def points_of(seen: Seen, mark_id: int) -> int:
    """How many points a mark has."""
    return POINTS.get(seen.row(MarkRow, mark_id).get("kind", "length"), 2)


def moved(seen: Seen) -> Given:
    """Move a mark."""
    one = seen.one(MarkRow)
    return using(one, spots(seen, points_of(seen, one)), seen.of(FOLLOWS))


def snapped(seen: Seen) -> Given:
    """Snap a mark to an edge that was found."""
    one = seen.one(MarkRow)
    found = spots(seen, points_of(seen, one))
    kept = Mark("length", found, snapped=tuple(seen.yes() for _ in found))
    try:
        with seen.record.reading() as connection:
            kept = replace(mark_by_id(connection, one).mark, points_px=found, snapped=kept.snapped)
    except ShopTrouble:
        pass  # it is gone; the page still shows it
    return using(one, kept, seen.of(FOLLOWS))


def height(seen: Seen) -> Given:
    """Say how high a mark lies."""
    return using(seen.one(MarkRow), seen.of(HEIGHTS), seen.of(HEIGHTS), seen.of(FOLLOWS))


def shares(seen: Seen) -> Given:
    """Keep what was counted of surfaces."""
    share = Measured(seen.of((12.5, 0.0)), "%", 2.0, warnings=("dim",), method="by hue")
    return using(dict.fromkeys([seen.one(MarkRow, kind="surface")], share))


def two_points(seen: Seen) -> Given:
    """Give a photo its scale by two points."""
    length = seen.of((150.0, 12.5, 0.0, -1.0, float("nan")))
    return using(seen.one(Photo), spots(seen, 2), length, seen.of((0.0, 0.1)), seen.of(FOLLOWS))


def card_scale(seen: Seen) -> Given:
    """Keep a scale that rests on a print, on one of some, or on none."""
    card = seen.of((None, seen.one(PrintedCard)))
    prints = tuple(seen.rows(PrintedCard)) if card is None and seen.yes() else ()
    return using(seen.one(Photo), scale(), card, seen.of((1.0, 1.002)), seen.of(FOLLOWS), prints)


def ruler(seen: Seen) -> Given:
    """Measure a card's ruler, perhaps with all that follows worked out before."""
    card, measured = seen.one(PrintedCard), seen.of(RULERS)
    ahead = None
    if card in seen.rows(PrintedCard) and measured in (150.3, 149.7) and seen.yes():
        steps = print_actions.said_by_ruler(seen.record, card, measured)
        while ahead is None:
            try:
                next(steps)
            except StopIteration as end:
                ahead = end.value
    return using(card, measured, seen.of(FOLLOWS), ahead)


def overlay(seen: Seen) -> Given:
    """Lay one photo on another."""
    clicks = (((1.0, 2.0), (3.0, 4.0)),) if seen.yes() else ()
    photos = seen.one(Photo), seen.one(Photo)
    return using(*photos, seen.of(ALIGNED), seen.of((None, 0.0, 12.0)), clicks)


def from_mark(seen: Seen) -> Given:
    """Let a mark be a reading."""
    pair = seen.one(Pair)
    return using(pair, dimension_of(seen, pair), seen.of(SIDES), seen.one(MarkRow))


DEEDS: Deeds = {
    put_to_part: from_phone,
    put_dropped: from_phone,
    actions.add_photos: lambda s: using(s.one(Job), [taken(s) for _ in range(s.of((1, 2)))]),
    actions.write_photo_note: lambda s: using(s.one(Photo), s.words()),
    actions.take_off_job: lambda s: using(s.one(Photo)),
    mark_actions.draw_mark: mark,
    mark_actions.move_mark: moved,
    mark_actions.snap_mark: snapped,
    mark_actions.keep_count: lambda s: using(
        s.one(MarkRow, kind="count"), Measured(s.of((7.0, None)), "", 0.5), s.of(FOLLOWS)
    ),
    mark_actions.keep_shares: shares,
    mark_actions.rename_mark: lambda s: using(s.one(MarkRow), s.words()),
    mark_actions.set_height: height,
    mark_actions.remove_mark: lambda s: using(s.one(MarkRow)),
    mark_actions.keep_scale: card_scale,
    mark_actions.keep_two_points: two_points,
    mark_actions.forget_scale: lambda s: using(s.one(Photo)),
    card_actions.note_printed_card: lambda s: using(layout(s.of(("a4", "letter")))),
    card_actions.note_ruler: ruler,
    card_actions.put_card_away: lambda s: using(s.one(PrintedCard)),
    print_actions.keep_card: lambda s: using(s.one(Photo), scale(), layout("a4"), s.of(FOLLOWS)),
    print_actions.say_print: lambda s: using(
        s.one(Photo), s.of((None, s.one(PrintedCard))), s.of(FOLLOWS)
    ),
    overlay_actions.keep_overlay: overlay,
    overlay_actions.show_on_sheet: lambda s: using(s.one(Photo), s.one(Photo), s.yes()),
    overlay_actions.forget_overlay: lambda s: using(s.one(Photo), s.one(Photo)),
    mark_let_go_actions.let_mark_go: lambda s: using(s.one(Pair), s.one(MarkRow)),
    photo_reading_actions.take_reading_from_mark: from_mark,
}

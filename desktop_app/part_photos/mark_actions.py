"""What is done on the photo bench: marks drawn, moved, named and taken out; scales and overlays."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any, NamedTuple

from desktop_app.language import tr
from desktop_app.part_photos import stored_marks, stored_scales
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.mark_words import tool_of
from desktop_app.part_photos.marks.mark import HIGHEST_MM, SIZED, Mark, Measured, Pixel, is_height
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import PhotoScale
from desktop_app.part_photos.stored_scales import NO_SCALE
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.own_program.own_version import made_by
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble

# Called within a deed with the id of each mark that says something else now.
Follow = Callable[[Deed, int], None]
# What a mark says by a scale.
Read = Callable[[Mark, PlaneScale | None], Measured | None]


def draw_mark(record: ShopRecord, photo_id: int, mark: Mark, *, height_known: bool = False) -> Done:
    """Put a mark on a photo; it says its value at once where the photo has a scale.

    A photo has one place of bare metal: drawing another one moves it. Without `height_known` nobody
    said how high the feature lies.
    """
    mark = replace(mark, height_said=height_known)

    def work(deed: Deed) -> None:
        if mark.type == "bare-metal":
            there = stored_marks.bare_metal_of(deed.connection, photo_id)
            stored_marks.uncount_surfaces(deed, photo_id)
            if there is not None:
                deed.change(MarkRow, there.id, **_drawn(mark, ()))
                return
        deed.add(
            MarkRow,
            photo_id=photo_id,
            kind=mark.type,
            words=mark.name.strip(),
            height_mm=mark.height_mm if height_known else None,
            height_u_mm=mark.height_u_mm if height_known else None,
            **_drawn(mark, ()),
            **_said(read_mark(mark, _scale(deed, photo_id))),
        )

    return record.do(tr("Draw a mark: {label}", label=tool_of(mark.type).label.lower()), work)


def move_mark(
    record: ShopRecord,
    mark_id: int,
    points_px: Sequence[Pixel],
    follow: Follow | None = None,
) -> Done:
    """Move the points of a mark by hand; none of those that moved lies on a found edge any more.

    What was counted in the picture is counted no more, until somebody looks again.
    """

    def work(deed: Deed) -> None:
        kept = stored_marks.mark_by_id(deed.connection, mark_id)
        before = kept.mark
        held = before.snapped or (False,) * len(before.points_px)
        snapped = tuple(
            was and old == new
            for was, old, new in zip(held, before.points_px, points_px, strict=True)
        )
        moved = replace(before, points_px=tuple(points_px), snapped=snapped)
        deed.change(MarkRow, mark_id, **_drawn(moved, kept.clicks if any(snapped) else ()))
        if before.type == "bare-metal":
            stored_marks.uncount_surfaces(deed, kept.photo_id)
        _say(deed, mark_id, read_mark(moved, _scale(deed, kept.photo_id)), follow)

    return record.do(tr("Move a mark"), work)


def snap_mark(
    record: ShopRecord, mark_id: int, snapped: Mark, follow: Follow | None = None
) -> Done:
    """Keep the edges that were found for a mark beside the points as they were clicked."""

    def work(deed: Deed) -> None:
        kept = stored_marks.mark_by_id(deed.connection, mark_id)
        clicks = kept.clicks or kept.mark.points_px
        moved = replace(kept.mark, points_px=snapped.points_px, snapped=snapped.snapped)
        deed.change(MarkRow, mark_id, **_drawn(moved, clicks))
        _say(deed, mark_id, read_mark(moved, _scale(deed, kept.photo_id)), follow)

    return record.do(tr("Snap a mark to the edge"), work)


def keep_count(
    record: ShopRecord, mark_id: int, counted: Measured, follow: Follow | None = None
) -> Done:
    """Keep what was counted along a mark."""
    return record.do(tr("Count along a mark"), lambda deed: _say(deed, mark_id, counted, follow))


def keep_shares(record: ShopRecord, shares: Mapping[int, Measured]) -> Done:
    """Keep what was counted of surfaces, by mark, with how it was counted and what to beware of."""

    def work(deed: Deed) -> None:
        for mark_id, share in shares.items():
            how = {"method": share.method, "warnings": list(share.warnings)}
            said = {**_said(share), "budget": None, "settings": json.dumps(how)}
            deed.change(MarkRow, mark_id, **said)

    return record.do(tr("Count the colours of a surface"), work)


def rename_mark(record: ShopRecord, mark_id: int, name: str) -> Done:
    """Name a mark, or write the words of a note."""
    return record.do(
        tr("Name a mark"), lambda deed: deed.change(MarkRow, mark_id, words=name.strip())
    )


def set_height(
    record: ShopRecord,
    mark_id: int,
    height_mm: float | None,
    height_u_mm: float | None,
    follow: Follow | None = None,
) -> Done:
    """Say how high above the card a feature lies, and half the range that it certainly lies in.

    None and None: nobody says it, and the size holds only on the card.
    """
    for value in (height_mm, height_u_mm):
        if value is not None and not is_height(value):
            raise ShopTrouble(
                tr("A height of {value:g} mm can't be.", value=value),
                kept=tr("The mark stays as it is."),
                do=tr("Accepted: 0 to {highest_mm:g} mm.", highest_mm=HIGHEST_MM),
            )

    def work(deed: Deed) -> None:
        kept = stored_marks.mark_by_id(deed.connection, mark_id)
        deed.change(MarkRow, mark_id, height_mm=height_mm, height_u_mm=height_u_mm)
        now = replace(
            kept.mark,
            height_mm=height_mm or 0.0,
            height_u_mm=height_u_mm or 0.0,
            height_said=height_mm is not None,
        )
        if now.type in SIZED:
            _say(deed, mark_id, read_mark(now, _scale(deed, kept.photo_id)), follow)

    return record.do(tr("Set a mark's height"), work)


def remove_mark(record: ShopRecord, mark_id: int) -> Done:
    """Take a mark off its photo, damaged or not; refused where it is the reading of a pair."""

    def work(deed: Deed) -> None:
        kind, photo_id = stored_marks.kind_of_mark(deed.connection, mark_id)
        stored_marks.remove_mark_row(deed, mark_id)
        if kind == "bare-metal":
            stored_marks.uncount_surfaces(deed, photo_id)

    return record.do(tr("Take a mark out"), work)


def keep_scale(
    record: ShopRecord,
    photo_id: int,
    scale: CardScale,
    card_id: int | None = None,
    card_scale: float = 1.0,
    follow: Follow | None = None,
    prints: Sequence[int] = (),
) -> Done:
    """Keep where the camera stood over the card; all marks of the photo are worked out anew.

    `card_id` is the printed card that lies in the photo; where that is not said, `prints` are those
    that may. `card_scale` is how large the print was taken to be, printed over drawn length.
    """
    rests = RestsOn(card_id, card_scale, tuple(prints))
    return record.do(
        tr("Keep a photo's scale from its card"),
        lambda deed: put_card_scale(deed, photo_id, scale, rests, follow),
    )


class RestsOn(NamedTuple):
    """On which print a photo's scale rests, or on one of which; how large it was taken to be."""

    card_id: int | None
    card_scale: float
    prints: tuple[int, ...] = ()


def put_card_scale(
    deed: Deed,
    photo_id: int,
    scale: CardScale,
    rests: RestsOn,
    follow: Follow | None,
    read: Read | None = None,
) -> None:
    """Keep a card's scale within a deed; all marks of the photo are worked out anew by `read`."""
    fit = json.loads(scale.as_json())
    if rests.card_id is None and rests.prints:
        fit["prints"] = list(rests.prints)
    kept = {
        "source": "card",
        "card_id": rests.card_id,
        "card_scale": rests.card_scale,
        "fit": json.dumps(fit, ensure_ascii=False),
    }
    points = {"points": None, "length_mm": None, "length_u_mm": None}
    _keep_scale(deed, photo_id, {**kept, **points})
    _say_all(deed, photo_id, scale, follow, read)


def keep_two_points(
    record: ShopRecord,
    photo_id: int,
    points_px: tuple[Pixel, Pixel],
    length_mm: float,
    length_u_mm: float = 0.0,
    follow: Follow | None = None,
) -> Done:
    """Give a photo its millimetres by two points; a ShopTrouble where they can't be told apart."""
    scale = TwoPointScale(points_px, length_mm, length_u_mm)
    kept = {
        "source": "points",
        "card_id": None,
        "card_scale": None,
        "points": _points(points_px),
        "length_mm": length_mm,
        "length_u_mm": length_u_mm,
        "fit": "{}",
    }

    def work(deed: Deed) -> None:
        _keep_scale(deed, photo_id, kept)
        _say_all(deed, photo_id, scale, follow)

    return record.do(tr("Give a photo its scale by two points"), work)


def forget_scale(record: ShopRecord, photo_id: int) -> Done:
    """Take a photo's scale out, damaged or not; its marks say no size any more.

    Readings that were taken from them stay as they were read. The card is looked for again only
    where somebody asks for it.
    """
    nothing = dict.fromkeys(("card_id", "card_scale", "points", "length_mm", "length_u_mm"))

    def work(deed: Deed) -> None:
        if stored_scales.scale_row_of_photo(deed.connection, photo_id) is not None:
            _keep_scale(deed, photo_id, {"source": NO_SCALE, "fit": "{}", **nothing})
            _say_all(deed, photo_id, None, None)

    return record.do(tr("Take a photo's scale out"), work)


def _keep_scale(deed: Deed, photo_id: int, kept: dict[str, Any]) -> None:
    there = stored_scales.scale_row_of_photo(deed.connection, photo_id)
    if there is None:
        deed.add(PhotoScale, photo_id=photo_id, made_by=made_by(), **kept)
    else:
        deed.change(PhotoScale, there, made_by=made_by(), **kept)


def _say_all(
    deed: Deed,
    photo_id: int,
    scale: PlaneScale | None,
    follow: Follow | None,
    read: Read | None = None,
) -> None:
    for kept in stored_marks.marks_of_photos(deed.connection, [photo_id]):
        if kept.mark.type in SIZED:
            _say(deed, kept.id, (read or read_mark)(kept.mark, scale), follow)


def _say(deed: Deed, mark_id: int, measured: Measured | None, follow: Follow | None) -> None:
    deed.change(MarkRow, mark_id, **_said(measured))
    if follow is not None:
        follow(deed, mark_id)


def _scale(deed: Deed, photo_id: int) -> PlaneScale | None:
    kept = stored_scales.scale_of_photo(deed.connection, photo_id)
    return None if kept is None else kept.scale


def read_mark(mark: Mark, scale: PlaneScale | None) -> Measured | None:
    """Return what a mark says; None without a scale, and while its points make no such shape."""
    if scale is None or mark.type not in SIZED:
        return None
    try:
        return measure(mark, scale)
    except ShopTrouble:
        return None


def _drawn(mark: Mark, clicks: Sequence[Pixel]) -> dict[str, Any]:
    return {
        "points": _points(mark.points_px),
        "snapped": json.dumps(list(mark.snapped)) if any(mark.snapped) else None,
        "settings": json.dumps({"clicks": [list(point) for point in clicks]}) if clicks else None,
    }


def _said(measured: Measured | None) -> dict[str, Any]:
    if measured is None or measured.value is None:
        return dict.fromkeys(("value", "unit", "expanded_u", "budget"))
    return {
        "value": measured.value,
        "unit": measured.unit,
        "expanded_u": measured.expanded_uncertainty,
        "budget": json.dumps(dict(measured.budget)),
    }


def _points(points_px: Sequence[Pixel]) -> str:
    return json.dumps([[float(x), float(y)] for x, y in points_px])

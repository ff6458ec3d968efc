"""Reading marks, scales and overlays back from the record, and letting them go."""

from __future__ import annotations

import json
from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from typing import Any, cast, get_args

from sqlalchemy import Connection, RowMapping, select
from sqlalchemy.exc import IntegrityError

from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.card_layouts import PAGES_MM, bench_card
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.camera.two_points import TwoPointScale
from desktop_app.part_photos.marks.mark import Mark, MarkType, Pixel
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import Overlay, PhotoScale
from desktop_app.part_photos.stored_cards import printed_card
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class KeptMark:
    """A mark of a photo, and what it said when it was last drawn.

    `clicks` are the points as they were clicked, where the program moved them onto an edge; a
    height that nobody entered is None. `budget` holds standard uncertainties in `unit`. A surface
    says by what `method` its share was counted, and in `warnings` what to beware of.
    """

    id: int
    photo_id: int
    mark: Mark
    height_known: bool
    value: float | None
    unit: str | None
    expanded_u: float | None
    budget: Mapping[str, float] = field(default_factory=dict)
    clicks: tuple[Pixel, ...] = ()
    method: str = ""
    warnings: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class KeptScale:
    """What gives a photo its millimetres; `points` and `length_mm` where two points do."""

    id: int
    photo_id: int
    scale: PlaneScale
    card_id: int | None
    points: tuple[Pixel, ...] = ()
    length_mm: float | None = None


@dataclass(frozen=True, slots=True)
class KeptOverlay:
    """How the new part's photo lies on the old one's; `transform` brings new pixels to old ones."""

    id: int
    old_photo_id: int
    new_photo_id: int
    transform: tuple[tuple[float, ...], ...]
    method: str
    why: str
    residual_px: float | None
    residual_mm: float | None
    height_mm: float | None
    clicks: tuple[tuple[Pixel, Pixel], ...]
    on_sheet: bool


def marks_of_photos(connection: Connection, photo_ids: Collection[int]) -> tuple[KeptMark, ...]:
    """Return the marks of some photos in the order in which they were drawn.

    Kinds that are no marks of this program (an older or newer one's) are left out.
    """
    asked = (
        select(MarkRow.__table__)
        .where(MarkRow.photo_id.in_(list(photo_ids)), MarkRow.kind.in_(get_args(MarkType)))
        .order_by(MarkRow.id)
    )
    return tuple(_mark(row) for row in connection.execute(asked).mappings())


def mark_by_id(connection: Connection, mark_id: int) -> KeptMark:
    """Return one mark; a ShopTrouble where it is gone."""
    row = (
        connection.execute(select(MarkRow.__table__).where(MarkRow.id == mark_id))
        .mappings()
        .first()
    )
    if row is None:
        raise ShopTrouble("That mark is not on the photo any more.", do="It may be undone.")
    return _mark(row)


def bare_metal_of(connection: Connection, photo_id: int) -> KeptMark | None:
    """Return the place of bare metal that was drawn on a photo, or None."""
    there = marks_of_photos(connection, [photo_id])
    return next((kept for kept in there if kept.mark.type == "bare-metal"), None)


def uncount_surfaces(deed: Deed, photo_id: int) -> None:
    """Let the surfaces of a photo say nothing, until they are counted anew."""
    nothing = dict.fromkeys(("value", "unit", "expanded_u", "settings"))
    for kept in marks_of_photos(deed.connection, [photo_id]):
        if kept.mark.type == "surface":
            deed.change(MarkRow, kept.id, **nothing)


def scale_of_photo(connection: Connection, photo_id: int) -> KeptScale | None:
    """Return what gives a photo its millimetres, or None."""
    row = (
        connection.execute(select(PhotoScale.__table__).where(PhotoScale.photo_id == photo_id))
        .mappings()
        .first()
    )
    if row is None:
        return None
    try:
        points = tuple(_pixel(point) for point in json.loads(row["points"] or "[]"))
        if row["source"] == "card":
            scale: PlaneScale = CardScale.from_json(row["fit"])
        else:
            one, other = points
            scale = TwoPointScale((one, other), row["length_mm"], row["length_u_mm"] or 0.0)
    except (ValueError, TypeError, KeyError) as error:
        raise damaged(row["fit"], "a photo's scale") from error
    return KeptScale(row["id"], photo_id, scale, row["card_id"], points, row["length_mm"])


def card_of_scale(connection: Connection, kept: KeptScale | None) -> CardLayout | None:
    """Return the layout of the card that gives a scale: as the shop printed it, else our own.

    None where no card does, or where its layout is gone.
    """
    if kept is None or not isinstance(kept.scale, CardScale):
        return None
    if kept.card_id is not None:
        try:
            return printed_card(connection, kept.card_id).layout
        except ShopTrouble:
            pass  # the card's name still tells whether it is one of ours
    name = kept.scale.card
    return next((one for one in map(bench_card, PAGES_MM) if one.name == name), None)


def overlay_of(connection: Connection, old_id: int, new_id: int) -> KeptOverlay | None:
    """Return how the one photo lies on the other, where that was kept."""
    row = (
        connection.execute(
            select(Overlay.__table__).where(
                Overlay.old_photo_id == old_id, Overlay.new_photo_id == new_id
            )
        )
        .mappings()
        .first()
    )
    if row is None:
        return None
    try:
        transform = tuple(tuple(float(v) for v in line) for line in json.loads(row["transform"]))
        if [len(line) for line in transform] != [3, 3, 3]:
            raise ValueError
        pairs = json.loads(row["clicks"] or "[]")
        clicks = tuple((_pixel(old), _pixel(new)) for old, new in pairs)
    except (ValueError, TypeError) as error:
        raise damaged(row["transform"], "an overlay") from error
    names = ("id", "old_photo_id", "new_photo_id", "method", "why")
    figures = ("residual_px", "residual_mm", "height_mm")
    return KeptOverlay(
        **{name: row[name] for name in (*names, *figures)},
        transform=transform,
        clicks=clicks,
        on_sheet=bool(row["on_sheet"]),
    )


def remove_mark_row(deed: Deed, mark_id: int) -> None:
    """Take out a mark; a ShopTrouble where it is the reading of a pair."""
    try:
        deed.remove(MarkRow, mark_id)
    except IntegrityError as error:
        raise ShopTrouble(
            "This mark is a reading of the pair.",
            kept="The mark stays.",
            do="Take the reading out first.",
        ) from error


def remove_drawn(deed: Deed, photo_id: int) -> None:
    """Take out what was drawn on a photo: its marks, its scale, overlays with it."""
    asked = select(MarkRow.id).where(MarkRow.photo_id == photo_id)
    for mark_id in deed.connection.execute(asked).scalars().all():
        remove_mark_row(deed, mark_id)
    asked = select(PhotoScale.id).where(PhotoScale.photo_id == photo_id)
    for scale_id in deed.connection.execute(asked).scalars().all():
        deed.remove(PhotoScale, scale_id)
    either = (Overlay.old_photo_id == photo_id) | (Overlay.new_photo_id == photo_id)
    for overlay_id in deed.connection.execute(select(Overlay.id).where(either)).scalars().all():
        deed.remove(Overlay, overlay_id)


def _mark(row: RowMapping) -> KeptMark:
    try:
        points = tuple(_pixel(point) for point in json.loads(row["points"]))
        snapped = tuple(bool(one) for one in json.loads(row["snapped"] or "[]"))
        budget = {str(k): float(v) for k, v in json.loads(row["budget"] or "{}").items()}
        settings = json.loads(row["settings"] or "{}")
        clicks = tuple(_pixel(point) for point in settings.get("clicks", []))
        how = str(settings.get("method", "")), tuple(map(str, settings.get("warnings", ())))
    except (ValueError, TypeError, AttributeError) as error:
        raise damaged(row["points"], "a mark") from error
    mark = Mark(
        cast(MarkType, row["kind"]),
        points,
        row["words"],
        row["height_mm"] or 0.0,
        row["height_u_mm"] or 0.0,
        snapped,
    )
    known = row["height_mm"] is not None
    said = (row["value"], row["unit"], row["expanded_u"])
    return KeptMark(row["id"], row["photo_id"], mark, known, *said, budget, clicks, *how)


def _pixel(point: Any) -> Pixel:
    x, y = point
    return float(x), float(y)

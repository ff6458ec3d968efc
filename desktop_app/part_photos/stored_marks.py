"""Reading marks and overlays back from the record, and letting them go."""

from __future__ import annotations

import math
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any, cast, get_args

from sqlalchemy import Connection, RowMapping, select
from sqlalchemy.exc import IntegrityError

from desktop_app.language import tr
from desktop_app.part_photos.kept_json import (
    kept_figure,
    kept_json,
    kept_number,
    kept_object,
    kept_pixel,
    kept_pixels,
)
from desktop_app.part_photos.marks.mark import Mark, MarkType, Pixel, is_height
from desktop_app.part_photos.stored import Mark as MarkRow
from desktop_app.part_photos.stored import Overlay, PhotoScale
from desktop_app.shop_record.databases.dialect import hear_refusals
from desktop_app.shop_record.deed import Deed
from desktop_app.shop_record.kept_value import damaged
from desktop_app.shop_record.trouble import ShopDamaged, ShopTrouble

_MOST = 1e9


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
    value: float | None
    unit: str | None
    expanded_u: float | None
    budget: Mapping[str, float] = field(default_factory=dict)
    clicks: tuple[Pixel, ...] = ()
    method: str = ""
    warnings: tuple[str, ...] = ()

    @property
    def height_known(self) -> bool:
        """Whether somebody said how high it lies."""
        return self.mark.height_said


@dataclass(frozen=True, slots=True)
class DamagedMark:
    """A mark whose row holds what nothing of ours has written: named, never drawn or read."""

    id: int
    photo_id: int
    kind: str
    name: str

    def words(self) -> str:
        """Return which one it is, as the end of a sentence."""
        return tr("mark {id}", id=self.id) + (f" “{self.name[:40]}”" if self.name.strip() else "")


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

    Kinds that are no marks of this program (an older or newer one's) are left out, and so are
    damaged ones: see `damaged_marks`.
    """
    found = (_mark_or_damage(row) for row in _mark_rows(connection, photo_ids))
    return tuple(one for one in found if isinstance(one, KeptMark))


def damaged_marks(connection: Connection, photo_ids: Collection[int]) -> tuple[DamagedMark, ...]:
    """Return the marks of some photos that can't be read, so that somebody is told of them."""
    found = (_mark_or_damage(row) for row in _mark_rows(connection, photo_ids))
    return tuple(one for one in found if isinstance(one, DamagedMark))


def _mark_rows(connection: Connection, photo_ids: Collection[int]) -> Sequence[RowMapping]:
    asked = (
        select(MarkRow.__table__)
        .where(MarkRow.photo_id.in_(list(photo_ids)), MarkRow.kind.in_(get_args(MarkType)))
        .order_by(MarkRow.id)
    )
    return connection.execute(asked).mappings().all()


def _mark_or_damage(row: RowMapping) -> KeptMark | DamagedMark:
    try:
        return _mark(row)
    except ShopDamaged:
        return DamagedMark(row["id"], row["photo_id"], row["kind"], str(row["words"]))


def kind_of_mark(connection: Connection, mark_id: int) -> tuple[str, int]:
    """Return a mark's kind and its photo, damaged or not; a ShopTrouble where it is gone."""
    asked = select(MarkRow.kind, MarkRow.photo_id).where(MarkRow.id == mark_id)
    row = connection.execute(asked).first()
    if row is None:
        raise _no_mark()
    return row.kind, row.photo_id


def mark_by_id(connection: Connection, mark_id: int) -> KeptMark:
    """Return one mark; a ShopTrouble where it is gone."""
    row = (
        connection.execute(select(MarkRow.__table__).where(MarkRow.id == mark_id))
        .mappings()
        .first()
    )
    if row is None:
        raise _no_mark()
    return _mark(row)


def _no_mark() -> ShopTrouble:
    return ShopTrouble(tr("That mark is not on the photo any more."), tr("It may be undone."))


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
        transform = tuple(
            tuple(kept_number(one, -1e9, 1e9) for one in line)
            for line in kept_json(row["transform"])
        )
        if [len(line) for line in transform] != [3, 3, 3]:
            raise ValueError("no matrix")
        pairs = kept_json(row["clicks"] or "[]")
        clicks = tuple((kept_pixel(old), kept_pixel(new)) for old, new in pairs)
        residual_px, residual_mm, height_mm = (
            kept_figure(row[name], -math.inf)
            for name in ("residual_px", "residual_mm", "height_mm")
        )
    except (ValueError, TypeError) as error:
        where = tr("how photo {new_id} lies on photo {old_id}", new_id=new_id, old_id=old_id)
        raise damaged(row["transform"], where) from error
    names = ("id", "old_photo_id", "new_photo_id", "method", "why")
    return KeptOverlay(
        **{name: row[name] for name in names},
        residual_px=residual_px,
        residual_mm=residual_mm,
        height_mm=height_mm,
        transform=transform,
        clicks=clicks,
        on_sheet=bool(row["on_sheet"]),
    )


def remove_mark_row(deed: Deed, mark_id: int) -> None:
    """Take out a mark; a ShopTrouble where it is the reading of a pair."""
    try:
        deed.remove(MarkRow, mark_id)
        hear_refusals(deed.connection)
    except IntegrityError as error:
        raise ShopTrouble(
            tr("This mark is a reading of the pair."),
            kept=tr("The mark stays."),
            do=tr("Take the reading out first."),
        ) from error


def remove_drawn(deed: Deed, photo_id: int) -> None:
    """Take out what was drawn on a photo: its marks, its scale, overlays with it."""
    asked = select(MarkRow.id).where(MarkRow.photo_id == photo_id).order_by(MarkRow.id)
    for mark_id in deed.connection.execute(asked).scalars().all():
        remove_mark_row(deed, mark_id)
    asked = select(PhotoScale.id).where(PhotoScale.photo_id == photo_id)
    for scale_id in deed.connection.execute(asked).scalars().all():
        deed.remove(PhotoScale, scale_id)
    either = (Overlay.old_photo_id == photo_id) | (Overlay.new_photo_id == photo_id)
    asked = select(Overlay.id).where(either).order_by(Overlay.id)
    for overlay_id in deed.connection.execute(asked).scalars().all():
        deed.remove(Overlay, overlay_id)


def _mark(row: RowMapping) -> KeptMark:
    try:
        points = kept_pixels(kept_json(row["points"]))
        snapped = _flags(row["snapped"], len(points))
        budget = {
            name: kept_number(one, 0.0, _MOST) for name, one in _object(row["budget"]).items()
        }
        settings = _object(row["settings"])
        clicks = kept_pixels(settings.get("clicks", []))
        if (clicks and len(clicks) != len(points)) or not points:
            raise ValueError("points and clicks don't agree")
        method, warnings = settings.get("method", ""), settings.get("warnings", [])
        if not isinstance(warnings, list) or not all(
            isinstance(one, str) for one in (method, *warnings)
        ):
            raise ValueError("no words")
        height, height_u = (kept_figure(row[name]) for name in ("height_mm", "height_u_mm"))
        if not all(one is None or is_height(one) for one in (height, height_u)):
            raise ValueError("no height")
        value = kept_figure(row["value"], 0.0, _MOST)
        expanded_u = kept_figure(row["expanded_u"], 0.0, _MOST)
        if not isinstance(row["words"], str) or row["unit"] not in (None, "mm", "deg", "", "%"):
            raise ValueError("no words")
    except (ValueError, TypeError) as error:
        raise damaged(row["points"], _place(row)) from error
    mark = Mark(
        cast(MarkType, row["kind"]),
        points,
        row["words"],
        height or 0.0,
        height_u or 0.0,
        snapped,
        height_said=height is not None,
    )
    said = (value, row["unit"], expanded_u)
    how = (clicks, method, tuple(warnings))
    return KeptMark(row["id"], row["photo_id"], mark, *said, budget, *how)


def _object(text: str | None) -> dict[str, Any]:
    return {} if text is None else kept_object(text)


def _flags(text: str | None, count: int) -> tuple[bool, ...]:
    found = [] if text is None else kept_json(text)
    if not isinstance(found, list) or not all(isinstance(one, bool) for one in found):
        raise ValueError("no list of true and false")
    if found and len(found) != count:
        raise ValueError("not one for each point")
    return tuple(found)


def _place(row: RowMapping) -> str:
    return tr("mark {id} of photo {photo_id}", id=row["id"], photo_id=row["photo_id"])

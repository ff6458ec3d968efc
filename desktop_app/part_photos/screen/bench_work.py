"""The work on the bench: marks drawn, moved, snapped and counted, each as a deed."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Any, NamedTuple

from PySide6.QtCore import QObject, Signal, Slot
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.bench_readings import BenchReadings
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.mark_actions import (
    Follow,
    draw_mark,
    keep_count,
    move_mark,
    remove_mark,
    snap_mark,
)
from desktop_app.part_photos.mark_words import MarkTool, tool_of, value_words
from desktop_app.part_photos.marks.mark import (
    FROM_PICTURE,
    OUTLINES,
    SIZED,
    Mark,
    Measured,
    Pixel,
)
from desktop_app.part_photos.marks.measure import measure
from desktop_app.part_photos.photo_pixels import PhotoPixels
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.bench_surfaces import SurfaceCounts
from desktop_app.part_photos.signs import SIDE_SIGNS
from desktop_app.part_photos.stored_marks import (
    DamagedMark,
    KeptMark,
    bare_metal_of,
    damaged_marks,
    marks_of_photos,
)
from desktop_app.part_photos.surface_pairs import listed, other_surface
from desktop_app.shop_record.deed import Done
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk
from desktop_app.shop_window.typing_pause import TypingPause

_ROUND = ("circle", "round-bar")
UNBROKEN = "\u00a0"  # a space at which no line ends: a value stays in one piece


class MarkSaid(NamedTuple):
    """What a mark says as it lies now, or in a sentence why it says nothing."""

    measured: Measured | None
    why_not: str = ""


class BenchWork(QObject):
    """Holds the marks of both photos as they are kept, and what is being moved just now."""

    changed = Signal()  # the marks were read again
    said = Signal(str)

    def __init__(
        self,
        desk: Desk,
        photos: Mapping[str, BenchPhoto],
        readings: BenchReadings | None,
        parent: QWidget,
    ) -> None:
        super().__init__(parent)
        self.marks: dict[int, KeptMark] = {}
        self.damaged: dict[int, DamagedMark] = {}  # can only be taken out
        self._desk, self._photos = desk, photos
        self._follow: Follow | None = readings.follow if readings is not None else None
        self._moving: dict[int, Mark] = {}
        self._counted: dict[int, tuple[tuple[Pixel, ...], Measured]] = {}  # where, and what
        self._lent: dict[int, tuple[float, float]] = {}  # heights that the last mark had
        self._said: dict[int, tuple[Mark, PlaneScale, MarkSaid]] = {}
        self._waiting: set[int] = set()  # marks that want the pixels, which are still decoded
        self._surfaces = SurfaceCounts(desk, photos, self)
        self._pause = TypingPause(parent, self.flush)
        for photo in photos.values():
            photo.news.connect(self._pixels_came)

    def read(self) -> None:
        """Read the marks again as they are kept."""
        ids = [photo.photo.id for photo in self._photos.values()]
        found: tuple[KeptMark, ...] | None = self._desk.ask(marks_of_photos, ids)
        if found is None:
            return  # it can't be read now, and that was told: what is shown stays
        self.marks = {kept.id: kept for kept in found}
        self.damaged = {one.id: one for one in self._desk.ask(damaged_marks, ids) or ()}
        self._moving = {one: mark for one, mark in self._moving.items() if one in self.marks}
        for mark_id, (points, counted) in list(self._counted.items()):
            kept = self.marks.get(mark_id)
            if kept is None or (kept.mark.points_px, kept.value) != (points, counted.value):
                del self._counted[mark_id]  # undone, or moved since
        self.changed.emit()

    def side_of(self, mark_id: int) -> str:
        """Return on which side's photo a mark lies."""
        photo_id = (self.marks.get(mark_id) or self.damaged[mark_id]).photo_id
        return next(side for side, one in self._photos.items() if one.photo.id == photo_id)

    def has(self, mark_id: int | None) -> bool:
        """Tell whether a mark is there, damaged or not."""
        return mark_id in self.marks or mark_id in self.damaged

    def now(self, mark_id: int) -> Mark:
        """Return a mark as it lies now, moved or kept."""
        return self._moving.get(mark_id) or self.marks[mark_id].mark

    def said_now(self, mark_id: int) -> MarkSaid:
        """Return what a mark says as it lies now; worked out once as long as nothing changes."""
        mark, plane = self.now(mark_id), self._photos[self.side_of(mark_id)].plane
        if mark.type in ("note", "bare-metal"):
            return MarkSaid(None)
        if mark.type == "count":
            points, counted = self._counted.get(mark_id, ((), None))
            return MarkSaid(counted if points == mark.points_px else None)
        if mark.type == "surface":
            return self._share(mark_id)
        if plane is None:
            return MarkSaid(None, tr("No scale yet, so no size."))
        known = self._said.get(mark_id)
        if known is None or known[0] != mark or known[1] is not plane:
            try:
                said = MarkSaid(measure(mark, plane))
            except ShopTrouble as trouble:
                said = MarkSaid(None, trouble.sentence())
            known = self._said[mark_id] = (mark, plane, said)
        return known[2]

    def label(self, mark_id: int) -> str:
        """Return the words beside a mark: its name and what it says."""
        name, words = self.now(mark_id).name.strip(), self._says(mark_id)
        return " ".join(part for part in (name, words) if part)

    def _says(self, mark_id: int) -> str:
        kept, mark = self.marks[mark_id], self.now(mark_id)
        words = ""
        if mark.type in FROM_PICTURE and (kept.value is None or mark_id in self._moving):
            words = tr("not counted")
        elif mark.type == "count":
            words = tr("{value:g} counted", value=kept.value)
        elif mark.type == "surface":
            words = value_words(kept.value, kept.unit, kept.expanded_u)
        elif mark.type in SIZED:
            words = self._size(kept, mark_id)
        elif mark.type == "bare-metal" and not mark.name.strip():
            words = tr("bare metal")
        return words

    def line(self, mark_id: int) -> str:
        """Return a mark's line in the list; surfaces of one name stand side by side in it."""
        sign = SIDE_SIGNS[self.side_of(mark_id)]
        if mark_id in self.damaged:
            damaged = tr("Damaged in the record: {words}", words=self.damaged[mark_id].words())
            return f"{sign}  ⚠ {damaged}"
        mark, says = self.now(mark_id), self._says(mark_id).replace(" ", UNBROKEN)
        said = " ".join(part for part in (mark.name.strip(), says) if part)
        bare = mark.type == "bare-metal" and not mark.name.strip()
        line = f"{sign}  {tool_of(mark.type).label}" + (f": {said}" if said and not bare else "")
        photo = self.marks[mark_id].photo_id
        others = {one: k.mark for one, k in self.marks.items() if k.photo_id != photo}
        like = other_surface(mark, others)
        if like is None:
            return line
        other = self.marks[like]
        share = value_words(other.value, other.unit, other.expanded_u) or tr("not counted")
        beside = f"{SIDE_SIGNS[self.side_of(like)]} {share}".replace(" ", UNBROKEN)
        return f"{line}  |  {beside}"

    def listed(self) -> Sequence[int]:
        """Return the marks in the order of the list; damaged ones come last."""
        old, new = (
            {one: kept.mark for one, kept in self.marks.items() if self.side_of(one) == side}
            for side in ("removed", "replacement")
        )
        return [*listed(old, new), *self.damaged]

    def _share(self, mark_id: int) -> MarkSaid:
        kept = self.marks[mark_id]
        if mark_id in self._moving or (kept.value is None and not kept.warnings):
            return MarkSaid(None)
        said = (kept.value, "%", kept.expanded_u)
        return MarkSaid(Measured(*said, warnings=kept.warnings, method=kept.method))

    def _size(self, kept: KeptMark, mark_id: int) -> str:
        unit = self._desk.rules.length_unit
        words = value_words(kept.value, kept.unit, kept.expanded_u, unit)
        if mark_id in self._moving:
            live = self.said_now(mark_id).measured
            words = (
                value_words(live.value, live.unit, live.expanded_uncertainty, unit) if live else ""
            )
        if not words:
            return tr("no size") if self._photos[self.side_of(mark_id)].plane else tr("no scale")
        return f"⌀ {words}" if kept.mark.type in _ROUND else words

    def draw(
        self, side: str, tool: MarkTool, points: tuple[Pixel, ...], *, snap: bool
    ) -> int | None:
        """Put a mark on a side's photo; it is snapped or counted beside the window."""
        photo = self._photos[side].photo
        before = self._last_with_height(side)
        lies = tool.type in SIZED
        mark = Mark(tool.type, points)
        if lies and before is not None:
            mark = replace(mark, height_mm=before.height_mm, height_u_mm=before.height_u_mm)
        known = lies and before is not None
        done = self._do(draw_mark, photo.id, mark, height_known=known)
        made = done.made if done is not None else None
        if made is not None and known:
            self._lent[made] = (mark.height_mm, mark.height_u_mm)
        if tool.type in OUTLINES:
            self._surfaces.count(side)
        elif made is not None and (tool.type == "count" or (snap and lies)):
            self.look_closely(made)
        if made is None and done is not None:  # the photo's bare metal lies there now
            kept = self._desk.ask(bare_metal_of, photo.id)
            made = kept.id if kept is not None else None
        return made

    def as_last(self, mark_id: int) -> bool:
        """Tell whether a mark was drawn with the last one's height, and nobody changed it since."""
        kept = self.marks[mark_id]
        height = (kept.mark.height_mm, kept.mark.height_u_mm)
        return kept.height_known and self._lent.get(mark_id) == height

    def usual_height(self) -> float | None:
        """Return the height in mm that was entered last on the removed part's photo, or None."""
        last = self._last_with_height("removed") if "removed" in self._photos else None
        return None if last is None else last.height_mm

    def _last_with_height(self, side: str) -> Mark | None:
        photo = self._photos[side].photo
        there = [k.mark for k in self.marks.values() if k.photo_id == photo.id and k.height_known]
        return there[-1] if there else None

    def move(self, mark_id: int, points: tuple[Pixel, ...]) -> None:
        """Move a mark's points; they are kept once the moving rests."""
        if mark_id not in self.marks:
            return
        before = self.now(mark_id)
        held = before.snapped or (False,) * len(points)
        still = zip(held, before.points_px, points, strict=True)
        snapped = tuple(one and old == new for one, old, new in still)
        self._moving[mark_id] = replace(before, points_px=points, snapped=snapped)
        self._pause.start()

    @Slot()
    def flush(self) -> None:
        """Keep what was moved, one deed a mark; a move that is refused waits where it is."""
        self._pause.stop()
        moved, self._moving = self._moving, {}
        waits = False
        for mark_id, mark in moved.items():
            kept = self.marks.get(mark_id)
            if kept is None or mark.points_px == kept.mark.points_px:
                continue
            done = self._do(move_mark, mark_id, mark.points_px, self._follow)
            if mark_id not in self.marks:
                continue
            if done is None:
                self._moving[mark_id], waits = mark, True
            elif mark.type == "count" or mark.type in OUTLINES:
                self.look_closely(mark_id)
        if waits:
            self.changed.emit()

    def remove(self, mark_id: int) -> None:
        """Take a mark out, damaged or not."""
        if not self.has(mark_id):
            return  # another desk took it out
        side, kept = self.side_of(mark_id), self.marks.get(mark_id)
        kind = self.damaged[mark_id].kind if kept is None else kept.mark.type
        moving = self._moving.pop(mark_id, None)
        done = self._do(remove_mark, mark_id)
        if done is None and moving is not None and mark_id in self.marks:
            self.move(mark_id, moving.points_px)  # it stays, and so does where it was moved to
        if kind == "bare-metal":
            self._surfaces.count(side)

    def _do(self, deed: Callable[..., Done], *args: Any, **more: Any) -> Done | None:
        """Do a deed; where nothing came of it, read again: another desk may have been before."""
        done = self._desk.do(deed, *args, **more)
        if done is None or done.seq is None:
            self.read()
        return done

    def look_closely(self, mark_id: int) -> None:
        """Find the edges at a mark's points, or count along or inside of it, in the pixels."""
        if mark_id not in self.marks:
            return
        if self.now(mark_id).type in OUTLINES:
            self._surfaces.count(self.side_of(mark_id))
            return
        photo = self._photos[self.side_of(mark_id)]
        if photo.pixels is None:
            self._waiting.add(mark_id)
            return
        mark, pixels, plane = self.now(mark_id), photo.pixels, photo.plane
        blur = getattr(plane, "blur_px", None)

        def work() -> tuple[int, Mark, Mark | Measured]:
            if mark.type == "count":
                return mark_id, mark, _counted(mark, pixels)
            from desktop_app.part_photos.marks.snap import snapped

            return mark_id, mark, snapped(mark, pixels, plane, blur)

        words = tr("Counting along a mark") if mark.type == "count" else tr("Looking for edges")
        self._desk.errands.run(words, work, self._seen)

    def _seen(self, result: tuple[int, Mark, Mark | Measured]) -> None:
        mark_id, asked, seen = result
        if not isValid(self) or mark_id not in self.marks:
            return
        if self.now(mark_id).points_px != asked.points_px:
            return  # it was moved meanwhile
        if isinstance(seen, Measured):
            self._counted[mark_id] = (asked.points_px, seen)
            self._do(keep_count, mark_id, seen, self._follow)
            self.changed.emit()  # its warnings too, where the count is the same
        elif any(seen.snapped):
            self._do(snap_mark, mark_id, seen, self._follow)
        else:
            self.said.emit(
                tr("No edge was clear enough there; the points stay as you clicked them.")
            )

    @Slot()
    def _pixels_came(self) -> None:
        for mark_id in list(self._waiting):
            if mark_id not in self.marks:
                self._waiting.discard(mark_id)
            elif self._photos[self.side_of(mark_id)].pixels is not None:
                self._waiting.discard(mark_id)
                self.look_closely(mark_id)


def _counted(mark: Mark, pixels: PhotoPixels) -> Measured:
    from desktop_app.part_photos.marks.count import count_along

    return count_along(mark, pixels)

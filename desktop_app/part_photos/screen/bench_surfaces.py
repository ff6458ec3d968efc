"""The shares of the surfaces that are drawn on the photos, counted beside the window."""

from __future__ import annotations

from collections.abc import Mapping
from functools import partial

from PySide6.QtCore import QObject, Slot
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.mark_actions import keep_shares
from desktop_app.part_photos.marks.mark import Measured, Pixel
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.stored_marks import KeptMark, marks_of_photos
from desktop_app.part_photos.surface.surface_mark import share_of_surface
from desktop_app.shop_window.desk import Desk

Outline = tuple[Pixel, ...]


class SurfaceCounts(QObject):
    """Counts all surfaces of a photo together: they share its white and its bare metal."""

    def __init__(self, desk: Desk, photos: Mapping[str, BenchPhoto], parent: QObject) -> None:
        super().__init__(parent)
        self._desk, self._photos = desk, photos
        self._waiting: set[str] = set()  # sides whose pixels are still decoded
        for photo in photos.values():
            photo.news.connect(self._pixels_came)
            photo.card_seen.connect(self._white_came)

    def count(self, side: str) -> None:
        """Count the surfaces of one side's photo as they are kept now, once its pixels are there.

        They count against the neutral grey, or the bare metal drawn there.
        """
        photo = self._photos[side]
        surfaces, bare = self._drawn(photo)
        if not surfaces:
            return
        if photo.pixels is None:
            self._waiting.add(side)
            return
        pixels, plane, card = photo.pixels, photo.plane, photo.card
        times = photo.kept.card_scale if photo.kept is not None else 1.0

        def work() -> dict[int, Measured]:
            return {
                mark_id: share_of_surface(pixels, outline, bare, plane, card, times)
                for mark_id, outline in surfaces.items()
            }

        keep = partial(self._counted, side, surfaces, bare)
        self._desk.errands.run(tr("Counting the colours of a surface"), work, keep)

    def _counted(
        self,
        side: str,
        asked: Mapping[int, Outline],
        bare: Outline | None,
        shares: Mapping[int, Measured],
    ) -> None:
        if not isValid(self):
            return
        now, bare_now = self._drawn(self._photos[side])
        if bare != bare_now:
            return  # it was moved meanwhile, and they are counted again for that
        fresh = {one: share for one, share in shares.items() if now.get(one) == asked[one]}
        if fresh:
            self._desk.do(keep_shares, fresh)

    def _drawn(self, photo: BenchPhoto) -> tuple[dict[int, Outline], Outline | None]:
        kept: tuple[KeptMark, ...] = self._desk.ask(marks_of_photos, [photo.photo.id]) or ()
        surfaces = {one.id: one.mark.points_px for one in kept if one.mark.type == "surface"}
        bare = (one.mark.points_px for one in kept if one.mark.type == "bare-metal")
        return surfaces, next(bare, None)

    @Slot()
    def _pixels_came(self) -> None:
        for side in list(self._waiting):
            if self._photos[side].pixels is not None:
                self._waiting.discard(side)
                self.count(side)

    @Slot()
    def _white_came(self) -> None:
        for side, photo in self._photos.items():
            if photo is self.sender():
                self.count(side)

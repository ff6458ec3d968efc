"""The bench opens on what matters: the marks that are there, else the card's room for the part."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from PySide6.QtCore import QRectF

from desktop_app.part_photos.marks.mark import Mark
from desktop_app.part_photos.opening_view import Box, around_field, around_marks
from desktop_app.part_photos.screen.bench_photo import BenchPhoto
from desktop_app.part_photos.screen.photo_stage import PhotoStage

_FILLS = 0.7  # of the stage, the marks; what stands round the part helps to know it again
_FIELD_FILLS = 0.98


class OpeningViews:
    """Enlarges each photo once, and never again: from then on a person says what is looked at."""

    def __init__(self, photos: Mapping[str, BenchPhoto], stages: Mapping[str, PhotoStage]) -> None:
        self._photos, self._stages = photos, stages
        self._waiting = set(photos)

    def begin(self, side: str, marks: Iterable[Mark]) -> None:
        """Look at the marks that a side's photo has when the bench opens."""
        self._look(side, around_marks(list(marks), self._size(side)), _FILLS)

    def card_came(self) -> None:
        """Look at the card's room for the part, in photos that nothing was looked at in yet."""
        for side in list(self._waiting):
            photo = self._photos[side]
            card = photo.card.printed(photo.kept.card_scale) if photo.card and photo.kept else None
            self._look(side, around_field(photo.plane, card, self._size(side)), _FIELD_FILLS)

    def leave_alone(self) -> None:
        """Move no photo any more: somebody works on them."""
        self._waiting.clear()

    def _look(self, side: str, box: Box | None, fills: float) -> None:
        if box is not None and side in self._waiting:
            self._waiting.discard(side)
            self._stages[side].open_on(QRectF(*box), fills)

    def _size(self, side: str) -> tuple[int, int]:
        photo = self._photos[side].photo
        return photo.width, photo.height

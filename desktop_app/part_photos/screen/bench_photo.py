"""One photo on the bench: its pixels and what gives it millimetres, found beside the window."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from PySide6.QtCore import QObject, Signal, Slot
from shiboken6 import isValid

from desktop_app.language import tr
from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.bench_card.print_scale import said_of_prints
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_actions import Follow
from desktop_app.part_photos.mark_words import value_words
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels
from desktop_app.part_photos.print_actions import keep_card
from desktop_app.part_photos.scale_words import said_of_scale
from desktop_app.part_photos.stored_cards import AnyCard, layouts_printed
from desktop_app.part_photos.stored_marks import DamagedMark, damaged_marks
from desktop_app.part_photos.stored_scales import (
    KeptScale,
    card_of_scale,
    prints_to_choose,
    readable_scale,
    was_taken_out,
)
from desktop_app.part_photos.stored_thumbnails import seen_original
from desktop_app.part_photos.thumbnail import damaged
from desktop_app.part_photos.upright_picture import UNREADABLE
from desktop_app.shop_record.past.history import stacks
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk

_COME_AGAIN = tr("Go back to the pair and open the bench once more.")


class CardFound(NamedTuple):
    """A card in a photo: the scale it gives where it was printed as drawn, and which one it is."""

    scale: CardScale
    card: CardLayout


class BenchPhoto(QObject):
    """Decodes one photo, looks for a card in it and keeps what was found."""

    news = Signal()  # the pixels have come, the scale is another one, or the words are
    card_seen = Signal()  # the card was looked for and found, and with it a white

    def __init__(self, desk: Desk, photo: KeptPhoto, follow: Follow | None, parent: QObject):
        super().__init__(parent)
        self.photo = photo
        self.pixels: PhotoPixels | None = None
        self.kept: KeptScale | None = None
        self.card: CardLayout | None = None  # that gives the scale
        self.prints: tuple[AnyCard, ...] = ()  # of that card: those that may lie there
        self.looking = False
        self.opening = False
        self._desk = desk
        self._follow = follow
        self._cannot: ShopTrouble | None = None
        self._broken: ShopTrouble | None = None
        self._damaged: tuple[DamagedMark, ...] = ()
        self._before: KeptScale | None = None
        self._taken_out = False
        self._offered: CardFound | None = None  # found, and not used yet
        self._by_itself = False  # it was looked for without anybody's asking

    @property
    def plane(self) -> PlaneScale | None:
        """What gives the photo its millimetres now."""
        return self.kept.scale if self.kept is not None else None

    def words(self) -> str:
        """Return how it stands with the photo's scale, in a sentence."""
        return " ".join(part for part in (self._of_scale(), self._of_damage()) if part)

    def _of_scale(self) -> str:
        unit = self._desk.rules.length_unit
        if self.looking:
            return tr("Looking for the bench card …")
        if self.kept is not None:
            said = said_of_scale(self.kept.scale, unit)
            return said if self.kept.scale.source == "points" else f"{said} {self._of_print(unit)}"
        if self._broken is not None:
            return tr("No scale: {what} Find the card, or give two points.", what=self._broken.what)
        if self._offered is not None:
            return tr(
                "No scale yet. A card is seen: press “Find the card” to use it. It was "
                "not used by itself, so that what was undone can still come back."
            )
        if self._taken_out and self._cannot is None:
            return tr("No scale: it was taken out. Find the card, or give two points.")
        if self._cannot is None:
            return tr("No scale yet.")
        return tr("No scale yet. {what} {do}", what=self._cannot.what, do=self._cannot.do)

    def _of_print(self, unit: str) -> str:
        among = self.kept.prints if self.kept is not None else ()
        return said_of_prints([card.words(unit) for card in self.prints if card.id in among])

    def _of_damage(self) -> str:
        if not self._damaged:
            return ""
        named = ", ".join(one.words() for one in self._damaged[:5])
        return tr("⚠ Damaged in the record, and so not shown: {named}.", named=named)

    def more_words(self) -> str:
        """Return what else there is to say of the scale."""
        return " ".join(self.kept.scale.warnings) if self.kept is not None else self.words()

    def why_not_open(self) -> str:
        """Return why the pixels never came, in sentences; "" where they did or may still."""
        if self.pixels is not None or self.opening:
            return ""
        return f"{self._cannot.what} {self._cannot.do}" if self._cannot is not None else ""

    def has_scale(self) -> bool:
        """Tell whether a scale is kept, readable or not."""
        return self.kept is not None or self._broken is not None

    def known_points(self) -> tuple[tuple[Pixel, ...], str]:
        """Return the two points that give the scale and their words; none where a card does."""
        if self.kept is None or self.kept.length_mm is None:
            return (), ""
        unit = self._desk.rules.length_unit
        length = value_words(self.kept.length_mm, "mm", None, unit)
        return self.kept.points, tr("{length} (scale)", length=length)

    def open(self) -> None:
        """Read the kept scale and decode the photo; the card is looked for where it never was.

        Nor is it where somebody took the scale out.
        """
        self.read()
        self._by_itself = True
        self._start(look=not self.has_scale() and not self._taken_out)

    def read(self) -> None:
        """Read the scale again as it is kept."""
        self.kept, self._broken = self._desk.ask(readable_scale, self.photo.id) or (None, None)
        self._taken_out = bool(self._desk.ask(was_taken_out, self.photo.id))
        self.card = self._desk.ask(card_of_scale, self.kept)
        self.prints = self._desk.ask(prints_to_choose, self.kept) or ()
        self._damaged = self._desk.ask(damaged_marks, [self.photo.id]) or ()
        self.news.emit()

    def look_for_card(self) -> None:
        """Use the card that was seen, or look for it again; it replaces the scale there is."""
        if self._offered is not None and not self.has_scale():
            self._keep(self._offered)
            return
        self._by_itself = False
        self._start(look=True)

    def _start(self, *, look: bool) -> None:
        if self.looking:
            return
        record, photo, pixels = self._desk.record, self.photo, self.pixels
        layouts = (self._desk.ask(layouts_printed) or ()) if look else ()
        self.looking, self.opening = look, True
        self._before = self.kept

        def work() -> tuple[PhotoPixels | None, CardFound | ShopTrouble | None]:
            _load_ahead()
            try:
                decoded = pixels if pixels is not None else decoded_photo(record, photo)
            except ShopTrouble as trouble:
                return None, trouble
            return decoded, (card_in(decoded, layouts) if look else None)

        words = (
            tr("Looking for the card in {name}", name=photo.name)
            if look
            else tr("Opening {name}", name=photo.name)
        )
        errand = self._desk.errands.run(words, work, self._arrived)
        errand.failed.connect(self._failed)
        self.news.emit()

    @Slot(object)
    def _failed(self, _trouble: object) -> None:
        """Say no longer that something is looked for, where the errand failed or was stopped."""
        if self.looking:
            again = tr("Press “Find the card” to look again.")
            self._cannot = ShopTrouble(tr("The card was not looked for to the end."), do=again)
        elif self.pixels is None:
            self._cannot = ShopTrouble(tr("The photo was not opened to the end."), do=_COME_AGAIN)
        self.looking = self.opening = False
        self.news.emit()

    def _arrived(self, result: tuple[PhotoPixels | None, CardFound | ShopTrouble | None]) -> None:
        if not isValid(self):
            return
        self.looking = self.opening = False
        self.pixels, found = result
        if self.kept != self._before and (self.known_points()[0] or self._taken_out):
            found = None  # somebody gave two points meanwhile, or took the scale out: that counts
        if isinstance(found, CardFound):
            self._cannot = None
            if self._by_itself and self._could_redo():
                self._offered = found
                self.read()
            else:
                self._keep(found)
        else:
            self._cannot = found or self._cannot
            self.read()

    def _could_redo(self) -> bool:
        """Tell whether something was undone and can come back: any deed would end that."""
        _undo, redo = self._desk.ask(stacks) or ((), ())
        return bool(redo)

    def _keep(self, found: CardFound) -> None:
        self._offered = None
        self._desk.do(keep_card, self.photo.id, *found, self._follow)
        self.read()
        self.card_seen.emit()


def _load_ahead() -> None:
    """Load here, beside the window, what the first mark would wait for."""
    import scipy.ndimage
    import scipy.optimize  # noqa: F401


def decoded_photo(record: ShopRecord, photo: KeptPhoto) -> PhotoPixels:
    """Decode a kept photo; beside the window. Raises ShopTrouble where it is gone or damaged."""
    try:
        return photo_pixels(seen_original(record, photo), photo.media_type)
    except UNREADABLE as error:
        raise damaged() from error


def card_in(pixels: PhotoPixels, printed: Sequence[CardLayout]) -> CardFound | PhotoCannot:
    """Look for a card that the shop printed, else for one that comes with the program.

    Beside the window.
    """
    from desktop_app.part_photos.bench_card.card_layouts import PAPER_WORDS, bench_card
    from desktop_app.part_photos.camera.find_scale import found_card

    layouts = dict.fromkeys([*printed, *map(bench_card, PAPER_WORDS)])
    try:
        return CardFound(*found_card(pixels, list(layouts)))
    except PhotoCannot as trouble:
        return trouble

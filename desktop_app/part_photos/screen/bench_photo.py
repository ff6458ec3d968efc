"""One photo on the bench: its pixels and what gives it millimetres, found beside the window."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal
from shiboken6 import isValid

from desktop_app.part_photos.bench_card.card_layout import CardLayout
from desktop_app.part_photos.camera.card_scale import CardScale
from desktop_app.part_photos.camera.plane_scale import PlaneScale
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.mark_actions import Follow, keep_scale
from desktop_app.part_photos.mark_words import value_words
from desktop_app.part_photos.marks.mark import Pixel
from desktop_app.part_photos.photo_cannot import PhotoCannot
from desktop_app.part_photos.photo_pixels import PhotoPixels, photo_pixels
from desktop_app.part_photos.scale_words import said_of_scale
from desktop_app.part_photos.stored_cards import PrintedCardKept, printed_cards
from desktop_app.part_photos.stored_marks import KeptScale, card_of_scale, scale_of_photo
from desktop_app.part_photos.thumbnail import damaged
from desktop_app.part_photos.upright_picture import UNREADABLE
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble
from desktop_app.shop_window.desk import Desk


@dataclass(frozen=True, slots=True)
class CardFound:
    """A card in a photo; `card_id` and `factor` are those of the shop's printed one, if any."""

    scale: CardScale
    card_id: int | None
    factor: float


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
        self.looking = False
        self._desk = desk
        self._follow = follow
        self._cannot: ShopTrouble | None = None
        self._points_before: tuple[Pixel, ...] = ()

    @property
    def plane(self) -> PlaneScale | None:
        """What gives the photo its millimetres now."""
        return self.kept.scale if self.kept is not None else None

    def words(self) -> str:
        """Return how it stands with the photo's scale, in a sentence."""
        if self.looking:
            return "Looking for the bench card …"
        if self.kept is not None:
            return said_of_scale(self.kept.scale, self._desk.rules.length_unit)
        if self._cannot is None:
            return "No scale yet."
        return f"No scale yet. {self._cannot.what} {self._cannot.do}"

    def more_words(self) -> str:
        """Return what else there is to say of the scale."""
        return " ".join(self.kept.scale.warnings) if self.kept is not None else self.words()

    def known_points(self) -> tuple[tuple[Pixel, ...], str]:
        """Return the two points that give the scale and their words; none where a card does."""
        if self.kept is None or self.kept.length_mm is None:
            return (), ""
        unit = self._desk.rules.length_unit
        return self.kept.points, value_words(self.kept.length_mm, "mm", None, unit) + " (scale)"

    def open(self) -> None:
        """Read the kept scale and decode the photo; without a scale the card is looked for."""
        self.read()
        self._start(look=self.kept is None)

    def read(self) -> None:
        """Read the scale again as it is kept."""
        self.kept = self._desk.ask(scale_of_photo, self.photo.id)
        self.card = self._desk.ask(card_of_scale, self.kept)
        self.news.emit()

    def look_for_card(self) -> None:
        """Look for the card again; what is found replaces the scale there is."""
        self._start(look=True)

    def _start(self, *, look: bool) -> None:
        if self.looking:
            return
        record, photo, pixels = self._desk.record, self.photo, self.pixels
        cards = (self._desk.ask(printed_cards) or ()) if look else ()
        self.looking = look
        self._points_before = self.known_points()[0]

        def work() -> tuple[PhotoPixels | None, CardFound | ShopTrouble | None]:
            _load_ahead()
            try:
                decoded = pixels if pixels is not None else decoded_photo(record, photo)
            except ShopTrouble as trouble:
                return None, trouble
            return decoded, (card_in(decoded, cards) if look else None)

        words = f"Looking for the card in {photo.name}" if look else f"Opening {photo.name}"
        self._desk.errands.run(words, work, self._arrived)
        self.news.emit()

    def _arrived(self, result: tuple[PhotoPixels | None, CardFound | ShopTrouble | None]) -> None:
        if not isValid(self):
            return
        self.looking = False
        self.pixels, found = result
        if self.known_points()[0] != self._points_before:
            found = None  # somebody gave two points meanwhile: these count
        if isinstance(found, CardFound):
            self._cannot = None
            there = (self.photo.id, found.scale, found.card_id, found.factor, self._follow)
            self._desk.do(keep_scale, *there)
        elif found is not None:
            self._cannot = found
        self.read()
        if isinstance(found, CardFound):
            self.card_seen.emit()


def _load_ahead() -> None:
    """Load here, beside the window, what the first mark would wait for."""
    import scipy.ndimage
    import scipy.optimize  # noqa: F401


def decoded_photo(record: ShopRecord, photo: KeptPhoto) -> PhotoPixels:
    """Decode a kept photo; beside the window. Raises ShopTrouble where it is gone or damaged."""
    from PIL.Image import DecompressionBombError

    try:
        return photo_pixels(record.photos.read(photo.sha256), photo.media_type)
    except (*UNREADABLE, DecompressionBombError) as error:
        raise damaged() from error


def card_in(pixels: PhotoPixels, cards: tuple[PrintedCardKept, ...]) -> CardFound | PhotoCannot:
    """Look for one of the shop's printed cards, else for one that comes with the program.

    Of several printed from one layout the latest that was measured counts. Beside the window.
    """
    from desktop_app.part_photos.bench_card.card_layouts import PAPER_WORDS, bench_card
    from desktop_app.part_photos.camera.find_scale import card_scale

    layouts = list(dict.fromkeys([card.layout for card in cards]))
    layouts += [one for one in map(bench_card, PAPER_WORDS) if one not in layouts]
    try:
        found = card_scale(pixels, layouts)
        ours = [card for card in cards if card.layout.name == found.card]
        ours.sort(key=lambda card: card.measured_mm is None)
        if not ours:
            return CardFound(found, None, 1.0)
        card = ours[0]
        if card.measured_mm is not None:
            found = card_scale(pixels, [card.layout], card.scale, card.scale_u)
        return CardFound(found, card.id, card.scale)
    except PhotoCannot as trouble:
        return trouble

"""The numbers that a pair's photos show in barcodes, offered beside the fields for them."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import Signal, Slot
from PySide6.QtWidgets import QVBoxLayout, QWidget

from desktop_app.language import tr
from desktop_app.part_photos.screen.code_looker import looker_of
from desktop_app.part_photos.screen.code_offer import CodeOffer, take_back
from desktop_app.part_photos.stored_reading import photos_by_id
from desktop_app.parts_compared.number_offer import FIELD_WORDS, NumberOffer, number_offers
from desktop_app.parts_compared.pair_view import PairView
from desktop_app.shop_window.desk import Desk


class NumberOffers(QWidget):
    """Hidden while there is nothing to offer; `put_in` carries a field of the pair and a number."""

    put_in = Signal(str, str)

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._looker = looker_of(desk)
        self._pair: PairView | None = None
        self._shown: dict[NumberOffer, CodeOffer] = {}
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._looker.changed.connect(self._show)
        self.hide()

    def show_pair(self, pair: PairView) -> None:
        """Offer what the photos of this pair show; look at one that came to it from elsewhere."""
        before, self._pair = self._pair, pair
        if before is not None:
            known = {photo.photo_id for photo in before.photos}
            fresh = [one.photo_id for one in pair.photos if one.photo_id not in known]
            if fresh:
                self._looker.look((self._desk.ask(photos_by_id, fresh) or {}).values())
        self._show()

    def settle(self, value: str) -> None:
        """Offer a number no more: it was put in."""
        for offer in list(self._shown):
            if offer.value == value:
                self._looker.settle(value, offer.photo_ids)

    @Slot()
    def _show(self) -> None:
        wanted = number_offers(self._pair, self._looker.open_meanings) if self._pair else ()
        for offer in [one for one in self._shown if one not in wanted]:
            take_back(self._shown.pop(offer))
        for place, offer in enumerate(wanted):
            if offer not in self._shown:
                self._shown[offer] = self._box(offer)
                self._column.insertWidget(place, self._shown[offer])
        self.setVisible(bool(wanted))

    def _box(self, offer: NumberOffer) -> CodeOffer:
        fields = [
            (field, tr("Put in: {number}", number=FIELD_WORDS[field].lower()))
            for field in offer.fields
        ]
        box = CodeOffer(self._desk, offer.says, offer.value, fields)
        box.taken.connect(lambda field: self.put_in.emit(field, offer.value))
        box.refused.connect(partial(self._looker.settle, offer.value, offer.photo_ids))
        return box

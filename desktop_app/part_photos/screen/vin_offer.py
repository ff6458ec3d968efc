"""A VIN that a photo of the job shows, offered beside the VIN's field."""

from __future__ import annotations

from PySide6.QtCore import Slot
from PySide6.QtWidgets import QVBoxLayout

from desktop_app.language import tr
from desktop_app.part_photos.codes.code_meaning import CodeMeaning
from desktop_app.part_photos.codes.vin_words import vin_offer_words
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.screen.code_looker import looker_of
from desktop_app.part_photos.screen.code_offer import CodeOffer, take_back
from desktop_app.part_photos.stored_reading import photos_of_job
from desktop_app.repair_jobs.job_view import JobView
from desktop_app.repair_jobs.screen.beside_vin import BesideVin
from desktop_app.shop_window.desk import Desk

PUT_IN = tr("Put in as the VIN")


class VinOffer(BesideVin):
    """One offer at a time, of the first photo that shows a VIN; hidden where none does."""

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self._desk = desk
        self._looker = looker_of(desk)
        self._job: JobView | None = None
        self._photos: tuple[KeptPhoto, ...] = ()
        self._shown: tuple[int, str, str] | None = None  # photo, VIN, words
        self._offer: CodeOffer | None = None
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._looker.changed.connect(self._show)
        self.hide()

    def show_job(self, job: JobView) -> None:
        """Offer what the photos of this job show."""
        self._job = job
        self._show()

    @Slot()
    def _show(self) -> None:
        wanted = self._wanted()
        if wanted == self._shown:
            return
        self._shown = wanted
        if self._offer is not None:
            take_back(self._offer)
            self._offer = None
        if wanted is not None:
            self._offer = CodeOffer(self._desk, wanted[2], wanted[1], [("vin", PUT_IN)])
            self._offer.taken.connect(self._take)
            self._offer.refused.connect(self._settle)
            self._column.addWidget(self._offer)
        self.setVisible(wanted is not None)

    def _wanted(self) -> tuple[int, str, str] | None:
        self._photos = ()
        if self._job is None or not self._looker.any_found():
            return None
        self._photos = self._desk.ask(photos_of_job, self._job.id) or ()
        for photo in self._photos:
            for seen in self._looker.open_meanings(photo.id):
                words = self._words(seen, photo, self._job)
                if words is not None:
                    return photo.id, seen.value, words
        return None

    @staticmethod
    def _words(seen: CodeMeaning, photo: KeptPhoto, job: JobView) -> str | None:
        return vin_offer_words(seen, photo.name, job.vehicle.vin)

    @Slot()
    def _take(self) -> None:
        if self._shown is not None:
            self.put_in.emit(self._shown[1])

    @Slot()
    def _settle(self) -> None:
        if self._shown is not None:
            self._looker.settle(self._shown[1], [photo.id for photo in self._photos])

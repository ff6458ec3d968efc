"""A desk with photos on a job, for the tests of the tray and of the stages."""

from __future__ import annotations

from typing import TypeVar

from PySide6.QtWidgets import QWidget

from desktop_app.part_photos.actions import add_photos, take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.kept_photo import KeptPhoto
from desktop_app.part_photos.stored_reading import photos_of_job
from desktop_app.shop_window.desk import Desk
from tests.part_photos.bench_pictures import encoded, exif, noisy

Kind = TypeVar("Kind", bound=QWidget)

CAP = encoded(noisy(400, 300, 1), "JPEG", exif(6, "2026:11:13 16:40:05"))
ROTOR = encoded(noisy(300, 300, 2), "WEBP")


def named(page: QWidget, kind: type[Kind], name: str) -> Kind:
    """Find a widget by what a screen reader would call it."""
    found = [each for each in page.findChildren(kind) if each.accessibleName() == name]
    assert len(found) == 1, name
    return found[0]


def kept(desk: Desk, job_id: int, *contents: bytes) -> list[KeptPhoto]:
    """Put photos on a job without the window."""
    taken = [
        take_in(desk.record, Arrival(f"photo {n}.jpg", content=content))
        for n, content in enumerate(contents)
    ]
    assert desk.do(add_photos, job_id, taken)
    return list(desk.ask(photos_of_job, job_id))

"""The errand that takes photos out of the phones' tray, through the door of all photos."""

from __future__ import annotations

from collections.abc import Generator, Sequence
from dataclasses import dataclass

from desktop_app.language import tr
from desktop_app.part_photos.actions import take_in
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.intake import look_at
from desktop_app.part_photos.phone.in_tray import InTray, Waiting
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.screen.phone_place import PhonePlace
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble


@dataclass(frozen=True, slots=True)
class Wanted:
    """A photo of the tray, and where it goes; `place` is None where nobody knows yet."""

    name: str
    place: PhonePlace | None
    side: str = ""
    view: str = ""


@dataclass(frozen=True, slots=True)
class Looked:
    """What came of one: taken, or why not; `unfit` where it is no usable photo at all."""

    wanted: Wanted
    photo: Waiting
    taken: PhotoTaken | None = None
    trouble: ShopTrouble | None = None

    @property
    def unfit(self) -> bool:
        """Whether the picture itself is the trouble, and not the disk."""
        return isinstance(self.trouble, PhotoTrouble)


def look_over(
    record: ShopRecord, tray: InTray, wanted: Sequence[Wanted]
) -> Generator[Step, None, tuple[Looked, ...]]:
    """Look each photo over; one that has a place is kept among the shop's photos."""
    found = []
    for done, one in enumerate(wanted):
        if not tray.holds(one.name):
            continue  # sent twice, and the first one is with its part by now
        photo = tray.one(one.name)
        yield Step(done, len(wanted), tr("Taking in {called} from the phone", called=photo.called))
        try:
            content = tray.read(one.name)
            if one.place is None:
                taken = look_at(photo.called, content)
            else:
                taken = take_in(record, Arrival(photo.called, content=content))
            found.append(Looked(one, photo, taken))
        except ShopTrouble as trouble:
            found.append(Looked(one, photo, None, trouble))
    return tuple(found)

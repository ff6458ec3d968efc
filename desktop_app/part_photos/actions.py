"""What the shop does with photos: takes them in, adds them to a job, notes, takes them off."""

from __future__ import annotations

import os
import stat
from collections.abc import Sequence
from pathlib import Path

from desktop_app.language import tr
from desktop_app.part_photos.arrival import Arrival
from desktop_app.part_photos.intake import look_at, too_many_bytes
from desktop_app.part_photos.photo_limits import MOST_BYTES
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.part_photos.photo_trouble import PhotoTrouble
from desktop_app.part_photos.stored import Photo
from desktop_app.part_photos.stored_reading import job_is_there, photo_ids_by_hash, remove_photo
from desktop_app.part_photos.stored_thumbnails import thumbnails_of
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def take_in(record: ShopRecord, arrival: Arrival) -> PhotoTaken:
    """Look one arrival over and put the original, unchanged, into the shop's folder.

    No row names it yet: that is `add_photos`, afterwards. Raises ShopTrouble naming the file.
    Takes its time: call it beside the window.
    """
    content = arrival.content
    if content is None:
        assert arrival.path is not None
        content = read_photo_file(arrival.path)
    taken = look_at(arrival.name, content)
    try:
        record.photos.keep(content)
    except ShopTrouble as trouble:
        raise ShopTrouble(f"{taken.name}: {trouble.what}", trouble.kept, trouble.do) from trouble
    thumbnails_of(record).keep(taken.sha256, taken.thumbnail)
    return taken


def read_photo_file(path: Path) -> bytes:
    """Return the bytes of a regular file of at most 40 MB.

    A pipe or a device is refused without waiting for it; raises PhotoTrouble.
    """
    name = path.name or str(path)
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0) | _BINARY)
    except (OSError, ValueError) as error:
        reason = getattr(error, "strerror", None) or tr("no such file")
        raise PhotoTrouble(
            name, tr("it can't be opened ({reason}).", reason=reason.lower())
        ) from error
    try:
        found = os.fstat(handle)
        if not stat.S_ISREG(found.st_mode):
            raise PhotoTrouble(name, tr("it is no file but a folder, a device or a pipe."))
        if found.st_size > MOST_BYTES:
            unfit = too_many_bytes()
            raise PhotoTrouble(name, unfit.reason, unfit.do)
        with os.fdopen(handle, "rb", closefd=False) as file:
            return file.read(MOST_BYTES + 1)
    except OSError as error:
        raise PhotoTrouble(
            name, tr("it can't be read ({reason}).", reason=error.strerror)
        ) from error
    finally:
        os.close(handle)


def add_photos(record: ShopRecord, job_id: int, taken: Sequence[PhotoTaken]) -> Done:
    """Add kept photos to a job in one deed; a picture that the job has already is left out.

    `made` is the id of the first one added, None where all were there already.
    """

    def work(deed: Deed) -> None:
        if not job_is_there(deed.connection, job_id):
            raise ShopTrouble(
                tr("That job is no longer there."),
                kept=tr("The photos are in the shop's folder."),
                do=tr("Undo until the job is back, then add them again."),
            )
        add_to_job(deed, job_id, taken)

    return record.do(
        tr("Add a photo") if len(taken) == 1 else tr("Add {photos} photos", photos=len(taken)), work
    )


def add_to_job(deed: Deed, job_id: int, taken: Sequence[PhotoTaken]) -> list[int]:
    """Add kept photos to a job and return their ids; those that it has already are not doubled."""
    known = dict(photo_ids_by_hash(deed.connection, job_id))
    for photo in taken:
        if photo.sha256 not in known:
            known[photo.sha256] = _add(deed, job_id, photo)
    return [known[photo.sha256] for photo in taken]


def write_photo_note(record: ShopRecord, photo_id: int, note: str) -> Done:
    """Write what a photo shows."""
    return record.do(
        tr("Write a photo's note"), lambda deed: deed.change(Photo, photo_id, note=note.strip())
    )


def take_off_job(record: ShopRecord, photo_id: int) -> Done:
    """Take a photo off its job; the file stays in the shop's folder, and undo brings it back."""
    return record.do(tr("Take a photo off the job"), lambda deed: remove_photo(deed, photo_id))


_BINARY = getattr(os, "O_BINARY", 0)


def _add(deed: Deed, job_id: int, photo: PhotoTaken) -> int:
    return deed.add(
        Photo,
        job_id=job_id,
        sha256=photo.sha256,
        name=photo.name,
        media_type=photo.media_type,
        size_bytes=photo.size_bytes,
        width=photo.width,
        height=photo.height,
        taken_at=photo.taken_at,
    )

"""Photos from a phone, or dropped on a part, put to that part in one deed."""

from __future__ import annotations

from collections.abc import Sequence

from desktop_app.language import tr
from desktop_app.part_photos.actions import add_to_job
from desktop_app.part_photos.photo_taken import PhotoTaken
from desktop_app.parts_compared.stored import PairPhoto
from desktop_app.parts_compared.stored_pair_place import job_of_pair, photos_shown
from desktop_app.repair_jobs.stored_lookup import gone
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def put_to_part(
    record: ShopRecord, pair_id: int, taken: Sequence[PhotoTaken], side: str, view: str
) -> Done:
    """Add kept photos to a pair's job and let them stand for one side of it in one view.

    One that stands there already, from a sending whose answer was lost, is left as it is.
    """

    def work(deed: Deed) -> None:
        job_id = job_of_pair(deed.connection, pair_id)
        if job_id is None:
            raise ShopTrouble(
                tr("The pair that the phone's photo was taken for is no longer there."),
                kept=tr("The photo waits in the phone's tray."),
                do=tr("Give it a place there, or bring the pair back by undo."),
            )
        _put(deed, job_id, pair_id, taken, (side, view))

    if len(taken) == 1:
        return record.do(tr("Put a photo from the phone to a part"), work)
    words = tr("Put {photos} photos from the phone to a part", photos=len(taken))
    return record.do(words, work)


def put_dropped(
    record: ShopRecord, pair_id: int, taken: Sequence[PhotoTaken], side: str, view: str
) -> Done:
    """Add photos that were dropped on a side of a pair to its job, and let them stand there."""

    def work(deed: Deed) -> None:
        job_id = job_of_pair(deed.connection, pair_id)
        if job_id is None:
            raise gone(tr("That pair is no longer there."))
        _put(deed, job_id, pair_id, taken, (side, view))

    return record.do(tr("Put photos to a part"), work)


def _put(
    deed: Deed, job_id: int, pair_id: int, taken: Sequence[PhotoTaken], where: tuple[str, str]
) -> None:
    side, view = where
    there = set(photos_shown(deed.connection, pair_id, side, view))
    for photo_id in dict.fromkeys(add_to_job(deed, job_id, taken)):
        if photo_id not in there:
            deed.add(PairPhoto, pair_id=pair_id, photo_id=photo_id, side=side, view=view)

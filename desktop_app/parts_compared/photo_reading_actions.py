"""A mark on a photo as the reading of a dimension: taken, and followed when the mark moves."""

from __future__ import annotations

from desktop_app.language import tr
from desktop_app.parts_compared import stored_photo_readings as look
from desktop_app.parts_compared.instruments.photo_marks import PHOTO
from desktop_app.parts_compared.mark_doubt import MarkRead, check_fits, doubt_of_mark
from desktop_app.parts_compared.part_kinds.part_kind import Dimension
from desktop_app.parts_compared.photo_doubt import doubt_json
from desktop_app.parts_compared.reading import Side
from desktop_app.parts_compared.stored import PhotoReading, Reading
from desktop_app.shop_record.deed import Deed, Done
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.trouble import ShopTrouble


def take_reading_from_mark(
    record: ShopRecord, pair_id: int, dimension: Dimension, side: Side, mark_id: int
) -> Done:
    """Let a mark be a reading of a dimension on one side, with the mark's own uncertainty.

    A mark that is this reading already is read again. Raises a ShopTrouble where the mark says
    nothing, says it in another unit, rests on a height that nobody said, or lies on a photo that
    doesn't show this part.
    """

    def work(deed: Deed) -> None:
        mark = look.mark_read(deed, mark_id)
        check_fits(mark, dimension)
        if not look.shows_side(deed, pair_id, mark.photo_id, side):
            raise _of_the_other_part(side)
        there = look.reading_of_mark(deed, mark_id, pair_id, dimension.name, side)
        if there is not None:
            _read_again(deed, mark, *there)
            return
        reading = deed.add(
            Reading,
            pair_id=pair_id,
            side=side,
            dimension=dimension.name,
            instrument=PHOTO,
            value=mark.value,
            word=None,
            typed=mark.typed(),
            taken_at=record.clock().isoformat(timespec="seconds"),
        )
        doubt = doubt_json(doubt_of_mark(mark))
        deed.add(PhotoReading, reading_id=reading, mark_id=mark_id, doubt=doubt)

    return record.do(tr("Take a reading from the photo"), work)


def _of_the_other_part(side: Side) -> ShopTrouble:
    kept = tr("The mark stays as it is.")
    if side == "removed":
        return ShopTrouble(
            tr("This photo doesn't stand for the removed part of the pair."),
            kept=kept,
            do=tr(
                "Put the photo to the removed part first, or take the reading for the other one."
            ),
        )
    return ShopTrouble(
        tr("This photo doesn't stand for the replacement of the pair."),
        kept=kept,
        do=tr("Put the photo to the replacement first, or take the reading for the other one."),
    )


def follow(deed: Deed, mark_id: int) -> None:
    """Let readings say what their mark says now, within the deed that moved it.

    Where the mark says nothing any more, or nobody says its height any more, they stay as they
    were read, with the doubt that they had.
    """
    rows = look.photo_reading_rows(deed, mark_id)
    mark = look.mark_read(deed, mark_id) if rows else None
    if mark is not None and mark.value is not None and not mark.height_missing:
        for named, reading in rows:
            _read_again(deed, mark, named, reading)


def _read_again(deed: Deed, mark: MarkRead, named: int, reading: int) -> None:
    deed.change(Reading, reading, value=mark.value, typed=mark.typed())
    deed.change(PhotoReading, named, doubt=doubt_json(doubt_of_mark(mark)))

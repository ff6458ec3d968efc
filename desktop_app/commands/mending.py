"""What a check can put right by itself: what is derived is made anew, what is nobody's set aside.

Rows and history are never touched; a photo is only put back as it came, by its hash. What will be
done is said before, what was done after.
"""

from __future__ import annotations

from collections.abc import Generator, Iterable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from desktop_app.language import tr
from desktop_app.shop_record.counted_words import jobs_counted
from desktop_app.shop_record.step import Step

if TYPE_CHECKING:
    from desktop_app.shop_record.checks.problem import Checked
    from desktop_app.shop_record.record import ShopRecord

# Where a check finds what can be mended, in the words it says, and what is done about it.
INDEX, THUMBNAILS = tr("the search index"), tr("the thumbnails")
PHOTOS, COPIES = tr("the photo folder"), tr("copies beside the record")
_BROUGHT_BACK = tr(
    "Photos that are gone or were changed are looked for on this computer and in the backups; "
    "those that are whole there are put back. What lay in their place is moved into “trash”."
)
WILL_DO = {
    INDEX: tr("The search index is made anew from the jobs."),
    THUMBNAILS: tr("Torn thumbnails go, and are made anew from their photos."),
    PHOTOS: tr(
        "Files among the photos that nothing names are moved into the folder “trash”; nothing "
        "is deleted."
    ),
    COPIES: tr(
        "Former copies of the record are moved into the folder “trash” of the shop; nothing "
        "is deleted."
    ),
}


def will_mend(checked: Checked) -> tuple[str, ...]:
    """Say what mending would do about what a check has found; nothing where it can't."""
    found = {problem.where for problem in checked.problems}
    photos = (_BROUGHT_BACK,) if any(problem.photo for problem in checked.problems) else ()
    return (*photos, *(words for where, words in WILL_DO.items() if where in found))


def mend(record: ShopRecord, checked: Checked) -> Generator[Step, None, list[str]]:
    """Put right what a check has found, a step for each thing; returns what was done, in words."""
    said: list[str] = []
    found = {problem.where for problem in checked.problems}
    if photos := {problem.photo: None for problem in checked.problems if problem.photo}:
        from desktop_app.shop_record.checks.photos_brought_back import bring_back

        said += yield from bring_back(record, list(photos))
    ways = {INDEX: _index, THUMBNAILS: _thumbnails, PHOTOS: _leftovers, COPIES: _copies}
    for where in (one for one in ways if one in found):
        yield Step(0, 0, tr("Mending {where}", where=where))
        said += ways[where](record)
    return said


def _index(record: ShopRecord) -> Iterable[str]:
    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.symptom_search.stored_index import JobIndex
    from desktop_app.symptom_search.stored_index_check import renew_index

    jobs = renew_index(record, JobIndex(kinds_of(record)))
    yield tr("The search index was made anew from {jobs}.", jobs=jobs_counted(jobs))


def _thumbnails(record: ShopRecord) -> Iterable[str]:
    from desktop_app.part_photos.stored_names import media_types
    from desktop_app.part_photos.stored_thumbnail_check import renew_thumbnails

    with record.reading() as connection:
        kinds = media_types(connection)
    made, gone = renew_thumbnails(record, kinds)
    yield tr(
        "Thumbnails made anew: {made:,}; gone, because they can't be made: {gone:,}.",
        made=made,
        gone=gone,
    )


def _leftovers(record: ShopRecord) -> Iterator[str]:
    from desktop_app.part_photos.stored_names import photos_named
    from desktop_app.shop_record.checks.leftovers import set_aside
    from desktop_app.shop_record.checks.rows_expected import RowsExpected
    from desktop_app.shop_record.past.history import chain_problems

    heard = RowsExpected()
    with record.reading() as connection:
        named = {sha256 for sha256, _ in photos_named(connection)}
        chain_problems(connection, heard.hear)
    if heard.odd:
        yield tr("Nothing was moved out of the photo folder: first the history must be readable.")
        return
    for path, to in set_aside(record.photos, named | heard.photos, record.clock()):
        at, now = (_said(record, one) for one in (path, to))
        yield tr("Moved {file} to {place}.", file=at, place=now)


def _said(record: ShopRecord, path: Path) -> str:
    """Return a place as it is told; a shared folder of photos lies outside of the shop's own."""
    inside = path.is_relative_to(record.folder)
    return path.relative_to(record.folder).as_posix() if inside else str(path)


def _copies(record: ShopRecord) -> Iterator[str]:
    from desktop_app.shop_record.checks.leftovers import set_copies_aside

    for path, to in set_copies_aside(record.folder, record.clock()):
        there = to.relative_to(record.folder).as_posix()
        yield tr("Moved {file} to {place}.", file=path.name, place=there)

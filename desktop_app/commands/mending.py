"""What a check can put right by itself: what is derived is made anew, what is nobody's set aside.

Rows, history and photos are never touched; what was done is said.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from desktop_app.shop_record.problem import Checked
    from desktop_app.shop_record.record import ShopRecord


def mend(record: ShopRecord, checked: Checked) -> list[str]:
    """Put right what a check has found, and say each thing that was done."""
    said: list[str] = []
    found = {problem.where for problem in checked.problems}
    if "the search index" in found:
        said += _index(record)
    if "the thumbnails" in found:
        said += _thumbnails(record)
    if "the photo folder" in found:
        said += _leftovers(record)
    return said


def _index(record: ShopRecord) -> Iterable[str]:
    from desktop_app.commands.shop_place import kinds_of
    from desktop_app.symptom_search.stored_index import JobIndex
    from desktop_app.symptom_search.stored_index_check import renew_index

    jobs = renew_index(record, JobIndex(kinds_of(record)))
    yield f"The search index was made anew from {jobs:,} jobs."


def _thumbnails(record: ShopRecord) -> Iterable[str]:
    from desktop_app.part_photos.stored_names import media_types
    from desktop_app.part_photos.stored_thumbnail_check import renew_thumbnails

    with record.reading() as connection:
        kinds = media_types(connection)
    made, gone = renew_thumbnails(record, kinds)
    yield f"{made:,} thumbnails were made anew; {gone:,} that can't be made went."


def _leftovers(record: ShopRecord) -> Iterable[str]:
    from desktop_app.part_photos.stored_names import photos_named
    from desktop_app.shop_record.history import chain_problems
    from desktop_app.shop_record.leftovers import set_aside
    from desktop_app.shop_record.rows_expected import RowsExpected

    heard = RowsExpected()
    with record.reading() as connection:
        named = {sha256 for sha256, _ in photos_named(connection)}
        chain_problems(connection, heard.hear)
    if heard.odd:
        yield "Nothing was moved out of the photo folder: first the history must be readable."
        return
    for path, to in set_aside(record.photos, named | heard.photos, record.clock()):
        at, now = (one.relative_to(record.folder).as_posix() for one in (path, to))
        yield f"Moved {at} to {now}."

"""Photos that are gone or were changed, put back as they came where a whole one lies somewhere.

A photo is known by its hash, so one that has it is the one that was taken, wherever it lay.
"""

from __future__ import annotations

from collections.abc import Generator, Sequence
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backups_found import backup_folders
from desktop_app.shop_record.checks.leftovers import into_trash
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.step import Step

_WORDS = tr("Looking for photos in the backups")


def bring_back(record: ShopRecord, photos: Sequence[str]) -> Generator[Step, None, list[str]]:
    """Put back what can be found whole of some photos, said by SHA-256; say what was done.

    Looked through are this computer's copies of a server's photos, then the backups, the shop's
    own first. Raises ShopTrouble where the disk or the server refuses.
    """
    folders = _places(record)
    said, nowhere = [], 0
    for number, sha256 in enumerate(photos):
        yield Step(number, len(photos), _WORDS)
        whole = (place for place in folders if PhotoFiles(place).is_whole(sha256))
        place = next(whole, None)
        if place is None:
            nowhere += 1
            continue
        content = PhotoFiles(place).read(sha256)
        changed = record.photos.folder / sha256[:2] / sha256
        if changed.is_file() and changed.parent.parent not in folders:  # what it was stays to see
            into_trash(record.photos.home, [changed], record.clock())
        record.photos.keep(content)
        said.append(_what_came_of_it(record, sha256, place))
    if nowhere:
        said.append(
            tr("1 photo was found whole nowhere.")
            if nowhere == 1
            else tr("{photos:,} photos were found whole nowhere.", photos=nowhere)
        )
    return said


def _what_came_of_it(record: ShopRecord, sha256: str, place: Path) -> str:
    """Say whether a photo is whole now: who works on a server may add to the photos there only."""
    called = record.photos.called(sha256)
    if record.photos.is_whole(sha256):
        return tr("{photo} was brought back from {place}.", photo=called, place=place)
    return tr(
        "{photo} is still damaged; it lies whole in {place}. First the server's owner must take "
        "its row out: DELETE FROM photo_content WHERE sha256 = '{sha256}'; then mend once more.",
        photo=called,
        place=place,
        sha256=sha256,
    )


def _places(record: ShopRecord) -> list[Path]:
    copies = [record.folder / "photos"] if record.on_server else []
    return copies + [folder / "photos" for folder in backup_folders(record)]

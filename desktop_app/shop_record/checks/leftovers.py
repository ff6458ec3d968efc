"""Files that nothing names, among the photos and beside the record: told by the check.

They are moved aside only when somebody asks for it.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Set
from datetime import datetime, timedelta
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.backups.backup_pieces import told_of_disk
from desktop_app.shop_record.checks.problem import Problem
from desktop_app.shop_record.photos.photo_files import MARK, PhotoFiles, sync_folder

TRASH = "trash"
OLD = timedelta(days=1)  # a younger one may be just being written
COPIES = "shop-before-*.sqlite"  # of the record, as they were made before backups had a reason
THE_COPIES = tr("copies beside the record")
_NAMED = re.compile(r"[0-9a-f]{64}")


def leftovers(photos: PhotoFiles, named: Set[str], now: datetime) -> Iterator[tuple[Path, str]]:
    """Give each file among the photos that is none of the shop's, and what it is.

    `named` are the photos, by SHA-256, that a row or any entry of the history names: an undo may
    bring the latter back. Files younger than a day are left out, and all of them where the shop's
    photos are away: what lies there then is somebody else's.
    """
    if photos.away() is not None:
        return
    before, aside = (now - OLD).timestamp(), photos.home / TRASH
    for path in sorted(photos.folder.rglob("*")) if photos.folder.is_dir() else ():
        try:
            young = path.is_dir() or path.lstat().st_mtime > before
        except OSError:
            continue  # it went meanwhile
        if young or path == photos.folder / MARK or aside in path.parents:
            continue
        if path.suffix == ".tmp":
            yield path, tr("was left half written when the program or the computer stopped")
        elif not _NAMED.fullmatch(path.name) or path != photos.path(path.name):
            yield path, tr("is no photo that this program has put there")
        elif path.name not in named:
            yield path, tr("belongs to no job, and the history has never named it")


def leftover_problems(photos: PhotoFiles, named: Set[str], now: datetime) -> Iterator[Problem]:
    """Tell of each leftover; nothing is lost by them but room."""
    do = _into_trash_of_shop()
    if photos.home != photos.folder.parent:
        do = tr(
            "“benchwitness check --mend” moves it into the folder {trash} among the photos.",
            trash=TRASH,
        )
    for path, what in leftovers(photos, named, now):
        said = tr(
            "The file {file} {what}.",
            file=path.relative_to(photos.folder.parent).as_posix(),
            what=what,
        )
        yield Problem(tr("the photo folder"), said, False, do)


def _into_trash_of_shop() -> str:
    return tr(
        "“benchwitness check --mend” moves it into the folder {trash} of the shop.", trash=TRASH
    )


def copies_beside(shop: Path) -> list[Path]:
    """Return the copies of the record that lie beside it from former imports and updates."""
    return sorted(shop.glob(COPIES))


def copy_problems(shop: Path) -> Iterator[Problem]:
    """Tell of each of those copies; today a backup is made in their place."""
    for path in copies_beside(shop):
        size = path.stat().st_size / 1e6
        said = tr(
            "{name} was set aside before an import or an update ({size:,.1f} MB).",
            name=path.name,
            size=size,
        )
        do = tr("If nobody needs it any more: {what_to_do}", what_to_do=_into_trash_of_shop())
        yield Problem(THE_COPIES, said, False, do)


def set_aside(photos: PhotoFiles, named: Set[str], now: datetime) -> list[tuple[Path, Path]]:
    """Move the leftovers among the photos into their trash; say from where to where.

    It is the shop's, or for a shared folder one in that folder. Nothing is deleted. Raises
    ShopTrouble where the disk refuses; what was moved by then stays.
    """
    return into_trash(photos.home, (path for path, _ in leftovers(photos, named, now)), now)


def set_copies_aside(shop: Path, now: datetime) -> list[tuple[Path, Path]]:
    """Move the copies beside the record into the shop's trash, as `set_aside` does."""
    return into_trash(shop, copies_beside(shop), now)


def into_trash(home: Path, paths: Iterable[Path], now: datetime) -> list[tuple[Path, Path]]:
    """Move files below a folder into its trash, as `set_aside` does."""
    trash = home / TRASH / now.strftime("%Y-%m-%d-%H%M%S")
    moved = []
    with told_of_disk(tr("The folder {folder}", folder=trash)):
        for path in paths:
            to = trash / path.relative_to(home)
            to.parent.mkdir(parents=True, exist_ok=True)
            path.rename(to)
            moved.append((path, to))
        for folder in sorted({to.parent for _, to in moved}):
            sync_folder(folder)
    return moved

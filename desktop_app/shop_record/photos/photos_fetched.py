"""The copies of a server's photos on this computer: brought for a backup, and mended where damaged.

A copy is believed by its size here; the backup itself holds each to its hash, and asks for those
that differ once more.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.record_name import is_server_folder
from desktop_app.shop_record.server.server_folder import read_place
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.step import Step
from desktop_app.shop_record.trouble import ShopTrouble

_WORDS = tr("Fetching the photos from the server")


def fetch_photos(photos: PhotoFiles, names: list[str], folder: Path) -> Iterator[Step]:
    """Bring each photo into a shop's folder on this computer that is not there yet.

    What is missing on the server too is left out: the backup and the check say so. Raises
    ServerLost where the server goes away meanwhile.
    """
    here = PhotoFiles(folder / "photos")
    for number, sha256 in enumerate(names):
        if not here.path(sha256).is_file():
            yield Step(number, len(names), _WORDS)
            _fetch(photos, sha256, here)


def fetched_again(shop: Path, sha256: str) -> bool:
    """Fetch a photo anew whose copy on this computer is damaged; True where it is whole then.

    Of a shop in a folder there is nothing to fetch: False.
    """
    from desktop_app.shop_record.server.server_shop import connected, photos_of

    here = PhotoFiles(shop / "photos")
    if not is_server_folder(shop) or here.is_whole(sha256):
        return False
    place = read_place(shop)
    engine = connected(place.address, None)
    try:
        return _fetch(photos_of(engine, shop, place), sha256, here)
    finally:
        engine.dispose()


def _fetch(photos: PhotoFiles, sha256: str, here: PhotoFiles) -> bool:
    try:
        return here.keep(photos.read(sha256)) == sha256
    except ServerLost:
        raise
    except ShopTrouble:
        return False

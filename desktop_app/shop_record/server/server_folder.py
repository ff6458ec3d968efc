"""The folder of a shop on a server: what stays on this computer, and where the record is.

Drafts, thumbnails, the search's arrays, the log and copies of photos lie in it as in any shop's
folder; in place of the record there is a small file with the server's address.
"""

from __future__ import annotations

import hashlib
import tomllib
from pathlib import Path
from typing import NamedTuple

import tomli_w

from desktop_app.language import tr
from desktop_app.shop_record.record_name import SERVER_NAME
from desktop_app.shop_record.server.server_address import ServerAddress, read_address
from desktop_app.shop_record.trouble import ShopTrouble


class ServerPlace(NamedTuple):
    """What the file says: the address, and the shared folder of photos where they lie in one."""

    address: ServerAddress
    photos: Path | None = None


def folder_name(address: ServerAddress) -> str:
    """Return the name of the folder for an address, always the same one."""
    digest = hashlib.sha256(address.text().encode()).hexdigest()[:12]
    return f"{address.database}-{digest}"


def write_place(folder: Path, place: ServerPlace) -> None:
    """Write the file; it never holds a password."""
    folder.mkdir(parents=True, exist_ok=True)
    said = {"address": place.address.text()}
    if place.photos is not None:
        said["photos"] = str(place.photos)
    part = folder / f"{SERVER_NAME}.part"
    part.write_text(tomli_w.dumps(said), "utf-8")
    part.replace(folder / SERVER_NAME)


def read_place(folder: Path) -> ServerPlace:
    """Read the file; ShopTrouble where it is not one."""
    path = folder / SERVER_NAME
    try:
        said = tomllib.loads(path.read_text("utf-8"))
        address, _ = read_address(str(said["address"]))
        photos = said.get("photos")
    except (OSError, ValueError, KeyError) as error:
        raise ShopTrouble(
            tr("{path} can't be read, or names no server.", path=path),
            kept=tr("The shop on the server is not touched by this."),
            do=tr("Open the shop by its address once more."),
        ) from error
    return ServerPlace(address, Path(photos) if isinstance(photos, str) else None)

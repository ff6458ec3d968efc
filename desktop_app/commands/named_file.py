"""Reading the files that a command line names, each refused in words that fit what lies there."""

from __future__ import annotations

import os
import re
from pathlib import Path

from desktop_app.shop_record.trouble import ShopTrouble

_ADDRESS = re.compile(r"[A-Za-z][A-Za-z0-9+]{2,}:/")


def at_home(text: str) -> Path:
    """Return the path that is named, with ~ as the folder of whoever works here.

    Raises ShopTrouble for an address, and for one with a slash missing.
    """
    if _ADDRESS.match(text):
        raise ShopTrouble(
            f"{text.partition(':')[0][:40]}:… is an address, or meant as one, and no folder.",
            do="Name a file or a folder here; a shop's address is written with two slashes.",
        )
    try:
        return Path(text).expanduser()
    except RuntimeError as error:
        raise ShopTrouble(
            f"Nobody here has the home folder {Path(text).parts[0]}.",
            do="Name the whole path, from / on.",
        ) from error


PHOTO = "Accepted: a photo as JPEG, PNG, HEIC or WebP."


def read_named(path: Path, accepted: str) -> bytes:
    """Return the bytes of a file of at most 40 MB; `accepted` is what should lie there.

    A pipe or a device is refused without waiting for it. Raises ShopTrouble.
    """
    from desktop_app.part_photos.actions import read_photo_file
    from desktop_app.part_photos.photo_trouble import PhotoTrouble

    shown = str(path)[:200]
    if os.path.isdir(path):
        raise ShopTrouble(f"{shown} is a folder.", do=accepted)
    if not os.path.exists(path):
        raise ShopTrouble(f"There is no file {shown}.", do=accepted)
    if not os.path.isfile(path):
        raise ShopTrouble(f"{shown} is a device or a pipe.", do=accepted)
    if not os.access(path, os.R_OK):
        raise ShopTrouble(
            f"{shown} may not be read: permission denied.", do="Let it be read, or name another."
        )
    try:
        return read_photo_file(path)
    except PhotoTrouble as trouble:
        raise ShopTrouble(trouble.what, do=trouble.do or accepted) from trouble


def read_named_text(path: Path, accepted: str) -> str:
    """Return the text of a file in UTF-8; `accepted` is what should lie there."""
    from desktop_app.part_photos.picture_kind import picture_kind

    content = read_named(path, accepted)
    if picture_kind(content) is not None:
        raise ShopTrouble(f"{path.name} is a photo, no text file.", do=accepted)
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ShopTrouble(f"{path.name} is not a UTF-8 text file.", do=accepted) from error

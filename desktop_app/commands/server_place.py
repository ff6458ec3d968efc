"""Which folder belongs to a server's address, and how a wanted password is asked for."""

from __future__ import annotations

import getpass
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from desktop_app.commands.shop_place import own_folder
from desktop_app.shop_record.server_address import ServerAddress, read_address
from desktop_app.shop_record.server_folder import (
    ServerPlace,
    folder_name,
    is_server_folder,
    write_place,
)
from desktop_app.shop_record.server_password import keep_password
from desktop_app.shop_record.server_trouble import PasswordWanted

T = TypeVar("T")


def folder_for(address: ServerAddress) -> Path:
    """Return the folder on this computer of a shop on a server."""
    return own_folder() / "servers" / folder_name(address)


def folder_of(said: str, photos: Path | None = None) -> Path:
    """Return the folder of an address, made where there is none; a password in it is kept apart."""
    address, password = read_address(said)
    folder = folder_for(address)
    if photos is not None or not is_server_folder(folder):
        write_place(folder, ServerPlace(address, photos))
    if password:
        keep_or_remember(address, password)
    return folder


def keep_or_remember(address: ServerAddress, password: str) -> bool:
    """Put a password into the keyring; False where it is known only till the program ends."""
    from desktop_app.shop_record.server_password import remember_password

    remember_password(address, password)
    return keep_password(address, password)


def with_password(
    address: ServerAddress, password: str | None, work: Callable[[str | None], T]
) -> T:
    """Do something with a server; where it wants a password, ask for it at the terminal once."""
    try:
        found = work(password)
    except PasswordWanted:
        if password or not sys.stdin.isatty():
            raise
        password = getpass.getpass(f"Password of {address.user} on {address.host}: ")
        found = work(password)
    if password:
        keep_or_remember(address, password)
    return found

"""Which folder belongs to a server's address, and how a wanted password is asked for."""

from __future__ import annotations

import getpass
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, TypeVar

from desktop_app.commands.shop_place import follow, own_folder
from desktop_app.shop_record.record_name import is_server_folder
from desktop_app.shop_record.server.server_address import ServerAddress, read_address
from desktop_app.shop_record.server.server_folder import ServerPlace, folder_name, write_place
from desktop_app.shop_record.server.server_password import keep_password, remember_password
from desktop_app.shop_record.server.server_trouble import PasswordWanted

if TYPE_CHECKING:
    from desktop_app.shop_record.record import Clock, ShopRecord

T = TypeVar("T")


def folder_for(address: ServerAddress) -> Path:
    """Return the folder on this computer of a shop on a server."""
    return own_folder() / "servers" / folder_name(address)


def folder_of(said: str) -> Path:
    """Return the folder of an address, made where there is none; a password in it is kept apart."""
    address, password = read_address(said)
    folder = folder_for(address)
    if not is_server_folder(folder):
        write_place(folder, ServerPlace(address))
    if password:  # kept in the keyring once the server has taken it
        remember_password(address, password, to_keep=True)
    return folder


def keep_or_remember(address: ServerAddress, password: str) -> bool:
    """Put a password into the keyring; False where it is known only till the program ends."""
    remember_password(address, password)
    return keep_password(address, password)


def open_wanted(
    address: ServerAddress, password: str | None, photos: Path | None, clock: Clock, *, new: bool
) -> tuple[ShopRecord, bool | None]:
    """Open the shop at an address, or make one there, with its search index kept in step.

    A password that the server took is put into the keyring; with the record comes whether that
    went well, None where no password was said. Raises ShopTrouble where the server refuses.
    """
    from desktop_app.shop_record.server.server_opened import opened_there

    place = ServerPlace(address, photos)
    record = opened_there(folder_for(address), place, password, clock, new=new)
    follow(record)
    return record, keep_or_remember(address, password) if password else None


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

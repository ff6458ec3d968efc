"""The password of a server: in the system's keyring, never in a file of the shop or in a log."""

from __future__ import annotations

from contextlib import suppress

from desktop_app.shop_record.server.server_address import ServerAddress

SERVICE = "benchwitness"
_said: dict[str, str] = {}  # for as long as the program runs, where there is no keyring


_to_keep: set[str] = set()  # addresses whose password goes into the keyring once it was taken


def remember_password(address: ServerAddress, password: str, *, to_keep: bool = False) -> None:
    """Remember a password till the program ends; longer `to_keep`, once the server has taken it."""
    _said[address.text()] = password
    if to_keep:
        _to_keep.add(address.text())


def keep_what_was_said(address: ServerAddress) -> None:
    """Put a password that was said to be kept into the keyring: the server has just taken it."""
    if address.text() in _to_keep:
        _to_keep.discard(address.text())
        keep_password(address, _said[address.text()])


def newest_password(address: ServerAddress, before: str | None) -> str | None:
    """Return the password that was said last; the one from before where none was said since."""
    return _said.get(address.text(), before)


def password_for(address: ServerAddress) -> str | None:
    """Return the password that is known for an address; None where there is none.

    Without one the driver looks where it always looks (PGPASSWORD, the user's password file).
    """
    if address.text() in _said:
        return _said[address.text()]
    with suppress(Exception):  # a keyring that is locked, or none at all: the server will ask
        import keyring

        return keyring.get_password(SERVICE, address.text())
    return None


def keep_password(address: ServerAddress, password: str) -> bool:
    """Put a password into the keyring; False where this system has none that can be used."""
    with suppress(Exception):
        import keyring

        keyring.set_password(SERVICE, address.text(), password)
        return bool(keyring.get_password(SERVICE, address.text()) == password)
    return False


def forget_password(address: ServerAddress) -> None:
    """Take a password out of the keyring."""
    with suppress(Exception):
        import keyring

        keyring.delete_password(SERVICE, address.text())

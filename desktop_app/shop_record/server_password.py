"""The password of a server: in the system's keyring, never in a file of the shop or in a log."""

from __future__ import annotations

from contextlib import suppress

from desktop_app.shop_record.server_address import ServerAddress

SERVICE = "benchwitness"
_said: dict[str, str] = {}  # for as long as the program runs, where there is no keyring


def remember_password(address: ServerAddress, password: str) -> None:
    """Remember a password that a server took, till the program ends."""
    _said[address.text()] = password


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

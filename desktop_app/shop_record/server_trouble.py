"""Trouble with a shop's server: gone for now, or a password that is wanted."""

from __future__ import annotations

from desktop_app.shop_record.trouble import ShopTrouble


class ServerLost(ShopTrouble):
    """The server can't be reached now; what is typed stays in its fields and can be sent later."""


class PasswordWanted(ShopTrouble):
    """The server wants a password that the keyring has not, or another one than it has."""


def not_known_whether_kept() -> ServerLost:
    """Return what to say where the server went away after everything was sent."""
    return ServerLost(
        "The shop's server went away before it answered: it is not known whether it was saved.",
        "What you typed is still in its field.",
        "Look at the page when the server is back; what stands there by then is what was saved.",
    )

"""Why a server would not be connected to, in words: what the driver says comes as plain text.

English is read at once. A server that speaks another language is asked for its reason.
"""

from __future__ import annotations

import re

from desktop_app.language import tr
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_asked_why import Why, login, speaks_of, why_refused
from desktop_app.shop_record.server.server_password import password_for
from desktop_app.shop_record.server.server_trouble import PasswordWanted, ServerLost
from desktop_app.shop_record.trouble import ShopTrouble

_IN_ENGLISH = (
    ("password", Why.NO_PASSWORD),
    ("authentication", Why.NO_PASSWORD),
    ("permission denied", Why.NO_RIGHT),
    ("database does not exist", Why.NO_DATABASE),
    ("role does not exist", Why.NO_LOGIN),
    ("not currently accepting", Why.UNKNOWN),
)


def names_no_database(error: Exception, address: ServerAddress, password: str | None) -> bool:
    """Tell whether a server refused because it has no database of that name."""
    return _why(error, address, password) is Why.NO_DATABASE


def as_refusal(
    error: Exception, address: ServerAddress, password: str | None = None
) -> ShopTrouble:
    """Return what to say of a connection that did not come about, tried with a password."""
    said = " ".join(str(getattr(error, "orig", error)).split())
    if "pg_hba" in _without_names(said):  # the name of a file, in any language
        return ShopTrouble(
            tr(
                "The server does not let {user} in from this computer.",
                user=address.user or tr("this user"),
            ),
            do=tr("Whoever looks after the server must allow it (pg_hba.conf)."),
        )
    why = _why(error, address, password)
    if why is Why.UNKNOWN:
        return _not_reached(said, address)
    tried = _at(error, "used_password") and not _at(error, "needs_password")
    return _in_words(why, address, tried=tried)


def _why(error: Exception, address: ServerAddress, password: str | None) -> Why:
    if _at(error, "needs_password"):
        return Why.NO_PASSWORD
    low = " ".join(_without_names(str(getattr(error, "orig", error))).split())
    for words, why in _IN_ENGLISH:
        if words in low:
            return why
    if any(speaks_of(name, error) for name in (login(error, address), address.database)):
        return why_refused(address, password or password_for(address))
    return Why.UNKNOWN


def _at(error: Exception, what: str) -> bool:
    """Ask the connection that did not come about; it knows it in any language."""
    return bool(getattr(getattr(getattr(error, "orig", error), "pgconn", None), what, False))


def _in_words(why: Why, address: ServerAddress, *, tried: bool) -> ShopTrouble:
    where = tr(
        "{database} on {host}", database=address.database, host=address.host or tr("this computer")
    )
    if why is Why.NO_PASSWORD:
        wanted = tr(
            "The server wants the password of {user} for {where}.",
            user=address.user or tr("this user"),
            where=where,
        )
        wrong = tr("What was tried is not the one.")
        return PasswordWanted(
            f"{wanted} {wrong}" if tried else wanted,
            do=tr("Enter it; it is kept in this system's keyring, in no file."),
        )
    if why is Why.NO_RIGHT:
        return ShopTrouble(
            tr(
                "{user} has no right to the shop in {where}.",
                user=address.user or tr("This user"),
                where=where,
            ),
            do=tr(
                "Who made the shop can give it: IN ROLE with the name of the database and "
                "_workers, or _readers to look."
            ),
        )
    if why is Why.NO_DATABASE:
        return ShopTrouble(
            tr("There is no database {where}.", where=where),
            do=tr(
                "Make a shop there with “benchwitness new-shop {address}”.", address=address.text()
            ),
        )
    return ShopTrouble(
        tr("The server knows no {user} who may log in.", user=address.user),
        do=tr("Look at the name in the address."),
    )


def _not_reached(said: str, address: ServerAddress) -> ShopTrouble:
    low = _without_names(said)
    if "ssl" in low or "certificate" in low:
        return ShopTrouble(
            tr(
                "The connection to {host} could not be protected: {said}.",
                host=address.host,
                said=said[:300],
            ),
            kept=tr("Nothing was sent."),
            do=tr(
                "Name the certificate that signs the server's own (?sslrootcert=FILE in "
                "the address), or ask whoever looks after the server."
            ),
        )
    return ServerLost(
        tr(
            "The shop's server {host} can't be reached.",
            host=address.host or tr("on this computer"),
        ),
        do=tr("Is it on, and this computer in the network? ({said})", said=said[:200].rstrip(".")),
    )


def _without_names(said: str) -> str:
    """Return what was said without what stands in quotes: a host may be called "grossladen"."""
    return re.sub(r"""(["']).*?\1""", "", said.lower(), flags=re.DOTALL)

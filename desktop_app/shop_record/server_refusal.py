"""Why a server would not be connected to, in words: what the driver says comes as plain text."""

from __future__ import annotations

import re

from desktop_app.shop_record.server_address import ServerAddress
from desktop_app.shop_record.server_trouble import PasswordWanted, ServerLost
from desktop_app.shop_record.trouble import ShopTrouble


def names_no_database(error: Exception) -> bool:
    """Tell whether a server refused because it has no database of that name."""
    low = _without_names(str(getattr(error, "orig", error)))
    return "database" in low and "does not exist" in low


def as_refusal(error: Exception, address: ServerAddress) -> ShopTrouble:
    """Return what to say of a connection that did not come about."""
    said = " ".join(str(getattr(error, "orig", error)).split())
    where = f"{address.database} on {address.host or 'this computer'}"
    low = _without_names(said)
    at = getattr(getattr(error, "orig", error), "pgconn", None)
    wanted = bool(getattr(at, "needs_password", False))  # told in any language
    if wanted or "password" in low or "pg_hba" in low or "authentication" in low:
        if "pg_hba" in low:
            return ShopTrouble(
                f"The server does not let {address.user or 'this user'} in from this computer.",
                do="Whoever looks after the server must allow it (pg_hba.conf).",
            )
        tried = " What was tried is not the one." if getattr(at, "used_password", False) else ""
        return PasswordWanted(
            f"The server wants the password of {address.user or 'this user'} for {where}.{tried}",
            do="Enter it; it is kept in this system's keyring, in no file.",
        )
    if "permission denied" in low:
        return ShopTrouble(
            f"{address.user or 'This user'} has no right to the shop in {where}.",
            do="Who made the shop can give it: IN ROLE with the name of the database and _workers, "
            "or _readers to look.",
        )
    if names_no_database(error):
        return ShopTrouble(
            f"There is no database {address.database} on {address.host or 'this computer'}.",
            do=f"Make a shop there with “benchwitness new-shop {address.text()}”.",
        )
    if "does not exist" in low and "role" in low:
        return ShopTrouble(
            f"The server knows no {address.user}.", do="Look at the name in the address."
        )
    if "ssl" in low or "certificate" in low:
        return ShopTrouble(
            f"The connection to {address.host} could not be protected: {said[:300]}.",
            kept="Nothing was sent.",
            do="Name the certificate that signs the server's own (?sslrootcert=FILE in the "
            "address), or ask whoever looks after the server.",
        )
    return ServerLost(
        f"The shop's server {address.host or 'on this computer'} can't be reached.",
        do=f"Is it on, and this computer in the network? ({said[:200].rstrip('.')})",
    )


def _without_names(said: str) -> str:
    """Return what was said without what stands in quotes: a host may be called "grossladen"."""
    return re.sub(r"""(["']).*?\1""", "", said.lower(), flags=re.DOTALL)

"""The address of a shop on a server: read from one line, shown and kept without its password."""

from __future__ import annotations

import re
from typing import NamedTuple
from urllib.parse import parse_qsl, quote, unquote, urlencode, urlsplit

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble

SCHEMES = ("postgresql+psycopg", "postgresql")
PORT = 5432
_HERE = ("", "localhost", "127.0.0.1", "::1")
# Ways of TLS that let nobody read along; the first two also prove who the server is.
_PROTECTED = ("verify-full", "verify-ca", "require")
_OPTIONS = ("sslmode", "sslrootcert", "sslcert", "sslkey", "host")
_NAME = re.compile(r"[A-Za-z_][A-Za-z0-9_-]{0,54}")  # the roles are named after it, in 63 letters
_EXAMPLE = "postgresql+psycopg://tuuli@counter-server/benchwitness"


class ServerAddress(NamedTuple):
    """Where a shop's database is and as whom it is opened; it never holds a password."""

    host: str
    port: int
    database: str
    user: str
    options: tuple[tuple[str, str], ...] = ()

    def text(self) -> str:
        """Return the address as one line that can be read again."""
        host = quote(self.host, safe=":")
        host = f"[{host}]" if ":" in host else host
        port = "" if self.port == PORT else f":{self.port}"
        asked = f"?{urlencode(self.options)}" if self.options else ""
        user = f"{quote(self.user, safe='')}@" if self.user else ""
        return f"{SCHEMES[0]}://{user}{host}{port}/{quote(self.database, safe='')}{asked}"

    def is_here(self) -> bool:
        """Tell whether the server is this computer: then nobody is between."""
        folder = dict(self.options).get("host", "")
        return (self.host in _HERE or self.host.startswith("/")) and folder[:1] in ("", "/")

    def parameters(self) -> dict[str, str | int]:
        """Return what the driver is told, the password aside.

        To another computer TLS that proves who the server is, unless the address says “require”.
        """
        said: dict[str, str | int] = {"port": self.port, "dbname": self.database}
        if self.host:
            said["host"] = self.host
        if self.user:
            said["user"] = self.user
        said |= dict(self.options)
        if not self.is_here() and "sslmode" not in said:
            said["sslmode"] = "verify-full"
            said.setdefault("sslrootcert", "system")
        return said


def is_address(place: str) -> bool:
    """Tell whether a place is meant as an address and not as a folder."""
    return "://" in place


def read_address(said: str) -> tuple[ServerAddress, str | None]:
    """Return the address and the password that stood in it, if any.

    Raises ShopTrouble where it is no address of a database, and where it asks for a connection to
    another computer that others can read.
    """
    scheme = said.partition("://")[0]
    if scheme not in SCHEMES:
        raise ShopTrouble(
            tr("{scheme}:// addresses are not understood.", scheme=scheme[:40]),
            do=tr("Accepted: the folder of a shop, or an address as {example}.", example=_EXAMPLE),
        )
    try:
        parts = urlsplit(said)
        port = parts.port or PORT
        asked = parse_qsl(parts.query, keep_blank_values=True, strict_parsing=bool(parts.query))
    except ValueError as error:
        raise _odd(
            tr(
                "it can't be read; in a password, %2F stands for /, %3F for ?, %23 for # "
                "and %40 for @"
            )
        ) from error
    options = tuple(sorted(asked))
    address = ServerAddress(
        _host_of(parts.netloc),
        port,
        unquote(parts.path.removeprefix("/")),
        unquote(parts.username or ""),
        options,
    )
    password = unquote(parts.password) if parts.password else None
    _refuse_odd(address, password)
    mode = dict(options).get("sslmode")
    if not address.is_here() and mode is not None and mode not in _PROTECTED:
        raise ShopTrouble(
            tr(
                "sslmode={mode} would let others read along on the way to the server.",
                mode=mode[:20],
            ),
            do=tr("Say one of {modes}, or leave it out.", modes=", ".join(_PROTECTED)),
        )
    return address, password


def _host_of(netloc: str) -> str:
    """Return the host; the folder of a socket keeps its capitals."""
    said = netloc.rpartition("@")[2]
    host = said[1:].partition("]")[0] if said.startswith("[") else said.partition(":")[0]
    host = unquote(host)
    return host if host.startswith("/") else host.lower()


def _refuse_odd(address: ServerAddress, password: str | None) -> None:
    if not _NAME.fullmatch(address.database):
        raise _odd(
            tr("the name of the database is missing, longer than 55, or not of a-z, 0-9, _, -")
        )
    names = [name for name, _ in address.options]
    for name, value in address.options:
        if name not in _OPTIONS:
            raise _odd(
                tr(
                    "“{name}” can't be asked for; accepted: {options}",
                    name=name[:40],
                    options=", ".join(_OPTIONS),
                )
            )
        if not value or names.count(name) > 1:
            raise _odd(tr("{name} has to be said once, with a value", name=name))
    hosts = (address.host, dict(address.options).get("host", ""))
    if any("," in host for host in hosts):  # one of them may be afar where another is not
        raise _odd(tr("it names more than one server"))
    words = "".join((address.user, *hosts, *(value for _, value in address.options)))
    if not words.isprintable() or "\x00" in (password or ""):
        raise _odd(tr("it has signs that nobody can see"))


def _odd(why: str) -> ShopTrouble:
    """Say what is wrong without repeating the line: a password may stand in it."""
    return ShopTrouble(
        tr("The address of the server is not understood: {why}.", why=why),
        do=tr("As {example}.", example=_EXAMPLE),
    )

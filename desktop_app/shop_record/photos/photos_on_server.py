"""Photos kept in the server's database, each by its SHA-256, with copies on this computer."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

from sqlalchemy import Engine
from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.photos.photo_files import PhotoFiles
from desktop_app.shop_record.trouble import ShopTrouble


class PhotosOnServer(PhotoFiles):
    """Originals in the database; `folder` holds copies of those that were looked at here.

    The server itself holds each to its hash, so a copy that differs is fetched anew.
    """

    def __init__(self, folder: Path, engine: Engine) -> None:
        super().__init__(folder)
        self._copies = PhotoFiles(folder)
        self._engine = engine

    def path(self, sha256: str) -> Path:
        """Return where a whole copy of the original lies, fetched where there is none.

        Where the server has none either, nothing lies there or what was there before.
        """
        if self._copies.is_whole(sha256) is not True:
            content = self._fetch(sha256)
            if content is not None:
                self._copies.keep(content)
        return self._copies.path(sha256)

    def called(self, sha256: str) -> str:
        """Return what an original is called where something is wrong with it."""
        return tr("The photo {sha256} in the server's database", sha256=sha256)

    def keep(self, content: bytes) -> str:
        """Put the bytes on the server, committed when this returns, and return their SHA-256."""
        name = hashlib.sha256(content).hexdigest()
        said = "INSERT INTO photo_content VALUES (%s, %s) ON CONFLICT DO NOTHING"
        self._asked(said, name, content, adding=True)
        self._copy(content)
        return name

    def read(self, sha256: str) -> bytes:
        """Return the original bytes; a ShopTrouble where the server has them no more."""
        with suppress(ShopTrouble):
            content = self._copies.read(sha256)
            if hashlib.sha256(content).hexdigest() == sha256:
                return content
        fetched = self._fetch(sha256)
        if fetched is None:
            raise ShopTrouble(
                tr("The photo {sha256} is not on the shop's server any more.", sha256=sha256[:12]),
                do=tr("Bring it back from a backup."),
            )
        self._copy(fetched)
        return fetched

    def is_whole(self, sha256: str) -> bool | None:
        """Tell whether the server's original still has its hash: None where it is missing."""
        said = "SELECT encode(sha256(content), 'hex') FROM photo_content WHERE sha256 = %s"
        found = self._asked(said, sha256)
        return bool(found[0][0] == sha256) if found else None

    def all_names(self) -> Iterator[str]:
        """Yield the names of all originals."""
        for row in self._asked("SELECT sha256 FROM photo_content ORDER BY sha256"):
            yield str(row[0])

    def _fetch(self, sha256: str) -> bytes | None:
        found = self._asked("SELECT content FROM photo_content WHERE sha256 = %s", sha256)
        return bytes(found[0][0]) if found else None

    def _asked(self, said: str, *values: str | bytes, adding: bool = False) -> list[Any]:
        """Say something to the server; on a new connection where one was lost while it lay idle.

        Saying it twice does what saying it once does.
        """
        for again in (True, False):
            try:
                with self._engine.connect() as plain:
                    connection = plain.execution_options(adding=adding)
                    with connection.begin():
                        found = connection.exec_driver_sql(said, values or None)
                        return list(found) if found.returns_rows else []
            except DBAPIError as error:
                gave_up = getattr(error.orig, "gave_up", False)  # who asks again waits once more
                if gave_up or not (again and error.connection_invalidated):
                    raise dialect_postgres.as_trouble(error) or _refused(error) from error
        return []

    def _copy(self, content: bytes) -> None:
        """Keep a copy here; one that this computer has no room for is fetched when it is wanted."""
        with suppress(ShopTrouble):
            self._copies.keep(content)


def _refused(error: DBAPIError) -> ShopTrouble:
    return ShopTrouble(
        tr("The server did not take or give the photo: {error}.", error=error.orig),
        do=tr("Try again."),
    )

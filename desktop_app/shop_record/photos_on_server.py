"""Photos kept in the server's database, each by its SHA-256, with copies on this computer."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator
from pathlib import Path

from sqlalchemy import Engine
from sqlalchemy.exc import DBAPIError

from desktop_app.shop_record import dialect_postgres
from desktop_app.shop_record.photo_files import PhotoFiles
from desktop_app.shop_record.trouble import ShopTrouble


class PhotosOnServer(PhotoFiles):
    """Originals in the database; `folder` holds copies of those that were looked at here.

    The server itself holds each to its hash, so a copy that differs is fetched anew.
    """

    def __init__(self, folder: Path, engine: Engine) -> None:
        super().__init__(folder)
        self._engine = engine

    def path(self, sha256: str) -> Path:
        """Return where a copy of the original lies, fetched where there is none yet."""
        path = super().path(sha256)
        if not path.is_file():
            content = self._fetch(sha256)
            if content is not None:
                super().keep(content)
        return path

    def keep(self, content: bytes) -> str:
        """Put the bytes on the server, committed when this returns, and return their SHA-256."""
        name = hashlib.sha256(content).hexdigest()
        said = "INSERT INTO photo_content VALUES (%s, %s) ON CONFLICT DO NOTHING"
        try:
            with self._engine.connect() as plain:
                connection = plain.execution_options(adding=True)
                with connection.begin():
                    connection.exec_driver_sql(said, (name, content))
        except DBAPIError as error:
            raise dialect_postgres.as_trouble(error) or _refused(error) from error
        return super().keep(content)

    def read(self, sha256: str) -> bytes:
        """Return the original bytes; a ShopTrouble where the server has them no more."""
        path = super().path(sha256)
        content = path.read_bytes() if path.is_file() else None
        if content is None or hashlib.sha256(content).hexdigest() != sha256:
            content = self._fetch(sha256)
        if content is None:
            raise ShopTrouble(
                f"The photo {sha256[:12]} is not on the shop's server any more.",
                do="Bring it back from a backup.",
            )
        return content

    def is_whole(self, sha256: str) -> bool | None:
        """Tell whether the server's original still has its hash: None where it is missing."""
        said = "SELECT encode(sha256(content), 'hex') FROM photo_content WHERE sha256 = %s"
        with self._engine.connect() as connection, connection.begin():
            found = connection.exec_driver_sql(said, (sha256,)).scalar()
        return None if found is None else found == sha256

    def all_names(self) -> Iterator[str]:
        """Yield the names of all originals."""
        with self._engine.connect() as connection, connection.begin():
            said = "SELECT sha256 FROM photo_content ORDER BY sha256"
            names = [str(row[0]) for row in connection.exec_driver_sql(said)]
        yield from names

    def _fetch(self, sha256: str) -> bytes | None:
        said = "SELECT content FROM photo_content WHERE sha256 = %s"
        try:
            with self._engine.connect() as connection, connection.begin():
                found = connection.exec_driver_sql(said, (sha256,)).scalar()
        except DBAPIError as error:
            raise dialect_postgres.as_trouble(error) or _refused(error) from error
        return None if found is None else bytes(found)


def _refused(error: DBAPIError) -> ShopTrouble:
    return ShopTrouble(f"The server did not take or give the photo: {error.orig}.", do="Try again.")

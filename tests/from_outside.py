"""The record and its photos in the hands of somebody who writes past every deed."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, NullPool, create_engine, text
from sqlalchemy.exc import IntegrityError

from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.record_name import FILE_NAME, is_server_folder
from desktop_app.shop_record.server.server_folder import read_place

# A server's owner can let its triggers and keys sleep; bounds of values have to be taken away.
_SLEEP = "SET session_replication_role = replica"
_BOUNDS = """
    SELECT format('ALTER TABLE %s DROP CONSTRAINT %I', conrelid::regclass, conname)
    FROM pg_constraint WHERE contype = 'c' AND conrelid <> 0
"""
# SQLite has no word for what is beyond every number, a server no number that is.
_BEYOND = ("= 9e999", "= 'Infinity'")
# What is said of a photo that was lost.
GONE = re.compile(r"is not (in the shop's folder|on the shop's server) any more")


@contextmanager
def hands_in(folder: Path) -> Iterator[Connection]:
    """The database on a connection of somebody who knows how to write into it."""
    if is_server_folder(folder):
        import psycopg

        place: dict[str, Any] = read_place(folder).address.parameters()
        engine = create_engine(
            "postgresql+psycopg://", creator=lambda: psycopg.connect(**place), poolclass=NullPool
        )
    else:
        engine = create_engine(f"sqlite:///{folder / FILE_NAME}", poolclass=NullPool)
    with engine.connect() as raw:
        here = engine.name == "sqlite"
        raw.exec_driver_sql("PRAGMA ignore_check_constraints = ON" if here else _SLEEP)
        yield raw
        raw.commit()


def damage(shop: ShopRecord | Path, *said: str, **values: Any) -> None:
    """Say SQL to the record's database; bounds of its values that stand in the way go first."""
    folder = shop if isinstance(shop, Path) else shop.folder
    if not is_server_folder(folder):
        _say(folder, said, values)
        return
    said = tuple(one.replace(*_BEYOND) for one in said)
    try:
        _say(folder, said, values)
    except IntegrityError:
        with hands_in(folder) as raw:
            bounds = raw.execute(text(_BOUNDS)).scalars().all()
        _say(folder, (*bounds, *said), values)


def _say(folder: Path, said: tuple[str, ...], values: dict[str, Any]) -> None:
    with hands_in(folder) as raw:
        for one in said:
            raw.execute(text(one), values)


def lose_photo(record: ShopRecord, sha256: str) -> None:
    """Take the original of a photo away, and a server's copy of it on this computer."""
    if is_server_folder(record.folder):
        damage(record, "DELETE FROM photo_content WHERE sha256 = :sha256", sha256=sha256)
    for file in record.photos.folder.rglob(sha256):
        file.unlink()


def spoil_photo(record: ShopRecord, sha256: str, content: bytes) -> None:
    """Put something else in the place of a photo's original."""
    path = record.photos.path(sha256)
    path.chmod(0o644)
    if is_server_folder(record.folder):
        path.unlink()
        said = "UPDATE photo_content SET content = :content WHERE sha256 = :sha256"
        damage(record, said, content=content, sha256=sha256)
    else:
        path.write_bytes(content)

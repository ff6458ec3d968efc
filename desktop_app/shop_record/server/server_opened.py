"""A shop on a server opened, or made, for somebody who waits: nothing half done stays here."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from sqlalchemy.exc import DBAPIError

from desktop_app.language import tr
from desktop_app.shop_record.databases import dialect_postgres
from desktop_app.shop_record.record import Clock, ShopRecord
from desktop_app.shop_record.record_name import SERVER_NAME, is_server_folder
from desktop_app.shop_record.server.server_address import ServerAddress
from desktop_app.shop_record.server.server_folder import ServerPlace, write_place
from desktop_app.shop_record.server.server_refusal import as_refusal
from desktop_app.shop_record.server.server_shop import create_on_server, open_on_server
from desktop_app.shop_record.trouble import ShopTrouble


def opened_there(
    folder: Path, place: ServerPlace, password: str | None, clock: Clock, *, new: bool
) -> ShopRecord:
    """Open the shop at a place, or make a new one there; `folder` is what stays on this computer.

    Raises ShopTrouble where the server is away or refuses; then the folder is as it was.
    """
    with _as_it_was(folder), _in_words(place.address):
        if not new:
            if place.photos is not None or not is_server_folder(folder):
                write_place(folder, place)
            record = open_on_server(folder, clock, password)
            if place.photos is not None:
                _refuse_named_wrongly(record)
            return record
        return create_on_server(folder, place, clock, password)


def _refuse_named_wrongly(record: ShopRecord) -> None:
    """Raise PhotosUnknown where the folder that was just named does not hold the shop's photos."""
    if (away := record.photos.away()) is not None:
        record.close()
        raise away


@contextmanager
def _as_it_was(folder: Path) -> Iterator[None]:
    """Put back what a folder said, where nothing comes of it."""
    file = folder / SERVER_NAME
    before = file.read_bytes() if file.is_file() else None
    try:
        yield
    except Exception:
        if before is not None:
            file.write_bytes(before)
        elif file.is_file():
            file.unlink()
            if not any(folder.iterdir()):
                folder.rmdir()
        raise


@contextmanager
def _in_words(address: ServerAddress) -> Iterator[None]:
    try:
        yield
    except DBAPIError as error:
        trouble = dialect_postgres.as_trouble(error)
        raise trouble or as_refusal(error, address) from error
    except OSError as error:
        raise ShopTrouble(
            tr(
                "What stays on this computer can't be kept: {error}.",
                error=error.strerror or error,
            ),
            do=tr("Make room, or ask for the right to write."),
        ) from error

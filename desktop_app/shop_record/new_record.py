"""A new record made in a folder: whole, or nothing of it stays in the way of the next try."""

from __future__ import annotations

import os
from contextlib import ExitStack, suppress
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record import upgrade
from desktop_app.shop_record.databases import dialect
from desktop_app.shop_record.record_name import FILE_NAME
from desktop_app.shop_record.trouble import ShopTrouble


def make_record(folder: Path) -> None:
    """Make the record of a new shop in an empty or new folder.

    Raises ShopTrouble where the folder holds something already or cannot be written.
    """
    try:
        with ExitStack() as taken_away:
            for one in reversed([folder, *folder.parents]):
                if not os.path.exists(one):
                    taken_away.callback(_remove_empty, one)
            folder.mkdir(parents=True, exist_ok=True)
            if any(folder.iterdir()):
                raise ShopTrouble(
                    tr("The folder {folder} is not empty.", folder=folder),
                    do=tr("Choose an empty or a new folder."),
                )
            _make_file(folder / FILE_NAME)
            taken_away.pop_all()
    except OSError as error:
        raise ShopTrouble(
            tr(
                "The folder {folder} cannot be used: {error}.",
                folder=folder,
                error=error.strerror,
            ),
            do=tr("Choose another folder."),
        ) from error


def _remove_empty(folder: Path) -> None:
    with suppress(OSError):
        folder.rmdir()


def _make_file(path: Path) -> None:
    dialect.create_file(path)
    with ExitStack() as taken_away:
        taken_away.callback(path.unlink, missing_ok=True)
        try:
            upgrade.build(path)
        except dialect.ERRORS as error:
            trouble = dialect.as_trouble(error)
            if trouble is None:
                raise
            raise ShopTrouble(trouble.what, tr("No shop was made."), trouble.do) from error
        taken_away.pop_all()

"""A file that a person named: its place looked at before any work, written whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Mapping, Sequence
from contextlib import ExitStack
from pathlib import Path

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble


def check_place(to: Path, ending: str, example: str, inputs: Sequence[Path] = ()) -> None:
    """Refuse a place that can't be written, and one where something lies that is read.

    `ending` is the only one accepted, with its dot; `example` is a name as it may be.
    """
    if to.is_dir() or not to.name:
        raise ShopTrouble(
            tr("{to} is a folder.", to=to),
            do=tr("Name a file, such as {example}.", example=example),
        )
    if to.suffix.lower() != ending:
        raise ShopTrouble(
            tr("“{name}” does not end in {ending}.", name=to.name, ending=ending),
            do=tr("Let the name end in {ending}.", ending=ending),
        )
    if not to.parent.is_dir():
        raise ShopTrouble(
            tr("There is no folder {parent}.", parent=to.parent),
            do=tr("Make it, or choose another one."),
        )
    if to.exists() and not to.is_file():
        raise ShopTrouble(tr("{to} is a device or a pipe.", to=to), do=tr("Name a file."))
    for file in inputs:
        if to.exists() and file.exists() and os.path.samefile(to, file):
            raise ShopTrouble(
                tr("{to} is one of the files that are read, and those are never changed.", to=to),
                do=tr("Name another file."),
            )


def put_files(contents: Mapping[Path, bytes]) -> None:
    """Put all files in their places: each is written beside its place, then all are renamed.

    Where a name is a link, the file that it stands for is written, and the link stays.
    """
    with ExitStack() as tidy:
        ready = []
        for named, content in contents.items():
            to = Path(os.path.realpath(named))
            beside = to.with_name(f".{to.name}.{os.getpid()}.part")
            try:
                tidy.callback(beside.unlink, missing_ok=True)
                with beside.open("wb") as file:
                    file.write(content)
                    file.flush()
                    os.fsync(file.fileno())
            except OSError as error:
                raise _not_written(to, error) from error
            ready.append((beside, to))
        for beside, to in ready:
            try:
                beside.replace(to)
            except OSError as error:
                raise _not_written(to, error) from error


def _not_written(to: Path, error: OSError) -> ShopTrouble:
    return ShopTrouble(
        tr("{to} was not written: {reason}.", to=to, reason=error.strerror or error),
        kept=tr("A file that was there is as it was."),
        do=tr("Close it where it is open, or choose another place."),
    )

"""A program that writes deeds and photos, and says each only once it is saved; made to be killed.

Started once, it begins a writer of its own for each line that it reads: so only the first one has
to load everything.
"""

from __future__ import annotations

import itertools
import os
import sys
from collections.abc import Callable
from datetime import datetime
from functools import partial
from pathlib import Path
from typing import TypeVar

from desktop_app.commands.shop_place import open_place
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.shop_record.backed_up import named, with_photo

Came = TypeVar("Came")
SIZES = (10, 3_000, 400_000)


def clock() -> datetime:
    return NOON


def write(folder: Path) -> None:
    """Write until somebody ends it; every word said was saved before."""
    record = open_place(folder, clock)
    for number in itertools.count():
        name = f"{os.getpid()}-{number}"
        content = name.encode() * (SIZES[number % len(SIZES)] // len(name) + 1)
        sha256 = until_done(partial(with_photo, record, content))
        say("photo", sha256)
        until_done(partial(named, record, name))
        say("person", name)


def say(what: str, which: str) -> None:
    """Say it at once, and all of it or nothing."""
    os.write(sys.stdout.fileno(), f"{what} {which}\n".encode())


def until_done(work: Callable[[], Came]) -> Came:
    """Do it; where another program holds the record, try again, as the sentence asks to."""
    while True:
        try:
            return work()
        except ShopTrouble as trouble:
            if "busy" not in trouble.what:
                raise


def main() -> None:
    """Begin a writer for every line, and say when it is gone."""
    for _ in sys.stdin:
        child = os.fork()
        if child == 0:
            write(Path(sys.argv[1]))
        say("begun", str(child))
        os.waitpid(child, 0)
        say("gone", str(child))


if __name__ == "__main__":
    main()

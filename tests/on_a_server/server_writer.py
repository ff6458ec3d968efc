"""A program that writes deeds and photos into a shop on a server, and says what it knows of each.

It says "kept" once a deed was saved and "perhaps" where nobody could tell; where the server is
away it tries again. Started once, it begins a writer of its own for each line that it reads: so
only the first one has to load everything.
"""

from __future__ import annotations

import itertools
import os
import sys
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

from desktop_app.commands.shop_place import open_place
from desktop_app.shop_record.record import ShopRecord
from desktop_app.shop_record.server.server_trouble import ServerLost
from desktop_app.shop_record.trouble import ShopTrouble
from tests.conftest import NOON
from tests.shop_record.backed_up import named, with_photo

SIZES = (10, 3_000, 400_000)


def clock() -> datetime:
    return NOON


def write(folder: Path, deeds: int | None) -> None:
    """Write so many deeds, or until somebody ends it; every fourth one with a photo."""
    record = until_done("", lambda: open_place(folder, clock))
    assert record is not None
    for number in itertools.count() if deeds is None else range(deeds):
        name = f"{os.getpid()}-{number}"
        if number % 4:
            until_done(f"person {name}", lambda name=name: named(record, name))
        else:
            size = SIZES[number // 4 % len(SIZES)]
            content = name.encode() * (size // len(name) + 1)
            until_done(f"photo of {name}", lambda content=content: write_photo(record, content))
    record.close()


def write_photo(record: ShopRecord, content: bytes) -> None:
    """Keep a photo, then the row that names it; say which it is."""
    sha256 = with_photo(record, content)
    say(f"kept photo {sha256}")


def until_done(what: str, work: Callable[[], ShopRecord | None]) -> ShopRecord | None:
    """Do it and say it; where somebody else writes, or the server is away, try again."""
    while True:
        try:
            came = work()
        except ServerLost as lost:
            if what and "not known whether" in lost.what:
                say(f"perhaps {what}")
                return None
        except ShopTrouble as trouble:
            if "Somebody else is writing" not in trouble.what:
                raise
        else:
            if what.startswith("person"):
                say(f"kept {what}")
            return came


def say(words: str) -> None:
    """Say it at once, and all of it or nothing."""
    os.write(sys.stdout.fileno(), f"{words}\n".encode())


def main() -> None:
    """Begin a writer for every line, which may say how many deeds, and say when it is gone."""
    for line in sys.stdin:
        child = os.fork()
        if child == 0:
            write(Path(sys.argv[1]), int(line) if line.strip() else None)
            os._exit(0)
        say(f"begun {child}")
        _, how = os.waitpid(child, 0)
        say(f"gone {child} {os.waitstatus_to_exitcode(how)}")


if __name__ == "__main__":
    main()

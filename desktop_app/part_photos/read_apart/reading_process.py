"""The process that decodes photos from outside: asked on its standard input, heard on its output.

It opens no file of the shop, knows no window, and ends when its input ends.
"""

from __future__ import annotations

import os
import signal
import sys
from contextlib import suppress
from typing import Any, BinaryIO

from desktop_app.part_photos.codes.codes_in_picture import codes_in
from desktop_app.part_photos.codes.seen_code import listed
from desktop_app.part_photos.photo_limits import MOST_BYTES
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.picture_opened import opened
from desktop_app.part_photos.read_apart.messages import receive, send
from desktop_app.part_photos.thumbnail import make_thumbnail
from desktop_app.shop_record.trouble import ShopTrouble

# A hundred million pixels with transparency take 1.3 GB while they are made small.
MOST_MEMORY = 3_000_000_000
MOST_CPU_SECONDS = 90  # for one photo, all threads together


def limit_myself() -> None:
    """Let the system end this process where it takes too much, if the system can."""
    try:
        import resource
    except ImportError:  # Windows has no such limits; sizes and the time are limited there too
        return
    for what, most in (
        (resource.RLIMIT_AS, MOST_MEMORY),
        (resource.RLIMIT_FSIZE, 0),
        (resource.RLIMIT_CORE, 0),
    ):
        with suppress(ValueError, OSError):  # some systems know a limit and don't set it
            resource.setrlimit(what, (most, most))


def limit_this_photo() -> None:
    """Let the system end this process where one photo takes its processors too long.

    Whoever asked ends it earlier; this is for when they are gone.
    """
    try:
        import resource
    except ImportError:
        return
    used = resource.getrusage(resource.RUSAGE_SELF)
    seconds = int(used.ru_utime + used.ru_stime) + MOST_CPU_SECONDS
    with suppress(ValueError, OSError):
        hard = resource.getrlimit(resource.RLIMIT_CPU)[1]
        resource.setrlimit(resource.RLIMIT_CPU, (seconds, hard))


def answer(asked: dict[str, Any], content: bytes) -> tuple[dict[str, Any], bytes]:
    """Return what is said of a photo: what it is, its small picture, its codes, or its fault."""
    try:
        if asked["wanted"] == "thumbnail":
            return {}, make_thumbnail(content, asked["kind"], asked["size"])
        if asked["wanted"] == "codes":
            return {}, listed(codes_in(content, asked["kind"]))
        seen = opened(content, asked["kind"])
        said = {"width": seen.width, "height": seen.height, "taken_at": seen.taken_at}
        return said, seen.thumbnail
    except Unfit as unfit:
        return {"unfit": unfit.reason, "do": unfit.do}, b""
    except ShopTrouble as trouble:
        return {"unfit": trouble.what, "do": trouble.do}, b""


def main() -> None:
    """Answer until nobody asks any more."""
    with suppress(ValueError):
        signal.signal(signal.SIGINT, signal.SIG_IGN)  # it ends with its input
    with _own_output() as answers:
        limit_myself()
        while (asked := receive(sys.stdin.buffer, MOST_BYTES)) is not None:
            limit_this_photo()
            send(answers, *answer(*asked))


def _own_output() -> BinaryIO:
    """Return the standard output, and let what a decoder prints go where its complaints go."""
    answers = os.fdopen(os.dup(1), "wb")
    os.dup2(2, 1)
    return answers


if __name__ == "__main__":
    main()

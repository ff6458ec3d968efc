"""The window's end of the reading process: starts it, asks it, ends it when it must be."""

from __future__ import annotations

import atexit
import subprocess
import threading
from contextlib import suppress
from datetime import datetime
from typing import Any

from desktop_app.language import tr
from desktop_app.part_photos.claimed_size import claimed_size
from desktop_app.part_photos.codes.seen_code import SeenCode, read_back
from desktop_app.part_photos.photo_limits import MOST_BYTES, too_large
from desktop_app.part_photos.photo_trouble import Unfit
from desktop_app.part_photos.picture_kind import JPEG
from desktop_app.part_photos.picture_opened import Opened
from desktop_app.part_photos.read_apart.messages import Garbled, receive, send
from desktop_app.part_photos.thumbnail import THUMBNAIL
from desktop_app.shop_record.own_program.own_process import own_process

READING = "desktop_app.part_photos.read_apart.reading_process"
MOST_SECONDS = 40.0  # a hundred million pixels take 4 to 12, a phone's photo a tenth of one
CODE_SECONDS = 15.0  # what only offers something keeps the next photo waiting no longer
_PIPE = 1 << 20  # bytes; a photo goes through in a few pieces, where the system lets it
_ANOTHER_WAY = tr("Open it in a picture program and save it as JPEG, then send that.")


class PhotoReader:
    """One reading process, asked by one thread at a time.

    `module` is what runs there; a photo is given `most_seconds` of the clock, its codes fewer.
    """

    def __init__(self, module: str = READING, most_seconds: float = MOST_SECONDS) -> None:
        self._module = module
        self._most_seconds = most_seconds
        self._one_at_a_time = threading.Lock()
        self._process: subprocess.Popen[bytes] | None = None

    def opened(self, content: bytes, media_type: str) -> Opened:
        """Have a photo decoded in full. Raises Unfit: also where it broke or held up the reader."""
        said, small = self._ask({"wanted": "opened", "kind": media_type}, content)
        opened = _as_opened(said, small)
        if opened is None:
            self.end()
            raise _broke()
        return opened

    def thumbnail(self, content: bytes, media_type: str, size: int) -> bytes:
        """Have a small copy made, as `make_thumbnail` makes it. Raises Unfit."""
        return self._ask({"wanted": "thumbnail", "kind": media_type, "size": size}, content)[1]

    def codes(self, content: bytes, media_type: str) -> tuple[SeenCode, ...]:
        """Have the barcodes of a photo read. Raises Unfit."""
        asked = {"wanted": "codes", "kind": media_type}
        _, said = self._ask(asked, content, min(self._most_seconds, CODE_SECONDS))
        codes = read_back(said)
        if codes is None:
            self.end()
            raise _broke()
        return codes

    def process_id(self) -> int | None:
        """Return the number of the process that runs; None before the first photo."""
        return self._process.pid if self._process is not None else None

    def end(self) -> None:
        """End the process; the next photo starts another one."""
        with self._one_at_a_time:
            self._end()

    def _ask(
        self, asked: dict[str, Any], content: bytes, most_seconds: float | None = None
    ) -> tuple[dict[str, Any], bytes]:
        seconds = self._most_seconds if most_seconds is None else most_seconds
        with self._one_at_a_time:
            process = self._running()
            too_long = threading.Event()
            watch = threading.Timer(seconds, _stop, (process, too_long))
            watch.daemon = True
            watch.start()
            heard = None
            try:
                assert process.stdin is not None
                assert process.stdout is not None
                send(process.stdin, asked, content)
                heard = receive(process.stdout, MOST_BYTES)
            except (OSError, Garbled):
                heard = None
            finally:
                watch.cancel()
                watch.join()  # what is not stopped by now, is not stopped any more
                if heard is None or too_long.is_set():
                    self._end()
        if heard is None:
            raise _held_up(seconds) if too_long.is_set() else _broke()
        said, made = heard
        if "unfit" in said:
            raise Unfit(str(said["unfit"]), str(said.get("do", "")))
        return said, made

    def _running(self) -> subprocess.Popen[bytes]:
        if self._process is not None and self._process.poll() is None:
            return self._process
        self._end()
        try:
            try:
                self._process = self._started(_PIPE)
            except PermissionError:  # pipes as large as this are counted for each user
                self._process = self._started(-1)
        except OSError as error:
            raise Unfit(
                tr(
                    "it could not be read: the computer starts no reader ({reason}).",
                    reason=error.strerror,
                ),
                tr("Close other programs, then add it again."),
            ) from error
        return self._process

    def _started(self, pipe_size: int) -> subprocess.Popen[bytes]:
        return own_process(
            self._module,
            stdin=subprocess.PIPE,
            stderr=subprocess.DEVNULL,
            pipesize=pipe_size,
        )

    def _end(self) -> None:
        process, self._process = self._process, None
        if process is None:
            return
        process.kill()
        for pipe in (process.stdin, process.stdout):
            assert pipe is not None
            with suppress(OSError):  # what was still to be said is not heard any more
                pipe.close()
        process.wait()


def _stop(process: subprocess.Popen[bytes], too_long: threading.Event) -> None:
    too_long.set()
    process.kill()


def _broke() -> Unfit:
    return Unfit(tr("this picture could not be read: the reader broke over it."), _ANOTHER_WAY)


def _held_up(seconds: float) -> Unfit:
    return Unfit(
        tr(
            "this picture could not be read: it takes longer than {seconds:g} seconds.",
            seconds=seconds,
        ),
        _ANOTHER_WAY,
    )


def _as_opened(said: dict[str, Any], small: bytes) -> Opened | None:
    """Take nothing for granted of what a process said that a picture may have turned."""
    width, height, taken_at = said.get("width"), said.get("height"), said.get("taken_at")
    if not (isinstance(width, int) and isinstance(height, int) and min(width, height) > 0):
        return None
    shown = claimed_size(small, JPEG)
    if too_large(width, height) or shown is None or max(shown) > THUMBNAIL:
        return None
    try:
        if taken_at is not None:
            datetime.fromisoformat(taken_at)
    except (TypeError, ValueError):
        return None
    return Opened(width, height, taken_at, small)


READER = PhotoReader()
atexit.register(READER.end)

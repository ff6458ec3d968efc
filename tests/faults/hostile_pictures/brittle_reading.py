"""The reading process with a decoder that can be broken: what a photo's last words say happens."""

from __future__ import annotations

import os
import signal
import time

from PIL import Image

from desktop_app.part_photos import picture_opened, thumbnail
from desktop_app.part_photos.codes import codes_in_picture
from desktop_app.part_photos.read_apart import reading_process
from desktop_app.part_photos.upright_picture import open_picture

CRASHES, KILLED, HANGS, EATS = b" crash", b" killed", b" hang", b" eat"
LIES, CHATTERS = b" lie", b" chatter"
BREAKS_OVER_CODES = b" codes"  # decoded as any photo, but whoever looks for barcodes breaks


def brittle(content: bytes, media_type: str) -> Image.Image:
    """Open a picture as ever, or do what a broken decoder does."""
    if content.endswith(CRASHES):
        os.kill(os.getpid(), signal.SIGSEGV)
    if content.endswith(KILLED):
        os.kill(os.getpid(), signal.SIGKILL)
    if content.endswith(HANGS):
        time.sleep(600)
    if content.endswith(EATS):
        bytearray(4 << 30)  # nothing of it is used: only a limit says no
    if content.endswith(LIES):
        return Image.new("1", (1, 2_000_000))  # so tall a picture is refused before it comes here
    if content.endswith(CHATTERS):
        os.write(1, b'{"width": 1}\n')
    return open_picture(content, media_type)


def brittle_over_codes(content: bytes, media_type: str) -> Image.Image:
    """Open a picture to look for barcodes, or break."""
    if content.endswith(BREAKS_OVER_CODES):
        os.kill(os.getpid(), signal.SIGSEGV)
    return brittle(content, media_type)


if __name__ == "__main__":
    picture_opened.open_picture = thumbnail.open_picture = brittle
    codes_in_picture.open_picture = brittle_over_codes
    reading_process.main()

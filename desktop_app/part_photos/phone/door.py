"""Who may come in: the key first, then the host, the origin, and the length that is claimed.

Every refusal is a sentence for whoever holds the phone. Nothing that was sent is said again.
"""

from __future__ import annotations

import hmac
import re
from collections.abc import Sequence
from email.message import Message

from desktop_app.language import tr
from desktop_app.part_photos.phone.limits import too_large
from desktop_app.part_photos.photo_limits import MOST_BYTES

KEY = "X-Bay-Key"
_LENGTH = re.compile(r"[0-9]{1,12}")
OLD_CODE = tr("This code is no longer good. Scan the one that the window shows now.")


class TurnedAway(Exception):
    """A request that is refused: the status of HTTP and the words."""

    def __init__(self, status: int, words: str) -> None:
        super().__init__(words)
        self.status = status
        self.words = words


def check_key(sent: str | None, key: str) -> None:
    """Let nobody in without the key; how long the comparison takes tells nothing of it."""
    given = (sent or "").encode("utf-8", "replace")
    if not key or not hmac.compare_digest(given, key.encode("ascii")):
        raise TurnedAway(403, OLD_CODE)


def check_host(sent: Sequence[str], here: str) -> None:
    """Refuse a request that was meant for another name: one that was led here by a name server."""
    if list(sent) != [here]:
        raise TurnedAway(421, tr("Open the address that the window shows."))


def check_origin(sent: Sequence[str], page: str) -> None:
    """Refuse what another page sends. Old browsers say nothing of the page's own origin."""
    if sent and list(sent) != [page]:
        raise TurnedAway(403, tr("Only the page of this program may send photos."))


def claimed_length(headers: Message) -> int:
    """Return how many bytes follow. Refuses what is not one plain number, and what is too much."""
    said = headers.get_all("Content-Length") or []
    if headers.get_all("Transfer-Encoding") or len(said) != 1 or not _LENGTH.fullmatch(said[0]):
        raise TurnedAway(411, tr("The length was not said. Use another browser."))
    length = int(said[0])
    if too_large(length):
        raise TurnedAway(
            413, tr("A photo may have at most {most_bytes} MB.", most_bytes=MOST_BYTES // 1024**2)
        )
    return length

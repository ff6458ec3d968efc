"""How much a phone may send, how fast, and how long the page stays open."""

from __future__ import annotations

from desktop_app.part_photos.photo_limits import MOST_BYTES

HEADER_SECONDS = 5.0  # from the first byte of a connection to the last of its head
ANSWER_SECONDS = 20.0  # for the disk, once all is there
SLOWEST = 200_000  # bytes a second; who is slower holds a place that another phone needs
REFUSED_SECONDS = 2.0  # a refused sender may finish its sentence, so that it reads the answer
MOST_CONNECTIONS = 8
MOST_OF_ONE = 2  # served at a time of one address: eight slow ones would keep a real phone out
MOST_WAITING = 2  # more of one address, for their turn: browsers open some ahead, and never say why
TURN_SECONDS = HEADER_SECONDS + 1  # by then a silent one was cut
PHOTOS_AN_HOUR = 200
IDLE_SECONDS = 30 * 60.0
LONGEST_HEAD_NAME = 800  # letters of a photo's name as it is sent, before it is cut


def body_seconds(length: int) -> float:
    """Return how long a body of so many bytes may take."""
    return ANSWER_SECONDS + length / SLOWEST


def too_large(length: int) -> bool:
    """Tell whether so many bytes are more than a photo may have."""
    return length > MOST_BYTES

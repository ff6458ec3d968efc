"""What the window and the reading process say to each other: a line of JSON, then bytes."""

from __future__ import annotations

import json
from typing import IO, Any

_LONGEST_LINE = 10_000


class Garbled(Exception):
    """The other side fell silent within a message, or said what is none."""


def send(stream: IO[bytes], head: dict[str, Any], content: bytes = b"") -> None:
    """Say one message; `head` says nothing named "bytes". Raises OSError where nobody listens."""
    stream.write(json.dumps({**head, "bytes": len(content)}).encode() + b"\n")
    stream.write(content)
    stream.flush()


def receive(stream: IO[bytes], most_bytes: int) -> tuple[dict[str, Any], bytes] | None:
    """Return the next message, None at the end. Raises Garbled, and OSError."""
    line = stream.readline(_LONGEST_LINE)
    if not line:
        return None
    try:
        head = json.loads(line)
        length = int(head.pop("bytes"))
    except (ValueError, LookupError, TypeError, AttributeError, RecursionError) as error:
        raise Garbled from error
    if not 0 <= length <= most_bytes:
        raise Garbled
    content = stream.read(length)
    if len(content) < length:
        raise Garbled
    return head, content

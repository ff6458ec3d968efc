"""A JSON document in pieces, so that a long list need not be in memory as a whole."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice
from typing import Any

_AT_ONCE = 1_000  # items of a list that are written in one step


def json_pieces(document: Any, *, only_ascii: bool = False) -> Iterator[str]:
    """Yield one JSON document and its end of line; an iterator becomes a list, an item a line."""
    import json

    if not isinstance(document, Iterator):
        yield json.dumps(document, ensure_ascii=only_ascii, indent=1, allow_nan=False)
        yield "\n"
        return
    encode = json.JSONEncoder(ensure_ascii=only_ascii, allow_nan=False).encode
    between = "[\n"
    while some := list(islice(document, _AT_ONCE)):
        yield between + ",\n".join(map(encode, some))
        between = ",\n"
    yield "[]\n" if between == "[\n" else "\n]\n"

"""The text of a JSON file that a person names, read into one object or refused in words."""

from __future__ import annotations

import json
from typing import Any

from desktop_app.language import tr
from desktop_app.shop_record.trouble import ShopTrouble


def json_document(text: str, file: str, what: str, most: int, accepted: str) -> dict[str, Any]:
    """Return the object that a text of at most `most` letters holds.

    Raises ShopTrouble; `file` and `what` ("a file of marks") are named in it, with `accepted`.
    """
    if len(text) > most:
        raise ShopTrouble(tr("{file}: too long for {what}.", file=file, what=what), do=accepted)
    try:
        found = json.loads(text, object_pairs_hook=_once)
    except _Repeated as error:
        name = json.dumps(str(error))[:60]
        said = tr("{file}: {name} is there twice in one object.", file=file, name=name)
        raise ShopTrouble(said, do=accepted) from error
    except RecursionError as error:
        raise ShopTrouble(
            tr("{file}: too deeply nested for {what}.", file=file, what=what), do=accepted
        ) from error
    except json.JSONDecodeError as error:
        said = tr(
            "{file}: line {line}: not JSON ({reason}).",
            file=file,
            line=error.lineno,
            reason=error.msg,
        )
        raise ShopTrouble(said, do=accepted) from error
    except ValueError as error:  # a number with thousands of digits
        raise ShopTrouble(
            tr("{file}: a number in it is too long.", file=file), do=accepted
        ) from error
    if not isinstance(found, dict):
        raise ShopTrouble(tr("{file}: not {what}.", file=file, what=what), do=accepted)
    return found


class _Repeated(Exception):
    """A key that one object has twice: which one is meant, nobody can tell."""


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise _Repeated(key)
        found[key] = value
    return found

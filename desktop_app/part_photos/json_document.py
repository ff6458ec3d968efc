"""The text of a JSON file that a person names, read into one object or refused in words."""

from __future__ import annotations

import json
from typing import Any

from desktop_app.shop_record.trouble import ShopTrouble


def json_document(text: str, file: str, what: str, most: int, accepted: str) -> dict[str, Any]:
    """Return the object that a text of at most `most` letters holds.

    Raises ShopTrouble; `file` and `what` ("a file of marks") are named in it, with `accepted`.
    """
    if len(text) > most:
        raise ShopTrouble(f"{file}: too long for {what}.", do=accepted)
    try:
        found = json.loads(text, object_pairs_hook=_once)
    except _Repeated as error:
        said = f"{file}: {json.dumps(str(error))[:60]} is there twice in one object."
        raise ShopTrouble(said, do=accepted) from error
    except RecursionError as error:
        raise ShopTrouble(f"{file}: too deeply nested for {what}.", do=accepted) from error
    except json.JSONDecodeError as error:
        said = f"{file}: line {error.lineno}: not JSON ({error.msg})."
        raise ShopTrouble(said, do=accepted) from error
    except ValueError as error:  # a number with thousands of digits
        raise ShopTrouble(f"{file}: a number in it is too long.", do=accepted) from error
    if not isinstance(found, dict):
        raise ShopTrouble(f"{file}: not {what}.", do=accepted)
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

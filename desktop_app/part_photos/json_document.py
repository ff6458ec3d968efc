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
        found = json.loads(text)
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

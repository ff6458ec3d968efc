"""What is said to a server is text as it can keep it: a NUL it refuses, also in a question."""

from __future__ import annotations

from typing import Any

from psycopg.types.string import StrDumperUnknown

from desktop_app.shop_record.databases.plain_text import plain_text


class PlainText(StrDumperUnknown):
    """Hands texts over as a deed would keep them; so what was kept is found again."""

    def dump(self, obj: str) -> Any:
        """Return the bytes for the server."""
        return plain_text(obj).encode()

"""The page as it is sent: one file, and the rule that lets nothing else run in it."""

from __future__ import annotations

import base64
import hashlib
import re
from dataclasses import dataclass

from desktop_app.shop_record.resource_folder import resource_path

_SCRIPT = re.compile(r"<script>(.*?)</script>", re.DOTALL)
_STYLE = re.compile(r"<style>(.*?)</style>", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Page:
    """The bytes of the page, and its content security policy."""

    content: bytes
    policy: str


def read_page() -> Page:
    """Read the page; its one script and its one style are named by their hashes."""
    text = resource_path("phone", "page.html").read_text(encoding="utf-8")
    policy = "; ".join(
        (
            "default-src 'none'",
            f"script-src {_hashed(_SCRIPT, text)}",
            f"style-src {_hashed(_STYLE, text)}",
            "connect-src 'self'",
            "base-uri 'none'",
            "form-action 'none'",
            "frame-ancestors 'none'",
        )
    )
    return Page(text.encode("utf-8"), policy)


def _hashed(block: re.Pattern[str], text: str) -> str:
    (inside,) = block.findall(text)
    digest = hashlib.sha256(inside.encode("utf-8")).digest()
    return f"'sha256-{base64.b64encode(digest).decode('ascii')}'"

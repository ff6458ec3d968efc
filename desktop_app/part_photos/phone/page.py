"""The page as it is sent: one file, its words in it, and the rule that lets nothing else run."""

from __future__ import annotations

import base64
import hashlib
import json
import re
from dataclasses import dataclass
from html import escape

from desktop_app.part_photos.phone.page_words import page_words
from desktop_app.shop_record.own_program.resource_folder import resource_path

_SCRIPT = re.compile(r"<script>(.*?)</script>", re.DOTALL)
_WORDS = re.compile(
    r"\{\{(\w+)\}\}"
)  # as the page names them; {{words}} in its script is all of them
_STYLE = re.compile(r"<style>(.*?)</style>", re.DOTALL)


@dataclass(frozen=True, slots=True)
class Page:
    """The bytes of the page, and its content security policy."""

    content: bytes
    policy: str


def read_page() -> Page:
    """Read the page; its one script and its one style are named by their hashes."""
    text = _spoken(resource_path("phone", "page.html").read_text(encoding="utf-8"), page_words())
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


def _spoken(text: str, words: dict[str, str]) -> str:
    """Put the words in: in the page as text that is no tag, in its script as a table."""
    table = json.dumps(words)
    for sign in "<>&":  # a word with a tag in it would end the script
        table = table.replace(sign, f"\\u{ord(sign):04x}")
    put = {**{name: escape(word) for name, word in words.items()}, "words": table}
    return _WORDS.sub(lambda found: put[found[1]], text)


def _hashed(block: re.Pattern[str], text: str) -> str:
    (inside,) = block.findall(text)
    digest = hashlib.sha256(inside.encode("utf-8")).digest()
    return f"'sha256-{base64.b64encode(digest).decode('ascii')}'"

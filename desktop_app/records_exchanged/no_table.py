"""What is plainly no table, told from a file's first bytes and never from its name."""

from __future__ import annotations

import re

from desktop_app.language import tr

LOOKED_AT = 256
_PICTURE = tr("a picture")
# What people do pick now and then, so that the refusal can name it. No header begins like these.
_STARTS = (
    (rb"%PDF-", tr("a PDF document")),
    (rb"\x89PNG|\xff\xd8\xff|GIF8[79]a", _PICTURE),
    (rb"\x1f\x8b", tr("a packed file")),
    (rb"(?:\xef\xbb\xbf)?\s*(?:\{\s*[\"}]|\[\s*[\[{\"\]])", tr("JSON")),
    (rb"(?i:(?:\xef\xbb\xbf)?\s*<(?:!doctype html|html|head|body|table)\b)", tr("a web page")),
    (rb"(?:\xef\xbb\xbf)?\s*<\?xml\b", tr("XML")),
)


def no_table(first: bytes) -> str:
    """Return in words what the file is instead, nothing where it may be a table."""
    return next((words for start, words in _STARTS if re.match(start, first)), "")
